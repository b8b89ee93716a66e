//! The log and what is derived from it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, TimeDelta};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Author, Body, Clock, ComponentMoved, Digest, Finding, Inspection, Jwk, Machine, Member, Position, Record,
    Rectified, Service, SigningSeed,
};
use witnessmark_store::{Draft, DraftState, Photo, Store, StoreFault};

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-05-02T06:41:07+02:00").unwrap()
}

fn machine() -> Body {
    Body::Machine(Machine {
        wing_load: None,
        weight: None,
        name: "Thistle".into(),
        engine: "bramble-125".into(),
        fitted: BTreeMap::new(),
        reserve: None,
        hours: 1.0,
        flights: 1,
        note: String::new(),
        invented: false,
    })
}

fn found(point: &str, means: Meaning) -> Body {
    let finding = Finding {
        point: point.into(),
        station: "engine".into(),
        component: "engine".into(),
        title: "Cylinder base".into(),
        means,
        passing: false,
        answer: Some("wet".into()),
        words: "Wet".into(),
        measured: None,
        band: None,
        note: String::new(),
        photos: Vec::new(),
        at: now(),
        seconds: 5.0,
        before: Vec::new(),
        torque: None,
    };
    Body::Inspection(Inspection {
        occasion: "before-flight".into(),
        list: Digest::of(b"list"),
        language: "en".into(),
        started: now(),
        finished: now(),
        hours: 1.0,
        flights: 1,
        findings: vec![finding],
        left: Vec::new(),
        stepped_back: Vec::new(),
        hurried: Vec::new(),
        job: None,
    })
}

fn fitted(component: u128) -> Body {
    let time = |hours: f64| Service { hours, ..Service::default() };
    Body::ComponentMoved(ComponentMoved {
        component: Uuid::from_u128(component),
        part: "engine".into(),
        name: "Spare".into(),
        serial: String::new(),
        fitted: true,
        own: time(4.0),
        service: time(30.0),
    })
}

/// A device that writes without a store: it knows only what it is told.
struct Pen {
    seed: SigningSeed,
    author: Author,
    minutes: i64,
}

impl Pen {
    fn new(secret: u8) -> Self {
        Self { seed: SigningSeed::from_bytes(&[secret; 32]), author: Author::default(), minutes: 0 }
    }

    fn write(&mut self, about: Uuid, body: &Body) -> Record {
        self.minutes += 1;
        let at = now() + TimeDelta::minutes(self.minutes);
        let record = self.author.write(body, Some(about), at, &[self.minutes as u8; 10], &self.seed).unwrap();
        let place = |seq| Some(Position { seq, digest: record.digest });
        self.author.last = place(record.payload.seq);
        self.author.last_of = place(record.payload.of_seq);
        self.author.clock = record.payload.clock;
        record
    }

    fn learn(&mut self, record: &Record) {
        self.author.seen.insert(record.payload.device.clone(), record.payload.seq);
        self.author.clock = self.author.clock.max(record.payload.clock);
    }
}

fn append(store: &mut Store, record: &Record) -> bool {
    store.write(|tx| tx.append(record)).unwrap()
}

#[test]
fn a_record_taken_twice_is_there_once() {
    let mut store = Store::open(":memory:").unwrap();
    let about = Uuid::from_u128(1);
    let record = Pen::new(1).write(about, &machine());
    assert!(append(&mut store, &record));
    assert!(!append(&mut store, &record));
    let (records, read) = store
        .read(|tx| Ok::<_, StoreFault>((tx.records_of(Some(about))?, tx.record(&record.digest)?)))
        .unwrap();
    assert_eq!(records, std::slice::from_ref(&record));
    assert_eq!(read.unwrap().envelope, record.envelope, "byte for byte");
}

