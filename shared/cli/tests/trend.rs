//! `trend`: in words, as JSON, as SVG and PNG, of figures taken out of engine logs.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::Value;

/// An invented flight of a minute on a day of 10 °C whose highest head temperature is this.
fn flight(highest: f64) -> String {
    let row = |n: i32| format!("{n},{:.1},8800,10\n", highest - f64::from((n - 40).abs()));
    format!("Time (s),CHT (°C),RPM,OAT (°C)\n{}", (0..60).map(row).collect::<String>())
}

/// A machine with the highest head temperatures of seven flights.
fn flown() -> Desk {
    let desk = Desk::with_machine();
    let pin = desk.pin_file();
    // Time in service first: no log is of an hour that was not run.
    for hours in ["20", "6"] {
        let run = desk.run(&["flight", "log", "Own", "--hours", hours]);
        assert_eq!(run.code, 0, "{run:?}");
    }
    let flights = [("2", 0.0), ("5", 1.5), ("9", 1.0), ("12", 3.0), ("16", 2.5), ("21", 4.0), ("25", 5.5)];
    for (hours, more) in flights {
        let file = desk.write(&format!("flight-{hours}.csv"), &flight(187.5 + more));
        let args = ["import", "readings", &file, "--machine", "Own", "--hours", hours, "--yes"];
        let ran = desk.run(&[&args[..], &["--pin-file", &pin]].concat());
        assert_eq!(ran.code, 0, "{ran:?}");
    }
    desk
}

fn bytes(desk: &Desk, name: &str) -> Vec<u8> {
    std::fs::read(desk.path(name)).unwrap()
}

/// SciPy 1.17.1's `theilslopes` and pymannkendall 1.4.3 on the readings as they are on a day of 15 °C,
/// five degrees more than was read: 150/7 in a hundred hours, from 100/9 to 100/3; p = 0.016261.
#[test]
fn a_measure_is_told_in_words_and_to_programs() {
    let desk = flown();
    let all = desk.json(&["trend", "Own"]);
    let ids: Vec<&str> = all.as_array().unwrap().iter().map(|trend| trend["id"].as_str().unwrap()).collect();
    assert!(ids.contains(&"peak-cht") && ids.contains(&"idle-speed"), "{ids:?}");
    let told = desk.json(&["trend", "Own", "peak-cht"]);
    let near = |found: &Value, wanted: f64| (found.as_f64().unwrap() - wanted).abs() < 1e-6;
    assert!(near(&told["line"]["per_100_hours"], 150.0 / 7.0), "{told}");
    assert!(near(&told["line"]["low"], 100.0 / 9.0) && near(&told["line"]["high"], 100.0 / 3.0), "{told}");
    assert!(near(&told["chance"], 0.016260936780450264), "{told}");
    assert!(near(&told["points"][0]["value"], 192.5) && near(&told["points"][0]["raw"], 187.5), "{told}");
    assert_eq!((&told["direction"], &told["drifts"]), (&"rising".into(), &true.into()));

    let words = desk.run(&["trend", "Own", "highest head"]);
    assert_eq!(words.code, 0, "{words:?}");
    for said in [
        "Highest head temperature",
        "It rises toward its limit by about",
        "7 readings from 2 to 25 engine hours",
        "The limit means what the gauge shows",
        "Unconfirmed",
        "25 h: 198 °C on a standard day, 193 °C on the gauge",
        "[record ",
    ] {
        assert!(words.out.contains(said), "{said}: {}", words.out);
    }
    let table = desk.run(&["trend", "Own"]);
    assert!(table.out.contains("Highest head temperature (peak-cht), 7 readings: act on it"), "{table:?}");
    assert!(table.out.contains("Too little to say"), "of what was seen once: {table:?}");
}

#[test]
fn a_measure_becomes_a_plot() {
    let desk = flown();
    let (svg, png) = (desk.path("trend.svg"), desk.path("trend.PNG"));
    let drawn = desk.json(&["trend", "Own", "peak-cht", "--plot", &svg]);
    assert_eq!(drawn["media"], "image/svg+xml");
    let text = String::from_utf8(bytes(&desk, "trend.svg")).unwrap();
    assert!(text.starts_with("<svg ") && text.trim_end().ends_with("</svg>"));
    assert!(text.contains("Highest head temperature") && text.contains("Own, 7 readings"));
    // Two circles more than readings would be a ring far off and its key; here the key's dot alone.
    assert_eq!(text.matches("<circle ").count(), 7 + 1);
    let dark = desk.run(&["trend", "Own", "peak-cht", "--plot", &png, "--dark"]);
    assert!(dark.code == 0 && dark.out.contains("Written to"), "{dark:?}");
    // ISO/IEC 15948, 5.2 and 11.2.2: the signature, then the header with width and height.
    let picture = bytes(&desk, "trend.PNG");
    assert_eq!(picture[..8], [0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a]);
    assert_eq!(u32::from_be_bytes(picture[16..20].try_into().unwrap()), 1920);
}

#[test]
fn what_is_not_there_is_said_and_writes_nothing() {
    let desk = Desk::with_machine();
    assert_eq!(desk.run(&["trend", "Nobody", "--json"]).kind(), "no-such");
    assert_eq!(desk.run(&["trend", "Own", "peak-cht", "--json"]).kind(), "not-named");
    let pdf = desk.path("trend.pdf");
    let wrong = desk.run(&["trend", "Own", "idle-speed", "--plot", &pdf, "--json"]);
    assert_eq!(wrong.kind(), "plot-ending");
    assert!(!std::path::Path::new(&pdf).exists());
    // A plot is of one measure.
    assert_eq!(desk.run(&["trend", "Own", "--plot", &desk.path("all.svg"), "--json"]).kind(), "usage");
    let one = desk.run(&["trend", "Own", "idle-speed"]);
    assert!(one.code == 0 && one.out.contains("Too little to say: one reading is there"), "{one:?}");
    assert!(desk.json(&["trend", "Own", "idle-speed"])["line"].is_null());
    // Nobody has looked at this one yet.
    let add = ["machine", "add", "--name", "New", "--engine", "bramble-125", "--without-reserve"];
    assert_eq!(desk.signed(&add).code, 0);
    assert_eq!(desk.json(&["trend", "New"]), Value::Array(Vec::new()));
    assert!(desk.run(&["trend", "New"]).out.contains("No measure of it has readings yet"));
    assert_eq!(desk.run(&["trend", "New", "idle-speed", "--json"]).kind(), "none-to-name");
}
