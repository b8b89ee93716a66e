//! Checking a bundle against bare signature checks of the same messages, in the same run.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use base64ct::{Base64UrlUnpadded, Encoding};
use common::{life, median, ratio};
use ed25519_dalek::Signature;
use witnessmark_core::record::{check, read_bundle, write_bundle};

fn main() {
    for (points, of) in [(1, "small records"), (60, "inspections of 60 points")] {
        let (records, seed) = life(500, points);
        let text = write_bundle(&records);
        let ours = median(5, || {
            let report = check(&read_bundle(&text).unwrap());
            assert!(report.faults.is_empty());
        });
        let key = seed.jwk().verifying_key().unwrap();
        let signed: Vec<(Vec<u8>, Signature)> = records
            .iter()
            .map(|record| {
                let envelope = &record.envelope;
                let message = format!("{}.{}", envelope.protected, envelope.payload).into_bytes();
                let signature = Base64UrlUnpadded::decode_vec(&envelope.signature).unwrap();
                (message, Signature::from_slice(&signature).unwrap())
            })
            .collect();
        let bare = median(5, || {
            assert!(signed.iter().all(|(message, signature)| key.verify_strict(message, signature).is_ok()));
        });
        println!("{} records, {} kB: {of}", records.len(), text.len() >> 10);
        ratio("  reading and checking the bundle", ours, "bare ed25519-dalek verify_strict", bare);
    }
}
