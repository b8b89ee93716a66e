//! The walk in the terminal: kept at every answer, resumed, signed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::{Value, json};

fn begun(desk: &Desk) -> Value {
    let list = desk.json(&["machine", "list"]);
    list.as_array().unwrap().iter().find(|card| card["name"] == "School Linnet").unwrap()["walk"].clone()
}

#[test]
fn the_conversation_keeps_everything_and_goes_on_where_it_stopped() {
    let desk = Desk::with_demo();
    let walk = |typed: &str| {
        let ran = desk.run_with(&["walk", "School Linnet", "--no-sign"], typed);
        assert_eq!(ran.code, 0, "{ran:?}");
        ran.out
    };
    // Answered, taken back, answered again; a note; nonsense; the input ends without a word.
    let first = walk("1\nb\n2\nn wind from the west\n99\nnonsense\n1\n");
    assert!(first.contains("The note is kept") && first.contains("none of the answers"), "{first}");
    assert_eq!((&begun(&desk)["done"], &begun(&desk)["occasion"]), (&json!(2), &json!("before-flight")));
    let second = walk("q\n");
    assert!(second.contains("2 of") && second.contains("[3/"), "{second}");
    assert_eq!(begun(&desk)["done"], 2);
    // Left for now, and the next point is asked.
    let third = walk("l\nq\n");
    assert!(third.contains("[4/"), "{third}");

    assert_eq!(desk.run(&["put-aside", "School Linnet"]).code, 0);
    assert_eq!(begun(&desk), Value::Null);
    assert_eq!(desk.run(&["put-aside", "School Linnet", "--json"]).kind(), "nothing-begun");
}

#[test]
fn a_walk_is_signed_in_the_terminal() {
    let desk = Desk::with_demo();
    let (pin, points) = (desk.pin_file(), desk.json(&["points", "School Linnet"]));
    let points = points["points"].as_array().unwrap();
    let mut typed = String::new();
    for point in points {
        let ask = &point["ask"];
        typed += &match ask["by"].as_str().unwrap() {
            "words" => {
                let answers = ask["answers"].as_array().unwrap();
                let good = answers.iter().position(|answer| answer["means"] == "serviceable").unwrap();
                format!("{}\n", good + 1)
            }
            // The band's own unit goes without saying.
            _ => format!("{}\n", ask["low"].as_f64().or(ask["high"].as_f64()).unwrap_or(1.0)),
        };
    }
    // At the end one point is looked at again, by its number, before it is signed.
    let args = ["walk", "School Linnet", "--pin-file", &pin];
    let ran = desk.run_with(&args, &(typed + "2\n1\ns\n"));
    assert_eq!(ran.code, 0, "{ran:?}");
    assert!(ran.out.contains("Signed as record"), "{}", ran.out);
    assert!(ran.err.contains("somebody signs"), "the first start is told: {}", ran.err);
    assert_eq!(begun(&desk), Value::Null);
}

#[test]
fn nothing_is_signed_when_an_answer_in_the_file_is_wrong() {
    let desk = Desk::with_demo();
    let pin = desk.pin_file();
    let walk = |answers: &str, more: &[&str]| {
        let args = ["walk", "School Linnet", "--answers", answers, "--pin-file", &pin, "--json"];
        desk.run(&[&args, more].concat())
    };
    let file = |text: &str| desk.write("wrong.json", text);
    assert_eq!(walk(&desk.path("not-there.json"), &[]).kind(), "answers-file");
    assert_eq!(walk(&file("[1, 2]"), &[]).kind(), "answers-file");
    assert_eq!(walk(&file(r#"{"weather": 3}"#), &[]).kind(), "answer-unreadable");
    assert_eq!(walk(&file(r#"{"weather": {"value": 3}}"#), &[]).kind(), "answer-unreadable");
    assert_eq!(walk(&file(r#"{"no-such": "good"}"#), &[]).kind(), "no-such-point");

    let missing = walk(&file(r#"{"weather": "steady"}"#), &[]);
    assert_eq!(missing.kind(), "answers-missing");
    assert!(missing.err.contains("site"), "{}", missing.err);

    let wrong = desk.answers("School Linnet", |answers| {
        answers.insert("site".into(), json!("no-such-answer"));
    });
    let ran = walk(&wrong, &[]);
    assert_eq!(ran.kind(), "no-such-answer");
    assert!(ran.err.contains("site"), "{}", ran.err);
    // What came before it in the list stays.
    assert_eq!(begun(&desk)["done"], 1);
    let timeline = desk.json(&["show", "School Linnet"])["timeline"].clone();
    let today = timeline.as_array().unwrap().iter().any(|entry| entry["by"] == "somebody");
    assert!(!today, "{timeline}");

    let left = walk(&file(r#"{"weather": "steady"}"#), &["--leave-missing"]);
    assert_eq!(left.code, 1, "points left out ground the machine: {left:?}");
}

#[test]
fn answers_without_a_signature_stay_for_later() {
    let desk = Desk::with_demo();
    let answers = desk.answers("School Linnet", |_| {});
    let ran = desk.run(&["walk", "School Linnet", "--answers", &answers, "--no-sign"]);
    assert_eq!(ran.code, 0, "{ran:?}");
    let walk = begun(&desk);
    assert_eq!(walk["done"], walk["of"]);
    // Said twice alike, an answer is no change of mind.
    let pin = desk.pin_file();
    let signed = desk.json(&["walk", "School Linnet", "--answers", &answers, "--pin-file", &pin]);
    let record = desk.json(&["record", signed["record"].as_str().unwrap()]);
    let unchanged = |finding: &Value| finding["before"].as_array().unwrap().is_empty();
    assert!(record["findings"].as_array().unwrap().iter().all(unchanged));
}
