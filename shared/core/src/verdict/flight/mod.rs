//! Reasons that a flight prepared brings: load, fuel, air and wind, reckoned anew from what was stated.
//!
//! One reason for each part that was asked, also when all is well. Where several things are to be said of
//! a part, the gravest is its reason, and the others stand behind it.

mod air;
mod fault;
mod fuel;
mod load;
mod mix;
mod read;
mod wind;

use chrono::{DateTime, FixedOffset, TimeDelta};

use super::{CLOCK_SLACK, Fact, Question, Reason, Rule, State, looked_today, reason, today};
use crate::flight::{FlightFault, WindLimits};
use crate::record::{Digest, FlightPlanned};
use crate::said::Said;

pub use fault::fault_said;
pub use fuel::burn_said;
pub use mix::{MIX_RATIO, mix_parts};

/// How long air and wind hold. Our choice: thermals, sea breeze and storms come and go in less.
const MEASURED_HOLDS: TimeDelta = TimeDelta::hours(3);

/// A part of a flight's preparation.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// All-up weight.
    Load,
    /// Petrol and oil.
    Mix,
    /// How long the fuel lasts.
    Fuel,
    /// The air.
    Air,
    /// The wind.
    Wind,
}

impl Part {
    /// Every part, in the order in which they are asked.
    pub const ALL: [Self; 5] = [Self::Load, Self::Mix, Self::Fuel, Self::Air, Self::Wind];

    /// The part that a rule speaks of.
    pub fn of(rule: Rule) -> Option<Self> {
        Self::ALL.into_iter().find(|part| part.rule() == rule)
    }

    /// Its id.
    pub fn id(self) -> &'static str {
        match self {
            Part::Load => "load",
            Part::Mix => "mix",
            Part::Fuel => "fuel",
            Part::Air => "air",
            Part::Wind => "wind",
        }
    }

    fn rule(self) -> Rule {
        match self {
            Part::Load => Rule::Load,
            Part::Mix => Rule::Mix,
            Part::Fuel => Rule::FuelTime,
            Part::Air => Rule::ThinAir,
            Part::Wind => Rule::Wind,
        }
    }
}

impl Rule {
    /// Whether it speaks of a flight that is prepared: a newer plan may take its reasons away.
    pub fn of_flight(self) -> bool {
        matches!(
            self,
            Rule::Load
                | Rule::Mix
                | Rule::FuelTime
                | Rule::ThinAir
                | Rule::Wind
                | Rule::MeasuredEarlier
                | Rule::FlightNotPrepared
        )
    }
}

/// One thing to be said of a part.
struct Found {
    state: State,
    say: Said,
    clears: Said,
}

/// What a part comes to.
#[derive(Default)]
struct Come {
    found: Vec<Found>,
    facts: Vec<Said>,
}

impl Come {
    fn find(&mut self, state: State, say: Said, clears: &str) {
        self.found.push(Found { state, say, clears: Said::new(clears) });
    }

    /// Nothing to be said against it.
    fn well(&mut self, say: Said) {
        self.find(State::Fit, say, "clears-flight-well");
    }

    fn fact(&mut self, say: Said) {
        self.facts.push(say);
    }

    fn reason(mut self, part: Part, record: Option<Digest>) -> Option<Reason> {
        self.found.sort_by_key(|found| std::cmp::Reverse(found.state));
        let mut found = self.found.into_iter();
        let gravest = found.next()?;
        let others = found.map(|found| found.say).chain(self.facts);
        Some(Reason {
            state: gravest.state,
            rule: part.rule(),
            say: gravest.say,
            clears: gravest.clears,
            record,
            point: None,
            because: others.map(|say| Fact { say, record: None }).collect(),
        })
    }
}

