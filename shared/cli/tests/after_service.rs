//! After a service on the command line: two data folders, the owner's and an instructor's.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::workshop::OTHER_PIN;
use common::{Desk, PIN};
use serde_json::{Value, json};

fn rules(verdict: &Value) -> Vec<&str> {
    verdict["reasons"].as_array().unwrap().iter().map(|reason| reason["rule"].as_str().unwrap()).collect()
}

/// The other person looks and finds all good; gives the text to hand back.
fn looked(other: &Desk, ask: &str) -> String {
    let (file, pin) = (other.write("ask", ask), other.other_pin());
    let who = ["--signatory", "Ida Instructor", "--pin-file", &pin];
    let typed = "g\n".repeat(8);
    let ran = other.run_with(&[&["second-look", "look", &format!("@{file}")], &who[..]].concat(), &typed);
    assert_eq!(ran.code, 0, "{ran:?}");
    assert!(ran.err.contains("Own"), "what is asked is told beside it: {}", ran.err);
    assert_eq!(ran.out.lines().count(), 1, "the text alone: {}", ran.out);
    ran.out.trim().to_owned()
}

fn asked(owner: &Desk) -> String {
    let ran = owner.run(&["second-look", "ask", "Own"]);
    assert_eq!((ran.code, ran.out.lines().count()), (0, 1), "{ran:?}");
    ran.out.trim().to_owned()
}

fn released(owner: &Desk, other: &Desk) -> Value {
    let reply = other.write("reply", &looked(other, &asked(owner)));
    let taken = owner.json(&["second-look", "take", "Own", &format!("@{reply}")]);
    assert_eq!(taken["job"]["ready"], true, "{taken}");
    let released = owner.signed(&["release", "Own"]);
    assert_eq!(released.code, 0, "{released:?}");
    released.json()
}

#[test]
fn head_retorqued_looked_at_twice_flown_and_due_again_after_the_first_tank() {
    let (owner, other) = (Desk::with_machine(), Desk::new());
    owner.add_wrench(30);
    let jobs = owner.json(&["job", "choices", "Own"]);
    assert!(jobs.as_array().unwrap().iter().any(|job| job["id"] == "head-retorqued"), "{jobs}");
    let plan = owner.json(&["job", "plan", "Own", "--did", "head-retorqued", "plug-changed"]);
    let mut back = plan["refit"].as_array().unwrap().clone();
    back.reverse();
    assert_eq!(plan["take_off"].as_array().unwrap(), &back, "refit is the exact reverse");

    // By the words that people speak of it, too.
    let begun = owner.signed(&["job", "begin", "Own", "--did", "Head nuts torqued", "--note", "Seeped"]);
    assert_eq!((begun.code, &begun.json()["card"]["verdict"]["state"]), (0, &json!("grounded")), "{begun:?}");
    assert_eq!(owner.run(&["second-look", "ask", "Own", "--json"]).kind(), "second-too-early");
    // Asked without a PIN: the answer is no all the same.
    let lacking = owner.run(&["release", "Own", "--json"]);
    assert_eq!(lacking.code, 1, "{lacking:?}");
    assert!(!lacking.json()["lacks"].as_array().unwrap().is_empty());

    owner.after_service();
    let walked = owner.run(&["release", "Own"]);
    assert!(walked.code == 1 && walked.out.contains("Another person"), "{walked:?}");
    let same = owner.signed(&["second-look", "look", &asked(&owner), "--joint", "head-nuts=good"]);
    assert_eq!(same.kind(), "second-same-person");

    let page = released(&owner, &other)["machine"].clone();
    assert!(other.json(&["machine", "list"]).as_array().unwrap().is_empty(), "it is none of theirs");
    let verdict = &page["card"]["verdict"];
    assert_eq!(verdict["state"], "limited");
    assert!(rules(verdict).contains(&"follow-up-due"), "{verdict}");
    assert_eq!(owner.run(&["verdict", "Own"]).code, 0);

    let log = ["flight", "log", "Own", "--hours", "1.1", "--flights", "1", "--tank"];
    let logged = owner.json(&log);
    assert_eq!((&logged["card"]["hours"], &logged["waiting"]), (&json!(1.1), &json!(1)));
    assert_eq!(owner.run(&["verdict", "Own"]).code, 1, "the first tank is over");
    let due = owner.json(&["due", "list", "Own"]);
    assert_eq!((&due[0]["standing"], &due[0]["id"]), (&json!("over"), &json!("")), "{due}");
    assert_eq!(owner.run(&["flight", "undo", "Own"]).code, 0);
    assert_eq!(owner.run(&["verdict", "Own"]).code, 0);
    assert_eq!(owner.run(&["flight", "undo", "Own", "--json"]).kind(), "log-signed");
    owner.json(&log);

    owner.signed(&["job", "begin", "Own", "--did", "head-retorqued-again"]);
    owner.after_service();
    released(&owner, &other);
    owner.json(&["flight", "log", "Own", "--reading", "1.6", "--flights", "1"]);
    let answers = owner.answers("Own", |_| {});
    let walked = owner.signed(&["walk", "Own", "--answers", &answers]);
    assert_eq!((walked.code, &walked.json()["verdict"]["state"]), (0, &json!("fit")), "{walked:?}");

    let file = owner.path("all.jsonl");
    owner.run(&["export", "Own", &file]);
    let verified = owner.json(&["verify", &file]);
    assert_eq!(verified["files"][0]["people"].as_array().unwrap().len(), 2);
}

