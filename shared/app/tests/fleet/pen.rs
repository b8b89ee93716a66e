//! Somebody's looks at one component, half an hour apart.

use chrono::{DateTime, FixedOffset, TimeDelta};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, ComponentMoved, Digest, Finding, Inspection, Record, Service};

use crate::common::{self, bramble};

/// The component that the tests are about, and a point of it.
pub const PART: &str = "exhaust";
pub const POINT: &str = "exhaust-body";

pub struct Pen {
    pen: common::pen::Pen,
    now: DateTime<FixedOffset>,
}

impl Pen {
    pub fn new(secret: u8, name: &str) -> Self {
        let now = DateTime::parse_from_rfc3339("2024-03-02T08:30:00+01:00").unwrap();
        Self { pen: common::pen::Pen::of(secret, name, false, now), now }
    }

    /// Half an hour after the last.
    fn write(&mut self, machine: Option<Uuid>, body: Body) {
        self.now += TimeDelta::minutes(30);
        self.pen.write_at(machine, self.now, &body);
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
        self.pen.records.iter().map(Record::line).collect::<Vec<_>>().join("\n")
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