#[test]
fn a_late_record_gives_the_history_that_order_gives() {
    let about = Uuid::from_u128(2);
    let (mut a, mut b) = (Pen::new(1), Pen::new(2));
    let first = a.write(about, &machine());
    b.learn(&first);
    let defect = b.write(about, &found("cylinder-base", Meaning::Unserviceable));
    a.learn(&defect);
    a.minutes += 5;
    let righted =
        Rectified { point: "cylinder-base".into(), opened_by: defect.digest, how: "renewed".into() };
    let righted = a.write(about, &Body::Rectified(righted));
    let orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];
    let records = [first, defect, righted];
    let mut histories = Vec::new();
    for order in orders {
        let mut store = Store::open(":memory:").unwrap();
        for index in order {
            append(&mut store, &records[index]);
        }
        let incremental = store.read(|tx| tx.history(about)).unwrap().unwrap();
        store.write(|tx| tx.rebuild()).unwrap();
        let rebuilt = store.read(|tx| tx.history(about)).unwrap().unwrap();
        assert_eq!(incremental, rebuilt, "derived as it came, and derived anew");
        histories.push(rebuilt);
    }
    assert!(histories.iter().all(|history| *history == histories[0]));
    assert!(histories[0].open.is_empty());
}

#[test]
fn everything_derived_is_rebuilt_from_the_log_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    let path = path.to_str().unwrap();
    let about = Uuid::from_u128(3);
    let mut pen = Pen::new(1);
    let mut store = Store::open(path).unwrap();
    append(&mut store, &pen.write(about, &machine()));
    for _ in 0..20 {
        append(&mut store, &pen.write(about, &found("cylinder-base", Meaning::Watch)));
    }
    append(&mut store, &pen.write(about, &fitted(7)));
    let look = |store: &mut Store| {
        store
            .read(|tx| {
                let device = pen.seed.device();
                Ok::<_, StoreFault>((
                    tx.history(about)?,
                    tx.timeline(about, 100)?,
                    tx.pace(&device, "cylinder-base")?,
                    tx.part_looks("engine")?,
                    tx.part_moves("engine")?,
                ))
            })
            .unwrap()
    };
    let before = look(&mut store);
    assert_eq!((before.1.len(), before.3.len(), before.4.len()), (22, 20, 1));
    drop(store);
    let raw = rusqlite::Connection::open(path).unwrap();
    raw.execute_batch("DELETE FROM history; DELETE FROM mark; DELETE FROM looked; DELETE FROM fitted;")
        .unwrap();
    drop(raw);
    let mut store = Store::open(path).unwrap();
    store.write(|tx| tx.rebuild()).unwrap();
    assert_eq!(look(&mut store), before);
}

#[test]
fn what_looks_found_is_there_by_part_and_by_point() {
    let mut store = Store::open(":memory:").unwrap();
    let (one, two) = (Uuid::from_u128(1), Uuid::from_u128(2));
    let (mut a, mut b) = (Pen::new(1), Pen::new(2));
    let passing = |body: Body| match body {
        Body::Inspection(mut body) => {
            body.findings[0].passing = true;
            body.findings[0].seconds = 9.0;
            body.hurried = vec!["wind".into()];
            Body::Inspection(body)
        }
        other => other,
    };
    let first = a.write(one, &found("base", Meaning::Watch));
    let second = b.write(two, &found("base", Meaning::Unserviceable));
    let third = a.write(one, &passing(found("wind", Meaning::Unserviceable)));
    for record in [&second, &first, &third, &a.write(one, &fitted(7)), &b.write(two, &fitted(8))] {
        append(&mut store, record);
    }
    store
        .read(|tx| {
            let looks = tx.part_looks("engine")?;
            let told: Vec<_> =
                looks.iter().map(|look| (look.seen.record, look.seen.machine, look.seen.means)).collect();
            // Of the day, the pilot, a buckle: no part's life.
            assert_eq!(
                told,
                [(first.digest, one, Meaning::Watch), (second.digest, two, Meaning::Unserviceable)]
            );
            assert_eq!((looks[0].device.clone(), looks[0].seen.hours), (a.seed.device(), 1.0));
            assert_eq!(tx.part_looks("wing")?, []);
            let moves = tx.part_moves("engine")?;
            let told: Vec<_> = moves.iter().map(|one| (one.machine, one.component.as_u128())).collect();
            assert_eq!(told, [(one, 7), (two, 8)]);
            assert_eq!((moves[0].fitted, moves[0].own, moves[0].hours), (true, 4.0, 30.0));
            let mut points = Vec::new();
            tx.point_looks(|look| points.push((look.point, look.machine, look.seconds, look.hurried)))?;
            let base = |machine| ("base".to_owned(), machine, 5.0, false);
            assert_eq!(points, [base(one), base(two), ("wind".to_owned(), one, 9.0, true)]);
            assert_eq!(tx.fleet_pace("base")?, [5.0, 5.0]);
            assert_eq!(tx.pace(&a.seed.device(), "base")?, [5.0]);
            Ok::<_, StoreFault>(())
        })
        .unwrap();
}

