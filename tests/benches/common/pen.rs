//! A device that writes records, each after its last.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use uuid::Uuid;
use witnessmark_core::record::{Author, Body, Member, Position, Record, SigningSeed};

pub struct Pen {
    pub seed: SigningSeed,
    pub author: Author,
    of: BTreeMap<Option<Uuid>, Position>,
    written: u64,
}

impl Pen {
    pub fn new(seed: [u8; 32]) -> Self {
        let seed = SigningSeed::from_bytes(&seed);
        Self { seed, author: Author::default(), of: BTreeMap::new(), written: 0 }
    }

    /// Its first record, which states its key.
    pub fn member(&mut self, person: Uuid, at: DateTime<FixedOffset>) -> Record {
        let member = Member { person, name: "P".into(), key: self.seed.jwk(), invented: true };
        self.write(&Body::Member(member), None, at)
    }

    pub fn write(&mut self, body: &Body, about: Option<Uuid>, at: DateTime<FixedOffset>) -> Record {
        self.author.last_of = self.of.get(&about).copied();
        let salt = u128::from(self.written).to_be_bytes();
        let record = self.author.write(body, about, at, salt[6..].try_into().unwrap(), &self.seed).unwrap();
        let at = |seq| Position { seq, digest: record.digest };
        self.author.last = Some(at(record.payload.seq));
        self.author.clock = record.payload.clock;
        self.of.insert(about, at(record.payload.of_seq));
        self.written += 1;
        record
    }
}
