//! What holds of lives whatever the findings.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use witnessmark_core::reliability::{
    Findings, Inspect, LifeFault, Wanted, inspect_every, life, turnbull, weibull,
};
use witnessmark_core::told::{Told, TooLittle};

type Pairs = Vec<(f64, Option<f64>)>;

const ASKED: Wanted = Wanted { chance: 0.02, age: None, in_force: None };

/// Exact, between two inspections, and still whole, in quarters of an hour.
fn pairs() -> impl Strategy<Value = Pairs> {
    let one = (1u16..400, 0u16..200, 0u8..4).prop_map(|(after, more, sort)| {
        let (after, by) = (f64::from(after) / 4.0, f64::from(after + more) / 4.0);
        (after, (sort > 0).then_some(by))
    });
    prop::collection::vec(one, 1..50)
}

fn of(pairs: &Pairs) -> Findings {
    Findings::new(pairs).unwrap()
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-6 * (1.0 + a.abs().max(b.abs()))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn masses_sum_to_one_and_lie_within_some_finding(pairs in pairs()) {
        let Told::Told(found) = turnbull(&of(&pairs)) else { return Ok(()) };
        prop_assert!(close(found.masses.iter().map(|mass| mass.mass).sum(), 1.0));
        prop_assert!(found.gap <= 1e-6, "{}", found.gap);
        for mass in &found.masses {
            let by = mass.by.unwrap_or(f64::INFINITY);
            prop_assert!(mass.mass > 0.0 && mass.after <= by);
            prop_assert!(pairs.iter().any(|(_, end)| end.unwrap_or(f64::INFINITY) == by));
        }
        // Each finding is possible under it, and the likelihood is that of the masses.
        let within = |after: f64, by: f64| -> f64 {
            let inside = found.masses.iter().filter(|m| m.after >= after && m.by.unwrap_or(f64::INFINITY) <= by);
            inside.filter(|m| after == by || m.by != Some(after)).map(|m| m.mass).sum()
        };
        let sum: f64 = pairs.iter().map(|(after, by)| within(*after, by.unwrap_or(f64::INFINITY)).ln()).sum();
        prop_assert!((sum - found.log_likelihood).abs() < 1e-5, "{sum} {}", found.log_likelihood);
    }

    #[test]
    fn order_says_nothing_and_hours_may_be_minutes(pairs in pairs()) {
        let found = weibull(&of(&pairs)).unwrap();
        let back: Pairs = pairs.iter().rev().copied().collect();
        prop_assert_eq!(&found, &weibull(&of(&back)).unwrap());
        let minutes: Pairs = pairs.iter().map(|(after, by)| (after * 60.0, by.map(|by| by * 60.0))).collect();
        let Told::Told(found) = found else { return Ok(()) };
        let Told::Told(other) = weibull(&of(&minutes)).unwrap() else { panic!("{pairs:?}") };
        prop_assert!(close(other.shape, found.shape) && close(other.scale, 60.0 * found.scale));
    }

    #[test]
    fn intervals_hold_their_estimate(pairs in pairs()) {
        let Told::Told(found) = weibull(&of(&pairs)).unwrap() else { return Ok(()) };
        let inside = |low: Option<f64>, value: f64, high: Option<f64>| {
            low.is_none_or(|low| low < value) && high.is_none_or(|high| value < high)
        };
        prop_assert!(inside(found.shape_interval.low, found.shape, found.shape_interval.high), "{found:?}");
        prop_assert!(inside(found.scale_interval.low, found.scale, found.scale_interval.high), "{found:?}");
    }

    #[test]
    fn an_interval_in_force_is_never_lengthened(pairs in pairs(), in_force in 0.1..500.0f64, age in 0.0..100.0f64) {
        let ask = |chance, in_force| {
            inspect_every(&of(&pairs), &Wanted { chance, age: Some(age), in_force }).unwrap().told()
        };
        let Some(free) = ask(0.02, None) else { return Ok(()) };
        let bound = ask(0.02, Some(in_force)).unwrap();
        prop_assert!(bound.every <= in_force && bound.every <= bound.allowed * (1.0 + 1e-12));
        prop_assert_eq!(bound.shortens, bound.every < in_force);
        prop_assert!(free.allowed <= free.at_best * (1.0 + 1e-9), "{free:?}");
        // Who bears less looks more often.
        let Inspect { allowed, .. } = ask(0.01, None).unwrap();
        prop_assert!(allowed <= free.allowed * (1.0 + 1e-6));
    }

    #[test]
    fn any_age_is_at_least_as_good_as_the_worst(pairs in pairs(), share in 0.0..1.0f64) {
        let Told::Told(worst) = inspect_every(&of(&pairs), &ASKED).unwrap() else { return Ok(()) };
        let oldest = pairs.iter().map(|(after, by)| by.unwrap_or(*after)).fold(0.0, f64::max);
        let wanted = Wanted { age: Some(share * oldest), ..ASKED };
        let Told::Told(one) = inspect_every(&of(&pairs), &wanted).unwrap() else { panic!("{pairs:?}") };
        prop_assert!(worst.allowed <= one.allowed * (1.0 + 1e-4), "{worst:?} {one:?}");
    }

    #[test]
    fn nothing_that_is_typed_makes_it_panic(typed in prop::collection::vec((any::<f64>(), prop::option::of(any::<f64>())), 0..8)) {
        let Ok(findings) = Findings::new(&typed) else { return Ok(()) };
        if let Ok(found) = life(&findings, Some(&ASKED))
            && let Told::Told(fit) = found.weibull
        {
            prop_assert!(fit.shape.is_finite() && fit.scale.is_finite());
        }
    }

    #[test]
    fn positive_times_however_far_apart_make_none_either(typed in prop::collection::vec((-300i32..300, 0u8..3, 1.0..9.0f64), 3..9)) {
        let pair = |(power, sort, digits): &(i32, u8, f64)| {
            let after = digits * 10f64.powi(*power);
            (after, [None, Some(after), Some(after * 1.5)][usize::from(*sort)])
        };
        let findings = of(&typed.iter().map(pair).collect());
        if let Ok(found) = life(&findings, Some(&ASKED))
            && let Told::Told(fit) = found.weibull
        {
            prop_assert!(fit.shape.is_finite() && fit.scale.is_finite());
        }
    }
}

