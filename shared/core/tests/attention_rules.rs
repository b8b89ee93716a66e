//! Time spent on points, how people look, and what points are worth.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use chrono::DateTime;
use proptest::prelude::*;
use witnessmark_core::attention::{
    HurriedPoint, Looker, PointSeen, Tally, Than, WorthSort, hurried, in_short, median,
};
use witnessmark_core::list::Meaning::{self, NotFitted, Serviceable, Unserviceable, Watch};
use witnessmark_core::list::{Given, Progress, Step, progress};
use witnessmark_core::record::Digest;

/// A list answered, so many seconds a point.
fn walked(seconds: &[f64]) -> Progress {
    let at = DateTime::parse_from_rfc3339("2026-05-02T06:41:07+02:00").unwrap();
    let steps: Vec<Step> = seconds
        .iter()
        .enumerate()
        .map(|(n, seconds)| Step::Answered {
            point: format!("point-{n:02}"),
            given: Given::Words { answer: "good".into() },
            seconds: *seconds,
            at,
        })
        .collect();
    progress(&steps)
}

#[test]
fn a_whole_list_in_nine_seconds_is_told_as_such() {
    let found = in_short(&walked(&[0.15; 60]), |_| None).unwrap();
    assert_eq!((found.points, found.usual), (60, None));
    assert!((found.seconds - 9.0).abs() < 1e-9);
    // With what is usual, it says that too: 60 points of 6 s.
    let usual = in_short(&walked(&[2.2; 60]), |_| Some(6.0)).unwrap().usual.unwrap();
    assert!((usual - 360.0).abs() < 1e-9);
    // Half of what is usual is a practised hand.
    assert_eq!(in_short(&walked(&[3.0; 60]), |_| Some(6.0)), None);
    // One point hurried is that point's matter.
    let mut one = vec![6.0; 59];
    one.push(0.5);
    assert_eq!(in_short(&walked(&one), |_| Some(6.0)), None);
    assert_eq!(hurried(&walked(&one), |_| Some(6.0)), ["point-59"]);
    // Nothing is said of a handful of points as a list.
    assert_eq!(in_short(&walked(&[0.1; 4]), |_| None), None);
    assert_eq!(in_short(&Progress::default(), |_| None), None);
}

#[test]
fn a_middle_time_takes_three_looks() {
    assert_eq!(median(vec![4.0, 2.0]), None);
    assert_eq!(median(vec![4.0, 2.0, 9.0]), Some(4.0));
    assert_eq!(median(vec![4.0, 2.0, 9.0, 5.0]), Some(4.5));
}

/// Looks as they are told: each of its own inspection, oldest first.
#[derive(Default)]
struct Told {
    tally: Tally,
    looks: u32,
}

impl Told {
    fn look(
        &mut self,
        person: usize,
        machine: usize,
        point: usize,
        means: Meaning,
        seconds: f64,
        hurried: bool,
    ) {
        self.looks += 1;
        let record = Digest::of(&self.looks.to_be_bytes());
        self.tally.take(PointSeen { record, person, machine, point, means, seconds, hurried });
    }

    fn looks(&mut self, times: u32, person: usize, machine: usize, point: usize, means: Meaning) {
        (0..times).for_each(|_| self.look(person, machine, point, means, 6.0, false));
    }

    fn person(&self, person: usize) -> Looker {
        self.tally.people().into_iter().find(|one| one.person == person).unwrap()
    }
}

#[test]
fn what_stays_open_counts_once() {
    let mut told = Told::default();
    told.looks(40, 0, 0, 7, Serviceable);
    told.looks(20, 0, 0, 7, Watch);
    told.looks(5, 0, 0, 7, Unserviceable);
    told.looks(3, 0, 0, 7, Serviceable);
    told.looks(2, 0, 0, 7, Watch);
    told.looks(9, 0, 1, 7, NotFitted);
    let worth = &told.tally.worth()[0];
    assert_eq!((worth.looks, worth.watch, worth.unserviceable, worth.machines), (70, 2, 1, 1));
    assert!((worth.share - 3.0 / 70.0).abs() < 1e-12 && worth.low < worth.share && worth.share < worth.high);
}

#[test]
fn a_points_worth_is_told_from_thirty_looks_on() {
    let mut told = Told::default();
    told.looks(29, 0, 0, 0, Serviceable);
    told.looks(300, 0, 0, 1, Serviceable);
    for machine in 0..30 {
        told.looks(3, 0, machine, 2, Serviceable);
        told.look(0, machine, 2, Unserviceable, 6.0, false);
        // The same number of finds, all on one machine.
        told.looks(3, 0, 0, 3, Serviceable);
        told.look(0, 0, 3, Unserviceable, 6.0, false);
    }
    told.looks(99, 0, 0, 4, Serviceable);
    told.look(0, 0, 4, Watch, 6.0, false);
    let worth = told.tally.worth();
    let sorts: Vec<WorthSort> = worth.iter().map(|one| one.sort).collect();
    use WorthSort::*;
    assert_eq!(sorts, [Few, Never, Often, Plain, Plain]);
    assert!((worth[1].at_most() - 0.01).abs() < 1e-12, "3 in 300");
    assert_eq!((worth[2].machines, worth[3].machines), (30, 1));
}

