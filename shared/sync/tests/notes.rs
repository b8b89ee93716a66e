//! Signed notes and checkpoints against their standards.
//!
//! C2SP signed-note and tlog-checkpoint: text seen. The signed example with its keys: documentation of
//! golang.org/x/mod/sumdb/note (text seen).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use base64ct::{Base64, Encoding};
use proptest::prelude::*;
use witnessmark_core::record::{Digest, SigningSeed};
use witnessmark_sync::checkpoint::{Checkpoint, CheckpointFault};
use witnessmark_sync::merkle::Hash;
use witnessmark_sync::note::{self, NoteFault, Verifier};

const VERIFIER: &str = "PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW";
/// What follows the name and id in the signer's text: the type 1, then the 32 secret bytes.
const SECRET: &str = "AYEKFALVFGyNhPJEMzD1QIDr+Y7hfZx09iUvxdXHKDFz";
const TEXT: &str =
    "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n";
const LINE: &str = "\u{2014} PeterNeumann \
     x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=\n";

fn verifier() -> Verifier {
    VERIFIER.parse().unwrap()
}

fn seed() -> SigningSeed {
    let bytes = Base64::decode_vec(SECRET).unwrap();
    SigningSeed::from_bytes(bytes[1..].try_into().unwrap())
}

#[test]
fn the_published_note_opens_and_is_written_byte_for_byte() {
    let note = format!("{TEXT}\n{LINE}");
    assert_eq!(verifier().open(&note), Ok(TEXT));
    assert_eq!(note::sign(TEXT, "PeterNeumann", &seed()), Ok(note));
    assert_eq!(Verifier::new("PeterNeumann", &seed().jwk()).unwrap().to_string(), VERIFIER);
    assert_eq!(verifier().id(), [0xc7, 0x4f, 0x20, 0xa3]);
}

/// The example key of the standard's current text, by its text form in another implementation's tests
/// (seen): type and key give the id.
#[test]
fn the_standards_example_key_has_its_id() {
    let text = "example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k";
    assert_eq!(text.parse::<Verifier>().unwrap().to_string(), text);
    // A plus sign in the base64 isn't a part's end.
    let text = "TEST+7997405c+AQcC+FTVKf0jlTdHDY3rbevmnKxxPjigCXlVtGe6RIr6";
    assert_eq!(text.parse::<Verifier>().unwrap().name(), "TEST");
}

/// The manglings that the tests of golang.org/x/mod/sumdb/note refuse (text seen).
#[test]
fn a_mangled_verifier_is_refused() {
    for from in 0..VERIFIER.len() {
        for to in from..=VERIFIER.len() {
            let part = &VERIFIER[from..to];
            assert!(part == VERIFIER || part.parse::<Verifier>().is_err(), "{part}");
        }
    }
    for at in 0..VERIFIER.len() {
        let mut mangled = VERIFIER.as_bytes().to_vec();
        mangled[at] += 1;
        assert!(str::from_utf8(&mangled).unwrap().parse::<Verifier>().is_err(), "{at}");
    }
    // A key too long, and an unknown type, each with an id that fits.
    for text in [
        "PeterNeumann+cc469956+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TWBADKEY==",
        "PeterNeumann+173116ae+ZRpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW",
        &VERIFIER.replace("c74f20a3", "C74F20A3"),
    ] {
        assert!(text.parse::<Verifier>().is_err(), "{text}");
    }
}

/// § Format: the text may have empty lines; the last one parts it from the signatures. The note is the
/// standard's example, whose key we don't have: so its line is passed over.
#[test]
fn another_keys_line_is_passed_over() {
    let text =
        "Ognuno sta solo sul cuor della terra\ntrafitto da un raggio di sole:\n\ned \u{e8} subito sera.\n";
    let theirs = "\u{2014} quasimodo.example/salvatore \
         NnugSzTjtVAewIS+Z/iJhUPeFDkO/5QQ2i5ddnGITLlC+EhfLW9oJKONrMouFSQU0xMcXxj99ihAQwaqP3ZekRwNtIc=\n";
    let ours = note::sign(text, "PeterNeumann", &seed()).unwrap();
    assert_eq!(verifier().open(&format!("{ours}{theirs}")), Ok(text));
    let line = ours.strip_prefix(&format!("{text}\n")).unwrap();
    assert_eq!(verifier().open(&format!("{text}\n{theirs}{line}")), Ok(text));
    let unsigned = NoteFault::Unsigned("PeterNeumann".into());
    assert_eq!(verifier().open(&format!("{text}\n{theirs}")), Err(unsigned.clone()));
    // § Signatures: a line that shares the name but not the id, or the id but not the name, isn't ours.
    let other_id = "\u{2014} PeterNeumann AAAAAAAA\n";
    assert_eq!(verifier().open(&format!("{text}\n{other_id}{line}")), Ok(text));
    let other_name = LINE.replace("PeterNeumann", "PeterN");
    assert_eq!(verifier().open(&format!("{TEXT}\n{other_name}")), Err(unsigned));
}

