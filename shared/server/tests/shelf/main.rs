//! What the server keeps: the same cases on SQLite and on PostgreSQL.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../common/mod.rs"]
mod common;

mod backup;
mod desk;
mod log;
mod opening;
mod photos;
mod tables;
mod together;
