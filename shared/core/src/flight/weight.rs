//! All-up weight against the wing's range.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::{FlightFault, more, some};
use super::input::Input;
use crate::units::{Quantity, Unit};

/// Density of petrol with its oil, kg/L: the heaviest that EN 228 allows (720 to 775 kg/m³ at 15 °C;
/// from memory), so that what is poured is never heavier than what is counted.
pub const PETROL_KG_PER_LITRE: f64 = 0.775;

/// What goes up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Loads {
    /// As dressed for flying.
    pub pilot: Quantity,
    /// Frame, engine, propeller, harness, reserve and the wing itself, with no fuel.
    pub machine: Quantity,
    /// Fuel at take-off, by mass or by volume.
    pub fuel: Quantity,
    /// Ballast, and whatever else is carried.
    pub ballast: Quantity,
}

/// What the wing is certified or tested for, as its maker states it for flying with a motor.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Range {
    /// The least.
    pub low: Quantity,
    /// The most.
    pub high: Quantity,
}

/// How far from both ends; negative when past it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Margin {
    /// Above the least, with the tank run dry.
    pub above_low: Quantity,
    /// Below the most, at take-off.
    pub below_high: Quantity,
}

/// All-up weight.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct AllUp {
    /// At take-off, in the unit of the wing's range.
    pub total: Quantity,
    /// With the tank run dry.
    pub dry: Quantity,
    /// Both lie in the range.
    pub in_range: bool,
    /// How far from its ends.
    pub margin: Margin,
}

/// Sum of the loads against the wing's range.
///
/// A volume of fuel counts 0.775 kg/L. The lower end is held against the weight with no fuel
/// left, the upper one against that at take-off: the flight begins with one and may end with the other.
///
/// # Errors
/// [`FlightFault`] for a load below nothing, a pilot or machine of nothing, or a range backwards.
pub fn all_up(loads: &Loads, wing: &Range) -> Result<AllUp, FlightFault> {
    let kg = Unit::Kilogram;
    let (low, high) = (more(wing.low, kg, Input::WingLow)?, more(wing.high, kg, Input::WingHigh)?);
    if low > high {
        return Err(FlightFault::Backwards(Input::Wing));
    }
    let fuel = match loads.fuel.unit.dimension() == Unit::Litre.dimension() {
        true => some(loads.fuel, Unit::Litre, Input::Fuel)? * PETROL_KG_PER_LITRE,
        false => some(loads.fuel, kg, Input::Fuel)?,
    };
    let dry = more(loads.pilot, kg, Input::Pilot)?
        + more(loads.machine, kg, Input::Machine)?
        + some(loads.ballast, kg, Input::Ballast)?;
    let unit = wing.low.unit;
    let shown = |kilograms: f64| Quantity::new(kilograms, kg).to(unit);
    let total = dry + fuel;
    // Sums of tenths must not fall a hair outside.
    let margin = |kilograms: f64| if kilograms.abs() < 1e-9 { 0.0 } else { kilograms };
    let (above_low, below_high) = (margin(dry - low), margin(high - total));
    Ok(AllUp {
        total: shown(total)?,
        dry: shown(dry)?,
        in_range: above_low >= 0.0 && below_high >= 0.0,
        margin: Margin { above_low: shown(above_low)?, below_high: shown(below_high)? },
    })
}
