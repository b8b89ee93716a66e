//! Writing the next record of a device.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use uuid::{Builder, Uuid};

use super::payload::VERSION;
use super::{Body, Clock, DeviceId, Digest, EnvelopeFault, Payload, Record, SigningSeed};

/// The latest record of a chain: its count and digest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Position {
    /// The record's number in the chain.
    pub seq: u64,
    /// Its digest.
    pub digest: Digest,
}

/// Where a device stands when it writes its next record.
#[derive(Clone, Debug, Default)]
pub struct Author {
    /// The last of all its records.
    pub last: Option<Position>,
    /// The last of its records about the same machine (or about none).
    pub last_of: Option<Position>,
    /// Each other device's latest record known here.
    pub seen: BTreeMap<DeviceId, u64>,
    /// The latest causal time known here.
    pub clock: Clock,
}

impl Author {
    /// Signs the next record. `salt` is randomness for its id.
    ///
    /// # Errors
    /// [`EnvelopeFault`] when the body can't be written.
    pub fn write(
        &self,
        body: &Body,
        machine: Option<Uuid>,
        at: DateTime<FixedOffset>,
        salt: &[u8; 10],
        seed: &SigningSeed,
    ) -> Result<Record, EnvelopeFault> {
        Record::sign(&self.payload(body, machine, at, salt, seed.device())?, seed)
    }

    /// The next record as it would be, unsigned: to tell what it would mean, never to be kept.
    ///
    /// # Errors
    /// [`EnvelopeFault`] when the body can't be written.
    pub fn preview(
        &self,
        body: &Body,
        machine: Option<Uuid>,
        at: DateTime<FixedOffset>,
        device: DeviceId,
    ) -> Result<Record, EnvelopeFault> {
        Record::unsigned(&self.payload(body, machine, at, &[0; 10], device)?)
    }

    fn payload(
        &self,
        body: &Body,
        machine: Option<Uuid>,
        at: DateTime<FixedOffset>,
        salt: &[u8; 10],
        device: DeviceId,
    ) -> Result<Payload, EnvelopeFault> {
        let now_ms = u64::try_from(at.timestamp_millis()).unwrap_or(0);
        let (kind, body) = body.write().map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
        Ok(Payload {
            v: VERSION,
            kind,
            id: Builder::from_unix_timestamp_millis(now_ms, salt).into_uuid(),
            machine,
            device,
            seq: next(self.last),
            prev: self.last.map(|p| p.digest),
            of_seq: next(self.last_of),
            of_prev: self.last_of.map(|p| p.digest),
            seen: self.seen.clone(),
            at,
            clock: self.clock.tick(now_ms),
            body,
        })
    }
}

fn next(position: Option<Position>) -> u64 {
    position.map_or(1, |p| p.seq.saturating_add(1))
}
