//! A record: one fact that a person or a device states, signed and immutable.
//!
//! The payload is canonical JSON (RFC 8785) when made and bytes for ever after; the
//! envelope is a flattened JWS (RFC 7515) with an unencoded payload (RFC 7797)
//! and `alg` `Ed25519` (RFC 9864), so it can be read in a text editor and checked
//! by any JOSE library.

mod author;
mod body;
mod bundle;
mod chain;
mod clock;
mod digest;
mod envelope;
mod flight;
mod folding;
mod key;
mod letter;
mod pack;
mod payload;
mod readings;
mod registration;
mod school;
mod schools;
mod trust;
mod work;

pub use author::{Author, Position};
pub use body::*;
pub use bundle::{Bundle, BundleFault, Checked, LineFault, Report, check, read_bundle, write_bundle};
pub use chain::{ChainFault, check_chain};
pub use clock::Clock;
pub use digest::Digest;
pub use envelope::{Envelope, EnvelopeFault, Record, Signature, signing_input};
pub use flight::*;
pub use folding::TRUST_KINDS;
pub use key::{DeviceId, Jwk, KeyFault, SigningSeed};
pub use letter::{read_letter, write_letter};
pub use pack::{PackFault, SecondLookAsk, SecondLookReply};
pub use payload::Payload;
pub use readings::*;
pub use registration::{machine_id, registers};
pub use school::*;
pub use schools::{School, Term};
pub use trust::{Standing, Trust};
pub use work::*;
