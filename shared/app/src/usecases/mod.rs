//! The use cases, by what they are about.

mod bundles;
mod components;
mod deferring;
mod due;
mod finding;
mod fleet;
mod flight;
mod importing;
mod jobs;
mod listing;
mod lives;
mod logs;
mod looking;
mod machines;
mod photos;
mod records;
pub mod school;
mod second;
mod signing;
mod time;
mod torque;
mod trends;
mod walking;
mod weights;

pub(crate) use bundles::plain_name;
pub(crate) use deferring::day;
pub(crate) use machines::kebab;
pub(crate) use records::{RECORD, signature_id};
pub(crate) use second::{LABEL, code};
pub(crate) use walking::{meaning_id, minutes};
