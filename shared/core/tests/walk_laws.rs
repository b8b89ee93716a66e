//! Laws of the walk: where an inspector stands is folded from the steps taken, and an
//! interruption takes back attention but no answer.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, TimeDelta};
use proptest::collection::vec;
use proptest::prelude::*;
use witnessmark_core::list::{Given, Progress, Step, StepBack, progress, resume};
use witnessmark_core::record::Digest;

const POINTS: &[&str] = &["pin", "handle", "base", "spring", "strap", "lines"];
const PATIENCE: u32 = 5;

fn start() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-05-02T10:00:00+02:00").unwrap()
}

fn point() -> impl Strategy<Value = String> {
    prop::sample::select(POINTS).prop_map(str::to_owned)
}

fn given() -> impl Strategy<Value = Given> {
    prop::sample::select(vec!["good", "worn", "bad"])
        .prop_map(|answer| Given::Words { answer: answer.into() })
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        6 => (point(), given(), 0..60u32).prop_map(|(point, given, seconds)| Step::Answered {
            point, given, seconds: f64::from(seconds), at: start(),
        }),
        2 => point().prop_map(|point| Step::Withdrawn { point, at: start() }),
        1 => point().prop_map(|point| Step::Left { point, at: start() }),
        1 => (point(), "[a-z]{0,4}").prop_map(|(point, note)| Step::Noted { point, note, at: start() }),
        1 => (point(), 0..3u8).prop_map(|(point, photo)| Step::Pictured {
            point, photo: Digest::of(&[photo]), at: start(),
        }),
        1 => vec(point(), 0..3).prop_map(|points| Step::SteppedBack(StepBack {
            at: start(), away_minutes: 9.0, another_day: false, points,
        })),
    ]
}

fn of(step: &Step) -> Option<&str> {
    match step {
        Step::Answered { point, .. }
        | Step::Withdrawn { point, .. }
        | Step::Left { point, .. }
        | Step::Noted { point, .. }
        | Step::Pictured { point, .. } => Some(point),
        Step::SteppedBack(_) => None,
    }
}

/// Ten seconds between the steps, the first at `start`.
fn timed(steps: Vec<Step>) -> Vec<Step> {
    let mut at = start();
    let mut set = |time: &mut DateTime<FixedOffset>| {
        *time = at;
        at += TimeDelta::seconds(10);
    };
    steps
        .into_iter()
        .map(|mut step| {
            match &mut step {
                Step::Answered { at, .. }
                | Step::Withdrawn { at, .. }
                | Step::Left { at, .. }
                | Step::Noted { at, .. }
                | Step::Pictured { at, .. } => set(at),
                Step::SteppedBack(back) => set(&mut back.at),
            }
            step
        })
        .collect()
}

fn last_at(steps: &[Step]) -> DateTime<FixedOffset> {
    start() + TimeDelta::seconds(10 * (steps.len() as i64 - 1))
}

fn answered(point: &str, answer: &str, seconds: f64) -> Step {
    Step::Answered {
        point: point.into(),
        given: Given::Words { answer: answer.into() },
        seconds,
        at: start(),
    }
}

fn withdrawn(point: &str) -> Step {
    Step::Withdrawn { point: point.into(), at: start() }
}

