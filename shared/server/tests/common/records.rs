//! Invented records, signed.

use chrono::DateTime;
use witnessmark_core::record::{Author, Body, Position, Record, SigningSeed};

/// An invented device's records, without end.
pub struct Records {
    seed: SigningSeed,
    author: Author,
}

impl Records {
    pub fn of(device: u8) -> Self {
        Self { seed: SigningSeed::from_bytes(&[device; 32]), author: Author::default() }
    }
}

impl Iterator for Records {
    type Item = Record;

    fn next(&mut self) -> Option<Record> {
        let n = self.author.last.map_or(1, |last| last.seq + 1);
        let body = Body::Unknown {
            kind: "invented".into(),
            body: serde_json::json!({ "n": n, "words": "As long as what a pilot writes after a look. ".repeat(8) }),
        };
        let at = DateTime::parse_from_rfc3339("2026-05-02T12:00:00+02:00").unwrap();
        let mut salt = [7; 10];
        salt[..8].copy_from_slice(&n.to_be_bytes());
        let record = self.author.write(&body, None, at, &salt, &self.seed).unwrap();
        let here = Some(Position { seq: n, digest: record.digest });
        self.author = Author { last: here, last_of: here, ..self.author.clone() };
        Some(record)
    }
}
