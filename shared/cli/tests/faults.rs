//! What is given wrongly is told with what to do, exit 2, and nothing is signed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, PIN};

#[test]
fn what_is_not_there_is_named() {
    let desk = Desk::with_demo();
    let kind = |args: &[&str]| desk.run(&[args, &["--json"]].concat()).kind();
    assert_eq!(kind(&["verdict", "nobody's"]), "no-such");
    assert_eq!(kind(&["points", "School Linnet", "--occasion", "after-tea"]), "no-such-occasion");
    assert_eq!(kind(&["record", "0000"]), "no-such-record");
    assert_eq!(kind(&["verify", &desk.path("not-there")]), "file");
    assert_eq!(kind(&["verify", &desk.write("empty", "")]), "bundle-empty");
    assert_eq!(kind(&["demo"]), "demo-here");
    assert_eq!(kind(&["fly"]), "usage");
    assert_eq!(kind(&["export", "School Linnet", &desk.path("no/such/folder")]), "file");
}

#[test]
fn a_name_that_fits_two_machines_is_not_guessed() {
    let desk = Desk::new();
    let pin = desk.pin_file();
    for name in ["Club one", "Club two"] {
        let add = ["machine", "add", "--name", name, "--engine", "bramble-125", "--pin-file", &pin];
        assert_eq!(desk.run(&add).code, 0);
    }
    let ran = desk.run(&["verdict", "club", "--json"]);
    assert_eq!(ran.kind(), "ambiguous");
    assert!(ran.err.contains("Club one") && ran.err.contains("Club two"), "{}", ran.err);
    // The verdict itself: nobody walked round it.
    assert_eq!(desk.run(&["verdict", "CLUB TWO"]).code, 1);
}

#[test]
fn without_the_right_pin_nothing_is_signed() {
    let desk = Desk::new();
    let add = |pin: &[&str]| {
        let args = ["machine", "add", "--name", "Own", "--engine", "bramble-125", "--json"];
        desk.run(&[&args, pin].concat())
    };
    assert_eq!(add(&[]).kind(), "pin-needed");
    assert_eq!(add(&["--pin-file", &desk.path("not-there")]).kind(), "file");
    assert_eq!(add(&["--pin-file", &desk.write("blank", "\n123456\n")]).kind(), "pin-file-empty");
    assert_eq!(add(&["--pin-file", &desk.write("weak", "1234")]).kind(), "pin-weak");
    assert!(desk.json(&["machine", "list"]).as_array().unwrap().is_empty());

    assert_eq!(add(&["--pin-file", &desk.pin_file()]).code, 0);
    let wrong = desk.write("wrong", "314159");
    assert_eq!(add(&["--pin-file", &wrong]).kind(), "pin-wrong");
    assert_eq!(
        add(&["--pin-file", &desk.pin_file(), "--signatory", "Somebody else"]).kind(),
        "signatory-other"
    );
    assert_eq!(desk.json(&["machine", "list"]).as_array().unwrap().len(), 1);
}

#[test]
fn the_pin_is_shown_nowhere() {
    let desk = Desk::new();
    let pin = desk.pin_file();
    let add = ["machine", "add", "--name", "Own", "--engine", "bramble-125", "--pin-file", &pin];
    let ran = desk.run(&add);
    assert!(!ran.out.contains(PIN) && !ran.err.contains(PIN));
}

#[test]
fn people_are_told_in_a_sentence_and_what_to_do() {
    let desk = Desk::new();
    let ran = desk.run(&["verdict", "nobody's"]);
    let lines: Vec<_> = ran.err.lines().collect();
    assert_eq!((ran.code, lines.len()), (2, 2), "{ran:?}");
    assert!(lines[0].contains("nobody's") && lines[1].starts_with("  "), "{lines:?}");
}

#[test]
fn help_is_complete_and_no_fault() {
    let desk = Desk::new();
    for args in [&["--help"][..], &["walk", "--help"], &["machine", "add", "--help"], &["--version"]] {
        let ran = desk.run(args);
        assert_eq!((ran.code, ran.err.as_str()), (0, ""), "{ran:?}");
        assert!(!ran.out.contains("help-"), "{}", ran.out);
    }
    assert_eq!(desk.run(&[]).code, 2);
}
