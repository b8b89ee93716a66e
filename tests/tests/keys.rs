//! Which public keys we take: every point's one name, and none for which anybody could sign.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use ed25519_dalek::{Signature, VerifyingKey};
use witnessmark_core::record::{Jwk, KeyFault, SigningSeed};

/// The points of small order in every encoding, canonical or not, little-endian.
/// Source: from memory (the list that libraries refuse by); dalek itself confirms below that
/// each of them that it can read is of small order, and that no other torsion point is missing.
const SMALL_ORDER: &[&str] = &[
    // y = 0 (order 4), with both signs of x, and written as p
    "0000000000000000000000000000000000000000000000000000000000000000",
    "0000000000000000000000000000000000000000000000000000000000000080",
    "edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
    "edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff",
    // y = 1 (the neutral point), also with a sign that zero has not, and written as p + 1
    "0100000000000000000000000000000000000000000000000000000000000000",
    "0100000000000000000000000000000000000000000000000000000000000080",
    "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
    "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff",
    // y = -1 (order 2)
    "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
    "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff",
    // order 8
    "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05",
    "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc85",
    "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a",
    "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac03fa",
];

fn bytes(hex: &str) -> [u8; 32] {
    hex::decode(hex).unwrap().try_into().unwrap()
}

/// y + p, where that still fits into 255 bits: the second encoding of the points y = 0 to 18.
fn second_encoding(y: u8, sign: u8) -> [u8; 32] {
    let mut bytes = [0xff; 32];
    bytes[0] = 0xed + y;
    bytes[31] = 0x7f | sign;
    bytes
}

fn first_encoding(y: u8, sign: u8) -> [u8; 32] {
    let mut bytes = [0; 32];
    bytes[0] = y;
    bytes[31] = sign;
    bytes
}

#[test]
fn a_key_of_small_order_is_refused_in_every_encoding() {
    let mut points = std::collections::BTreeSet::new();
    for hex in SMALL_ORDER {
        let bytes = bytes(hex);
        if let Ok(key) = VerifyingKey::from_bytes(&bytes) {
            assert!(key.is_weak(), "{hex}");
            points.insert(key.to_edwards().compress().to_bytes());
        }
        assert!(Jwk::from_bytes(&bytes).verifying_key().is_err(), "{hex}");
    }
    assert_eq!(points.len(), 8, "the eight torsion points");
}

#[test]
fn a_point_has_one_name_only() {
    let mut told_apart = 0;
    for (y, sign) in (0..=18u8).flat_map(|y| [(y, 0), (y, 0x80)]) {
        let second = second_encoding(y, sign);
        assert!(Jwk::from_bytes(&second).verifying_key().is_err(), "p + {y}");
        let (Ok(key), Ok(other)) =
            (VerifyingKey::from_bytes(&first_encoding(y, sign)), VerifyingKey::from_bytes(&second))
        else {
            continue;
        };
        assert_eq!(key.to_edwards(), other.to_edwards());
        if !key.is_weak() {
            assert!(Jwk::from_bytes(&first_encoding(y, sign)).verifying_key().is_ok(), "{y}");
            assert_eq!(Jwk::from_bytes(&second).verifying_key(), Err(KeyFault::Weak));
            told_apart += 1;
        }
    }
    assert!(told_apart > 0, "no pair of encodings was put to the test");
}

#[test]
fn what_is_no_ed25519_key_is_refused() {
    let good = SigningSeed::from_bytes(&[7; 32]).jwk();
    let others = [
        Jwk { crv: "Ed448".into(), ..good.clone() },
        Jwk { crv: "X25519".into(), ..good.clone() },
        Jwk { kty: "EC".into(), ..good.clone() },
        Jwk { x: String::new(), ..good.clone() },
        Jwk { x: good.x[..42].into(), ..good.clone() },
        Jwk { x: format!("{}A", good.x), ..good.clone() },
        Jwk { x: format!("{}=", good.x), ..good.clone() },
        Jwk { x: format!("{} ", good.x), ..good.clone() },
    ];
    assert!(good.verifying_key().is_ok());
    for other in others {
        assert_eq!(other.verifying_key(), Err(KeyFault::Malformed), "{other:?}");
    }
    // y = 2 lies on no point of the curve.
    let nowhere = Jwk::from_bytes(&first_encoding(2, 0));
    assert_eq!(nowhere.verifying_key(), Err(KeyFault::Malformed));
}

/// Under a weak key one signature is good for every message; the rule we use refuses it even if
/// such a key came in.
#[test]
fn the_strict_rule_refuses_what_anybody_could_sign() {
    use ed25519_dalek::Verifier;
    let neutral = bytes(SMALL_ORDER[4]);
    let key = VerifyingKey::from_bytes(&neutral).unwrap();
    let signature = Signature::from_bytes(&[neutral, [0; 32]].concat().try_into().unwrap());
    for message in [b"one".as_slice(), b"another"] {
        assert!(key.verify(message, &signature).is_ok(), "the plain rule takes it");
        assert!(key.verify_strict(message, &signature).is_err());
    }
}
