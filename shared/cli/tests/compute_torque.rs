//! Computations about fasteners against published values, as a program asks for them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::computing::{compute, quantity, refused};
use serde_json::{Value, json};

#[track_caller]
fn near(quantity: &Value, value: f64, unit: &str, share: f64) {
    let found = quantity["value"].as_f64().unwrap();
    assert!(
        (found / value - 1.0).abs() <= share && quantity["unit"] == unit,
        "{quantity}, not {value} {unit}"
    );
}

fn between(low: f64, high: f64, unit: &str) -> Value {
    json!({ "low": quantity(low, unit), "high": quantity(high, unit) })
}

#[test]
fn drag_is_added_from_a_third_on() {
    // US Army TB 43-0218 § 7c: 50 to 70 wanted, 30 lbf·in at one turn from seating: set 80 to 100.
    let input = |drag: f64| json!({ "wanted": between(50.0, 70.0, "lbf.in"), "drag": quantity(drag, "lbf.in"), "thread": "1/4-28" });
    let found = compute("prevailing", input(30.0));
    assert_eq!(found["counted"], true);
    near(&found["set"]["low"], 80.0, "lbf.in", 1e-9);
    near(&found["set"]["high"], 100.0, "lbf.in", 1e-9);
    near(&found["set_si"]["high"], 100.0 * 0.112_984_8, "N.m", 1e-6);
    // Least drag of a used 1/4-28, 3.5 lbf·in: US Army TM 55-1520-240-23-1 p. 1-14.
    near(&found["minimum"], 3.5, "lbf.in", 1e-9);
    assert_eq!(found["reusable"], true);
    let worn = compute("prevailing", input(3.0));
    assert_eq!((&worn["counted"], &worn["reusable"]), (&json!(false), &json!(false)));
    near(&worn["set"]["low"], 50.0, "lbf.in", 1e-9);
}

#[test]
fn a_bolts_limit_is_that_of_vdi_2230() {
    // VDI 2230 formula, computed by hand: M8 8.8, μ 0.12, 90 % of Rp0.2: 18.6 kN, 24.6 N·m.
    let found =
        compute("bolt-limit", json!({ "thread": "M8", "class": "8.8", "friction": 0.12, "use": 0.9 }));
    near(&found["preload"], 18_600.0, "N", 0.01);
    near(&found["torque"], 24.6, "N.m", 0.01);
    // A fastener house's table after VDI 2230: M8x1 10.9, μ 0.10 to 0.14: 30.4 to 28.9 kN, 33.5 to 42.8 N·m.
    let input = json!({ "thread": "M8x1", "class": 10.9, "friction": { "low": 0.10, "high": 0.14 } });
    let fine = compute("bolt-limit", input);
    near(&fine["preload"]["low"], 28_900.0, "N", 0.02);
    near(&fine["preload"]["high"], 30_400.0, "N", 0.02);
    near(&fine["torque"]["low"], 33.5, "N.m", 0.025);
    near(&fine["torque"]["high"], 42.8, "N.m", 0.025);
}

#[test]
fn clamp_load_is_a_band() {
    // A calculator page: M12 8.8 at 82 N·m with K = 0.2 about 34 kN, 70 % of proof; 45 kN at 0.15, 23 kN at 0.3.
    let input = |factor: Value| json!({ "torque": quantity(82.0, "N.m"), "thread": "M12", "class": "8.8", "nut_factor": factor });
    let one = compute("clamp-load", input(json!({ "low": 0.2, "high": 0.2 })));
    near(&one["preload"]["low"], 34_000.0, "N", 0.01);
    assert!((one["proof_share"]["low"].as_f64().unwrap() - 0.7).abs() < 0.005, "{one}");
    let wide = compute("clamp-load", input(json!({ "low": 0.15, "high": 0.3 })));
    near(&wide["preload"]["low"], 23_000.0, "N", 0.02);
    near(&wide["preload"]["high"], 45_000.0, "N", 0.02);
    // The friction form turns the table's torque back into its load: M10x1.25 8.8, μ 0.12, 51 N·m, 31.6 kN.
    let input = json!({
        "torque": quantity(51.0, "N.m"), "thread": "M10x1.25", "class": "8.8",
        "friction": { "low": 0.12, "high": 0.12 },
    });
    near(&compute("clamp-load", input)["preload"]["high"], 31_600.0, "N", 0.025);
    // By diameter alone there is no stud to hold it against.
    let bare = json!({
        "torque": quantity(82.0, "N.m"), "nut_factor": { "low": 0.2, "high": 0.2 }, "diameter": quantity(12.0, "mm"),
    });
    let found = compute("clamp-load", bare);
    near(&found["preload"]["low"], 34_000.0, "N", 0.01);
    assert_eq!(found["proof_share"], Value::Null);
}