/// All reasons of a flight prepared, or of one that wasn't.
pub(super) fn reasons(q: Question<'_>) -> Vec<Reason> {
    let planned = q.history.flight.as_ref().filter(|(plan, _)| {
        // An older plan is nothing: air, wind, fuel and pilot are others today.
        plan.at.with_timezone(q.now.offset()).date_naive() == today(q)
    });
    let mut reasons = Vec::new();
    if let Some((plan, record)) = planned {
        reasons.extend(parts(q, plan).into_iter().filter_map(|(part, come)| match come {
            Ok(come) => come.reason(part, *record),
            Err(fault) => Some(impossible(part, &fault, *record)),
        }));
        reasons.extend(earlier(q, plan, *record));
    }
    reasons.extend(not_prepared(q, planned.map(|(plan, _)| plan)));
    reasons
}

/// What is wrong in the parts of a plan, where something is.
pub fn flight_faults(q: Question<'_>, plan: &FlightPlanned) -> Vec<(Part, FlightFault)> {
    parts(q, plan).into_iter().filter_map(|(part, come)| Some((part, come.err()?))).collect()
}

fn parts(q: Question<'_>, plan: &FlightPlanned) -> Vec<(Part, Result<Come, FlightFault>)> {
    let mut parts = Vec::new();
    parts.extend(plan.load.as_ref().map(|plan| (Part::Load, load::load(q, plan))));
    parts.extend(plan.mix.as_ref().map(|plan| (Part::Mix, mix::mix(q, plan))));
    parts.extend(plan.fuel.as_ref().map(|plan| (Part::Fuel, fuel::fuel(plan))));
    parts.extend(plan.air.as_ref().map(|plan| (Part::Air, air::air(plan))));
    parts.extend(plan.wind.as_ref().map(|plan| (Part::Wind, wind::wind(q, plan))));
    parts
}

/// Figures that can't be: nothing is known then, and that grounds.
fn impossible(part: Part, fault: &FlightFault, record: Option<Digest>) -> Reason {
    Reason {
        record,
        because: vec![Fact { say: fault_said(fault), record: None }],
        ..reason(
            State::Grounded,
            part.rule(),
            Said::new("reason-flight-impossible").text("part", part.id()),
            "clears-flight-impossible",
        )
    }
}

/// Air and wind that were measured too long ago; or by a clock that is ahead, so that nobody knows when.
fn earlier(q: Question<'_>, plan: &FlightPlanned, record: Option<Digest>) -> Option<Reason> {
    let holds = |at: &DateTime<FixedOffset>| *at <= q.now + CLOCK_SLACK && q.now - *at <= MEASURED_HOLDS;
    let when = |measured: Option<DateTime<FixedOffset>>| measured.map_or(plan.at, |at| at.min(plan.at));
    let air = plan.air.map(|air| when(air.measured)).filter(|at| !holds(at));
    let wind = plan.wind.map(|wind| when(wind.measured)).filter(|at| !holds(at));
    let what = match (air, wind) {
        (Some(_), Some(_)) => "both",
        (Some(_), None) => "air",
        (None, _) => "wind",
    };
    let at = air.into_iter().chain(wind).min()?.with_timezone(q.now.offset());
    Some(Reason {
        record,
        ..reason(
            State::Limited,
            Rule::MeasuredEarlier,
            Said::new("reason-measured-earlier").text("what", what).text("time", at.format("%H:%M")),
            "clears-measured-earlier",
        )
    })
}

/// What the wing's range and the school's wind limits ask for, and nobody worked out today. Only beside
/// today's full look: before it, the look itself is what is missing.
fn not_prepared(q: Question<'_>, plan: Option<&FlightPlanned>) -> Option<Reason> {
    if !looked_today(q) {
        return None;
    }
    let described = q.history.machine.as_ref().map(|(machine, _)| machine);
    let wing = described.is_some_and(|machine| machine.wing_load.is_some());
    let load = wing && plan.is_none_or(|plan| plan.load.is_none());
    let wind = q.limits.wind != WindLimits::default() && plan.is_none_or(|plan| plan.wind.is_none());
    let what = match (load, wind) {
        (true, true) => "both",
        (true, false) => "load",
        (false, true) => "wind",
        (false, false) => return None,
    };
    Some(reason(
        State::Limited,
        Rule::FlightNotPrepared,
        Said::new("reason-flight-not-prepared").text("what", what),
        "clears-flight-not-prepared",
    ))
}
