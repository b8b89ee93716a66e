//! Laws of bundles: what is as signed verifies, and nothing else does.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::story::story;
use common::*;
use proptest::prelude::*;
use proptest::sample::Index;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Checked, Report, check, read_bundle, write_bundle};

fn checked(text: &str) -> Report {
    check(&read_bundle(text).unwrap())
}

fn faults(text: &str) -> Vec<Checked> {
    checked(text).faults.into_iter().map(|fault| fault.fault).collect()
}

fn lines(world: &World) -> Vec<String> {
    world.records.iter().map(Record::line).collect()
}

/// A change of one byte is found out: the file is no text, or has a fault.
fn found_out(bytes: Vec<u8>) -> bool {
    let Ok(text) = String::from_utf8(bytes) else { return true };
    !faults(&text).is_empty()
}

/// A phone with three records about one machine and two about another.
fn long() -> World {
    let mut world = World::fit();
    world.write(0, Some(other_machine()), Body::Machine(described()));
    world.write(0, Some(machine()), look(vec![finding("base", Meaning::Watch)]));
    world.write(0, Some(other_machine()), look(vec![]));
    world
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// What was signed verifies in any order and any number, and reads back byte for byte; kinds
    /// of newer versions too.
    #[test]
    fn a_bundle_as_signed_has_no_fault(world in story(), again in any::<Index>(), seed in any::<u64>()) {
        let mut lines = lines(&world);
        lines.push(again.get(&lines).clone());
        lines.sort_by_key(|line| Digest::of(&[line.as_bytes(), &seed.to_be_bytes()].concat()));
        let text = lines.join("\n") + "\n";
        prop_assert_eq!(faults(&text), vec![]);
        let bundle = read_bundle(&text).unwrap();
        prop_assert_eq!(write_bundle(bundle.records.iter().map(|(_, record)| record)), text);
    }

    #[test]
    fn one_byte_changed_anywhere_is_found_out(
        world in story(),
        line in any::<Index>(),
        place in any::<Index>(),
        byte in any::<u8>(),
    ) {
        let mut lines: Vec<Vec<u8>> = lines(&world).into_iter().map(String::into_bytes).collect();
        let line = line.index(lines.len());
        let place = place.index(lines[line].len());
        prop_assume!(lines[line][place] != byte);
        lines[line][place] = byte;
        prop_assert!(found_out(lines.join(&b'\n')));
    }

    /// Any record but the last of what its author wrote about its machine is missed.
    #[test]
    fn a_record_left_out_is_missed(world in story(), dropped in any::<Index>()) {
        let dropped = dropped.index(world.records.len());
        let payload = &world.records[dropped].payload;
        let followed = world.records.iter().any(|r| {
            r.payload.device == payload.device && r.payload.machine == payload.machine && r.payload.of_seq > payload.of_seq
        });
        prop_assume!(followed);
        let rest = world.records.iter().enumerate().filter(|(n, _)| *n != dropped);
        let told = faults(&write_bundle(rest.map(|(_, record)| record)));
        let missing = Checked::MissingRecord { from: payload.of_seq, to: payload.of_seq };
        prop_assert_eq!(told, vec![missing]);
    }

    /// Payloads or signatures put into each other's place are found out.
    #[test]
    fn what_is_swapped_is_found_out(world in story(), one in any::<Index>(), two in any::<Index>(), signatures in any::<bool>()) {
        let (one, two) = (one.index(world.records.len()), two.index(world.records.len()));
        prop_assume!(one != two);
        let mut envelopes: Vec<_> = world.records.iter().map(|record| record.envelope.clone()).collect();
        let (first, second) = (envelopes[one].clone(), envelopes[two].clone());
        if signatures {
            envelopes[one].signature = second.signature;
            envelopes[two].signature = first.signature;
        } else {
            envelopes[one].payload = second.payload;
            envelopes[two].payload = first.payload;
        }
        let text: Vec<String> = envelopes.iter().map(|e| serde_json::to_string(e).unwrap()).collect();
        let told = faults(&text.join("\n"));
        prop_assert!(told.iter().any(|fault| matches!(fault, Checked::BadSignature | Checked::UnknownKey | Checked::Unreadable { .. })), "{told:?}");
    }
}

