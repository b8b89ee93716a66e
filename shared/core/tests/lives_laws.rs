//! What holds of lives whatever was seen.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Digest;
use witnessmark_core::reliability::{PartMoved, PartSeen, lives};

const POINTS: [&str; 3] = ["body", "springs", "mounts"];

/// A look: machine, hours since the last one there, and what was found at each point.
type Look = (u8, u16, [u8; 3]);

fn looks() -> impl Strategy<Value = Vec<Look>> {
    let means = prop_oneof![6 => Just(0u8), 1 => Just(1), 2 => Just(2), 1 => Just(3)];
    prop::collection::vec((0u8..3, 0u16..40, [means.clone(), means.clone(), means]), 1..40)
}

fn meaning(number: u8) -> Meaning {
    [Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable, Meaning::NotFitted][usize::from(number)]
}

/// The looks' findings, one record a look, or one a point.
fn seen(looks: &[Look], older: f64, apart: bool) -> Vec<PartSeen> {
    let mut hours = [older; 3];
    let mut all = Vec::new();
    for (minute, (machine, more, found)) in looks.iter().enumerate() {
        hours[usize::from(*machine)] += f64::from(*more) / 4.0;
        for (point, means) in POINTS.iter().zip(found) {
            let name = if apart { format!("{minute} {point}") } else { minute.to_string() };
            all.push(PartSeen {
                record: Digest::of(name.as_bytes()),
                machine: Uuid::from_u128(u128::from(*machine)),
                at_ms: minute as i64,
                hours: hours[usize::from(*machine)],
                point: (*point).to_owned(),
                means: meaning(*means),
            });
        }
    }
    all
}

/// Components fitted and taken off at moments between the looks.
fn moves() -> impl Strategy<Value = Vec<PartMoved>> {
    let one = (0u8..3, 0u8..3, any::<bool>(), 0u16..200, 0u16..200, 0i64..40);
    let one = one.prop_map(|(machine, component, fitted, own, hours, at_ms)| PartMoved {
        record: Digest::of(format!("{machine} {component} {fitted} {own} {hours} {at_ms}").as_bytes()),
        machine: Uuid::from_u128(u128::from(machine)),
        at_ms,
        component: Uuid::from_u128(100 + u128::from(component)),
        fitted,
        own: f64::from(own) / 4.0,
        hours: f64::from(hours) / 4.0,
    });
    prop::collection::vec(one, 0..8)
}

proptest! {
    #[test]
    fn every_life_can_be_reckoned_with(looks in looks(), moves in moves()) {
        let found = lives(&seen(&looks, 0.0, false), &moves);
        prop_assert!(found.findings().is_ok(), "{found:?}");
        for one in &found.all {
            prop_assert!(one.after >= 0.0 && one.by.is_none_or(|by| one.after < by), "{one:?}");
            // What was seen whole and not wrong tells something, or it isn't there.
            prop_assert!(one.by.is_some() || one.after > 0.0);
        }
    }

    #[test]
    fn the_order_of_telling_and_telling_twice_say_nothing(looks in looks(), moves in moves()) {
        let seen = seen(&looks, 0.0, false);
        let found = lives(&seen, &moves);
        let twice: Vec<PartSeen> = seen.iter().rev().chain(&seen).cloned().collect();
        let moved: Vec<PartMoved> = moves.iter().rev().chain(&moves).cloned().collect();
        prop_assert_eq!(found, lives(&twice, &moved));
    }

    #[test]
    fn an_inspection_in_parts_makes_no_failure_of_its_own(looks in looks(), moves in moves()) {
        let (whole, parts) = (lives(&seen(&looks, 0.0, false), &moves), lives(&seen(&looks, 0.0, true), &moves));
        prop_assert_eq!(whole.all, parts.all);
    }

    #[test]
    fn an_older_machine_has_older_parts_and_no_other_lives(looks in looks(), older in 1u16..400) {
        let older = f64::from(older);
        // Nothing wrong at a machine's first look, which would reach back to when it was new.
        let mut looks = looks;
        looks.splice(0..0, [(0, 1, [0; 3]), (1, 1, [0; 3]), (2, 1, [0; 3])]);
        let (young, old) = (lives(&seen(&looks, 0.0, false), &[]), lives(&seen(&looks, older, false), &[]));
        prop_assert_eq!(young.all.len(), old.all.len());
        prop_assert_eq!(young.failed(), old.failed());
        prop_assert_eq!(young.renewed, old.renewed);
        let sum = |all: &[witnessmark_core::reliability::Lived]| -> f64 {
            all.iter().map(|one| one.by.unwrap_or(one.after)).sum()
        };
        // The first life of each of the three is older; what was put right counts from then.
        prop_assert!((sum(&old.all) - sum(&young.all) - 3.0 * older).abs() < 1e-6);
    }

    #[test]
    fn what_another_machine_does_is_its_own(looks in looks()) {
        let all = seen(&looks, 0.0, false);
        let mut apart: Vec<_> = (0..3u128)
            .flat_map(|machine| {
                let own: Vec<_> =
                    all.iter().filter(|one| one.machine == Uuid::from_u128(machine)).cloned().collect();
                lives(&own, &[]).all
            })
            .map(|one| (one.by.is_none(), one.by.unwrap_or(one.after).to_bits(), one.after.to_bits()))
            .collect();
        apart.sort();
        let together = lives(&all, &[]).all;
        let together: Vec<_> = together
            .iter()
            .map(|one| (one.by.is_none(), one.by.unwrap_or(one.after).to_bits(), one.after.to_bits()))
            .collect();
        prop_assert_eq!(together, apart);
    }

    #[test]
    fn nothing_that_is_stated_makes_it_panic(
        looks in prop::collection::vec((0u8..2, any::<f64>(), 0u8..4, any::<i64>()), 0..12),
        moves in moves(),
        own in any::<f64>(),
    ) {
        let seen: Vec<PartSeen> = looks.iter().enumerate().map(|(n, (machine, hours, means, at_ms))| PartSeen {
            record: Digest::of(&n.to_be_bytes()),
            machine: Uuid::from_u128(u128::from(*machine)),
            at_ms: *at_ms,
            hours: *hours,
            point: "body".into(),
            means: meaning(*means),
        }).collect();
        let moves: Vec<PartMoved> = moves.into_iter().map(|one| PartMoved { own, ..one }).collect();
        let found = lives(&seen, &moves);
        if let Ok(findings) = found.findings() {
            prop_assert_eq!(findings.counted().failed, found.failed());
        }
    }
}
