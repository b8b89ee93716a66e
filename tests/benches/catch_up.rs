//! A new phone catches up with a school's log: the app's own round and store, each page proven and each
//! signature checked; what goes over the wire; and how it grows from 10 000 records to 100 000. Nine of
//! ten records are small, the tenth is an inspection of 60 points; twelve machines.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "common/phone.rs"]
mod phone;
#[path = "common/school.rs"]
mod school;

use std::time::Instant;

use base64ct::{Base64UrlUnpadded, Encoding};
use common::life_of;
use ed25519_dalek::Signature;
use school::{Root, Serving, fill, served, sqlite};
use uuid::Uuid;
use witnessmark_core::record::{Record, SigningSeed};

const MACHINES: usize = 12;
/// A log whose tenth took longer than this is not tried whole, seconds.
const PATIENCE: f64 = 30.0;

fn main() {
    if served() {
        return;
    }
    let before = measured(10_000, None);
    // Ten times as many take ten times as long at best.
    let whole = before <= PATIENCE;
    let more = if whole { 100_000 } else { 30_000 };
    if !whole {
        println!("100 000 would take too long here: {more} instead");
    }
    measured(more, Some(before));
}

fn measured(size: usize, before: Option<f64>) -> f64 {
    let folder = tempfile::tempdir().unwrap();
    let database = sqlite(folder.path(), "school.db");
    let mut root = Root::new();
    let bare = {
        let school = root.founds(&database);
        let records = written(size);
        fill(&school, &records);
        verified(&records)
    };
    let serving = Serving::over(&database);
    println!("{size} records, {} MB in the server's database", megabytes(&database));
    wire(&serving, &root);
    let taken = phone::caught_up(&serving, &mut root, &folder.path().join("phone"), size);
    let rate = size as f64 / taken;
    println!("  a new phone catches up in {taken:.1} s: {rate:.0} records a second");
    println!("  bare strict verification of the same, one core: {bare:.1} s; ratio {:.2}", taken / bare);
    if let Some(before) = before {
        let times = size as f64 / 10_000.0;
        println!("  {times:.0} times the records: {:.1} times as long", taken / before);
    }
    println!("  the server's memory by then: {:.0} MB", serving.memory());
    taken
}

/// The log as the machines' pilots wrote it, by turns.
fn written(size: usize) -> Vec<Record> {
    let each = size / MACHINES;
    let lives: Vec<Vec<Record>> = (0..MACHINES)
        .map(|n| {
            let points = |look: usize| if look.is_multiple_of(10) { 60 } else { 1 };
            life_of([100 + n as u8; 32], Uuid::from_u128(500 + n as u128), each - 2, points).0
        })
        .collect();
    (0..each).flat_map(|n| lives.iter().map(move |life| life[n].clone())).collect()
}

fn verified(records: &[Record]) -> f64 {
    let keys: Vec<_> = (0..MACHINES)
        .map(|n| SigningSeed::from_bytes(&[100 + n as u8; 32]))
        .map(|seed| (seed.device(), seed.jwk().verifying_key().unwrap()))
        .collect();
    let from = Instant::now();
    for record in records {
        let (_, key) = keys.iter().find(|(device, _)| *device == record.payload.device).unwrap();
        let envelope = &record.envelope;
        let message = format!("{}.{}", envelope.protected, envelope.payload);
        let signature = Base64UrlUnpadded::decode_vec(&envelope.signature).unwrap();
        key.verify_strict(message.as_bytes(), &Signature::from_slice(&signature).unwrap()).unwrap();
    }
    from.elapsed().as_secs_f64()
}

fn megabytes(path: &str) -> u64 {
    std::fs::metadata(path).unwrap().len() >> 20
}

/// The whole log page by page, as it goes over the wire.
fn wire(serving: &Serving, root: &Root) {
    let client = school::client();
    // Where pages begin is told by the plain ones; how a page is packed changes nothing of it.
    let (mut pages, mut raw, begun) = (vec![0], 0, Instant::now());
    loop {
        let from = pages[pages.len() - 1];
        let page = school::page(serving, &client, &root.pen.seed, from, "identity");
        let lines = page.iter().filter(|byte| **byte == b'\n').count();
        if lines == 0 {
            break;
        }
        raw += page.len();
        pages.push(from + lines);
    }
    println!(
        "  the log as it is: {:.1} MB, {} pages, {:.1} s",
        raw as f64 / 1e6,
        pages.len(),
        seconds(begun)
    );
    for coding in ["gzip", "zstd"] {
        let begun = Instant::now();
        let bytes: usize = pages
            .iter()
            .map(|from| school::page(serving, &client, &root.pen.seed, *from, coding).len())
            .sum();
        let part = bytes as f64 / raw as f64;
        println!("  by {coding}: {:.1} MB, {part:.3} of that, {:.1} s", bytes as f64 / 1e6, seconds(begun));
    }
}

fn seconds(since: Instant) -> f64 {
    since.elapsed().as_secs_f64()
}
