//! Laws of rights in a school, over stories that no author would think of: what is decided is decided
//! by records alone, alike for every reader, and nobody without a right makes a verdict milder. The
//! laws are our own: no source.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;
#[path = "common/schooling.rs"]
mod schooling;

use common::*;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;
use schooling::*;
use witnessmark_core::record::Role;
use witnessmark_core::verdict::{State, Verdict};

fn history(records: &[Record]) -> History {
    History::of(machine(), records, &Trust::from_records(records))
}

/// All that trust says.
fn told(records: &[Record]) -> String {
    format!("{:?}", Trust::from_records(records))
}

/// The same without what is told of one device's own joining, which binds nobody else.
fn state(records: &[Record]) -> (BTreeMap<DeviceId, Option<u64>>, String) {
    let trust = Trust::from_records(records);
    let ended = trust.devices().map(|(device, standing)| (device.clone(), standing.last_good));
    (ended.collect(), format!("{:?}", trust.schools().collect::<Vec<_>>()))
}

/// How bad each matter is that a verdict speaks of.
fn matters(verdict: &Verdict) -> BTreeMap<String, State> {
    let mut matters: BTreeMap<String, State> = BTreeMap::new();
    for reason in &verdict.reasons {
        let key = match (&reason.point, &reason.record) {
            (Some(point), _) => format!("at {point}"),
            (None, Some(record)) => format!("record {record}"),
            (None, None) => format!("{:?}", reason.rule),
        };
        let worst = matters.entry(key).or_insert(reason.state);
        *worst = (*worst).max(reason.state);
    }
    matters
}

fn verdict(history: &History, world: &World) -> Verdict {
    verdict_of(history, &confirmed_sheet(), world.now + TimeDelta::minutes(1))
}

/// A phone that knows everything does these things.
fn goes_on(world: &World, by: usize, events: &[Event]) -> World {
    let mut world = World {
        // A seed is never copied: the same ones are made again.
        devices: std::iter::zip(World::of_people(&PEOPLE).devices, &world.devices)
            .map(|(fresh, device)| Device { knows: device.knows.clone(), skew: device.skew, ..fresh })
            .collect(),
        records: world.records.clone(),
        knew: world.knew.clone(),
        now: world.now,
    };
    world.devices[by].knows = (0..world.records.len()).collect();
    events.iter().for_each(|event| world.happens(by_one(event, by)));
    world
}

/// The same event, done by this phone.
fn by_one(event: &Event, by: usize) -> Event {
    let mut event = event.clone();
    match &mut event {
        Event::Found(who)
        | Event::Join(who, _)
        | Event::Admit(who, ..)
        | Event::End(who, ..)
        | Event::Hand(who, ..)
        | Event::Vouch(who, _)
        | Event::Revoke(who, _)
        | Event::Enrol(who, _)
        | Event::Look(who, ..)
        | Event::Rectify(who, _)
        | Event::Correct(who, ..)
        | Event::Defer(who, _)
        | Event::Describe(who)
        | Event::Limit(who)
        | Event::Time(who)
        | Event::Begin(who)
        | Event::List(who, _)
        | Event::Second(who, _)
        | Event::Release(who)
        | Event::Component(who)
        | Event::Due(who) => *who = by,
        Event::Meet(..) | Event::Night | Event::Restore(..) => {}
    }
    event
}

/// The last record again, as if its author's clock had gone so many minutes behind.
fn set_back(world: &mut World, minutes: u32) {
    let last = world.records.pop().unwrap();
    let mut payload = last.payload.clone();
    payload.at -= TimeDelta::minutes(minutes.into());
    payload.clock.ms = payload.clock.ms.saturating_sub(u64::from(minutes) * 60_000);
    let device = world.devices.iter().find(|device| device.seed.device() == payload.device).unwrap();
    world.records.push(Record::sign(&payload, &device.seed).unwrap());
}

/// Mostly none; else up to the length of a story.
fn minutes_back() -> impl Strategy<Value = u32> {
    prop_oneof![Just(0), 1u32..90, Just(2000)]
}

fn deeds() -> impl Strategy<Value = Vec<Event>> {
    vec(prop_oneof![of_trust(), of_machines()], 1..6)
}

