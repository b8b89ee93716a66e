//! The use cases, by what they are about.

mod bundles;
mod components;
mod deferring;
mod due;
mod finding;
mod jobs;
mod listing;
mod machines;
mod photos;
mod records;
mod second;
mod signing;
mod time;
mod torque;
mod walking;

pub(crate) use bundles::plain_name;
pub(crate) use records::{RECORD, signature_id};
pub(crate) use second::LABEL;
pub(crate) use walking::{meaning_id, minutes};
