//! The log's Merkle tree (RFC 6962 § 2.1, RFC 9162 § 2.1).
//!
//! A leaf is the 32 bytes of a record's digest. The server keeps a [`Tree`] and proves from it; a
//! device keeps a [`Frontier`] and checks what it's told with [`included`] and [`consistent`].

mod frontier;
mod hash;
mod proof;
mod tree;

pub use frontier::{Broken, Frontier};
pub use hash::Hash;
pub use proof::{LARGEST, Unproven, consistent, included};
pub use tree::Tree;
