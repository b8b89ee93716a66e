//! Our envelopes' parts against the JOSE standards: key and name, header, what is signed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use base64ct::{Base64UrlUnpadded, Encoding};
use chrono::DateTime;
use ed25519_dalek::{Signature, Signer, SigningKey};
use hmac::{Hmac, KeyInit, Mac};
use sha2::Sha256;
use uuid::Uuid;
use witnessmark_core::record::{Author, Body, Digest, Jwk, Member, Record, SigningSeed, signing_input};

fn from_base64url(text: &str) -> Vec<u8> {
    Base64UrlUnpadded::decode_vec(text).unwrap()
}

/// Source of all of RFC 8037 appendix A here: as quoted in several libraries' tests; the RFC's own text was not
/// at hand. A.1 is also RFC 8032's TEST 1, read in the RFC's text.
const D: &str = "nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A";
const X: &str = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo";

fn rfc8037_seed() -> SigningSeed {
    SigningSeed::from_bytes(&from_base64url(D).try_into().unwrap())
}

/// RFC 8037 A.1 and A.2.
#[test]
fn a_key_is_written_as_in_rfc_8037() {
    let jwk = rfc8037_seed().jwk();
    assert_eq!(jwk.x, X);
    let public = r#"{"kty":"OKP","crv":"Ed25519","x":"11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo"}"#;
    assert_eq!(serde_json::from_str::<Jwk>(public).unwrap(), jwk);
    assert!(jwk.verifying_key().is_ok());
}

/// RFC 8037 A.3: the thumbprint and the text it is the digest of, in the form of RFC 7638 § 3
/// (required members only, in lexicographic order, no white space).
#[test]
fn a_device_is_named_by_its_thumbprint() {
    let jwk = rfc8037_seed().jwk();
    let text = format!(r#"{{"crv":"Ed25519","kty":"OKP","x":"{X}"}}"#);
    assert_eq!(serde_json::to_string(&jwk).unwrap(), text);
    let hex = "90facafea9b1556698540f70c0117a22ea37bd5cf3ed3c47093c1707282b4b89";
    assert_eq!(Digest::of(text.as_bytes()).to_string(), hex);
    assert_eq!(jwk.thumbprint().0, "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
    assert_eq!(rfc8037_seed().device(), jwk.thumbprint());
}

/// RFC 8037 A.4 and A.5: the payload is encoded there, so the signing input differs from ours; key
/// and signature are the same.
#[test]
fn the_signature_of_rfc_8037_verifies_under_our_key() {
    let input = "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc";
    let signature = "hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg";
    let bytes: [u8; 64] = from_base64url(signature).try_into().unwrap();
    let key = rfc8037_seed().jwk().verifying_key().unwrap();
    assert!(key.verify_strict(input.as_bytes(), &Signature::from_bytes(&bytes)).is_ok());
    assert!(key.verify_strict(&input.as_bytes()[1..], &Signature::from_bytes(&bytes)).is_err());
    let seed: [u8; 32] = from_base64url(D).try_into().unwrap();
    assert_eq!(SigningKey::from_bytes(&seed).sign(input.as_bytes()).to_bytes(), bytes);
    let payload = from_base64url(input.split_once('.').unwrap().1);
    assert_eq!(payload, b"Example of Ed25519 signing");
}

/// RFC 7797 § 4: payload, key (that of RFC 7515 A.1), header and both MACs, as quoted in several
/// libraries' tests.
#[test]
fn what_is_signed_is_that_of_rfc_7797() {
    let key = from_base64url(
        "AyM1SysPpbyDfgZld3umj1qzKObwVMkoqQ-EstJQLr_T-1qS0gZH75aKtMN3Yj0iPS4hcgUuTwjAzZr1Z9CAow",
    );
    let mac = |input: &[u8]| {
        let mut mac = Hmac::<Sha256>::new_from_slice(&key).unwrap();
        mac.update(input);
        Base64UrlUnpadded::encode_string(&mac.finalize().into_bytes())
    };
    // § 4.2, unencoded: the header's encoding and the payload's bytes as they are.
    let protected = Base64UrlUnpadded::encode_string(br#"{"alg":"HS256","b64":false,"crit":["b64"]}"#);
    assert_eq!(protected, "eyJhbGciOiJIUzI1NiIsImI2NCI6ZmFsc2UsImNyaXQiOlsiYjY0Il19");
    let input = signing_input(&protected, "$.02");
    assert_eq!(input, [protected.as_bytes(), b".$.02"].concat());
    assert_eq!(mac(&input), "A5dxf2s96_n5FLueVuW1Z_vh161FwXZC4YLPff6dmDY");
    // § 4.1, encoded, for contrast: the same construction over the encoded payload.
    let encoded = signing_input("eyJhbGciOiJIUzI1NiJ9", "JC4wMg");
    assert_eq!(mac(&encoded), "5mvfOroL-g7HyqJoozehmsaqmvTYGEq5jTI1gVvoEoQ");
}

fn record() -> Record {
    let seed = rfc8037_seed();
    let member = Member { person: Uuid::nil(), name: "Invented".into(), key: seed.jwk(), invented: true };
    let at = DateTime::parse_from_rfc3339("2026-05-02T06:41:07+02:00").unwrap();
    Author::default().write(&Body::Member(member), None, at, &[7; 10], &seed).unwrap()
}

/// RFC 7515 § 7.2.2 (flattened), RFC 7797 § 3 and § 6 (`b64` false, and critical), RFC 9864 § 2.2 (`Ed25519`).
#[test]
fn our_envelope_is_a_flattened_jws_with_an_unencoded_payload() {
    let line: serde_json::Value = serde_json::from_str(&record().line()).unwrap();
    let members: Vec<&String> = line.as_object().unwrap().keys().collect();
    assert_eq!(members, ["payload", "protected", "signature"]);
    let protected = line["protected"].as_str().unwrap();
    let header = String::from_utf8(from_base64url(protected)).unwrap();
    let kid = "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k";
    assert_eq!(header, format!(r#"{{"alg":"Ed25519","b64":false,"crit":["b64"],"kid":"{kid}"}}"#));
    // Verified here by hand, from the standards' words alone.
    let payload = line["payload"].as_str().unwrap();
    let input = [protected, ".", payload].concat();
    let signature: [u8; 64] = from_base64url(line["signature"].as_str().unwrap()).try_into().unwrap();
    let key = rfc8037_seed().jwk().verifying_key().unwrap();
    assert!(key.verify_strict(input.as_bytes(), &Signature::from_bytes(&signature)).is_ok());
    assert_eq!(record().digest, Digest::of(payload.as_bytes()));
}

/// RFC 9562 § 5.7: version 7, its first 48 bits the Unix time in milliseconds. The time is that of
/// RFC 9562 A.6's example (from memory), 1645557742000 ms.
#[test]
fn a_record_is_named_by_a_uuid_of_its_time() {
    let seed = rfc8037_seed();
    let at = DateTime::parse_from_rfc3339("2022-02-22T14:22:22-05:00").unwrap();
    let body = Body::Unknown { kind: "anything".into(), body: serde_json::json!({}) };
    let record = Author::default().write(&body, None, at, &[0xff; 10], &seed).unwrap();
    let id = record.payload.id.to_string();
    assert!(id.starts_with("017f22e2-79b0-7"), "{id}");
    assert_eq!(record.payload.id.get_version_num(), 7);
}
