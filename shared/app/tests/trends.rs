//! Trends of a machine from its records. Reference figures: SciPy 1.17.1 (`stats.theilslopes`, 0.95) and
//! pymannkendall 1.4.3 (`original_test`) on the same readings, run beside this; the crossings from
//! their slopes through the medians. Sentences: by hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::pen::{CLIMBING, Pen, day, measured, seen};
use common::{Clock, platform};
use uuid::Uuid;
use witnessmark_app::App;
use witnessmark_app::views::{TrendView, UnitChoice};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, LimitConfirmed, Machine, TorqueDone};
use witnessmark_core::units::{Quantity, Unit};

fn app(pen: &Pen) -> App {
    let clock = Clock::at("2026-05-02T06:41:07+02:00");
    App::new(pen.kept(), platform(&clock, 1, None)).unwrap()
}

fn trends(app: &mut App, machine: Uuid) -> Vec<TrendView> {
    app.trends(machine.to_string()).unwrap()
}

fn only(pen: &Pen, machine: Uuid) -> TrendView {
    let mut views = trends(&mut app(pen), machine);
    assert_eq!(views.len(), 1, "{views:?}");
    views.remove(0)
}

fn logged(readings: &[(f64, f64)]) -> (Pen, Uuid) {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 74.0);
    for (hours, celsius) in readings {
        pen.cht(machine, *hours, *celsius, None);
    }
    (pen, machine)
}

fn near(found: f64, wanted: f64) -> bool {
    (found - wanted).abs() <= 1e-9 * wanted.abs().max(1.0)
}

fn says(view: &TrendView, words: &str) -> bool {
    view.sentences.iter().any(|sentence| sentence.contains(words))
}

/// Nothing that looks like a number out of too little.
fn tells_nothing(view: &TrendView) {
    assert!(view.sentences[0].starts_with("Too little to say"), "{view:?}");
    assert_eq!(view.direction, "too-little");
    assert!(view.line.is_none() && view.change.is_none() && view.reaches.is_none() && view.chance.is_none());
}

#[test]
fn a_climbing_temperature_is_what_scipy_and_pymannkendall_say() {
    let (pen, machine) = logged(&CLIMBING);
    let view = only(&pen, machine);
    assert_eq!((view.id.as_str(), view.unit.sign.as_str()), ("peak-cht", "°C"));
    let line = view.line.clone().unwrap();
    assert!(near(line.per_100_hours, 29.867901869960544), "{line:?}");
    assert!(near(line.low, 22.22222222222222) && near(line.high, 42.10526315789473), "{line:?}");
    // Every slope goes through the medians, 34.75 h and 189 °C.
    for (from, to) in [(line.from, line.to), (line.low_from, line.low_to), (line.high_from, line.high_to)] {
        assert!(near(from + (to - from) * (34.75 - 5.0) / 65.0, 189.0), "{line:?}");
    }
    assert!((line.from_hours, line.to_hours) == (5.0, 70.0));
    assert!(near(view.chance.unwrap(), 0.0004701692793138701), "{:?}", view.chance);
    // The data sheet's 410 °F are 210 °C.
    let reach = view.reaches.clone().unwrap();
    let wanted = [84.625, 105.05959218839746, 129.25];
    let found = [reach.low, reach.at, reach.high.unwrap()];
    assert!(found.iter().zip(wanted).all(|(found, wanted)| near(*found, wanted)), "{reach:?}");
    assert!(
        near(view.band.as_ref().unwrap().limit.unwrap(), 210.0) && !view.band.as_ref().unwrap().confirmed
    );
    let far: Vec<f64> = view.points.iter().filter(|point| point.far_off).map(|point| point.hours).collect();
    assert_eq!((far, view.points.len()), (vec![63.0], 12), "shown, not dropped");
    assert_eq!((view.direction.as_str(), view.drifts), ("rising", true));
    assert_eq!(
        view.sentences[0],
        "It rises toward its limit by about 30 °C in 100 engine hours (between 22 °C and 42 °C)."
    );
    assert!(says(&view, "12 readings from 5 to 70 engine hours") && says(&view, "once in 1000 times"));
    // It has run 74 h by now.
    assert!(says(&view, "the limit, 210 °C, at 84.6 engine hours at the earliest: in 10.6 h."), "{view:?}");
    assert!(says(&view, "at 105.1, the flattest it may be at 129.3"), "{view:?}");
    assert!(says(&view, "One reading lies far off the line") && says(&view, "unconfirmed"));
    assert!(says(&view, "One earlier reading was past the limit, 210 °C; the last of them, 214 °C, at 63"));
    assert_eq!(view.points[0].words, "181 °C, 3 March 2026", "the day it was logged on");
}

