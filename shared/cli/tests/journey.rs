//! The whole path by the command line: from the invented machines to a file that verifies.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::json;

#[test]
fn from_the_demonstration_to_a_file_that_verifies() {
    let desk = Desk::new();
    let demo = desk.json(&["demo"]);
    let machine = demo.as_array().unwrap().iter().find(|card| card["name"] == "Bramble at home").unwrap();
    let id = machine["id"].as_str().unwrap().to_owned();
    assert_eq!(machine["invented"], true);

    let listed = desk.json(&["points", &id, "--occasion", "before-flight"]);
    let points = listed["points"].as_array().unwrap();
    assert!(points.len() >= 55, "a whole walk has some 60 points, here {}", points.len());
    let stations: std::collections::BTreeSet<_> = points.iter().map(|p| p["station"].to_string()).collect();
    assert!(stations.len() <= 10, "{stations:?}");
    for point in points {
        for member in ["id", "station", "title", "good", "why"] {
            assert!(point[member].as_str().is_some_and(|words| !words.is_empty()), "{member}: {point}");
        }
        let ask = &point["ask"];
        if ask["by"] == "words" {
            assert!(ask["answers"].as_array().unwrap().len() >= 2, "{point}");
        } else {
            assert!(ask["units"][0]["code"].is_string() && ask["words"].is_string(), "{point}");
        }
    }

    let (pin, answers) = (desk.pin_file(), desk.answers(&id, |_| {}));
    let walked =
        desk.json(&["walk", &id, "--answers", &answers, "--signatory", "A. Tester", "--pin-file", &pin]);
    assert_eq!(walked["machine"], json!(id));
    assert_ne!(walked["verdict"]["state"], "grounded");

    let verdict = desk.run(&["verdict", "bramble at home", "--json"]);
    assert_eq!((verdict.code, verdict.json()), (0, walked["verdict"].clone()));

    let record = desk.json(&["record", &walked["record"].as_str().unwrap()[..12]]);
    assert_eq!((&record["good"], &record["by"]), (&json!(true), &json!("A. Tester")));
    assert_eq!(record["findings"].as_array().unwrap().len(), points.len());

    let file = desk.path("bramble.jsonl");
    let exported = desk.json(&["export", &id, &file]);
    let verified = Desk::new().json(&["verify", &file]);
    assert_eq!(verified["good"], true);
    assert_eq!(verified["files"][0]["records"], exported["records"]);
    assert!(verified["files"][0]["people"].as_array().unwrap().iter().any(|p| p["words"] == "A. Tester"));
}

#[test]
fn verifying_leaves_no_data_folder_behind() {
    let desk = Desk::new();
    let bundle = desk.signed_bundle();
    let other = Desk::new();
    let file = other.write("given.jsonl", &bundle);
    assert_eq!(other.run(&["verify", &file]).code, 0);
    assert!(!other.data().exists());
    assert_eq!(other.run_with(&["verify", "-"], &bundle).code, 0);
}

#[test]
fn a_defect_grounds_until_it_is_put_right() {
    let desk = Desk::new();
    desk.signed_bundle();
    let pin = desk.pin_file();
    let answers = desk.answers("Own", |answers| {
        answers.insert("cylinder-base".into(), json!({ "answer": "wet", "note": "below the flange" }));
    });
    let walked = desk.run(&["walk", "Own", "--answers", &answers, "--pin-file", &pin, "--json"]);
    assert_eq!(walked.code, 1, "{walked:?}");
    let record = walked.json()["record"].as_str().unwrap().to_owned();
    let laid_open = desk.json(&["record", &record]);
    let noted = |finding: &&serde_json::Value| finding["note"] == "below the flange";
    assert!(laid_open["findings"].as_array().unwrap().iter().any(|finding| noted(&finding)));

    let verdict = desk.run(&["verdict", "Own"]);
    assert_eq!(verdict.code, 1);
    assert!(verdict.out.contains("cylinder-base") && verdict.out.contains("To clear it"), "{verdict:?}");

    let how = ["defect", "rectify", "Own", "cylinder-base", "--how", "New base gasket", "--pin-file", &pin];
    assert_eq!(desk.run(&how).code, 0);
    assert_eq!(desk.run(&["verdict", "Own"]).code, 0);
    // What is put right is no longer there to be put right.
    assert_eq!(desk.run(&[how.as_slice(), &["--json"]].concat()).kind(), "nothing-open");

    let correct = ["correct", &record, "weather", "stormy", "--reason", "It was worse", "--pin-file", &pin];
    assert_eq!(desk.run(&correct).code, 0);
    assert_eq!(desk.run(&["verdict", "Own"]).code, 1);
}

