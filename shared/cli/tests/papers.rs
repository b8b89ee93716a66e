//! Papers: their files are of the kind they are said to be, and hold what they are about.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, days_ago};
use serde_json::json;

fn bytes(desk: &Desk, name: &str) -> Vec<u8> {
    std::fs::read(desk.path(name)).unwrap()
}

fn text(desk: &Desk, name: &str) -> String {
    String::from_utf8(bytes(desk, name)).unwrap()
}

#[test]
fn a_record_sheet_and_a_label_are_pdf_of_their_size() {
    let desk = Desk::with_machine();
    let timeline = desk.json(&["show", "Own"])["timeline"].clone();
    let walked = timeline.as_array().unwrap().iter().find(|entry| entry["kind"] == "inspection").unwrap();
    let record = &walked["record"].as_str().unwrap()[..12];
    let print = |file: &str, paper: &[&str]| {
        desk.run(&[&["print", record, &desk.path(file), "--json"], paper].concat())
    };
    let printed = print("a4.pdf", &[]);
    assert_eq!((printed.code, &printed.json()["media"]), (0, &json!("application/pdf")), "{printed:?}");
    assert_eq!(print("letter.pdf", &["--paper", "letter"]).code, 0);
    assert_eq!(print("odd.pdf", &["--paper", "a5"]).kind(), "no-such-paper");
    assert!(!std::path::Path::new(&desk.path("odd.pdf")).exists());
    // ISO 32000: a file begins with %PDF-; a page's MediaBox is in 1/72 inch, Letter 612 by 792.
    let letter = bytes(&desk, "letter.pdf");
    assert!(letter.starts_with(b"%PDF-") && bytes(&desk, "a4.pdf").starts_with(b"%PDF-"));
    let sized = |bytes: &[u8], size: &str| String::from_utf8_lossy(bytes).contains(size);
    assert!(sized(&letter, "612 792") && !sized(&bytes(&desk, "a4.pdf"), "612 792"));

    assert_eq!(desk.run(&["label", "Own", &desk.path("label.pdf")]).code, 0);
    assert!(bytes(&desk, "label.pdf").starts_with(b"%PDF-"));
    assert_eq!(desk.run(&["label", "Own", &desk.path("no/such/folder"), "--json"]).kind(), "file");
}

#[test]
fn what_is_known_and_what_falls_due_go_to_other_programs() {
    let desk = Desk::with_machine();
    let keep = ["due", "keep", "Own", "New plug", "--every-days", "365", "--done-on", &days_ago(20)];
    assert_eq!(desk.signed(&keep).code, 0);
    assert_eq!(desk.run(&["csv", "Own", &desk.path("own.csv")]).code, 0);
    let table = text(&desk, "own.csv");
    assert!(table.lines().count() > 50 && table.contains("cylinder-base"), "{table}");

    assert_eq!(desk.run(&["calendar", "Own", &desk.path("own.ics")]).code, 0);
    // RFC 5545, 3.4 and 3.1: an iCalendar object and its line ends.
    let calendar = text(&desk, "own.ics");
    assert!(calendar.starts_with("BEGIN:VCALENDAR\r\n") && calendar.ends_with("END:VCALENDAR\r\n"));
    assert!(calendar.contains("New plug"), "{calendar}");
    let shown = desk.run(&["calendar", "Own", "-"]);
    assert!(shown.code == 0 && shown.out.starts_with("BEGIN:VCALENDAR"), "{shown:?}");
}
