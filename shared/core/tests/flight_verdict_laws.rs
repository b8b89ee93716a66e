//! Laws of flights prepared, over stories made at random: preparing a flight never makes anything else milder.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::plans::*;
use common::story::story;
use common::*;
use proptest::prelude::*;
use witnessmark_core::flight::{Burn, Loads, Mix, Pressure, Range, Reserve, Wind, WindLimits};
use witnessmark_core::list::{Inspecting, Limits};
use witnessmark_core::record::{
    AirPlanned, FlightPlanned, FuelPlanned, LoadPlanned, MixPlanned, WindPlanned, WingLoad,
};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Part, Question, Reason, State, Verdict, judge};

/// A quantity that may be, or may not.
fn some(of: std::ops::Range<f64>, unit: Unit) -> impl Strategy<Value = Quantity> {
    prop_oneof![
        12 => of.prop_map(move |value| q(value, unit)),
        1 => (-1e3..1e3f64, 0..Unit::ALL.len()).prop_map(|(value, unit)| q(value, Unit::ALL[unit])),
    ]
}

fn weight(of: std::ops::Range<f64>) -> impl Strategy<Value = Quantity> {
    some(of, Unit::Kilogram)
}

fn range_of() -> impl Strategy<Value = Range> {
    (weight(60.0..110.0), weight(100.0..160.0)).prop_map(|(low, high)| Range { low, high })
}

fn wing_of() -> impl Strategy<Value = WingLoad> {
    (range_of(), prop::option::of(range_of()), any::<bool>()).prop_map(
        |(with_motor, without_motor, known)| {
            let document = if known { "invented wing manual".into() } else { String::new() };
            WingLoad { with_motor, without_motor, document, page: "7".into() }
        },
    )
}

fn load_of() -> impl Strategy<Value = LoadPlanned> {
    (weight(50.0..120.0), weight(20.0..45.0), some(0.0..15.0, Unit::Litre), weight(0.0..10.0), wing_of())
        .prop_map(|(pilot, machine, fuel, ballast, wing)| LoadPlanned {
            loads: Loads { pilot, machine, fuel, ballast },
            wing,
        })
}

fn mix_of() -> impl Strategy<Value = MixPlanned> {
    let litre = |most| some(0.0..most, Unit::Litre);
    let ratio = || (1.0..220.0f64).prop_map(|ratio| serde_json::from_value(ratio.into()).unwrap());
    (litre(10.0), prop::option::of(ratio()), ratio(), litre(10.0), prop::option::of(litre(0.5))).prop_map(
        |(in_tank, ratio_in_tank, target_ratio, add_fuel, oil)| MixPlanned {
            mix: Mix { in_tank, ratio_in_tank, target_ratio, add_fuel },
            oil,
        },
    )
}

fn fuel_of() -> impl Strategy<Value = FuelPlanned> {
    let burns = prop::collection::vec(some(1.0..6.0, Unit::LitrePerHour).prop_map(Burn::Rate), 0..10);
    (some(0.0..14.0, Unit::Litre), burns, some(0.0..3.0, Unit::Litre), some(0.0..5.0, Unit::Hour)).prop_map(
        |(on_board, burns, reserve, flight_time)| FuelPlanned {
            on_board,
            burns,
            reserve: Reserve(reserve),
            flight_time,
        },
    )
}

fn air_of(now: DateTime<FixedOffset>) -> impl Strategy<Value = AirPlanned> {
    let degrees = || some(-20.0..40.0, Unit::Celsius);
    (some(700.0..1050.0, Unit::Hectopascal), degrees(), prop::option::of(degrees()), measured(now)).prop_map(
        |(pressure, temperature, dew_point, measured)| AirPlanned {
            pressure: Pressure::Field(pressure),
            temperature,
            dew_point,
            measured,
        },
    )
}

fn limits_of() -> impl Strategy<Value = WindLimits> {
    let speed = || prop::option::of(some(5.0..40.0, Unit::KilometrePerHour));
    (speed(), speed(), prop::option::of(0.5..3.0f64)).prop_map(|(mean, gust, gust_factor)| WindLimits {
        mean,
        gust,
        gust_factor,
    })
}

fn wind_of(now: DateTime<FixedOffset>) -> impl Strategy<Value = WindPlanned> {
    let speed = || some(0.0..40.0, Unit::KilometrePerHour);
    (speed(), prop::option::of(speed()), limits_of(), measured(now)).prop_map(
        |(mean, gust, limits, measured)| WindPlanned { wind: Wind { mean, gust }, limits, measured },
    )
}

fn measured(now: DateTime<FixedOffset>) -> impl Strategy<Value = Option<DateTime<FixedOffset>>> {
    prop::option::of((-600i64..600).prop_map(move |minutes| now + TimeDelta::minutes(minutes)))
}

fn plan_of() -> impl Strategy<Value = FlightPlanned> {
    let now = at(DAY);
    let parts = (
        prop::option::of(load_of()),
        prop::option::of(mix_of()),
        prop::option::of(fuel_of()),
        prop::option::of(air_of(now)),
        prop::option::of(wind_of(now)),
    );
    ((-900i64..900), parts).prop_map(move |(minutes, (load, mix, fuel, air, wind))| FlightPlanned {
        at: now + TimeDelta::minutes(minutes),
        load,
        mix,
        fuel,
        air,
        wind,
    })
}

