//! Whether the fuel lasts for the flight and its reserve.

use super::read::{tenths, tenths_down, tenths_up, time};
use super::{Come, State};
use crate::flight::{FlightFault, Lasts, Spread, endurance, flight_hours};
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
    let by = match lasting.by {
        Spread::LeastAndMost => "fact-fuel-burn",
        Spread::Predicted => "fact-fuel-burn-predicted",
    };
    come.fact(
        Said::new(by)
            .quantity("low", tenths_down(slow))
            .quantity("high", tenths_up(fast))
            .number("flights", lasting.flights as f64),
    );
    come.fact(Said::new("fact-fuel-reserve").quantity("reserve", tenths(plan.reserve.0)));
    Ok(come)
}
