//! An engine's log: samples of temperature and speed over one run or several, and the few
//! figures that are kept of them.
//!
//! [`Reader`] reads cells by the [`Mapping`] that the log's owner confirmed, [`Log::told`]
//! reduces what was read to [`Figure`]s. Whatever can't be read is counted and the first of it
//! named; whatever is left out of a figure is counted with it.

mod cell;
mod idle;
mod log;
mod mapping;
mod named;
mod order;
mod peak;
mod reader;
mod running;
mod told;
mod when;

pub use cell::{Number, number};
pub use log::{Began, Log, Unread, Why};
pub use mapping::{Channel, Column, Mapping, MappingFault, TimeForm};
pub use named::unit_named;
pub use reader::Reader;
pub use told::{Figure, LogTold, Note};
pub use when::day_in;
