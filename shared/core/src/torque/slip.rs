//! Units mistaken for each other: lbf·in for lbf·ft is twelve times, and breaks studs.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::{Between, Place, quantities};
use super::fault::{TorqueFault, positive};
use crate::units::{Quantity, Unit};

/// A mistake that would explain a reading outside its band.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Slip {
    /// The scale that was used or written down.
    pub taken: Unit,
    /// The one that would have been right.
    pub meant: Unit,
    /// What the same number is in the unit that was meant, in the band's unit.
    pub would_be: Quantity,
    /// How many times too much, or, below 1, too little.
    pub times: f64,
}

const SCALES: [Unit; 5] = [
    Unit::PoundForceInch,
    Unit::PoundForceFoot,
    Unit::NewtonMetre,
    Unit::KilogramForceCentimetre,
    Unit::KilogramForceMetre,
];

/// Which mistakes would put `reading` back into the band, widened by `tolerance` (a share,
/// such as the tool's deviation); the likeliest first. Empty for a reading inside the band.
///
/// Two kinds are looked for: the right number written with the wrong unit, and the band's
/// number set on a wrench's other scale. Whether the nut really had that torque only the
/// person knows; if so, see [`super::Joint::clamp`] for what it may have done.
///
/// # Errors
/// [`TorqueFault`].
pub fn slips(reading: Quantity, band: Between<Quantity>, tolerance: f64) -> Result<Vec<Slip>, TorqueFault> {
    let newton = positive(reading, Unit::NewtonMetre, "the reading")?;
    let ends = band.positive(band.low.unit, "the band")?;
    let share = Between::just(tolerance).checked("the tolerance", 0.0, 0.2, "from 0 to 0.2")?.low;
    if band.place(reading)? == Place::Inside {
        return Ok(Vec::new());
    }
    let wide = quantities(Between::new(ends.low * (1.0 - share), ends.high * (1.0 + share)), band.low.unit)?;
    let middle = band.middle()?.value;
    let mut found = Vec::new();
    for taken in SCALES {
        let number = reading.to(taken)?.value;
        for meant in SCALES {
            let candidate = taken != meant && (taken == reading.unit || meant == band.low.unit);
            let would_be = Quantity::new(number, meant).to(band.low.unit)?;
            if candidate && wide.place(would_be)? == Place::Inside {
                let times = newton / would_be.to(Unit::NewtonMetre)?.value;
                found.push(Slip { taken, meant, would_be, times });
            }
        }
    }
    found.sort_by(|a, b| {
        let off = |slip: &Slip| (slip.would_be.value / middle).ln().abs();
        off(a).total_cmp(&off(b))
    });
    Ok(found)
}
