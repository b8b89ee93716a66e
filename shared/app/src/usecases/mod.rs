//! The use cases, by what they are about.

mod bundles;
mod machines;
mod photos;
mod records;
mod signing;
mod walking;
