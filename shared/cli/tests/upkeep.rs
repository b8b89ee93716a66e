//! What is open, what falls due, and components, on the command line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, days_ago};
use serde_json::{Value, json};

#[test]
fn a_defect_may_wait_within_its_limits_and_is_put_right() {
    let desk = Desk::with_machine();
    let answers = desk.answers("Own", |answers| {
        answers.insert("cylinder-base".into(), json!("wet"));
    });
    assert_eq!(desk.signed(&["walk", "Own", "--answers", &answers]).code, 1);
    let open = desk.json(&["defect", "list", "Own"]);
    assert_eq!((&open[0]["point"], &open[0]["means"]), (&json!("cylinder-base"), &json!("unserviceable")));
    let defer = |limit: &[&str]| {
        let words = ["--condition", "Solo only", "--reason", "Gasket ordered"];
        desk.signed(&[&["defect", "defer", "Own", "cylinder-base"], &words[..], limit].concat())
    };
    assert_eq!(defer(&[]).kind(), "deferral-limit-missing");
    assert_eq!(defer(&["--until-date", &days_ago(9)]).kind(), "deferral-passed");
    assert!(open[0].get("deferral").is_none(), "{open}");
    assert_eq!(defer(&["--until-hours", "2"]).json()["card"]["verdict"]["state"], "limited");
    let listed = desk.run(&["defect", "list", "Own"]).out;
    assert!(listed.contains("Solo only") && listed.contains("Holds up to 2.0 engine hours"), "{listed}");
    assert_eq!(desk.json(&["defect", "list", "Own"])[0]["deferral"]["state"], "limited");
    assert_eq!(
        desk.json(&["flight", "log", "Own", "--hours", "2.5"])["card"]["verdict"]["state"],
        "grounded"
    );
    let how = ["defect", "rectify", "Own", "cylinder-base", "--how", "New base gasket"];
    assert_eq!(desk.signed(&how).json()["card"]["verdict"]["state"], "fit");
    assert!(desk.run(&["defect", "list", "Own"]).out.contains("Nothing is open"));
}

#[test]
fn what_falls_due_by_tanks_is_put_off_by_doing_it_not_by_describing_it() {
    let desk = Desk::with_machine();
    let filter = |more: &[&str]| desk.signed(&[&["due", "keep", "Own", "Fuel filter"], more].concat());
    assert_eq!(filter(&["--every-tanks", "2"]).code, 0);
    let standing = |page: &Value| page["due"][0]["standing"].clone();
    let used = || desk.json(&["flight", "log", "Own", "--hours", "1", "--tank"]);
    assert_eq!((standing(&used()), standing(&used())), (json!("soon"), json!("over")));
    assert_eq!(standing(&filter(&["--tolerance", "1"]).json()), "tolerated", "described anew");
    assert_eq!(standing(&desk.signed(&["due", "done", "Own", "Fuel filter"]).json()), "later");
    // A tank logged without hours: done once more on the same day, at the same hours.
    desk.json(&["flight", "log", "Own", "--tank", "--tank"]);
    assert_eq!(standing(&desk.signed(&["due", "done", "Own", "Fuel filter"]).json()), "later");
}

#[test]
fn what_falls_due_is_kept_done_and_ended() {
    let desk = Desk::with_machine();
    let plug = |more: &[&str]| desk.signed(&[&["due", "keep", "Own", "New plug"], more].concat());
    assert_eq!(plug(&[]).kind(), "due-interval");
    let due = |page: &Value, member: &str| page["due"][0][member].clone();
    let page = plug(&["--every-hours", "25", "--every-days", "365", "--done-on", &days_ago(400)]).json();
    assert_eq!(due(&page, "standing"), "over", "the calendar came first: {page}");
    assert_eq!(desk.run(&["verdict", "Own"]).code, 1);
    let kept = due(&page, "kept");
    assert_eq!((&kept["every"]["hours"], &kept["tolerance_percent"]), (&json!(25.0), &json!(0.0)));
    // By its title it is changed, not kept twice.
    let page = plug(&["--tolerance", "15"]).json();
    assert_eq!((page["due"].as_array().unwrap().len(), due(&page, "standing")), (1, json!("tolerated")));
    let page = desk.signed(&["due", "done", "Own", "new"]).json();
    assert_eq!(due(&page, "standing"), "later", "{page}");
    assert!(desk.run(&["due", "list", "Own"]).out.contains("New plug: later"));
    assert_eq!(desk.signed(&["due", "done", "Own", "Old plug"]).kind(), "not-named");
    assert_eq!(desk.signed(&["due", "done", "Own", "new", "--done-hours", "99"]).kind(), "due-done-ahead");
    let ended = desk.signed(&["due", "end", "Own", "New plug"]).json();
    assert!(ended["due"].as_array().unwrap().is_empty(), "{ended}");
}

#[test]
fn a_component_keeps_its_time_when_it_moves() {
    let desk = Desk::with_machine();
    desk.signed(&["machine", "add", "--name", "Second", "--engine", "bramble-125"]);
    let fit = |part: &str| {
        let brings = ["--serial", "P-7", "--hours", "30", "--flights", "50"];
        desk.signed(&[&["component", "fit", "Own", part, "Blue blade"], &brings[..]].concat())
    };
    assert_eq!(fit("rudder").kind(), "not-named");
    assert_eq!(fit("propeller").json()["components"][0]["own"]["hours"], 30.0);
    desk.json(&["flight", "log", "Own", "--hours", "2", "--flights", "3"]);
    let moved = desk.signed(&["component", "move", "Own", "P-7", "Second"]).json();
    assert_eq!(moved["card"]["name"], "Second");
    desk.json(&["flight", "log", "Own", "--hours", "4", "--flights", "4"]);
    let page = desk.json(&["flight", "log", "Second", "--hours", "1", "--flights", "1"]);
    let own = &page["components"][0]["own"];
    assert_eq!((&own["hours"], &own["flights"]), (&json!(33.0), &json!(54)), "{page}");
    assert_eq!(desk.signed(&["component", "off", "Own", "Blue blade"]).kind(), "component-not-here");
    let off = desk.signed(&["component", "off", "Second", "blue"]).json();
    assert_eq!(off["components"][0]["fitted"], false);
    assert!(desk.run(&["show", "Second"]).out.contains("Blue blade"));
}