proptest! {
    /// Neither the order of records nor their repetition decides anything.
    #[test]
    fn every_order_tells_the_same(world in story(40), salt in any::<u32>()) {
        let mut shuffled: Vec<Record> = world.records.iter().chain(&world.records).cloned().collect();
        shuffled.sort_by_key(|record| Digest::of(&[&record.digest.0[..], &salt.to_be_bytes()].concat()));
        prop_assert!(told(&shuffled) == told(&world.records));
        prop_assert_eq!(history(&shuffled), history(&world.records));
        let role = |records: &[Record], record: &Record| {
            let trust = Trust::from_records(records);
            trust.school(&world.school()).and_then(|school| school.role(record))
        };
        for record in world.records.iter().rev().take(5) {
            prop_assert_eq!(role(&shuffled, record), role(&world.records, record));
        }
    }

    /// Whoever has no place in the school makes no verdict on its machine milder, whatever they sign.
    #[test]
    fn an_outsider_makes_a_verdict_only_more_careful(world in story(30), deeds in deeds()) {
        let before = history(&world.records);
        let trust = Trust::from_records(&world.records);
        let outsider = world.id(OUTSIDER);
        // A story may have let that one in, or made the machine nobody's but its owner's.
        let place = before.school.is_some_and(|id| trust.school(&id).is_some_and(|s| s.knows(&outsider)));
        if before.school.is_none() || place {
            return Ok(());
        }
        let later = goes_on(&world, OUTSIDER, &deeds);
        let (was, is) = (verdict(&before, &later), verdict(&history(&later.records), &later));
        let now = matters(&is);
        for (matter, state) in matters(&was) {
            prop_assert!(now.get(&matter).is_some_and(|now| *now >= state), "{matter} was {state:?}: {is:?}");
        }
    }

    /// What a key signs after its end changes nothing: no verdict, no role, nobody else's end.
    #[test]
    fn an_ended_key_changes_nothing_any_more(world in story(30), deeds in deeds(), which in any::<Index>(), back in minutes_back()) {
        let trust = Trust::from_records(&world.records);
        let ended: Vec<usize> = (0..PEOPLE.len())
            .filter(|n| trust.standing(&world.id(*n)).is_some_and(|standing| standing.last_good.is_some()))
            .collect();
        if ended.is_empty() {
            return Ok(());
        }
        let by = *which.get(&ended);
        let mut later = goes_on(&world, by, &deeds);
        if later.records.len() > world.records.len() {
            set_back(&mut later, back);
        }
        prop_assert!(told(&later.records) == told(&world.records));
        let plain = |records: &[Record]| History { upto: None, ..history(records) };
        prop_assert_eq!(plain(&later.records), plain(&world.records));
    }

    /// Admissions, ends and hand-overs by anybody but the root, whatever their clock says, move nobody.
    #[test]
    fn only_the_root_of_its_time_moves_members(world in story(30), by in 0..PEOPLE.len(), whom in 0..PEOPLE.len(), what in 0..3u8, back in minutes_back()) {
        let school = world.school();
        let trust = Trust::from_records(&world.records);
        if trust.school(&school).unwrap().root == world.id(by) {
            return Ok(());
        }
        let mut later = goes_on(&world, by, &[]);
        match what {
            0 => later.admits(by, school, whom, Role::Instructor, None),
            1 => later.ends(by, school, PEOPLE[whom]),
            _ => later.hands(by, school, whom),
        };
        set_back(&mut later, back);
        prop_assert_eq!(state(&later.records), state(&world.records));
    }

    /// A school that somebody founds for it ends nobody's key who hasn't joined it.
    #[test]
    fn an_outsiders_school_voids_nobody(world in story(20), whom in 0..PEOPLE.len(), back in minutes_back()) {
        let trust = Trust::from_records(&world.records);
        let (theirs, own) = (world.id(whom), world.id(OUTSIDER));
        let vouched = world.records.iter().any(|record| match record.payload.typed() {
            Ok(Body::Vouched(body)) => record.payload.device == theirs && body.device == own,
            _ => false,
        });
        // A story may have made that one the root of a school that counts, or trusted.
        if whom == OUTSIDER || vouched || trust.schools().any(|school| school.root == own) {
            return Ok(());
        }
        let mut later = goes_on(&world, OUTSIDER, &[]);
        let school = later.founds(OUTSIDER);
        later.admits(OUTSIDER, school, whom, Role::Viewer, None);
        let before = state(&later.records).0;
        later.write(OUTSIDER, None, revoked(theirs));
        set_back(&mut later, back);
        prop_assert_eq!(state(&later.records).0, before);
    }
}

#[test]
fn what_a_stolen_phone_vouches_for_after_its_end_has_no_place() {
    let mut world = school(&[0; 7]);
    let (lost, thiefs) = (world.id(OWNER), world.id(CLAIMANT));
    world.write(ROOT, None, revoked(lost.clone()));
    world.write(OWNER, None, vouched(thiefs.clone()));
    let trust = Trust::from_records(&world.records);
    assert!(trust.standing(&lost).unwrap().last_good.is_some());
    assert!(!trust.school(&world.school()).unwrap().knows(&thiefs));
    assert!(!trust.same_person(&lost, &thiefs));
}

/// The thief's word against the owner's other phone comes too late, though no clock says so.
#[test]
fn a_stolen_phone_ends_no_other_after_its_own_end() {
    let mut world = school(&[0; 7]);
    let (lost, other) = (world.id(OWNER), world.id(OTHER));
    let back = vouched(lost.clone());
    world.write(OTHER, None, back);
    world.meet(OTHER, OWNER);
    world.meet(OTHER, ROOT);
    world.write(OWNER, None, revoked(other.clone()));
    world.now -= TimeDelta::hours(1);
    world.write(ROOT, None, revoked(lost.clone()));
    let trust = Trust::from_records(&world.records);
    assert!(trust.standing(&lost).unwrap().last_good.is_some());
    assert_eq!(trust.standing(&other).unwrap().last_good, None);
}

#[test]
fn a_root_that_handed_over_admits_nobody_more_whatever_its_clock_says() {
    let mut world = school(&[0; 7]);
    let school = world.school();
    world.hands(ROOT, school, INSTRUCTOR);
    world.admits(ROOT, school, OUTSIDER, Role::Instructor, None);
    set_back(&mut world, 2);
    let trust = Trust::from_records(&world.records);
    assert!(!trust.school(&school).unwrap().knows(&world.id(OUTSIDER)));
    assert_eq!(trust.school(&school).unwrap().root, world.id(INSTRUCTOR));
}