/// § Format: at least 16 signatures are read; we stop well before the note is a burden.
#[test]
fn signatures_are_many_but_bounded() {
    let note = format!("{TEXT}\n{LINE}");
    let others = |count| "\u{2014} other AAAAAAAA\n".repeat(count);
    assert_eq!(verifier().open(&(note.clone() + &others(15))), Ok(TEXT));
    assert!(matches!(verifier().open(&(note + &others(1000))), Err(NoteFault::Malformed(_))));
}

#[test]
fn a_false_signature_refuses_the_note() {
    let forged = Err(NoteFault::Forged("PeterNeumann".into()));
    let changed = format!("{TEXT}\n{LINE}").replace("cryptography", "cryptographY");
    assert_eq!(verifier().open(&changed), forged);
    // Beside a true one too, and when it is cut short.
    let short = "\u{2014} PeterNeumann x08go/ZJkuBS9UG/\n";
    assert_eq!(verifier().open(&format!("{TEXT}\n{LINE}{short}")), forged);
}

#[test]
fn what_is_no_note_is_refused() {
    let line = LINE.trim_end();
    for note in [
        String::new(),
        "\n\n".into(),
        TEXT.into(),
        format!("{TEXT}{LINE}"),
        format!("{TEXT}\n{line}"),
        format!("{TEXT}\n{LINE}\n"),
        format!("{TEXT}\n{LINE}more\n"),
        format!("{TEXT}\n{}", LINE.replace('\u{2014}', "-")),
        format!("{TEXT}\n{}", LINE.replace("PeterNeumann ", "Peter Neumann ")),
        format!("{TEXT}\n{}", LINE.replace("PeterNeumann ", "Peter+Neumann ")),
        format!("{TEXT}\n{}", LINE.replace("PeterNeumann ", " ")),
        format!("{TEXT}\n{}", LINE.replace('=', "")),
        format!("{TEXT}\n\u{2014} PeterNeumann AAAA\n"),
        format!("{TEXT}\n{LINE}").replace('\n', "\r\n"),
        format!("tab\there\n\n{LINE}"),
    ] {
        assert!(matches!(verifier().open(&note), Err(NoteFault::Malformed(_))), "{note:?}");
    }
}

#[test]
fn names_and_texts_are_checked_before_signing() {
    for name in ["", "two words", "a+b", "a\u{a0}b", "a\nb"] {
        assert_eq!(note::sign(TEXT, name, &seed()), Err(NoteFault::Name(name.into())));
    }
    for text in ["", "no end", "a\rb\n"] {
        assert!(matches!(note::sign(text, "a", &seed()), Err(NoteFault::Malformed(_))), "{text:?}");
    }
}

const ROOT: &str = "CsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=";

fn signed(text: &str, name: &str) -> (String, Verifier) {
    (note::sign(text, name, &seed()).unwrap(), Verifier::new(name, &seed().jwk()).unwrap())
}

/// The body of the standard's example (tlog-checkpoint), signed with our key.
#[test]
fn the_standards_checkpoint_reads_and_is_written_alike() {
    let text = format!("example.com/behind-the-sofa\n20852163\n{ROOT}\n");
    let (note, verifier) = signed(&text, "example.com/behind-the-sofa");
    let read = Checkpoint::open(&note, &verifier).unwrap();
    assert_eq!((read.origin.as_str(), read.size), ("example.com/behind-the-sofa", 20_852_163));
    // The root in hexadecimal, by coreutils' base64.
    assert_eq!(read.root.to_string(), "0ac5186a91863e8e1d90c808014aa89bf5da8e3ee1d9f07630f0378f68f1ab62");
    assert_eq!(read.sign(&seed()), Ok(note));
}

