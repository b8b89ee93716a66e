//! The verdict, and everything derived, from ten years of one machine: 5 000 inspections of 60
//! points. Baselines of the same run: reading one row; reading and parsing the same payloads.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::collections::BTreeMap;

use common::{MACHINE, first_day, life, median, ratio};
use witnessmark_core::history::History;
use witnessmark_core::verdict::{Question, judge};
use witnessmark_store::{Store, StoreFault};

fn main() {
    let folder = tempfile::tempdir().unwrap();
    for looks in [500, 5_000] {
        let path = folder.path().join(format!("{looks}.db"));
        let path = path.to_str().unwrap();
        let (records, _) = life(looks, 60);
        let mut store = Store::open(path).unwrap();
        store.write(|tx| records.iter().try_for_each(|record| tx.append(record).map(|_| ()))).unwrap();
        println!(
            "{looks} inspections of 60 points, {} MB on disk",
            std::fs::metadata(path).unwrap().len() >> 20
        );
        verdict(&mut store, path);
        rebuild(&mut store, path);
    }
}

fn verdict(store: &mut Store, path: &str) {
    let (people, limits) = (BTreeMap::new(), witnessmark_core::list::Limits::default());
    let ours = median(200, || {
        let history: History = store.read(|tx| tx.history(MACHINE)).unwrap().unwrap();
        let question = Question {
            history: &history,
            sheet: None,
            now: first_day(),
            people: &people,
            persons: &BTreeMap::new(),
            split: &store.read(|tx| tx.split_words(MACHINE)).unwrap(),
            refused: store.read(|tx| tx.refused(MACHINE)).unwrap(),
            limits: &limits,
        };
        assert!(!judge(question).reasons.is_empty());
    });
    let db = rusqlite::Connection::open(path).unwrap();
    let bare = median(200, || {
        let folded: String = db
            .prepare_cached("SELECT folded FROM history WHERE machine = ?1")
            .unwrap()
            .query_row([MACHINE.to_string()], |row| row.get(0))
            .unwrap();
        assert!(!folded.is_empty());
    });
    ratio("  verdict", ours, "reading one row", bare);
}

fn rebuild(store: &mut Store, path: &str) {
    let ours = median(3, || store.write(|tx| tx.rebuild()).map_err(|f: StoreFault| f).unwrap());
    let db = rusqlite::Connection::open(path).unwrap();
    let bare = median(3, || {
        let mut statement = db.prepare("SELECT payload FROM record").unwrap();
        let mut rows = statement.query([]).unwrap();
        let mut members = 0;
        while let Some(row) = rows.next().unwrap() {
            let payload: String = row.get(0).unwrap();
            let value: serde_json::Value = serde_json::from_str(&payload).unwrap();
            members += value.as_object().unwrap().len();
        }
        assert!(members > 0);
    });
    ratio("  rebuild of all that is derived", ours, "reading and parsing the payloads", bare);
}
