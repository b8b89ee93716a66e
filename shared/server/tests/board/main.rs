//! The school board, in process: real devices beside it, on a clock that the tests turn.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "../common/mod.rs"]
mod common;
#[path = "../../../app/tests/common/mod.rs"]
mod device;

mod fleet;
mod looking;
mod passphrase;
mod preparing;
mod replica;
mod signing_in;
mod world;
