//! How long parts of one type last, from findings at inspections: a crack that is found began
//! before, and after the last look that didn't find it.
//!
//! How few findings a figure rests on is part of every answer. An inspection interval from here
//! only ever shortens the one in force, which the engine maker's manual or the owner has set.

mod band;
mod bootstrap;
mod fault;
mod finding;
mod inspect;
mod life;
mod likelihood;
mod lives;
mod optimum;
mod steps;
mod turnbull;
mod weibull;
mod wilson;

pub use band::{At, weibull_at};
pub use bootstrap::RESAMPLES;
pub use fault::LifeFault;
pub use finding::{Counted, Findings};
pub use inspect::{Inspect, Wanted, inspect_every};
pub use life::{FEWEST_FAILED, Life, life};
pub use lives::{Lived, Lives, OLD, PartMoved, PartSeen, lives};
pub use steps::{Step, steps};
pub use turnbull::{Mass, Turnbull, turnbull};
pub use weibull::{Interval, Weibull, weibull};
pub use wilson::{Z_95, Z_99, wilson};
