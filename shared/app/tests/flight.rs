//! A flight is asked, judged, kept, signed and laid open.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use base64ct::Encoding;
use chrono::TimeDelta;
use common::*;
use witnessmark_app::views::{FlightView, MachinePage, PublishFile, UnitChoice};
use witnessmark_app::{App, Catalogue};
use witnessmark_core::flight::{Burn, Input, Loads, Mix, Pressure, Range, Ratio, Reserve, Wind, WindLimits};
use witnessmark_core::record::{
    AirPlanned, FlightPlanned, FuelPlanned, LoadPlanned, Machine, MixPlanned, Service, WindPlanned, WingLoad,
};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Rule, State};

fn q(value: f64, unit: Unit) -> Quantity {
    Quantity::new(value, unit)
}

fn kg(value: f64) -> Quantity {
    q(value, Unit::Kilogram)
}

fn wing() -> WingLoad {
    WingLoad {
        with_motor: Range { low: kg(95.0), high: kg(140.0) },
        without_motor: None,
        document: "Invented wing manual".into(),
        page: "7".into(),
    }
}

fn thistle() -> Machine {
    Machine { wing_load: Some(wing()), weight: Some(kg(32.0)), ..bramble() }
}

fn nothing(clock: &Clock) -> FlightPlanned {
    FlightPlanned { at: clock.now(), load: None, mix: None, fuel: None, air: None, wind: None }
}

fn limits() -> WindLimits {
    WindLimits { mean: Some(q(18.0, Unit::KilometrePerHour)), gust: None, gust_factor: None }
}

fn windy(mean: f64) -> WindPlanned {
    WindPlanned {
        wind: Wind { mean: q(mean, Unit::KilometrePerHour), gust: None },
        limits: limits(),
        measured: None,
    }
}

/// Every part of it, as a careful pilot would enter it.
fn whole(clock: &Clock, burns: Vec<Burn>) -> FlightPlanned {
    let litres = |value| q(value, Unit::Litre);
    FlightPlanned {
        load: Some(LoadPlanned {
            loads: Loads { pilot: kg(88.0), machine: kg(32.0), fuel: litres(10.0), ballast: kg(0.0) },
            wing: wing(),
        }),
        mix: Some(MixPlanned {
            mix: Mix {
                in_tank: litres(0.0),
                ratio_in_tank: None,
                target_ratio: Ratio::new(50.0).unwrap(),
                add_fuel: litres(10.0),
            },
            oil: Some(litres(0.2)),
        }),
        fuel: Some(FuelPlanned {
            on_board: litres(10.0),
            burns,
            reserve: Reserve(litres(1.0)),
            flight_time: q(1.0, Unit::Hour),
        }),
        air: Some(AirPlanned {
            pressure: Pressure::Altimeter {
                elevation: q(310.0, Unit::Metre),
                setting: q(1019.0, Unit::Hectopascal),
            },
            temperature: q(16.0, Unit::Celsius),
            dew_point: None,
            measured: None,
        }),
        wind: Some(windy(12.0)),
        ..nothing(clock)
    }
}

fn log(app: &mut App, machine: &str, hours: f64, litres: f64) -> MachinePage {
    let added = Service { hours, flights: 1, tanks: 0 };
    let fuel = Some(q(litres, Unit::Litre));
    app.log_time(machine.to_owned(), Some(added), None, String::new(), fuel).unwrap()
}

fn of(view: &FlightView, part: &str) -> (State, String) {
    let found = view.parts.iter().find(|one| one.part == part);
    let found = found.unwrap_or_else(|| unreachable!("{part}: {view:?}"));
    (found.reason.state, found.reason.words.clone())
}