#[test]
fn what_tells_too_little_says_so() {
    let why = |pairs: &Pairs| {
        let found = life(&of(pairs), Some(&ASKED)).unwrap();
        let Told::TooLittle(why) = found.weibull else { panic!("{found:?}") };
        assert_eq!(found.inspect, Some(Told::TooLittle(why)));
        assert_eq!(found.rests_on.findings, pairs.len());
        (found.turnbull.as_result().err(), why)
    };
    let few = |has| TooLittle::Few { has, needs: 3 };
    assert_eq!(why(&vec![]), (Some(few(0)), few(0)));
    assert_eq!(why(&vec![(10.0, Some(20.0))]), (Some(few(1)), few(1)));
    assert_eq!(why(&vec![(10.0, None), (40.0, None)]).1, TooLittle::NothingFailed { has: 2 });
    // All could have failed at 30 h sharp: no spread is too narrow. Their masses are told all the same.
    let one_moment: Pairs = [(10.0, 40.0), (20.0, 50.0), (29.0, 60.0)].map(|(a, b)| (a, Some(b))).to_vec();
    assert_eq!(why(&one_moment), (None, TooLittle::AnySpread));
    // Failed before 5 h, or never: no spread is too wide.
    let mut either: Pairs = vec![(0.0, Some(5.0)); 3];
    either.extend([(100.0, None), (200.0, None)]);
    assert_eq!(why(&either), (None, TooLittle::AnySpread));
}

#[test]
fn what_cannot_be_is_told_with_its_number() {
    let fault = |pairs: &Pairs| Findings::new(pairs).unwrap_err();
    assert_eq!(fault(&vec![(1.0, None), (-1.0, None)]), LifeFault::Negative(2));
    assert_eq!(fault(&vec![(5.0, Some(4.0))]), LifeFault::Backwards(1));
    assert_eq!(fault(&vec![(0.0, Some(0.0))]), LifeFault::AtNothing(1));
    assert_eq!(fault(&vec![(0.0, Some(f64::INFINITY))]), LifeFault::NotFinite(1));
    let some = of(&vec![(10.0, Some(20.0)), (30.0, Some(40.0)), (50.0, Some(60.0))]);
    for wrong in [
        Wanted { chance: 0.0, ..ASKED },
        Wanted { chance: f64::NAN, ..ASKED },
        Wanted { age: Some(-1.0), ..ASKED },
        Wanted { in_force: Some(0.0), ..ASKED },
    ] {
        assert!(matches!(life(&some, Some(&wrong)), Err(LifeFault::Impossible { .. })), "{wrong:?}");
    }
}
