//! What the air does to thrust and run.

use super::read::{percent, tens};
use super::{Come, State};
use crate::flight::{FlightFault, thin_air};
use crate::record::AirPlanned;
use crate::said::Said;

/// From this share of thrust lost on, thin air is a limit. Our choice: about what a thousand metres do, and
/// what a pilot feels on the run.
const THRUST_LOST: f64 = 0.10;

pub(super) fn air(plan: &AirPlanned) -> Result<Come, FlightFault> {
    let air = crate::flight::air(plan.pressure, plan.temperature, plan.dew_point)?;
    let thin = thin_air(air.density, air.density_altitude)?;
    let lost = 1.0 - thin.thrust;
    let said = |id: &str| {
        Said::new(id)
            .quantity("altitude", tens(air.density_altitude))
            .number("thrust", percent(lost))
            .number("run", percent(thin.roll - 1.0).round())
    };
    let mut come = Come::default();
    if lost >= THRUST_LOST - 1e-9 {
        come.find(State::Limited, said("reason-air-thin"), "clears-air");
    } else {
        come.well(said("reason-air"));
    }
    come.fact(
        Said::new("fact-air")
            .quantity("altitude", tens(air.pressure_altitude))
            .number("speed", percent(thin.speed - 1.0)),
    );
    if air.taken_as_dry {
        come.fact(Said::new("fact-air-dry"));
    }
    come.fact(Said::new("fact-air-rule"));
    Ok(come)
}
