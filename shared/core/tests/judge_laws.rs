//! Laws of judging an answer: the author's meaning, or where the value lies.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use proptest::sample::select;
use witnessmark_core::list::{Answer, Ask, Given, JudgeFault, Meaning, ResolvedBand, Sourced, judge};
use witnessmark_core::units::{Quantity, Unit};

fn end(value: Option<f64>, unit: Unit) -> Option<Sourced> {
    Some(Sourced { value, unit, source: None, unconfirmed: Some("common practice".into()) })
}

fn ask(low: Option<Sourced>, high: Option<Sourced>) -> Ask {
    let band = ResolvedBand { name: "torque".into(), critical: true, low, high };
    Ask::Value { band, below: Meaning::Watch, above: Meaning::Unserviceable }
}

fn means(ask: &Ask, value: f64, unit: Unit) -> Meaning {
    judge(ask, &Given::Value { value: Quantity::new(value, unit) }).unwrap().means
}

fn torque_unit() -> impl Strategy<Value = Unit> {
    let torques = Unit::ALL.iter().copied().filter(|unit| unit.dimension() == Unit::NewtonMetre.dimension());
    select(torques.collect::<Vec<_>>())
}

proptest! {
    /// A value means the same in whatever unit it is read, away from the very edge of the band.
    #[test]
    fn the_unit_does_not_matter(
        value in 0.1..100.0f64,
        low in 1.0..40.0f64,
        wide in 0.0..40.0f64,
        read in torque_unit(),
        authored in torque_unit(),
    ) {
        let newton = |value: f64| Quantity::new(value, Unit::NewtonMetre);
        let high = low + wide;
        let near = |edge: f64| (value - edge).abs() < 1e-9 * edge;
        prop_assume!(!near(low) && !near(high));
        let plain = ask(end(Some(low), Unit::NewtonMetre), end(Some(high), Unit::NewtonMetre));
        let to = |value: f64| newton(value).to(authored).unwrap().value;
        let other = ask(end(Some(to(low)), authored), end(Some(to(high)), authored));
        let read_as = newton(value).to(read).unwrap();
        let expected = if value < low {
            Meaning::Watch
        } else if value > high {
            Meaning::Unserviceable
        } else {
            Meaning::Serviceable
        };
        prop_assert_eq!(means(&plain, value, Unit::NewtonMetre), expected);
        prop_assert_eq!(means(&other, read_as.value, read), expected);
    }

    /// Both ends belong to the band.
    #[test]
    fn the_ends_are_inside(low in 0.1..50.0f64, wide in 0.0..50.0f64, unit in torque_unit()) {
        let ask = ask(end(Some(low), unit), end(Some(low + wide), unit));
        prop_assert_eq!(means(&ask, low, unit), Meaning::Serviceable);
        prop_assert_eq!(means(&ask, low + wide, unit), Meaning::Serviceable);
        prop_assert_eq!(means(&ask, low.next_down(), unit), Meaning::Watch);
        prop_assert_eq!(means(&ask, (low + wide).next_up(), unit), Meaning::Unserviceable);
    }

    /// Without a number to hold it against, a value is never serviceable.
    #[test]
    fn a_missing_number_is_never_serviceable(value in -100.0..100.0f64, high in proptest::option::of(0.0..50.0f64)) {
        let unit = Unit::Millimetre;
        prop_assert!(means(&ask(end(None, unit), end(high, unit)), value, unit) >= Meaning::Watch);
        prop_assert!(means(&ask(None, end(None, unit)), value, unit) >= Meaning::Watch);
    }

    /// No number that isn't one, and no unit of another kind, is judged at all.
    #[test]
    fn what_cannot_be_measured_is_refused(unit in select(Unit::ALL), value in select(vec![1.0, f64::NAN, f64::INFINITY])) {
        let ask = ask(end(Some(1.0), Unit::NewtonMetre), None);
        let judged = judge(&ask, &Given::Value { value: Quantity::new(value, unit) });
        let fits = unit.dimension() == Unit::NewtonMetre.dimension() && value.is_finite();
        prop_assert_eq!(judged.is_ok(), fits);
    }
}

#[test]
fn words_mean_what_their_author_says() {
    let answer = |id: &str, means| Answer { id: id.into(), means };
    let ask = Ask::Words {
        answers: vec![answer("dry", Meaning::Serviceable), answer("wet", Meaning::Unserviceable)],
    };
    let given = |answer: &str| Given::Words { answer: answer.into() };
    assert_eq!(judge(&ask, &given("wet")).unwrap().means, Meaning::Unserviceable);
    assert_eq!(judge(&ask, &given("damp")), Err(JudgeFault::NoSuchAnswer("damp".into())));
    let value = Given::Value { value: Quantity::new(1.0, Unit::Litre) };
    assert!(matches!(judge(&ask, &value), Err(JudgeFault::WrongKind(_))));
    let measured = self::ask(end(Some(1.0), Unit::Litre), None);
    assert!(matches!(judge(&measured, &given("dry")), Err(JudgeFault::WrongKind(_))));
}
