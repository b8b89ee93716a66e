//! What holds of trends whatever the readings.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::trend::{Direction, Limit, Series, ToLimit, Trend, TrendFault, standard_day, trend};
use witnessmark_core::units::{Quantity, Unit};

type Points = Vec<(f64, f64)>;

fn series(points: &Points) -> Series {
    let (x, y): (Vec<f64>, Vec<f64>) = points.iter().copied().unzip();
    Series::paired(&x, &y).unwrap()
}

fn told(points: &Points, limit: Option<Limit>) -> Option<Trend> {
    trend(&series(points), limit).unwrap().told()
}

/// Readings in quarters, so that shifting and doubling them is exact.
fn points() -> impl Strategy<Value = Points> {
    let point = (0u16..800, -400i16..400);
    let exact = |(at, value): (u16, i16)| (f64::from(at) / 4.0, f64::from(value) / 4.0);
    prop::collection::vec(point.prop_map(exact), 5..60)
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * (1.0 + a.abs().max(b.abs()))
}

proptest! {
    #[test]
    fn the_order_in_which_readings_come_says_nothing(points in points(), seed in any::<u64>()) {
        let mut shuffled = points.clone();
        let n = shuffled.len();
        for at in 0..n {
            shuffled.swap(at, (seed as usize).wrapping_mul(at + 7) % n);
        }
        prop_assert_eq!(told(&points, Some(Limit::AtMost(150.0))), told(&shuffled, Some(Limit::AtMost(150.0))));
    }

    #[test]
    fn an_interval_holds_its_slope(points in points()) {
        let Some(found) = told(&points, None) else { return Ok(()) };
        prop_assert!(found.slope.low <= found.slope.slope && found.slope.slope <= found.slope.high);
        prop_assert!((0.0..=1.0).contains(&found.test.p) && found.test.variance > 0.0);
        let rising = found.direction == Direction::Rising;
        prop_assert!(!rising || found.slope.slope >= 0.0);
    }

    #[test]
    fn shifting_and_scaling_change_only_what_they_should(points in points(), by in -64i8..64) {
        let by = f64::from(by) / 4.0;
        let Some(found) = told(&points, None) else { return Ok(()) };
        let moved = told(&points.iter().map(|(x, y)| (x + 32.0, y + by)).collect(), None).unwrap();
        prop_assert!(close(moved.slope.slope, found.slope.slope) && close(moved.slope.low, found.slope.low));
        prop_assert_eq!(moved.test, found.test);
        prop_assert_eq!(moved.change.map(|c| (c.at - 32.0, c.k)), found.change.map(|c| (c.at, c.k)));
        prop_assert_eq!(moved.outliers.len(), found.outliers.len());
        let turned = told(&points.iter().map(|(x, y)| (*x, -2.0 * y)).collect(), None).unwrap();
        prop_assert!(close(turned.slope.slope, -2.0 * found.slope.slope));
        prop_assert!(close(turned.slope.low, -2.0 * found.slope.high));
        prop_assert_eq!(turned.test.s, -found.test.s);
    }

    #[test]
    fn a_further_limit_is_never_reached_sooner(points in points(), limit in 100.0..200.0f64, more in 0.0..100.0f64) {
        let at = |limit| match told(&points, Some(Limit::AtMost(limit)))?.to_limit? {
            Told::Told(ToLimit::Ahead { reached, left }) => {
                assert!(reached.low <= reached.at && reached.high.is_none_or(|high| high >= reached.at));
                assert!(left.low >= 0.0);
                Some(reached)
            }
            _ => None,
        };
        if let (Some(near), Some(far)) = (at(limit), at(limit + more)) {
            prop_assert!(near.at <= far.at && near.low <= far.low);
        }
    }

    #[test]
    fn nothing_that_is_typed_makes_it_panic(x in prop::collection::vec(any::<f64>(), 0..12), y in prop::collection::vec(any::<f64>(), 0..12), limit in any::<f64>()) {
        let Ok(series) = Series::paired(&x, &y) else { return Ok(()) };
        for limit in [Limit::AtMost(limit), Limit::AtLeast(limit), Limit::Either(limit)] {
            if let Ok(Told::Told(found)) = trend(&series, Some(limit)) {
                prop_assert!(found.slope.slope.is_finite() && found.slope.intercept.is_finite());
            }
        }
    }
}

