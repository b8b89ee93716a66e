//! Engine logs in several dialects: opened, previewed, taken in. The samples and their figures are
//! `tests/vectors/logs`, invented; the figures are pandas' (`tests/outside/logs.py`).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::path::{Path, PathBuf};

use common::*;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use serde_json::Value;
use witnessmark_app::views::{LogPreview, LogView, MachinePage};
use witnessmark_app::{App, Fault};
use witnessmark_core::runlog::{Channel, Mapping, TimeForm};
use witnessmark_core::units::{Quantity, Unit};

const NOW: &str = "2026-05-03T06:41:07+02:00";

fn samples() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/vectors/logs")
}

fn sample(name: &str) -> String {
    std::fs::read_to_string(samples().join(name)).unwrap()
}

/// A device with one machine that has run 12.5 hours.
fn device() -> (App, String) {
    let clock = Clock::at(NOW);
    let mut app = begun(&clock);
    let machine = register(&mut app, bramble());
    (app, machine)
}

fn open(app: &mut App, machine: &str, text: &str) -> Result<LogView, Fault> {
    app.log_open(machine.into(), "flight.csv".into(), text.into())
}

fn preview(app: &mut App, machine: &str, text: &str) -> LogPreview {
    let mapping = open(app, machine, text).unwrap().mapping;
    app.log_preview(machine.into(), text.into(), Some(mapping)).unwrap()
}

fn take(app: &mut App, machine: &str, text: &str, mapping: Mapping) -> Result<MachinePage, Fault> {
    app.log_take(
        machine.into(),
        "flight.csv".into(),
        text.into(),
        Some(mapping),
        None,
        None,
        None,
        PIN.into(),
    )
}

/// The records of logs of a machine, as JSON.
fn taken(app: &mut App, machine: &str) -> Vec<Value> {
    let bundle = app.export(machine.into()).unwrap().text;
    let lines = bundle.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    let payloads =
        lines.map(|line| serde_json::from_str::<Value>(line["payload"].as_str().unwrap()).unwrap());
    payloads
        .filter(|payload| payload["kind"] == "readings-taken")
        .map(|mut payload| payload["body"].take())
        .collect()
}

fn near(found: &Value, wanted: &Value, half: f64) -> bool {
    let apart = found["value"].as_f64().unwrap() - wanted["value"].as_f64().unwrap();
    found["unit"] == wanted["unit"] && apart.abs() <= half + 1e-9
}

#[test]
fn every_sample_tells_what_pandas_says() {
    let wanted: Value = serde_json::from_str(&sample("figures.json")).unwrap();
    let wanted = wanted.as_object().unwrap();
    assert!(wanted.len() >= 9, "{}", wanted.len());
    for (name, wanted) in wanted {
        let (mut app, machine) = device();
        let text = sample(name);
        let mapping = open(&mut app, &machine, &text).unwrap().mapping;
        take(&mut app, &machine, &text, mapping).unwrap();
        let body = taken(&mut app, &machine).remove(0);
        assert_eq!((&body["rows"], &body["unread"]), (&wanted["rows"], &wanted["unread"]), "{name}");
        let readings = body["readings"].as_array().unwrap();
        let figures = wanted["figures"].as_object().unwrap();
        assert_eq!(readings.len(), figures.len(), "{name}: {readings:?}");
        for reading in readings {
            let measure = reading["measure"].as_str().unwrap();
            let half = match measure {
                "idle-speed" => 0.5,
                "run-time" => 0.0005,
                _ => 0.0,
            };
            assert!(
                near(&reading["value"], &figures[measure], half),
                "{name}: {reading} {}",
                figures[measure]
            );
            if measure.starts_with("peak") {
                let left_out = wanted["left_out"].get(measure).and_then(Value::as_u64).unwrap_or(0);
                assert_eq!(reading["left_out"], left_out, "{name}: {measure}");
            }
            // As an instrument writes it: no 185.50000000000003.
            assert!(reading["value"]["value"].to_string().len() <= 7, "{reading}");
        }
        match &wanted["outside"] {
            Value::Null => assert!(body.get("outside").is_none(), "{name}"),
            outside => assert!(near(&body["outside"], outside, 0.5), "{name}: {}", body["outside"]),
        }
        if let Some(day) = wanted["on"].as_str() {
            assert_eq!(body["on"], day, "{name}");
        }
    }
}

