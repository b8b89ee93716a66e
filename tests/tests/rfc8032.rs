//! Ed25519 as we use it, against RFC 8032 § 7.1.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use ed25519_dalek::{Signature, Signer, SigningKey};
use witnessmark_core::record::SigningSeed;

/// Source: RFC 8032 § 7.1, read in a stored copy of the RFC's text.
const VECTORS: &str = include_str!("../vectors/rfc8032.txt");

struct Vector {
    name: String,
    secret: [u8; 32],
    public: Vec<u8>,
    message: Vec<u8>,
    signature: [u8; 64],
}

fn vectors() -> Vec<Vector> {
    let text: Vec<&str> = VECTORS.lines().filter(|line| !line.starts_with('#')).collect();
    let blocks = text.split(|line| line.is_empty());
    blocks
        .map(|block| {
            let after = |name: &str| -> Vec<u8> {
                let start = block.iter().position(|line| *line == name).unwrap() + 1;
                let lines = block[start..].iter().take_while(|line| line.starts_with(' '));
                hex::decode(lines.map(|line| line.trim()).collect::<String>()).unwrap()
            };
            Vector {
                name: block[0].into(),
                secret: after("SECRET").try_into().unwrap(),
                public: after("PUBLIC"),
                message: after("MESSAGE"),
                signature: after("SIGNATURE").try_into().unwrap(),
            }
        })
        .collect()
}

#[test]
fn keys_and_signatures_are_those_of_the_rfc() {
    let vectors = vectors();
    let names: Vec<&str> = vectors.iter().map(|vector| vector.name.as_str()).collect();
    assert_eq!(names, ["TEST 1", "TEST 2", "TEST 3", "TEST 1024", "TEST SHA(abc)"]);
    assert_eq!(vectors[3].message.len(), 1023);
    for vector in &vectors {
        let key = SigningSeed::from_bytes(&vector.secret).jwk().verifying_key().unwrap();
        assert_eq!(key.as_bytes().as_slice(), vector.public, "{}", vector.name);
        let signed = SigningKey::from_bytes(&vector.secret).sign(&vector.message);
        assert_eq!(signed.to_bytes(), vector.signature, "{}", vector.name);
        let signature = Signature::from_bytes(&vector.signature);
        assert!(key.verify_strict(&vector.message, &signature).is_ok(), "{}", vector.name);
    }
}

#[test]
fn any_other_message_signature_or_key_is_refused() {
    let vectors = vectors();
    for (n, vector) in vectors.iter().enumerate() {
        let key = SigningSeed::from_bytes(&vector.secret).jwk().verifying_key().unwrap();
        let good = Signature::from_bytes(&vector.signature);
        let longer = [vector.message.as_slice(), &[0]].concat();
        assert!(key.verify_strict(&longer, &good).is_err());
        for byte in 0..64 {
            let mut other = vector.signature;
            other[byte] ^= 1;
            assert!(key.verify_strict(&vector.message, &Signature::from_bytes(&other)).is_err());
        }
        let next = &vectors[(n + 1) % vectors.len()];
        let stranger = SigningSeed::from_bytes(&next.secret).jwk().verifying_key().unwrap();
        assert!(stranger.verify_strict(&vector.message, &good).is_err());
    }
}
