//! The two ends of a band. One number would promise more than anybody knows.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::{TorqueFault, WIDEST, sized, unmixed};
use crate::units::{Quantity, Unit};

/// Slack, as a share, where a value is held against an end: a reading converted there and
/// back stays on the side where it was.
const ROUNDING: f64 = 1e-9;

/// From `low` to `high`, both included.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Between<T> {
    /// The least.
    pub low: T,
    /// The most.
    pub high: T,
}

/// Where a value lies against a band.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum Place {
    Below,
    Inside,
    Above,
}

impl<T: Copy> Between<T> {
    /// Both ends.
    pub fn new(low: T, high: T) -> Self {
        Self { low, high }
    }

    /// A single value as a band.
    pub fn just(value: T) -> Self {
        Self { low: value, high: value }
    }

    /// Both ends through the same fallible function; `f` must not turn them round.
    pub(super) fn each<U, E>(self, mut f: impl FnMut(T) -> Result<U, E>) -> Result<Between<U>, E> {
        Ok(Between { low: f(self.low)?, high: f(self.high)? })
    }
}

impl Between<f64> {
    /// The band if it is one: finite ends in order, from `least` to `most`.
    pub(super) fn checked(
        self,
        what: &'static str,
        least: f64,
        most: f64,
        must: &'static str,
    ) -> Result<Self, TorqueFault> {
        if !(least..=most).contains(&self.low) || !(least..=most).contains(&self.high) {
            return Err(TorqueFault::Impossible { what, must });
        }
        if self.low > self.high { Err(TorqueFault::Backwards(what)) } else { Ok(self) }
    }

    /// From the smaller to the larger of two numbers.
    pub(super) fn sorted(a: f64, b: f64) -> Self {
        Self { low: a.min(b), high: a.max(b) }
    }
}

impl Between<Quantity> {
    /// Both ends as numbers of `unit`, in order and more than nothing.
    pub(super) fn positive(self, unit: Unit, what: &'static str) -> Result<Between<f64>, TorqueFault> {
        let ends = self.each(|end| end.to(unit).map(|end| end.value))?;
        let low = self.low;
        unmixed(what, self.high, low.unit, |high| (low.value..=low.value * WIDEST).contains(&high))?;
        ends.checked(what, f64::MIN_POSITIVE, f64::MAX, "more than nothing")
    }

    /// Both ends in another unit of the dimension.
    ///
    /// # Errors
    /// [`TorqueFault::Unit`].
    pub fn to(self, unit: Unit) -> Result<Self, TorqueFault> {
        Ok(self.each(|end| end.to(unit))?)
    }

    /// Where `value` lies, in whatever unit it was read.
    ///
    /// # Errors
    /// [`TorqueFault`] where the kinds differ or the band isn't one.
    pub fn place(self, value: Quantity) -> Result<Place, TorqueFault> {
        let unit = self.low.unit;
        let ends = self.to(unit)?;
        let (low, high, value) = (ends.low.value, ends.high.value, value.to(unit)?.value);
        if low > high {
            return Err(TorqueFault::Backwards("the band"));
        }
        if value < low - low.abs() * ROUNDING {
            return Ok(Place::Below);
        }
        Ok(if value > high + high.abs() * ROUNDING { Place::Above } else { Place::Inside })
    }

    /// The middle, in the lower end's unit: what a row of nuts is set to, so that none is
    /// at the least while its neighbour is at the most.
    /// Source: US Navy NAVEDTRA 14008, torque wrenches ("select a median value").
    ///
    /// # Errors
    /// [`TorqueFault`] where the band isn't one.
    pub fn middle(self) -> Result<Quantity, TorqueFault> {
        let unit = self.low.unit;
        let ends = self.positive(unit, "the band")?;
        sized(ends.low / 2.0 + ends.high / 2.0, unit)
    }
}

/// Numbers of `unit` as quantities.
pub(super) fn quantities(ends: Between<f64>, unit: Unit) -> Result<Between<Quantity>, TorqueFault> {
    ends.each(|value| sized(value, unit))
}
