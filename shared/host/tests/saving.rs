//! Files given to a person: none is written over, none climbs out of its folder.

#![allow(clippy::unwrap_used)]

use std::fs;

use witnessmark_host::{save_bytes, save_file};

#[test]
fn bytes_come_back_and_a_file_that_is_there_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    // RFC 4648, 10: the base64 of "foobar". The bytes 0xFF 0x00 are no text.
    let first = save_bytes(folder.path(), "own.facts.csv", "Zm9vYmFy").unwrap();
    let second = save_bytes(folder.path(), "own.facts.csv", "/wA=").unwrap();
    let third = save_file(folder.path(), "own.facts.csv", "text").unwrap();
    assert_eq!(fs::read(&first).unwrap(), b"foobar");
    assert_eq!(fs::read(&second).unwrap(), [0xFF, 0x00]);
    assert_eq!(fs::read(&third).unwrap(), b"text");
    assert_eq!(second.file_name().unwrap(), "own-2.facts.csv");
    assert!(save_bytes(folder.path(), "odd.pdf", "no base64!").is_err());
    assert!(!folder.path().join("odd.pdf").exists());
}

#[test]
fn a_name_does_not_climb_out_of_the_folder() {
    let folder = tempfile::tempdir().unwrap();
    let inner = folder.path().join("downloads");
    let saved = save_bytes(&inner, "../../own.pdf", "Zm9vYmFy").unwrap();
    assert_eq!(saved.parent().unwrap(), inner);
}