#[test]
fn what_an_older_version_derived_is_derived_anew() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    let path = path.to_str().unwrap();
    let about = Uuid::from_u128(10);
    let mut store = Store::open(path).unwrap();
    append(&mut store, &Pen::new(1).write(about, &machine()));
    let before = store.read(|tx| tx.history(about)).unwrap();
    drop(store);
    let raw = rusqlite::Connection::open(path).unwrap();
    raw.execute_batch(
        "UPDATE history SET folded = '{\"old\":1}'; UPDATE setting SET value = '1' WHERE name = 'derived';",
    )
    .unwrap();
    drop(raw);
    let mut store = Store::open(path).unwrap();
    assert_eq!(store.read(|tx| tx.history(about)).unwrap(), before);
}

#[test]
fn the_next_record_follows_both_chains_and_everything_seen() {
    let mut store = Store::open(":memory:").unwrap();
    let (one, other) = (Uuid::from_u128(4), Uuid::from_u128(5));
    let mut pen = Pen::new(1);
    let first = pen.write(one, &machine());
    append(&mut store, &first);
    pen.author.last_of = None;
    append(&mut store, &pen.write(other, &machine()));
    let far = Clock { ms: 9_000_000_000_000, n: 3 };
    let mut stranger = Pen::new(2);
    stranger.author.clock = far;
    let strange = stranger.write(one, &machine());
    append(&mut store, &strange);
    let author = store.read(|tx| tx.author(&pen.seed.device(), Some(one))).unwrap();
    assert_eq!(author.last.unwrap().seq, 2);
    assert_eq!(author.last_of.unwrap(), Position { seq: 1, digest: first.digest });
    assert_eq!(author.seen, BTreeMap::from([(strange.payload.device.clone(), 1)]));
    assert!(author.clock > far, "never behind what was seen");
}

#[test]
fn a_newer_database_is_refused_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("w.db");
    let path = path.to_str().unwrap();
    drop(Store::open(path).unwrap());
    let raw = rusqlite::Connection::open(path).unwrap();
    raw.pragma_update(None, "user_version", 99).unwrap();
    drop(raw);
    let before = std::fs::read(path).unwrap();
    assert!(matches!(Store::open(path), Err(StoreFault::Newer { found: 99, .. })));
    assert_eq!(std::fs::read(path).unwrap(), before);
}

#[test]
fn a_full_disk_is_told_and_leaves_nothing_behind() {
    let mut store = Store::open(":memory:").unwrap();
    store.limit_pages(60).unwrap();
    let draft = Draft {
        id: Uuid::from_u128(6),
        machine: Uuid::from_u128(7),
        occasion: "before-flight".into(),
        state: DraftState::Open,
        started: now().to_rfc3339(),
        body: "{}".into(),
    };
    store.write(|tx| tx.draft_begin(&draft)).unwrap();
    let photo = Photo { media: "image/jpeg".into(), bytes: vec![7; 1 << 20] };
    let fault = store.write(|tx| {
        tx.draft_close(draft.id, DraftState::Aside)?;
        tx.photo_keep(&photo)
    });
    assert!(matches!(fault, Err(StoreFault::Full)), "{fault:?}");
    let kept = store.read(|tx| tx.draft(draft.id)).unwrap().unwrap();
    assert_eq!(kept.state, DraftState::Open, "the whole transaction is undone");
    store.limit_pages(10_000).unwrap();
    let digest = store.write(|tx| tx.photo_keep(&photo)).unwrap();
    assert_eq!(store.read(|tx| tx.photo(&digest)).unwrap().unwrap(), photo);
}

