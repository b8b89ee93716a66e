//! Which records of a page are taken: the one acceptance rule ([`Trust::check`]), its two halves apart.
//! Signatures are checked one by one, strictly, on all cores; whether a key is known and not ended
//! is decided in the page's order, since earlier lines count for later ones.
//!
//! [`Trust::check`]: witnessmark_core::record::Trust::check

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use std::thread;

use ed25519_dalek::VerifyingKey;
use witnessmark_core::record::{Body, DeviceId, Digest, Envelope, Record, Signature, Trust};
use witnessmark_sync::wire::Refusal;

use super::{LONGEST, Members};

/// Fewer lines than this aren't worth a thread.
const WORTH: usize = 32;

/// Why a line isn't taken.
#[derive(Debug)]
pub(super) struct No {
    pub(super) digest: Option<Digest>,
    pub(super) kind: Refusal,
    pub(super) message: String,
}

/// A line's record with its body read, or why there is none.
pub(super) type Line = Result<(Record, Body), No>;

/// Reads lines, on all cores.
pub(super) fn read(lines: &[&[u8]]) -> Vec<Line> {
    spread(lines, |line| line_of(line))
}

fn line_of(line: &[u8]) -> Line {
    let no = |digest, kind, message| No { digest, kind, message };
    let unreadable = |why: String| no(None, Refusal::Unreadable, why);
    let text = str::from_utf8(line).map_err(|_| unreadable("the line is not UTF-8".into()))?;
    let envelope: Envelope =
        serde_json::from_str(text).map_err(|why| unreadable(format!("the line is no envelope: {why}")))?;
    let digest = Digest::of(envelope.payload.as_bytes());
    if envelope.payload.len() > LONGEST {
        let why = format!("the payload has {} bytes, {LONGEST} are taken", envelope.payload.len());
        return Err(no(Some(digest), Refusal::TooLarge, why));
    }
    let record =
        Record::parse(envelope).map_err(|why| no(Some(digest), Refusal::Unreadable, why.to_string()))?;
    let malformed = |why| format!("a record of kind {} can't say this: {why}", shown(&record.payload.kind));
    let body = record.payload.typed().map_err(|why| no(Some(digest), Refusal::Malformed, malformed(why)))?;
    Ok((record, body))
}

/// Judges records in their order.
pub(super) fn judge(read: Vec<Line>, members: &Arc<Members>) -> Vec<Line> {
    let stated = stated(&read);
    let signatures = spread(&read, |line| {
        let (record, _) = line.as_ref().ok()?;
        let device = &record.payload.device;
        let standing = members.trust().standing(device).map(|standing| standing.key);
        Some(record.check(&standing.or_else(|| stated.get(device).copied())?))
    });
    let mut judge =
        Judge { members: members.clone(), named: BTreeSet::new(), fresh: Vec::new(), ended: BTreeSet::new() };
    read.into_iter().zip(signatures).map(|(line, signature)| judge.one(line?, signature)).collect()
}

/// The keys that devices of this page state as their own. A device's name is its key's thumbprint, so
/// that there is but one.
fn stated(read: &[Line]) -> BTreeMap<DeviceId, VerifyingKey> {
    let members = read.iter().flatten().filter_map(|(record, body)| Some((record, own_key(record, body)?)));
    members.map(|(record, key)| (record.payload.device.clone(), key)).collect()
}

fn own_key(record: &Record, body: &Body) -> Option<VerifyingKey> {
    let Body::Member(member) = body else { return None };
    let key = member.key.verifying_key().ok()?;
    (member.key.thumbprint() == record.payload.device).then_some(key)
}

/// What is known, line by line.
struct Judge {
    members: Arc<Members>,
    /// Devices made known by this page.
    named: BTreeSet<DeviceId>,
    /// Records of this page that trust is made of, not in `members` yet.
    fresh: Vec<Record>,
    /// Devices whose end this page tells, not in `members` yet.
    ended: BTreeSet<DeviceId>,
}

impl Judge {
    fn one(&mut self, (record, body): (Record, Body), signature: Option<Signature>) -> Line {
        let no = |kind, message: &str| Err(No { digest: Some(record.digest), kind, message: message.into() });
        let device = &record.payload.device;
        let states = own_key(&record, &body).is_some();
        let known = self.members.trust().standing(device).is_some() || self.named.contains(device) || states;
        let signature = signature.filter(|_| known).unwrap_or(Signature::UnknownKey);
        if signature == Signature::Good && self.ended.contains(device) {
            self.members = Arc::new(self.members.with(std::mem::take(&mut self.fresh)));
            self.ended.clear();
        }
        match signature {
            Signature::Good if !self.members.trust().counts(&record) => {
                no(Refusal::Revoked, "the key was ended before this was signed")
            }
            Signature::Good => {
                self.learn(&record, &body, states);
                Ok((record, body))
            }
            Signature::UnknownKey => no(Refusal::UnknownKey, "no record says whose key signed this"),
            _ => no(Refusal::BadSignature, "the signature is not that of the device named, over these bytes"),
        }
    }

    fn learn(&mut self, record: &Record, body: &Body, states: bool) {
        if states {
            self.named.insert(record.payload.device.clone());
        }
        if let Body::Revoked(revoked) = body {
            self.ended.insert(revoked.device.clone());
        }
        if Trust::is_made_of(&record.payload.kind) {
            self.fresh.push(record.clone());
        }
    }
}

/// A kind as it may stand in a message.
fn shown(kind: &str) -> String {
    kind.chars().filter(|c| !c.is_control()).take(64).collect()
}

/// Does one thing to each of many, on all cores, in order.
fn spread<T: Sync, R: Send>(all: &[T], one: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let cores = thread::available_parallelism().map_or(1, usize::from);
    let share = all.len().div_ceil(cores).max(WORTH);
    if all.len() <= share {
        return all.iter().map(one).collect();
    }
    thread::scope(|scope| {
        let one = &one;
        let threads: Vec<_> = all
            .chunks(share)
            .map(|part| (part, scope.spawn(move || part.iter().map(one).collect::<Vec<_>>())))
            .collect();
        // A thread that couldn't do its part has it done here.
        threads
            .into_iter()
            .flat_map(|(part, thread)| thread.join().unwrap_or_else(|_| part.iter().map(one).collect()))
            .collect()
    })
}
