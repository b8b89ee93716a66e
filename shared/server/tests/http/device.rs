//! Invented devices that write records and sign requests.

use std::sync::atomic::{AtomicI64, AtomicU64, Ordering};

use axum::body::Body as HttpBody;
use axum::http::Request;
use chrono::{DateTime, NaiveDate, TimeDelta};
use uuid::Uuid;
use witnessmark_core::record::*;
use witnessmark_sync::message::{Unsigned, sign};

/// What the server is called in these tests.
pub const HOST: &str = "school.test:8443";

static MOMENT: AtomicI64 = AtomicI64::new(0);
static NONCE: AtomicU64 = AtomicU64::new(0);

/// A device, its holder and its courier key.
pub struct Device {
    pub seed: SigningSeed,
    pub courier: SigningSeed,
    pub person: Uuid,
    pub name: String,
    pub records: Vec<Record>,
    author: Author,
}

impl Device {
    /// The first record of one is written: it states its key.
    pub fn new(n: u8) -> Self {
        Self::of_person(n, n)
    }

    pub fn of_person(n: u8, person: u8) -> Self {
        let mut device = Self {
            seed: SigningSeed::from_bytes(&[n; 32]),
            courier: SigningSeed::from_bytes(&[n + 100; 32]),
            person: Uuid::from_bytes([person; 16]),
            name: format!("Invented pilot {person}"),
            records: Vec::new(),
            author: Author::default(),
        };
        let (person, name, key) = (device.person, device.name.clone(), device.seed.jwk());
        device.write(Body::Member(Member { person, name, key, invented: true }));
        device
    }

    pub fn id(&self) -> DeviceId {
        self.seed.device()
    }

    pub fn write(&mut self, body: Body) -> Record {
        // Each later than all before, whoever writes, so that records follow each other as written.
        let n = MOMENT.fetch_add(1, Ordering::Relaxed);
        let at = DateTime::parse_from_rfc3339("2026-05-02T08:00:00+02:00").unwrap() + TimeDelta::seconds(n);
        let mut salt = [0; 10];
        salt[..8].copy_from_slice(&n.to_be_bytes());
        let record = self.author.write(&body, None, at, &salt, &self.seed).unwrap();
        let here = Some(Position { seq: record.payload.seq, digest: record.digest });
        let clock = record.payload.clock;
        self.author = Author { last: here, last_of: here, clock, seen: self.author.seen.clone() };
        self.records.push(record.clone());
        record
    }

    /// Knows all of another's records.
    pub fn sees(&mut self, other: &Self) {
        self.author.seen.insert(other.id(), other.records.len() as u64);
    }

    /// Something of no consequence.
    pub fn says(&mut self, words: &str) -> Record {
        self.write(Body::Unknown { kind: "invented".into(), body: serde_json::json!({ "words": words }) })
    }

    pub fn joins(&mut self, school: Digest) -> Record {
        let courier = self.courier.jwk();
        self.write(Body::SchoolJoined(SchoolJoined { school, courier }))
    }

    pub fn admits(&mut self, school: Digest, who: &Self, role: Role) -> Record {
        self.admits_until(school, who, role, None)
    }

    pub fn admits_until(
        &mut self,
        school: Digest,
        who: &Self,
        role: Role,
        until: Option<NaiveDate>,
    ) -> Record {
        self.sees(who);
        self.write(Body::MemberAdmitted(MemberAdmitted {
            school,
            device: who.id(),
            person: who.person,
            name: who.name.clone(),
            role,
            from: NaiveDate::from_ymd_opt(2026, 1, 1).unwrap(),
            until,
        }))
    }

    pub fn revokes(&mut self, device: &Self) -> Record {
        self.write(Body::Revoked(Revoked { device: device.id(), reason: "lost".into() }))
    }
}

/// A request as it will be signed.
#[derive(Clone)]
pub struct Ask {
    pub method: &'static str,
    pub path: String,
    pub host: String,
    pub body: Vec<u8>,
    pub headers: Vec<(&'static str, String)>,
    pub created: i64,
    pub nonce: String,
}

impl Ask {
    pub fn new(method: &'static str, path: &str, created: i64) -> Self {
        let nonce = format!("nonce-{:08}", NONCE.fetch_add(1, Ordering::Relaxed));
        let host = HOST.to_owned();
        Self { method, path: path.into(), host, body: Vec::new(), headers: Vec::new(), created, nonce }
    }

    pub fn body(self, body: impl Into<Vec<u8>>) -> Self {
        Self { body: body.into(), ..self }
    }

    pub fn header(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.headers.push((name, value.into()));
        self
    }

    pub fn unsigned(&self) -> Request<HttpBody> {
        let mut request = Request::builder().method(self.method).uri(&self.path).header("host", &self.host);
        for (name, value) in &self.headers {
            request = request.header(*name, value);
        }
        request.body(self.body.clone().into()).unwrap()
    }

    pub fn signed(&self, seed: &SigningSeed) -> Request<HttpBody> {
        let (path, query) = match self.path.split_once('?') {
            Some((path, query)) => (path, Some(query)),
            None => (self.path.as_str(), None),
        };
        let unsigned = Unsigned { method: self.method, authority: &self.host, path, query, body: &self.body };
        let headers = sign(&unsigned, self.created, &self.nonce, seed).unwrap();
        let mut request = self.unsigned();
        for (name, value) in headers.each() {
            request.headers_mut().insert(name, value.parse().unwrap());
        }
        request
    }
}
