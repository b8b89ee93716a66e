//! Work on a machine, told by several people: nothing that one of them hadn't seen, looked at or
//! counted makes it fit to fly. The rules are our own: no source.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::*;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    ComponentMoved, Deferred, DueKept, FollowUpPlanned, Interval, JobBegun, JointSeen, Released, SecondLook,
    Service, TimeLogged,
};
use witnessmark_core::verdict::{Question, Rule, State, Verdict, judge};
use witnessmark_core::work::{Lack, lacks};

const OWNER: usize = 0;
const OTHER: usize = 1;

/// The owner's phone, another person's, and what both know: a machine with its head nuts loosened.
fn at_work() -> (World, Digest) {
    at_work_of(&[0, 1])
}

fn at_work_of(people: &[u8]) -> (World, Digest) {
    let mut world = World::of_people(people);
    world.write(OWNER, Some(machine()), Body::Machine(described()));
    world.write(OWNER, Some(machine()), look(vec![]));
    let job = world.write(OWNER, Some(machine()), begun());
    world.meet(OWNER, OTHER);
    (world, job)
}

fn begun() -> Body {
    Body::JobBegun(JobBegun {
        jobs: vec!["head".into()],
        title: "Head nuts torqued".into(),
        disturbed: BTreeMap::from([("head-nuts".into(), "Head nuts".into())]),
        points: vec!["nuts".into()],
        independent: vec!["head-nuts".into()],
        follow_ups: vec![FollowUpPlanned {
            id: "head-again".into(),
            title: "Head again".into(),
            by: vec!["head-again".into()],
            after: Interval { hours: Some(1.0), ..Interval::default() },
        }],
        service: service(10.0, 20),
        note: String::new(),
    })
}

fn service(hours: f64, flights: u32) -> Service {
    Service { hours, flights, tanks: 0 }
}

fn list(job: Digest, means: Meaning) -> Body {
    let Body::Inspection(body) = inspection("after-service", vec![finding("nuts", means)], vec![]) else {
        unreachable!("an inspection");
    };
    Body::Inspection(witnessmark_core::record::Inspection { job: Some(job), ..body })
}

fn second(job: Digest) -> Body {
    let joint = JointSeen { joint: "head-nuts".into(), means: Meaning::Serviceable, note: String::new() };
    Body::SecondLook(SecondLook { job, joints: vec![joint] })
}

fn released(job: Digest, service: Service) -> Body {
    let inspection = Digest::of(b"the list");
    Body::Released(Released { job, inspection, second_looks: Vec::new(), service })
}

/// Hours and flights as a machine is described with.
fn counted(hours: f64, flights: u32) -> Body {
    Body::Machine(Machine { hours, flights, ..described() })
}

fn flown(hours: f64, flights: u32) -> Body {
    Body::TimeLogged(TimeLogged {
        added: service(hours, flights),
        reading: None,
        fuel: None,
        note: String::new(),
    })
}

/// The verdict of someone who knows everybody, given the people's numbers.
fn verdict(world: &World, people: &[u8]) -> Verdict {
    let person = |n: &u8| Uuid::from_u128(u128::from(*n) + 1);
    let persons = people.iter().enumerate().map(|(n, number)| (world.id(n), person(number))).collect();
    judge(Question {
        history: &world.history(),
        sheet: Some(&confirmed_sheet()),
        now: world.now + TimeDelta::minutes(1),
        people: &BTreeMap::new(),
        persons: &persons,
        split: &[],
        refused: 0,
        limits: &witnessmark_core::list::Limits::default(),
    })
}

fn rules(verdict: &Verdict) -> Vec<Rule> {
    verdict.reasons.iter().map(|reason| reason.rule).collect()
}

fn lacking(world: &World) -> Vec<Lack> {
    lacks(&world.history().work.jobs[0], |device| Some(device.clone()))
}

fn wants_second_look() -> Lack {
    Lack::SecondLook { joint: "head-nuts".into() }
}

/// List signed, looked at by the other, released, all known to both.
fn done(world: &mut World, job: Digest) {
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    world.meet(OWNER, OTHER);
    world.write(OWNER, Some(machine()), released(job, service(10.0, 20)));
    world.meet(OWNER, OTHER);
}