#[test]
fn a_schools_log_is_named_by_its_digest() {
    let school = Digest::of(b"");
    let origin = Checkpoint::origin(&school);
    assert_eq!(
        origin,
        "witnessmark.org/school/e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    );
    let empty = Checkpoint { origin: origin.clone(), size: 0, root: Hash::empty() };
    let note = empty.sign(&seed()).unwrap();
    let verifier = Verifier::new(&origin, &seed().jwk()).unwrap();
    assert_eq!(Checkpoint::open(&note, &verifier), Ok(empty));
}

#[test]
fn a_checkpoint_of_another_log_is_refused() {
    let (note, verifier) = signed(&format!("other.example\n1\n{ROOT}\n"), "log.example");
    let fault = CheckpointFault::Origin { wanted: "log.example".into(), found: "other.example".into() };
    assert_eq!(Checkpoint::open(&note, &verifier), Err(fault));
}

#[test]
fn extension_lines_are_passed_over() {
    let (note, verifier) = signed(&format!("log.example\n1\n{ROOT}\nmore\nlines\n"), "log.example");
    assert_eq!(Checkpoint::open(&note, &verifier).map(|read| read.size), Ok(1));
}

#[test]
fn what_is_no_checkpoint_is_refused() {
    for text in [
        "\n".to_owned(),
        "log.example\n".into(),
        "log.example\n1\n".into(),
        format!("\n1\n{ROOT}\n"),
        format!("log.example\n1\n{ROOT}\n\nmore\n"),
        format!("log.example\n01\n{ROOT}\n"),
        format!("log.example\n+1\n{ROOT}\n"),
        format!("log.example\n-1\n{ROOT}\n"),
        format!("log.example\n 1\n{ROOT}\n"),
        format!("log.example\n\n{ROOT}\n"),
        format!("log.example\n18446744073709551616\n{ROOT}\n"),
        format!("log.example\n1\n{}\n", ROOT.trim_end_matches('=')),
        // 33 and 31 bytes; and unused bits that aren't zero.
        format!("log.example\n1\n{}\n", ROOT.replace("2I=", "2Ia")),
        format!("log.example\n1\n{}\n", ROOT.replace("q2I=", "")),
        format!("log.example\n1\n{}\n", ROOT.replace("2I=", "2J=")),
    ] {
        let (note, verifier) = signed(&text, "log.example");
        let read = Checkpoint::open(&note, &verifier);
        assert!(matches!(read, Err(CheckpointFault::Malformed(_))), "{text:?}: {read:?}");
    }
}

proptest! {
    /// Reading ends in an answer, and never in believing what wasn't signed.
    #[test]
    fn random_notes_are_refused(note in "(\u{2014}|PeterNeumann|[A-Za-z0-9+/=]{0,9}|[ \n\r]|\\PC){0,60}") {
        prop_assert!(verifier().open(&note).is_err());
        prop_assert!(Checkpoint::open(&note, &verifier()).is_err());
        prop_assert!(note.parse::<Verifier>().is_err());
    }

    /// Any signed text is read without a panic, and what reads writes the same, but for extensions.
    #[test]
    fn random_texts_read_or_fail(text in "(log\\.example\n)?([0-9]{1,22}|\\PC{0,9})\n([A-Za-z0-9+/]{43}=|\\PC{0,50})\n") {
        let (note, verifier) = signed(&text, "log.example");
        if let Ok(read) = Checkpoint::open(&note, &verifier) {
            prop_assert_eq!(read.sign(&seed()), Ok(note));
        }
    }

    /// Any one bit turned in a signed note spoils it.
    #[test]
    fn a_changed_note_is_refused(at in 0..(TEXT.len() + 1 + LINE.len()), bit in 0u8..8) {
        let mut note = format!("{TEXT}\n{LINE}").into_bytes();
        note[at] ^= 1u8 << bit;
        if let Ok(note) = str::from_utf8(&note) {
            prop_assert!(verifier().open(note).is_err());
        }
    }
}
