//! A flight prepared and its fuel logged, on the command line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::{Value, json};

fn kg(value: f64) -> Value {
    json!({ "value": value, "unit": "kg" })
}

fn load(pilot: f64) -> Value {
    let loads = json!({ "pilot": kg(pilot), "machine": kg(32.0), "fuel": kg(8.0), "ballast": kg(0.0) });
    let wing = json!({ "with_motor": { "low": kg(95.0), "high": kg(140.0) }, "document": "Invented wing manual", "page": "7" });
    json!({ "load": { "loads": loads, "wing": wing } })
}

#[test]
fn a_flight_is_judged_kept_and_signed_with_the_next_signature() {
    let desk = Desk::with_machine();
    let prepare = |more: &[&str], plan: &Value| {
        desk.run_with(&[&["flight", "prepare", "Own", "--file", "-"], more].concat(), &plan.to_string())
    };
    // 90 + 32 + 8 = 130 kg: 10 below 140.
    let judged = prepare(&["--check"], &load(90.0));
    assert_eq!(judged.code, 0, "{judged:?}");
    assert!(judged.out.contains("Nothing is kept"), "{}", judged.out);
    assert!(judged.out.contains("- fit: All-up 130 kg at launch: 10 kg below"), "{}", judged.out);
    assert!(!judged.out.contains("To clear it: Nothing"), "{}", judged.out);
    assert_eq!(desk.json(&["show", "Own"])["waiting"], 0);

    let over = prepare(&["--check"], &load(110.0));
    assert_eq!(over.code, 1, "{over:?}");
    assert!(over.out.contains("10 kg above the most this wing may carry"), "{}", over.out);

    // From a file, and for programs.
    let file = desk.write("plan.json", &load(90.0).to_string());
    let kept = desk.json(&["flight", "prepare", "Own", "--file", &file]);
    assert_eq!(kept["parts"][0]["part"], "load");
    assert_eq!(kept["parts"][0]["reason"]["state"], "fit");
    assert_eq!(desk.json(&["show", "Own"])["waiting"], 1);
    assert!(desk.run(&["flight", "prepare", "Own"]).out.contains("worked out today"));
    assert_eq!(desk.json(&["flight", "prepare", "Own"])["today"], true);

    let limit = ["confirm-limit", "Own", "mix-ratio", "--low", "50 1", "--high", "50 1"];
    let signed = desk.signed(&[&limit[..], &["--document", "Invented manual", "--page", "3"]].concat());
    let page = signed.json();
    assert_eq!(page["waiting"], 0);
    let of_load = |reason: &&Value| reason["rule"] == "load";
    let reasons = page["card"]["verdict"]["reasons"].as_array().unwrap();
    let record = reasons.iter().find(of_load).unwrap()["record"].as_str().unwrap();
    let opened = desk.run(&["record", record]);
    assert!(opened.code == 0 && opened.out.contains("pilot 90 kg"), "{opened:?}");
}

#[test]
fn what_to_pour_is_told_apart() {
    let desk = Desk::with_machine();
    let litres = |value: f64| json!({ "value": value, "unit": "L" });
    let mix =
        json!({ "in_tank": litres(0.0), "ratio_in_tank": null, "target_ratio": 50, "add_fuel": litres(8.0) });
    let plan = json!({ "mix": { "mix": mix } }).to_string();
    let judged = desk.run_with(&["flight", "prepare", "Own", "--file", "-", "--check"], &plan);
    assert!(judged.out.contains("Oil for this mix: 160 mL"), "{judged:?}");
}

