//! The wind against the pilot's own limits and the school's.

use super::{Come, Question, State};
use crate::flight::{FlightFault, Over, WindLimits, WindStanding, wind_standing};
use crate::record::WindPlanned;
use crate::said::Said;
use crate::units::Quantity;

pub(super) fn wind(q: Question<'_>, plan: &WindPlanned) -> Result<Come, FlightFault> {
    // Also where nobody set a limit: there must be such a wind.
    plan.wind.speeds()?;
    let mut come = Come::default();
    let limits = [("own", plan.limits), ("school", q.limits.wind)];
    let set: Vec<(&str, WindLimits)> =
        limits.into_iter().filter(|(_, limits)| *limits != WindLimits::default()).collect();
    let mut within = true;
    for (whose, limits) in &set {
        let standing = wind_standing(&plan.wind, limits)?;
        within &= standing.within;
        for over in &standing.over {
            passed(plan, whose, limits, &standing, *over, &mut come);
        }
        come.fact(set_limits(whose, limits));
    }
    if set.is_empty() {
        come.find(State::Limited, measured("reason-wind-no-limit", plan), "clears-wind-no-limit");
    } else if within {
        come.well(measured("reason-wind", plan));
    }
    Ok(come)
}

/// A limit that isn't kept, or of which nobody knows.
fn passed(
    plan: &WindPlanned,
    whose: &str,
    limits: &WindLimits,
    standing: &WindStanding,
    over: Over,
    come: &mut Come,
) {
    let said = |id: &str| measured(id, plan).text("whose", whose);
    let limit = |said: Said, limit: Option<Quantity>| match limit {
        Some(limit) => said.quantity("limit", limit),
        None => said,
    };
    let say = match over {
        Over::Mean => limit(said("reason-wind-mean"), limits.mean),
        Over::Gust => limit(said("reason-wind-gust"), limits.gust),
        Over::GustFactor => {
            let said =
                said("reason-wind-gust-factor").number("limit", limits.gust_factor.unwrap_or_default());
            match standing.gust_factor {
                Some(factor) => said.number("factor", (factor * 100.0).round() / 100.0),
                None => said.text("factor", "none"),
            }
        }
        Over::GustUnknown => {
            return come.find(State::Limited, said("reason-wind-gust-unknown"), "clears-wind-gust-unknown");
        }
    };
    come.find(State::Grounded, say, "clears-wind");
}

/// A message that speaks of the wind as it was measured.
fn measured(id: &str, plan: &WindPlanned) -> Said {
    let said = Said::new(id).quantity("mean", plan.wind.mean);
    match plan.wind.gust {
        Some(gust) => said.quantity("gust", gust),
        None => said.text("gust", "none"),
    }
}

/// The limits that somebody set.
fn set_limits(whose: &str, limits: &WindLimits) -> Said {
    let mut said = Said::new("fact-wind-limits").text("whose", whose);
    for (name, limit) in [("mean", limits.mean), ("gust", limits.gust)] {
        said = match limit {
            Some(limit) => said.quantity(name, limit),
            None => said.text(name, "none"),
        };
    }
    match limits.gust_factor {
        Some(factor) => said.number("factor", factor),
        None => said.text("factor", "none"),
    }
}