#[test]
fn what_headings_say_is_not_guessed_and_what_they_do_not_say_is_told() {
    let (mut app, machine) = device();
    let american = open(&mut app, &machine, &sample("american.csv")).unwrap();
    assert!(american.guesses.is_empty() && !american.remembered, "{:?}", american.guesses);
    let units: Vec<Unit> = american.mapping.columns.iter().map(|column| column.unit).collect();
    assert_eq!(
        units,
        [Unit::Fahrenheit, Unit::Fahrenheit, Unit::Fahrenheit, Unit::PerMinute, Unit::Fahrenheit]
    );
    let german = open(&mut app, &machine, &sample("german-spreadsheet.csv")).unwrap();
    assert!(german.guesses.is_empty(), "{:?}", german.guesses);
    assert_eq!((german.mapping.separator, german.mapping.decimal), (';', ','));
    assert_eq!((german.mapping.time.as_str(), german.mapping.time_form), ("Uhrzeit", TimeForm::Clock));
    assert_eq!(german.columns[1].sample.len(), 5);
    // Nothing in it says °C.
    let bare = open(&mut app, &machine, &sample("milliseconds.csv")).unwrap();
    assert_eq!(bare.guesses.len(), 2, "{:?}", bare.guesses);
    assert!(bare.guesses.iter().all(|guess| guess.contains("°C")), "{:?}", bare.guesses);
    assert_eq!(bare.mapping.time_form, TimeForm::Milliseconds);
    let midnight = open(&mut app, &machine, &sample("over-midnight.csv")).unwrap();
    assert!(midnight.guesses.is_empty(), "units stand in a row of their own: {:?}", midnight.guesses);
    assert_eq!(midnight.mapping.columns[1].channel, Channel::Speed);
}

/// A log of a minute, with these headings; heads at this temperature.
fn minute(headings: &str, head: f64) -> String {
    let row = |n: usize| format!("{n},{head},2000");
    format!("{headings}\n{}\n", (0..61).map(row).collect::<Vec<_>>().join("\n"))
}

#[test]
fn degrees_are_guessed_by_what_an_engine_shows() {
    let (mut app, machine) = device();
    for (head, unit) in [(180.0, Unit::Celsius), (380.0, Unit::Fahrenheit), (20.0, Unit::Celsius)] {
        let view = open(&mut app, &machine, &minute("time,CHT,rpm", head)).unwrap();
        assert_eq!(view.mapping.columns[0].unit, unit, "{head}");
        assert!(
            view.guesses.iter().any(|guess| guess.contains("CHT")),
            "said as a guess: {:?}",
            view.guesses
        );
    }
    let place = open(&mut app, &machine, &minute("time,Temp 1 °C,rpm", 180.0)).unwrap();
    assert_eq!(place.mapping.columns[0].channel, Channel::Cht);
    assert!(place.guesses[1].contains("Temp 1 °C"), "{:?}", place.guesses);
}

#[test]
fn a_confirmed_mapping_is_remembered_for_the_same_headings() {
    let (mut app, machine) = device();
    let text = minute("time,T1,rpm", 180.0);
    let mut mapping = open(&mut app, &machine, &text).unwrap().mapping;
    mapping.columns[0].channel = Channel::Egt;
    take(&mut app, &machine, &text, mapping.clone()).unwrap();
    let again = open(&mut app, &machine, &minute("time,T1,rpm", 190.0)).unwrap();
    assert!(again.remembered && again.guesses.is_empty());
    assert_eq!(again.mapping, mapping);
    // Saved anew by a spreadsheet that writes decimals with a comma.
    let saved = minute("time,T1,rpm", 190.5).replace(',', ";").replace('.', ",");
    let saved = open(&mut app, &machine, &saved).unwrap();
    assert!(saved.remembered);
    assert_eq!((saved.mapping.separator, saved.mapping.decimal), (';', ','));
    assert_eq!(saved.mapping.columns, mapping.columns);
    assert!(!open(&mut app, &machine, &minute("time,T2,rpm", 190.0)).unwrap().remembered);
}