#[test]
fn another_unit_changes_the_numbers_and_not_the_story() {
    let (pen, machine) = logged(&CLIMBING);
    let mut app = app(&pen);
    let celsius = trends(&mut app, machine).remove(0);
    let units = UnitChoice { temperature: Unit::Fahrenheit, ..UnitChoice::default() };
    app.settings("en".into(), 5, false, Some(units)).unwrap();
    let fahrenheit = trends(&mut app, machine).remove(0);
    assert_eq!(fahrenheit.unit.code, Unit::Fahrenheit);
    let degrees = |value: f64| value * 1.8 + 32.0;
    for (c, f) in celsius.points.iter().zip(&fahrenheit.points) {
        assert!(near(f.value, degrees(c.value)) && (f.hours, f.far_off) == (c.hours, c.far_off));
    }
    let (c, f) = (celsius.line.unwrap(), fahrenheit.line.unwrap());
    assert!(near(f.per_100_hours, c.per_100_hours * 1.8) && near(f.low, c.low * 1.8));
    assert!(near(f.to, degrees(c.to)) && near(f.high_from, degrees(c.high_from)));
    let (c, f) = (celsius.reaches.unwrap(), fahrenheit.reaches.unwrap());
    assert!(near(f.low, c.low) && near(f.at, c.at) && near(f.high.unwrap(), c.high.unwrap()));
    assert_eq!((&fahrenheit.direction, fahrenheit.drifts), (&celsius.direction, celsius.drifts));
    assert_eq!(fahrenheit.sentences.len(), celsius.sentences.len());
    // 29.87 · 1.8 = 53.8.
    assert!(fahrenheit.sentences[0].contains("about 54 °F"), "{:?}", fahrenheit.sentences);
    assert_eq!(fahrenheit.chance, celsius.chance);
}

#[test]
fn what_tells_too_little_tells_no_number() {
    let (pen, machine) = logged(&CLIMBING[..1]);
    let view = only(&pen, machine);
    tells_nothing(&view);
    assert_eq!(view.points.len(), 1);
    assert!(view.sentences[0].contains("one reading is there") && view.sentences[0].contains("4 more"));

    let (pen, machine) = logged(&CLIMBING.map(|(hours, _)| (hours, 188.0)));
    let view = only(&pen, machine);
    tells_nothing(&view);
    assert!(view.sentences[0].contains("all 12 readings are the same, 188 °C"), "{view:?}");

    let (pen, machine) = logged(&CLIMBING.map(|(_, celsius)| (40.0, celsius)));
    let view = only(&pen, machine);
    tells_nothing(&view);
    assert!(view.sentences[0].contains("same engine hours"), "{view:?}");

    // A record of somebody else's program: no engine was there before its first hour.
    let (pen, machine) = logged(&CLIMBING.map(|(hours, celsius)| (-hours, celsius)));
    let view = only(&pen, machine);
    tells_nothing(&view);
    assert!(view.points.is_empty() && says(&view, "12 readings are left out"), "{view:?}");

    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 1.0);
    assert!(trends(&mut app(&pen), machine).is_empty());
    let nobody = app(&pen).trends(Uuid::from_u128(9).to_string()).unwrap_err();
    assert_eq!(nobody.kind, "no-such");
}

#[test]
fn chance_is_not_told_as_a_trend() {
    // pymannkendall: S = -1, p = 1; SciPy: 0 in a hundred hours, from -25 to 22.2.
    let readings = [(1.0, 2.0), (3.0, 4.0), (6.0, 1.0), (8.0, 3.0), (11.0, 2.0), (15.0, 3.0), (19.0, 2.0)];
    let (pen, machine) = logged(&readings.map(|(hours, off)| (hours, 180.0 + off)));
    let view = only(&pen, machine);
    assert_eq!((view.direction.as_str(), view.drifts), ("neither", false));
    assert!(view.reaches.is_none() && view.line.is_some());
    assert!(near(view.chance.unwrap(), 1.0) && near(view.line.as_ref().unwrap().low, -25.0));
    assert!(view.sentences[0].starts_with("No trend in 7 readings"), "{view:?}");
    assert!(
        view.sentences[0]
            .contains("Over these 18 engine hours it may have changed by anything between -4.5 °C and 4 °C."),
        "{view:?}"
    );
}

