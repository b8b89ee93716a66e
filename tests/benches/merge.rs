//! The same records brought together by us and by a general-purpose replicating document (the crate
//! automerge): devices with records each, all sent to one peer, then from that peer to a new one.
//!
//! Not the same work: ours verifies every signature twice (server and phone), proves every page, folds
//! histories and is durable in SQLite at both ends; theirs takes whatever it is given and is in memory.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "common/phone.rs"]
mod phone;
#[path = "common/school.rs"]
mod school;

use std::time::Instant;

use automerge::sync::{Message, State, SyncDoc};
use automerge::transaction::Transactable;
use automerge::{AutoCommit, ROOT, ReadDoc, ScalarValue};
use common::life_of;
use school::{Root, Serving, served, sqlite};
use uuid::Uuid;
use witnessmark_core::record::{Record, write_bundle};

/// Records that a device sends at once.
const AT_ONCE: usize = 400;
const DEVICES: usize = 20;

fn main() {
    if served() {
        return;
    }
    for each in [50, 500] {
        let lives: Vec<Vec<Record>> = (0..DEVICES)
            .map(|n| life_of([50 + n as u8; 32], Uuid::from_u128(50 + n as u128), each - 2, |_| 3).0)
            .collect();
        let bytes: usize = lives.iter().flatten().map(|record| record.line().len() + 1).sum();
        println!("{DEVICES} devices with {each} records each, {:.2} MB as lines", bytes as f64 / 1e6);
        let (ours, theirs) = (ours(&lives), theirs(&lives));
        println!("  ratio of times {:.2}", ours / theirs);
    }
}

fn told(what: &str, sent: (f64, usize), fetched: (f64, usize)) {
    println!(
        "  {what}: to the peer {:.2} s, {:.2} MB; from it to a new one {:.2} s, {:.2} MB",
        sent.0,
        sent.1 as f64 / 1e6,
        fetched.0,
        fetched.1 as f64 / 1e6
    );
}

fn ours(lives: &[Vec<Record>]) -> f64 {
    let folder = tempfile::tempdir().unwrap();
    let database = sqlite(folder.path(), "school.db");
    let mut root = Root::new();
    drop(root.founds(&database));
    let serving = Serving::over(&database);
    let client = school::client();
    let begun = Instant::now();
    let mut sent = 0;
    for records in lives.iter().flat_map(|life| life.chunks(AT_ONCE)) {
        let body = write_bundle(records).into_bytes();
        sent += body.len();
        school::ask(&serving, &client, "POST", "/v1/records", body, &root.pen.seed);
    }
    let sending = begun.elapsed().as_secs_f64();
    let size = lives.iter().map(Vec::len).sum();
    let fetching = phone::caught_up(&serving, &mut root, &folder.path().join("phone"), size);
    let (mut from, mut fetched) = (0, 0);
    while from < size {
        let page = |coding| school::page(&serving, &client, &root.pen.seed, from, coding);
        fetched += page("zstd").len();
        from += page("identity").iter().filter(|byte| **byte == b'\n').count();
    }
    told("ours, signatures checked, durable", (sending, sent), (fetching, fetched));
    sending + fetching
}

fn theirs(lives: &[Vec<Record>]) -> f64 {
    // Each device's document, made beforehand: a record is a change of its own, as it came about.
    let devices: Vec<AutoCommit> = lives
        .iter()
        .map(|life| {
            let mut document = AutoCommit::new();
            for record in life {
                let line = ScalarValue::Bytes(record.line().into_bytes());
                document.put(ROOT, record.digest.to_string(), line).unwrap();
                document.commit();
            }
            document
        })
        .collect();
    let mut peer = AutoCommit::new();
    let begun = Instant::now();
    let sent: usize = devices.into_iter().map(|mut device| synced(&mut device, &mut peer)).sum();
    let sending = begun.elapsed().as_secs_f64();
    let begun = Instant::now();
    let mut new = AutoCommit::new();
    let fetched = synced(&mut peer, &mut new);
    let fetching = begun.elapsed().as_secs_f64();
    assert_eq!(new.length(ROOT), lives.iter().map(Vec::len).sum::<usize>());
    told("automerge, nothing checked, in memory", (sending, sent), (fetching, fetched));
    sending + fetching
}

/// Both documents brought to the same state by the library's own protocol; the bytes of its messages.
fn synced(one: &mut AutoCommit, other: &mut AutoCommit) -> usize {
    let (mut of_one, mut of_other, mut bytes) = (State::new(), State::new(), 0);
    loop {
        let there = one.sync().generate_sync_message(&mut of_one).map(Message::encode);
        if let Some(message) = &there {
            bytes += message.len();
            other.sync().receive_sync_message(&mut of_other, Message::decode(message).unwrap()).unwrap();
        }
        let back = other.sync().generate_sync_message(&mut of_other).map(Message::encode);
        if let Some(message) = &back {
            bytes += message.len();
            one.sync().receive_sync_message(&mut of_one, Message::decode(message).unwrap()).unwrap();
        }
        if there.is_none() && back.is_none() {
            return bytes;
        }
    }
}
