//! Another's device, that writes records as the test wants them: years of a machine in a moment.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Author, Body, Digest, Finding, Inspection, JobBegun, Member, Position, ReadingTaken, ReadingsTaken,
    Record, Service, SigningSeed, TimeLogged, machine_id,
};
use witnessmark_core::runlog::{Mapping, TimeForm};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::{Store, StoreFault};

use super::bramble;

/// Hours and peak head temperatures, °C: they climb, the last but one far off.
pub const CLIMBING: [(f64, f64); 12] = [
    (5.0, 181.0),
    (9.5, 184.0),
    (14.0, 180.0),
    (20.5, 186.0),
    (26.0, 188.0),
    (31.0, 185.0),
    (38.5, 191.0),
    (44.0, 190.0),
    (52.0, 196.0),
    (57.5, 193.0),
    (63.0, 214.0),
    (70.0, 199.0),
];

/// Writes, each record after its last.
pub struct Pen {
    seed: SigningSeed,
    author: Author,
    of: BTreeMap<Option<Uuid>, Position>,
    pub records: Vec<Record>,
}

pub fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn morning(day: NaiveDate) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(&format!("{day}T07:00:00+02:00")).unwrap()
}

impl Pen {
    pub fn new() -> Self {
        Self::of(7, "Owner", true, morning(day("2026-01-01")))
    }

    /// Somebody's, by a secret of their own.
    pub fn of(secret: u8, name: &str, invented: bool, at: DateTime<FixedOffset>) -> Self {
        let seed = SigningSeed::from_bytes(&[secret; 32]);
        let mut pen = Self { seed, author: Author::default(), of: BTreeMap::new(), records: Vec::new() };
        let (person, key) = (Uuid::from_u128(secret.into()), pen.seed.jwk());
        pen.write_at(None, at, &Body::Member(Member { person, name: name.into(), key, invented }));
        pen
    }

    pub fn write(&mut self, about: Option<Uuid>, on: NaiveDate, body: &Body) -> Digest {
        self.write_at(about, morning(on), body)
    }

    pub fn write_at(&mut self, about: Option<Uuid>, at: DateTime<FixedOffset>, body: &Body) -> Digest {
        self.author.last_of = self.of.get(&about).copied();
        let salt = (self.records.len() as u128).to_be_bytes();
        let salt: &[u8; 10] = salt[6..].try_into().unwrap();
        let record = self.author.write(body, about, at, salt, &self.seed).unwrap();
        let place = |seq| Position { seq, digest: record.digest };
        self.author.last = Some(place(record.payload.seq));
        self.author.clock = record.payload.clock;
        self.of.insert(about, place(record.payload.of_seq));
        let digest = record.digest;
        self.records.push(record);
        digest
    }

    /// Registers a machine of the demonstration's type with so many hours.
    pub fn machine(&mut self, name: &str, hours: f64) -> Uuid {
        let on = day("2026-01-02");
        let ms = morning(on).timestamp_millis().unsigned_abs();
        let machine = machine_id(&self.seed.device(), self.author.last.unwrap().seq + 1, ms);
        let described = witnessmark_core::record::Machine { name: name.into(), hours, ..bramble() };
        self.write(Some(machine), on, &Body::Machine(described));
        machine
    }

    /// An engine log with one figure.
    pub fn log(&mut self, machine: Uuid, hours: f64, measure: &str, value: Quantity, outside: Option<f64>) {
        let name = format!("log-{}", self.records.len());
        let body = ReadingsTaken {
            file: Digest::of(name.as_bytes()),
            name,
            rows: 100,
            unread: 0,
            mapping: Mapping {
                separator: ',',
                decimal: '.',
                time: "time".into(),
                time_form: TimeForm::Seconds,
                columns: Vec::new(),
            },
            hours,
            on: day("2026-03-03"),
            outside: outside.map(|air| Quantity::new(air, Unit::Celsius)),
            readings: vec![ReadingTaken { measure: measure.into(), value, left_out: 0 }],
        };
        self.write(Some(machine), day("2026-05-01"), &Body::ReadingsTaken(body));
    }

    pub fn cht(&mut self, machine: Uuid, hours: f64, celsius: f64, outside: Option<f64>) {
        self.log(machine, hours, "peak-cht", Quantity::new(celsius, Unit::Celsius), outside);
    }

    /// A look at one point.
    pub fn look(&mut self, machine: Uuid, hours: f64, on: NaiveDate, finding: Finding) -> Digest {
        let body = Inspection {
            occasion: "before-flight".into(),
            list: Digest::of(b"list"),
            language: "en".into(),
            started: morning(on),
            finished: morning(on),
            hours,
            flights: 1,
            findings: vec![finding],
            left: Vec::new(),
            stepped_back: Vec::new(),
            hurried: Vec::new(),
            job: None,
        };
        self.write(Some(machine), on, &Body::Inspection(body))
    }

    pub fn job(&mut self, machine: Uuid, hours: f64, title: &str) -> Digest {
        let body = JobBegun {
            jobs: vec!["carburettor-cleaned".into()],
            title: title.into(),
            disturbed: BTreeMap::new(),
            points: Vec::new(),
            independent: Vec::new(),
            follow_ups: Vec::new(),
            service: Service { hours, ..Service::default() },
            note: String::new(),
        };
        self.write(Some(machine), day("2026-04-01"), &Body::JobBegun(body))
    }

    pub fn flown(&mut self, machine: Uuid, hours: f64, litres: f64) -> Digest {
        let body = TimeLogged {
            added: Service { hours, flights: 1, tanks: 0 },
            reading: None,
            fuel: Some(Quantity::new(litres, Unit::Litre)),
            note: String::new(),
        };
        self.write(Some(machine), day("2026-04-02"), &Body::TimeLogged(body))
    }

    /// A database that holds all that was written.
    pub fn kept(&self) -> Store {
        let mut store = Store::open(":memory:").unwrap();
        store
            .write(|tx| {
                for record in &self.records {
                    tx.append(record)?;
                }
                Ok::<_, StoreFault>(())
            })
            .unwrap();
        store
    }
}

/// What was seen at a point.
pub fn seen(point: &str, means: Meaning) -> Finding {
    Finding {
        point: point.into(),
        station: "engine".into(),
        component: "engine".into(),
        title: point.into(),
        means,
        passing: false,
        answer: None,
        words: "as seen".into(),
        measured: None,
        band: None,
        note: String::new(),
        photos: Vec::new(),
        at: morning(day("2026-04-01")),
        seconds: 5.0,
        before: Vec::new(),
        torque: None,
    }
}

/// What was measured at a point.
pub fn measured(point: &str, value: f64, unit: Unit) -> Finding {
    Finding { measured: Some(Quantity::new(value, unit)), ..seen(point, Meaning::Serviceable) }
}
