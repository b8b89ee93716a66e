//! Rules of torque tools and of what a re-torque shows, case by case.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use chrono::NaiveDate;
use witnessmark_core::torque::{
    Bearing, Between, Class, DragRule, Joint, JointLimit, Law, Layout, Marks, Period, Plan, Recheck, Sign,
    Stage, Tapped, Thread, Tool, ToolReason, ToolStanding, TorqueFault, Wanted, default_stages, signs, slips,
    with_drag,
};
use witnessmark_core::units::{Quantity, Unit};

fn inch(value: f64) -> Quantity {
    Quantity::new(value, Unit::PoundForceInch)
}

fn day(y: i32, m: u32, d: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(y, m, d).unwrap()
}

fn tool() -> Tool {
    Tool { calibrated_on: Some(day(2024, 2, 29)), ..Tool::marked(inch(40.0), inch(200.0)) }
}

#[test]
fn a_tool_in_order_is_fit() {
    assert_eq!(tool().judge(inch(127.5), day(2024, 6, 1), None).unwrap(), ToolStanding::Fit);
    // The same setting on its other scale.
    let metric = inch(127.5).to(Unit::NewtonMetre).unwrap();
    assert_eq!(tool().judge(metric, day(2024, 6, 1), None).unwrap(), ToolStanding::Fit);
}

/// Twelve months to the day; the day after, it is overdue. A leap day's is the 28th.
#[test]
fn twelve_months_hold_to_the_day() {
    assert_eq!(tool().due(), Some(day(2025, 2, 28)));
    assert_eq!(tool().judge(inch(100.0), day(2025, 2, 28), None).unwrap(), ToolStanding::Fit);
    let since = day(2025, 2, 28);
    let late = tool().judge(inch(100.0), day(2025, 3, 1), None).unwrap();
    assert_eq!(late, ToolStanding::Refused(vec![ToolReason::Overdue { since }]));
}

#[test]
fn the_owner_sets_how_long_a_calibration_holds() {
    let recheck = Recheck { every: Period::Days(30), cycles: 100 };
    let mine = Tool { cycles: 99, recheck, ..tool() };
    assert_eq!(mine.due(), Some(day(2024, 3, 30)));
    assert_eq!(mine.judge(inch(100.0), day(2024, 3, 30), None).unwrap(), ToolStanding::Fit);
    let worn = Tool { cycles: 100, ..mine };
    let refused = worn.judge(inch(100.0), day(2024, 3, 30), None).unwrap();
    assert_eq!(refused, ToolStanding::Refused(vec![ToolReason::Worn { cycles: 100, allowed: 100 }]));
}

#[test]
fn outside_the_marks_or_dropped_it_is_refused() {
    let on = day(2024, 6, 1);
    for set in [inch(39.9), inch(200.1)] {
        assert_eq!(
            tool().judge(set, on, None).unwrap(),
            ToolStanding::Refused(vec![ToolReason::OutsideRange])
        );
    }
    for set in [inch(40.0), inch(200.0)] {
        assert_eq!(tool().judge(set, on, None).unwrap(), ToolStanding::Fit);
    }
    let dropped = Tool { dropped: true, ..tool() };
    assert_eq!(
        dropped.judge(inch(100.0), on, None).unwrap(),
        ToolStanding::Refused(vec![ToolReason::Dropped])
    );
}

#[test]
fn an_override_is_a_watch_item_with_its_reason() {
    let late = day(2025, 6, 1);
    let because = "no other wrench at the field, checked against a spring balance";
    let judged = tool().judge(inch(100.0), late, Some(because)).unwrap();
    let overdue = ToolReason::Overdue { since: day(2025, 2, 28) };
    let overridden = ToolReason::Overridden { because: because.into() };
    assert_eq!(judged, ToolStanding::Watch(vec![overdue, overridden]));
    assert_eq!(tool().judge(inch(100.0), late, Some("  ")), Err(TorqueFault::NoReason));
    // Nothing to override: nothing recorded.
    assert_eq!(tool().judge(inch(100.0), day(2024, 6, 1), Some("why not")).unwrap(), ToolStanding::Fit);
}