#[test]
fn machines_are_not_mixed() {
    let (mut pen, machine) = logged(&CLIMBING);
    let other = pen.machine("Burdock", 90.0);
    for (hours, celsius) in CLIMBING {
        pen.cht(other, hours, 400.0 - celsius, None);
    }
    let (one, two) = (only(&pen, machine), only(&pen, other));
    assert_eq!((one.direction.as_str(), two.direction.as_str()), ("rising", "falling"));
    assert!(near(one.line.unwrap().per_100_hours, -two.line.unwrap().per_100_hours));
    assert!(!two.drifts && two.sentences[0].contains("away from its limit"), "{:?}", two.sentences);
}

/// A head follows the air degree by degree (common practice, no source): at 30 °C outside it would
/// have been 15 °C cooler on a day of 15 °C.
#[test]
fn all_are_brought_to_a_standard_day_or_none() {
    let airs = |at: usize| [Some(30.0), Some(15.0), Some(5.0)][at % 3];
    let with_air = |air: &dyn Fn(usize) -> Option<f64>| {
        let mut pen = Pen::new();
        let machine = pen.machine("Thistle", 74.0);
        for (at, (hours, celsius)) in CLIMBING.into_iter().enumerate() {
            pen.cht(machine, hours, celsius, air(at));
        }
        only(&pen, machine)
    };
    let all = with_air(&airs);
    let firsts: Vec<_> = all.points[..3].iter().map(|point| (point.value, point.raw)).collect();
    assert_eq!(firsts, [(166.0, Some(181.0)), (184.0, Some(184.0)), (190.0, Some(180.0))]);
    assert!(says(&all, "The limit means what the gauge shows"), "{all:?}");
    assert!(all.points[0].words.contains("181 °C on the gauge"), "{:?}", all.points[0]);
    // 214 °C on the gauge are past 210 °C, though the standard day would have it at 224 - 10.
    assert!(says(&all, "214 °C, at 63 engine hours"), "{all:?}");

    let some = with_air(&|at| if at == 4 { None } else { airs(at) });
    assert!(some.points.iter().all(|point| point.raw.is_none()));
    assert!(some.points.iter().zip(CLIMBING).all(|(point, (_, read))| point.value == read));
    assert!(says(&some, "Some logs don't say how warm it was outside"), "{some:?}");
    assert!(!says(&some, "hold the gauge against it"));

    let none = with_air(&|_| None);
    assert!(says(&none, "no log says how warm it was outside"), "{none:?}");
}

/// What the owner read in the manual and signed goes before the data sheet's common practice.
#[test]
fn a_band_is_as_its_owner_confirmed_it() {
    let (mut pen, machine) = logged(&CLIMBING);
    let confirmed = LimitConfirmed {
        band: "cht-climb".into(),
        low: Some(Quantity::new(150.0, Unit::Celsius)),
        high: Some(Quantity::new(215.0, Unit::Celsius)),
        document: "Invented manual".into(),
        page: "12".into(),
    };
    pen.write(Some(machine), day("2026-04-05"), &Body::LimitConfirmed(confirmed));
    let view = only(&pen, machine);
    let band = view.band.as_ref().unwrap();
    assert!(band.confirmed && near(band.limit.unwrap(), 215.0), "{band:?}");
    assert_eq!(band.source, "Invented manual, 12");
    assert!(!says(&view, "unconfirmed") && says(&view, "the limit, 215 °C"), "{view:?}");
    // 34.75 + 26 / 0.42105.
    assert!(near(view.reaches.unwrap().low, 96.5));
}

#[test]
fn a_line_at_its_limit_foretells_nothing_more() {
    let (pen, machine) = logged(&CLIMBING.map(|(hours, celsius)| (hours, celsius + 25.0)));
    let view = only(&pen, machine);
    assert!(view.reaches.is_none() && view.drifts);
    assert!(says(&view, "The line has reached the limit, 210 °C: act now."), "{view:?}");
    assert!(says(&view, "The latest reading, 224 °C, is past the limit"), "{view:?}");
}

/// SciPy: from 0 to 6.25 in a hundred hours: the flattest line never gets there.
#[test]
fn what_may_be_flat_may_never_reach_its_limit() {
    let readings = [(10.0, 1.0), (20.0, 1.0), (31.0, 2.0), (39.0, 2.0), (52.0, 3.0), (60.0, 3.0)];
    let (pen, machine) = logged(&readings.map(|(hours, more)| (hours, 190.0 + more)));
    let view = only(&pen, machine);
    let reach = view.reaches.clone().unwrap();
    // Through the medians, 35 h and 192 °C: 35 + 18 / 0.0625, 35 + 18 / 0.047619.
    assert!(near(reach.low, 323.0) && near(reach.at, 413.0) && reach.high.is_none(), "{reach:?}");
    assert!(says(&view, "at 323 engine hours at the earliest: in 249 h."), "{view:?}");
    assert!(says(&view, "the flattest it may be never"), "{view:?}");
}