#[test]
fn a_flight_is_asked_judged_kept_signed_and_laid_open() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    let rules = |page: &MachinePage| page.card.verdict.reasons.iter().map(|r| r.rule).collect::<Vec<_>>();
    assert!(rules(&app.machine(machine.clone()).unwrap()).contains(&Rule::FlightNotPrepared));

    let form = app.flight_form(machine.clone()).unwrap();
    assert!(!form.today && form.mixes && form.burns_fuel && form.plan.load.is_none());
    assert_eq!((&form.wing, form.weight), (&Some(wing()), Some(kg(32.0))));
    assert_eq!(form.ratio, Some(50.0));
    let words = form.ratio_words.unwrap();
    assert!(words.starts_with("50:1. Unconfirmed"), "{words}");
    assert!(
        form.burns_words.contains("no flight has its fuel logged, and it takes 3"),
        "{}",
        form.burns_words
    );

    // While it is being typed nothing is kept.
    let view = app.flight_judge(machine.clone(), Some(whole(&clock, vec![]))).unwrap();
    assert_eq!(view.parts.len(), 5);
    assert!(view.faults.is_empty());
    // 88 + 32 + 10·0.775 = 127.75 kg: 12.25 below 140.
    let (state, words) = of(&view, "load");
    assert_eq!(state, State::Fit);
    assert!(words.contains("127.8 kg at launch: 12.2 kg below"), "{words}");
    assert_eq!(view.pour.as_ref().map(|pour| pour.words.as_str()), Some("200 mL"));
    assert_eq!(of(&view, "fuel").0, State::Limited, "nobody logged fuel yet");
    assert_eq!(of(&view, "mix").0, State::Limited, "no manual confirms the ratio");
    assert!(rules(&app.machine(machine.clone()).unwrap()).contains(&Rule::FlightNotPrepared));

    // Three flights with their fuel, at 3 L/h.
    (0..3).for_each(|_| drop(log(&mut app, &machine, 1.0, 3.0)));
    let form = app.flight_form(machine.clone()).unwrap();
    assert_eq!(form.burns.len(), 3);
    assert!(form.burns_words.starts_with("3 flights burned 3 L/h to 3 L/h"), "{}", form.burns_words);
    app.flight_keep(machine.clone(), Some(whole(&clock, form.burns))).unwrap();
    let page = app.machine(machine.clone()).unwrap();
    assert_eq!(page.waiting, 4);
    let now = rules(&page);
    assert!(!now.contains(&Rule::FlightNotPrepared), "{now:?}");
    let fuel = page.card.verdict.reasons.iter().find(|r| r.rule == Rule::FuelTime).unwrap();
    assert_eq!((fuel.state, fuel.record.is_none()), (State::Fit, true));
    assert!(fuel.words.contains("lasts 3 h at least"), "{}", fuel.words);

    // The next signature signs it, once, and its record says what was stated.
    let again = app.flight_form(machine.clone()).unwrap();
    app.flight_keep(machine.clone(), Some(again.plan)).unwrap();
    assert_eq!(app.machine(machine.clone()).unwrap().waiting, 4, "a newer plan takes the older one's place");
    clock.forward(TimeDelta::minutes(20));
    walk_and_sign(&mut app, &clock, &machine, "second-flight", &[]);
    let page = app.machine(machine.clone()).unwrap();
    assert_eq!(page.waiting, 0);
    let load = page.card.verdict.reasons.iter().find(|r| r.rule == Rule::Load).unwrap();
    let record = app.record(load.record.clone().unwrap()).unwrap();
    assert!(record.good);
    for stated in
        ["pilot 88 kg", "95 kg to 140 kg", "10 L of petrol poured in", "1019 hPa at 310 m", "Wind: 12 km/h"]
    {
        assert!(record.words.contains(stated), "{stated}: {}", record.words);
    }
    assert_eq!(page.timeline.iter().filter(|entry| entry.kind == "flight-planned").count(), 1);
}

#[test]
fn figures_that_cannot_be_are_told_part_by_part_and_not_kept() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    let mut plan = whole(&clock, vec![]);
    plan.load.as_mut().unwrap().loads.pilot = kg(0.0);
    plan.mix.as_mut().unwrap().mix.add_fuel = q(10.0, Unit::Kilogram);
    let view = app.flight_judge(machine.clone(), Some(plan.clone())).unwrap();
    let faults: Vec<(&str, &str)> =
        view.faults.iter().map(|fault| (fault.part.as_str(), fault.words.as_str())).collect();
    assert_eq!(faults.len(), 2, "{faults:?}");
    assert_eq!(faults[0], ("load", "The pilot's weight: must be more than nothing."));
    assert!(faults[1].1.contains("kg can't be turned into L"), "{faults:?}");
    let gravest = view.gravest.as_ref().unwrap();
    assert_eq!((gravest.state, gravest.words.as_str()), (State::Grounded, faults[0].1));
    assert_eq!(view.verdict.state, State::Grounded);
    assert_eq!(view.pour.as_ref().map(|pour| pour.oil), None);
    let fault = app.flight_keep(machine.clone(), Some(plan)).unwrap_err();
    assert_eq!(fault.kind, "flight-impossible");
    assert!(app.show(&fault).message.contains("The pilot's weight"));
    assert_eq!(app.machine(machine.clone()).unwrap().waiting, 0);
    assert_eq!(app.flight_keep(machine.clone(), Some(nothing(&clock))).unwrap_err().kind, "flight-empty");
    assert_eq!(app.flight_keep(machine, None).unwrap_err().kind, "flight-empty");
}

