//! Trends: which way a measure of one machine goes over its time in service, how sure that
//! is, and when it reaches a limit.
//!
//! Everything here ranks and takes medians: one wild reading moves nothing, and is shown
//! rather than dropped. Where chance alone makes such a trend as well, no direction is told and no
//! limit foretold.

mod change;
mod fault;
mod kendall;
mod limit;
mod outlier;
mod select;
mod series;
mod slope;
mod standard_day;
mod ties;
mod whole;

pub use change::{Change, change};
pub use fault::TrendFault;
pub use kendall::{Kendall, mann_kendall};
pub use limit::{Limit, Reached, ToLimit, to_limit};
pub use outlier::{Outlier, outliers};
pub use series::{Reading, Series};
pub use slope::{FEWEST, Slope, theil_sen};
pub use standard_day::{STANDARD_DAY, standard_day};
pub use whole::{Direction, Trend, trend};