#[test]
fn a_plan_that_cannot_be_is_refused_with_what_is_wrong() {
    let desk = Desk::with_machine();
    let prepare = |more: &[&str], plan: &str| {
        desk.run_with(&[&["flight", "prepare", "Own", "--file", "-", "--json"], more].concat(), plan)
    };
    let refused = prepare(&[], &load(-90.0).to_string());
    assert_eq!(refused.kind(), "flight-impossible");
    assert!(refused.fault()["message"].as_str().unwrap().contains("The pilot's weight"));
    let judged = prepare(&["--check"], &load(-90.0).to_string());
    assert_eq!((judged.code, &judged.json()["faults"][0]["part"]), (1, &json!("load")));
    assert_eq!(prepare(&[], "{}").kind(), "flight-empty");
    assert_eq!(prepare(&[], "[1]").kind(), "plan-file");
    assert_eq!(prepare(&[], "{").kind(), "plan-file");
    let odd = prepare(&[], r#"{ "wind": { "wind": { "mean": 3 } } }"#);
    assert!(odd.fault()["message"].as_str().unwrap().contains("wind.wind.mean"), "{odd:?}");
    assert_eq!(desk.run(&["flight", "prepare", "Own", "--file", "nowhere.json", "--json"]).kind(), "file");
    assert_eq!(desk.json(&["show", "Own"])["waiting"], 0);
}

#[test]
fn fuel_burned_is_logged_in_litres_and_gallons() {
    let desk = Desk::with_machine();
    let log = |fuel: &str| desk.run(&["flight", "log", "Own", "--hours", "1", "--fuel", fuel, "--json"]);
    assert_eq!(log("3.2 L").code, 0);
    assert_eq!(log("0.8 gal_us").code, 0);
    assert_eq!(log("0.7 imp gal").code, 0);
    let form = desk.json(&["flight", "prepare", "Own"]);
    let burns = form["burns"].as_array().unwrap();
    assert_eq!((burns.len(), &burns[1]["used"]), (3, &json!({ "value": 0.8, "unit": "gal_us" })));
    // 3.2 L; 0.8·3.785 = 3.03 L; 0.7·4.546 = 3.18 L, in an hour each: told to the careful side.
    let words = form["burns_words"].as_str().unwrap();
    assert!(words.starts_with("3 flights burned 3 L/h to 3.2 L/h"), "{words}");
    assert_eq!(log("3.2").kind(), "quantity");
    assert_eq!(log("3 kg").kind(), "unit");
    assert_eq!(log("300 L").kind(), "fuel-burned");
}

#[test]
fn weights_are_described_and_shown() {
    let desk = Desk::with_machine();
    let change = |more: &[&str]| desk.signed(&[&["machine", "change", "Own"], more].concat());
    assert_eq!(change(&["--wing-least", "95 kg"]).kind(), "wing-range-half");
    assert_eq!(change(&["--wing-document", "Invented wing manual"]).kind(), "wing-range-half");
    assert_eq!(change(&["--weight", "3 kg"]).kind(), "weight-odd");
    assert_eq!(change(&["--wing-least", "140 kg", "--wing-most", "95 kg"]).kind(), "wing-range-crossed");
    let source = ["--wing-document", "Invented wing manual", "--wing-page", "7"];
    let range = ["--weight", "32 kg", "--wing-least", "95 kg", "--wing-most", "140 kg"];
    assert_eq!(change(&[&range[..], &source].concat()).code, 0);
    let shown = desk.run(&["show", "Own"]).out;
    assert!(shown.contains("weighs 32 kg") && shown.contains("95 kg to 140 kg all up"), "{shown}");
    assert!(shown.contains("Invented wing manual, 7"), "{shown}");
    let wing = |page: Value| page["description"]["wing_load"].clone();
    let free = wing(change(&["--wing-free-least", "80 kg", "--wing-free-most", "110 kg"]).json());
    assert_eq!((&free["page"], &free["without_motor"]["high"]), (&json!("7"), &kg(110.0)));
    // Another figure isn't confirmed by the old page.
    let other = wing(change(&["--wing-most", "150 kg"]).json());
    assert_eq!((&other["with_motor"]["high"], other.get("page")), (&kg(150.0), None));
    assert_eq!(wing(change(&["--without-wing-range"]).json()), Value::Null);
}
