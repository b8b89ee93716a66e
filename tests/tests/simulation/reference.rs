//! A server of the protocol, as short as it can be: records in a list, the tree over them, a key. Nothing
//! of the shipped server is in it. Its parts lie open, so that a test can make it lie.

use std::collections::BTreeSet;
use std::sync::Arc;

use chrono::DateTime;
use witnessmark_app::Request;
use witnessmark_core::record::{
    DeviceId, Digest, Envelope, Jwk, Record, Signature, SigningSeed, Trust, read_bundle,
};
use witnessmark_sync::checkpoint::Checkpoint;
use witnessmark_sync::client::Answer;
use witnessmark_sync::merkle::Tree;
use witnessmark_sync::message::{Headers, Unsigned, read};
use witnessmark_sync::note::Verifier;
use witnessmark_sync::wire::{LogLine, Proof, Pushed, Refusal, Refused, Taken, WireFault};

/// Whoever answers requests made to the school's address.
pub trait Serves {
    /// The answer to a request, at this many seconds since 1970.
    fn answer(&mut self, request: &Request, now: i64) -> Answer;

    /// Stops and starts anew from what it keeps.
    fn restart(&mut self);

    /// Its log.
    fn log(&mut self) -> Vec<Digest>;

    /// The key that it signs with, as devices keep it.
    fn verifier(&self) -> String;
}

/// How many lines a page has, and how far a clock may be off, seconds.
const PAGE: usize = 16;
const WINDOW: u64 = 300;

/// The reference server.
pub struct Reference {
    pub school: Digest,
    pub seed: SigningSeed,
    /// Envelopes with what they say, where they say anything.
    pub log: Vec<(Envelope, Option<Record>)>,
    pub nonces: BTreeSet<String>,
    pub page: usize,
    /// What the log says of people, as long as nothing was added to it.
    trust: Option<Arc<Trust>>,
}

impl Reference {
    pub fn new(school: Digest, seed: SigningSeed, founding: &[Record]) -> Self {
        let log = Vec::new();
        let mut server = Self { school, seed, log, nonces: BTreeSet::new(), page: PAGE, trust: None };
        founding.iter().for_each(|record| server.append(record.envelope.clone()));
        server
    }

    /// Appends whatever it is.
    pub fn append(&mut self, envelope: Envelope) {
        self.log.push((envelope.clone(), Record::parse(envelope).ok()));
        self.trust = None;
    }

    pub fn digests(&self) -> Vec<Digest> {
        self.log.iter().map(|(envelope, _)| Digest::of(envelope.payload.as_bytes())).collect()
    }

    fn trust(&mut self) -> Arc<Trust> {
        let records = self.log.iter().filter_map(|(_, record)| record.as_ref());
        Arc::clone(self.trust.get_or_insert_with(|| Arc::new(Trust::from_checked(records))))
    }

    pub fn tree(&self) -> Tree {
        let mut tree = Tree::default();
        self.digests().iter().for_each(|digest| tree.push(&digest.0));
        tree
    }

    /// Its signed word on its log.
    pub fn checkpoint(&self) -> String {
        let size = self.log.len() as u64;
        let origin = Checkpoint::origin(&self.school);
        Checkpoint { origin, size, root: self.tree().root(size).unwrap() }.sign(&self.seed).unwrap()
    }

