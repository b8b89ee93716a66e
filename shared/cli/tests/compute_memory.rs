//! Trends and lives as a program asks for them: what they tell, and what is too little.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::computing::{compute, refused};
use serde_json::{Value, json};

/// Sen, JASA 63 (1968), his example (memory): 4, from 26/7 to 35/8; SciPy gives intercept 4.
#[test]
fn sens_example_by_its_names() {
    let x = json!([1, 2, 3, 4, 10, 12, 18]);
    let y = json!([9, 15, 19, 20, 45, 55, 78]);
    let found = compute("trend", json!({ "x": x, "y": y, "limit": 100 }));
    assert_eq!((&found["slope"], &found["intercept"]), (&json!(4.0), &json!(4.0)));
    assert_eq!(
        (found["slope_low"].as_f64(), found["slope_high"].as_f64()),
        (Some(26.0 / 7.0), Some(35.0 / 8.0))
    );
    // By hand: every pair rises, 21 of them; var S = 7·6·19/18; z = 20/√44.33.
    assert_eq!((&found["s"], &found["direction"]), (&json!(21), &json!("rising")));
    assert!((found["variance"].as_f64().unwrap() - 44.333_333).abs() < 1e-6);
    assert!((found["z"].as_f64().unwrap() - 20.0 / 44.333_333f64.sqrt()).abs() < 1e-6);
    // By hand: 4 + 4·24 = 100; from the medians (4, 20) at 35/8 and 26/7.
    let reached = &found["to_limit"];
    assert_eq!((&reached["at"], &found["limit"]["standing"]), (&json!(24.0), &json!("ahead")));
    assert!((reached["low"].as_f64().unwrap() - (4.0 + 80.0 * 8.0 / 35.0)).abs() < 1e-9);
    assert!((reached["high"].as_f64().unwrap() - (4.0 + 80.0 * 7.0 / 26.0)).abs() < 1e-9);
    assert_eq!(reached["left"]["at"], json!(6.0));
    assert_eq!(
        (&found["change_at"], &found["outliers"], &found["too_little"]),
        (&Value::Null, &json!([]), &Value::Null)
    );
}

#[test]
fn a_step_is_told_and_sides_matter() {
    let x: Vec<u32> = (1..=20).collect();
    let y: Vec<f64> =
        (1..=20).map(|at| if at < 11 { 10.0 } else { 14.0 } + f64::from(at % 3) / 10.0).collect();
    let found = compute("trend", json!({ "x": x, "y": y, "limit": { "at_least": 12 } }));
    assert_eq!((&found["change_at"], &found["change"]["after"]), (&json!(11.0), &json!(10.0)));
    assert_eq!((&found["limit"]["standing"], &found["to_limit"]), (&json!("away"), &Value::Null));
    let over = compute("trend", json!({ "x": x, "y": y, "limit": { "at_most": 12 } }));
    assert_eq!(over["limit"]["standing"], "there");
}

#[test]
fn too_little_is_never_a_number() {
    for (x, y, why) in [
        (json!([]), json!([]), "few"),
        (json!([3]), json!([180]), "few"),
        (json!([1, 2, 3, 4, 5, 6]), json!([7, 7, 7, 7, 7, 7]), "all-same"),
        (json!([4, 4, 4, 4, 4, 4]), json!([1, 2, 3, 4, 5, 6]), "one-moment"),
    ] {
        let found = compute("trend", json!({ "x": x, "y": y, "limit": 10 }));
        assert_eq!(found["too_little"]["why"], why);
        assert!(found["too_little"]["say"].as_str().unwrap().starts_with("too little to say"));
        for name in [
            "s",
            "variance",
            "z",
            "p",
            "slope",
            "slope_low",
            "slope_high",
            "intercept",
            "change_at",
            "to_limit",
        ] {
            assert_eq!(found.get(name), Some(&Value::Null), "{name}");
        }
    }
    for (findings, why) in [
        (json!([]), "few"),
        (json!([[10, 20]]), "few"),
        (json!([[10, null], [30, null], [20, null]]), "nothing-failed"),
        (json!([[10, 40], [20, 50], [29, 60]]), "any-spread"),
    ] {
        let found = compute("life", json!({ "findings": findings, "in_force": 25 }));
        assert_eq!(found["too_little"]["why"], why);
        assert_eq!((&found["weibull"], &found["inspect"]), (&Value::Null, &Value::Null));
        assert_eq!(found["inspect_every"], 25.0, "what is in force stays");
        assert_eq!(found["rests_on"]["findings"], findings.as_array().unwrap().len());
    }
    assert_eq!(compute("life", json!({ "findings": [[10, null]] }))["inspect_every"], Value::Null);
}

