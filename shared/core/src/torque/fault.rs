//! Why something about a fastener can't be computed, and what would help.

use crate::units::{Quantity, Unit, UnitFault};

/// Why nothing can be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TorqueFault {
    /// A quantity of the wrong kind.
    #[error(transparent)]
    Unit(#[from] UnitFault),
    /// A length, torque or count that can't be.
    #[error("{what} must be {must}")]
    Impossible {
        /// Which input.
        what: &'static str,
        /// What would be possible.
        must: &'static str,
    },
    /// The lower end lies above the higher.
    #[error("{0}: `low` must not be above `high`")]
    Backwards(&'static str),
    /// Finite numbers whose result is not.
    #[error("these numbers are too large or too small to compute with: look for a slip in the units")]
    OutOfReach,
    /// No thread of that name.
    #[error("there is no thread `{0}` in the tables: write it as M8 (coarse), M8x1 (fine), 10-32 or 1/4-28")]
    NoThread(String),
    /// No property class of that name.
    #[error("there is no property class `{0}` in the tables: use 8.8, 10.9 or 12.9")]
    NoClass(String),
    /// A metric property class on an inch thread.
    #[error("property class {class} is for metric threads, {thread} is an inch thread: leave the class out")]
    ClassOfInch {
        /// The class.
        class: &'static str,
        /// The thread.
        thread: &'static str,
    },
    /// No default for the face under nut or head.
    #[error("the face under the nut of {0} isn't in the tables: give its outer diameter and the hole's")]
    NoBearing(&'static str),
    /// No tolerance in the tables.
    #[error("the tolerances of {0} aren't in the tables: no strip area can be computed for it")]
    NoLimits(&'static str),
    /// A tool can't be set there.
    #[error(
        "{setting} is outside the tool's marked range, {low} to {high}: take another tool, or other stages"
    )]
    OutsideTool {
        /// What it should be set to.
        setting: Quantity,
        /// Lowest marked value.
        low: Quantity,
        /// Highest marked value.
        high: Quantity,
    },
    /// An override that says nothing.
    #[error("say why the tool is used nevertheless: the reason goes into the record")]
    NoReason,
}

/// A computed quantity, refused where the numbers ran out.
pub(super) fn sized(value: f64, unit: Unit) -> Result<Quantity, TorqueFault> {
    if value.is_finite() { Ok(Quantity::new(value, unit)) } else { Err(TorqueFault::OutOfReach) }
}

/// A quantity in `unit`, more than nothing.
pub(super) fn positive(quantity: Quantity, unit: Unit, what: &'static str) -> Result<f64, TorqueFault> {
    let value = quantity.to(unit)?.value;
    if value > 0.0 { Ok(value) } else { Err(TorqueFault::Impossible { what, must: "more than nothing" }) }
}
