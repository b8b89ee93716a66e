//! Every call of the screens with whatever arguments: a reply, or a fault that says what to do;
//! the program never stops.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use std::cell::RefCell;

use common::device::begun;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use serde_json::{Map, Value, json};
use witnessmark_app::{App, Call};

/// A call's name and the names of its arguments.
type Named = (String, Vec<String>);

/// Every call, as the program itself tells them to the screens.
fn calls() -> Vec<Named> {
    let text = witnessmark_app::typescript();
    let table = text.split("export interface Calls {").nth(1).unwrap();
    let lines = table.lines().filter_map(|line| line.trim().strip_prefix('"')?.split_once("\": { args: {"));
    lines
        .map(|(name, rest)| {
            let args = rest.split('}').next().unwrap();
            let names = args.split(';').filter_map(|arg| arg.split_once(':'));
            (name.to_owned(), names.map(|(name, _)| name.trim().to_owned()).collect())
        })
        .collect()
}

/// Ids that exist, and everything else that nobody would type.
fn pool(app: &mut App) -> Vec<Value> {
    let machine = app.machines().unwrap()[0].id.clone();
    let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
    let point = &walk.stations[0].points[0];
    let record = app.machine(machine.clone()).unwrap().timeline[0].record.clone();
    vec![
        json!(machine),
        json!(walk.id),
        json!(point.id),
        json!(record),
        json!("before-flight"),
        json!("head-nut-torque"),
        json!("en"),
        json!(""),
        json!("\u{0}\u{202e}🪂"),
        json!("x".repeat(5000)),
        json!("../../etc/passwd"),
        json!("'; DROP TABLE record; --"),
        json!(null),
        json!(true),
        json!(-1),
        json!(1e308),
        json!(u64::MAX),
        json!([]),
        json!({}),
        json!({ "answer": "dry" }),
        json!({ "value": { "value": 1e308, "unit": "L" } }),
        json!({ "value": 4, "unit": "lbf.in" }),
        json!({ "name": "X", "engine": "bramble-125", "fitted": {}, "hours": 1e308, "flights": 0 }),
        json!({ "name": "X", "engine": "none", "fitted": { "": "" }, "hours": -1, "flights": 0 }),
    ]
}

thread_local! {
    /// One app takes all calls: what one leaves behind, the next one meets.
    static APP: RefCell<(App, Vec<Value>, Vec<Named>)> = RefCell::new({
        let (mut app, _) = begun(":memory:");
        let pool = pool(&mut app);
        (app, pool, calls())
    });
}

fn is_clear(fault: &witnessmark_app::FaultView) -> bool {
    // A message without its words would show its own name.
    !fault.message.starts_with("fault-") && fault.hint.len() > 10 && !fault.hint.starts_with("fault-")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    #[test]
    fn any_call_is_answered(which in any::<Index>(), values in vec(any::<Index>(), 12), left_out in 0..12usize) {
        APP.with_borrow_mut(|(app, pool, calls)| {
            let (name, names) = which.get(calls);
            let mut args = Map::new();
            for (n, (arg, value)) in names.iter().zip(&values).enumerate() {
                if n != left_out {
                    args.insert(arg.clone(), value.get(pool).clone());
                }
            }
            let Ok(call) = serde_json::from_value::<Call>(json!({ "call": name, "args": args })) else {
                return Ok(());
            };
            if let Err(fault) = app.call(call) {
                prop_assert!(is_clear(&fault), "{name}: {fault:?}");
                prop_assert_ne!(&fault.kind, "internal", "{}: {:?}", name, fault);
            }
            Ok(())
        })?;
    }

    #[test]
    fn any_text_is_a_call_or_none(text in "\\PC*", name in select(vec!["start", "walk", "answer", "verify"])) {
        let _ = serde_json::from_str::<Call>(&text);
        let _ = serde_json::from_value::<Call>(json!({ "call": name, "args": text }));
    }

    /// A file of records is read whatever is in it.
    #[test]
    fn any_file_is_verified_or_refused(text in "\\PC{0,200}", lines in vec("[{\"a-z:,}0-9]{0,40}", 0..5)) {
        APP.with_borrow_mut(|(app, ..)| {
            for text in [text, lines.join("\n")] {
                match app.verify(text.clone()) {
                    Ok(view) => prop_assert!(!view.good, "{text:?} was found good"),
                    Err(fault) => prop_assert!(is_clear(&app.show(&fault))),
                }
            }
            Ok(())
        })?;
    }
}

#[test]
fn every_call_was_found() {
    let calls = calls();
    let names: Vec<&str> = calls.iter().map(|(name, _)| name.as_str()).collect();
    for wanted in ["start", "begin", "walk", "answer", "sign", "export", "verify"] {
        assert!(names.contains(&wanted), "{names:?}");
    }
    let walk = calls.iter().find(|(name, _)| name == "walk").unwrap();
    assert_eq!(walk.1, ["machine", "occasion"]);
}
