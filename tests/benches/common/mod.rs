//! What the benches share: a stopwatch that reports ratios, and a machine with a long life.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::BTreeMap;
use std::time::Instant;

use chrono::{DateTime, FixedOffset, TimeDelta};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Author, Body, Digest, Finding, Inspection, Machine, Member, Position, Record, SigningSeed,
};

/// The median of `times` runs, seconds.
pub fn median(times: usize, mut run: impl FnMut()) -> f64 {
    let mut taken: Vec<f64> = (0..times)
        .map(|_| {
            let from = Instant::now();
            run();
            from.elapsed().as_secs_f64()
        })
        .collect();
    taken.sort_by(f64::total_cmp);
    taken[times / 2]
}

/// Prints what was measured against its baseline of the same run.
pub fn ratio(what: &str, ours: f64, baseline_is: &str, baseline: f64) {
    println!(
        "{what}: {:.3} ms; {baseline_is}: {:.3} ms; ratio {:.2}",
        ours * 1e3,
        baseline * 1e3,
        ours / baseline
    );
}

pub const MACHINE: Uuid = Uuid::from_u128(1);

pub fn first_day() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2016-05-02T06:41:07+02:00").unwrap()
}

/// Writes a machine's life: its description, then `looks` inspections of `points` points.
pub fn life(looks: usize, points: usize) -> (Vec<Record>, SigningSeed) {
    let seed = SigningSeed::from_bytes(&[7; 32]);
    let mut author = Author::default();
    let mut records = Vec::with_capacity(looks + 2);
    let mut write = |body: &Body, about: Option<Uuid>, at, author: &mut Author, salt: usize| {
        if about.is_none() || records.len() == 1 {
            author.last_of = None;
        }
        let salt = (salt as u128).to_be_bytes();
        let record = author.write(body, about, at, salt[6..].try_into().unwrap(), &seed).unwrap();
        let at = |seq| Some(Position { seq, digest: record.digest });
        author.last = at(record.payload.seq);
        author.last_of = at(record.payload.of_seq);
        author.clock = record.payload.clock;
        records.push(record);
    };
    let member = Member { person: Uuid::from_u128(2), name: "P".into(), key: seed.jwk(), invented: true };
    write(&Body::Member(member), None, first_day(), &mut author, 0);
    let machine = Machine {
        name: "Thistle".into(),
        engine: "bramble-125".into(),
        fitted: BTreeMap::new(),
        reserve: None,
        hours: 0.0,
        flights: 0,
        note: String::new(),
        invented: true,
    };
    write(&Body::Machine(machine), Some(MACHINE), first_day(), &mut author, 1);
    for look in 0..looks {
        let at = first_day() + TimeDelta::hours(17 * (look as i64 + 1));
        write(&Body::Inspection(inspection(look, points, at)), Some(MACHINE), at, &mut author, look + 2);
    }
    (records, seed)
}

fn inspection(look: usize, points: usize, at: DateTime<FixedOffset>) -> Inspection {
    let finding = |n: usize| {
        let watch = (look + n).is_multiple_of(97);
        Finding {
            point: format!("point-number-{n}"),
            station: "engine".into(),
            component: "engine".into(),
            title: "Cylinder base, all the way round".into(),
            means: if watch { Meaning::Watch } else { Meaning::Serviceable },
            passing: false,
            answer: Some(if watch { "old-stain" } else { "dry" }.into()),
            words: if watch { "Old stain, dry to touch" } else { "Dry" }.into(),
            measured: None,
            band: None,
            note: String::new(),
            photos: Vec::new(),
            at,
            seconds: 6.0,
            before: Vec::new(),
            torque: None,
        }
    };
    Inspection {
        occasion: "before-flight".into(),
        list: Digest::of(b"list"),
        language: "en".into(),
        started: at,
        finished: at,
        hours: look as f64 * 0.7,
        flights: look as u32,
        findings: (0..points).map(finding).collect(),
        left: Vec::new(),
        stepped_back: Vec::new(),
        hurried: Vec::new(),
        job: None,
    }
}
