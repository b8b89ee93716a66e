//! Engine logs taken in: `import readings`; and that `import FILE` still takes records.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, Ran};
use serde_json::Value;

/// An invented flight: it idles, climbs and idles again. The head's highest is 187.5 °C.
fn flight(headings: &str, more: f64) -> String {
    let row = |n: i32| {
        let (head, speed) = match n {
            0..30 => (60.0 + f64::from(n), 2040 + n % 3 * 10),
            30..70 => (90.0 + 2.5 * f64::from(n - 30), 8800 + n % 4 * 10),
            _ => (187.5 - f64::from(n - 70), 2060),
        };
        format!("{n},{:.1},{speed},10\n", head + more)
    };
    format!("{headings}\n{}", (0..110).map(row).collect::<String>())
}

const HEADINGS: &str = "Time (s),CHT (°C),RPM,OAT (°C)";

/// The words of the record of the only log of the machine, as exported.
fn taken(desk: &Desk) -> Vec<Value> {
    let file = desk.path("after.jsonl");
    assert_eq!(desk.run(&["export", "Own", &file]).code, 0);
    let bundle = std::fs::read_to_string(file).unwrap();
    let lines = bundle.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    let payloads =
        lines.map(|line| serde_json::from_str::<Value>(line["payload"].as_str().unwrap()).unwrap());
    payloads.filter(|payload| payload["kind"] == "readings-taken").map(|mut one| one["body"].take()).collect()
}

fn import(desk: &Desk, file: &str, more: &[&str], input: &str) -> Ran {
    let pin = desk.pin_file();
    let args = ["import", "readings", file, "--machine", "Own", "--pin-file", &pin];
    desk.run_with(&[&args[..], more].concat(), input)
}

#[test]
fn a_log_is_shown_confirmed_and_signed_and_its_reading_remembered() {
    let desk = Desk::with_machine();
    let file = desk.write("flight.csv", &flight(HEADINGS, 0.0));
    let refused = import(&desk, &file, &[], "n\n");
    assert_eq!(refused.code, 2, "{refused:?}");
    assert!(refused.err.contains("Nobody confirmed"), "{refused:?}");
    for shown in
        ["“CHT (°C)”: cylinder head temperature (CHT), in °C", "110 rows were read, 109 s", "Idle speed"]
    {
        assert!(refused.out.contains(shown), "{shown}: {refused:?}");
    }
    assert!(taken(&desk).is_empty());
    let signed = import(&desk, &file, &[], "y\n");
    assert!(signed.code == 0 && signed.out.contains("Highest head temperature: 187.5 °C"), "{signed:?}");
    assert_eq!(taken(&desk).len(), 1);
    assert!(import(&desk, &file, &[], "").err.contains("taken in before"));
    // The same headings: nobody is asked again.
    let next = desk.write("next.csv", &flight(HEADINGS, 1.0));
    let again = import(&desk, &next, &[], "");
    assert_eq!(again.code, 0, "{again:?}");
    assert_eq!(taken(&desk).len(), 2);
    // Unless they shall be read otherwise.
    let shown = desk.json(&["import", "readings", &next, "--machine", "Own", "--dry-run"]);
    let mut mapping = shown["mapping"].clone();
    assert_eq!(shown["open"]["remembered"], true);
    mapping["columns"][0]["channel"] = "egt".into();
    let third = desk.write("third.csv", &flight(HEADINGS, 2.0));
    let other = import(&desk, &third, &["--mapping", &mapping.to_string(), "--json"], "");
    assert_eq!(other.kind(), "log-not-confirmed");
    let kept = desk.write("mapping.json", &mapping.to_string());
    assert_eq!(import(&desk, &third, &["--mapping", &kept, "--yes", "--json"], "").code, 0);
    assert_eq!(taken(&desk)[2]["readings"][0]["measure"], "peak-egt");
}

