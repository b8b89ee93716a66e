//! Sync, sans-IO: what a device and a server say to one another, and how each checks the other.
//!
//! No clock, randomness, network, thread or file: they are arguments, or belong to the caller.
//!
//! - [`merkle`]: the tree over a server's log, and the proofs a server gives of it.
//! - [`note`] and [`checkpoint`]: what a server signs about its log.
//! - [`wire`] and [`client`]: what is said, and a device's side of it.
//! - [`message`]: requests that a device signs, so that there is no token to steal.

pub mod checkpoint;
pub mod client;
pub mod merkle;
pub mod message;
pub mod note;
pub mod wire;
