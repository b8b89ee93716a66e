//! Conversions, against the exact definitions as PyPI's pint reckons them
//! (`tests/outside/units.py` writes the table), and against NIST SP 811.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::BTreeSet;

use serde::Deserialize;
use witnessmark_core::units::{Quantity, Unit};

#[derive(Deserialize)]
struct Table {
    rows: Vec<(f64, String, String, f64)>,
}

fn rows() -> Vec<(f64, String, String, f64)> {
    serde_json::from_str::<Table>(include_str!("../vectors/units.json")).unwrap().rows
}

/// Within 1e-12 of `expected`; where two large numbers nearly cancel (temperatures), of those.
fn close(value: f64, expected: f64, scale: f64) -> bool {
    (value - expected).abs() <= 1e-12 * expected.abs().max(scale)
}

#[test]
fn every_pair_converts_as_pint_says() {
    let mut done: BTreeSet<(String, String)> = BTreeSet::new();
    for (value, from, to, expected) in rows() {
        let given = Quantity::new(value, from.parse().unwrap());
        let scale = if given.unit.dimension() == Unit::Kelvin.dimension() { 273.15 } else { 0.0 };
        let converted = match to.as_str() {
            "SI" => given.si().unwrap(),
            code => given.to(code.parse().unwrap()).unwrap().value,
        };
        assert!(close(converted, expected, scale), "{value} {from} in {to}: {converted}, not {expected}");
        done.insert((from, to));
    }
    for from in Unit::ALL {
        for to in Unit::ALL {
            let pair = (from.code().to_owned(), to.code().to_owned());
            let converts = Quantity::new(1.0, *from).to(*to).is_ok();
            assert_eq!(converts, done.contains(&pair), "{pair:?}: is it in tests/outside/units.py?");
        }
    }
}

/// NIST SP 811 (2008) appendix B, from memory: factors to SI as printed, to seven digits.
#[test]
fn printed_factors_of_sp_811() {
    let printed = [
        (Unit::PoundForceInch, 1.129848e-1),
        (Unit::PoundForceFoot, 1.355818),
        (Unit::KilogramForceMetre, 9.80665),
        (Unit::Inch, 2.54e-2),
        (Unit::Foot, 3.048e-1),
        (Unit::PoundForcePerSquareInch, 6.894757e3),
        (Unit::InchOfMercury, 3.386389e3),
        (Unit::Bar, 1e5),
        (Unit::Pound, 4.535924e-1),
        (Unit::Hour, 3.6e3),
        (Unit::Litre, 1e-3),
        (Unit::GallonUs, 3.785412e-3),
        (Unit::GallonBritish, 4.54609e-3),
        (Unit::Knot, 5.144444e-1),
        (Unit::KilometrePerHour, 2.777778e-1),
        (Unit::Degree, 1.745329e-2),
        (Unit::PerMinute, 1.666667e-2),
    ];
    for (unit, factor) in printed {
        let si = Quantity::new(1.0, unit).si().unwrap();
        assert!((si / factor - 1.0).abs() < 5e-7, "1 {} is {si}, printed {factor}", unit.code());
    }
    // Between the temperatures the printed formulae are exact.
    let fahrenheit = |celsius: f64| Quantity::new(celsius, Unit::Celsius).to(Unit::Fahrenheit).unwrap().value;
    assert_eq!(
        [fahrenheit(0.0), fahrenheit(100.0), fahrenheit(-40.0)].map(|f| (f * 1e9).round() / 1e9),
        [32.0, 212.0, -40.0]
    );
}