#[test]
fn without_a_number_there_is_no_limit_to_hold_it_against() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 60.0);
    let readings = [(10.0, 9.6), (20.0, 9.3), (31.0, 9.1), (39.0, 8.8), (52.0, 8.6), (60.0, 8.1)];
    for (hours, bar) in readings {
        pen.look(machine, hours, day("2026-04-03"), measured("after-compression", bar, Unit::Bar));
    }
    let view = only(&pen, machine);
    assert_eq!(view.unit.code, Unit::Bar, "hectopascals are the air's");
    assert!(view.band.is_none() && view.reaches.is_none() && view.drifts, "falling is the wrong way");
    assert!(view.sentences[0].starts_with("It falls toward its limit by about"), "{view:?}");
    assert!(says(&view, "There is no limit to hold it against"), "{view:?}");
}

/// The hot day alone is past the limit, and the standard day hides it.
#[test]
fn a_standard_day_hides_no_limit_that_the_gauge_passed() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 74.0);
    for (at, hours) in [4.0, 8.0, 12.0, 16.0, 20.0, 24.0].into_iter().enumerate() {
        pen.cht(machine, hours, 190.0 + (at % 3) as f64, Some(15.0));
    }
    pen.cht(machine, 30.0, 212.0, Some(38.0));
    let view = only(&pen, machine);
    assert_eq!(view.points[6].value, 189.0, "212 + 15 - 38");
    assert!(says(&view, "The latest reading, 212 °C, is past the limit, 210 °C."), "{view:?}");
    assert!(view.drifts);
}

/// Pettitt by his double sum in NumPy: K = 49, p = 0.0149, between 25 h and 28 h; medians 181 and 196.
/// The readings lie 14 °C off these in sum, 42 °C off the line.
#[test]
fn a_step_is_told_with_what_was_done_there() {
    let hours = [2.0, 5.0, 9.0, 12.0, 16.0, 20.0, 25.0, 28.0, 31.0, 35.0, 39.0, 42.0, 46.0, 50.0];
    let celsius = [180, 182, 179, 181, 180, 183, 181, 195, 197, 194, 196, 195, 198, 196].map(f64::from);
    let readings: Vec<(f64, f64)> = hours.into_iter().zip(celsius).collect();
    let (mut pen, machine) = logged(&readings);
    pen.job(machine, 10.0, "Plug changed");
    let job = pen.job(machine, 26.5, "Carburettor cleaned");
    let view = only(&pen, machine);
    let change = view.change.clone().unwrap();
    assert_eq!((change.hours, change.before, change.after), (28.0, 181.0, 196.0));
    assert!(says(&view, "about 181 °C up to 25 engine hours, about 196 °C from 28 on"), "{view:?}");
    assert!(says(&view, "Carburettor cleaned") && !says(&view, "Plug changed"), "{view:?}");
    assert_eq!(view.marks.iter().map(|mark| mark.hours).collect::<Vec<_>>(), [10.0, 26.5]);
    assert_eq!(view.marks[1].record, job.to_string());
    // A steady climb makes a change point, too, but lies nearer to its line.
    let (pen, machine) = logged(&CLIMBING.map(|(hours, _)| (hours, 170.0 + hours)));
    assert!(only(&pen, machine).change.is_none());
}

/// SciPy: -521.74 in a hundred hours, from -571.43 to -379.31; pymannkendall: p = 0.00128; 8600 rpm are
/// crossed at 137.875, 127.625 and 182.136 h.
#[test]
fn a_measured_point_falls_to_its_lower_limit() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 41.0);
    let hours = [1.0, 4.0, 9.0, 13.0, 18.0, 22.0, 27.0, 33.0, 38.0, 41.0];
    let speeds = [9310, 9290, 9300, 9240, 9250, 9190, 9170, 9180, 9110, 9120].map(f64::from);
    for (hours, speed) in hours.into_iter().zip(speeds) {
        pen.look(machine, hours, day("2026-04-03"), measured("full-throttle-speed", speed, Unit::PerMinute));
    }
    let view = only(&pen, machine);
    let line = view.line.clone().unwrap();
    assert!(near(line.per_100_hours, -521.7391304347826) && near(line.low, -571.4285714285714));
    assert!(near(line.high, -379.3103448275862) && near(view.chance.unwrap(), 0.0012821837418053317));
    let reach = view.reaches.clone().unwrap();
    assert!(near(reach.low, 127.625) && near(reach.at, 137.875), "{reach:?}");
    assert!(near(reach.high.unwrap(), 182.13636363636363), "{reach:?}");
    assert!(
        view.sentences[0].starts_with("It falls toward its limit by about 522 rpm"),
        "{:?}",
        view.sentences
    );
    assert!(view.sentences[0].ends_with("(between 379 rpm and 571 rpm)."), "{:?}", view.sentences);
    assert!(view.drifts && says(&view, "the limit, 8600 rpm, at 127.6"), "{view:?}");
    assert_eq!(view.points[0].words, "9310 rpm, 3 April 2026");
}

