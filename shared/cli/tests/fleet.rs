//! What a fleet's looks tell, on the command line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::sync::LazyLock;

use common::Desk;
use serde_json::Value;

/// The demonstration's school with its season: exhausts that crack. Made once; it is only read.
static SEASON: LazyLock<Desk> = LazyLock::new(|| {
    let desk = Desk::new();
    let pin = desk.pin_file();
    let made =
        desk.run(&["demo", "--school", "--signatory", "Invented visitor", "--pin-file", &pin, "--json"]);
    assert_eq!(made.code, 0, "{made:?}");
    desk
});

#[test]
fn lives_of_parts_are_told_and_drawn() {
    let desk = &SEASON;
    let parts = desk.run(&["fleet", "parts"]);
    assert!(parts.out.lines().next().unwrap().starts_with("Exhaust [exhaust]: "), "{parts:?}");
    let told = desk.json(&["fleet", "life", "exhaust", "--chance", "0.2", "--in-force", "50"]);
    assert_eq!((told["chance"].as_f64(), told["in_force"].as_f64()), (Some(0.2), Some(50.0)));
    let every = told["every"].as_f64().unwrap();
    assert!(every < 50.0 && told["shortens"] == Value::Bool(true), "{told}");
    // By the beginning of its name, too; the words have the same figures.
    let words = desk.run(&["fleet", "life", "Exh", "--chance", "0.2", "--in-force", "50"]).out;
    assert!(words.contains(told["rests_on"].as_str().unwrap()), "{words}");
    assert!(words.contains(&format!("Look at least every {every} h")), "{words}");
    assert!(words.contains("from 0 h: 100 %") && words.contains("Turnbull") && words.contains("Weibull"));
    // SVG 2 § 1: its root element. PNG, second edition § 5.2: its first eight bytes.
    let svg = desk.path("life.svg");
    assert_eq!(desk.run(&["fleet", "life", "exhaust", "--plot", &svg]).code, 0);
    assert!(std::fs::read_to_string(svg).unwrap().contains("<svg "));
    let png = desk.path("life.png");
    assert_eq!(desk.run(&["fleet", "life", "exhaust", "--plot", &png, "--dark"]).code, 0);
    assert_eq!(&std::fs::read(png).unwrap()[..8], b"\x89PNG\r\n\x1a\n");
    let odd = desk.path("life.gif");
    assert_eq!(desk.run(&["fleet", "life", "exhaust", "--plot", &odd, "--json"]).kind(), "plot-ending");
}

#[test]
fn what_tells_too_little_and_what_is_asked_wrongly_is_told() {
    let desk = &SEASON;
    let wing = desk.json(&["fleet", "life", "wing"]);
    assert_eq!((&wing["every"], &wing["fitted"]), (&Value::Null, &serde_json::json!([])));
    assert!(wing["sentences"][0].as_str().unwrap().starts_with("Too little to say"), "{wing}");
    let fault = desk.run(&["fleet", "life", "flux", "--json"]).fault();
    assert_eq!(fault["kind"], "life-no-such");
    assert!(fault["hint"].as_str().unwrap().contains("Exhaust (exhaust)"), "{fault}");
    for (option, value, kind) in [("--chance", "2", "life-chance"), ("--in-force", "0", "life-in-force")] {
        assert_eq!(desk.run(&["fleet", "life", "exhaust", option, value, "--json"]).kind(), kind);
    }
    let empty = Desk::new();
    assert!(empty.run(&["fleet", "parts"]).out.starts_with("No look at any component"));
    assert!(empty.run(&["fleet", "lists"]).out.starts_with("No look at any component"));
    assert!(empty.run(&["fleet", "looking"]).out.starts_with("Nobody has signed an inspection"));
    assert_eq!(empty.run(&["fleet", "life", "exhaust", "--json"]).kind(), "life-no-looks");
}

#[test]
fn people_and_points_are_told_with_their_caution() {
    let desk = &SEASON;
    let looking = desk.json(&["fleet", "looking"]);
    let people = looking["people"].as_array().unwrap();
    assert!(people.len() >= 4, "the root teaches here: {looking}");
    let words = desk.run(&["fleet", "looking"]).out;
    assert!(words.contains(people[0]["name"].as_str().unwrap()) && words.contains("no ranking"), "{words}");
    let lists = desk.json(&["fleet", "lists"]);
    let body =
        lists["points"].as_array().unwrap().iter().find(|point| point["point"] == "exhaust-body").unwrap();
    assert!(body["unserviceable"].as_u64().unwrap() >= 3 && body["must"] == Value::Bool(true), "{body}");
    let words = desk.run(&["fleet", "lists"]).out;
    assert!(
        words.contains("[exhaust-body]") && words.contains("what was found, not what was there"),
        "{words}"
    );
}