#[test]
fn a_file_is_taken_in_once_a_machine() {
    let (mut app, machine) = device();
    let text = minute("time,CHT °C,rpm", 180.0);
    let view = open(&mut app, &machine, &text).unwrap();
    assert_eq!(view.taken, None);
    // The SHA-256 of a file is that of its bytes.
    assert_eq!(view.file, witnessmark_core::record::Digest::of(text.as_bytes()).to_string());
    let page = take(&mut app, &machine, &text, view.mapping.clone()).unwrap();
    assert!(page.timeline[0].words.contains("flight.csv"), "{:?}", page.timeline[0]);
    let marked = format!("\u{feff}{text}");
    let fault = take(&mut app, &machine, &marked, view.mapping.clone()).unwrap_err();
    assert_eq!(fault.kind, "log-taken");
    let shown = app.show(&fault);
    assert!(shown.message.contains("3 May 2026"), "{shown:?}");
    assert!(open(&mut app, &machine, &marked).unwrap().taken.is_some());
    let other = register(&mut app, bramble());
    take(&mut app, &other, &text, view.mapping).unwrap();
    assert_eq!((taken(&mut app, &machine).len(), taken(&mut app, &other).len()), (1, 1));
}

#[test]
fn hours_day_and_air_are_held_to_what_can_be() {
    let (mut app, machine) = device();
    let text = minute("time,CHT °C,rpm", 180.0);
    let mapping = open(&mut app, &machine, &text).unwrap().mapping;
    let mut with = |hours: Option<f64>, on: Option<&str>, outside: Option<Quantity>, pin: &str| {
        let on = on.map(str::to_owned);
        let (name, mapping) = ("f.csv".to_owned(), Some(mapping.clone()));
        app.log_take(machine.clone(), name, text.clone(), mapping, hours, on, outside, pin.into())
    };
    let celsius = |value| Some(Quantity::new(value, Unit::Celsius));
    for hours in [-0.1, 12.6, f64::NAN, f64::INFINITY] {
        assert_eq!(with(Some(hours), None, None, PIN).unwrap_err().kind, "log-hours", "{hours}");
    }
    assert_eq!(with(None, Some("2026-05-04"), None, PIN).unwrap_err().kind, "log-day-ahead");
    assert_eq!(with(None, Some("yesterday"), None, PIN).unwrap_err().kind, "day");
    assert_eq!(with(None, None, celsius(61.0), PIN).unwrap_err().kind, "log-outside");
    assert_eq!(with(None, None, celsius(f64::NAN), PIN).unwrap_err().kind, "unit");
    assert_eq!(with(None, None, Some(Quantity::new(12.0, Unit::Litre)), PIN).unwrap_err().kind, "unit");
    assert_eq!(with(None, None, None, "000000").unwrap_err().kind, "pin-wrong");
    with(Some(11.0), Some("2026-04-30"), Some(Quantity::new(50.0, Unit::Fahrenheit)), PIN).unwrap();
    let body = taken(&mut app, &machine).remove(0);
    assert_eq!((body["hours"].as_f64(), &body["on"]), (Some(11.0), &"2026-04-30".into()));
    assert!(near(&body["outside"], &serde_json::json!({ "value": 50.0, "unit": "degF" }), 0.0));
}