/// Lieblein & Zelen's ball bearings (memory): shape 2.10, scale 81.9.
#[test]
fn lives_by_their_names() {
    let lives = [
        17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56, 67.80, 68.64, 68.64,
        68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40,
    ];
    let findings: Vec<Value> = lives.iter().map(|life| json!([life, life])).collect();
    let input = json!({ "findings": findings, "chance": 0.05, "age": 20, "in_force": 10 });
    let found = compute("life", input);
    let weibull = &found["weibull"];
    assert!((weibull["shape"].as_f64().unwrap() - 2.10).abs() < 0.005, "{weibull}");
    assert!((weibull["scale"].as_f64().unwrap() - 81.9).abs() < 0.05);
    for name in ["shape", "scale"] {
        let ends = &weibull["intervals"][name];
        assert!(
            ends["low"].as_f64() < weibull[name].as_f64() && weibull[name].as_f64() < ends["high"].as_f64()
        );
    }
    let masses = found["turnbull"].as_array().unwrap();
    assert_eq!((masses.len(), &masses[0]["after"], &masses[0]["by"]), (22, &json!(17.88), &json!(17.88)));
    assert!((masses[0]["mass"].as_f64().unwrap() - 1.0 / 23.0).abs() < 1e-7);
    assert_eq!(found["rests_on"], json!({ "findings": 23, "failed": 23, "exact": 23, "whole": 0 }));
    // At 20 h by the fit: 1 − exp(H(20) − H(20 + τ)) = 0.05 has τ = 7.76 (by hand from 2.102 and 81.88).
    assert!((found["inspect"]["at_best"].as_f64().unwrap() - 7.76).abs() < 0.02, "{}", found["inspect"]);
    let every = found["inspect_every"].as_f64().unwrap();
    assert!(every <= 10.0 && every <= found["inspect"]["allowed"].as_f64().unwrap());
}

/// Lieblein & Zelen's bearings again, 23 of them (from memory). S of 50 million revolutions is 70.1 % by
/// the fit's own 2.102059 and 81.878298: exp(−(50/81.878298)^2.102059).
#[test]
fn the_curves_of_lives_come_with_their_intervals() {
    let lives = [
        17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56, 67.80, 68.64, 68.64,
        68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40,
    ];
    let findings: Vec<Value> = lives.iter().map(|life| json!([life, life])).collect();
    let found = compute("life", json!({ "findings": findings, "ages": [50, 200] }));
    let at = &found["at"][0];
    let number = |value: &Value, name: &str| value[name].as_f64().unwrap();
    assert!((number(at, "share") - 0.7014).abs() < 1e-4, "{at}");
    assert!(number(at, "low") < 0.70 && number(at, "low") > 0.5 && number(at, "high") < 0.85, "{at}");
    let steps = found["survival"].as_array().unwrap();
    // 22 different lives, and the beginning.
    assert_eq!(steps.len(), 23);
    assert!((number(&steps[1], "share") - 22.0 / 23.0).abs() < 1e-6, "{}", steps[1]);
    for step in steps {
        assert!(
            number(step, "low") <= number(step, "share") && number(step, "share") <= number(step, "high")
        );
    }
    let few = compute("life", json!({ "findings": [[10, 20], [20, null]], "ages": [50] }));
    assert_eq!((&few["survival"], &few["at"]), (&Value::Null, &Value::Null));
    assert!(refused("life", json!({ "findings": [[10, 20]], "ages": [-1] })).contains("age"));
}

#[test]
fn what_cannot_be_is_told_with_its_place() {
    assert!(refused("trend", json!({ "x": [1, -2, 3], "y": [1, 2, 3] })).contains("reading 2"));
    assert!(refused("trend", json!({ "x": [1, 2], "y": [1] })).contains("2 times and 1 values"));
    assert!(refused("trend", json!({ "x": [1, null], "y": [1, 2] })).contains("x[1]"));
    assert!(refused("trend", json!({ "x": [1], "y": [1], "limit": "hot" })).contains("limit"));
    assert!(refused("trend", json!({ "x": [1], "y": [1], "limits": 3 })).contains("limits"));
    assert!(refused("life", json!({ "findings": [[10, 20], [-1, 5]] })).contains("finding 2"));
    assert!(refused("life", json!({ "findings": [[20, 10]] })).contains("finding 1"));
    assert!(refused("life", json!({ "findings": [[0, 0]] })).contains("0 h"));
    assert!(refused("life", json!({ "findings": [[10]] })).contains("findings[0]"));
    assert!(refused("life", json!({ "findings": [], "chance": 1 })).contains("chance"));
    assert!(refused("life", json!({ "findings": [], "in_force": -5 })).contains("in force"));
}
