//! Roots and proofs of the tree that Certificate Transparency's reference implementation is tested with
//! (RFC 6962; leaves and hashes as kept in transparency-dev/merkle, text seen).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::Desk;
use serde_json::{Value, json};

const LEAVES: [&str; 8] =
    ["", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"];

fn compute(input: &Value) -> Value {
    let ran = Desk::new().run_with(&["compute", "merkle-root"], &input.to_string());
    assert_eq!(ran.code, 0, "{ran:?}");
    ran.json()
}

#[test]
fn the_root_and_proofs_are_the_references() {
    let found = compute(&json!({ "leaves": LEAVES, "older": 6 }));
    assert_eq!(found["size"], 8);
    assert_eq!(found["root"], "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");
    assert_eq!(found["proofs"].as_array().unwrap().len(), 8);
    assert_eq!(
        found["proofs"][5],
        json!([
            "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
            "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
            "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        ])
    );
    assert_eq!(
        found["consistency"],
        json!([
            "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
            "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
            "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        ])
    );
}

/// RFC 6962 § 2.1: the hash of an empty list is the hash of an empty string (FIPS 180-4's value for it).
#[test]
fn no_leaves_have_a_root_too() {
    let found = compute(&json!({ "leaves": [] }));
    assert_eq!(found["root"], "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    assert_eq!((&found["proofs"], &found["consistency"]), (&json!([]), &Value::Null));
}

#[test]
fn what_is_no_leaf_is_named() {
    for (input, named) in [
        (json!({ "leaves": ["00", "0x01"] }), "leaves[1]"),
        (json!({ "leaves": ["000"] }), "leaves[0]"),
        (json!({ "leaves": ["00"], "older": 2 }), "older"),
        (json!({ "leaves": ["00"], "older": -1 }), "older"),
        (json!({ "leaf": ["00"] }), "leaf"),
    ] {
        let ran = Desk::new().run_with(&["compute", "merkle-root"], &input.to_string());
        assert_eq!((ran.code, ran.kind().as_str()), (2, "input"), "{input}");
        let message = ran.fault()["message"].as_str().unwrap().to_owned();
        assert!(message.contains(named), "{message}");
    }
}