#[test]
fn a_strip_area_grows_with_engagement() {
    // ASME B1.1 form, 6H/6g, computed by hand: M8 16.83 mm² a millimetre.
    let input = json!({
        "thread": "M8", "engaged": quantity(16.0, "mm"), "shear_strength": quantity(120.0, "MPa"),
    });
    let found = compute("strip-area", input);
    near(&found["internal_area"], 16.83 * 16.0, "mm2", 1e-3);
    near(&found["internal_area_si"], 16.83e-6 * 16.0, "m2", 1e-3);
    near(&found["load"], 16.83 * 16.0 * 120.0, "N", 1e-3);
    // A fastener house's table: 1/4-28 0.521 in² an inch.
    let inch = compute("strip-area", json!({ "thread": "1/4-28", "engaged": quantity(1.0, "in") }));
    near(&inch["internal_area"], 0.521 * 645.16, "mm2", 5e-3);
    assert_eq!(inch["load"], Value::Null);
}

#[test]
fn a_plan_crosses_in_stages() {
    let input = json!({
        "nuts": 4, "layout": "circle", "stages": [quantity(50.0, "%"), 1.0, "check"],
        "band": between(125.0, 130.0, "lbf.in"),
        "tool": { "marked": between(40.0, 200.0, "lbf.in"), "deviation": quantity(4.0, "%") },
    });
    let found = compute("tightening-plan", input);
    let steps = found["steps"].as_array().unwrap();
    let nuts: Vec<u64> = steps.iter().map(|step| step["nut"].as_u64().unwrap()).collect();
    // Across, as for any four nuts; the last round goes round.
    assert_eq!(nuts, [1, 3, 2, 4, 1, 3, 2, 4, 1, 2, 3, 4]);
    let stages: Vec<u64> = steps.iter().map(|step| step["stage"].as_u64().unwrap()).collect();
    assert_eq!(stages, [1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3]);
    near(&steps[0]["setting"], 63.75, "lbf.in", 1e-12);
    near(&steps[11]["setting"], 127.5, "lbf.in", 1e-12);
    near(&steps[11]["setting_si"], 127.5 * 0.112_984_8, "N.m", 1e-6);
    // ISO 6789:2003: ±4 % above 10 N·m.
    near(&found["spread"]["low"], 122.4, "lbf.in", 1e-9);
    near(&found["spread"]["high"], 132.6, "lbf.in", 1e-9);
    // A grid, half and full by default, without a tool.
    let grid = json!({ "nuts": 6, "layout": { "rows": 2, "columns": 3 }, "band": between(8.0, 10.0, "N.m") });
    let found = compute("tightening-plan", grid);
    let first: Vec<u64> =
        found["steps"].as_array().unwrap()[..2].iter().map(|s| s["nut"].as_u64().unwrap()).collect();
    assert_eq!(first, [2, 5]);
    assert_eq!(found["spread"], Value::Null);
}

#[test]
fn what_cannot_be_says_what_would() {
    let band = || between(125.0, 130.0, "lbf.in");
    let short = json!({ "nuts": 4, "band": band(), "tool": { "marked": between(100.0, 200.0, "lbf.in") } });
    assert!(refused("tightening-plan", short).contains("63.75 lbf·in is outside the tool's marked range"));
    let grid = json!({ "nuts": 4, "layout": { "rows": 2, "columns": 3 }, "band": band() });
    assert!(refused("tightening-plan", grid).contains("rows times columns"));
    let thread = json!({ "thread": "M8x0.9", "engaged": quantity(16.0, "mm") });
    assert!(refused("strip-area", thread).contains("thread: there is no thread `M8x0.9`"));
    let class = json!({ "thread": "1/4-28", "class": "8.8", "friction": 0.12 });
    assert!(refused("bolt-limit", class).contains("1/4-28"));
    let neither = json!({ "torque": quantity(82.0, "N.m"), "thread": "M12" });
    assert!(refused("clamp-load", neither).contains("either `friction` or `nut_factor`"));
    let both_ways = json!({
        "torque": quantity(10.0, "N.m"), "thread": "M8", "friction": { "low": 0.2, "high": 0.1 },
    });
    assert!(refused("clamp-load", both_ways).contains("`low` must not be above `high`"));
    let slip = json!({
        "torque": quantity(10.0, "N.m"), "thread": "M8", "friction": { "low": 0.1, "high": 0.2 },
        "diameter": quantity(8.0, "in"),
    });
    assert!(refused("clamp-load", slip).contains("isn't that of M8"));
}
