//! The envelope around a payload: flattened JWS JSON, payload unencoded.

use base64ct::{Base64UrlUnpadded, Encoding};
use chrono::Datelike;
use ed25519_dalek::VerifyingKey;
use serde::{Deserialize, Serialize};

use super::payload::VERSION;
use super::{DeviceId, Digest, Payload, SigningSeed};

/// The largest number that every reader of JSON counts exactly.
const MOST_COUNTED: u64 = (1 << 53) - 1;

/// The protected header's members, in the only form we write or take.
#[derive(Serialize, Deserialize, PartialEq)]
#[serde(deny_unknown_fields)]
struct Header {
    alg: String,
    b64: bool,
    crit: Vec<String>,
    kid: DeviceId,
}

/// A flattened JWS (RFC 7515 § 7.2.2) whose payload is the text itself (RFC 7797).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Envelope {
    /// The payload's bytes, as text.
    pub payload: String,
    /// The protected header, base64url.
    pub protected: String,
    /// 64 bytes, base64url.
    pub signature: String,
}

/// Why an envelope is not a record at all.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum EnvelopeFault {
    /// Not JSON of the three members.
    #[error("not an envelope: {0}")]
    NotAnEnvelope(String),
    /// The header isn't exactly what we sign with.
    #[error("the header is not one of ours: {0}")]
    Header(&'static str),
    /// The payload can't be read.
    #[error("the payload can't be read: {0}")]
    Payload(String),
    /// The payload isn't in the canonical form, so two readers could read two things.
    #[error("the payload is not canonical JSON (RFC 8785)")]
    NotCanonical,
    /// A format of the future.
    #[error("the payload's format {0} needs a newer version of this program")]
    Newer(u32),
    /// The payload speaks for another device than the header.
    #[error("the header names one key and the payload another")]
    OtherDevice,
    /// The signature isn't 64 bytes.
    #[error("the signature is not 64 bytes of base64url")]
    SignatureForm,
}

/// What came of checking a signature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Signature {
    /// It is the named key's, over these very bytes.
    Good,
    /// It is not: the payload was altered, or somebody else signed.
    Bad,
    /// No record tells which key the device has.
    UnknownKey,
    /// Made after the key was revoked.
    Revoked,
    /// Nobody looked.
    NotChecked,
}

/// A record: an envelope whose form was checked, with its payload read.
/// Its signature is *not* thereby good; see [`Record::check`].
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// As it was written; never re-serialised.
    pub envelope: Envelope,
    /// What it says.
    pub payload: Payload,
    /// SHA-256 of the payload's bytes: the record's name.
    pub digest: Digest,
    signature: [u8; 64],
}

impl Record {
    /// Signs a payload.
    ///
    /// # Errors
    /// The reason, when the payload can't be written as canonical JSON.
    pub fn sign(payload: &Payload, seed: &SigningSeed) -> Result<Self, EnvelopeFault> {
        Self::with_signature(payload, &seed.device(), |input| seed.sign(input))
    }

    /// A record whose signature is not good.
    pub(super) fn unsigned(payload: &Payload) -> Result<Self, EnvelopeFault> {
        Self::with_signature(payload, &payload.device, |_| [0; 64])
    }

    fn with_signature(
        payload: &Payload,
        device: &DeviceId,
        sign: impl Fn(&[u8]) -> [u8; 64],
    ) -> Result<Self, EnvelopeFault> {
        let text = serde_json_canonicalizer::to_string(payload)
            .map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
        let protected = Self::header(device)?;
        let signature = sign(&signing_input(&protected, &text));
        Self::parse(Envelope {
            payload: text,
            protected,
            signature: Base64UrlUnpadded::encode_string(&signature),
        })
    }

    /// The protected header of every record that a device signs, base64url.
    pub(super) fn header(device: &DeviceId) -> Result<String, EnvelopeFault> {
        let header =
            Header { alg: "Ed25519".into(), b64: false, crit: vec!["b64".into()], kid: device.clone() };
        let header = serde_json_canonicalizer::to_string(&header)
            .map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
        Ok(Base64UrlUnpadded::encode_string(header.as_bytes()))
    }

