use witnessmark_core::flight::{
    Burn, Loads, Mix, Oil, Range, Ratio, Reserve, Spread, Wind, WindLimits, all_up, endurance, oil_to_add,
    wind_standing,
};
use witnessmark_core::units::{Quantity, Unit};

use crate::near;

fn litres(value: f64) -> Quantity {
    Quantity::new(value, Unit::Litre)
}

fn kilograms(value: f64) -> Quantity {
    Quantity::new(value, Unit::Kilogram)
}

/// What is printed on every bottle of oil: at 50:1, 100 mL to 5 L; at 40:1, 125 mL; at 25:1, 200 mL
/// (common practice, no source).
#[test]
fn the_table_on_the_bottle() {
    for (ratio, millilitres) in [(50.0, 100.0), (40.0, 125.0), (25.0, 200.0)] {
        let mix = Mix {
            in_tank: litres(0.0),
            ratio_in_tank: None,
            target_ratio: Ratio::new(ratio).unwrap(),
            add_fuel: litres(5.0),
        };
        let Oil::Add(oil) = oil_to_add(&mix).unwrap() else { panic!() };
        near(oil.to(Unit::Millilitre).unwrap().value, millilitres, 1e-12, ratio);
    }
}

/// By hand: 90 kg + 32 kg + 10 L · 0.775 + 2 kg = 131.75 kg; dry 124 kg; wing 264 to 286 lb.
#[test]
fn all_up_by_hand() {
    let loads = Loads {
        pilot: kilograms(90.0),
        machine: kilograms(32.0),
        fuel: litres(10.0),
        ballast: kilograms(2.0),
    };
    let pounds = |value| Quantity::new(value, Unit::Pound);
    let found = all_up(&loads, &Range { low: pounds(264.0), high: pounds(286.0) }).unwrap();
    // NIST SP 811: 1 lb = 0.453 592 37 kg.
    near(found.total.value, 131.75 / 0.453_592_37, 1e-12, "total, lb");
    near(found.margin.above_low.value, 124.0 / 0.453_592_37 - 264.0, 1e-9, "above the least, dry");
    assert!(found.margin.below_high.value < 0.0 && !found.in_range);
}

/// By hand: 3, 4 and 5 L/h; 10 L less 1 L: 1.8 to 3 h; less half an hour: 1.5 to 2.8333 h.
#[test]
fn endurance_by_hand() {
    let burns = [3.0, 5.0, 4.0].map(|rate| Burn::Rate(Quantity::new(rate, Unit::LitrePerHour)));
    let of = |reserve| endurance(litres(10.0), &burns, Reserve(reserve)).unwrap().told().unwrap();
    let found = of(litres(1.0));
    assert_eq!((found.low.value, found.high.value, found.by), (1.8, 3.0, Spread::LeastAndMost));
    let timed = of(Quantity::new(0.5, Unit::Hour));
    near(timed.low.value, 1.5, 1e-12, "low");
    near(timed.high.value, 10.0 / 3.0 - 0.5, 1e-12, "high");
    assert_eq!(of(litres(12.0)).high.value, 0.0, "below the reserve already");
}

/// 1 kt is 1852/3600 m/s (BIPM, memory): 10 kt keep a limit of 5.2 m/s and not one of 5.1.
#[test]
fn a_limit_in_another_unit() {
    let wind = Wind { mean: Quantity::new(10.0, Unit::Knot), gust: None };
    let limit = |value| {
        let mean = Some(Quantity::new(value, Unit::MetrePerSecond));
        wind_standing(&wind, &WindLimits { mean, ..WindLimits::default() }).unwrap().within
    };
    assert!(limit(5.2) && !limit(5.1));
}
