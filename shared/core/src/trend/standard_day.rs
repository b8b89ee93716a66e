//! A temperature of the engine as it would have been on a standard day.

use super::fault::TrendFault;
use crate::flight::AIR_CELSIUS;
use crate::units::{Quantity, Unit};

/// Sea level's temperature in the standard atmosphere, °C (ICAO).
pub const STANDARD_DAY: f64 = 15.0;
/// Degrees that a cylinder head follows each degree outside. Common practice, no source: air-cooled
/// heads are taken to run a fixed number of degrees above the air.
const FOLLOWS: f64 = 1.0;

/// The head's temperature on a day of 15 °C: head + 1 · (15 °C − outside), in the head's unit.
///
/// So that summers and winters compare; never to be held against the engine maker's limit, which
/// means what the gauge shows. Common practice, no source.
///
/// # Errors
/// [`TrendFault::Unit`], [`TrendFault::Outside`].
pub fn standard_day(head: Quantity, outside: Quantity) -> Result<Quantity, TrendFault> {
    let air = outside.to(Unit::Celsius)?.value;
    if !AIR_CELSIUS.contains(&air) {
        let (low, high) = (*AIR_CELSIUS.start(), *AIR_CELSIUS.end());
        return Err(TrendFault::Outside { what: "the outside temperature in °C", low, high });
    }
    let corrected = head.to(Unit::Celsius)?.value + FOLLOWS * (STANDARD_DAY - air);
    Ok(Quantity::new(corrected, Unit::Celsius).to(head.unit)?)
}