fn of_school() -> impl Strategy<Value = Limits> {
    (limits_of(), prop::option::of(1.0..30.0f64)).prop_map(|(wind, every)| Limits {
        wind,
        inspect: every
            .map(|every_hours| ("reserve".to_owned(), Inspecting { every_hours, chance: 0.02 }))
            .into_iter()
            .collect(),
    })
}

fn judged(history: &History, limits: &Limits, now: DateTime<FixedOffset>) -> Verdict {
    judge(Question {
        history,
        sheet: Some(&confirmed_sheet()),
        now,
        people: &BTreeMap::new(),
        persons: &BTreeMap::new(),
        split: &[],
        refused: 0,
        limits,
    })
}

/// What has nothing to do with flights prepared.
fn others(verdict: &Verdict) -> Vec<&Reason> {
    verdict.reasons.iter().filter(|reason| !reason.rule.of_flight()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// With a plan, whatever it says, all stands that stood without it.
    #[test]
    fn a_plan_takes_away_nothing_but_an_earlier_plans_own_reasons(
        world in story(),
        earlier in prop::option::of(plan_of()),
        plan in plan_of(),
        limits in of_school(),
        minutes in 0i64..2000,
    ) {
        let now = world.now + TimeDelta::minutes(minutes);
        let mut history = world.history();
        history.flight = earlier.map(|earlier| (earlier, None));
        let before = judged(&history, &limits, now);
        history.flight = Some((plan, None));
        let after = judged(&history, &limits, now);
        prop_assert_eq!(others(&before), others(&after));
        let stays = others(&before).iter().map(|reason| reason.state).max().unwrap_or(State::Fit);
        prop_assert!(after.state >= stays);
        prop_assert!(after.reasons.is_sorted_by(|a, b| a.state >= b.state));
    }

    /// The same of a signed record: nothing open is closed by it.
    #[test]
    fn a_plan_signed_closes_nothing(mut world in story(), by in 0..3usize, plan in plan_of()) {
        let before = world.history();
        world.write(by, Some(machine()), Body::FlightPlanned(Box::new(plan)));
        let after = world.history();
        prop_assert_eq!(before.open, after.open);
        prop_assert_eq!(before.looks, after.looks);
        prop_assert_eq!(before.confirmed, after.confirmed);
        prop_assert_eq!(before.work, after.work);
    }

    /// Each part that was asked today has its one reason, and no other has.
    #[test]
    fn each_part_asked_has_one_reason(plan in plan_of(), limits in of_school()) {
        let world = World::fit();
        let now = world.now;
        let plan = FlightPlanned { at: now, ..plan };
        let mut history = world.history();
        history.flight = Some((plan.clone(), None));
        let verdict = judged(&history, &limits, now);
        let asked = [
            (Part::Load, plan.load.is_some()),
            (Part::Mix, plan.mix.is_some()),
            (Part::Fuel, plan.fuel.is_some()),
            (Part::Air, plan.air.is_some()),
            (Part::Wind, plan.wind.is_some()),
        ];
        for (part, asked) in asked {
            let reasons = verdict.reasons.iter().filter(|reason| Part::of(reason.rule) == Some(part));
            prop_assert_eq!(reasons.count(), usize::from(asked), "{:?}", part);
        }
    }

    /// A heavier pilot, more wind, less oil, a longer flight: what is worse is never judged milder.
    #[test]
    fn worse_is_never_milder(pilot in 60.0..110.0f64, more in 0.0..30.0f64, mean in 0.0..30.0f64, stronger in 0.0..10.0f64, oil in 0.0..0.2f64, less in 0.0..1.0f64, time in 0.1..4.0f64) {
        let world = World::fit();
        let state = |part: FlightPlanned| {
            let mut history = world.history();
            history.flight = Some((FlightPlanned { at: world.now, ..part }, None));
            judged(&history, &Limits::default(), world.now).state
        };
        let nothing = || plan(world.now);
        // Above the least: there, a heavier pilot is the worse one.
        let loaded = |pilot| state(FlightPlanned { load: Some(load(pilot, 5.0)), ..nothing() });
        prop_assert!(pilot < 65.0 || loaded(pilot + more) >= loaded(pilot));
        let limits = WindLimits { gust_factor: None, ..wind_limits() };
        let blown = |mean: f64| {
            state(FlightPlanned { wind: Some(windy(mean, Some(mean + 4.0), limits)), ..nothing() })
        };
        prop_assert!(blown(mean + stronger) >= blown(mean));
        let oiled = |oil| state(FlightPlanned { mix: Some(mixed(Some(oil))), ..nothing() });
        prop_assert!(oiled(oil * less) >= oiled(oil));
        let flown = |time| state(FlightPlanned { fuel: Some(fuelled(time)), ..nothing() });
        prop_assert!(flown(time + less) >= flown(time));
    }
}