#[test]
fn work_done_looked_at_and_released_waits_for_its_first_flight() {
    let (mut world, job) = at_work();
    done(&mut world, job);
    let verdict = verdict(&world, &[0, 1]);
    assert_eq!(verdict.state, State::Limited);
    assert_eq!(rules(&verdict), [Rule::FirstFlight, Rule::FollowUpDue]);
}

#[test]
fn a_list_signed_after_the_second_look_wants_another() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    assert_eq!(lacking(&world), [wants_second_look()]);
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    assert_eq!(lacking(&world), []);
    world.meet(OWNER, OTHER);
    // Tightened once more: what the other saw is not what flies.
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    assert_eq!(lacking(&world), [wants_second_look()]);
    // They look, but nobody has told them of the new list yet.
    world.write(OTHER, Some(machine()), second(job));
    assert_eq!(lacking(&world), [wants_second_look()]);
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    assert_eq!(lacking(&world), []);
}

#[test]
fn a_look_before_any_list_is_none() {
    let (mut world, job) = at_work();
    world.write(OTHER, Some(machine()), second(job));
    world.meet(OWNER, OTHER);
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    assert_eq!(lacking(&world), [wants_second_look()]);
}

#[test]
fn a_second_look_counts_although_its_clock_lies_behind_the_job() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    // The other was shown the list's number, nothing more, and their clock is an hour slow.
    let (owner, seq) = (world.id(OWNER), world.records.last().unwrap().payload.seq);
    let author = Author { seen: BTreeMap::from([(owner, seq)]), ..Author::default() };
    let (time, seed) = (world.now - TimeDelta::hours(1), &world.devices[OTHER].seed);
    let look = author.write(&second(job), Some(machine()), time, &[9; 10], seed).unwrap();
    world.records.push(look);
    assert_eq!(lacking(&world), []);
}

#[test]
fn nobody_is_another_person_than_an_unknown_one() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    let (history, other) = (world.history(), world.id(OTHER));
    let only_other = |device: &DeviceId| (*device == other).then_some(1);
    assert_eq!(lacks(&history.work.jobs[0], only_other), [wants_second_look()]);
}

#[test]
fn a_release_that_says_more_than_the_records_is_none() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), released(job, service(10.0, 20)));
    assert_eq!(rules(&verdict(&world, &[0, 1])), [Rule::JobOpen]);
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    world.write(OWNER, Some(machine()), released(job, service(10.0, 20)));
    assert_eq!(verdict(&world, &[0, 1]).state, State::Grounded, "nobody looked a second time");
    // It isn't lost: done as it should be, it is released.
    done(&mut world, job);
    assert_eq!(verdict(&world, &[0, 1]).state, State::Limited);
}

#[test]
fn a_release_whose_author_had_not_seen_a_later_bad_list_is_none() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), list(job, Meaning::Unserviceable));
    world.write(OWNER, Some(machine()), flown(0.0, 0));
    world.write(OWNER, Some(machine()), released(job, service(10.0, 20)));
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::JobOpen));
}

#[test]
fn a_release_looked_at_by_the_same_person_with_another_phone_grounds() {
    let (mut world, job) = at_work_of(&[0, 0]);
    done(&mut world, job);
    let verdict = verdict(&world, &[0, 0]);
    assert_eq!((verdict.state, rules(&verdict)[0]), (State::Grounded, Rule::JobOpen));
}

#[test]
fn the_first_flight_is_one_after_all_those_that_others_logged() {
    let (mut world, job) = at_work();
    // The other flew and looked, before the release, which doesn't know of it.
    world.write(OTHER, Some(machine()), flown(0.5, 1));
    let Body::Inspection(body) = look(vec![]) else { unreachable!("an inspection") };
    let flights = 21;
    world.write(
        OTHER,
        Some(machine()),
        Body::Inspection(witnessmark_core::record::Inspection { flights, ..body }),
    );
    done(&mut world, job);
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::FirstFlight));
}

#[test]
fn a_re_torque_before_the_engine_has_run_is_not_the_one_after_it() {
    let (mut world, job) = at_work();
    done(&mut world, job);
    let again = |world: &mut World| {
        let Body::JobBegun(body) = begun() else { unreachable!("a job begun") };
        let body = JobBegun { jobs: vec!["head-again".into()], follow_ups: Vec::new(), ..body };
        let job = world.write(OWNER, Some(machine()), Body::JobBegun(body));
        done(world, job);
    };
    again(&mut world);
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::FollowUpDue), "nothing has run since");
    world.write(OWNER, Some(machine()), flown(1.0, 1));
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::FollowUpOver));
    again(&mut world);
    assert_eq!(rules(&verdict(&world, &[0, 1])), [Rule::FirstFlight]);
}