#[test]
fn an_unknown_or_impossible_calibration_is_a_watch_item() {
    let on = day(2024, 1, 1);
    let unknown = Tool { calibrated_on: None, ..tool() };
    let judged = unknown.judge(inch(100.0), on, None).unwrap();
    assert_eq!(judged, ToolStanding::Watch(vec![ToolReason::NeverCalibrated]));
    let later = tool().judge(inch(100.0), on, None).unwrap();
    assert_eq!(later, ToolStanding::Watch(vec![ToolReason::CalibratedLater { on: day(2024, 2, 29) }]));
}

fn head() -> Joint {
    let thread: Thread = "M8".parse().unwrap();
    let bearing = Bearing::usual(thread).unwrap();
    Joint {
        thread,
        class: Some(Class::C8_8),
        law: Law::Friction { thread, bearing, friction: Between::new(0.10, 0.20) },
        tapped: Some(Tapped {
            engaged: Quantity::new(16.0, Unit::Millimetre),
            shear_strength: Quantity::new(120.0, Unit::Megapascal),
        }),
    }
}

/// A band of ±2 % is narrower than a tool of ±4 %: that alone is nothing to watch.
#[test]
fn a_band_narrower_than_the_tool_is_borne() {
    let spread = tool().spread(inch(127.5), None).unwrap();
    let band = Between::new(inch(125.0), inch(130.0));
    assert!(spread.low.value < band.low.value && spread.high.value > band.high.value);
    let (clamp, reasons) = tool().weigh(inch(127.5), None, None, &head()).unwrap();
    assert_eq!(reasons, []);
    assert!(clamp.strip_margin.unwrap().low > 1.0);
}

/// The same head at twelve times the torque: everything that can go has gone.
#[test]
fn pound_feet_for_pound_inches_breaks_the_joint() {
    let reading = Quantity::new(127.0, Unit::PoundForceFoot);
    let band = Between::new(inch(125.0), inch(130.0));
    let found = slips(reading, band, 0.04).unwrap();
    let likeliest = found.first().unwrap();
    assert_eq!((likeliest.taken, likeliest.meant), (Unit::PoundForceFoot, Unit::PoundForceInch));
    assert!((likeliest.times - 12.0).abs() < 1e-9);
    let harm = head().clamp(Between::just(reading)).unwrap().harm();
    let certain: Vec<JointLimit> = harm.iter().filter(|h| h.certain).map(|h| h.limit).collect();
    assert_eq!(certain, [JointLimit::Proof, JointLimit::Yield, JointLimit::Breaking, JointLimit::Strip]);
}

/// Too little by 12: 10.6 written as lbf·in was lbf·ft.
#[test]
fn pound_inches_for_pound_feet_is_found_too() {
    let band = Between::new(inch(125.0), inch(130.0));
    let found = slips(inch(10.6), band, 0.0).unwrap();
    let slip = found.first().unwrap();
    assert_eq!((slip.taken, slip.meant), (Unit::PoundForceInch, Unit::PoundForceFoot));
    assert!((slip.times - 1.0 / 12.0).abs() < 1e-12);
    assert!((slip.would_be.value - 127.2).abs() < 1e-9);
}

