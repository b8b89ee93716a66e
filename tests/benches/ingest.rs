//! What the server takes a second, durably, against this machine's own rate of strict signature
//! verification over all cores, of the same messages in the same run: checking signatures is the work
//! that can't be left out.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "../../shared/server/tests/common/postgres.rs"]
mod postgres;
#[path = "common/school.rs"]
mod school;

use std::thread;
use std::time::Instant;

use base64ct::{Base64UrlUnpadded, Encoding};
use common::{MACHINE, life_of, median};
use ed25519_dalek::{Signature, VerifyingKey};
use school::{Root, Serving, served, sqlite};
use witnessmark_core::record::{Record, Role, SigningSeed, write_bundle};
use witnessmark_server::school::Sender;

/// Records a push, and how many pushes.
const SIZES: [(usize, usize); 4] = [(1, 200), (10, 80), (100, 20), (400, 8)];
/// Most bytes of a body that the server takes.
const LARGEST: usize = 4 * 1024 * 1024;

fn main() {
    if served() {
        return;
    }
    let cluster = postgres::Cluster::get();
    let folder = tempfile::tempdir().unwrap();
    for (points, of) in [(1, "small records"), (60, "inspections of 60 points")] {
        let most: usize = SIZES.iter().map(|(size, pushes)| size * pushes).sum();
        let (records, pen) = life_of([9; 32], MACHINE, most, |_| points);
        let key = pen.seed.jwk().verifying_key().unwrap();
        let bare = verified(&records[..records.len().min(4000)], &key);
        let kb = write_bundle(&records[2..102]).len() as f64 / 100.0 / 1024.0;
        println!("{of}, {kb:.1} kB each; strict verification over all cores: {bare:.0} a second");
        for way in ["SQLite", "PostgreSQL"] {
            let place = |name: String| match way {
                "SQLite" => sqlite(folder.path(), &name),
                _ => cluster.address(&cluster.database()),
            };
            let database = place(format!("{points}-in-process.db"));
            in_process(&database, way, &records, bare);
            for senders in [1, 8] {
                let database = place(format!("{points}-{senders}.db"));
                over_http(&database, way, senders, &records, bare);
            }
        }
    }
}

/// Strict verifications a second, over all cores.
fn verified(records: &[Record], key: &VerifyingKey) -> f64 {
    let signed: Vec<(Vec<u8>, Signature)> = records
        .iter()
        .map(|record| {
            let envelope = &record.envelope;
            let message = format!("{}.{}", envelope.protected, envelope.payload).into_bytes();
            let signature = Base64UrlUnpadded::decode_vec(&envelope.signature).unwrap();
            (message, Signature::from_slice(&signature).unwrap())
        })
        .collect();
    let cores = thread::available_parallelism().unwrap().get();
    let taken = median(5, || {
        thread::scope(|scope| {
            for part in signed.chunks(signed.len().div_ceil(cores)) {
                scope.spawn(move || assert!(part.iter().all(|(m, s)| key.verify_strict(m, s).is_ok())));
            }
        });
    });
    signed.len() as f64 / taken
}

/// Bodies of each size, made beforehand.
fn bodies(records: &[Record]) -> Vec<(usize, Vec<String>)> {
    let mut rest = &records[2..];
    let mut all = Vec::new();
    for (size, pushes) in SIZES {
        let (these, others) = rest.split_at(size * pushes);
        rest = others;
        all.push((size, these.chunks(size).map(write_bundle).collect()));
    }
    all
}

fn told(size: usize, where_: &str, taken: f64, pushes: usize, bare: f64) {
    let rate = (size * pushes) as f64 / taken;
    println!("  {size:>3} a push, {where_}: {rate:.0} records a second; ratio {:.2}", rate / bare);
}

fn in_process(database: &str, way: &str, records: &[Record], bare: f64) {
    let root = Root::new();
    let school = root.founds(database);
    let sender = Sender { device: root.pen.seed.device(), role: Role::Instructor };
    school.take(write_bundle(&records[..2]).as_bytes(), &sender).unwrap();
    for (size, bodies) in bodies(records) {
        if bodies[0].len() > LARGEST {
            continue;
        }
        let from = Instant::now();
        for body in &bodies {
            assert_eq!(school.take(body.as_bytes(), &sender).unwrap().taken.len(), size);
        }
        told(size, &format!("in process, {way}"), from.elapsed().as_secs_f64(), bodies.len(), bare);
    }
}

fn over_http(database: &str, way: &str, senders: usize, records: &[Record], bare: f64) {
    let root = Root::new();
    drop(root.founds(database));
    let serving = Serving::over(database);
    let client = school::client();
    push(&serving, &client, &root.pen.seed, write_bundle(&records[..2]), 2);
    for (size, bodies) in bodies(records) {
        if bodies[0].len() > LARGEST {
            println!("  {size:>3} a push: more than the server takes at once ({LARGEST} bytes)");
            continue;
        }
        let from = Instant::now();
        thread::scope(|scope| {
            for part in bodies.chunks(bodies.len().div_ceil(senders)) {
                let (serving, client, seed) = (&serving, &client, &root.pen.seed);
                scope.spawn(move || {
                    part.iter().for_each(|body| push(serving, client, seed, body.clone(), size))
                });
            }
        });
        let what = format!("over HTTP, {senders} at once, {way}");
        told(size, &what, from.elapsed().as_secs_f64(), bodies.len(), bare);
    }
}

fn push(serving: &Serving, client: &reqwest::blocking::Client, by: &SigningSeed, body: String, size: usize) {
    let pushed = school::ask(serving, client, "POST", "/v1/records", body.into_bytes(), by);
    let pushed: witnessmark_sync::wire::Pushed = serde_json::from_slice(&pushed).unwrap();
    assert_eq!(pushed.taken.len(), size, "{:?}", pushed.refused.first());
}