/// What a row about the flight says in short; and what leads from a verdict to the flight.
#[test]
fn the_gravest_of_a_plan_is_told_or_nothing_where_all_is_well() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    let (load, wind) = (whole(&clock, vec![]).load, |mean| Some(windy(mean)));
    let plan = |mean, load| FlightPlanned { wind: wind(mean), load, ..nothing(&clock) };
    let mut judged = |plan| app.flight_judge(machine.clone(), Some(plan)).unwrap();
    let well = judged(plan(12.0, load.clone()));
    assert_eq!(well.gravest, None, "{:?}", well.parts);
    let mut unsourced = load.clone();
    unsourced.as_mut().unwrap().loads.pilot = kg(128.0);
    let both = judged(plan(30.0, unsourced));
    let words = |part| of(&both, part).1;
    let gravest = both.gravest.as_ref().unwrap();
    assert_eq!(
        (gravest.state, &gravest.words),
        (State::Grounded, &words("load")),
        "the first of the gravest"
    );
    let air = judged(FlightPlanned {
        wind: Some(WindPlanned { limits: WindLimits::default(), ..windy(12.0) }),
        ..nothing(&clock)
    });
    assert_eq!(air.gravest.as_ref().unwrap().state, State::Limited);
    let led: Vec<bool> = both.verdict.reasons.iter().map(|reason| reason.of_flight).collect();
    assert!(led.contains(&true) && led.contains(&false), "{:?}", both.verdict.reasons);
    assert!(both.verdict.reasons.iter().all(|reason| reason.of_flight == reason.rule.of_flight()));
}

#[test]
fn a_plan_of_today_is_taken_back_by_asking_nothing() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    let load = whole(&clock, vec![]).load;
    app.flight_keep(machine.clone(), Some(FlightPlanned { load, ..nothing(&clock) })).unwrap();
    let view = app.flight_keep(machine, Some(nothing(&clock))).unwrap();
    assert!(view.parts.is_empty());
}

#[test]
fn the_next_day_what_may_still_hold_is_there_but_never_tank_air_or_wind() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    app.flight_keep(machine.clone(), Some(whole(&clock, vec![]))).unwrap();
    let today = app.flight_form(machine.clone()).unwrap();
    assert!(today.today && today.plan.air.is_some() && today.plan.wind.is_some());

    clock.forward(TimeDelta::days(1));
    let form = app.flight_form(machine.clone()).unwrap();
    assert!(!form.today);
    let loads = form.plan.load.unwrap().loads;
    assert_eq!((loads.pilot, loads.machine), (kg(88.0), kg(32.0)));
    assert_eq!(form.plan.fuel.unwrap().flight_time, q(1.0, Unit::Hour));
    assert!(form.plan.air.is_none() && form.plan.wind.is_none() && form.plan.mix.is_none());
    assert_eq!((form.own.wind, form.own.ratio), (Some(limits()), Some(50.0)));
    assert_eq!(form.own.elevation, Some(q(310.0, Unit::Metre)));

    // Another machine of theirs has a weight and a wing of its own, and no figures of this one's.
    let other = register(&mut app, Machine { weight: None, ..thistle() });
    let form = app.flight_form(other).unwrap();
    assert!(form.plan.load.is_none(), "nobody knows what it weighs");
    assert_eq!(form.own.pilot, Some(kg(88.0)));
    let electric = register(&mut app, Machine { engine: "linnet-e".into(), ..thistle() });
    let form = app.flight_form(electric).unwrap();
    assert!(!form.mixes && !form.burns_fuel && form.ratio.is_none() && form.plan.fuel.is_none());
    assert_eq!(form.plan.load.unwrap().loads.fuel, kg(0.0));
}

