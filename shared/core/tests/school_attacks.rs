//! Somebody without the right who writes records that no app would write: clocks set back, another's
//! name, another's machine. The rules are our own: no source.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "common/schooling.rs"]
mod schooling;

use common::*;
use schooling::*;
use witnessmark_core::record::{Clock, Payload, machine_id};

/// The last record again, at another causal time, with the wall clock that fits it.
fn moved(world: &mut World, by: usize, clock: Clock) {
    let mut payload = world.records.pop().unwrap().payload;
    payload.at -= TimeDelta::milliseconds(i64::try_from(payload.clock.ms - clock.ms).unwrap());
    payload.clock = clock;
    world.records.push(Record::sign(&payload, &world.devices[by].seed).unwrap());
}

/// Just before the record by which the machine came under its school.
fn before_enrolled(world: &World) -> Clock {
    let enrolled = world.records.iter().find(|record| record.payload.kind == "machine-enrolled").unwrap();
    Clock { ms: enrolled.payload.clock.ms - 1, ..enrolled.payload.clock }
}

#[test]
fn who_claims_the_owners_name_and_vouches_for_the_owner_owns_nothing() {
    let mut world = school(&[0; 7]);
    let (owner, thief) = (world.id(OWNER), SigningSeed::from_bytes(&[77; 32]));
    let person = person(PEOPLE[OWNER]);
    world.devices.push(Device {
        seed: SigningSeed::from_bytes(&[77; 32]),
        knows: (0..world.records.len()).collect(),
        skew: TimeDelta::zero(),
    });
    let new = world.devices.len() - 1;
    let member = Member { person, name: "Invented pilot".into(), key: thief.jwk(), invented: true };
    world.write(new, None, Body::Member(member));
    world.write(new, None, vouched(owner.clone()));
    world.write(new, Some(machine()), enrolled(None));
    assert_eq!(world.history().school, Some(world.school()));
    let trust = Trust::from_records(&world.records);
    assert!(!trust.same_person(&owner, &thief.device()));
    // The owner's own word does it.
    world.write(OWNER, None, vouched(thief.device()));
    assert!(Trust::from_records(&world.records).same_person(&owner, &thief.device()));
}

#[test]
fn a_stranger_doesnt_speak_from_before_the_machine_was_under_the_school() {
    let mut world = school(&[0; 7]);
    let clock = before_enrolled(&world);
    world.write(OUTSIDER, Some(machine()), limit(Some(1.0), Some(2.0)));
    moved(&mut world, OUTSIDER, clock);
    assert!(world.history().confirmed.is_empty());
}

#[test]
fn what_the_owner_had_seen_before_is_judged_as_before() {
    let mut world = World::of_people(&PEOPLE);
    let school = world.founds(ROOT);
    world.admits(ROOT, school, OWNER, witnessmark_core::record::Role::Pilot, None);
    world.meet(ROOT, OWNER);
    world.write(OWNER, Some(machine()), Body::Machine(described()));
    world.meet(OWNER, OUTSIDER);
    world.write(OUTSIDER, Some(machine()), limit(Some(1.0), Some(2.0)));
    world.meet(OWNER, OUTSIDER);
    world.write(OWNER, Some(machine()), enrolled(Some(school)));
    assert_eq!(world.history().school, Some(school));
    assert_eq!(world.history().confirmed.len(), 1);
}

#[test]
fn a_causal_time_before_ones_own_clock_gives_no_right() {
    let mut world = World::new(2);
    world.write(0, Some(machine()), Body::Machine(described()));
    world.write(1, Some(machine()), look(vec![]));
    assert_eq!(world.history().looks.len(), 1);
    let mut payload = world.records.pop().unwrap().payload;
    payload.clock.ms -= 1;
    world.records.push(Record::sign(&payload, &world.devices[1].seed).unwrap());
    assert!(world.history().looks.is_empty());
}

#[test]
fn nobody_registers_anothers_machine_by_a_clock_set_back() {
    let mut world = World::new(2);
    let owner = world.id(0);
    let ms = u64::try_from(world.now.timestamp_millis()).unwrap();
    let machine = machine_id(&owner, 2, ms);
    world.write(0, Some(machine), Body::Machine(described()));
    let clock = Clock { ms, n: 0 };
    world.write(1, Some(machine), Body::Machine(described()));
    moved(&mut world, 1, clock);
    world.write(
        1,
        Some(machine),
        Body::LimitConfirmed(match limit(Some(1.0), None) {
            Body::LimitConfirmed(body) => body,
            _ => unreachable!(),
        }),
    );
    moved(&mut world, 1, clock);
    let history = History::of(machine, &world.records, &Trust::from_records(&world.records));
    assert_eq!(history.registered_by, Some(owner));
    assert!(history.confirmed.is_empty());
}

#[test]
fn time_runs_neither_backwards_nor_past_all_numbers() {
    let mut world = World::fit();
    world.write(0, Some(machine()), flown(-5.0));
    assert_eq!(world.history().hours, described().hours);
    for _ in 0..3 {
        world.write(0, Some(machine()), flown(f64::MAX));
    }
    let kept = serde_json::to_string(&world.history()).unwrap();
    assert!(serde_json::from_str::<History>(&kept).is_ok());
}

#[test]
fn numbers_that_readers_count_differently_are_in_no_record() {
    let world = World::fit();
    let first = world.records[0].payload.clone();
    let most = (1 << 53) - 1;
    for (count, good) in [(most, true), (most + 1, false)] {
        let clock = Payload { clock: Clock { ms: count, n: 0 }, ..first.clone() };
        let seen = Payload { seen: [(world.id(0), count)].into(), ..first.clone() };
        for payload in [clock, seen] {
            assert_eq!(Record::sign(&payload, &world.devices[0].seed).is_ok(), good);
        }
    }
}
