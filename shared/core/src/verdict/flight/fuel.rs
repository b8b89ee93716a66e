//! Whether the fuel lasts for the flight and its reserve.

use super::read::{tenths, tenths_down, tenths_up, time};
use super::{Come, State};
use crate::flight::{Burning, FlightFault, Lasts, Spread, endurance, flight_hours};
use crate::record::FuelPlanned;
use crate::said::Said;
use crate::told::{Told, TooLittle};

pub(super) fn fuel(plan: &FuelPlanned) -> Result<Come, FlightFault> {
    let wanted = time(flight_hours(plan.flight_time)?);
    let mut come = Come::default();
    let lasting = match endurance(plan.on_board, &plan.burns, plan.reserve)? {
        Told::Told(lasting) => lasting,
        Told::TooLittle(why) => {
            let (has, needs) = match why {
                TooLittle::Few { has, needs } => (has, needs),
                _ => (plan.burns.len(), plan.burns.len() + 1),
            };
            let say = Said::new("reason-fuel-unknown");
            let say = say.number("has", has as f64).number("needs", needs as f64);
            come.find(State::Limited, say, "clears-fuel-unknown");
            return Ok(come);
        }
    };
    let say = |id: &str| {
        Said::new(id)
            .figures("low", time(lasting.low.value))
            .figures("high", time(lasting.high.value))
            .figures("time", &wanted)
    };
    match lasting.lasts(plan.flight_time)? {
        Lasts::Surely => come.well(say("reason-fuel")),
        Lasts::Perhaps => come.find(State::Limited, say("reason-fuel-perhaps"), "clears-fuel"),
        Lasts::No => come.find(State::Grounded, say("reason-fuel-short"), "clears-fuel"),
    }
    let (slow, fast) = lasting.burn;
    come.fact(burn_said(&Burning { slow, fast, by: lasting.by, flights: lasting.flights }));
    come.fact(Said::new("fact-fuel-reserve").quantity("reserve", tenths(plan.reserve.0)));
    Ok(come)
}

/// What an engine burns, and what that rests on.
pub fn burn_said(burning: &Burning) -> Said {
    Said::new(match burning.by {
        Spread::LeastAndMost => "fact-fuel-burn",
        Spread::Predicted => "fact-fuel-burn-predicted",
    })
    .quantity("low", tenths_down(burning.slow))
    .quantity("high", tenths_up(burning.fast))
    .number("flights", burning.flights as f64)
}