#[test]
fn without_another_word_a_log_is_of_now() {
    let (mut app, machine) = device();
    let text = minute("time,CHT °C,rpm", 180.0);
    let mapping = open(&mut app, &machine, &text).unwrap().mapping;
    take(&mut app, &machine, &text, mapping.clone()).unwrap();
    let body = taken(&mut app, &machine).remove(0);
    assert_eq!((&body["hours"], &body["on"]), (&12.5.into(), &"2026-05-03".into()));
    assert!(body.get("outside").is_none());
    // An instrument whose clock runs ahead: its day is said to be wrong, not written down.
    let ahead = text.replace("time,", "# 2027-01-01\ntime,");
    assert_eq!(take(&mut app, &machine, &ahead, mapping.clone()).unwrap_err().kind, "log-day-ahead");
    let missing = app.log_take(machine, "f.csv".into(), text, None, None, None, None, PIN.into());
    assert_eq!(missing.unwrap_err().kind, "log-mapping-missing");
}

#[test]
fn what_is_no_log_is_refused_with_a_reason() {
    let (mut app, machine) = device();
    let rows = "0,20,2000\n1,21,2000\n2,22,2000\n";
    for (text, kind) in [
        (String::new(), "log-empty"),
        ("\u{feff} \r\n \n".into(), "log-empty"),
        (format!("PK\0\u{1}\u{2}{rows}"), "log-no-text"),
        ("\u{fffd}\u{fffd}\u{fffd}x".repeat(40), "log-no-text"),
        ("time\n1\n2\n3\n".into(), "log-one-column"),
        ("Dear all, nothing here;\nbut words, and more words\n".into(), "log-no-rows"),
        (rows.into(), "log-no-headings"),
        (format!("time,CHT,CHT\n{rows}"), "log-heading-twice"),
        (format!("time,CHT,rpm\n{}", "0,20,2000\n".repeat(1_700_000)), "log-too-large"),
        (format!("t,c\n{}", "1,2\n".repeat(2_000_001)), "log-too-many-rows"),
    ] {
        let fault = open(&mut app, &machine, &text).unwrap_err();
        assert_eq!(fault.kind, kind, "{}", text.chars().take(60).collect::<String>());
        let shown = app.show(&fault);
        assert!(!shown.message.contains("{") && !shown.hint.is_empty(), "{shown:?}");
    }
    let nowhere = open(&mut app, "0190a6d2-0000-7000-8000-000000000000", &minute("time,CHT,rpm", 1.0));
    assert_eq!(nowhere.unwrap_err().kind, "no-such");
}

#[test]
fn a_mapping_that_does_not_fit_is_refused() {
    let (mut app, machine) = device();
    let text = minute("time,CHT °C,rpm", 180.0);
    let fits = open(&mut app, &machine, &text).unwrap().mapping;
    let mut refused = |change: &dyn Fn(&mut Mapping)| {
        let mut mapping = fits.clone();
        change(&mut mapping);
        take(&mut app, &machine, &text, mapping).unwrap_err().kind
    };
    assert_eq!(refused(&|m| m.separator = '|'), "log-no-rows");
    assert_eq!(refused(&|m| m.decimal = '\''), "log-marks");
    assert_eq!(refused(&|m| m.time = "clock".into()), "log-no-column");
    assert_eq!(refused(&|m| m.columns[0].heading = "rpm".into()), "log-column-twice");
    assert_eq!(refused(&|m| m.columns.clear()), "log-nothing-chosen");
    assert_eq!(refused(&|m| m.columns[0].unit = Unit::PerMinute), "log-other-unit");
    assert_eq!(refused(&|m| m.time_form = TimeForm::Moment), "log-nothing-told");
}

#[test]
fn rows_that_cannot_be_read_are_counted_and_the_first_named_by_its_line() {
    let (mut app, machine) = device();
    let text = "invented\r\n\r\nt [s],CHT °C,rpm\r\n0,20,2000\r\n\r\n1,ERR,2000\r\n2,21\r\n3,22,2000\r\n";
    let told = preview(&mut app, &machine, text);
    assert_eq!((told.rows, told.unread), (2, 2));
    let first = told.first_unread.unwrap();
    assert!(first.contains("Line 6") && first.contains("ERR") && first.contains("CHT °C"), "{first}");
    // Decimals with a comma between commas make more fields than headings.
    let commas = "time,CHT,rpm\n0,5,180,2000\n1,0,181,2000\n";
    let mapping = open(&mut app, &machine, commas).unwrap().mapping;
    let fault = take(&mut app, &machine, commas, mapping).unwrap_err();
    assert_eq!(fault.kind, "log-nothing-told");
    assert!(app.show(&fault).message.contains("Line 2: 4 fields, but there are 3 headings"));
}

