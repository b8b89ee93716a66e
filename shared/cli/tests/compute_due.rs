//! What falls due, against values worked by hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::{Value, json};

fn due(input: Value) -> Value {
    let ran = Desk::new().run_with(&["compute", "due"], &input.to_string());
    assert_eq!(ran.code, 0, "{ran:?}");
    ran.json()["items"][0].clone()
}

fn plug(changed: Value) -> Value {
    let mut item = json!({
        "title": "Plug", "every": { "hours": 25, "days": 365 },
        "done": { "hours": 10 }, "done_on": "2026-01-01", "tolerance_percent": 10,
    });
    item.as_object_mut().unwrap().extend(changed.as_object().unwrap().clone());
    item
}

#[test]
fn whichever_comes_first() {
    // By hand: 10 + 25 = 35 h; 2026-01-01 + 365 d = 2027-01-01; at 20 h on 25 December 15 h and 7 d are left.
    let found = due(json!({ "items": [plug(json!({}))], "service": { "hours": 20 }, "on": "2026-12-25" }));
    assert_eq!((&found["next"]["hours"], &found["next"]["day"]), (&json!(35.0), &json!("2027-01-01")));
    assert_eq!((&found["remaining"]["hours"], &found["remaining"]["days"]), (&json!(15.0), &json!(7)));
    assert_eq!((&found["standing"], &found["forecast"]), (&json!("soon"), &Value::Null));
    // 10 % of 25 h is 2.5 h: 36 h are tolerated, 37.5 h are over.
    for (hours, standing) in [(34.0, "soon"), (35.0, "tolerated"), (36.0, "tolerated"), (37.5, "over")] {
        let input = json!({ "items": [plug(json!({}))], "service": { "hours": hours }, "on": "2026-06-01" });
        assert_eq!(due(input)["standing"], standing, "{hours}");
    }
}

#[test]
fn late_does_not_shift_what_counts_from_due() {
    // Before at 10 h, due at 35 h, done at 36 h: the next is at 60 h, not at 61 h.
    let item = |from_due: bool| {
        let before = json!({ "done": { "hours": 10 }, "done_on": "2025-06-01" });
        plug(json!({ "done": { "hours": 36 }, "from_due": from_due, "before": before }))
    };
    let next = |from_due: bool| {
        let input = json!({ "items": [item(from_due)], "service": { "hours": 40 }, "on": "2026-06-01" });
        due(input)["next"]["hours"].clone()
    };
    assert_eq!((next(true), next(false)), (json!(60.0), json!(61.0)));
}

#[test]
fn a_steady_rate_has_its_day() {
    // Two hours a week, every week: 6 h are flown three weeks on, with no doubt about it.
    let weeks = ["2026-06-02", "2026-05-26", "2026-05-19", "2026-05-12", "2026-05-05", "2026-04-28"];
    let history: Vec<Value> = weeks.iter().map(|day| json!([day, 2.0])).collect();
    let input = json!({ "items": [plug(json!({}))], "service": { "hours": 29 }, "on": "2026-06-05", "history": history });
    assert_eq!(
        due(input)["forecast"],
        json!({ "at": "2026-06-26", "low": "2026-06-26", "high": "2026-06-26" })
    );
}

#[test]
fn what_cannot_be_counted_is_told() {
    let message = |input: Value| {
        let ran = Desk::new().run_with(&["compute", "due"], &input.to_string());
        assert_eq!(ran.kind(), "input");
        ran.fault()["message"].as_str().unwrap().to_owned()
    };
    let with = |item: Value| json!({ "items": [item], "service": {}, "on": "2026-06-05" });
    assert!(message(with(plug(json!({ "every": {} })))).contains("Plug"));
    assert!(message(with(plug(json!({ "every": { "hours": -1 } })))).contains("more than 0"));
    assert!(message(with(plug(json!({ "from_due": true })))).contains("before"));
    assert!(message(with(plug(json!({ "done_on": "yesterday" })))).contains("items[0].done_on"));
    // At 10 h it can't have been done when the machine has 0, nor on a day to come.
    assert!(message(with(plug(json!({})))).contains("done: Plug"));
    let tomorrow = plug(json!({ "done": { "hours": 0 }, "done_on": "2026-06-06" }));
    assert!(message(with(tomorrow)).contains("up to the day"));
    let ahead = json!({ "items": [], "service": {}, "on": "2026-06-05", "history": [["2026-07-01", 1.0]] });
    assert!(message(ahead).contains("2026-07-01"));
}