/// Every bit of every byte of a member's record and of an inspection's.
#[test]
fn every_single_bit_counts() {
    let world = World::fit();
    let lines: Vec<Vec<u8>> = lines(&world).into_iter().map(String::into_bytes).collect();
    for line in [0, 2] {
        for place in 0..lines[line].len() {
            for bit in 0..8 {
                let mut changed = lines.clone();
                changed[line][place] ^= 1 << bit;
                assert!(found_out(changed.join(&b'\n')), "line {line}, byte {place}, bit {bit}");
            }
        }
    }
}

#[test]
fn the_same_line_twice_is_no_fault() {
    let text = write_bundle(&World::fit().records);
    assert_eq!(faults(&(text.clone() + &text)), []);
}

#[test]
fn records_about_other_machines_need_not_be_there() {
    let world = long();
    let about = world.records.iter().filter(|r| r.payload.machine != Some(other_machine()));
    assert_eq!(faults(&write_bundle(about)), []);
}

/// The limit of what a file alone can tell: nobody in it speaks of the last record left out.
#[test]
fn the_last_word_left_out_is_not_missed() {
    let mut world = long();
    world.records.pop();
    assert_eq!(faults(&write_bundle(&world.records)), []);
}

#[test]
fn without_the_member_record_nobody_knows_the_key() {
    let told = faults(&write_bundle(&World::fit().records[1..]));
    assert_eq!(told, [Checked::UnknownKey, Checked::UnknownKey]);
}

#[test]
fn several_missing_are_told_as_a_range() {
    let world = long();
    let about: Vec<&Record> = world.records.iter().filter(|r| r.payload.machine == Some(machine())).collect();
    let told = faults(&write_bundle([&world.records[0], about[2]]));
    assert_eq!(told, [Checked::MissingRecord { from: 1, to: 2 }]);
}

/// An author who writes two records for one place has split their word, in either count.
#[test]
fn two_records_in_one_place_are_a_fork() {
    let world = long();
    let key = &world.devices[0].seed;
    let last = world.records.iter().rfind(|r| r.payload.machine == Some(machine())).unwrap();
    let mut other = last.payload.clone();
    other.body["hours"] = serde_json::json!(11);
    let same_place = Record::sign(&other, key).unwrap();
    other.seq = 99;
    let same_place_of_machine = Record::sign(&other, key).unwrap();
    for forked in [same_place, same_place_of_machine] {
        let told = faults(&write_bundle(world.records.iter().chain([&forked])));
        assert!(told.iter().any(|fault| matches!(fault, Checked::ForkedChain { .. })), "{told:?}");
        let turned = faults(&write_bundle([&forked].into_iter().chain(&world.records)));
        assert_eq!(told.len(), turned.len(), "told alike whatever the order");
    }
}

#[test]
fn a_record_that_does_not_follow_breaks_the_chain() {
    let world = World::fit();
    let key = &world.devices[0].seed;
    let last = world.records.last().unwrap();
    let elsewhere = Some(Digest::of(b"another past"));
    let by_machine = witnessmark_core::record::Payload { of_prev: elsewhere, ..last.payload.clone() };
    let by_device = witnessmark_core::record::Payload { prev: elsewhere, ..last.payload.clone() };
    for payload in [by_machine, by_device] {
        let wrong = Record::sign(&payload, key).unwrap();
        let told = faults(&write_bundle(world.records[..2].iter().chain([&wrong])));
        assert_eq!(told, [Checked::BrokenChain]);
    }
}

#[test]
fn a_known_kind_that_says_what_it_cannot_say_is_malformed() {
    let mut world = World::fit();
    let odd = Body::Unknown { kind: "machine".into(), body: serde_json::json!({ "name": "half a machine" }) };
    world.write(0, Some(machine()), odd);
    let told = faults(&write_bundle(&world.records));
    assert!(matches!(told.as_slice(), [Checked::Malformed { kind, .. }] if kind == "machine"), "{told:?}");
}

#[test]
fn each_fault_names_its_line() {
    let mut lines = lines(&World::fit());
    lines[1] = lines[1].replace("Invented machine", "Imagined machine");
    lines.insert(0, "not a record".into());
    lines.insert(0, String::new());
    let report = checked(&lines.join("\r\n"));
    let told: Vec<_> = report.faults.iter().map(|fault| (fault.line, &fault.fault)).collect();
    assert!(matches!(told[0], (Some(2), Checked::Unreadable { .. })), "{told:?}");
    assert!(told.contains(&(Some(4), &Checked::BadSignature)), "{told:?}");
}

#[test]
fn an_empty_file_is_no_bundle() {
    assert!(read_bundle("").is_err());
    assert!(read_bundle("\n \r\n").is_err());
}
