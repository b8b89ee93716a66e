//! What goes over the wire, as JSON. Records go as JSON Lines of envelopes, one a line.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use uuid::Uuid;
use witnessmark_core::record::{DeviceId, Digest, Envelope};

/// What a server says of its school before anybody has signed anything.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct SchoolCard {
    /// The digest of the founding record, hexadecimal.
    #[schemars(with = "String")]
    pub school: Digest,
    /// What people call it.
    pub name: String,
    /// What is needed to trust it: the root's member record, the founding record, hand-overs, as envelopes.
    #[schemars(with = "Vec<EnvelopeForm>")]
    pub records: Vec<Envelope>,
    /// The key that signs checkpoints, as a signed-note verifier key.
    pub server: String,
}

/// An envelope's form: a flattened JWS with an unencoded payload (RFC 7515, RFC 7797).
#[derive(JsonSchema)]
#[allow(dead_code)]
struct EnvelopeForm {
    /// The payload's bytes, as text.
    payload: String,
    /// The protected header, base64url.
    protected: String,
    /// 64 bytes, base64url.
    signature: String,
}

/// One leaf of the log as a page tells it: whole, or only named where the asking device signed it itself.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum LogLine {
    /// The record.
    Whole(Envelope),
    /// The record's digest: the asking device has it.
    Have {
        /// SHA-256 of the payload.
        have: Digest,
    },
}

/// What came of records sent.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Pushed {
    /// Records that lie in the log now, in the order sent.
    pub taken: Vec<Taken>,
    /// Lines that the server wouldn't take.
    pub refused: Vec<Refused>,
}

/// Where a record lies in the log.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Taken {
    /// The record.
    #[schemars(with = "String")]
    pub digest: Digest,
    /// Its number in the log, from 0.
    pub index: u64,
}

/// Why a line was not taken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Refused {
    /// The line among those sent, from 1.
    pub line: u32,
    /// The record, where the line could be read.
    #[schemars(with = "Option<String>")]
    pub digest: Option<Digest>,
    /// The kind of fault.
    pub kind: Refusal,
    /// In words.
    pub message: String,
    /// What to do.
    pub hint: String,
}

/// Kinds of faults for which a server won't take a record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Refusal {
    /// The line is no record.
    Unreadable,
    /// The payload was altered after signing, or somebody else signed.
    BadSignature,
    /// No record tells whose key signed.
    UnknownKey,
    /// The key was ended before.
    Revoked,
    /// A known kind says something that it can't say.
    Malformed,
    /// Longer than the server takes.
    TooLarge,
    /// Sent by a viewer, who looks on.
    Viewer,
}

impl Refusal {
    /// Its name on the wire.
    pub fn name(self) -> &'static str {
        match self {
            Self::Unreadable => "unreadable",
            Self::BadSignature => "bad-signature",
            Self::UnknownKey => "unknown-key",
            Self::Revoked => "revoked",
            Self::Malformed => "malformed",
            Self::TooLarge => "too-large",
            Self::Viewer => "viewer",
        }
    }
}

/// A device that asks to be admitted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct WaitingDevice {
    /// The device.
    #[schemars(with = "String")]
    pub device: DeviceId,
    /// Its holder.
    pub person: Uuid,
    /// What the holder is called.
    pub name: String,
    /// When it asked, RFC 3339.
    pub since: String,
    /// Its member record, and its word that it joins.
    #[schemars(with = "Vec<EnvelopeForm>")]
    pub records: Vec<Envelope>,
}

/// A proof from the log's tree (RFC 9162 § 2.1.3, § 2.1.4).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Proof {
    /// The leaf's number, for a proof of inclusion.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub index: Option<u64>,
    /// The nodes of the path, hexadecimal.
    #[schemars(with = "Vec<String>")]
    pub path: Vec<crate::merkle::Hash>,
}

/// What somebody prepared at the board, to be signed by a device.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Draft {
    /// Its name.
    pub id: String,
    /// The machine that the record will be about.
    pub machine: Option<Uuid>,
    /// The record's kind.
    pub kind: String,
    /// The record's body as it will be signed.
    pub body: serde_json::Value,
}

/// A fault as the server tells it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct WireFault {
    /// Its kind.
    pub kind: String,
    /// What is wrong.
    pub message: String,
    /// What to do.
    pub hint: String,
}
