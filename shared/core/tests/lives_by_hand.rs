//! Lives of parts from looks and moves, each told by hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use uuid::Uuid;
use witnessmark_core::list::Meaning::{self, NotFitted, Serviceable, Unserviceable, Watch};
use witnessmark_core::record::Digest;
use witnessmark_core::reliability::{Lives, PartMoved, PartSeen, lives};

/// Looks and moves as they are told, a minute apart.
#[derive(Default)]
struct Told {
    seen: Vec<PartSeen>,
    moved: Vec<PartMoved>,
    minutes: i64,
}

impl Told {
    fn next(&mut self) -> (i64, Digest) {
        self.minutes += 1;
        (self.minutes * 60_000, Digest::of(&self.minutes.to_be_bytes()))
    }

    fn look(&mut self, machine: u128, hours: f64, found: &[(&str, Meaning)]) {
        let (at_ms, record) = self.next();
        let machine = Uuid::from_u128(machine);
        self.seen.extend(found.iter().map(|(point, means)| PartSeen {
            record,
            machine,
            at_ms,
            hours,
            point: (*point).to_owned(),
            means: *means,
        }));
    }

    fn moves(&mut self, machine: u128, component: u128, fitted: bool, own: f64, hours: f64) {
        let (at_ms, record) = self.next();
        let (machine, component) = (Uuid::from_u128(machine), Uuid::from_u128(component));
        self.moved.push(PartMoved { record, machine, at_ms, component, fitted, own, hours });
    }

    fn lives(&self) -> Lives {
        lives(&self.seen, &self.moved)
    }

    fn pairs(&self) -> Vec<(f64, Option<f64>)> {
        self.lives().all.iter().map(|one| (one.after, one.by)).collect()
    }
}

const BODY: &str = "exhaust-body";
const SPRINGS: &str = "exhaust-springs";

#[test]
fn a_life_ends_between_the_last_look_in_order_and_the_one_that_found_it() {
    let mut told = Told::default();
    for hours in [10.0, 20.0, 31.5] {
        told.look(1, hours, &[(BODY, Serviceable)]);
    }
    told.look(1, 40.25, &[(BODY, Watch)]);
    told.look(1, 47.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(40.25, Some(47.0))], "watch is whole");
    // Another machine, as old as itself, not found wrong.
    told.look(2, 12.0, &[(BODY, Serviceable)]);
    assert_eq!(told.pairs(), [(40.25, Some(47.0)), (12.0, None)]);
    assert_eq!((told.lives().machines, told.lives().failed()), (2, 1));
}

#[test]
fn put_right_counts_as_new() {
    let mut told = Told::default();
    told.look(1, 30.0, &[(BODY, Serviceable)]);
    told.look(1, 35.0, &[(BODY, Unserviceable)]);
    // Still open: the same failure, not another one.
    told.look(1, 35.0, &[(BODY, Unserviceable)]);
    told.look(1, 35.5, &[(BODY, Serviceable)]);
    told.look(1, 50.5, &[(BODY, Serviceable)]);
    told.look(1, 60.5, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(15.0, Some(25.0)), (30.0, Some(35.0))]);
    assert_eq!(told.lives().renewed, 1);
}

#[test]
fn only_a_look_at_what_was_wrong_puts_it_right() {
    let mut told = Told::default();
    told.look(1, 20.0, &[(BODY, Serviceable), (SPRINGS, Serviceable)]);
    told.look(1, 22.0, &[(SPRINGS, Serviceable)]);
    told.look(1, 30.0, &[(BODY, Unserviceable), (SPRINGS, Serviceable)]);
    // It was whole at 20 h where it broke, whatever the springs were at 22 h.
    assert_eq!(told.pairs(), [(20.0, Some(30.0))]);
    told.look(1, 33.0, &[(SPRINGS, Serviceable)]);
    told.look(1, 36.0, &[(SPRINGS, Unserviceable)]);
    told.look(1, 40.0, &[(BODY, Serviceable), (SPRINGS, Serviceable)]);
    told.look(1, 45.0, &[(SPRINGS, Serviceable)]);
    assert_eq!(told.pairs(), [(20.0, Some(30.0)), (5.0, None)], "one failure until all of it is in order");
}

#[test]
fn a_registered_component_has_hours_of_its_own() {
    let mut told = Told::default();
    told.moves(1, 7, true, 15.0, 100.0);
    told.look(1, 110.0, &[(BODY, Serviceable)]);
    told.look(1, 120.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(25.0, Some(35.0))]);
}

