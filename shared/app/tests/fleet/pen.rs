//! Somebody's records, written without an app, so that years of looks are there in a moment.

use chrono::{DateTime, FixedOffset, TimeDelta};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Author, Body, ComponentMoved, Digest, Finding, Inspection, Member, Position, Record, Service, SigningSeed,
};

use crate::common::bramble;

/// The component that the tests are about, and a point of it.
pub const PART: &str = "exhaust";
pub const POINT: &str = "exhaust-body";

pub struct Pen {
    seed: SigningSeed,
    author: Author,
    now: DateTime<FixedOffset>,
    lines: Vec<String>,
    /// The last of this author's records about each machine.
    last_of: std::collections::BTreeMap<Uuid, Position>,
}

impl Pen {
    pub fn new(secret: u8, name: &str) -> Self {
        let now = DateTime::parse_from_rfc3339("2024-03-02T08:00:00+01:00").unwrap();
        let seed = SigningSeed::from_bytes(&[secret; 32]);
        let mut pen =
            Self { seed, author: Author::default(), now, lines: Vec::new(), last_of: Default::default() };
        let member = Member {
            person: Uuid::from_u128(u128::from(secret)),
            name: name.into(),
            key: pen.seed.jwk(),
            invented: false,
        };
        pen.write(None, Body::Member(member));
        pen
    }

    fn write(&mut self, machine: Option<Uuid>, body: Body) -> Record {
        self.now += TimeDelta::minutes(30);
        self.author.last_of = machine.and_then(|machine| self.last_of.get(&machine).cloned());
        let salt = (self.lines.len() as u64).to_be_bytes();
        let salt: Vec<u8> = salt.into_iter().chain([7, 7]).collect();
        let salt = salt.as_slice().try_into().unwrap();
        let record = self.author.write(&body, machine, self.now, salt, &self.seed).unwrap();
        let place = |seq| Position { seq, digest: record.digest };
        self.author.last = Some(place(record.payload.seq));
        self.author.clock = record.payload.clock;
        if let Some(machine) = machine {
            self.last_of.insert(machine, place(record.payload.of_seq));
        }
        self.lines.push(record.line());
        record
    }

    pub fn machine(&mut self, number: u128) -> Uuid {
        let id = Uuid::from_u128(number);
        let described =
            witnessmark_core::record::Machine { hours: 0.0, name: format!("Invented {number}"), ..bramble() };
        self.write(Some(id), Body::Machine(described));
        id
    }

    pub fn invented_machine(&mut self, number: u128) -> Uuid {
        let id = Uuid::from_u128(number);
        let described = witnessmark_core::record::Machine { hours: 0.0, invented: true, ..bramble() };
        self.write(Some(id), Body::Machine(described));
        id
    }

    pub fn look(&mut self, machine: Uuid, hours: f64, found: &[(&str, Meaning)]) {
        let finding = |(point, means): &(&str, Meaning)| Finding {
            point: (*point).to_owned(),
            station: "exhaust".into(),
            component: PART.into(),
            title: format!("Look at {point}"),
            means: *means,
            passing: false,
            answer: Some("seen".into()),
            words: format!("{means:?}"),
            measured: None,
            band: None,
            note: String::new(),
            photos: Vec::new(),
            at: self.now,
            seconds: 8.0,
            before: Vec::new(),
            torque: None,
        };
        let inspection = Inspection {
            occasion: "before-flight".into(),
            list: Digest::of(b"list"),
            language: "en".into(),
            started: self.now,
            finished: self.now,
            hours,
            flights: 1,
            findings: found.iter().map(finding).collect(),
            left: Vec::new(),
            stepped_back: Vec::new(),
            hurried: Vec::new(),
            job: None,
        };
        self.write(Some(machine), Body::Inspection(inspection));
    }

    pub fn fit(&mut self, machine: Uuid, component: u128, own: f64, hours: f64) {
        let time = |hours: f64| Service { hours, ..Service::default() };
        let body = ComponentMoved {
            component: Uuid::from_u128(component),
            part: PART.into(),
            name: "Invented exhaust".into(),
            serial: String::new(),
            fitted: true,
            own: time(own),
            service: time(hours),
        };
        self.write(Some(machine), Body::ComponentMoved(body));
    }

    /// All of it, as a bundle.
    pub fn bundle(&self) -> String {
        self.lines.join("\n")
    }
}

/// Machines whose exhausts crack between two looks, and some that haven't cracked: looked at every 5 h.
pub fn cracking(pen: &mut Pen, cracked_at: &[f64], whole_at: &[f64]) {
    let last = |hours: &f64| (*hours / 5.0).floor() * 5.0;
    for (n, hours) in cracked_at.iter().chain(whole_at).enumerate() {
        let machine = pen.machine(1 + n as u128);
        let mut at = 5.0;
        while at <= last(hours) {
            pen.look(machine, at, &[(POINT, Meaning::Serviceable)]);
            at += 5.0;
        }
        if n < cracked_at.len() {
            pen.look(machine, at, &[(POINT, Meaning::Unserviceable)]);
        }
    }
}
