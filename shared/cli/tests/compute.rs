//! Computations against published values.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use common::computing::{compute, near, quantity};
use serde_json::{Value, json};

fn kind(name: &str, input: &str) -> (String, String) {
    let ran = Desk::new().run_with(&["compute", name], input);
    (ran.kind(), ran.fault()["message"].as_str().unwrap().to_owned())
}

#[test]
fn an_adapter_in_line_lowers_the_setting() {
    // US Navy NAVEDTRA 14315, figures 3-44 and 3-45: S = T·L/(L+E). Formula and inputs seen, the result computed.
    let input = json!({
        "torque": quantity(100.0, "lbf.in"), "lever": quantity(12.0, "in"), "adapter": quantity(6.0, "in"),
        "angle_deg": 0,
    });
    let found = compute("wrench-setting", input);
    near(&found["setting"], 66.7, "lbf.in", 0.05);
    near(&found["at_fastener"], 100.0, "lbf.in", 1e-9);
    // NIST SP 811 appendix B.8: 1 lbf·in = 1.129 848 E-01 N·m.
    near(&found["setting_si"], 66.666_667 * 0.112_984_8, "N.m", 1e-5);
    near(&found["at_fastener_si"], 11.298_48, "N.m", 1e-5);
}

#[test]
fn an_adapter_at_a_right_angle_leaves_the_setting_unchanged() {
    // The lever's projection; also the usual instruction of wrench makers (from memory).
    let input = json!({
        "torque": quantity(100.0, "lbf.in"), "lever": quantity(12.0, "in"), "adapter": quantity(6.0, "in"),
        "angle_deg": 90,
    });
    near(&compute("wrench-setting", input)["setting"], 100.0, "lbf.in", 1e-9);
}

#[test]
fn units_may_differ_and_the_answer_is_in_the_one_asked_in() {
    // A tool maker's instruction: 20 lbf·ft wanted, 12 in wrench, 3 in crowfoot in line: set 16 lbf·ft.
    let input = json!({
        "torque": quantity(20.0, "lbf.ft"), "lever": quantity(1.0, "ft"), "adapter": quantity(76.2, "mm"),
    });
    let found = compute("wrench-setting", input);
    near(&found["setting"], 16.0, "lbf.ft", 1e-9);
    let back = compute(
        "torque-at-fastener",
        json!({ "setting": found["setting"], "lever": quantity(12.0, "in"), "adapter": quantity(3.0, "in") }),
    );
    near(&back["at_fastener"], 20.0, "lbf.ft", 1e-9);
    // NIST SP 811 appendix B.8: 1 lbf·ft = 1.355 818 N·m.
    near(&back["at_fastener_si"], 20.0 * 1.355_818, "N.m", 1e-4);
}

#[test]
fn quantities_convert_by_the_published_factors() {
    let convert = |value: f64, from: &str, to: &str| {
        compute("convert", json!({ "quantity": quantity(value, from), "to": to }))["quantity"].clone()
    };
    // NIST SP 811 appendix B.8: 1 kgf·m = 9.806 65 N·m, exactly; 1 inHg (conventional) = 3.386 389 kPa.
    near(&convert(1.0, "kgf.m", "N.m"), 9.806_65, "N.m", 1e-12);
    near(&convert(29.92, "inHg", "hPa"), 1013.2, "hPa", 0.05);
    near(&convert(400.0, "degF", "Cel"), 204.444, "Cel", 1e-3);
}

#[test]
fn what_cannot_be_computed_is_told_with_its_member_and_an_example() {
    let member = |name: &str, input: Value, expected: &str| {
        let (kind, message) = kind(name, &input.to_string());
        assert_eq!(kind, "input");
        assert!(message.contains(expected), "{message}");
    };
    let (lever, adapter) = (quantity(12.0, "in"), quantity(6.0, "in"));
    let torque = quantity(100.0, "lbf.in");
    member("wrench-setting", json!({ "torque": torque, "lever": lever }), "adapter");
    member(
        "wrench-setting",
        json!({ "torque": quantity(1.0, "ft.lb"), "lever": lever, "adapter": adapter }),
        "torque.unit",
    );
    member(
        "wrench-setting",
        json!({ "torque": lever, "lever": lever, "adapter": adapter }),
        "in can't be turned into N.m",
    );
    member("wrench-setting", json!({ "torque": torque, "lever": lever, "adaptor": adapter }), "adaptor");
    member(
        "wrench-setting",
        json!({ "torque": torque, "lever": quantity(0.0, "in"), "adapter": adapter }),
        "lever",
    );
    member(
        "wrench-setting",
        json!({ "torque": { "value": "100", "unit": "N.m" }, "lever": lever, "adapter": adapter }),
        "torque.value",
    );
    member("wrench-setting", json!([torque, lever, adapter]), "object");
    member("convert", json!({ "quantity": quantity(-300.0, "Cel"), "to": "K" }), "absolute zero");
    for text in ["", "{", "torque", "\u{0}"] {
        assert_eq!(kind("convert", text).0, "input");
    }
    let ran = Desk::new().run_with(&["compute", "convert"], "{}");
    let hint = ran.fault()["hint"].as_str().unwrap().to_owned();
    let example = &hint[hint.find('{').unwrap()..];
    assert_eq!(Desk::new().run_with(&["compute", "convert"], example).code, 0, "{example}");
    assert_eq!(kind("thrust", "{}").0, "no-such-computation");
}
