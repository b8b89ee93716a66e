//! The battery falls out: the program is killed at random moments of an inspection, a hundred
//! times. No answer that it acknowledged is lost, and the database is sound.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::expect_used, clippy::panic)]

mod common;

use std::path::Path;
use std::process::Command;
use std::time::Duration;

use common::PIN;
use common::chance::Chance;
use common::device::database;
use common::server::{Server, Unanswered};
use serde_json::{Value, json};
use uuid::Uuid;
use witnessmark_core::list::{Given, Step};
use witnessmark_core::record::{Bundle, check};
use witnessmark_store::{DraftState, Store, StoreFault};

const KILLS: usize = 100;
/// Every so many kills, the program is killed while it signs.
const SIGNING: usize = 10;

/// Something that a person did at a point.
#[derive(Clone, Debug, PartialEq)]
enum Deed {
    Answered(String, Given),
    Withdrawn(String),
    Left(String),
    Noted(String, String),
}

impl Deed {
    /// The deed that a step keeps; none for an interruption noticed by the program itself.
    fn of(step: Step) -> Option<Self> {
        match step {
            Step::Answered { point, given, .. } => Some(Self::Answered(point, given)),
            Step::Withdrawn { point, .. } => Some(Self::Withdrawn(point)),
            Step::Left { point, .. } => Some(Self::Left(point)),
            Step::Noted { point, note, .. } => Some(Self::Noted(point, note)),
            Step::Pictured { .. } | Step::SteppedBack(_) => None,
        }
    }

    fn call(&self, walk: &str) -> (&'static str, Value) {
        match self {
            Self::Answered(point, given) => {
                ("answer", json!({ "walk": walk, "point": point, "given": given, "seconds": 3.5 }))
            }
            Self::Withdrawn(_) => ("undo", json!({ "walk": walk })),
            Self::Left(point) => ("leave", json!({ "walk": walk, "point": point })),
            Self::Noted(point, note) => ("note", json!({ "walk": walk, "point": point, "note": note })),
        }
    }
}

/// The person: what they have done that the program acknowledged.
struct Person {
    chance: Chance,
    machine: String,
    walk: Option<String>,
    done: Vec<Deed>,
    signed: usize,
    acknowledged: usize,
}

impl Person {
    /// A deed at random; an undo only while there is an answer to take back.
    fn deed(&mut self, points: &[Value]) -> Deed {
        let point = self.chance.pick(points).clone();
        let id = point["id"].as_str().unwrap().to_owned();
        match self.chance.below(10) {
            0 => Deed::Left(id),
            1 => Deed::Noted(id, format!("note {}", self.chance.next())),
            2 => self.last_answered().map_or(Deed::Left(id), Deed::Withdrawn),
            _ => Deed::Answered(id, self.given(&point)),
        }
    }

    fn given(&mut self, point: &Value) -> Given {
        match point["ask"]["answers"].as_array() {
            Some(answers) => {
                let answer = self.chance.pick(answers)["id"].as_str().unwrap().to_owned();
                Given::Words { answer }
            }
            None => {
                let value = self.chance.below(100_000) as f64 / 1000.0;
                let unit = &point["ask"]["units"][0]["code"];
                serde_json::from_value(json!({ "value": { "value": value, "unit": unit } })).unwrap()
            }
        }
    }

    fn last_answered(&self) -> Option<String> {
        let mut order: Vec<&String> = Vec::new();
        for deed in &self.done {
            if let Deed::Answered(point, _) | Deed::Withdrawn(point) = deed {
                order.retain(|earlier| *earlier != point);
            }
            if let Deed::Answered(point, _) = deed {
                order.push(point);
            }
        }
        order.last().map(|point| (*point).clone())
    }

    /// Opens the walk again and finds all as it was left.
    fn resume(&mut self, server: &mut Server) -> Vec<Value> {
        let walk =
            server.call("walk", json!({ "machine": self.machine, "occasion": "before-flight" })).unwrap();
        let id = walk["id"].as_str().unwrap().to_owned();
        if let Some(before) = &self.walk {
            assert_eq!(*before, id, "the walk goes on");
        }
        self.walk = Some(id);
        let stands = witnessmark_core::list::progress(&self.steps());
        for (point, seen) in &stands.seen {
            let shown = &walk["progress"]["points"][point]["given"]["given"];
            assert_eq!(serde_json::from_value::<Given>(shown.clone()).unwrap(), seen.given, "{point}");
        }
        let stations = walk["stations"].as_array().unwrap();
        stations.iter().flat_map(|station| station["points"].as_array().unwrap()).cloned().collect()
    }

    /// The acknowledged deeds as steps, for the fold that core makes of them.
    fn steps(&self) -> Vec<Step> {
        let at = chrono::DateTime::UNIX_EPOCH.fixed_offset();
        let step = |deed: &Deed| match deed.clone() {
            Deed::Answered(point, given) => Step::Answered { point, given, seconds: 0.0, at },
            Deed::Withdrawn(point) => Step::Withdrawn { point, at },
            Deed::Left(point) => Step::Left { point, at },
            Deed::Noted(point, note) => Step::Noted { point, note, at },
        };
        self.done.iter().map(step).collect()
    }

