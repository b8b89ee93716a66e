//! An engine's log: samples of temperature and speed over one run, and the few figures that
//! are kept of them.

mod mapping;

pub use mapping::{Channel, Column, Mapping, TimeForm};
