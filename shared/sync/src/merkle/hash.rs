//! The hash of a leaf or node.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};
use witnessmark_core::record::Digest;

/// A hash in the tree: not a record's digest, though it is written the same way (64 hexadecimal
/// digits).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Hash(Digest);

impl Hash {
    /// These 32 bytes as a hash.
    pub fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(Digest(bytes))
    }

    /// The 32 bytes.
    pub fn as_bytes(&self) -> &[u8; 32] {
        &self.0.0
    }

    /// The root of a tree without leaves: the hash of nothing (RFC 9162 § 2.1.1).
    pub fn empty() -> Self {
        Self(Digest::of(b""))
    }

    /// A leaf's hash (RFC 9162 § 2.1.1). The prefix keeps a leaf from passing for a node.
    pub fn leaf(leaf: &[u8]) -> Self {
        Self::from_bytes(Sha256::new().chain_update([0]).chain_update(leaf).finalize().into())
    }

    /// A node's hash from its two children's (RFC 9162 § 2.1.1).
    pub fn node(left: &Self, right: &Self) -> Self {
        let hasher = Sha256::new().chain_update([1]).chain_update(left.as_bytes());
        Self::from_bytes(hasher.chain_update(right.as_bytes()).finalize().into())
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Hash({self})")
    }
}

impl FromStr for Hash {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        text.parse().map(Self)
    }
}
