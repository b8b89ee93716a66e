//! From an answer to its being durable, through the app, against a bare SQLite commit of a
//! row of the same size with the same durability, in the same folder and run.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::path::Path;

use common::{median, ratio};
use witnessmark_app::views::AskView;
use witnessmark_core::list::Given;
use witnessmark_core::record::Machine;

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let ours = through_the_app(folder.path());
    let bare = bare_commit(&folder.path().join("bare.db"));
    ratio("an answer, until durable", ours, "a bare commit, synchronous FULL", bare);
}

fn through_the_app(folder: &Path) -> f64 {
    let mut app = witnessmark_host::open(&folder.join("app")).unwrap();
    app.begin("Bench".into(), "271828".into()).unwrap();
    let machine = Machine {
        wing_load: None,
        weight: None,
        name: "Thistle".into(),
        engine: "bramble-125".into(),
        fitted: [].into(),
        reserve: None,
        hours: 0.0,
        flights: 0,
        note: String::new(),
        invented: true,
    };
    let machine = app.machine_save(String::new(), Some(machine), "271828".into()).unwrap().card.id;
    let walk = app.walk(machine, "before-flight".into()).unwrap();
    let points: Vec<_> = walk.stations.iter().flat_map(|s| &s.points).collect();
    let mut n = 0;
    median(600, || {
        // Round and round the list: the draft grows to ten times a list's length.
        let point = points[n % points.len()];
        n += 1;
        let given = match &point.ask {
            AskView::Words { answers } => Given::Words { answer: answers[0].id.clone() },
            AskView::Torque(_) => unreachable!("nothing is tightened before flight"),
            AskView::Value(ask) => Given::Value {
                value: witnessmark_core::units::Quantity::new(ask.low.unwrap_or(1.0), ask.units[0].code),
            },
        };
        app.answer(walk.id.clone(), point.id.clone(), Some(given), 5.0).unwrap();
    })
}

fn bare_commit(path: &Path) -> f64 {
    let mut db = rusqlite::Connection::open(path).unwrap();
    db.execute_batch(
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;
         CREATE TABLE step (draft TEXT, n INTEGER, body TEXT, PRIMARY KEY (draft, n)) WITHOUT ROWID;",
    )
    .unwrap();
    let body = "x".repeat(180);
    let mut n = 0;
    median(600, || {
        n += 1;
        let tx = db.transaction().unwrap();
        tx.execute("INSERT INTO step VALUES ('d', ?1, ?2)", rusqlite::params![n, body]).unwrap();
        tx.commit().unwrap();
    })
}
