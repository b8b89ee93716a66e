//! Whatever is done to an exported file is named, with its record, and exits 1.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use base64ct::{Base64UrlUnpadded, Encoding};
use common::Desk;
use ed25519_dalek::{Signer, SigningKey};
use serde_json::Value;

/// The file's lines: who signs, the machine, the inspection.
fn bundle() -> Vec<String> {
    let lines: Vec<String> = Desk::new().signed_bundle().lines().map(str::to_owned).collect();
    assert_eq!(lines.len(), 3, "a member, a machine, an inspection");
    lines
}

/// What `verify` says: each fault's kind, line, and whether a record is named.
fn verify(lines: &[String]) -> Vec<(String, Option<u64>)> {
    let desk = Desk::new();
    let file = desk.write("tampered.jsonl", &(lines.join("\n") + "\n"));
    let ran = desk.run(&["verify", &file, "--json"]);
    assert_eq!(ran.code, 1, "{ran:?}");
    // People read of each fault too, and what to do.
    let told = desk.run(&["verify", &file]).out;
    let faults = ran.json()["files"][0]["faults"].as_array().unwrap().clone();
    for fault in &faults {
        assert!(told.contains(fault["words"].as_str().unwrap()), "{told}");
        let line = fault["line"].as_u64();
        assert!(line.is_none() || fault["what"] == "unreadable" || fault["record"].is_string(), "{fault}");
    }
    faults.iter().map(|f| (f["what"].as_str().unwrap().to_owned(), f["line"].as_u64())).collect()
}

fn is_said(faults: &[(String, Option<u64>)], what: &str, line: Option<u64>) {
    assert!(faults.iter().any(|(w, l)| w == what && *l == line), "no {what} at {line:?} in {faults:?}");
}

fn envelope(line: &str) -> Value {
    serde_json::from_str(line).unwrap()
}

#[test]
fn the_untouched_file_is_good() {
    let desk = Desk::new();
    let file = desk.write("good.jsonl", &(bundle().join("\n") + "\n"));
    assert_eq!(desk.run(&["verify", &file]).code, 0);
}

#[test]
fn an_altered_payload() {
    let mut lines = bundle();
    let altered = lines[1].replace("Own", "Not");
    assert_ne!(altered, lines[1]);
    lines[1] = altered;
    is_said(&verify(&lines), "bad-signature", Some(2));
}

#[test]
fn two_signatures_swapped() {
    let mut lines = bundle();
    let (mut a, mut b) = (envelope(&lines[1]), envelope(&lines[2]));
    let kept = a["signature"].clone();
    a["signature"] = b["signature"].clone();
    b["signature"] = kept;
    (lines[1], lines[2]) = (a.to_string(), b.to_string());
    let faults = verify(&lines);
    is_said(&faults, "bad-signature", Some(2));
    is_said(&faults, "bad-signature", Some(3));
}

#[test]
fn a_record_signed_by_another_key_in_this_ones_name() {
    let mut lines = bundle();
    let mut forged = envelope(&lines[2]);
    let input = format!("{}.{}", forged["protected"].as_str().unwrap(), forged["payload"].as_str().unwrap());
    let signature = SigningKey::from_bytes(&[7; 32]).sign(input.as_bytes());
    forged["signature"] = Base64UrlUnpadded::encode_string(&signature.to_bytes()).into();
    lines[2] = forged.to_string();
    is_said(&verify(&lines), "bad-signature", Some(3));
}

#[test]
fn a_line_removed() {
    let mut lines = bundle();
    lines.remove(1);
    is_said(&verify(&lines), "missing-record", None);
}

#[test]
fn a_line_of_another_device_slipped_in() {
    let mut lines = bundle();
    lines.push(bundle().remove(2));
    is_said(&verify(&lines), "unknown-key", Some(4));
}

#[test]
fn the_line_that_states_the_key_removed() {
    let mut lines = bundle();
    lines.remove(0);
    let faults = verify(&lines);
    is_said(&faults, "unknown-key", Some(1));
    is_said(&faults, "unknown-key", Some(2));
}

#[test]
fn lines_put_in_another_order_are_still_what_was_signed() {
    // The chain is in the records, not in the order of the lines.
    let desk = Desk::new();
    let mut lines = bundle();
    lines.reverse();
    let file = desk.write("reversed.jsonl", &lines.join("\n"));
    assert_eq!(desk.run(&["verify", &file]).code, 0);
}

#[test]
fn a_line_cut_short_or_of_other_bytes() {
    let mut lines = bundle();
    let half = lines[2].len() / 2;
    lines[2].truncate(half);
    is_said(&verify(&lines), "unreadable", Some(3));
    let desk = Desk::new();
    std::fs::write(desk.path("bytes"), [0xff, 0xfe, 0x00, b'\n', 0x80]).unwrap();
    assert_eq!(desk.run(&["verify", &desk.path("bytes")]).code, 1);
}

#[test]
fn one_bad_file_among_good_ones_is_enough() {
    let desk = Desk::new();
    let mut lines = bundle();
    let good = desk.write("good.jsonl", &lines.join("\n"));
    lines.remove(1);
    let bad = desk.write("bad.jsonl", &lines.join("\n"));
    let ran = desk.run(&["verify", &good, &bad, "--json"]);
    let json = ran.json();
    let goods: Vec<_> = json["files"].as_array().unwrap().iter().map(|file| &file["good"]).collect();
    assert_eq!((ran.code, goods), (1, vec![&Value::Bool(true), &Value::Bool(false)]));
}