/// A torque tester reads 176.3 N·m: the wrench was set to 130 on its lbf·ft scale.
/// NIST SP 811: a pound-force foot is 12 pound-force inches; a newton metre is 8.85 of them.
#[test]
fn two_units_in_one_band_are_a_slip_where_one_number_fits_the_other() {
    let mixed = |low: Quantity, high: Quantity| Between::new(low, high).middle();
    let feet = |value: f64| Quantity::new(value, Unit::PoundForceFoot);
    let newton = |value: f64| Quantity::new(value, Unit::NewtonMetre);
    let fault = mixed(inch(125.0), feet(130.0)).unwrap_err();
    assert_eq!(
        fault.to_string(),
        "the band: 130 lbf·ft is 12 times 130 lbf·in: look for a slip in the units"
    );
    assert!(matches!(mixed(inch(125.0), newton(130.0)), Err(TorqueFault::Mixed { .. })));
    assert!(matches!(mixed(feet(10.0), inch(11.0)), Err(TorqueFault::Backwards(_))));
    // The same band told in two units is one.
    assert!(mixed(inch(125.0), newton(14.7)).is_ok());
    assert!(mixed(feet(10.0), inch(132.0)).is_ok());
    assert!(mixed(newton(14.0), inch(130.0)).is_ok());

    let band = Between::new(inch(50.0), inch(70.0));
    let set = |drag: Quantity| with_drag(band, drag, DragRule::Third);
    assert!(matches!(set(feet(30.0)), Err(TorqueFault::Mixed { .. })));
    assert_eq!(set(feet(2.5)).unwrap(), set(inch(30.0)).unwrap());
    assert!(set(inch(0.0)).is_ok() && set(feet(0.0)).is_ok());
}

#[test]
fn a_wrong_scale_shows_in_a_third_unit() {
    let band = Between::new(inch(125.0), inch(130.0));
    let found = slips(Quantity::new(176.0, Unit::NewtonMetre), band, 0.0).unwrap();
    let pair = |s: &witnessmark_core::torque::Slip| (s.taken, s.meant);
    assert!(found.iter().any(|s| pair(s) == (Unit::PoundForceFoot, Unit::PoundForceInch)), "{found:?}");
    // A reading that no slip of units explains is left unexplained.
    assert_eq!(slips(inch(200.0), band, 0.04).unwrap(), []);
}

#[test]
fn movement_that_settles_is_no_sign() {
    assert_eq!(signs(&[]).unwrap(), []);
    assert_eq!(signs(&[vec![2, 3, 4, 2]]).unwrap(), []);
    assert_eq!(signs(&[vec![3, 3, 4, 2], vec![1, 0, 1, 1]]).unwrap(), []);
}

#[test]
fn movement_that_is_far_uneven_or_growing_is_a_sign() {
    assert_eq!(signs(&[vec![5, 4, 4, 4]]).unwrap(), [Sign::TooFar { nut: 1, eighths: 5 }]);
    assert_eq!(signs(&[vec![0, 3, 1, 1]]).unwrap(), [Sign::Uneven { least: 0, most: 3 }]);
    let growing = signs(&[vec![0, 0, 0, 0], vec![1, 1, 1, 1], vec![1, 1, 2, 0]]).unwrap();
    assert_eq!(growing, [Sign::Growing { nut: 3, before: 1, now: 2 }]);
    assert!(signs(&[vec![1, 1], vec![1, 1, 1]]).is_err());
}

#[test]
fn marks_tell_what_had_been() {
    assert_eq!(Marks::read(1.0, 5.0), Marks::InLine);
    assert_eq!(Marks::read(20.0, 5.0), Marks::UnderTorqued);
    assert_eq!(Marks::read(-20.0, 5.0), Marks::OverTorqued);
}

fn wanted() -> Wanted {
    Wanted { band: Between::new(inch(125.0), inch(130.0)), drag: None, rule: DragRule::Third, adapter: None }
}

#[test]
fn four_head_nuts_in_stages() {
    let plan = Plan::new(Layout::Circle { nuts: 4 }, &default_stages(), &wanted(), Some(&tool())).unwrap();
    let nuts: Vec<usize> = plan.steps.iter().map(|step| step.nut).collect();
    assert_eq!(nuts, [1, 3, 2, 4, 1, 3, 2, 4, 1, 2, 3, 4]);
    let settings: Vec<f64> = plan.steps.iter().step_by(4).map(|step| step.setting.value).collect();
    assert_eq!(settings, [63.75, 127.5, 127.5]);
    let spread = plan.spread.unwrap();
    assert!((spread.low.value - 122.4).abs() < 1e-9 && (spread.high.value - 132.6).abs() < 1e-9);
}

