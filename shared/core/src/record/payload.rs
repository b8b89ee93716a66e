//! What is signed.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use super::{Body, Clock, DeviceId, Digest};

/// The payload's format, raised only when its own members change meaning.
pub const VERSION: u32 = 1;

/// One record's payload.
///
/// Two chains run through a device's records. `seq`/`prev` links all of them: what a peer
/// must have to hold the device's whole word. `of_seq`/`of_prev` links those about one
/// machine (or about none): a bundle of one machine is then complete and checkable
/// without laying open what its author wrote about other machines.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Payload {
    /// Format version.
    pub v: u32,
    /// What sort of fact; kinds that this version doesn't know are kept and passed on.
    pub kind: String,
    /// UUID version 7 (RFC 9562).
    pub id: Uuid,
    /// The machine it is about, if it is about one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<Uuid>,
    /// Who states it.
    pub device: DeviceId,
    /// Counts this device's records, from 1.
    pub seq: u64,
    /// Digest of this device's record `seq - 1`; absent in the first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub prev: Option<Digest>,
    /// Counts this device's records about the same machine (or about none), from 1.
    pub of_seq: u64,
    /// Digest of the one before in that count.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of_prev: Option<Digest>,
    /// What the author knew: each other device's latest `seq` (a version vector).
    pub seen: BTreeMap<DeviceId, u64>,
    /// The author's wall clock with its offset.
    pub at: DateTime<FixedOffset>,
    /// Where it stands in causal time.
    pub clock: Clock,
    /// The fact itself, by `kind`.
    pub body: Value,
}

impl Payload {
    /// The typed body; [`Body::Unknown`] for kinds of newer versions.
    ///
    /// # Errors
    /// The reason, when a known kind's body is malformed.
    pub fn typed(&self) -> Result<Body, serde_json::Error> {
        Body::read(&self.kind, &self.body)
    }
}
