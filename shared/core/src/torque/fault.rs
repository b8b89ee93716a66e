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
    /// Two units where one was meant: 12 times too much, for lbf·ft and lbf·in.
    #[error("{what}: {odd} is {times:.0} times {meant}: look for a slip in the units")]
    Mixed {
        /// Which input.
        what: &'static str,
        /// As given.
        odd: Quantity,
        /// The same number in the unit of the value beside it.
        meant: Quantity,
        /// How many times.
        times: f64,
    },
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

/// Refuses a value in another unit than the one beside it, where the same number in that one's unit
/// would have been at home: the unit is the slip, since nobody mixes units on purpose.
pub(super) fn unmixed(
    what: &'static str,
    odd: Quantity,
    beside: Unit,
    home: impl Fn(f64) -> bool,
) -> Result<(), TorqueFault> {
    let in_beside = odd.to(beside)?.value;
    let times = in_beside / odd.value;
    if odd.unit == beside || times < SLIP || !home(odd.value) || home(in_beside) {
        return Ok(());
    }
    Err(TorqueFault::Mixed { what, odd, meant: Quantity::new(odd.value, beside), times })
}

/// From how many times on a unit beside another is taken for a slip: N·m beside lbf·in is nearly 9,
/// lbf·ft is 12 (NIST SP 811).
const SLIP: f64 = 8.0;
/// How many times wider than its lower end a band of one joint, or a tool's scale, may be; a band is
/// some percent wide, a scale goes by ISO 6789 from about a fifth of its end.
pub(super) const WIDEST: f64 = 8.0;

/// A quantity in `unit`, more than nothing.
pub(super) fn positive(quantity: Quantity, unit: Unit, what: &'static str) -> Result<f64, TorqueFault> {
    let value = quantity.to(unit)?.value;
    if value > 0.0 { Ok(value) } else { Err(TorqueFault::Impossible { what, must: "more than nothing" }) }
}
