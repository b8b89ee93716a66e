//! Whose key is it, and does it still count? Decided from records alone.
//!
//! A device's first record is its own: it states its key and who holds it, and so makes
//! the device its own root. A revocation by the device itself, or by a device that it vouched
//! for, ends it: what the revoker had seen of it stands, what came after is refused. Version
//! vectors decide, not clocks. That two devices claim the same person is not enough: anybody
//! can claim that.

use std::collections::{BTreeMap, BTreeSet};

use ed25519_dalek::VerifyingKey;

use super::{Body, DeviceId, Record, Signature};

/// What is known of one device.
#[derive(Clone, Debug)]
pub struct Standing {
    /// Its key.
    pub key: VerifyingKey,
    /// Who holds it, as they said themselves.
    pub person: String,
    /// The person's own identifier, the same on each of their devices.
    pub person_id: uuid::Uuid,
    /// The last `seq` that counts, when the key was revoked.
    pub last_good: Option<u64>,
}

/// The keys that a set of records makes known.
#[derive(Clone, Debug, Default)]
pub struct Trust {
    devices: BTreeMap<DeviceId, Standing>,
    /// Who vouched for whom.
    vouched: BTreeSet<(DeviceId, DeviceId)>,
}

impl Trust {
    /// Reads the member and revocation records out of a set; only those whose own signature is good count.
    pub fn from_records<'a>(records: impl IntoIterator<Item = &'a Record>) -> Self {
        // In causal order, whatever the order of the file: where two revocations cross, or a device
        // states itself twice, every reader decides alike.
        let mut records: Vec<&Record> = records.into_iter().collect();
        records.sort_by_key(|r| (r.payload.clock, &r.payload.device, r.payload.seq, r.digest));
        let mut trust = Self::default();
        for record in &records {
            trust.admit(record);
        }
        for record in &records {
            trust.vouch(record);
        }
        for record in &records {
            trust.revoke(record);
        }
        trust
    }

    /// Takes a device's first record, if it is one and rightly signed by the key it states.
    pub fn admit(&mut self, record: &Record) {
        // Most records are long and none of these: told by their kind, they aren't read at all.
        if record.payload.kind != "member" {
            return;
        }
        let Ok(Body::Member(member)) = record.payload.typed() else { return };
        let Ok(key) = member.key.verifying_key() else { return };
        let own = member.key.thumbprint() == record.payload.device;
        if own && record.check(&key) == Signature::Good {
            self.devices.entry(record.payload.device.clone()).or_insert(Standing {
                key,
                person: member.name,
                person_id: member.person,
                last_good: None,
            });
        }
    }

    /// Takes a device's word that its holder holds another one too.
    pub fn vouch(&mut self, record: &Record) {
        if record.payload.kind == "device-vouched"
            && let Ok(Body::Vouched(vouched)) = record.payload.typed()
            && self.check(record) == Signature::Good
        {
            self.vouched.insert((record.payload.device.clone(), vouched.device));
        }
    }

    /// Takes a revocation, if its author may revoke and signed it.
    pub fn revoke(&mut self, record: &Record) {
        if record.payload.kind != "key-revoked" {
            return;
        }
        let Ok(Body::Revoked(revoked)) = record.payload.typed() else { return };
        if self.check(record) != Signature::Good {
            return;
        }
        let author = &record.payload.device;
        let itself = *author == revoked.device;
        if !itself && !self.vouched.contains(&(revoked.device.clone(), author.clone())) {
            return;
        }
        let seen = if itself {
            record.payload.seq
        } else {
            record.payload.seen.get(&revoked.device).copied().unwrap_or(0)
        };
        if let Some(standing) = self.devices.get_mut(&revoked.device) {
            standing.last_good = Some(standing.last_good.map_or(seen, |last| last.min(seen)));
        }
    }

    /// What came of a record's signature, all known.
    pub fn check(&self, record: &Record) -> Signature {
        let Some(standing) = self.devices.get(&record.payload.device) else {
            return Signature::UnknownKey;
        };
        match record.check(&standing.key) {
            Signature::Good if standing.last_good.is_some_and(|last| record.payload.seq > last) => {
                Signature::Revoked
            }
            outcome => outcome,
        }
    }

    /// What is known of a device.
    pub fn standing(&self, device: &DeviceId) -> Option<&Standing> {
        self.devices.get(device)
    }

    /// All devices known.
    pub fn devices(&self) -> impl Iterator<Item = (&DeviceId, &Standing)> {
        self.devices.iter()
    }
}