    /// Reads one line of a bundle.
    ///
    /// # Errors
    /// [`EnvelopeFault`].
    pub fn read(line: &str) -> Result<Self, EnvelopeFault> {
        let envelope =
            serde_json::from_str(line).map_err(|fault| EnvelopeFault::NotAnEnvelope(fault.to_string()))?;
        Self::parse(envelope)
    }

    /// Checks an envelope's form and reads its payload.
    ///
    /// # Errors
    /// [`EnvelopeFault`].
    pub fn parse(envelope: Envelope) -> Result<Self, EnvelopeFault> {
        let header = Base64UrlUnpadded::decode_vec(&envelope.protected)
            .map_err(|_| EnvelopeFault::Header("it is not base64url"))?;
        let header: Header = serde_json::from_slice(&header)
            .map_err(|_| EnvelopeFault::Header("it has other members than alg, b64, crit and kid"))?;
        if header.alg != "Ed25519" {
            return Err(EnvelopeFault::Header("alg is not Ed25519"));
        }
        if header.b64 || header.crit != ["b64"] {
            return Err(EnvelopeFault::Header("the payload must be unencoded (b64 false, and critical)"));
        }
        let signature = Base64UrlUnpadded::decode_vec(&envelope.signature)
            .ok()
            .and_then(|bytes| bytes.try_into().ok())
            .ok_or(EnvelopeFault::SignatureForm)?;
        let payload = read_payload(&envelope.payload)?;
        if payload.device != header.kid {
            return Err(EnvelopeFault::OtherDevice);
        }
        let digest = Digest::of(envelope.payload.as_bytes());
        Ok(Self { envelope, payload, digest, signature })
    }

    /// Checks the signature under a key by the strict rule, the only one we use:
    /// canonical points and scalars, no small order, no cofactor.
    pub fn check(&self, key: &VerifyingKey) -> Signature {
        let message = signing_input(&self.envelope.protected, &self.envelope.payload);
        let signature = ed25519_dalek::Signature::from_bytes(&self.signature);
        match key.verify_strict(&message, &signature) {
            Ok(()) => Signature::Good,
            Err(_) => Signature::Bad,
        }
    }

    /// One line of a bundle, without its line end.
    pub fn line(&self) -> String {
        // Three strings always serialise; an empty line would be refused by every reader.
        serde_json::to_string(&self.envelope).unwrap_or_default()
    }
}

/// RFC 7797 § 3: what is signed is the encoded header, a dot, the payload's own bytes.
pub fn signing_input(protected: &str, payload: &str) -> Vec<u8> {
    [protected.as_bytes(), b".", payload.as_bytes()].concat()
}

fn read_payload(text: &str) -> Result<Payload, EnvelopeFault> {
    let value: serde_json::Value =
        serde_json::from_str(text).map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
    let version = value.get("v").and_then(serde_json::Value::as_u64);
    if let Some(version) = version.and_then(|v| u32::try_from(v).ok()).filter(|v| *v > VERSION) {
        return Err(EnvelopeFault::Newer(version));
    }
    let canonical = serde_json_canonicalizer::to_string(&value)
        .map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
    if canonical != text {
        return Err(EnvelopeFault::NotCanonical);
    }
    let payload: Payload =
        serde_json::from_value(value).map_err(|fault| EnvelopeFault::Payload(fault.to_string()))?;
    // RFC 3339 has years of four digits; a moment past them would leave the calendar in another zone.
    if !(1..=9999).contains(&payload.at.year()) {
        return Err(EnvelopeFault::Payload("its moment lies outside the years 1 to 9999".into()));
    }
    // Past this, readers of JSON count differently (RFC 7493 § 2.2), and databases not at all.
    let counts = [payload.seq, payload.of_seq, payload.clock.ms];
    if counts.iter().chain(payload.seen.values()).any(|count| *count > MOST_COUNTED) {
        return Err(EnvelopeFault::Payload("a number in it is too large to be counted exactly".into()));
    }
    Ok(payload)
}
