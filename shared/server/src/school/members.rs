//! Who may come in: folded from the log's records.

use std::collections::BTreeMap;
use std::sync::Arc;

use witnessmark_core::record::{Body, DeviceId, Digest, Jwk, Record, Role, Trust};

use crate::clock;

/// What the log says of keys and members.
#[derive(Debug)]
pub struct Members {
    school: Digest,
    trust: Trust,
    /// The records that it is made of, in the log's order.
    made_of: Vec<Arc<Record>>,
    /// Whose records each courier key carries here.
    couriers: BTreeMap<DeviceId, DeviceId>,
}

/// Whose key signs a request.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Carrier {
    /// The device whose records it carries.
    pub device: DeviceId,
    /// The key itself.
    pub key: Jwk,
    /// Whether it is the device's own, which states facts, and no courier.
    pub own: bool,
}

impl Members {
    pub(super) fn of(school: Digest, made_of: Vec<Arc<Record>>) -> Self {
        let trust = Trust::from_checked(made_of.iter().map(Arc::as_ref));
        let couriers = couriers(school, &trust, &made_of);
        Self { school, trust, made_of, couriers }
    }

    /// The same with more records, which the caller has checked.
    pub(super) fn with(&self, more: impl IntoIterator<Item = Record>) -> Self {
        let mut made_of = self.made_of.clone();
        made_of.extend(more.into_iter().map(Arc::new));
        Self::of(self.school, made_of)
    }

    /// Keys, holders, schools.
    pub fn trust(&self) -> &Trust {
        &self.trust
    }

    pub(super) fn made_of(&self) -> impl Iterator<Item = &Record> {
        self.made_of.iter().map(Arc::as_ref)
    }

    /// Whose key this is. A device's own name goes before a courier's: nobody carries another's records
    /// by naming that one's key.
    pub fn carrier(&self, keyid: &DeviceId) -> Option<Carrier> {
        if let Some(standing) = self.trust.standing(keyid) {
            let key = Jwk::from_bytes(standing.key.as_bytes());
            return Some(Carrier { device: keyid.clone(), key, own: true });
        }
        let device = self.couriers.get(keyid)?;
        let (_, key) = self.trust.standing(device)?.joined.clone()?;
        Some(Carrier { device: device.clone(), key, own: false })
    }

    /// What a device is in the school now.
    pub fn role(&self, device: &DeviceId, now: i64) -> Option<Role> {
        clock::days(now).find_map(|day| self.trust.role_on(&self.school, device, day))
    }

    /// The device that admits and ends members.
    pub fn root(&self) -> Option<&DeviceId> {
        Some(&self.trust.school(&self.school)?.root)
    }

    /// Whether the root has given a device a place that isn't over, whether or not the device's own
    /// records are here.
    pub(super) fn has_place(&self, device: &DeviceId, now: i64) -> bool {
        let term = self.trust.school(&self.school).and_then(|school| school.standing_term(device));
        term.is_some_and(|term| term.until.is_none_or(|until| clock::days(now).any(|day| day <= until)))
    }
}

/// Each device's latest courier. A key named by two is the first one's: the second has read its name in
/// the log.
fn couriers(school: Digest, trust: &Trust, made_of: &[Arc<Record>]) -> BTreeMap<DeviceId, DeviceId> {
    let mut couriers = BTreeMap::new();
    for record in made_of.iter().filter(|record| record.payload.kind == "school-joined") {
        let Ok(Body::SchoolJoined(body)) = record.payload.typed() else { continue };
        let standing = trust.standing(&record.payload.device);
        let holds = standing.and_then(|standing| standing.joined.as_ref());
        if body.school == school
            && holds.is_some_and(|(joined, key)| *joined == school && *key == body.courier)
        {
            couriers.entry(body.courier.thumbprint()).or_insert_with(|| record.payload.device.clone());
        }
    }
    couriers
}