#[test]
fn rescue_brings_over_what_verifies_and_counts_the_rest() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("old.db");
    let path = path.to_str().unwrap();
    let about = Uuid::from_u128(8);
    let seed = SigningSeed::from_bytes(&[1; 32]);
    let member = Member {
        person: Uuid::from_u128(9),
        name: "P".into(),
        key: Jwk::clone(&seed.jwk()),
        invented: false,
    };
    let own = Author::default().write(&Body::Member(member), None, now(), &[0; 10], &seed).unwrap();
    let mut pen = Pen::new(1);
    pen.author.last = Some(Position { seq: 1, digest: own.digest });
    let mut old = Store::open(path).unwrap();
    append(&mut old, &own);
    for _ in 0..5 {
        append(&mut old, &pen.write(about, &machine()));
    }
    old.write(|tx| tx.set("sealed-key", "{}")).unwrap();
    drop(old);
    let raw = rusqlite::Connection::open(path).unwrap();
    raw.execute("UPDATE record SET payload = replace(payload, 'Thistle', 'Thist1e') WHERE seq = 3", [])
        .unwrap();
    drop(raw);
    let mut new = Store::open(":memory:").unwrap();
    let rescued = new.rescue(path).unwrap();
    assert_eq!((rescued.records, rescued.lost, rescued.key), (5, 1, true));
}

/// Every table and index, as SQLite keeps it.
fn shape(path: &str) -> Vec<(String, String)> {
    let db = rusqlite::Connection::open(path).unwrap();
    let mut statement =
        db.prepare("SELECT name, coalesce(sql, '') FROM sqlite_schema ORDER BY name").unwrap();
    statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?))).unwrap().map(Result::unwrap).collect()
}

#[test]
fn an_upgraded_database_is_as_a_fresh_one_and_loses_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let about = Uuid::from_u128(11);
    let record = Pen::new(1).write(about, &machine());
    // A database of the first format, with one record in it.
    let old = rusqlite::Connection::open(path("old.db")).unwrap();
    old.execute_batch(include_str!("../schema/0001.sql")).unwrap();
    old.pragma_update(None, "user_version", 1).unwrap();
    let payload = &record.payload;
    old.execute(
        "INSERT INTO record (digest, device, seq, machine, of_seq, kind, clock_ms, clock_n, protected, payload, signature)
         VALUES (?1, ?2, 1, ?3, 1, ?4, 0, 0, ?5, ?6, ?7)",
        rusqlite::params![
            record.digest.0,
            payload.device.0,
            about.to_string(),
            payload.kind,
            record.envelope.protected,
            record.envelope.payload,
            record.envelope.signature
        ],
    )
    .unwrap();
    drop(old);
    let mut upgraded = Store::open(&path("old.db")).unwrap();
    assert!(upgraded.read(|tx| tx.history(about)).unwrap().unwrap().machine.is_some(), "derived at once");
    drop(upgraded);
    drop(Store::open(&path("fresh.db")).unwrap());
    assert_eq!(shape(&path("old.db")), shape(&path("fresh.db")));
}

#[test]
fn a_number_used_twice_splits_a_devices_word_whatever_it_is_about() {
    let (one, other) = (Uuid::from_u128(4), Uuid::from_u128(5));
    for turned in [false, true] {
        let mut store = Store::open(":memory:").unwrap();
        let mut records = vec![Pen::new(1).write(one, &machine()), Pen::new(1).write(other, &machine())];
        if turned {
            records.reverse();
        }
        let device = records[0].payload.device.clone();
        for record in &records {
            append(&mut store, record);
        }
        store.write(|tx| tx.rebuild()).unwrap();
        for about in [one, other] {
            let split = store.read(|tx| tx.split_words(about)).unwrap();
            assert_eq!(split, std::slice::from_ref(&device));
        }
        let mut fresh = Store::open(":memory:").unwrap();
        for record in &records {
            append(&mut fresh, record);
        }
        assert_eq!(fresh.read(|tx| tx.split_words(one)).unwrap(), [device]);
    }
}

#[test]
fn of_a_machine_only_what_is_here_about_it_was_seen() {
    let mut store = Store::open(":memory:").unwrap();
    let (one, other) = (Uuid::from_u128(4), Uuid::from_u128(5));
    let mut stranger = Pen::new(2);
    // Its record about the other machine isn't here; the later one is.
    stranger.write(other, &machine());
    stranger.author.last_of = None;
    append(&mut store, &stranger.write(one, &machine()));
    let author = |store: &mut Store, about| store.read(|tx| tx.author(&Pen::new(1).seed.device(), about));
    assert_eq!(author(&mut store, Some(one)).unwrap().seen, BTreeMap::from([(stranger.seed.device(), 2)]));
    assert!(author(&mut store, Some(other)).unwrap().seen.is_empty());
}
