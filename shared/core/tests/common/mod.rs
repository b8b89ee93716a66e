//! A small world for the laws: named devices that write records and now and then meet, so that
//! each knows only what it has seen.

#![allow(dead_code, unused_imports)]

pub mod plans;
pub mod story;

pub use std::collections::{BTreeMap, BTreeSet};

pub use chrono::{DateTime, FixedOffset, TimeDelta};
pub use uuid::Uuid;
pub use witnessmark_core::history::{BEFORE_FLIGHT, History};
use witnessmark_core::list::{Limits, Meaning, Sheet, read_sheet};
pub use witnessmark_core::record::{
    Author, Body, Correction, DeviceId, Digest, Finding, Inspection, Left, LimitConfirmed, Machine, Member,
    Position, Record, Rectified, Reserve, Revoked, SigningSeed, Trust,
};
use witnessmark_core::verdict::{Question, Verdict, judge};

pub const DAY: &str = "2026-05-02T12:00:00+02:00";

pub fn at(text: &str) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(text).unwrap()
}

/// The machine that all is about.
pub fn machine() -> Uuid {
    Uuid::from_u128(0x0192_0000_0000_7000_8000_0000_0000_0001)
}

pub fn other_machine() -> Uuid {
    Uuid::from_u128(0x0192_0000_0000_7000_8000_0000_0000_0002)
}

/// One phone.
pub struct Device {
    pub seed: SigningSeed,
    pub knows: BTreeSet<usize>,
    /// How far its clock is off.
    pub skew: TimeDelta,
}

/// Some phones and all they wrote.
pub struct World {
    pub devices: Vec<Device>,
    pub records: Vec<Record>,
    /// What each record's author knew when writing it, by place in `records`.
    pub knew: Vec<BTreeSet<usize>>,
    pub now: DateTime<FixedOffset>,
}

impl std::fmt::Debug for World {
    /// A failing story is read by its records.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let lines = self.records.iter().map(|record| &record.envelope.payload);
        f.debug_list().entries(lines).finish()
    }
}

impl World {
    /// So many phones, of one person each, that have not met.
    pub fn new(phones: u8) -> Self {
        Self::of_people(&(0..phones).collect::<Vec<_>>())
    }

    /// One phone for each entry, which is its person's number.
    pub fn of_people(people: &[u8]) -> Self {
        let devices = (1..).take(people.len()).map(|n| Device {
            seed: SigningSeed::from_bytes(&[n; 32]),
            knows: BTreeSet::new(),
            skew: TimeDelta::zero(),
        });
        let mut world =
            Self { devices: devices.collect(), records: Vec::new(), knew: Vec::new(), now: at(DAY) };
        for (n, person) in people.iter().enumerate() {
            let member = Member {
                person: Uuid::from_u128(u128::from(*person) + 1),
                name: format!("Invented pilot {person}"),
                key: world.devices[n].seed.jwk(),
                invented: true,
            };
            world.write(n, None, Body::Member(member));
        }
        world
    }

    /// One phone that has described its machine and looked it over today: fit.
    pub fn fit() -> Self {
        let mut world = Self::new(1);
        world.write(0, Some(machine()), Body::Machine(described()));
        world.write(0, Some(machine()), look(vec![]));
        world
    }

    pub fn id(&self, device: usize) -> DeviceId {
        self.devices[device].seed.device()
    }

    /// The next record of a phone, from what it knows; a minute passes.
    pub fn write(&mut self, device: usize, machine: Option<Uuid>, body: Body) -> Digest {
        self.now += TimeDelta::minutes(1);
        let own = self.id(device);
        let phone = &self.devices[device];
        let known: Vec<&Record> = phone.knows.iter().map(|n| &self.records[*n]).collect();
        let position = |seq: fn(&Record) -> u64, of: &dyn Fn(&Record) -> bool| {
            let mine = known.iter().filter(|r| r.payload.device == own && of(r));
            mine.max_by_key(|r| seq(r)).map(|r| Position { seq: seq(r), digest: r.digest })
        };
        let mut seen: BTreeMap<DeviceId, u64> = BTreeMap::new();
        for record in known.iter().filter(|r| r.payload.device != own) {
            let latest = seen.entry(record.payload.device.clone()).or_default();
            *latest = (*latest).max(record.payload.seq);
        }
        let author = Author {
            last: position(|r| r.payload.seq, &|_| true),
            last_of: position(|r| r.payload.of_seq, &|r| r.payload.machine == machine),
            seen,
            clock: known.iter().map(|r| r.payload.clock).max().unwrap_or_default(),
        };
        let salt = (self.records.len() as u64).to_be_bytes();
        let salt: Vec<u8> = salt.into_iter().chain([7, 7]).collect();
        let time = self.now + phone.skew;
        let record =
            author.write(&body, machine, time, salt.as_slice().try_into().unwrap(), &phone.seed).unwrap();
        let digest = record.digest;
        self.knew.push(phone.knows.clone());
        self.records.push(record);
        self.devices[device].knows.insert(self.records.len() - 1);
        digest
    }

