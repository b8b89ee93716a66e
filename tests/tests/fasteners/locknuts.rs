//! Self-locking nuts.

use witnessmark_core::torque::{Between, DragRule, minimum, minimums, nylon_bears, protrusion, with_drag};
use witnessmark_core::units::{Quantity, Unit};

use crate::{in_unit, lbf_in, mm, near, thread};

/// US Army TB 43-0218 § 7c: 50 to 70 wanted, 30 at one turn from seating: set 80 to 100 lbf·in.
#[test]
fn the_bulletins_example() {
    let drag = with_drag(Between::new(lbf_in(50.0), lbf_in(70.0)), lbf_in(30.0), DragRule::Third).unwrap();
    assert!(drag.counted);
    near(in_unit(drag.set.low, Unit::PoundForceInch), 80.0, 1e-12, "low");
    near(in_unit(drag.set.high, Unit::PoundForceInch), 100.0, 1e-12, "high");
    // The same measured in N·m: the bulletin prints 3, set 9 to 11.
    let metric = lbf_in(30.0).to(Unit::NewtonMetre).unwrap();
    let wanted = Between::new(lbf_in(50.0), lbf_in(70.0)).to(Unit::NewtonMetre).unwrap();
    let set = with_drag(wanted, metric, DragRule::Third).unwrap().set;
    assert_eq!([set.low, set.high].map(|end| end.value.round()), [9.0, 11.0]);
}

/// The same paragraph: less than a third is disregarded, a third or more added. FAA AC 43.13-1B
/// 7-40 d adds it always.
#[test]
fn a_third_decides() {
    let set = |drag: f64, rule| {
        let with = with_drag(Between::just(lbf_in(60.0)), lbf_in(drag), rule).unwrap();
        (with.set.low.value, with.counted)
    };
    assert_eq!(set(19.0, DragRule::Third), (60.0, false));
    assert_eq!(set(20.0, DragRule::Third), (80.0, true));
    assert_eq!(set(19.0, DragRule::Always), (79.0, true));
}

/// Minimum prevailing torque of re-used nuts, lbf·in: FAA AC 43.13-1B table 7-2.
#[test]
fn least_drag_by_the_circular() {
    for (name, least) in [
        ("7/16-20", 8.0),
        ("1/2-20", 10.0),
        ("9/16-18", 13.0),
        ("5/8-18", 18.0),
        ("3/4-16", 27.0),
        ("7/8-14", 40.0),
        ("1-14", 55.0),
        ("7/16-14", 8.0),
        ("1/2-13", 10.0),
        ("9/16-12", 14.0),
        ("5/8-11", 20.0),
        ("3/4-10", 27.0),
        ("7/8-9", 40.0),
        ("1-8", 51.0),
    ] {
        let minimum = minimum(thread(name)).unwrap();
        assert_eq!((minimum.torque, minimum.source), (lbf_in(least), "FAA AC 43.13-1B table 7-2"), "{name}");
        assert!(minimum.reusable(lbf_in(least)).unwrap(), "{name}");
        assert!(!minimum.reusable(lbf_in(least - 0.1)).unwrap(), "{name}");
    }
}

/// Small fine threads, lbf·in: US Army TM 55-1520-240-23-1 p. 1-14, which is stricter where both speak.
#[test]
fn least_drag_of_small_nuts() {
    let army = "US Army TM 55-1520-240-23-1 p. 1-14";
    for (name, least) in [
        ("8-32", 1.5),
        ("10-32", 2.0),
        ("1/4-28", 3.5),
        ("5/16-24", 6.5),
        ("3/8-24", 9.5),
        ("7/16-20", 14.0),
        ("1/2-20", 18.0),
    ] {
        let found = minimums(thread(name)).into_iter().find(|m| m.source == army).unwrap();
        assert_eq!(found.torque, lbf_in(least), "{name}");
    }
    for name in ["8-32", "10-32", "1/4-28", "5/16-24", "3/8-24"] {
        assert_eq!(minimum(thread(name)).unwrap().source, army, "{name}");
    }
}

/// Nylon inserts by size, lbf·in: US Army TM 9-6115-604-34 table 1-3.
#[test]
fn least_drag_of_nylon_nuts() {
    for (names, least) in [
        (["1/4-20", "1/4-28"], 4.0),
        (["5/16-18", "5/16-24"], 5.0),
        (["3/8-16", "3/8-24"], 9.0),
        (["7/16-14", "7/16-20"], 12.0),
        (["1/2-13", "1/2-20"], 15.0),
    ] {
        for name in names {
            let nylon = minimums(thread(name)).into_iter().find(|m| m.source.contains("nylon")).unwrap();
            assert_eq!(nylon.torque, lbf_in(least), "{name}");
        }
    }
}

/// Metric nuts, N·m at the fifth removal: ISO 2320 (2008 and before) as tabulated on a page.
#[test]
fn least_drag_of_metric_nuts() {
    for (name, least) in [
        ("M5", 0.2),
        ("M6", 0.3),
        ("M8", 0.6),
        ("M8x1", 0.6),
        ("M10", 1.0),
        ("M10x1.25", 1.0),
        ("M12", 1.6),
        ("M14", 2.3),
        ("M16", 3.0),
    ] {
        let minimum = minimum(thread(name)).unwrap();
        assert_eq!(minimum.torque, Quantity::new(least, Unit::NewtonMetre), "{name}");
    }
}

/// At least two complete threads beyond the nut: US Army TB 43-0218 § 7b.
#[test]
fn two_threads_show() {
    for (name, shows, enough) in
        [("M8", 2.5, true), ("M8", 2.4, false), ("M8x1", 2.0, true), ("M6", 1.9, false)]
    {
        assert_eq!(protrusion(thread(name), mm(shows)).unwrap().enough, enough, "{name} {shows}");
    }
}

/// Nylon inserts up to 250 °F, 121 °C: FAA AC 43.13-1B 7-64 f.
#[test]
fn nylon_and_heat() {
    assert!(nylon_bears(Quantity::new(250.0, Unit::Fahrenheit)).unwrap());
    assert!(nylon_bears(Quantity::new(121.0, Unit::Celsius)).unwrap());
    assert!(!nylon_bears(Quantity::new(122.0, Unit::Celsius)).unwrap());
    // Heads run at 330 °F and more (common practice, no source).
    assert!(!nylon_bears(Quantity::new(330.0, Unit::Fahrenheit)).unwrap());
}