#[test]
fn what_tells_too_little_says_so() {
    let why = |points: &Points| match trend(&series(points), Some(Limit::AtMost(9.0))).unwrap() {
        Told::TooLittle(why) => why,
        Told::Told(found) => panic!("{found:?}"),
    };
    assert_eq!(why(&vec![]), TooLittle::Few { has: 0, needs: 5 });
    assert_eq!(why(&vec![(1.0, 2.0)]), TooLittle::Few { has: 1, needs: 5 });
    assert_eq!(why(&(0..30).map(|at| (f64::from(at), 180.0)).collect()), TooLittle::AllSame);
    assert_eq!(why(&(0..30).map(|at| (12.0, f64::from(at))).collect()), TooLittle::OneMoment);
    // Two times only: of 25 slopes the interval would need more than there are.
    let two: Points = (0..6).map(|at| (f64::from(at % 2), f64::from(at))).collect();
    assert!(matches!(why(&two), TooLittle::NoInterval), "{two:?}");
}

#[test]
fn what_cannot_be_is_told_with_its_number() {
    let fault = |x: &[f64], y: &[f64]| Series::paired(x, y).unwrap_err();
    assert_eq!(fault(&[1.0, -2.0], &[0.0, 0.0]), TrendFault::Negative(2));
    assert_eq!(fault(&[1.0, 2.0, f64::NAN], &[0.0; 3]), TrendFault::NotFinite(3));
    assert_eq!(fault(&[1.0], &[f64::INFINITY]), TrendFault::NotFinite(1));
    assert_eq!(fault(&[1.0], &[]), TrendFault::Unpaired { x: 1, y: 0 });
    let huge = Series::paired(&[0.0, 1.0, 2.0, 3.0, 4.0], &[-1e308, 1e308, -1e308, 1e308, 1e308]).unwrap();
    assert_eq!(trend(&huge, None), Err(TrendFault::OutOfReach));
    let fine = Series::paired(&[0.0], &[1.0]).unwrap();
    assert_eq!(trend(&fine, Some(Limit::Either(f64::NAN))), Err(TrendFault::OutOfReach));
}

#[test]
fn a_limit_is_told_by_its_side() {
    // By hand: 2 a hour from 100 on, exactly, until 9 h.
    let rising: Points = (0..10).map(|at| (f64::from(at), 100.0 + 2.0 * f64::from(at))).collect();
    let to = |limit| told(&rising, Some(limit)).unwrap().to_limit.unwrap().told().unwrap();
    let ToLimit::Ahead { reached, left } = to(Limit::AtMost(130.0)) else { panic!() };
    assert_eq!((reached.at, reached.low, reached.high, left.at), (15.0, 15.0, Some(15.0), 6.0));
    assert_eq!(to(Limit::AtMost(118.0)), ToLimit::There);
    assert_eq!(to(Limit::AtMost(90.0)), ToLimit::There, "past it already");
    assert_eq!(to(Limit::AtLeast(90.0)), ToLimit::Away);
    assert_eq!(to(Limit::Either(90.0)), ToLimit::Away);
    assert!(matches!(to(Limit::Either(130.0)), ToLimit::Ahead { .. }));
    let scattered: Points = (0..20).map(|at| (f64::from(at), f64::from(at * 7 % 5))).collect();
    let unsure = told(&scattered, Some(Limit::AtMost(50.0))).unwrap();
    assert_eq!(unsure.to_limit, Some(Told::TooLittle(TooLittle::NoTrend)));
    assert_eq!(unsure.direction, Direction::Neither);
}

#[test]
fn a_wild_reading_is_shown_and_moves_nothing() {
    let mut points: Points =
        (0..20).map(|at| (f64::from(at), 100.0 + f64::from(at) + f64::from(at % 3))).collect();
    let before = told(&points, None).unwrap();
    points.push((10.5, 400.0));
    let after = told(&points, None).unwrap();
    assert_eq!((before.outliers.len(), after.outliers.len()), (0, 1));
    assert_eq!((after.outliers[0].reading.value, after.readings), (400.0, 21));
    assert!(after.outliers[0].z > 100.0);
    assert!((after.slope.slope - before.slope.slope).abs() < 0.05);
}

/// By hand: 200 °C on a day of 30 °C are 185 °C on one of 15 °C; in °F 392 and 365.
#[test]
fn a_hot_day_is_taken_off() {
    let of = |value, unit| Quantity::new(value, unit);
    let corrected = standard_day(of(392.0, Unit::Fahrenheit), of(30.0, Unit::Celsius)).unwrap();
    assert!((corrected.value - 365.0).abs() < 1e-9 && corrected.unit == Unit::Fahrenheit);
    assert!(standard_day(of(200.0, Unit::Celsius), of(86.0, Unit::Celsius)).is_err(), "°F for °C");
    assert!(standard_day(of(200.0, Unit::Volt), of(15.0, Unit::Celsius)).is_err());
}