#[test]
fn hours_taken_back_put_nothing_off() {
    let (mut world, job) = at_work();
    world.write(OWNER, Some(machine()), counted(40.0, 50));
    let item = Uuid::from_u128(5);
    let every = Interval { hours: Some(10.0), ..Interval::default() };
    let done_on = at(DAY).date_naive();
    let kept = DueKept {
        item,
        title: "Plug".into(),
        every,
        tolerance_percent: 0.0,
        from_due: false,
        done: service(40.0, 50),
        done_on,
        ended: false,
    };
    world.write(OWNER, Some(machine()), Body::DueKept(kept));
    let component = Uuid::from_u128(6);
    let moved = ComponentMoved {
        component,
        part: "propeller".into(),
        name: "Propeller".into(),
        serial: String::new(),
        fitted: true,
        own: service(3.0, 4),
        service: service(40.0, 50),
    };
    world.write(OWNER, Some(machine()), Body::ComponentMoved(moved));
    world.write(OWNER, Some(machine()), list(job, Meaning::Serviceable));
    world.meet(OWNER, OTHER);
    world.write(OTHER, Some(machine()), second(job));
    world.meet(OWNER, OTHER);
    world.write(OWNER, Some(machine()), released(job, service(40.0, 50)));
    // It was ten hours and twenty flights all the time.
    world.write(OWNER, Some(machine()), counted(10.0, 20));
    world.write(OWNER, Some(machine()), flown(1.0, 1));
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::FollowUpOver), "one hour after the release");
    let history = world.history();
    assert_eq!(history.work.components[&component].own(&history.service()), service(4.0, 5));
    world.write(OWNER, Some(machine()), flown(9.0, 1));
    assert!(rules(&verdict(&world, &[0, 1])).contains(&Rule::DueOver), "ten hours after it was done");
}

#[test]
fn who_had_not_seen_all_that_is_wrong_cannot_let_it_wait() {
    let mut world = World::new(2);
    world.write(0, Some(machine()), Body::Machine(described()));
    world.meet(0, 1);
    // The other phone's word comes first in the order in which all fold, but the owner doesn't know it.
    world.write(1, Some(machine()), look(vec![finding("net", Meaning::Unserviceable)]));
    let seen = world.write(0, Some(machine()), look(vec![finding("net", Meaning::Unserviceable)]));
    let defer = |opened_by| {
        Body::Deferred(Deferred {
            point: "net".into(),
            opened_by,
            until_hours: Some(12.0),
            until_flights: None,
            until_date: None,
            condition: "no passenger".into(),
            reason: "part ordered".into(),
        })
    };
    world.write(0, Some(machine()), defer(seen));
    assert_eq!(rules(&world.verdict()), [Rule::OpenDefect]);
    world.meet(0, 1);
    world.write(0, Some(machine()), defer(seen));
    assert_eq!(
        (world.verdict().state, rules(&world.verdict())),
        (State::Limited, vec![Rule::DefectDeferred])
    );
}

#[test]
fn a_reading_stated_anew_takes_no_time_back_that_its_author_had_not_seen() {
    let (mut world, _) = at_work();
    let here = world.history();
    // The other flew, unseen; then the owner describes the machine anew, then reads the hour meter.
    world.write(OTHER, Some(machine()), flown(2.0, 3));
    world.write(OWNER, Some(machine()), counted(here.hours + 1.0, here.flights + 1));
    let now = world.history();
    assert_eq!((now.hours, now.flights), (here.hours + 3.0, here.flights + 4));
    let reading = |hours: f64| {
        let (added, note) = (service(0.0, 0), String::new());
        Body::TimeLogged(TimeLogged { added, reading: Some(hours), fuel: None, note })
    };
    world.write(OWNER, Some(machine()), reading(here.hours + 1.5));
    assert_eq!(world.history().hours, here.hours + 3.5);
    world.meet(OWNER, OTHER);
    world.write(OWNER, Some(machine()), reading(here.hours + 3.4));
    let now = world.history();
    assert_eq!(
        (now.hours, now.flights),
        (here.hours + 3.4, here.flights + 4),
        "what was seen is in the reading"
    );
}