    /// Whose request it is: a member's, signed just now and never seen before.
    fn device(&mut self, request: &Request, now: i64) -> Result<DeviceId, &'static str> {
        let headers = request.headers.iter().map(|(name, value)| (name.as_str(), value.as_bytes()));
        let claim = Headers::pick(headers).and_then(|headers| read(&headers)).map_err(|_| "unsigned")?;
        if claim.created.abs_diff(now) > WINDOW {
            return Err("clock");
        }
        let trust = self.trust();
        let (device, key) = trust.courier(&self.school, &claim.keyid).ok_or("unknown-key")?;
        let target = request.url.split_once("://").map_or("", |(_, rest)| rest);
        let (authority, path) = target.split_at(target.find('/').unwrap_or(target.len()));
        let (path, query) = path.split_once('?').map_or((path, None), |(path, query)| (path, Some(query)));
        let unsigned = Unsigned { method: request.method, authority, path, query, body: &request.body };
        claim.verify(&unsigned, &Jwk::from_bytes(key.as_bytes())).map_err(|_| "forged")?;
        if !self.nonces.insert(claim.nonce.clone()) {
            return Err("replayed");
        }
        let day = DateTime::from_timestamp(now, 0).unwrap().date_naive();
        trust.role_on(&self.school, device, day).map(|_| device.clone()).ok_or("not-a-member")
    }

    fn page(&self, from: usize, whole: bool, device: &DeviceId) -> Answer {
        let mut body = Vec::new();
        for (envelope, record) in self.log.iter().skip(from).take(self.page) {
            let own = record.as_ref().is_some_and(|record| record.payload.device == *device);
            let digest = Digest::of(envelope.payload.as_bytes());
            let line =
                if own && !whole { LogLine::Have { have: digest } } else { LogLine::Whole(envelope.clone()) };
            serde_json::to_writer(&mut body, &line).unwrap();
            body.push(b'\n');
        }
        ok(200, body)
    }

    fn take(&mut self, lines: &[u8]) -> Pushed {
        let mut pushed = Pushed::default();
        let Ok(bundle) = read_bundle(std::str::from_utf8(lines).unwrap_or_default()) else { return pushed };
        for (line, record) in bundle.records {
            if let Some(index) = self.digests().iter().position(|digest| *digest == record.digest) {
                pushed.taken.push(Taken { digest: record.digest, index: index as u64 });
                continue;
            }
            // A device's statement of its own key speaks for itself.
            let trust = match self.trust().standing(&record.payload.device) {
                Some(_) => self.trust(),
                None => Arc::new(Trust::from_records([&record])),
            };
            let kind = match trust.check(&record) {
                Signature::Good => {
                    let index = self.log.len() as u64;
                    self.append(record.envelope.clone());
                    pushed.taken.push(Taken { digest: record.digest, index });
                    continue;
                }
                Signature::Revoked => Refusal::Revoked,
                Signature::UnknownKey => Refusal::UnknownKey,
                _ => Refusal::BadSignature,
            };
            let (message, hint) = (kind.name().to_owned(), "Look into it.".to_owned());
            let line = u32::try_from(line).unwrap();
            pushed.refused.push(Refused { line, digest: Some(record.digest), kind, message, hint });
        }
        pushed
    }

    /// 200 where the root has admitted whoever shows these records, which then are in the log.
    fn introduce(&mut self, lines: &[u8]) -> u16 {
        let Ok(bundle) = read_bundle(std::str::from_utf8(lines).unwrap_or_default()) else { return 400 };
        let shown: Vec<Record> = bundle.records.into_iter().map(|(_, record)| record).collect();
        let Some(device) = shown.first().map(|record| record.payload.device.clone()) else { return 400 };
        let trust = self.trust();
        let school = trust.school(&self.school);
        if school.is_none_or(|school| school.standing_term(&device).is_none()) {
            return 202;
        }
        self.take(lines);
        200
    }
}

impl Serves for Reference {
    fn answer(&mut self, request: &Request, now: i64) -> Answer {
        let target = request.url.split_once("://").map_or("", |(_, rest)| rest);
        let path = target.find('/').map_or("", |at| &target[at..]).to_owned();
        let (path, query) = path.split_once('?').unwrap_or((&path, ""));
        let number = |name: &str| {
            query.split('&').find_map(|pair| pair.strip_prefix(name)?.strip_prefix('=')?.parse::<u64>().ok())
        };
        match (request.method, path) {
            ("GET", "/v1/checkpoint") => return ok(200, self.checkpoint().into_bytes()),
            ("POST", "/v1/waiting") => return ok(self.introduce(&request.body), Vec::new()),
            _ => {}
        }
        let device = match self.device(request, now) {
            Ok(device) => device,
            Err(kind) => return fault(401, kind),
        };
        match (request.method, path) {
            ("GET", "/v1/log") => {
                self.page(number("from").unwrap_or(0) as usize, query.contains("own=whole"), &device)
            }
            ("POST", "/v1/records") => ok(200, serde_json::to_vec(&self.take(&request.body)).unwrap()),
            ("GET", "/v1/proof/consistency") => {
                let (from, to) = (number("from").unwrap_or(0), number("to").unwrap_or(0));
                match self.tree().consistency(from, to) {
                    Some(path) => ok(200, serde_json::to_vec(&Proof { index: None, path }).unwrap()),
                    None => fault(404, "not-found"),
                }
            }
            _ => fault(404, "not-found"),
        }
    }

    fn restart(&mut self) {}

    fn log(&mut self) -> Vec<Digest> {
        self.digests()
    }

    fn verifier(&self) -> String {
        Verifier::new(&Checkpoint::origin(&self.school), &self.seed.jwk()).unwrap().to_string()
    }
}

pub fn ok(status: u16, body: Vec<u8>) -> Answer {
    Answer { status, body, ..Answer::default() }
}

pub fn fault(status: u16, kind: &str) -> Answer {
    let (kind, message, hint) = (kind.to_owned(), kind.to_owned(), "Look into it.".to_owned());
    ok(status, serde_json::to_vec(&WireFault { kind, message, hint }).unwrap())
}
