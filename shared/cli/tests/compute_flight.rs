//! Load, fuel, air and wind as a program asks for them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::computing::{compute, near, quantity, refused};
use serde_json::{Value, json};

/// FAA-H-8083-25 (PHAK), sample problem 1 (seen quoted): 5 718 ft and about 7 700 ft.
#[test]
fn the_handbooks_airfield() {
    let input = |dew: Value| {
        json!({
            "elevation": quantity(5883.0, "ft"), "altimeter": quantity(30.10, "inHg"),
            "temperature": quantity(70.0, "degF"), "dew_point": dew,
        })
    };
    let dry = compute("density-altitude", input(Value::Null));
    near(&dry["pressure_altitude"], 5718.0, "ft", 3.0);
    near(&dry["density_altitude"], 7700.0, "ft", 100.0);
    near(&dry["pressure_altitude_si"], 5718.0 * 0.3048, "m", 1.0);
    assert_eq!((&dry["taken_as_dry"], &dry["altitudes"]), (&json!(true), &json!("geopotential")));
    let damp = compute("density-altitude", input(quantity(60.0, "degF")));
    assert!(damp["density_altitude"]["value"].as_f64() > dry["density_altitude"]["value"].as_f64());
    assert!(damp["thin_air"]["thrust"].as_f64() < dry["thin_air"]["thrust"].as_f64());
    assert_eq!(damp["taken_as_dry"], false);
    // ICAO standard atmosphere at 2 000 m, geopotential (PyPI `ambiance`): 79 495.2 Pa, 1.00649 kg/m³.
    let by_pressure = compute(
        "density-altitude",
        json!({ "pressure": quantity(794.952, "hPa"), "temperature": quantity(275.15, "K") }),
    );
    near(&by_pressure["pressure_altitude"], 2000.0, "m", 0.01);
    near(&by_pressure["density_altitude"], 2000.0, "m", 0.02);
    near(&by_pressure["density"], 1.00649, "kg/m3", 5e-6);
}

/// By hand: 85 + 33 + 12 · 0.775 = 127.3 kg.
#[test]
fn a_weight_and_its_margins() {
    let input = |fuel: Value| {
        json!({
            "pilot": quantity(85.0, "kg"), "machine": quantity(33.0, "kg"), "fuel": fuel,
            "wing": { "low": quantity(100.0, "kg"), "high": quantity(127.0, "kg") },
        })
    };
    let found = compute("all-up", input(quantity(12.0, "L")));
    near(&found["total"], 127.3, "kg", 1e-9);
    near(&found["margin"]["low"], 18.0, "kg", 1e-9);
    near(&found["margin"]["high"], -0.3, "kg", 1e-9);
    assert_eq!(found["in_range"], false);
    assert_eq!(compute("all-up", input(quantity(9.0, "kg")))["in_range"], true, "at the limit is within");
    // 1 US gal = 3.785 411 784 L (NIST SP 811).
    near(
        &compute("all-up", input(quantity(2.0, "gal_us")))["total"],
        118.0 + 7.570_823_568 * 0.775,
        "kg",
        1e-9,
    );
}

#[test]
fn a_mix_and_one_that_is_too_rich() {
    let input = |before: Value, target: Value, fuel: f64| {
        json!({
            "in_tank": quantity(5.1, "L"), "ratio_in_tank": before, "target_ratio": target,
            "add_fuel": quantity(fuel, "L"),
        })
    };
    // By hand: 5.1 L at 50:1 hold 0.1 L of oil; 10 L of petrol at 50:1 want 0.2 L.
    near(&compute("fuel-mix", input(json!(50), json!("50:1"), 5.0))["add_oil"], 0.1, "L", 1e-12);
    near(&compute("fuel-mix", input(Value::Null, json!(51), 0.0))["add_oil"], 0.1, "L", 1e-12);
    // 5.1 L at 33:1 hold 0.15 L: 50:1 wants 7.5 L of petrol, 4.95 L are there.
    let rich = compute("fuel-mix", input(json!(33), json!(50), 0.0));
    assert_eq!((&rich["add_oil"], &rich["too_much_oil"]), (&Value::Null, &json!(true)));
    near(&rich["more_fuel"], 2.55, "L", 1e-9);
}

