//! What the benches share: a stopwatch that reports ratios, and a machine with a long life.

#![allow(dead_code, unused_imports, clippy::unwrap_used, clippy::indexing_slicing)]

mod pen;

use std::collections::BTreeMap;
use std::time::Instant;

use chrono::{DateTime, FixedOffset, TimeDelta};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Digest, Finding, Inspection, Machine, Record, SigningSeed};

pub use pen::Pen;

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
    let (records, pen) = life_of([7; 32], MACHINE, looks, |_| points);
    (records, pen.seed)
}

/// The same of this device and machine; each inspection has its own number of points.
pub fn life_of(
    seed: [u8; 32],
    about: Uuid,
    looks: usize,
    points: impl Fn(usize) -> usize,
) -> (Vec<Record>, Pen) {
    let mut pen = Pen::new(seed);
    let machine = Machine {
        wing_load: None,
        weight: None,
        name: "Thistle".into(),
        engine: "bramble-125".into(),
        fitted: BTreeMap::new(),
        reserve: None,
        hours: 0.0,
        flights: 0,
        note: String::new(),
        invented: true,
    };
    let mut records =
        vec![pen.member(about, first_day()), pen.write(&Body::Machine(machine), Some(about), first_day())];
    for look in 0..looks {
        let at = first_day() + TimeDelta::hours(17 * (look as i64 + 1));
        records.push(pen.write(&Body::Inspection(inspection(look, points(look), at)), Some(about), at));
    }
    (records, pen)
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