    /// Two phones tell each other all they know.
    pub fn meet(&mut self, one: usize, two: usize) {
        let both: BTreeSet<usize> =
            self.devices[one].knows.union(&self.devices[two].knows).copied().collect();
        self.devices[one].knows = both.clone();
        self.devices[two].knows = both;
    }

    /// The machine's history as one phone sees it.
    pub fn history_of(&self, device: usize) -> History {
        let known: Vec<&Record> = self.devices[device].knows.iter().map(|n| &self.records[*n]).collect();
        History::of(machine(), known.iter().copied(), &Trust::from_records(known.iter().copied()))
    }

    /// The machine's history as told by all records.
    pub fn history(&self) -> History {
        History::of(machine(), &self.records, &Trust::from_records(&self.records))
    }

    /// The verdict of someone who has all records, a minute later.
    pub fn verdict(&self) -> Verdict {
        verdict_of(&self.history(), &confirmed_sheet(), self.now + TimeDelta::minutes(1))
    }
}

pub fn verdict_of(history: &History, sheet: &Sheet, now: DateTime<FixedOffset>) -> Verdict {
    judge(Question {
        history,
        sheet: Some(sheet),
        now,
        people: &BTreeMap::new(),
        persons: &BTreeMap::new(),
        split: &[],
        refused: 0,
        limits: &Limits::default(),
    })
}

/// A data sheet whose one critical band ends as given.
pub fn sheet(low: &str, high: &str) -> Sheet {
    let text = format!(
        "id = \"invented\"\nname = \"Invented\"\nkind = \"two-stroke\"\n\
         [bands.head-nut-torque]\ncritical = true\nlow = {{ {low} unit = \"N.m\" }}\nhigh = {{ {high} unit = \"N.m\" }}\n"
    );
    read_sheet("invented.toml", &text).unwrap()
}

pub const SOURCED: &str = "value = 14, source = { document = \"invented manual\", page = \"1\" },";
pub const UNCONFIRMED: &str = "value = 14, unconfirmed = \"common practice, no source\",";
pub const NO_NUMBER: &str = "unconfirmed = \"nobody knows\",";

pub fn confirmed_sheet() -> Sheet {
    sheet(SOURCED, SOURCED)
}

pub fn described() -> Machine {
    Machine {
        wing_load: None,
        weight: None,
        name: "Invented machine".into(),
        engine: "invented".into(),
        fitted: BTreeMap::from([("reserve".into(), String::new())]),
        reserve: Some(Reserve { repacked_on: Some(at(DAY).date_naive()), every_days: 365 }),
        hours: 10.0,
        flights: 20,
        note: String::new(),
        invented: true,
    }
}

pub fn finding(point: &str, means: Meaning) -> Finding {
    Finding {
        point: point.into(),
        station: "engine".into(),
        component: "engine".into(),
        title: format!("Look at {point}"),
        means,
        passing: false,
        answer: Some("seen".into()),
        words: format!("{means:?}"),
        measured: None,
        band: None,
        note: String::new(),
        photos: Vec::new(),
        at: at(DAY),
        seconds: 8.0,
        before: Vec::new(),
        torque: None,
    }
}

pub fn passing(point: &str, means: Meaning) -> Finding {
    Finding { passing: true, ..finding(point, means) }
}

/// A full look before flight with these findings and nothing left.
pub fn look(findings: Vec<Finding>) -> Body {
    inspection(BEFORE_FLIGHT, findings, vec![])
}

pub fn inspection(occasion: &str, findings: Vec<Finding>, left: Vec<Left>) -> Body {
    Body::Inspection(Inspection {
        occasion: occasion.into(),
        list: Digest::of(occasion.as_bytes()),
        language: "en".into(),
        started: at(DAY),
        finished: at(DAY),
        hours: 10.0,
        flights: 20,
        findings,
        left,
        stepped_back: Vec::new(),
        hurried: Vec::new(),
        job: None,
    })
}

pub fn left(point: &str, must: bool) -> Left {
    Left { point: point.into(), title: format!("Look at {point}"), must }
}

pub fn rectified(point: &str, opened_by: Digest) -> Body {
    Body::Rectified(Rectified { point: point.into(), opened_by, how: "renewed".into() })
}

pub fn correction(of: Digest, point: &str, means: Meaning) -> Body {
    Body::Correction(Correction {
        of,
        point: point.into(),
        title: format!("Look at {point}"),
        words: format!("{means:?} after all"),
        means,
        reason: "looked once more".into(),
    })
}

pub fn limit(low: Option<f64>, high: Option<f64>) -> Body {
    let quantity = |value: f64| {
        witnessmark_core::units::Quantity::new(value, witnessmark_core::units::Unit::NewtonMetre)
    };
    Body::LimitConfirmed(LimitConfirmed {
        band: "head-nut-torque".into(),
        low: low.map(quantity),
        high: high.map(quantity),
        document: "invented manual".into(),
        page: "1".into(),
    })
}

pub fn vouched(device: DeviceId) -> Body {
    Body::Vouched(witnessmark_core::record::Vouched { device })
}

pub fn revoked(device: DeviceId) -> Body {
    Body::Revoked(Revoked { device, reason: "lost".into() })
}

pub fn unknown() -> Body {
    Body::Unknown { kind: "component-fitted".into(), body: serde_json::json!({ "part": "starter" }) }
}
