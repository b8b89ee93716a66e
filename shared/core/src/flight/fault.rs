//! Why something about a flight can't be computed, and what would help.

use super::input::Input;
use crate::units::{Quantity, Unit, UnitFault};

/// What an input must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Must {
    /// Nothing, or more.
    NotNegative,
    /// More than nothing.
    Positive,
    /// One, or more.
    AtLeastOne,
}

impl Must {
    /// Its id.
    pub fn id(self) -> &'static str {
        match self {
            Must::NotNegative => "not-negative",
            Must::Positive => "positive",
            Must::AtLeastOne => "at-least-one",
        }
    }
}

impl std::fmt::Display for Must {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Must::NotNegative => "0 or more",
            Must::Positive => "more than nothing",
            Must::AtLeastOne => "1 or more",
        })
    }
}

/// Why nothing can be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FlightFault {
    /// A quantity of the wrong kind.
    #[error(transparent)]
    Unit(#[from] UnitFault),
    /// One that can't be.
    #[error("{what} must be {must}")]
    Impossible {
        /// Which input.
        what: Input,
        /// What would be possible.
        must: Must,
    },
    /// The lower end lies above the higher.
    #[error("{0}: `low` must not be above `high`")]
    Backwards(Input),
    /// Outside what the formula holds for.
    #[error("{what}: {value} is outside {low} to {high}: look for a slip in number or unit")]
    Outside {
        /// Which input.
        what: Input,
        /// As given.
        value: Quantity,
        /// From.
        low: Quantity,
        /// To.
        high: Quantity,
    },
    /// More vapour than the air can hold.
    #[error("the dew point can't lie above the air's temperature")]
    AboveSaturation,
    /// No ratio of petrol to oil.
    #[error("`{0}` is no ratio of petrol to oil: write 50 or 50:1, from 5 to 200")]
    NoRatio(String),
    /// Gusts below the mean wind.
    #[error("the gusts can't be less than the mean wind")]
    CalmGust,
    /// Nothing to hold the wind against.
    #[error("no limit is set: give at least one of the mean wind, the gusts and the gust factor")]
    NoLimit,
}

/// A quantity in `unit` that must not be less than nothing.
pub(super) fn some(quantity: Quantity, unit: Unit, what: Input) -> Result<f64, FlightFault> {
    let value = quantity.to(unit)?.value;
    if value >= 0.0 { Ok(value) } else { Err(FlightFault::Impossible { what, must: Must::NotNegative }) }
}

/// A quantity in `unit` that must be more than nothing.
pub(super) fn more(quantity: Quantity, unit: Unit, what: Input) -> Result<f64, FlightFault> {
    let value = quantity.to(unit)?.value;
    if value > 0.0 { Ok(value) } else { Err(FlightFault::Impossible { what, must: Must::Positive }) }
}

/// A quantity in `unit` within what can be.
pub(super) fn within(
    quantity: Quantity,
    unit: Unit,
    what: Input,
    (low, high): (f64, f64),
) -> Result<f64, FlightFault> {
    let value = quantity.to(unit)?.value;
    // A bound written in another unit may come back a hair outside.
    let slack = 1e-9 * (high - low);
    if value >= low - slack && value <= high + slack {
        return Ok(value);
    }
    let end = |value| Quantity::new(value, unit);
    Err(FlightFault::Outside { what, value: quantity, low: end(low), high: end(high) })
}
