//! The instructor server: what it keeps ([`shelf`]).

pub mod fault;
pub mod shelf;

pub use fault::{Refusal, ShelfFault};