#[test]
fn what_is_left_out_and_what_is_odd_is_said() {
    let (mut app, machine) = device();
    let told = preview(&mut app, &machine, &sample("lead-off.csv"));
    let peak = told.readings.iter().find(|reading| reading.measure == "peak-cht").unwrap();
    assert!(peak.left_out.as_ref().unwrap().starts_with("8 values are left out"), "{peak:?}");
    let speed = told.readings.iter().find(|reading| reading.measure == "peak-speed").unwrap();
    assert_eq!(speed.left_out, None);
    let anew = preview(&mut app, &machine, &sample("begun-anew.csv"));
    assert!(anew.notes.iter().any(|note| note.contains("2 runs")), "{:?}", anew.notes);
    let still = preview(&mut app, &machine, &minute("time,CHT °C,rpm", 180.0));
    assert!(still.notes.iter().any(|note| note.contains("“CHT °C” are the same")), "{:?}", still.notes);
    assert_eq!(still.lasts, "60 s");
    assert!(still.readings.iter().all(|reading| reading.measure != "peak-cht"), "{:?}", still.readings);
    let cold = sample("milliseconds.csv").lines().take(12).collect::<Vec<_>>().join("\n");
    let stopped = preview(&mut app, &machine, &cold);
    assert!(stopped.readings.is_empty() && stopped.notes.iter().any(|note| note.contains("did not run")));
    let mapping = open(&mut app, &machine, &cold).unwrap().mapping;
    let fault = take(&mut app, &machine, &cold, mapping).unwrap_err();
    assert_eq!(fault.kind, "log-nothing-told");
    assert!(app.show(&fault).message.contains("did not run"));
}

#[test]
fn a_decimal_comma_is_quoted_between_commas() {
    let (mut app, machine) = device();
    let row = |n: usize| format!("{n},\"{},5\",2000", 161 + n);
    let text = format!("time,CHT °C,rpm\n{}\n", (0..20).map(row).collect::<Vec<_>>().join("\n"));
    let view = open(&mut app, &machine, &text).unwrap();
    assert_eq!((view.mapping.separator, view.mapping.decimal), (',', ','));
    assert_eq!(preview(&mut app, &machine, &text).readings[0].value, "180.5 °C");
}

#[test]
fn seconds_since_1970_tell_the_day_where_the_device_is() {
    let (mut app, machine) = device();
    // 2026-05-02T22:30:00Z is the 3rd of May two hours east.
    let row = |n: u64| format!("{},180,2000", 1_777_761_000 + n);
    let text = format!("timestamp,CHT °C,rpm\n{}\n", (0..20).map(row).collect::<Vec<_>>().join("\n"));
    assert_eq!(preview(&mut app, &machine, &text).on.as_deref(), Some("2026-05-03"));
}

#[test]
fn garbage_never_panics() {
    let opened = std::cell::RefCell::new(device());
    let heading = "([a-zA-Z °\\[\\]();,\t\"#]{0,30}\n){0,3}";
    let rows = prop::collection::vec("[0-9:;,.\"\t eE+\\-/TZ]{0,24}|\\PC{0,12}", 0..30);
    let config = ProptestConfig { failure_persistence: None, ..ProptestConfig::default() };
    let mut runner = TestRunner::new(config);
    let outcome = runner.run(&(heading, rows), |(heading, rows)| {
        let (app, machine) = &mut *opened.borrow_mut();
        let text = format!("{heading}{}", rows.join("\n"));
        if let Ok(view) = open(app, machine, &text) {
            drop(app.log_preview(machine.clone(), text, Some(view.mapping)));
        }
        Ok(())
    });
    outcome.unwrap();
}
