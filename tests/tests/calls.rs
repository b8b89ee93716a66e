//! Every call of the screens with whatever arguments: a reply, or a fault that says what to do;
//! the program never stops.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use common::PIN;
use common::chance::Chance;
use common::device::begun;
use common::shapes::Shapes;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Value, json};
use witnessmark_app::views::AskView;
use witnessmark_app::{App, Call, FaultView};
use witnessmark_core::list::Given;

/// One app, and what is in it.
struct Desk {
    app: App,
    known: BTreeMap<&'static str, Value>,
    shapes: Shapes,
}

impl Desk {
    fn new() -> Self {
        let (mut app, _) = begun(":memory:");
        let machine = app.machines().unwrap()[0].id.clone();
        let walk = app.walk(machine.clone(), "before-flight".into()).unwrap();
        let point = &walk.stations[0].points[0];
        let AskView::Words { answers } = &point.ask else { panic!("{point:?}") };
        let (point, answer) = (point.id.clone(), answers[0].id.clone());
        let record = app.machine(machine.clone()).unwrap().timeline[0].record.clone();
        let job = app.job_choices(machine.clone()).unwrap()[0].id.clone();
        let known = [
            ("machine", json!(machine)),
            ("id", json!(machine)),
            ("to", json!(machine)),
            ("walk", json!(walk.id)),
            ("point", json!(point)),
            ("record", json!(record)),
            ("digest", json!(record)),
            ("occasion", json!("before-flight")),
            ("engine", json!("bramble-125")),
            ("band", json!("head-nut-torque")),
            ("language", json!("en")),
            ("jobs", json!([job])),
            ("pin", json!(PIN)),
            ("old", json!(PIN)),
            ("answer", json!(answer)),
            ("name", json!("Thistle")),
        ];
        let mut desk =
            Self { app, known: known.into(), shapes: Shapes::read(&witnessmark_app::typescript()) };
        desk.look_on();
        desk
    }

    /// Begins the next inspection, where one was signed or put aside.
    fn look_on(&mut self) {
        let text = |name: &str| self.known[name].as_str().unwrap().to_owned();
        let walk = self.app.walk(text("machine"), "before-flight".into()).unwrap();
        let given = Some(Given::Words { answer: text("answer") });
        self.app.answer(walk.id.clone(), text("point"), given, 5.0).unwrap();
        self.known.insert("walk", json!(walk.id));
    }

    /// A call by chance; whether it had the form of one, and the fault if it brought one.
    fn call(&mut self, chance: &mut Chance) -> (String, Value, Option<Option<FaultView>>) {
        let (name, shape) = chance.pick(&self.shapes.calls).clone();
        let args = self.shapes.value(&shape, "", &self.known, chance);
        let call = serde_json::from_value::<Call>(json!({ "call": name, "args": args }));
        let told = call.ok().map(|call| self.app.call(call).err());
        (name, args, told)
    }
}

fn is_clear(fault: &FaultView) -> bool {
    // A message without its words would show its own name.
    !fault.message.starts_with("fault-") && fault.hint.len() > 10 && !fault.hint.starts_with("fault-")
}

thread_local! {
    /// One app takes all calls: what one leaves behind, the next one meets.
    static DESK: RefCell<Desk> = RefCell::new(Desk::new());
}

#[test]
fn any_call_is_answered() {
    let mut chance = Chance::seeded("calls");
    let (mut done, mut refused) = (BTreeSet::new(), 0);
    for _ in 0..6 {
        let mut desk = Desk::new();
        for _ in 0..200 {
            let (name, args, told) = desk.call(&mut chance);
            let closes = ["sign", "put-aside"].contains(&name.as_str());
            match told {
                // Not of the form of a call: the server tells it so.
                None => {}
                Some(None) => drop(done.insert(name)),
                Some(Some(fault)) => {
                    refused += 1;
                    let args = args.to_string().chars().take(2000).collect::<String>();
                    assert!(is_clear(&fault), "{name} {args}: {fault:?}");
                    assert_ne!(fault.kind, "internal", "{name} {args}: {fault:?}");
                }
            }
            if closes {
                desk.look_on();
            }
        }
        // Still alive, and sound: what is derived can be derived anew, and the records verify.
        desk.app.rebuild().unwrap();
        for machine in desk.app.machines().unwrap() {
            let file = desk.app.export(machine.id).unwrap();
            let verified = desk.app.verify(file.text).unwrap();
            assert!(verified.good, "{verified:?}");
        }
    }
    println!("{refused} calls refused; done at least once: {done:?}");
    assert!(refused > 300 && done.len() > 20, "{refused} refused, {done:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn any_text_is_a_call_or_none(text in "\\PC*", name in select(vec!["start", "walk", "answer", "verify"])) {
        let _ = serde_json::from_str::<Call>(&text);
        let _ = serde_json::from_value::<Call>(json!({ "call": name, "args": text }));
    }

    /// A file of records is read whatever is in it.
    #[test]
    fn any_file_is_verified_or_refused(text in "\\PC{0,200}", lines in vec("[{\"a-z:,}0-9]{0,40}", 0..5)) {
        DESK.with_borrow_mut(|desk| {
            for text in [text, lines.join("\n")] {
                match desk.app.verify(text.clone()) {
                    Ok(view) => prop_assert!(!view.good, "{text:?} was found good"),
                    Err(fault) => prop_assert!(is_clear(&desk.app.show(&fault))),
                }
            }
            Ok(())
        })?;
    }
}

#[test]
fn every_call_was_found() {
    let shapes = Shapes::read(&witnessmark_app::typescript());
    let names: Vec<&str> = shapes.calls.iter().map(|(name, _)| name.as_str()).collect();
    for wanted in ["start", "begin", "walk", "answer", "sign", "export", "verify"] {
        assert!(names.contains(&wanted), "{names:?}");
    }
    let walk = shapes.calls.iter().find(|(name, _)| name == "walk").unwrap();
    assert_eq!(walk.1, "{ machine: string; occasion: string }");
}
