//! How inspections are done: time spent and points hurried, said back before signing; how people look
//! and what points are worth, for those who teach and for the authors of lists.

mod cell;
mod hurry;
mod people;
mod tally;
mod worth;

pub use hurry::{InShort, LEAST_LOOK, hurried, in_short, median};
pub use people::{HurriedPoint, Looker, Than};
pub use tally::{PointSeen, Tally};
pub use worth::{Worth, WorthSort};