#[test]
fn wind_measured_early_ages_also_when_the_plan_is_worked_out_anew() {
    let clock = Clock::at("2026-05-02T06:41:00+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    let plan = |wind| FlightPlanned { wind: Some(wind), ..nothing(&clock) };
    app.flight_keep(machine.clone(), Some(plan(windy(12.0)))).unwrap();
    let form = app.flight_form(machine.clone()).unwrap();
    let measured = form.plan.at;
    clock.forward(TimeDelta::hours(3) + TimeDelta::minutes(1));
    let earlier = |view: &FlightView| {
        let mut reasons = view.verdict.reasons.iter();
        reasons.find(|reason| reason.rule == Rule::MeasuredEarlier).map(|reason| reason.words.clone())
    };
    let carried = WindPlanned { measured: Some(measured), ..windy(12.0) };
    let view = app.flight_keep(machine.clone(), Some(plan(carried))).unwrap();
    assert_eq!(earlier(&view).as_deref(), Some("The wind was measured at 06:41: look again."));
    let view = app.flight_keep(machine, Some(plan(windy(12.0)))).unwrap();
    assert_eq!(earlier(&view), None, "measured again");
}

#[test]
fn figures_are_told_in_the_readers_units() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let machine = register(&mut app, thistle());
    let units = UnitChoice {
        mass: Unit::Pound,
        volume: Unit::GallonUs,
        speed: Unit::Knot,
        temperature: Unit::Fahrenheit,
        pressure: Unit::InchOfMercury,
        height: Unit::Foot,
        torque: None,
    };
    app.settings("en".into(), 5, false, Some(units)).unwrap();
    let form = app.flight_form(machine.clone()).unwrap();
    let first: Vec<Unit> = [&form.units.mass, &form.units.volume, &form.units.height]
        .into_iter()
        .map(|units| units[0].code)
        .collect();
    assert_eq!(first, [Unit::Pound, Unit::GallonUs, Unit::Foot]);
    assert!(form.units.height.iter().all(|unit| unit.code != Unit::Millimetre));
    assert!(form.units.volume.iter().any(|unit| unit.code == Unit::Millilitre), "a cup of oil");
    let lists = app.start().unwrap().unit_lists;
    assert!(lists.volume.iter().all(|unit| unit.code != Unit::Millilitre), "nobody fills up in millilitres");
    assert_eq!(lists.mass[0].code, Unit::Kilogram, "the order to choose from stays");
    let view = app.flight_judge(machine, Some(whole(&clock, vec![]))).unwrap();
    // 127.8 kg / 0.453 592 37 = 281.75 lb, told with four digits; 12 km/h / 1.852 = 6.479 kt.
    assert!(of(&view, "load").1.contains("281.8 lb"), "{view:?}");
    assert!(of(&view, "wind").1.contains("6.479 kt"), "{view:?}");
    assert!(of(&view, "air").1.contains(" ft on a standard day"), "{view:?}");
    // 0.2 L / 3.785 411 784 = 0.0528 US gal.
    assert_eq!(view.pour.as_ref().map(|pour| pour.words.as_str()), Some("0.053 US gal"));
}

fn range(machine: &mut Machine, low: Quantity, high: Quantity) {
    machine.wing_load.as_mut().unwrap().with_motor = Range { low, high };
}

