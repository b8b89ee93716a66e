//! What the server answers to devices: the router itself, in process.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../common/mod.rs"]
mod common;

mod desk;
mod device;
mod joining;
mod limits;
mod log;
mod openapi;
mod phone;
mod photos;
mod records;
mod rounds;
mod signing;
mod world;