#[test]
fn one_who_hurries_more_than_the_others_stands_out() {
    let mut told = Told::default();
    for n in 0..200 {
        told.look(0, 0, n % 4, Serviceable, 6.0, n % 5 == 0);
        told.look(1, 1, n % 4, Serviceable, 6.0, n % 50 == 0);
        told.look(2, 2, n % 4, Serviceable, 6.0, n % 40 == 0);
    }
    let one = told.person(0);
    assert_eq!((one.hurries, one.finds, one.quick), (Than::More, Than::Like, false));
    assert!((one.hurried - 0.2).abs() < 1e-12 && one.others_hurried.unwrap() < 0.03);
    assert_eq!((one.looks, one.inspections), (200, 200));
    assert_eq!(one.points.len(), 4);
    assert!(one.points.iter().all(|point| point.times == 10), "{:?}", one.points);
    assert_eq!(told.person(1).hurries, Than::Less);
    // The same share in too few looks is no ground to say anything.
    let mut few = Told::default();
    for n in 0..60 {
        few.look(0, 0, 0, Serviceable, 6.0, n % 2 == 0);
        few.look(1, 1, 0, Serviceable, 6.0, false);
    }
    assert_eq!(few.person(0).hurries, Than::Like);
    assert_eq!(few.person(0).points, [HurriedPoint { point: 0, times: 30 }]);
}

#[test]
fn people_are_compared_on_the_same_points() {
    let mut told = Told::default();
    for n in 0..400u32 {
        // Everybody takes 4 s at point 0 and 20 s at point 1; the first looks at point 0 mostly.
        told.look(0, 0, usize::from(n % 10 == 0), Serviceable, if n % 10 == 0 { 20.0 } else { 4.0 }, false);
        told.look(1, 1, usize::from(n % 10 != 0), Serviceable, if n % 10 != 0 { 20.0 } else { 4.0 }, false);
        // A point that nobody else has compares with nothing.
        told.look(0, 0, 9, Watch, 1.0, true);
    }
    let one = told.person(0);
    assert_eq!((one.seconds, one.others_seconds), (Some(4.0), Some(4.0)));
    assert_eq!((one.hurried, one.others_hurried, one.looks), (0.0, Some(0.0), 400));
    assert_eq!(one.points, [HurriedPoint { point: 9, times: 400 }]);
    let other = told.person(1);
    assert_eq!((other.seconds, other.others_seconds), (Some(20.0), Some(20.0)));
}

#[test]
fn a_quick_one_and_one_who_finds_less_stand_out() {
    let mut told = Told::default();
    for n in 0..300 {
        told.look(0, 0, 0, Serviceable, 2.5, false);
        // The others find something at every tenth look, each time anew.
        for person in 1..3 {
            told.look(person, person, 0, if n % 10 == 0 { Watch } else { Serviceable }, 6.0, false);
        }
    }
    let one = told.person(0);
    assert_eq!((one.quick, one.finds), (true, Than::Less));
    assert_eq!((one.found, one.others_found), (0.0, Some(0.1)));
    assert!(!told.person(1).quick);
}

#[test]
fn one_alone_is_compared_with_nobody() {
    let mut told = Told::default();
    told.looks(200, 0, 0, 0, Watch);
    let one = told.person(0);
    assert_eq!((one.others_seconds, one.others_hurried, one.others_found), (None, None, None));
    assert_eq!((one.looks, one.finds, one.quick), (0, Than::Like, false));
    assert_eq!(one.seconds, Some(6.0));
}

proptest! {
    /// (1 − p)ⁿ ≥ 0.05 for every p up to what is told, and hardly beyond: for n looks without a find,
    /// p is below it with 95 %.
    #[test]
    fn the_rule_of_three_is_careful(looks in 30u32..5000) {
        let mut told = Told::default();
        told.looks(looks, 0, 0, 0, Serviceable);
        let worth = &told.tally.worth()[0];
        let exact = 1.0 - 0.05f64.powf(1.0 / f64::from(looks));
        prop_assert!(worth.at_most() >= exact && worth.at_most() < exact * 1.06);
    }
}

/// The counts are drawn from one and the same chance. With 99 % one comparison in a hundred goes wrong; of
/// 900 there are then 9, give or take 3 for each standard deviation.
#[test]
fn people_who_are_alike_hardly_ever_stand_out() {
    let mut out = 0;
    for seed in 0..300u64 {
        let mut state = seed.wrapping_mul(0x9e37_79b9_7f4a_7c15);
        let mut told = Told::default();
        for n in 0..600u32 {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            let chance = (state >> 33) as f64 / f64::from(1u32 << 31);
            told.look(
                (n % 3) as usize,
                (n % 3) as usize,
                (n % 6) as usize / 3,
                Serviceable,
                6.0,
                chance < 0.1,
            );
        }
        out += told.tally.people().iter().filter(|one| one.hurries != Than::Like).count();
    }
    assert!(out < 25, "{out} of 900");
}
