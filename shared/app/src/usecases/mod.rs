//! The use cases, by what they are about.

mod bundles;
mod components;
mod deferring;
mod due;
mod finding;
mod listing;
mod machines;
mod photos;
mod records;
mod signing;
mod time;
mod walking;