/// pymannkendall: S = 17, p = 0.028.
#[test]
fn grades_are_told_in_their_own_words() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 40.0);
    let looks = [(3, 0), (8, 0), (12, 0), (17, 1), (22, 0), (26, 1), (31, 1), (36, 2)];
    for (hours, grade) in looks {
        let means = [Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable][grade];
        pen.look(machine, f64::from(hours), day("2026-04-03"), seen("cylinder-base", means));
    }
    pen.look(machine, 37.0, day("2026-04-04"), seen("cylinder-base", Meaning::NotFitted));
    let view = only(&pen, machine);
    assert_eq!(view.grades, ["Dry", "Old stain, dry to touch", "Wet"]);
    assert_eq!(view.points.iter().map(|point| point.value).sum::<f64>(), 5.0);
    assert_eq!(view.points.len(), 8, "what isn't fitted has no grade");
    assert!(near(view.chance.unwrap(), 0.02796556996586097), "{:?}", view.chance);
    assert!(view.line.is_none() && view.unit.sign.is_empty() && view.drifts);
    assert_eq!(view.sentences[0], "It gets worse from look to look. The latest found “Wet”.");
    assert!(says(&view, "less than once in 20 times"), "{view:?}");
    assert_eq!(view.points[7].words, "Wet, 3 April 2026");
}

/// SciPy: 4.7619 eighths in a hundred hours, from 0 to 6.25; pymannkendall: p = 0.0289.
#[test]
fn movement_and_burn_are_followed_too() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 60.0);
    for (hours, eighths) in [(10.0, 1), (20.0, 1), (31.0, 2), (39.0, 2), (52.0, 3), (60.0, 3)] {
        let torque = Quantity::new(14.4, Unit::NewtonMetre);
        let done = TorqueDone {
            tool: Uuid::from_u128(3),
            tool_name: "Wrench 2".into(),
            setting: torque,
            least: torque,
            most: torque,
            eighths: vec![0, eighths, 1, 0],
            reading: None,
            watch: Vec::new(),
            override_reason: None,
        };
        let mut finding = seen("torque-head-nuts", Meaning::Serviceable);
        finding.torque = Some(done);
        pen.look(machine, hours, day("2026-04-03"), finding);
    }
    let flight = pen.flown(machine, 0.5, 1.9);
    pen.flown(machine, 1.0, 3.6);
    let views = trends(&mut app(&pen), machine);
    let [burn, moved] = views.as_slice() else { unreachable!("{views:?}") };
    assert_eq!((burn.id.as_str(), moved.id.as_str()), ("fuel-burn", "head-nuts-movement"));
    assert!(near(burn.points[0].value, 3.8) && near(burn.points[1].value, 3.6), "{burn:?}");
    assert_eq!((burn.points[0].hours, burn.points[1].hours), (60.5, 61.5));
    assert_eq!(burn.points[0].record, flight.to_string());
    tells_nothing(burn);
    assert!(near(moved.line.as_ref().unwrap().per_100_hours, 4.761904761904762), "{moved:?}");
    assert!(near(moved.chance.unwrap(), 0.028853788793347768) && moved.drifts);
    assert_eq!(moved.points[4].words, "3 eighths of a turn, 3 April 2026");
    assert_eq!(moved.unit.sign, "eighths of a turn");
}

/// An hour meter misread as 412 and described anew as 41.2: no look was later than that.
#[test]
fn hours_taken_back_take_their_looks_along() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 412.0);
    pen.look(machine, 412.0, day("2026-04-03"), measured("idle-speed", 2000.0, Unit::PerMinute));
    let described = Machine { hours: 41.2, ..common::bramble() };
    pen.write(Some(machine), day("2026-04-04"), &Body::Machine(described));
    assert_eq!(only(&pen, machine).points[0].hours, 41.2);
}
