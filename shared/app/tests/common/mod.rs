//! A device whose clock and randomness the test holds.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing)]

pub mod pen;

use std::sync::{Arc, Mutex};

use chrono::{DateTime, FixedOffset, TimeDelta};
use witnessmark_app::views::{AskView, Walk, WalkProgress};
use witnessmark_app::{App, Fault, Keychain, Platform};
use witnessmark_core::list::{Given, Meaning};
use witnessmark_core::record::{Machine, Reserve};
use witnessmark_core::units::Quantity;
use witnessmark_store::Store;

pub const PIN: &str = "271828";

#[derive(Clone)]
pub struct Clock(Arc<Mutex<DateTime<FixedOffset>>>);

impl Clock {
    pub fn at(text: &str) -> Self {
        Self(Arc::new(Mutex::new(DateTime::parse_from_rfc3339(text).unwrap())))
    }

    pub fn forward(&self, by: TimeDelta) {
        *self.0.lock().unwrap() += by;
    }

    pub fn now(&self) -> DateTime<FixedOffset> {
        *self.0.lock().unwrap()
    }
}

/// A keychain in memory, shared by the test.
#[derive(Clone, Default)]
pub struct Chain(Arc<Mutex<std::collections::BTreeMap<String, [u8; 32]>>>);

impl Keychain for Chain {
    fn keep(&self, name: &str, secret: &[u8; 32]) -> Result<(), String> {
        self.0.lock().unwrap().insert(name.into(), *secret);
        Ok(())
    }

    fn secret(&self, name: &str) -> Result<Option<[u8; 32]>, String> {
        Ok(self.0.lock().unwrap().get(name).copied())
    }
}

pub struct Device {
    clock: Clock,
    drawn: Mutex<u64>,
    chain: Option<Chain>,
}

impl Platform for Device {
    fn now(&self) -> DateTime<FixedOffset> {
        self.clock.now()
    }

    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault> {
        for byte in bytes {
            // A counter through a mixer (SplitMix64): the same bytes in every run, never twice.
            let mut drawn = self.drawn.lock().unwrap();
            *drawn = drawn.wrapping_add(0x9E37_79B9_7F4A_7C15);
            let mut z = *drawn;
            z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
            z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
            *byte = (z ^ (z >> 31)) as u8;
        }
        Ok(())
    }

    fn keychain(&self) -> Option<&dyn Keychain> {
        self.chain.as_ref().map(|chain| chain as &dyn Keychain)
    }
}

pub fn platform(clock: &Clock, salt: u64, chain: Option<Chain>) -> Box<Device> {
    Box::new(Device { clock: clock.clone(), drawn: Mutex::new(salt), chain })
}

/// An app over a database in memory, its first start done.
pub fn begun(clock: &Clock) -> App {
    let mut app = App::new(Store::open(":memory:").unwrap(), platform(clock, 1, None)).unwrap();
    app.begin("Test Pilot".into(), PIN.into()).unwrap();
    app
}

pub fn bramble() -> Machine {
    Machine {
        wing_load: None,
        weight: None,
        name: "Thistle".into(),
        engine: "bramble-125".into(),
        fitted: [("reserve".to_owned(), "R-1".to_owned())].into(),
        reserve: Some(Reserve { repacked_on: Some("2026-01-10".parse().unwrap()), every_days: 365 }),
        hours: 12.5,
        flights: 20,
        note: String::new(),
        invented: false,
    }
}

/// Registers a machine and says its id.
pub fn register(app: &mut App, machine: Machine) -> String {
    app.machine_save(String::new(), Some(machine), PIN.into()).unwrap().card.id
}

/// The answer of a point that means `wanted`, or the mildest there is.
pub fn answer(walk: &Walk, point: &str, wanted: Meaning) -> Given {
    let point = walk.stations.iter().flat_map(|s| &s.points).find(|p| p.id == point).unwrap();
    match &point.ask {
        AskView::Words { answers } => {
            let found = answers.iter().find(|a| a.means == wanted);
            let found = found.or_else(|| answers.iter().find(|a| a.means == Meaning::Serviceable));
            Given::Words { answer: found.unwrap().id.clone() }
        }
        AskView::Torque(_) => unreachable!("tightened, not answered"),
        AskView::Value(ask) => {
            let unit = ask.units[0].code;
            let (low, high) = (ask.low, ask.high);
            let inside = match (low, high) {
                (Some(low), Some(high)) => (low + high) / 2.0,
                (Some(low), None) => low + 1.0,
                (None, Some(high)) => high / 2.0,
                (None, None) => 1.0,
            };
            let value = if wanted == Meaning::Serviceable { inside } else { low.unwrap_or(1.0) / 10.0 };
            Given::Value { value: Quantity::new(value, unit) }
        }
    }
}

/// Answers everything that is still to be looked at as serviceable, six seconds a point.
pub fn walk_on(app: &mut App, clock: &Clock, walk: &Walk) -> WalkProgress {
    let mut progress = walk.progress.clone();
    while let Some(point) = progress.current.clone() {
        clock.forward(TimeDelta::seconds(6));
        let given = answer(walk, &point, Meaning::Serviceable);
        progress = app.answer(walk.id.clone(), point, Some(given), 6.0).unwrap();
    }
    progress
}

/// Walks the whole list, all serviceable but the points named, and signs.
pub fn walk_and_sign(
    app: &mut App,
    clock: &Clock,
    machine: &str,
    occasion: &str,
    found: &[(&str, Meaning)],
) -> witnessmark_app::views::Signed {
    let walk = app.walk(machine.into(), occasion.into()).unwrap();
    for (point, means) in found {
        clock.forward(TimeDelta::seconds(6));
        let given = answer(&walk, point, *means);
        app.answer(walk.id.clone(), (*point).into(), Some(given), 6.0).unwrap();
    }
    let walk = app.walk(machine.into(), occasion.into()).unwrap();
    walk_on(app, clock, &walk);
    app.sign(walk.id, PIN.into()).unwrap()
}