proptest! {
    /// Each point's state follows from its own steps, in a second reckoning that looks backwards.
    #[test]
    fn where_one_stands_follows_from_the_steps(steps in vec(step(), 0..30)) {
        let p = progress(&steps);
        for point in POINTS {
            let own: Vec<&Step> = steps.iter().filter(|step| of(step) == Some(point)).collect();
            let since_withdrawn = own.iter().rposition(|s| matches!(s, Step::Withdrawn { .. })).map_or(0, |n| n + 1);
            let looks: Vec<(&Given, f64)> = own[since_withdrawn..].iter().filter_map(|s| match s {
                Step::Answered { given, seconds, .. } => Some((given, *seconds)),
                _ => None,
            }).collect();
            prop_assert_eq!(p.seen.get(*point).map(|seen| &seen.given), looks.last().map(|(given, _)| *given));
            let spent: f64 = looks.iter().map(|(_, seconds)| seconds).sum();
            prop_assert_eq!(p.seen.get(*point).map_or(0.0, |seen| seen.seconds), spent);
            let all = own.iter().filter(|s| matches!(s, Step::Answered { .. })).count();
            let kept = p.before.get(*point).map_or(0, Vec::len) + usize::from(p.seen.contains_key(*point));
            prop_assert_eq!(all, kept, "no answer is forgotten");
            let note = own.iter().rev().find_map(|s| match s {
                Step::Noted { note, .. } => Some(note),
                _ => None,
            });
            prop_assert_eq!(p.notes.get(*point), note);
            let touched = own.iter().rev().find_map(|s| match s {
                Step::Answered { .. } => Some(false),
                Step::Left { .. } => Some(true),
                _ => None,
            });
            prop_assert_eq!(p.left.contains(*point), touched == Some(true));
        }
        // Undo goes backwards through the answers that stand, each once.
        let mut order = p.order.clone();
        order.sort();
        prop_assert_eq!(order, p.seen.keys().cloned().collect::<Vec<_>>());
    }

    /// The steps of different points do not disturb one another.
    #[test]
    fn points_are_independent(steps in vec(step(), 0..30)) {
        let whole = progress(&steps);
        let mut apart: BTreeMap<&str, Progress> = BTreeMap::new();
        for point in POINTS {
            let own: Vec<Step> = steps.iter().filter(|s| of(s).is_none_or(|of| of == *point)).cloned().collect();
            apart.insert(point, progress(&own));
        }
        for (point, alone) in apart {
            prop_assert_eq!(whole.seen.get(point), alone.seen.get(point));
            prop_assert_eq!(whole.before.get(point), alone.before.get(point));
            prop_assert_eq!(whole.photos.get(point), alone.photos.get(point));
            prop_assert_eq!(whole.is_done(point), alone.is_done(point));
        }
    }

    /// Taking an answer back and answering anew is answering, but for the history kept of it.
    #[test]
    fn undo_then_answer_is_answer(steps in vec(step(), 0..20), given in given()) {
        let fresh = "fuel";
        let answer = Step::Answered { point: fresh.into(), given, seconds: 7.0, at: start() };
        let straight = progress(&[steps.as_slice(), std::slice::from_ref(&answer)].concat());
        let undone = [answered(fresh, "bad", 3.0), withdrawn(fresh), answer];
        let mut around = progress(&[steps.as_slice(), undone.as_slice()].concat());
        prop_assert_eq!(around.before.remove(fresh).map(|before| before.len()), Some(1));
        prop_assert_eq!(around, straight);
    }

    /// Back within one's patience on the same day: nothing is asked again.
    #[test]
    fn a_short_pause_asks_nothing_again(steps in vec(step(), 1..20), seconds in 0..=i64::from(PATIENCE) * 60) {
        let steps = timed(steps);
        prop_assert_eq!(resume(&steps, last_at(&steps) + TimeDelta::seconds(seconds), PATIENCE), None);
    }

    /// Longer away, or back before one left: the last three answers are asked again; all stay.
    #[test]
    fn an_interruption_asks_the_last_three_again_and_loses_nothing(
        steps in vec(step(), 1..20),
        away in prop_oneof![301..20_000i64, -20_000..-1i64],
    ) {
        let mut steps = timed(steps);
        let before = progress(&steps);
        let now = last_at(&steps) + TimeDelta::seconds(away);
        let Some(back) = resume(&steps, now, PATIENCE) else {
            prop_assert!(before.order.is_empty());
            return Ok(());
        };
        let three = before.order[before.order.len().saturating_sub(3)..].to_vec();
        prop_assert_eq!(&back.points, &three);
        prop_assert!(!back.another_day);
        prop_assert!((back.away_minutes - away as f64 / 60.0).abs() < 0.051);
        steps.push(Step::SteppedBack(back));
        let mut after = progress(&steps);
        prop_assert_eq!(&after.seen, &before.seen);
        for point in &three {
            prop_assert!(!after.is_done(point));
        }
        // Come back to at once, it doesn't step back further.
        prop_assert_eq!(resume(&steps, now, PATIENCE), None);
        // The same answers once more, and one stands where one stood.
        steps.extend(three.iter().map(|point| Step::Answered {
            point: point.clone(), given: before.seen[point].given.clone(), seconds: 0.0, at: now,
        }));
        after = progress(&steps);
        for point in &before.order {
            prop_assert!(after.is_done(point) || before.again.contains(point));
        }
    }

    /// On another local day every answer is asked again, however short the pause over midnight.
    #[test]
    fn another_day_asks_all_again(steps in vec(step(), 1..20), minutes in 0..3000i64) {
        let steps = timed(steps);
        let midnight = DateTime::parse_from_rfc3339("2026-05-03T00:00:00+02:00").unwrap();
        let back = resume(&steps, midnight + TimeDelta::minutes(minutes), PATIENCE);
        let order = progress(&steps).order;
        prop_assert_eq!(back.as_ref().map(|back| back.points.clone()).unwrap_or_default(), order);
        prop_assert!(back.is_none_or(|back| back.another_day));
    }

    /// Steps survive being written down and read.
    #[test]
    fn a_step_reads_back(step in step()) {
        let text = serde_json::to_string(&step).unwrap();
        prop_assert_eq!(serde_json::from_str::<Step>(&text).unwrap(), step);
    }
}

#[test]
fn nobody_steps_back_before_the_first_answer() {
    assert_eq!(resume(&[], start(), PATIENCE), None);
    let noted = [Step::Noted { point: "pin".into(), note: "late".into(), at: start() }];
    assert_eq!(resume(&noted, start() + TimeDelta::days(1), PATIENCE), None);
}

/// The day is the one where the inspector now stands, not the one in the phone's old zone.
#[test]
fn the_day_is_that_of_the_place() {
    let steps = [answered("pin", "good", 8.0)];
    let at = |text: &str| DateTime::parse_from_rfc3339(text).unwrap();
    // 10:01 in the zone of the answer is 23:01 of the same day eleven hours further east … and 00:01 of
    // the next one hour further still; the answer's own moment moves along.
    assert_eq!(resume(&steps, at("2026-05-02T23:01:00+15:00"), PATIENCE), None);
    let over = [Step::Answered {
        point: "pin".into(),
        given: Given::Words { answer: "good".into() },
        seconds: 8.0,
        at: at("2026-05-02T23:59:00+02:00"),
    }];
    assert!(resume(&over, at("2026-05-03T00:01:00+02:00"), PATIENCE).unwrap().another_day);
    assert_eq!(resume(&over, at("2026-05-02T22:01:00+00:00"), PATIENCE), None);
}