#[test]
fn weights_in_a_description_are_checked() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    let mut saved = |change: fn(&mut Machine)| {
        let mut machine = thistle();
        change(&mut machine);
        app.machine_save(String::new(), Some(machine), PIN.into())
            .map_err(|fault| (fault.kind, app.show(&fault)))
    };
    let kind = |saved: Result<MachinePage, (&'static str, witnessmark_app::FaultView)>| saved.unwrap_err().0;
    assert_eq!(kind(saved(|machine| machine.weight = Some(kg(-30.0)))), "weight-odd");
    assert_eq!(kind(saved(|machine| machine.weight = Some(kg(19.9)))), "weight-odd");
    assert!(saved(|machine| machine.weight = Some(kg(20.0))).is_ok());
    assert!(saved(|machine| machine.weight = Some(q(70.5, Unit::Pound))).is_ok());
    assert_eq!(kind(saved(|machine| machine.weight = Some(q(32.0, Unit::Litre)))), "unit");
    assert_eq!(kind(saved(|machine| machine.weight = Some(kg(f64::NAN)))), "unit");
    let (kind_of, told) = saved(|machine| {
        machine.wing_load.as_mut().unwrap().with_motor.high = q(2000.0, Unit::Pound);
    })
    .unwrap_err();
    assert_eq!(kind_of, "weight-odd");
    assert!(told.message.contains("2000 lb is not between 44 lb and 1323 lb"), "{}", told.message);
    assert_eq!(kind(saved(|machine| range(machine, kg(140.0), kg(95.0)))), "wing-range-crossed");
    // In two units the numbers alone say nothing: 220 lb are less than 110 kg.
    assert!(saved(|machine| range(machine, q(220.0, Unit::Pound), kg(110.0))).is_ok());
    let spaced = saved(|machine| machine.wing_load.as_mut().unwrap().page = "  7 ".into()).unwrap();
    assert_eq!(spaced.description.wing_load.unwrap().page, "7");
    let record = app.record(spaced.timeline[0].record.clone()).unwrap();
    let stated = "It weighs 32 kg as flown, without fuel. Its wing may carry 95 kg to 140 kg with a motor (Invented wing manual, 7).";
    assert!(record.words.ends_with(stated), "{}", record.words);
    let csv = app.csv(spaced.card.id).unwrap().data;
    let csv = String::from_utf8(base64ct::Base64::decode_vec(&csv).unwrap()).unwrap();
    assert!(csv.lines().any(|row| row.contains("The machine's weight") && row.contains(",32,kg")), "{csv}");
}

#[test]
fn a_schools_limits_hold_for_its_machines_and_no_others() {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    let mut app = begun(&clock);
    app.school_found("Invented school".into(), PIN.into()).unwrap();
    let text = "[wind]\nmean = { value = 10, unit = \"km/h\" }\n\n[inspect.exhaust]\nevery_hours = 5\nchance = 0.02\n";
    let file = PublishFile { path: "limits.toml".into(), text: text.into() };
    app.publish("Our limits".into(), vec![file], String::new(), PIN.into()).unwrap();
    let machine = register(&mut app, bramble());
    let school = app.flight_form(machine.clone()).unwrap().school_wind.unwrap();
    assert_eq!(school.mean, Some(q(10.0, Unit::KilometrePerHour)));
    let reasons = |app: &mut App, rule| {
        let page = app.machine(machine.clone()).unwrap();
        let reasons = page.card.verdict.reasons.into_iter().filter(|reason| reason.rule == rule);
        reasons.map(|reason| reason.words).collect::<Vec<_>>()
    };
    let never = reasons(&mut app, Rule::InspectOver);
    assert_eq!(never, ["Exhaust: never looked at in 12.5 h, and the school wants it looked at every 5 h."]);
    walk_and_sign(&mut app, &clock, &machine, "before-flight", &[]);
    assert!(reasons(&mut app, Rule::InspectOver).is_empty());
    let missing = reasons(&mut app, Rule::FlightNotPrepared);
    assert_eq!(missing, ["Not worked out today: the wind against the school's limits."]);
    let plan = FlightPlanned { wind: Some(windy(12.0)), ..nothing(&clock) };
    let view = app.flight_keep(machine.clone(), Some(plan)).unwrap();
    let over = "Wind 12 km/h: above the school's limit of 10 km/h.".to_owned();
    assert_eq!(of(&view, "wind"), (State::Grounded, over));

    app.machine_enrol(machine.clone(), false, PIN.into()).unwrap();
    assert_eq!(app.flight_form(machine.clone()).unwrap().school_wind, None);
    assert_eq!(reasons(&mut app, Rule::Wind), ["Wind 12 km/h: within the limits that are set."]);
}

#[test]
fn every_input_has_words() {
    let texts = Catalogue::embedded().unwrap().texts;
    for input in Input::ALL {
        assert!(texts.has(&format!("input-{}", input.id()), None), "{}", input.id());
    }
}