#[test]
fn taken_off_it_is_whole_so_far_and_goes_on_where_it_is_fitted() {
    let mut told = Told::default();
    told.moves(1, 7, true, 0.0, 100.0);
    told.look(1, 110.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, false, 12.0, 112.0);
    assert_eq!(told.pairs(), [(10.0, None)]);
    // What stands on machine 1 now was never registered: nobody knows its age.
    told.look(1, 140.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.lives().of_no_age, 1);
    told.moves(2, 7, true, 12.0, 300.0);
    told.look(2, 308.0, &[(BODY, Serviceable)]);
    told.look(2, 313.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(20.0, Some(25.0))], "one part, one life");
}

#[test]
fn fitting_another_takes_off_what_was_there() {
    let mut told = Told::default();
    told.look(1, 90.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, true, 0.0, 100.0);
    told.look(1, 104.0, &[(BODY, Serviceable)]);
    told.moves(1, 8, true, 40.0, 110.0);
    told.look(1, 111.0, &[(BODY, Serviceable)]);
    // Number 7 comes off the shelf as it was; number 8 isn't on this machine any more.
    told.moves(1, 8, false, 41.0, 111.0);
    told.moves(1, 7, true, 10.0, 111.0);
    told.look(1, 116.0, &[(BODY, Serviceable)]);
    assert_eq!(told.pairs(), [(15.0, None), (41.0, None), (90.0, None)]);
    assert_eq!(told.lives().came_old, 2, "the first one, and number 8");
}

#[test]
fn a_component_with_its_machines_hours_is_the_one_that_was_on_it() {
    let mut told = Told::default();
    told.look(1, 50.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, true, 55.0, 55.0);
    told.look(1, 60.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, false, 61.0, 61.0);
    told.moves(2, 7, true, 61.0, 8.0);
    told.look(2, 12.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(60.0, Some(65.0))]);
    // The same where it was never registered before it came off.
    let mut told = Told::default();
    told.look(1, 60.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, false, 61.0, 61.0);
    told.moves(2, 7, true, 61.0, 8.0);
    told.look(2, 12.0, &[(BODY, Serviceable)]);
    assert_eq!(told.pairs(), [(65.0, None)]);
}

#[test]
fn one_that_was_put_right_goes_on_from_there_when_it_moves() {
    let mut told = Told::default();
    told.moves(1, 7, true, 0.0, 0.0);
    told.look(1, 50.0, &[(BODY, Unserviceable)]);
    told.look(1, 50.0, &[(BODY, Serviceable)]);
    told.moves(1, 7, false, 56.0, 56.0);
    told.moves(2, 7, true, 56.0, 200.0);
    told.look(2, 204.0, &[(BODY, Serviceable)]);
    assert_eq!(told.pairs(), [(0.0, Some(50.0)), (10.0, None)]);
}

#[test]
fn what_never_ran_has_no_life() {
    let mut told = Told::default();
    told.look(1, 0.0, &[(BODY, Unserviceable)]);
    told.look(1, 0.0, &[(BODY, Serviceable)]);
    assert_eq!(told.lives().never_ran, 1);
    assert_eq!(told.pairs(), [], "and what hasn't run yet tells nothing");
    // Old, and wrong at the first look: it failed some time before.
    told.look(2, 80.0, &[(BODY, Unserviceable)]);
    // Fitted with 30 h, and wrong at once: it wasn't whole when it was fitted.
    told.moves(3, 7, true, 30.0, 5.0);
    told.look(3, 5.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(0.0, Some(30.0)), (0.0, Some(80.0))]);
    assert!(told.lives().findings().is_ok());
}

#[test]
fn in_order_and_wrong_at_the_same_hours_was_overlooked_first() {
    let mut told = Told::default();
    told.look(1, 20.0, &[(BODY, Serviceable)]);
    told.look(1, 30.0, &[(BODY, Serviceable)]);
    told.look(1, 30.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(20.0, Some(30.0))], "an interval, not a moment that nobody saw");
}

#[test]
fn hours_put_right_make_no_lives_of_their_own() {
    let mut told = Told::default();
    told.look(1, 100.0, &[(BODY, Serviceable)]);
    told.look(1, 1250.0, &[(BODY, Serviceable)]);
    told.look(1, 126.0, &[(BODY, Serviceable)]);
    told.look(1, 130.0, &[(BODY, Unserviceable)]);
    assert_eq!(told.pairs(), [(126.0, Some(130.0))]);
    // A component fitted before the slip was put right is never younger than new.
    let mut told = Told::default();
    told.moves(1, 7, true, 0.0, 1250.0);
    told.look(1, 126.0, &[(BODY, Serviceable)]);
    told.look(1, 130.0, &[(BODY, Serviceable)]);
    assert_eq!(told.pairs(), [(4.0, None)]);
}

#[test]
fn a_part_that_is_not_fitted_is_not_looked_at() {
    let mut told = Told::default();
    told.look(1, 20.0, &[(BODY, NotFitted)]);
    assert_eq!(told.lives(), Lives::default());
}
