//! Why readings can't be used, and what would help.

use crate::units::UnitFault;

/// Why nothing can be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TrendFault {
    /// A quantity of the wrong kind.
    #[error(transparent)]
    Unit(#[from] UnitFault),
    /// A time and no value to it, or a value without its time.
    #[error("{x} times and {y} values: give as many of each")]
    Unpaired {
        /// How many times.
        x: usize,
        /// How many values.
        y: usize,
    },
    /// A time in service below nothing.
    #[error("reading {0}: time in service must be 0 or more")]
    Negative(usize),
    /// Not a finite number.
    #[error("reading {0} is not a finite number: correct it or leave it out")]
    NotFinite(usize),
    /// More than an exact count holds.
    #[error("{0} readings are more than can be weighed at once: split them")]
    TooMany(usize),
    /// A confidence or level outside its range.
    #[error("{what} must lie between {low} and {high}")]
    Outside {
        /// Which input.
        what: &'static str,
        /// From.
        low: f64,
        /// To.
        high: f64,
    },
    /// Finite numbers whose result is not.
    #[error("these numbers are too large or too small to compute with: look for a slip in the units")]
    OutOfReach,
}