#[test]
fn every_joint_needs_a_word_and_a_wanting_one_keeps_it_on_the_ground() {
    let (owner, other) = (Desk::with_work(30), Desk::new());
    owner.after_service();
    let (ask, pin) = (asked(&owner), other.other_pin());
    let look = |joints: &[&str]| {
        let args = ["second-look", "look", &ask, "--pin-file", &pin, "--signatory", "Ida", "--json"];
        other.run(&[&args[..], joints].concat())
    };
    assert_eq!(look(&[]).kind(), "joints-untold");
    assert_eq!(look(&["--joint", "head-nuts=perfect"]).kind(), "joint-unreadable");
    assert_eq!(look(&["--joint", "rudder=good"]).kind(), "not-named");
    assert_eq!(
        other.run(&["second-look", "look", "nonsense", "--pin-file", &pin, "--json"]).kind(),
        "code-unreadable"
    );
    let reply = look(&["--joint", "head-nuts=wanting"]).json()["text"].as_str().unwrap().to_owned();
    let taken = owner.json(&["second-look", "take", "Own", &reply]);
    assert_eq!(taken["job"]["ready"], false);
    assert_eq!(owner.signed(&["release", "Own"]).code, 1);
    // Put right, and looked at again.
    let reply = look(&["--joint", "Head=good"]).json()["text"].as_str().unwrap().to_owned();
    assert_eq!(owner.json(&["second-look", "take", "Own", &reply])["job"]["ready"], true);
}

#[test]
fn another_person_of_the_same_folder_may_look_but_not_the_owner() {
    let desk = Desk::with_work(30);
    desk.after_service();
    let (pin, other) = (desk.pin_file(), desk.other_pin());
    assert_eq!(desk.run(&["person", "add", "Mia Mechanic", "--pin-file", &other]).code, 0);
    let here = |person: &str, pin: &str| {
        let joint = ["--joint", "head-nuts=good", "--pin-file", pin, "--json"];
        desk.run(&[&["second-look", "here", "Own", "--person", person], &joint[..]].concat())
    };
    assert_eq!(here("A. Tester", &pin).kind(), "second-same-person");
    assert_eq!(here("Nobody", &other).kind(), "not-named");
    assert_eq!(here("Mia", &pin).kind(), "pin-wrong", "the owner's PIN is not hers");
    let looked = here("Mia", &other);
    assert_eq!(looked.json()["job"]["ready"], true, "{looked:?}");
    assert_ne!(PIN, OTHER_PIN);

    let nobody = Desk::new();
    let add = ["person", "add", "Mia", "--pin-file", &nobody.other_pin(), "--json"];
    assert_eq!(nobody.run(&add).kind(), "not-begun");
}
