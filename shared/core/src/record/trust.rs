//! Whose key is it, does it still count, and what may its holder do? Decided from records alone.
//!
//! A device's first record is its own: it states its key and who holds it, and so makes
//! the device its own root. A revocation by the device itself, by a device that it vouched for, or by
//! the root of a school that it joined, ends it: what the revoker had seen of it stands, what came
//! after is refused. Version vectors decide, not clocks. That two devices claim the same person is
//! not enough, nor that a school claims a device as its member: anybody can claim that.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;
use ed25519_dalek::VerifyingKey;

use super::{Body, DeviceId, Digest, Jwk, Record, Role, School, Signature};

/// Kinds of records that trust is made of; they are about no machine.
pub const TRUST_KINDS: [&str; 8] = [
    "member",
    "device-vouched",
    "key-revoked",
    "school-founded",
    "school-joined",
    "member-admitted",
    "member-ended",
    "root-handed",
];

/// What is known of one device.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Its key.
    pub key: VerifyingKey,
    /// Who holds it, as they said themselves.
    pub person: String,
    /// The person's own identifier, the same on each of their devices.
    pub person_id: uuid::Uuid,
    /// Whether they exist only in the demonstration.
    pub invented: bool,
    /// The last `seq` that counts, when the key was revoked.
    pub last_good: Option<u64>,
    /// The school it joined last, and the key that carries its records there.
    pub joined: Option<(Digest, Jwk)>,
}

/// The keys, their holders and schools, that a set of records makes known.
#[derive(Clone, Debug, Default)]
pub struct Trust {
    devices: BTreeMap<DeviceId, Standing>,
    /// Who vouched for whom.
    vouched: BTreeSet<(DeviceId, DeviceId)>,
    /// Who agreed to which schools.
    joined: BTreeSet<(DeviceId, Digest)>,
    schools: BTreeMap<Digest, School>,
}

