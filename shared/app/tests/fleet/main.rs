//! What a fleet's looks tell: lives of parts, how people look, what points are worth.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

#[path = "../common/mod.rs"]
mod common;

mod limits;
mod lives;
mod looking;
mod pen;
mod worth;

use chrono::TimeDelta;
use common::*;
use witnessmark_app::App;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Role;
use witnessmark_store::Store;

pub(crate) fn clock() -> Clock {
    Clock::at("2026-05-02T06:41:07+02:00")
}

/// A device of its own, its first start done.
pub(crate) fn device(clock: &Clock, salt: u64, name: &str) -> App {
    let mut app = App::new(Store::open(":memory:").unwrap(), platform(clock, salt << 32, None)).unwrap();
    app.begin(name.into(), PIN.into()).unwrap();
    app
}

/// Both ways by code: one shows who it is, the root answers.
pub(crate) fn admit(root: &mut App, other: &mut App, role: Role) {
    let shown = other.school_code().unwrap();
    let answer = root.school_admit(shown.text, Some(role), None, PIN.into()).unwrap();
    other.school_join(answer.text, PIN.into()).unwrap();
}

/// Carries everything from one device to another, as a memory stick does.
pub(crate) fn carry(from: &mut App, to: &mut App) {
    let all = from.export_all().unwrap();
    assert_eq!(to.import(all.text).unwrap().refused, Vec::<String>::new());
}

pub(crate) fn meet(one: &mut App, two: &mut App) {
    carry(one, two);
    carry(two, one);
}

/// The list before flight, so many seconds a point, with some points found to be watched or worse; signed.
pub(crate) fn walked(app: &mut App, clock: &Clock, machine: &str, seconds: f64, found: &[(&str, Meaning)]) {
    walked_some(app, clock, machine, seconds, found, usize::MAX);
}

/// Only so many points of it; the others are left.
pub(crate) fn walked_some(
    app: &mut App,
    clock: &Clock,
    machine: &str,
    seconds: f64,
    found: &[(&str, Meaning)],
    most: usize,
) {
    let walk = app.walk(machine.into(), "before-flight".into()).unwrap();
    for point in walk.stations.iter().flat_map(|station| &station.points).take(most) {
        let means = found.iter().find(|(id, _)| *id == point.id).map(|(_, means)| *means);
        let given = answer(&walk, &point.id, means.unwrap_or(Meaning::Serviceable));
        app.answer(walk.id.clone(), point.id.clone(), Some(given), seconds).unwrap();
    }
    clock.forward(TimeDelta::minutes(10));
    app.sign(walk.id, PIN.into()).unwrap();
}