#[test]
fn a_limit_is_confirmed_from_a_manual_in_any_unit_of_its_kind() {
    let desk = Desk::new();
    desk.signed_bundle();
    let pin = desk.pin_file();
    let limit = |low: &str, high: &str| {
        desk.run(&[
            "confirm-limit",
            "Own",
            "head-nut-torque",
            "--low",
            low,
            "--high",
            high,
            "--document",
            "Manual, issue 2",
            "--page",
            "14",
            "--pin-file",
            &pin,
            "--json",
        ])
    };
    assert_eq!(limit("125", "130 lbf.in").kind(), "quantity");
    assert_eq!(limit("125 mm", "130 lbf.in").kind(), "unit");
    assert_eq!(limit("130 lbf.in", "125 lbf.in").kind(), "limit-crossed");
    let page = limit("14.1 N.m", "130 lbf.in").json();
    let limits = page["limits"].as_array().unwrap();
    let own = limits.iter().find(|limit| limit["band"] == "head-nut-torque").unwrap();
    assert_eq!(own["confirmed"], true);
    // With the only unconfirmed critical limit confirmed, nothing is left to say.
    assert_eq!(page["card"]["verdict"]["state"], "fit");
}

#[test]
fn a_machine_is_described_anew_by_what_changed() {
    let desk = Desk::new();
    desk.signed_bundle();
    let pin = desk.pin_file();
    let change = |args: &[&str]| {
        desk.run(&[&["machine", "change", "Own", "--pin-file", &pin, "--json"], args].concat())
    };
    assert_eq!(change(&["--reserve-repacked", "1.4.2026"]).kind(), "day");
    assert_eq!(change(&["--serial", "propeller"]).kind(), "serial");
    assert_eq!(change(&["--serial", "rudder=1"]).kind(), "part-unknown");
    let page = change(&["--hours", "31.5", "--serial", "propeller=P-77"]).json();
    assert_eq!(page["description"]["hours"], 31.5);
    assert_eq!(page["description"]["fitted"]["propeller"], "P-77");
    assert_eq!(page["description"]["name"], "Own");
    assert_eq!(change(&["--hours", "31.5"]).kind(), "nothing-changed");
}

#[test]
fn what_is_derived_can_be_derived_anew() {
    let desk = Desk::with_demo();
    let before = desk.json(&["machine", "list"]);
    assert_eq!(desk.run(&["rebuild"]).code, 0);
    assert_eq!(desk.json(&["machine", "list"]), before);
}

#[test]
fn an_engine_that_is_listed_can_be_registered() {
    let desk = Desk::new();
    let pin = desk.pin_file();
    for engine in desk.json(&["machine", "engines"]).as_array().unwrap() {
        let id = engine["id"].as_str().unwrap();
        let added = desk.run(&["machine", "add", "--name", id, "--engine", id, "--pin-file", &pin]);
        assert_eq!(added.code, 0, "{added:?}");
        assert!(!desk.json(&["points", id])["points"].as_array().unwrap().is_empty());
    }
}

#[test]
fn the_catalogue_and_faulty_files_are_validated_with_file_and_line() {
    let desk = Desk::new();
    assert_eq!(desk.run(&["validate"]).code, 0);
    let sheet = desk.write(
        "sheet.toml",
        "id = \"plain-100\"\nname = \"Plain\"\nkind = \"two-stroke\"\n\n[values.head-nuts]\nvalue = \"four\"\nunit = \"1\"\n",
    );
    let ran = desk.run(&["validate", &sheet, "--json"]);
    assert_eq!(ran.code, 1, "{ran:?}");
    let faults = ran.json();
    assert_eq!((&faults[0]["file"], &faults[0]["line"]), (&json!(sheet), &json!(6)));
}
