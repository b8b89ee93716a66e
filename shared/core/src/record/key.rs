//! Device keys: Ed25519 (RFC 8032), named by their JWK thumbprint (RFC 7638, RFC 8037).

use std::fmt;

use base64ct::{Base64UrlUnpadded, Encoding};
use ed25519_dalek::{Signer, SigningKey, VerifyingKey};
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};

/// A device's name: the base64url thumbprint of its public key.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct DeviceId(pub String);

impl DeviceId {
    /// Eight characters, for a person to tell devices apart; not for trust.
    pub fn short(&self) -> String {
        self.0.chars().take(8).collect()
    }
}

impl fmt::Display for DeviceId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl fmt::Debug for DeviceId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "DeviceId({})", self.0)
    }
}

/// An Ed25519 public key as a JSON Web Key (RFC 8037 § 2).
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Jwk {
    /// Always `Ed25519`.
    pub crv: String,
    /// Always `OKP`.
    pub kty: String,
    /// The 32 bytes of the key, base64url without padding.
    pub x: String,
}

/// Why a public key can't be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum KeyFault {
    /// Not an Ed25519 key in the form of RFC 8037.
    #[error("this is not an Ed25519 public key")]
    Malformed,
    /// A key of small order, under which forged signatures verify.
    #[error("this public key is weak: anybody could sign for it")]
    Weak,
}

impl Jwk {
    /// The JWK of these 32 public bytes.
    pub fn from_bytes(public: &[u8; 32]) -> Self {
        Self { crv: "Ed25519".into(), kty: "OKP".into(), x: Base64UrlUnpadded::encode_string(public) }
    }

    /// The key, when it is one and isn't weak.
    ///
    /// # Errors
    /// [`KeyFault`].
    pub fn verifying_key(&self) -> Result<VerifyingKey, KeyFault> {
        if self.crv != "Ed25519" || self.kty != "OKP" {
            return Err(KeyFault::Malformed);
        }
        let bytes = Base64UrlUnpadded::decode_vec(&self.x).map_err(|_| KeyFault::Malformed)?;
        let bytes: [u8; 32] = bytes.try_into().map_err(|_| KeyFault::Malformed)?;
        let key = VerifyingKey::from_bytes(&bytes).map_err(|_| KeyFault::Malformed)?;
        // Some points have two encodings; only the canonical one is a name. (The key gives back the
        // bytes it was read from, so its point is encoded anew.)
        if key.is_weak() || key.to_edwards().compress().to_bytes() != bytes {
            return Err(KeyFault::Weak);
        }
        Ok(key)
    }

    /// RFC 7638 thumbprint: SHA-256 of the required members in lexicographic order.
    pub fn thumbprint(&self) -> DeviceId {
        let members = format!(r#"{{"crv":"{}","kty":"{}","x":"{}"}}"#, self.crv, self.kty, self.x);
        DeviceId(Base64UrlUnpadded::encode_string(&Sha256::digest(members.as_bytes())))
    }
}

/// A device's secret key. It signs; it is never shown.
pub struct SigningSeed(SigningKey);

impl SigningSeed {
    /// The key of 32 secret bytes, which the caller drew from a good source of randomness.
    pub fn from_bytes(secret: &[u8; 32]) -> Self {
        Self(SigningKey::from_bytes(secret))
    }

    /// The public half.
    pub fn jwk(&self) -> Jwk {
        Jwk::from_bytes(self.0.verifying_key().as_bytes())
    }

    /// The public half's name.
    pub fn device(&self) -> DeviceId {
        self.jwk().thumbprint()
    }

    /// The Ed25519 signature of these bytes. Public because a device also signs what is no record:
    /// its requests to a server (RFC 9421), and a server its checkpoints.
    pub fn sign(&self, message: &[u8]) -> [u8; 64] {
        self.0.sign(message).to_bytes()
    }
}
