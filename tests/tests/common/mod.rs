//! What the tests that drive the whole program share.

#![allow(dead_code)]

pub mod chance;
pub mod device;
pub mod filling;
pub mod pictures;
pub mod server;
pub mod shapes;

/// A PIN that the program takes.
pub const PIN: &str = "271828";