    /// Does one thing after another until the program is gone; what it didn't acknowledge is returned.
    fn go_on(&mut self, server: &mut Server, points: &[Value]) -> Deed {
        loop {
            let deed = self.deed(points);
            let (name, args) = deed.call(self.walk.as_ref().unwrap());
            match server.call(name, args) {
                Ok(_) => {
                    self.acknowledged += 1;
                    self.done.push(deed);
                }
                Err(Unanswered::Gone) => return deed,
                Err(fault) => panic!("{deed:?}: {fault:?}"),
            }
        }
    }
}

/// Kills the program, and no gentler, after a while.
fn kill_after(server: &Server, while_: Duration) -> std::thread::JoinHandle<()> {
    let id = server.process.id().to_string();
    std::thread::spawn(move || {
        std::thread::sleep(while_);
        assert!(Command::new("kill").args(["-9", &id]).status().unwrap().success());
    })
}

fn is_sound(data: &Path) {
    let connection = rusqlite::Connection::open(database(data)).unwrap();
    let said: String = connection.query_row("PRAGMA integrity_check", [], |row| row.get(0)).unwrap();
    assert_eq!(said, "ok");
}

/// Looks into the database itself: every acknowledged deed is there, in order, and of what was
/// under way when the program died all or nothing.
fn compare(data: &Path, person: &mut Person, pending: Option<Deed>) {
    let walk: Uuid = person.walk.as_ref().unwrap().parse().unwrap();
    let mut store = Store::open(&database(data)).unwrap();
    let steps = store.read(|tx| tx.steps(walk)).unwrap();
    let kept: Vec<Deed> = steps.into_iter().filter_map(Deed::of).collect();
    let with_pending: Vec<Deed> = person.done.iter().cloned().chain(pending).collect();
    assert!(kept == person.done || kept == with_pending, "{} kept, {} done", kept.len(), person.done.len());
    person.done = kept;
}

/// After a kill while signing: the inspection is a record and its walk closed, or neither.
fn settle(data: &Path, person: &mut Person, acknowledged: bool) {
    let walk: Uuid = person.walk.as_ref().unwrap().parse().unwrap();
    let machine: Uuid = person.machine.parse().unwrap();
    let mut store = Store::open(&database(data)).unwrap();
    let (draft, records) = store
        .read(|tx| {
            let draft = tx.draft(walk)?.unwrap();
            let inspections = tx.records_of_kind(machine, "inspection")?;
            Ok::<_, StoreFault>((draft, inspections.len()))
        })
        .unwrap();
    let signed = draft.state == DraftState::Signed;
    assert_eq!(records, person.signed + usize::from(signed), "record and walk say the same");
    assert!(signed || !acknowledged, "an acknowledged signature is kept");
    if signed {
        person.signed += 1;
        person.walk = None;
        person.done.clear();
    }
}

/// Every record that the device signed verifies, and none is missing.
fn verifies(data: &Path, machine: &str) -> usize {
    let machine: Uuid = machine.parse().unwrap();
    let mut store = Store::open(&database(data)).unwrap();
    let records = store
        .read(|tx| Ok::<_, StoreFault>([tx.records_of(None)?, tx.records_of(Some(machine))?].concat()))
        .unwrap();
    let bundle = Bundle { records: records.into_iter().enumerate().collect(), unreadable: Vec::new() };
    let report = check(&bundle);
    assert!(report.faults.is_empty(), "{:?}", report.faults);
    report.records
}

#[test]
fn a_hundred_kills_lose_no_acknowledged_answer() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path();
    let mut server = Server::start(data);
    server.call("begin", json!({ "name": "Test Pilot", "pin": PIN })).unwrap();
    let described = json!({ "name": "Thistle", "engine": "bramble-125", "fitted": {}, "hours": 12.5, "flights": 3, "note": "" });
    let page =
        server.call("machine-save", json!({ "id": "", "description": described, "pin": PIN })).unwrap();
    server.end();
    let mut person = Person {
        chance: Chance::seeded("kills"),
        machine: page["card"]["id"].as_str().unwrap().to_owned(),
        walk: None,
        done: Vec::new(),
        signed: 0,
        acknowledged: 0,
    };
    for round in 1..=KILLS {
        let mut server = Server::start(data);
        let points = person.resume(&mut server);
        let signs = round % SIGNING == 0 && person.last_answered().is_some();
        let longest = if signs { 700_000 } else { 90_000 };
        let killer = kill_after(&server, Duration::from_micros(person.chance.below(longest)));
        if signs {
            let signed = server.call("sign", json!({ "walk": person.walk, "pin": PIN }));
            assert!(!matches!(signed, Err(Unanswered::Fault { .. })), "{signed:?}");
            killer.join().unwrap();
            server.process.wait().unwrap();
            is_sound(data);
            settle(data, &mut person, signed.is_ok());
        } else {
            let pending = person.go_on(&mut server, &points);
            killer.join().unwrap();
            server.process.wait().unwrap();
            is_sound(data);
            compare(data, &mut person, Some(pending));
        }
    }
    let records = verifies(data, &person.machine);
    println!(
        "{KILLS} kills, {} deeds acknowledged, {} lists signed, {records} records",
        person.acknowledged, person.signed
    );
    assert!(person.acknowledged > KILLS, "the kills came too early to mean anything");
    assert_eq!(records, 2 + person.signed);
}
