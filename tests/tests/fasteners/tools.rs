//! Torque tools.

use chrono::NaiveDate;
use witnessmark_core::torque::{Between, Recheck, Tool, ToolReason, ToolStanding};
use witnessmark_core::units::{Quantity, Unit};

use crate::{in_unit, lbf_in, near};

fn newton_metres(low: f64, high: f64) -> Tool {
    Tool::marked(Quantity::new(low, Unit::NewtonMetre), Quantity::new(high, Unit::NewtonMetre))
}

/// ISO 6789:2003, setting tools type II class A, as summarised in a tool maker's manual: ±4 % where
/// the maximum is above 10 N·m, ±6 % at 10 N·m and below.
#[test]
fn permissible_deviation() {
    for (tool, share) in [
        (newton_metres(2.0, 10.0), 0.06),
        (newton_metres(2.0, 10.1), 0.04),
        (newton_metres(5.0, 25.0), 0.04),
        (Tool::marked(lbf_in(15.0), lbf_in(80.0)), 0.06),
        (Tool::marked(lbf_in(40.0), lbf_in(200.0)), 0.04),
    ] {
        assert_eq!(tool.deviation().unwrap(), share, "{tool:?}");
    }
    // ±4 % of the reading at 20, 60 and 100 % of the scale, where such tools are checked.
    for at in [5.0, 15.0, 25.0] {
        let set = Quantity::new(at, Unit::NewtonMetre);
        let spread = newton_metres(5.0, 25.0).spread(set, None).unwrap();
        near(in_unit(spread.low, Unit::NewtonMetre), 0.96 * at, 1e-12, at);
        near(in_unit(spread.high, Unit::NewtonMetre), 1.04 * at, 1e-12, at);
    }
}

/// The range begins at the lowest *marked* value (ISO 6789-1:2017 5.1.3, as a calibration house
/// explains it: a tool of 10 to 100 N·m begins at 10, not at 20).
#[test]
fn the_range_begins_at_the_lowest_mark() {
    let on = NaiveDate::from_ymd_opt(2025, 1, 1).unwrap();
    let tool = Tool { calibrated_on: Some(on), ..newton_metres(10.0, 100.0) };
    let judge = |at| tool.judge(Quantity::new(at, Unit::NewtonMetre), on, None).unwrap();
    assert_eq!(judge(10.0), ToolStanding::Fit);
    assert_eq!(judge(9.9), ToolStanding::Refused(vec![ToolReason::OutsideRange]));
}

/// 12 months or 5 000 cycles: ISO 6789 (memory); a year, and after a drop: FAA AC 43.13-1B 7-40.
#[test]
fn a_year_five_thousand_clicks_or_a_drop() {
    let day = |y, m, d| NaiveDate::from_ymd_opt(y, m, d).unwrap();
    let good = Tool { calibrated_on: Some(day(2024, 5, 10)), cycles: 4999, ..newton_metres(5.0, 25.0) };
    let set = Quantity::new(14.0, Unit::NewtonMetre);
    assert_eq!(good.recheck, Recheck::default());
    assert_eq!(good.judge(set, day(2025, 5, 10), None).unwrap(), ToolStanding::Fit);
    let refused = |tool: &Tool, on| matches!(tool.judge(set, on, None).unwrap(), ToolStanding::Refused(_));
    assert!(refused(&good, day(2025, 5, 11)));
    assert!(refused(&Tool { cycles: 5000, ..good.clone() }, day(2025, 5, 10)));
    assert!(refused(&Tool { dropped: true, ..good }, day(2024, 5, 11)));
}

/// Most effective ranges: US Army TB 43-0218 table 3-1; else 30 to 80 % of the range: US Army
/// TM 1-1500-204-23-9, 8-3.
#[test]
fn where_a_wrench_is_best() {
    let of = |low, high, unit| Tool::marked(Quantity::new(low, unit), Quantity::new(high, unit));
    let best = |tool: Tool| {
        // A scale from 0 has no lowest mark yet, but the table's ranges are stated so.
        let Between { low, high } = tool.most_effective().unwrap();
        (low.value, high.value)
    };
    assert_eq!(best(of(0.0, 200.0, Unit::PoundForceInch)), (50.0, 150.0));
    assert_eq!(best(of(15.0, 75.0, Unit::PoundForceFoot)), (30.0, 60.0));
    assert_eq!(best(of(0.0, 170.0, Unit::PoundForceFoot)), (44.0, 131.0));
    assert_eq!(best(of(0.0, 600.0, Unit::PoundForceFoot)), (50.0, 450.0));
    assert_eq!(best(of(20.0, 100.0, Unit::NewtonMetre)), (30.0, 80.0));
}