#[test]
fn a_dry_run_signs_nothing_and_needs_no_pin() {
    let desk = Desk::with_machine();
    let file = desk.write("flight.csv", &flight("time,CHT,rpm,air temp", 0.0));
    let shown = desk.json(&["import", "readings", &file, "--machine", "Own", "--dry-run"]);
    assert_eq!(shown["preview"]["rows"], 110);
    assert_eq!(shown["open"]["guesses"].as_array().unwrap().len(), 3, "{}", shown["open"]["guesses"]);
    let words = desk.run(&["import", "readings", &file, "--machine", "Own", "--dry-run"]);
    assert!(words.out.contains("By its values it is taken for °C"), "{words:?}");
    assert!(taken(&desk).is_empty());
}

#[test]
fn hours_day_and_air_are_as_they_are_given() {
    let desk = Desk::with_machine();
    let file = desk.write("flight.csv", &flight(HEADINGS, 0.0));
    assert_eq!(import(&desk, &file, &["--yes", "--json", "--hours", "3"], "").kind(), "log-hours");
    assert_eq!(import(&desk, &file, &["--yes", "--json", "--on", "today"], "").kind(), "day");
    assert_eq!(import(&desk, &file, &["--yes", "--json", "--outside", "70 Cel"], "").kind(), "log-outside");
    assert_eq!(import(&desk, &file, &["--json", "--mapping", "{}"], "").kind(), "log-mapping-unread");
    let given = ["--yes", "--hours", "0", "--on", "2026-05-02", "--outside", "-4"];
    assert_eq!(import(&desk, &file, &given, "").code, 0);
    let body = &taken(&desk)[0];
    assert_eq!((body["on"].as_str(), body["outside"]["value"].as_f64()), (Some("2026-05-02"), Some(-4.0)));
    assert_eq!((body["name"].as_str(), body["rows"].as_u64()), (Some("flight.csv"), Some(110)));
}

#[test]
fn bytes_that_are_not_utf_8_are_read_as_windows_1252_and_that_is_said() {
    let desk = Desk::with_machine();
    let text = flight("Zeit (s),Zylinderkopf (°C),Drehzahl,Außentemp. (°C)", 0.0);
    // Windows-1252 has the letters up to U+00FF at their own numbers (WHATWG Encoding; from memory).
    let bytes: Vec<u8> = text.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    std::fs::write(desk.path("german.csv"), bytes).unwrap();
    let shown = desk.run(&["import", "readings", &desk.path("german.csv"), "--machine", "Own", "--dry-run"]);
    assert!(shown.err.contains("Windows-1252"), "{shown:?}");
    assert!(shown.out.contains("“Außentemp. (°C)”: temperature outside"), "{shown:?}");
    // A spreadsheet's “Unicode text” is UTF-16 with tabs, and known by its mark.
    let wide: Vec<u8> =
        format!("\u{feff}{}", text.replace(',', "\t")).encode_utf16().flat_map(u16::to_le_bytes).collect();
    std::fs::write(desk.path("wide.txt"), wide).unwrap();
    let wide = desk.run(&["import", "readings", &desk.path("wide.txt"), "--machine", "Own", "--dry-run"]);
    assert!(wide.code == 0 && wide.err.is_empty(), "{wide:?}");
    assert!(wide.out.contains("between fields a tab"), "{wide:?}");
}

#[test]
fn a_file_of_records_is_still_imported() {
    let desk = Desk::with_machine();
    let file = desk.path("own.jsonl");
    assert_eq!(desk.run(&["export", "Own", &file]).code, 0);
    let other = Desk::new();
    assert_eq!(other.run(&["import", &file]).code, 0);
    assert!(other.run(&["machine", "list"]).out.contains("Own"));
    let nothing = other.run(&["import"]);
    assert!(nothing.code == 2 && nothing.err.contains("FILE"), "{nothing:?}");
    assert!(other.run(&["import", "readings", "--help"]).out.contains("--dry-run"));
    assert_eq!(other.run(&["import", "readings", &file]).code, 2, "of which machine?");
}
