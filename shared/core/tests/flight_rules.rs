//! What a flight prepared brings to the verdict: each rule at its edge. Sums are by hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::plans::*;
use common::*;
use witnessmark_core::flight::{FlightFault, Pressure, Ratio, WindLimits};
use witnessmark_core::list::{Inspecting, Limits, Meaning, Sheet, read_sheet};
use witnessmark_core::record::{AirPlanned, FlightPlanned, LoadPlanned, WingLoad};
use witnessmark_core::said::{Arg, Said};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Part, Question, Reason, Rule, State, Verdict, flight_faults, judge};

/// A machine looked over today, and what was prepared since.
struct Field {
    world: World,
    sheet: Sheet,
    limits: Limits,
}

impl Field {
    fn new() -> Self {
        Self { world: World::fit(), sheet: confirmed_sheet(), limits: Limits::default() }
    }

    fn prepares(&mut self, part: impl FnOnce(&mut FlightPlanned)) -> Digest {
        let mut planned = plan(self.world.now + TimeDelta::minutes(1));
        part(&mut planned);
        self.world.write(0, Some(machine()), Body::FlightPlanned(Box::new(planned)))
    }

    fn ask<T>(&self, by: TimeDelta, ask: impl FnOnce(Question<'_>) -> T) -> T {
        ask(Question {
            history: &self.world.history(),
            sheet: Some(&self.sheet),
            now: self.world.now + by,
            people: &BTreeMap::new(),
            persons: &BTreeMap::new(),
            split: &[],
            refused: 0,
            limits: &self.limits,
        })
    }

    fn later(&self, by: TimeDelta) -> Verdict {
        self.ask(by, judge)
    }

    fn verdict(&self) -> Verdict {
        self.later(TimeDelta::zero())
    }
}

/// The one reason of a plan with one part in it.
fn comes(part: impl FnOnce(&mut FlightPlanned)) -> Reason {
    let mut field = Field::new();
    field.prepares(part);
    one(field.verdict())
}

fn one(verdict: Verdict) -> Reason {
    assert_eq!(verdict.reasons.len(), 1, "{verdict:?}");
    verdict.reasons.into_iter().next().unwrap()
}

fn said(reason: &Reason) -> (State, Rule, &str) {
    (reason.state, reason.rule, &reason.say.id)
}

fn arg(said: &Said, name: &str) -> Quantity {
    match &said.args[name] {
        Arg::Quantity(quantity) => *quantity,
        other => unreachable!("{other:?}"),
    }
}

fn facts(reason: &Reason) -> Vec<&str> {
    reason.because.iter().map(|fact| fact.say.id.as_str()).collect()
}

#[test]
fn all_up_weight_is_told_with_its_margin_also_when_all_is_well() {
    // 90 + 30 + 8 = 128 kg, 12 kg below 140.
    let reason = comes(|plan| plan.load = Some(load(90.0, 8.0)));
    assert_eq!(said(&reason), (State::Fit, Rule::Load, "reason-load"));
    assert_eq!((arg(&reason.say, "total"), arg(&reason.say, "below")), (kg(128.0), kg(12.0)));
    assert!(reason.record.is_some());
    assert!(facts(&reason).contains(&"fact-load-source"));
}

#[test]
fn the_most_counts_at_launch_and_the_least_with_the_tank_run_dry() {
    let with = |pilot, fuel| comes(|plan| plan.load = Some(load(pilot, fuel)));
    assert_eq!(with(102.0, 8.0).state, State::Fit, "140 kg are within");
    let over = with(102.0, 8.04);
    assert_eq!(said(&over), (State::Grounded, Rule::Load, "reason-load-over"));
    assert_eq!(arg(&over.say, "over"), kg(0.1), "what is too much never looks like nothing");
    assert_eq!(with(65.0, 8.0).state, State::Fit, "95 kg dry are within");
    let under = with(64.0, 8.0);
    assert_eq!(said(&under), (State::Grounded, Rule::Load, "reason-load-under"));
    assert_eq!(arg(&under.say, "under"), kg(1.0));
}

#[test]
fn fuel_by_volume_counts_as_the_heaviest_petrol() {
    // EN 228 allows 775 kg/m³ at most (from memory): 8 L are 6.2 kg.
    let reason = comes(|plan| {
        let mut load = load(90.0, 0.0);
        load.loads.fuel = litres(8.0);
        plan.load = Some(load);
    });
    assert_eq!(arg(&reason.say, "total"), kg(126.2));
    let fact = reason.because.iter().find(|fact| fact.say.id == "fact-load-fuel").unwrap();
    assert_eq!(arg(&fact.say, "mass"), kg(6.2));
}

#[test]
fn a_range_that_no_manual_confirms_limits_and_past_it_grounds_all_the_same() {
    let with = |pilot: f64, document: &str, page: &str| {
        comes(|plan| {
            let wing = WingLoad { document: document.into(), page: page.into(), ..wing() };
            plan.load = Some(LoadPlanned { wing, ..load(pilot, 8.0) });
        })
    };
    let reason = with(90.0, "", "");
    assert_eq!(said(&reason), (State::Limited, Rule::Load, "reason-load-unconfirmed"));
    assert!(facts(&reason).contains(&"reason-load"), "the sum is told all the same");
    assert_eq!(with(90.0, "invented", " ").state, State::Limited, "no page");
    let over = with(120.0, "", "");
    assert_eq!(said(&over), (State::Grounded, Rule::Load, "reason-load-over"));
    assert!(facts(&over).contains(&"reason-load-unconfirmed"));
}

#[test]
fn above_the_range_without_a_motor_is_fit_and_said() {
    let with = |free: f64| {
        comes(|plan| {
            let wing = WingLoad { without_motor: Some(range(80.0, free)), ..wing() };
            plan.load = Some(LoadPlanned { wing, ..load(90.0, 8.0) });
        })
    };
    let reason = with(120.0);
    assert_eq!(reason.state, State::Fit);
    let fact = reason.because.iter().find(|fact| fact.say.id == "fact-load-free").unwrap();
    assert_eq!((arg(&fact.say, "over"), arg(&fact.say, "most")), (kg(8.0), kg(120.0)));
    assert!(!facts(&with(128.0)).contains(&"fact-load-free"));
}

#[test]
fn the_description_of_today_says_what_the_wing_may_carry() {
    let mut field = Field::new();
    field.prepares(|plan| plan.load = Some(load(90.0, 8.0)));
    let narrow = WingLoad { with_motor: range(80.0, 120.0), ..wing() };
    let machine_now = Machine { wing_load: Some(narrow), ..described() };
    field.world.write(0, Some(machine()), Body::Machine(machine_now));
    let reason = one(field.verdict());
    assert_eq!(reason.state, State::Grounded);
    assert!(facts(&reason).contains(&"fact-load-described-anew"));
}

/// A data sheet whose manual asks for a ratio.
fn by_manual(low: &str, high: &str) -> Sheet {
    let source = "source = { document = \"invented manual\", page = \"3\" }";
    let text = format!(
        "id = \"invented\"\nname = \"Invented\"\nkind = \"two-stroke\"\n[bands.mix-ratio]\n\
         low = {{ {low}, {source} }}\nhigh = {{ {high}, {source} }}\n"
    );
    read_sheet("invented.toml", &text).unwrap()
}

fn mix_of(change: impl FnOnce(&mut Field, &mut FlightPlanned)) -> Reason {
    let mut field = Field::new();
    field.sheet = by_manual("value = 50, unit = \"1\"", "value = 50, unit = \"1\"");
    let mut planned = plan(field.world.now + TimeDelta::minutes(1));
    change(&mut field, &mut planned);
    field.world.write(0, Some(machine()), Body::FlightPlanned(Box::new(planned)));
    one(field.verdict())
}

#[test]
fn oil_is_enough_from_nineteen_twentieths_to_five_quarters_of_what_is_wanted() {
    let with = |oil| mix_of(|_, plan| plan.mix = Some(mixed(oil)));
    // 0.2 L are wanted: 0.19 and 0.25 are the ends.
    for (oil, state, id) in [
        (0.20, State::Fit, "reason-mix"),
        (0.19, State::Fit, "reason-mix"),
        (0.25, State::Fit, "reason-mix"),
        (0.189, State::Grounded, "reason-mix-lean"),
        (0.0, State::Grounded, "reason-mix-lean"),
        (0.251, State::Limited, "reason-mix-rich"),
    ] {
        assert_eq!(said(&with(Some(oil))), (state, Rule::Mix, id), "{oil} L");
    }
    assert_eq!(arg(&with(Some(0.15)).say, "oil"), litres(0.05));
    // 0.3 L are right for 15 L of petrol: 5 L more.
    assert_eq!(arg(&with(Some(0.3)).say, "petrol"), litres(5.0));
    let none = with(Some(0.0));
    assert_eq!(none.say.args["ratio"], Arg::Text("none".into()));
}

#[test]
fn oil_not_poured_in_yet_is_told_to_be_added() {
    let reason = mix_of(|_, plan| plan.mix = Some(mixed(None)));
    assert_eq!(said(&reason), (State::Limited, Rule::Mix, "reason-mix-add"));
    assert_eq!(arg(&reason.say, "oil"), litres(0.2));
    // A tank full of the right mix needs nothing.
    let full = mix_of(|_, plan| {
        let mut full = mixed(None);
        full.mix.in_tank = litres(5.1);
        full.mix.ratio_in_tank = Some(Ratio::new(50.0).unwrap());
        full.mix.add_fuel = litres(0.0);
        plan.mix = Some(full);
    });
    assert_eq!(said(&full), (State::Fit, Rule::Mix, "reason-mix"));
}

#[test]
fn a_ratio_that_no_manual_confirms_limits_and_one_leaner_than_the_manuals_grounds() {
    let wanted = |ratio: f64| {
        move |_: &mut Field, plan: &mut FlightPlanned| {
            let mut mix = mixed(Some(10.0 / ratio));
            mix.mix.target_ratio = Ratio::new(ratio).unwrap();
            plan.mix = Some(mix);
        }
    };
    for (ratio, state, id) in [
        (50.0, State::Fit, "reason-mix"),
        (52.0, State::Fit, "reason-mix"),
        (53.0, State::Grounded, "reason-mix-manual-lean"),
        (40.0, State::Fit, "reason-mix"),
        (39.0, State::Limited, "reason-mix-manual-rich"),
    ] {
        assert_eq!(said(&mix_of(wanted(ratio))), (state, Rule::Mix, id), "{ratio}:1");
    }
    let unconfirmed = mix_of(|field, plan| {
        field.sheet = confirmed_sheet();
        plan.mix = Some(mixed(Some(0.2)));
    });
    assert_eq!(said(&unconfirmed), (State::Limited, Rule::Mix, "reason-mix-unconfirmed"));
    assert!(facts(&unconfirmed).contains(&"reason-mix"));
    // A manual may speak of percent of oil: 2 % to the petrol is 50:1.
    let percent = mix_of(|field, plan| {
        field.sheet = by_manual("value = 2, unit = \"%\"", "value = 2, unit = \"%\"");
        plan.mix = Some(mixed(Some(0.2)));
    });
    assert_eq!(percent.state, State::Fit);
    // The owner's own word on this machine.
    let own = mix_of(|field, plan| {
        field.sheet = confirmed_sheet();
        let body = Body::LimitConfirmed(LimitConfirmed {
            band: "mix-ratio".into(),
            low: Some(q(50.0, Unit::One)),
            high: Some(q(50.0, Unit::One)),
            document: "invented manual".into(),
            page: "3".into(),
        });
        field.world.write(0, Some(machine()), body);
        plan.at = field.world.now + TimeDelta::minutes(1);
        plan.mix = Some(mixed(Some(0.2)));
    });
    assert_eq!(own.state, State::Fit);
}

#[test]
fn fuel_lasts_surely_perhaps_or_not() {
    let with = |time| comes(|plan| plan.fuel = Some(fuelled(time)));
    // 9 L at 3.6 L/h are 2.5 h, at 3.0 L/h 3 h.
    for (time, state, id) in [
        (2.5, State::Fit, "reason-fuel"),
        (2.51, State::Limited, "reason-fuel-perhaps"),
        (3.0, State::Limited, "reason-fuel-perhaps"),
        (3.01, State::Grounded, "reason-fuel-short"),
    ] {
        assert_eq!(said(&with(time)), (state, Rule::FuelTime, id), "{time} h");
    }
    let reason = with(1.25);
    assert_eq!(reason.say.args["low"], Arg::Figures("2 h 30 min".into()));
    assert_eq!(reason.say.args["time"], Arg::Figures("1 h 15 min".into()));
    assert_eq!(facts(&reason), ["fact-fuel-burn", "fact-fuel-reserve"]);
}

#[test]
fn two_flights_are_too_few_to_say_how_long_fuel_lasts() {
    let reason = comes(|plan| {
        let mut fuel = fuelled(0.5);
        fuel.burns.pop();
        plan.fuel = Some(fuel);
    });
    assert_eq!(said(&reason), (State::Limited, Rule::FuelTime, "reason-fuel-unknown"));
    assert_eq!((&reason.say.args["has"], &reason.say.args["needs"]), (&Arg::Number(2.0), &Arg::Number(3.0)));
    assert!(!reason.say.args.contains_key("low"), "nothing that looks like a figure");
}

/// A tenth of the standard atmosphere's density is gone at 1 084 m: 44 330.8·(1 − 0.9^(1/4.2559)), by the
/// formula (ICAO Doc 7488; from memory).
#[test]
fn thin_air_limits_from_a_tenth_of_the_thrust_on() {
    let with = |height| comes(|plan| plan.air = Some(standard_air(height)));
    assert_eq!(said(&with(1_083.0)), (State::Fit, Rule::ThinAir, "reason-air"));
    let thin = with(1_085.0);
    assert_eq!(said(&thin), (State::Limited, Rule::ThinAir, "reason-air-thin"));
    assert_eq!(thin.say.args["thrust"], Arg::Number(10.0));
    assert_eq!(arg(&thin.say, "altitude"), q(1_090.0, Unit::Metre));
    assert_eq!(facts(&thin), ["fact-air", "fact-air-dry", "fact-air-rule"]);
    let damp = comes(|plan| {
        plan.air = Some(AirPlanned { dew_point: Some(q(5.0, Unit::Celsius)), ..standard_air(0.0) })
    });
    assert!(!facts(&damp).contains(&"fact-air-dry"));
}

#[test]
fn wind_is_held_against_the_pilots_limits_and_the_schools() {
    let with = |mean, gust, own: WindLimits, school: WindLimits| {
        let mut field = Field::new();
        field.limits.wind = school;
        field.prepares(|plan| plan.wind = Some(windy(mean, gust, own)));
        one(field.verdict())
    };
    let none = WindLimits::default();
    let own = |mean, gust| with(mean, gust, wind_limits(), none);
    assert_eq!(said(&own(18.0, Some(28.0))), (State::Fit, Rule::Wind, "reason-wind"), "at the limits");
    assert_eq!(said(&own(18.1, Some(20.0))), (State::Grounded, Rule::Wind, "reason-wind-mean"));
    assert_eq!(said(&own(18.0, Some(28.1))), (State::Grounded, Rule::Wind, "reason-wind-gust"));
    assert_eq!(said(&own(10.0, Some(16.1))), (State::Grounded, Rule::Wind, "reason-wind-gust-factor"));
    assert_eq!(said(&own(10.0, None)), (State::Limited, Rule::Wind, "reason-wind-gust-unknown"));
    let unset = with(10.0, Some(12.0), none, none);
    assert_eq!(said(&unset), (State::Limited, Rule::Wind, "reason-wind-no-limit"));
    // The school's narrower limit counts beside one's own, and the other way round.
    let narrow = WindLimits { mean: Some(kmh(12.0)), ..none };
    let school = with(15.0, Some(16.0), wind_limits(), narrow);
    assert_eq!(said(&school), (State::Grounded, Rule::Wind, "reason-wind-mean"));
    assert_eq!(school.say.args["whose"], Arg::Text("school".into()));
    let pilot = with(15.0, Some(16.0), narrow, wind_limits());
    assert_eq!((pilot.state, &pilot.say.args["whose"]), (State::Grounded, &Arg::Text("own".into())));
    assert_eq!(with(11.0, Some(12.0), none, narrow).state, State::Fit, "the school's alone");
}

#[test]
fn air_and_wind_hold_for_three_hours() {
    let mut field = Field::new();
    field.prepares(|plan| {
        plan.air = Some(standard_air(0.0));
        plan.wind = Some(windy(10.0, Some(12.0), wind_limits()));
    });
    let aged = |by| field.later(by).reasons.into_iter().find(|reason| reason.rule == Rule::MeasuredEarlier);
    assert_eq!(aged(TimeDelta::hours(3)), None);
    let reason = aged(TimeDelta::hours(3) + TimeDelta::seconds(1)).unwrap();
    assert_eq!(reason.state, State::Limited);
    assert_eq!(reason.say.args["time"], Arg::Text(field.world.now.format("%H:%M").to_string()));
    assert_eq!(reason.say.args["what"], Arg::Text("both".into()));
    // A plan dated ahead of the reader's clock: nobody knows when it was measured.
    assert!(aged(TimeDelta::minutes(-11)).is_some());
    assert!(aged(TimeDelta::minutes(-9)).is_none());
}

#[test]
fn what_was_measured_before_the_plan_was_worked_out_is_as_old_as_it_is() {
    let mut field = Field::new();
    let early = field.world.now - TimeDelta::hours(4);
    field.prepares(|plan| {
        plan.load = Some(load(90.0, 8.0));
        let wind = windy(10.0, Some(12.0), wind_limits());
        plan.wind = Some(witnessmark_core::record::WindPlanned { measured: Some(early), ..wind });
    });
    let verdict = field.verdict();
    let reason = verdict.reasons.iter().find(|reason| reason.rule == Rule::MeasuredEarlier).unwrap();
    assert_eq!(reason.say.args["what"], Arg::Text("wind".into()));
    assert_eq!(reason.say.args["time"], Arg::Text(early.format("%H:%M").to_string()));
    // Nobody measures after the moment for which the plan was worked out.
    let mut field = Field::new();
    let ahead = field.world.now + TimeDelta::hours(4);
    field.prepares(|plan| {
        let wind = windy(10.0, Some(12.0), wind_limits());
        plan.wind = Some(witnessmark_core::record::WindPlanned { measured: Some(ahead), ..wind });
    });
    let later = field.later(TimeDelta::hours(4));
    assert!(later.reasons.iter().any(|reason| reason.rule == Rule::MeasuredEarlier));
}

#[test]
fn a_plan_of_another_day_is_nothing() {
    let mut field = Field::new();
    field.prepares(|plan| plan.load = Some(load(150.0, 8.0)));
    assert_eq!(field.verdict().state, State::Grounded);
    let midnight = at("2026-05-03T00:00:00+02:00") - field.world.now;
    assert_eq!(field.later(midnight - TimeDelta::seconds(1)).state, State::Grounded);
    let rules: Vec<Rule> = field.later(midnight).reasons.iter().map(|reason| reason.rule).collect();
    assert_eq!(rules, [Rule::NotToday]);
}

#[test]
fn a_newer_plan_stands_in_an_older_ones_place() {
    let mut field = Field::new();
    field.prepares(|plan| plan.load = Some(load(150.0, 8.0)));
    let newer = field.prepares(|plan| plan.load = Some(load(90.0, 8.0)));
    let reason = one(field.verdict());
    assert_eq!((reason.state, reason.record), (State::Fit, Some(newer)));
}

#[test]
fn what_nobody_prepared_is_told_once_the_machine_was_looked_over_today() {
    let without = |what: &str, field: &Field| {
        let reason = one(field.verdict());
        assert_eq!(said(&reason), (State::Limited, Rule::FlightNotPrepared, "reason-flight-not-prepared"));
        assert_eq!(reason.say.args["what"], Arg::Text(what.into()));
    };
    let mut field = Field::new();
    let with_wing = Machine { wing_load: Some(wing()), ..described() };
    field.world.write(0, Some(machine()), Body::Machine(with_wing.clone()));
    without("load", &field);
    field.limits.wind = wind_limits();
    without("both", &field);
    let rules = |verdict: Verdict| verdict.reasons.iter().map(|reason| reason.rule).collect::<Vec<_>>();
    field.prepares(|plan| plan.load = Some(load(90.0, 8.0)));
    assert_eq!(rules(field.verdict()), [Rule::FlightNotPrepared, Rule::Load], "the wind is wanting still");
    field.prepares(|plan| {
        plan.load = Some(load(90.0, 8.0));
        plan.wind = Some(windy(10.0, Some(12.0), WindLimits::default()));
    });
    assert_eq!(rules(field.verdict()), [Rule::Load, Rule::Wind]);
    assert_eq!(rules(field.later(TimeDelta::days(1))), [Rule::NotToday], "not told twice over");
    // Before the first look, that look is what is missing.
    let mut field = Field { world: World::new(1), ..Field::new() };
    field.world.write(0, Some(machine()), Body::Machine(with_wing));
    assert_eq!(rules(field.verdict()), [Rule::NeverLooked]);
}

#[test]
fn a_component_not_looked_at_for_longer_than_the_school_allows_limits() {
    let every = |hours| Inspecting { every_hours: hours, chance: 0.02 };
    let over = |hours: f64, looked: bool| {
        let mut field = Field { world: World::new(1), ..Field::new() };
        field.limits.inspect =
            BTreeMap::from([("exhaust".into(), every(25.0)), ("starter".into(), every(1.0))]);
        let fitted = BTreeMap::from([("exhaust".into(), String::new())]);
        let with = |hours| Machine { hours, fitted: fitted.clone(), reserve: None, ..described() };
        field.world.write(0, Some(machine()), Body::Machine(with(10.0)));
        let seen = Finding { component: "exhaust".into(), ..finding("spring", Meaning::Serviceable) };
        // The look is at 10 h.
        field.world.write(0, Some(machine()), look(if looked { vec![seen] } else { vec![] }));
        field.world.write(0, Some(machine()), Body::Machine(with(hours)));
        field.verdict()
    };
    assert_eq!(over(35.0, true).reasons, [], "exactly the interval is within");
    let reason = one(over(35.5, true));
    assert_eq!(said(&reason), (State::Limited, Rule::InspectOver, "reason-inspect-over"));
    assert_eq!(reason.say.args["hours"], Arg::Figures("25.5".into()));
    assert_eq!(reason.say.args["part"], Arg::Word("part-exhaust".into()), "the starter isn't fitted");
    assert_eq!(over(25.0, false).reasons, []);
    assert_eq!(said(&one(over(25.1, false))).2, "reason-inspect-never");
}

#[test]
fn figures_that_cannot_be_ground_and_say_which() {
    let comes = |part: fn(&mut FlightPlanned)| {
        let mut field = Field::new();
        let mut planned = plan(field.world.now);
        part(&mut planned);
        field.world.write(0, Some(machine()), Body::FlightPlanned(Box::new(planned.clone())));
        let faults = field.ask(TimeDelta::zero(), |q| flight_faults(q, &planned));
        let reason = one(field.verdict());
        assert_eq!((reason.state, reason.say.id.as_str()), (State::Grounded, "reason-flight-impossible"));
        assert_eq!(faults.len(), 1);
        assert_eq!(Part::of(reason.rule), Some(faults[0].0));
        (reason.because[0].say.clone(), faults.into_iter().next().unwrap().1)
    };
    let (words, _) = comes(|plan| plan.load = Some(load(-80.0, 8.0)));
    assert_eq!(words.id, "flight-fault-impossible");
    assert_eq!(words.args["what"], Arg::Word("input-pilot".into()));
    let (words, _) = comes(|plan| {
        let mut load = load(80.0, 8.0);
        load.loads.pilot = litres(80.0);
        plan.load = Some(load);
    });
    assert_eq!(words.id, "flight-fault-unit");
    let (words, _) = comes(|plan| {
        let mut load = load(80.0, 8.0);
        load.wing.with_motor = range(140.0, 95.0);
        plan.load = Some(load);
    });
    assert_eq!(words.id, "flight-fault-backwards");
    let (words, _) = comes(|plan| {
        let mut mix = mixed(Some(0.2));
        mix.mix.add_fuel = litres(0.0);
        plan.mix = Some(mix);
    });
    assert_eq!(words.args["what"], Arg::Word("input-tank-or-fuel".into()));
    assert_eq!(comes(|plan| plan.mix = Some(mixed(Some(-0.2)))).0.id, "flight-fault-impossible");
    assert_eq!(
        comes(|plan| plan.fuel = Some(fuelled(0.0))).0.args["what"],
        Arg::Word("input-flight-time".into())
    );
    // Also where there are too few flights to say anything else.
    let (words, _) = comes(|plan| {
        plan.fuel = Some(witnessmark_core::record::FuelPlanned { burns: vec![], ..fuelled(-1.0) })
    });
    assert_eq!(words.args["what"], Arg::Word("input-flight-time".into()));
    let (words, fault) = comes(|plan| {
        let pressure = Pressure::Field(q(29.92, Unit::Hectopascal));
        plan.air = Some(AirPlanned { pressure, ..standard_air(0.0) });
    });
    assert_eq!(words.id, "flight-fault-outside");
    assert_eq!(words.args["value"], Arg::Figures("29.92 hPa".into()));
    assert_eq!(words.args["high"], Arg::Figures("1085 hPa".into()), "in the unit that was typed");
    assert!(matches!(fault, FlightFault::Outside { .. }));
    let (words, _) = comes(|plan| {
        plan.air = Some(AirPlanned { dew_point: Some(q(16.0, Unit::Celsius)), ..standard_air(0.0) })
    });
    assert_eq!(words.id, "flight-fault-above-saturation");
    let calm = comes(|plan| plan.wind = Some(windy(12.0, Some(11.0), WindLimits::default())));
    assert_eq!(calm.1, FlightFault::CalmGust, "also where nobody set a limit");
}

#[test]
fn a_ratio_that_is_none_is_told_and_nothing_else_is_lost() {
    let text = r#"{ "at": "2026-05-02T12:10:00+02:00", "mix": { "mix": {
        "in_tank": { "value": 0, "unit": "L" }, "ratio_in_tank": null, "target_ratio": 2,
        "add_fuel": { "value": 5, "unit": "L" } } } }"#;
    let planned: FlightPlanned = serde_json::from_str(text).unwrap();
    let mut field = Field::new();
    field.world.write(0, Some(machine()), Body::FlightPlanned(Box::new(planned)));
    let reason = one(field.verdict());
    assert_eq!((reason.state, reason.because[0].say.id.as_str()), (State::Grounded, "flight-fault-no-ratio"));
}
