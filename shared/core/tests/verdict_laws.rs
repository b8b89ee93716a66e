//! Laws of history and verdict, over stories made at random (`computations.md` § 5).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::story::story;
use common::*;
use proptest::prelude::*;
use proptest::sample::Index;
use witnessmark_core::history::{Open, Place};
use witnessmark_core::list::Meaning;
use witnessmark_core::verdict::{Rule, State};

/// What a record says of a point, as far as it may open or clear something there.
enum Says {
    Opens(Meaning, bool),
    LooksClean,
    PutsRight,
}

fn says(record: &Record, point: &str) -> Vec<Says> {
    if record.payload.machine != Some(machine()) {
        return Vec::new();
    }
    match record.payload.typed().unwrap() {
        Body::Inspection(body) => body
            .findings
            .iter()
            .filter(|finding| finding.point == point)
            .filter_map(|finding| match finding.means {
                Meaning::NotFitted => None,
                Meaning::Serviceable => Some(Says::LooksClean),
                worse => Some(Says::Opens(worse, finding.passing)),
            })
            .collect(),
        Body::Correction(body) if body.point == point && body.means >= Meaning::Watch => {
            vec![Says::Opens(body.means, false)]
        }
        Body::Rectified(body) if body.point == point => vec![Says::PutsRight],
        _ => Vec::new(),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Any order of the same records, and any of them twice, gives the same history and verdict.
    #[test]
    fn order_and_repetition_do_not_matter(
        world in story(),
        again in proptest::collection::vec(any::<Index>(), 0..6),
        seed in any::<u64>(),
    ) {
        let mut records: Vec<&Record> = world.records.iter().collect();
        records.extend(again.iter().map(|index| index.get(&world.records)));
        // A shuffle that the seed decides.
        records.sort_by_key(|record| Digest::of(&[record.digest.0.as_slice(), &seed.to_be_bytes()].concat()));
        let history = History::of(machine(), records, &Trust::from_records(&world.records));
        prop_assert_eq!(&history, &world.history());
        let now = world.now + TimeDelta::minutes(1);
        prop_assert_eq!(verdict_of(&history, &confirmed_sheet(), now), world.verdict());
    }

    /// A history kept as JSON and taken further record by record is the one folded whole.
    #[test]
    fn a_kept_history_can_be_taken_further(world in story(), stop in any::<Index>()) {
        let mut records: Vec<&Record> =
            world.records.iter().filter(|r| r.payload.machine == Some(machine())).collect();
        records.sort_by_key(|record| Place::of(record));
        let stop = stop.index(records.len() + 1);
        let trust = Trust::from_records(&world.records);
        let mut history = History::default();
        for (n, record) in records.iter().enumerate() {
            if n == stop {
                let kept = serde_json::to_string(&history).unwrap();
                history = serde_json::from_str(&kept).unwrap();
            }
            history.take(record, &trust);
        }
        prop_assert_eq!(history, world.history());
    }

    /// What is no longer open was cleared by somebody who had seen it; a lasting defect by a
    /// rectification, never by a look.
    #[test]
    fn nothing_is_cleared_by_who_had_not_seen_it(world in story()) {
        let history = world.history();
        for (n, record) in world.records.iter().enumerate() {
            for point in ["base", "spring", "strap"] {
                for said in says(record, point) {
                    let Says::Opens(means, passing) = said else { continue };
                    let still = history.open_at(point).is_some_and(|open| {
                        open.sightings.iter().any(|s| s.record == record.digest)
                    });
                    let lasting = means == Meaning::Unserviceable && !passing;
                    let cleared = world.records.iter().enumerate().any(|(later, by)| {
                        world.knew[later].contains(&n) && says(by, point).iter().any(|said| match said {
                            Says::PutsRight => true,
                            Says::LooksClean => !lasting,
                            Says::Opens(..) => false,
                        })
                    });
                    prop_assert!(still || cleared, "{point} of record {n} vanished");
                }
            }
        }
    }

    /// A clean look, however complete, never frees a machine that a lasting defect grounds.
    #[test]
    fn a_clean_look_does_not_clear_a_lasting_defect(mut world in story(), by in 0..3usize, all in any::<bool>()) {
        let lasting = |world: &World| -> Vec<String> {
            let open = world.history().open;
            let lasting = |open: &&Open| {
                open.sightings.iter().any(|s| s.means == Meaning::Unserviceable && !s.passing)
            };
            open.iter().filter(lasting).map(|open| open.point.clone()).collect()
        };
        let before = lasting(&world);
        if all {
            (0..3).for_each(|other| world.meet(by, other));
        }
        let clean = ["base", "spring", "strap"].map(|point| finding(point, Meaning::Serviceable));
        world.write(by, Some(machine()), look(clean.to_vec()));
        for point in &before {
            prop_assert!(lasting(&world).contains(point));
        }
        prop_assert!(before.is_empty() || world.verdict().state == State::Grounded);
    }

    /// Another unserviceable finding, in a list or in a correction, never improves a verdict.
    #[test]
    fn something_worse_never_improves_the_verdict(
        mut world in story(),
        by in 0..3usize,
        passes in any::<bool>(),
        corrects in any::<bool>(),
    ) {
        let before = world.verdict();
        let body = if corrects {
            correction(world.records[0].digest, "spring", Meaning::Unserviceable)
        } else {
            look(vec![Finding { passing: passes, ..finding("spring", Meaning::Unserviceable) }])
        };
        world.write(by, Some(machine()), body);
        let after = world.verdict();
        prop_assert!(after.state >= before.state);
        prop_assert_eq!(after.state, State::Grounded);
    }

    /// A watch finding never improves a verdict that stands on today's full look.
    #[test]
    fn a_watch_item_never_improves_the_verdict(mut world in story(), by in 0..3usize) {
        world.write(by, Some(machine()), look(vec![]));
        world.write(by, Some(machine()), Body::Machine(described()));
        let before = world.verdict();
        world.write(by, Some(machine()), inspection("second-flight", vec![finding("strap", Meaning::Watch)], vec![]));
        prop_assert!(world.verdict().state >= before.state.max(State::Limited));
    }

    /// What the reasons say would clear them does: put right everything as one who knows all,
    /// look it over once more, and nothing is open.
    #[test]
    fn who_knows_all_can_clear_all(mut world in story()) {
        for device in &mut world.devices {
            device.skew = TimeDelta::zero();
        }
        (0..3).for_each(|other| world.meet(0, other));
        for open in world.history().open {
            let leading = open.leading().unwrap().record;
            world.write(0, Some(machine()), rectified(&open.point, leading));
        }
        world.write(0, Some(machine()), Body::Machine(described()));
        world.write(0, Some(machine()), look(vec![]));
        let verdict = world.verdict();
        prop_assert!(world.history().open.is_empty());
        // What remains is what no pilot can clear: a newer version's records, and a clock that was ahead.
        prop_assert!(verdict.reasons.iter().all(|r| matches!(r.rule, Rule::NewerRecord | Rule::ClockDoubt)),
            "{:?}", verdict.reasons);
    }

    /// The verdict is the worst of its reasons, and says the worst first.
    #[test]
    fn a_verdict_is_its_worst_reason(world in story()) {
        let verdict = world.verdict();
        let states: Vec<State> = verdict.reasons.iter().map(|reason| reason.state).collect();
        prop_assert_eq!(verdict.state, states.iter().copied().max().unwrap_or(State::Fit));
        prop_assert!(states.is_sorted_by(|a, b| a >= b));
    }
}