#[test]
fn an_endurance_from_few_and_from_many() {
    let flight = |used: f64, minutes: f64| json!({ "used": quantity(used, "L"), "time": quantity(minutes / 60.0, "h") });
    let input = |burns: Vec<Value>, reserve: Value| json!({ "fuel": quantity(10.0, "L"), "burn_history": burns, "reserve": reserve });
    // By hand: 3, 4 and 5 L/h; 9 L at 5 and at 3.
    let few = vec![flight(3.0, 60.0), flight(2.0, 30.0), quantity(5.0, "L/h")];
    let found = compute("endurance", input(few, quantity(1.0, "L")));
    near(&found["flight_time"]["low"], 1.8, "h", 1e-12);
    near(&found["flight_time"]["high"], 3.0, "h", 1e-12);
    near(&found["flight_time_si"]["low"], 6480.0, "s", 1e-6);
    assert_eq!(found["by"], "least-and-most");
    // scipy.stats.t.interval(0.90, 7, 4, s·√(9/8)) of these eight: s = 0.5345, t = 1.8946: 2.926 to 5.074.
    let eight = [3.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 5.0].map(|rate| quantity(rate, "L/h")).to_vec();
    let found = compute("endurance", input(eight, quantity(0.5, "h")));
    near(&found["burn"]["high"], 5.0741, "L/h", 1e-3);
    near(&found["flight_time"]["low"], 10.0 / 5.0741 - 0.5, "h", 1e-3);
    assert_eq!((&found["by"], &found["flights"]), (&json!("predicted"), &json!(8)));
    let one = compute("endurance", input(vec![flight(3.0, 60.0)], quantity(1.0, "L")));
    assert_eq!((&one["flight_time"], &one["too_little"]["why"]), (&Value::Null, &json!("few")));
}

#[test]
fn a_wind_against_its_limits() {
    let found = compute(
        "wind-limit",
        json!({
            "mean": quantity(18.0, "km/h"), "gust": quantity(8.0, "m/s"),
            "limits": { "mean": quantity(5.0, "m/s"), "gust": quantity(15.0, "kt"), "gust_factor": 1.7 },
        }),
    );
    // 18 km/h is 5 m/s: at the limit is within. 15 kt is 7.72 m/s (1852/3600).
    assert_eq!(found, json!({ "within": false, "over": ["gust"], "gust_factor": 1.6 }));
    let unknown = compute(
        "wind-limit",
        json!({ "mean": quantity(2.0, "m/s"), "limits": { "gust": quantity(8.0, "m/s") } }),
    );
    assert_eq!((&unknown["within"], &unknown["over"]), (&json!(false), &json!(["gust-unknown"])));
}

#[test]
fn what_cannot_be_says_what_would() {
    let air = |changed: Value| {
        let mut input = json!({
            "elevation": quantity(500.0, "m"), "altimeter": quantity(1013.0, "hPa"),
            "temperature": quantity(20.0, "Cel"),
        });
        input.as_object_mut().unwrap().extend(changed.as_object().unwrap().clone());
        refused("density-altitude", input)
    };
    assert!(air(json!({ "dew_point": quantity(21.0, "Cel") })).contains("dew point"));
    assert!(
        air(json!({ "altimeter": quantity(30.1, "hPa") })).contains("altimeter setting"),
        "inHg taken for hPa"
    );
    assert!(air(json!({ "elevation": null })).contains("elevation"));
    assert!(air(json!({ "pressure": quantity(950.0, "hPa") })).contains("either"));
    assert!(air(json!({ "temperature": quantity(70.0, "Cel") })).contains("temperature"));
    assert!(air(json!({ "elevation": quantity(500.0, "kg") })).contains("kg can't be turned into m"));
    let wing = |low: f64| json!({ "low": quantity(low, "kg"), "high": quantity(130.0, "kg") });
    let weight = |pilot: f64, low: f64| json!({ "pilot": quantity(pilot, "kg"), "machine": quantity(33.0, "kg"), "fuel": quantity(9.0, "L"), "wing": wing(low) });
    assert!(refused("all-up", weight(-80.0, 100.0)).contains("pilot"));
    assert!(refused("all-up", weight(80.0, 140.0)).contains("`low` must not be above `high`"));
    let mix = |target: Value, fuel: f64| json!({ "in_tank": quantity(0.0, "L"), "target_ratio": target, "add_fuel": quantity(fuel, "L") });
    assert!(refused("fuel-mix", mix(json!("2 %"), 5.0)).contains("50:1"));
    assert!(refused("fuel-mix", mix(json!(50), -5.0)).contains("add_fuel"));
    assert!(refused("fuel-mix", mix(json!(50), 0.0)).contains("more than nothing"));
    let burns = json!([{ "used": quantity(3.0, "L"), "time": quantity(0.0, "h") }]);
    let input = json!({ "fuel": quantity(9.0, "L"), "burn_history": burns, "reserve": quantity(1.0, "L") });
    assert!(refused("endurance", input).contains("time"));
    let wind = |limits: Value| json!({ "mean": quantity(3.0, "m/s"), "gust": quantity(2.0, "m/s"), "limits": limits });
    assert!(refused("wind-limit", wind(json!({}))).contains("no limit is set"));
    assert!(refused("wind-limit", wind(json!({ "mean": quantity(5.0, "m/s") }))).contains("gusts"));
}
