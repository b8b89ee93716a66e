//! Whose key is it, does it still count, and what may its holder do? Decided from records alone.
//!
//! A device's first record is its own: it states its key and who holds it, and so makes
//! the device its own root. A revocation by the device itself, by a device that it vouched for, or by
//! the root of a school that it joined, ends it: what the revoker had seen of it stands, what came
//! after is refused. Version vectors decide, not clocks. That two devices claim the same person is
//! not enough, nor that a school claims a device as its member: anybody can claim that. How it is
//! folded: see `folding`.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;
use ed25519_dalek::VerifyingKey;

use super::{DeviceId, Digest, Jwk, Record, Role, School, Signature, folding};

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
    pub(super) devices: BTreeMap<DeviceId, Standing>,
    /// Who vouched for whom, and with which of their records first.
    pub(super) vouched: BTreeMap<(DeviceId, DeviceId), u64>,
    /// Who agreed to which schools, and with which of their records first.
    pub(super) joined: BTreeMap<(DeviceId, Digest), u64>,
    pub(super) schools: BTreeMap<Digest, School>,
}

impl Trust {
    /// Reads the records that trust is made of out of a set; only those whose own signature is good count.
    pub fn from_records<'a>(records: impl IntoIterator<Item = &'a Record>) -> Self {
        folding::fold(records, true)
    }

    /// The same from records whose signatures the caller has checked when they came in.
    pub fn from_checked<'a>(records: impl IntoIterator<Item = &'a Record>) -> Self {
        folding::fold(records, false)
    }

    /// Whether a record of this kind can change what is trusted.
    pub fn is_made_of(kind: &str) -> bool {
        folding::TRUST_KINDS.contains(&kind)
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

    /// Whether a device has vouched for another one, which may therefore end its key.
    pub fn vouches(&self, one: &DeviceId, two: &DeviceId) -> bool {
        self.vouched.contains_key(&(one.clone(), two.clone()))
    }

    /// Whether the other device is of the same person, by the word of the first. The other's own word is
    /// none: anybody can claim to be somebody, and vouch for whom they claim to be.
    pub fn same_person(&self, first: &DeviceId, other: &DeviceId) -> bool {
        let person = |device| self.devices.get(device).map(|standing| standing.person_id);
        first == other
            || (person(first).is_some() && person(first) == person(other) && self.vouches(first, other))
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
        let known = |trust: &Self, device: &DeviceId| {
            trust.devices.get(device).map(|standing| (standing.last_good, standing.person_id))
        };
        let devices = self.devices.keys().chain(other.devices.keys());
        differs.extend(devices.filter(|d| known(self, d) != known(other, d)).cloned());
        let said = |one: &Self, two: &Self| {
            let only = one.vouched.keys().filter(|said| !two.vouched.contains_key(said));
            only.flat_map(|(one, two)| [one.clone(), two.clone()]).collect::<Vec<_>>()
        };
        differs.extend(said(self, other).into_iter().chain(said(other, self)));
        for id in self.schools.keys().chain(other.schools.keys()) {
            let (mine, theirs) = (self.schools.get(id), other.schools.get(id));
            differs.extend(mine.into_iter().flat_map(|school| school.differs(theirs)));
            differs.extend(theirs.into_iter().flat_map(|school| school.differs(mine)));
        }
        differs
    }
}