#[test]
fn a_plan_that_the_tool_cannot_set_is_refused() {
    let short = Tool::marked(inch(100.0), inch(200.0));
    let fault =
        Plan::new(Layout::Circle { nuts: 4 }, &default_stages(), &wanted(), Some(&short)).unwrap_err();
    let (setting, low, high) = (inch(63.75), inch(100.0), inch(200.0));
    assert_eq!(fault, TorqueFault::OutsideTool { setting, low, high });
}

#[test]
fn stages_rise_to_the_whole() {
    let circle = Layout::Circle { nuts: 4 };
    for bad in [
        vec![],
        vec![Stage::Share(0.5)],
        vec![Stage::Share(1.0), Stage::Share(0.5)],
        vec![Stage::Check, Stage::Share(1.0)],
        vec![Stage::Share(0.0), Stage::Share(1.0)],
        vec![Stage::Share(1.2)],
        vec![Stage::Share(f64::NAN), Stage::Share(1.0)],
    ] {
        assert!(Plan::new(circle, &bad, &wanted(), None).is_err(), "{bad:?}");
    }
    assert!(Plan::new(circle, &[Stage::Share(1.0), Stage::Check, Stage::Check], &wanted(), None).is_ok());
}

/// Circles and grids that nobody has are refused, not computed.
#[test]
fn no_nuts_and_too_many_are_refused() {
    let grid = |rows, columns| Layout::Grid { rows, columns };
    for layout in [Layout::Circle { nuts: 0 }, Layout::Circle { nuts: 65 }, grid(0, 3), grid(usize::MAX, 2)] {
        assert!(layout.order().is_err() && layout.positions(0.0).is_err(), "{layout:?}");
    }
}

/// Nut 1 at the top, the numbers clockwise; turned by 45° the four of a square head.
#[test]
fn nuts_are_drawn_where_they_are() {
    let at = |turned: f64, nut: usize| {
        let place = Layout::Circle { nuts: 4 }.positions(turned).unwrap()[nut - 1];
        ((place.x * 1e3).round() / 1e3 + 0.0, (place.y * 1e3).round() / 1e3 + 0.0)
    };
    assert_eq!([at(0.0, 1), at(0.0, 2), at(0.0, 3)], [(0.0, -1.0), (1.0, 0.0), (0.0, 1.0)]);
    let half = (std::f64::consts::FRAC_1_SQRT_2 * 1e3).round() / 1e3;
    assert_eq!([at(45.0, 1), at(45.0, 4)], [(half, -half), (-half, -half)]);
    let grid = Layout::Grid { rows: 2, columns: 2 }.positions(0.0).unwrap();
    assert!(grid[0].x < 0.0 && grid[0].y < 0.0 && grid[3].x > 0.0 && grid[3].y > 0.0);
}

#[test]
fn names_are_read_as_people_write_them() {
    let name = |text: &str| text.parse::<Thread>().map(Thread::name);
    for (text, read) in [
        ("m8", "M8"),
        (" M8 × 1 ", "M8x1"),
        ("M8x1.25", "M8"),
        ("M10x1,25", "M10x1.25"),
        ("M6 X 1.0", "M6"),
        ("#10-32 UNF", "10-32"),
        ("1/4\"-28", "1/4-28"),
        ("1 1/8 - 12", "1-1/8-12"),
        ("1-14 UNS", "1-14"),
    ] {
        assert_eq!(name(text), Ok(read), "{text}");
    }
    for text in ["", "M", "M8x", "M8x0.9", "8", "1/4", "M1e3", "Mx1", "1/3-20", "MNaN"] {
        assert_eq!(name(text), Err(TorqueFault::NoThread(text.into())), "{text}");
    }
    let class = |json: &str| serde_json::from_str::<Class>(json);
    assert_eq!([class("\"8.8\"").unwrap(), class("8.8").unwrap()], [Class::C8_8, Class::C8_8]);
    assert_eq!(class("\" 10,9 \"").unwrap(), Class::C10_9);
    assert!(class("\"9.8\"").unwrap_err().to_string().contains("10.9"));
}