impl Trust {
    /// Reads the records that trust is made of out of a set; only those whose own signature is good count.
    pub fn from_records<'a>(records: impl IntoIterator<Item = &'a Record>) -> Self {
        Self::fold(records, true)
    }

    /// The same from records whose signatures the caller has checked when they came in.
    pub fn from_checked<'a>(records: impl IntoIterator<Item = &'a Record>) -> Self {
        Self::fold(records, false)
    }

    /// Whether a record of this kind can change what is trusted.
    pub fn is_made_of(kind: &str) -> bool {
        TRUST_KINDS.contains(&kind)
    }

    fn fold<'a>(records: impl IntoIterator<Item = &'a Record>, verify: bool) -> Self {
        // In causal order, whatever the order of the file: where two revocations cross, or a device
        // states itself twice, every reader decides alike. Most records are long and none of these:
        // told by their kind, they aren't read at all.
        let mut records: Vec<&Record> = records
            .into_iter()
            .filter(|r| Self::is_made_of(&r.payload.kind) && r.payload.machine.is_none())
            .collect();
        records.sort_by_key(|r| (r.payload.clock, &r.payload.device, r.payload.seq, r.digest));
        let mut said: Vec<(&Record, Body)> =
            records.into_iter().filter_map(|record| Some((record, record.payload.typed().ok()?))).collect();
        let mut trust = Self::default();
        said.iter().for_each(|(record, body)| trust.admit(record, body, verify));
        said.retain(|(record, _)| {
            let known = trust.devices.get(&record.payload.device);
            known.is_some_and(|standing| !verify || record.check(&standing.key) == Signature::Good)
        });
        for (record, body) in &said {
            let device = record.payload.device.clone();
            match body {
                Body::Vouched(body) => drop(trust.vouched.insert((device, body.device.clone()))),
                Body::SchoolJoined(body) => drop(trust.joined.insert((device, body.school))),
                _ => {}
            }
        }
        // Its own people's word first, then the schools', whose roots must not have been ended.
        said.iter().for_each(|(record, body)| {
            trust.revoke(record, body, |trust, record, of| {
                *of == record.payload.device
                    || trust.vouched.contains(&(of.clone(), record.payload.device.clone()))
            })
        });
        said.iter().for_each(|(record, body)| trust.found(record, body));
        said.iter().for_each(|(record, body)| {
            trust.revoke(record, body, |trust, record, of| {
                let mut schools = trust.schools.values();
                schools.any(|school| {
                    school.by_root(record)
                        && school.knows(of)
                        && trust.joined.contains(&(of.clone(), school.id))
                })
            })
        });
        trust
    }

    /// Takes a device's first record, if it is one and rightly signed by the key it states.
    fn admit(&mut self, record: &Record, body: &Body, verify: bool) {
        let Body::Member(member) = body else { return };
        let Ok(key) = member.key.verifying_key() else { return };
        let own = member.key.thumbprint() == record.payload.device;
        if own && (!verify || record.check(&key) == Signature::Good) {
            self.devices.entry(record.payload.device.clone()).or_insert(Standing {
                key,
                person: member.name.clone(),
                person_id: member.person,
                invented: member.invented,
                last_good: None,
                joined: None,
            });
        }
    }

    /// Takes a revocation, if its author may revoke that key.
    fn revoke(&mut self, record: &Record, body: &Body, may: impl Fn(&Self, &Record, &DeviceId) -> bool) {
        let Body::Revoked(revoked) = body else { return };
        if !self.counts(record) || !may(self, record, &revoked.device) {
            return;
        }
        let payload = &record.payload;
        let seen = if payload.device == revoked.device {
            payload.seq
        } else {
            payload.seen.get(&revoked.device).copied().unwrap_or(0)
        };
        if let Some(standing) = self.devices.get_mut(&revoked.device) {
            standing.last_good = Some(standing.last_good.map_or(seen, |last| last.min(seen)));
        }
    }

    /// Takes what makes schools.
    fn found(&mut self, record: &Record, body: &Body) {
        if !self.counts(record) {
            return;
        }
        let author = &record.payload.device;
        let by_root = |school: &&mut School| school.by_root(record);
        match body {
            Body::SchoolFounded(body) => {
                let Some(holder) = self.devices.get(author) else { return };
                let (person, name) = (holder.person_id, holder.person.clone());
                let school = School::new(record, body.name.clone(), body.invented, person, name);
                self.schools.insert(record.digest, school);
            }
            Body::SchoolJoined(body) => {
                let joined = Some((body.school, body.courier.clone()));
                if let Some(standing) = self.devices.get_mut(author) {
                    standing.joined = joined;
                }
            }
            Body::MemberAdmitted(body) => {
                // Who the device says it belongs to is what the root must have written.
                let person = self.devices.get(&body.device).map(|standing| standing.person_id);
                if person.is_none_or(|person| person == body.person)
                    && let Some(school) = self.schools.get_mut(&body.school).filter(by_root)
                {
                    school.admit(record, body.clone());
                }
            }
            Body::MemberEnded(body) => {
                if let Some(school) = self.schools.get_mut(&body.school).filter(by_root) {
                    school.end(record, body.person);
                }
            }
            Body::RootHanded(body) => {
                if let Some(school) = self.schools.get_mut(&body.school).filter(by_root) {
                    school.hand(record, body.to.clone());
                }
            }
            Body::Vouched(body) if self.same_person(author, &body.device) => {
                self.schools.values_mut().for_each(|school| school.follow(record, &body.device));
            }
            _ => {}
        }
    }

    /// What came of a record's signature, all known.
    pub fn check(&self, record: &Record) -> Signature {
        let Some(standing) = self.devices.get(&record.payload.device) else {
            return Signature::UnknownKey;
        };
        match record.check(&standing.key) {
            Signature::Good if !self.counts(record) => Signature::Revoked,
            outcome => outcome,
        }
    }

    /// Whether a record, its signature checked, lies before the end of its key; also where no end is known.
    pub fn counts(&self, record: &Record) -> bool {
        let last = self.devices.get(&record.payload.device).and_then(|standing| standing.last_good);
        last.is_none_or(|last| record.payload.seq <= last)
    }

    /// Whether two devices are of one person, by the word of one of them.
    pub fn same_person(&self, one: &DeviceId, two: &DeviceId) -> bool {
        let says = |one: &DeviceId, two: &DeviceId| self.vouched.contains(&(one.clone(), two.clone()));
        let person = |device| self.devices.get(device).map(|standing| standing.person_id);
        one == two
            || (person(one).is_some() && person(one) == person(two) && (says(one, two) || says(two, one)))
    }

    /// What is known of a device.
    pub fn standing(&self, device: &DeviceId) -> Option<&Standing> {
        self.devices.get(device)
    }

    /// All devices known.
    pub fn devices(&self) -> impl Iterator<Item = (&DeviceId, &Standing)> {
        self.devices.iter()
    }

    /// A school.
    pub fn school(&self, id: &Digest) -> Option<&School> {
        self.schools.get(id)
    }

    /// All schools known.
    pub fn schools(&self) -> impl Iterator<Item = &School> {
        self.schools.values()
    }

    /// What a device is in a school on a day: none too for a key that was ended.
    pub fn role_on(&self, school: &Digest, device: &DeviceId, day: NaiveDate) -> Option<Role> {
        self.devices.get(device).filter(|standing| standing.last_good.is_none())?;
        self.schools.get(school)?.role_on(device, day)
    }

    /// The device whose records a courier key may carry to a school.
    pub fn courier(&self, school: &Digest, courier: &DeviceId) -> Option<(&DeviceId, VerifyingKey)> {
        self.devices.iter().find_map(|(device, standing)| {
            let (joined, key) = standing.joined.as_ref()?;
            let fits = joined == school && key.thumbprint() == *courier;
            fits.then(|| Some((device, key.verifying_key().ok()?))).flatten()
        })
    }

    /// Devices whose records may count otherwise under `self` than under `other`.
    pub fn differs(&self, other: &Self) -> BTreeSet<DeviceId> {
        let mut differs: BTreeSet<DeviceId> = BTreeSet::new();
        let ended = |trust: &Self, device: &DeviceId| trust.devices.get(device).and_then(|s| s.last_good);
        let devices = self.devices.keys().chain(other.devices.keys());
        differs.extend(devices.filter(|d| ended(self, d) != ended(other, d)).cloned());
        for (one, two) in self.vouched.symmetric_difference(&other.vouched) {
            differs.extend([one.clone(), two.clone()]);
        }
        for id in self.schools.keys().chain(other.schools.keys()) {
            let (mine, theirs) = (self.schools.get(id), other.schools.get(id));
            if mine == theirs {
                continue;
            }
            let terms = |school: Option<&School>| school.map(|s| s.terms.clone()).unwrap_or_default();
            differs.extend([mine, theirs].into_iter().flatten().map(|school| school.root.clone()));
            let (mine, theirs) = (terms(mine), terms(theirs));
            let changed = mine
                .iter()
                .filter(|t| !theirs.contains(t))
                .chain(theirs.iter().filter(|t| !mine.contains(t)));
            differs.extend(changed.map(|term| term.device.clone()));
        }
        differs
    }
}
