//! What holds of load, fuel, air and wind whatever the numbers.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use proptest::prelude::*;
use witnessmark_core::flight::{
    Burn, FlightFault, Loads, Mix, Oil, Over, Pressure, Range, Ratio, Reserve, Spread, Wind, WindLimits, air,
    all_up, endurance, oil_to_add, thin_air, wind_standing,
};
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::units::{Quantity, Unit};

fn q(value: f64, unit: Unit) -> Quantity {
    Quantity::new(value, unit)
}

fn loads(pilot: f64, fuel: Quantity) -> Loads {
    Loads {
        pilot: q(pilot, Unit::Kilogram),
        machine: q(30.0, Unit::Kilogram),
        fuel,
        ballast: q(0.0, Unit::Kilogram),
    }
}

fn wing(low: f64, high: f64) -> Range {
    Range { low: q(low, Unit::Kilogram), high: q(high, Unit::Kilogram) }
}

fn mix(tank: f64, before: f64, target: f64, fuel: f64) -> Mix {
    let ratio = |ratio| Ratio::new(ratio).unwrap();
    Mix {
        in_tank: q(tank, Unit::Litre),
        ratio_in_tank: Some(ratio(before)),
        target_ratio: ratio(target),
        add_fuel: q(fuel, Unit::Litre),
    }
}

proptest! {
    #[test]
    fn a_heavier_pilot_has_more_above_and_less_below(pilot in 40.0..150.0f64, more in 0.0..40.0f64, fuel in 0.0..15.0f64) {
        let of = |pilot| all_up(&loads(pilot, q(fuel, Unit::Litre)), &wing(80.0, 140.0)).unwrap();
        let (light, heavy) = (of(pilot), of(pilot + more));
        prop_assert!(heavy.margin.above_low.value >= light.margin.above_low.value);
        prop_assert!(heavy.margin.below_high.value <= light.margin.below_high.value);
        prop_assert_eq!(light.in_range, light.margin.above_low.value >= 0.0 && light.margin.below_high.value >= 0.0);
        prop_assert!(light.dry.value <= light.total.value);
    }

    #[test]
    fn the_mix_comes_out_as_wanted(tank in 0.0..20.0f64, before in 20.0..100.0f64, target in 20.0..100.0f64, fuel in 0.01..20.0f64) {
        let oil = tank / (before + 1.0);
        let petrol = tank - oil + fuel;
        let ratio = match oil_to_add(&mix(tank, before, target, fuel)).unwrap() {
            Oil::Add(add) => petrol / (oil + add.value),
            Oil::TooMuch { more_fuel } => {
                prop_assert!(more_fuel.value > 0.0);
                (petrol + more_fuel.value) / oil
            }
        };
        prop_assert!((ratio / target - 1.0).abs() < 1e-9, "{ratio} for {target}");
    }

    #[test]
    fn more_reserve_never_flies_longer(rates in prop::collection::vec(1.0..8.0f64, 3..20), fuel in 0.0..20.0f64, reserve in 0.0..5.0f64) {
        let burns: Vec<Burn> = rates.iter().map(|rate| Burn::Rate(q(*rate, Unit::LitrePerHour))).collect();
        let of = |reserve| endurance(q(fuel, Unit::Litre), &burns, Reserve(q(reserve, Unit::Litre))).unwrap().told().unwrap();
        let (some, none) = (of(reserve), of(0.0));
        prop_assert!(some.low.value <= some.high.value && some.low.value <= none.low.value);
        prop_assert_eq!(some.by == Spread::Predicted, rates.len() >= 8);
        let mean = rates.iter().sum::<f64>() / rates.len() as f64;
        prop_assert!(none.low.value <= fuel / mean + 1e-9 && none.high.value >= fuel / mean - 1e-9);
    }

    #[test]
    fn warmer_higher_damper_is_thinner(height in -200.0..4000.0f64, celsius in -20.0..35.0f64, more in 0.5..10.0f64) {
        let of = |height: f64, celsius: f64, dew: Option<f64>| {
            let setting = q(1013.25, Unit::Hectopascal);
            let pressure = Pressure::Altimeter { elevation: q(height, Unit::Metre), setting };
            air(pressure, q(celsius, Unit::Celsius), dew.map(|dew| q(dew, Unit::Celsius))).unwrap()
        };
        let here = of(height, celsius, Some(celsius - 5.0));
        for thinner in [
            of(height + 100.0, celsius, Some(celsius - 5.0)),
            of(height, celsius + more, Some(celsius - 5.0)),
            of(height, celsius, Some(celsius - 4.5)),
        ] {
            prop_assert!(thinner.density.value < here.density.value);
            prop_assert!(thinner.density_altitude.value > here.density_altitude.value);
            let (a, b) = (thin_air(here.density, here.density_altitude).unwrap(), thin_air(thinner.density, thinner.density_altitude).unwrap());
            prop_assert!(b.thrust <= a.thrust && b.roll >= a.roll && b.speed >= a.speed);
            prop_assert!(b.thrust <= 1.0 && b.roll >= 1.0 && b.speed >= 1.0);
        }
        prop_assert!(of(height, celsius, None).density.value >= here.density.value);
    }

    #[test]
    fn more_wind_never_comes_within(mean in 0.0..12.0f64, gust in 0.0..10.0f64, more in 0.0..5.0f64) {
        let limits = WindLimits { mean: Some(q(12.0, Unit::Knot)), gust: Some(q(9.0, Unit::MetrePerSecond)), gust_factor: None };
        let of = |mean: f64, gust: f64| {
            let wind = Wind { mean: q(mean, Unit::MetrePerSecond), gust: Some(q(gust, Unit::MetrePerSecond)) };
            wind_standing(&wind, &limits).unwrap().within
        };
        let (calm, strong) = (of(mean, mean + gust), of(mean, mean + gust + more));
        prop_assert!(calm || !strong);
    }

    #[test]
    fn nothing_that_is_typed_makes_it_panic(a in any::<f64>(), b in any::<f64>(), c in any::<f64>(), unit in 0..Unit::ALL.len()) {
        let unit = Unit::ALL[unit];
        let (a, b, c) = (q(a, unit), q(b, unit), q(c, Unit::Kelvin));
        let range = Range { low: a, high: b };
        if let Ok(found) = all_up(&Loads { pilot: a, machine: b, fuel: a, ballast: b }, &range) {
            prop_assert!(!found.total.value.is_nan());
        }
        let _ = oil_to_add(&Mix { in_tank: a, ratio_in_tank: None, target_ratio: Ratio::new(50.0).unwrap(), add_fuel: b });
        if let Ok(Told::Told(found)) = endurance(a, &[Burn::Rate(b), Burn::Rate(b), Burn::Rate(b)], Reserve(a)) {
            prop_assert!(found.low.value >= 0.0 && found.high.value >= found.low.value);
        }
        let _ = air(Pressure::Field(a), c, Some(b));
        let _ = wind_standing(&Wind { mean: a, gust: Some(b) }, &WindLimits { mean: Some(b), ..WindLimits::default() });
        let _ = thin_air(a, b);
    }
}

#[test]
fn what_cannot_be_says_what_would() {
    let litres = |value| q(value, Unit::Litre);
    let told = |fault: FlightFault| fault.to_string();
    assert!(told(all_up(&loads(0.0, litres(1.0)), &wing(80.0, 140.0)).unwrap_err()).contains("pilot"));
    assert!(told(all_up(&loads(80.0, litres(1.0)), &wing(140.0, 80.0)).unwrap_err()).contains("wing"));
    assert!(told(all_up(&loads(80.0, q(1.0, Unit::Volt)), &wing(80.0, 140.0)).unwrap_err()).contains("V"));
    assert!(oil_to_add(&mix(0.0, 50.0, 50.0, 0.0)).is_err());
    for wrong in ["2", "1:1", "50:2", "two", "", "NaN", "500"] {
        assert!(wrong.parse::<Ratio>().is_err(), "{wrong}");
    }
    assert_eq!("1:40".parse::<Ratio>().unwrap(), "40:1".parse().unwrap());
    let celsius = |value| q(value, Unit::Celsius);
    let sea = Pressure::Field(q(1013.25, Unit::Hectopascal));
    assert_eq!(air(sea, celsius(20.0), Some(celsius(21.0))), Err(FlightFault::AboveSaturation));
    assert!(air(sea, q(20.0, Unit::Kelvin), None).is_err(), "°C taken for K");
    assert!(air(Pressure::Field(q(1013.25, Unit::Pascal)), celsius(20.0), None).is_err(), "hPa taken for Pa");
    let wind = |mean, gust| Wind { mean: q(mean, Unit::Knot), gust };
    assert_eq!(wind_standing(&wind(5.0, None), &WindLimits::default()), Err(FlightFault::NoLimit));
    let limits =
        WindLimits { gust_factor: Some(1.5), gust: Some(q(15.0, Unit::Knot)), ..WindLimits::default() };
    assert_eq!(wind_standing(&wind(9.0, Some(q(8.0, Unit::Knot))), &limits), Err(FlightFault::CalmGust));
    // Not measured is not within.
    assert_eq!(wind_standing(&wind(5.0, None), &limits).unwrap().over, [Over::GustUnknown]);
    let over = |mean, gust| wind_standing(&wind(mean, Some(q(gust, Unit::Knot))), &limits).unwrap().over;
    assert_eq!(over(10.0, 15.0), [], "at the limit is within");
    assert_eq!(over(10.0, 15.1), [Over::Gust, Over::GustFactor]);
    assert_eq!(over(0.0, 8.0), [Over::GustFactor], "puffs out of still air");
    assert_eq!(over(1.0, 3.0), [], "hardly a breeze");
}

#[test]
fn few_flights_tell_nothing_of_the_burn() {
    let burn = Burn::Rate(q(3.5, Unit::LitrePerHour));
    let of = |burns: &[Burn]| endurance(q(10.0, Unit::Litre), burns, Reserve(q(0.5, Unit::Hour))).unwrap();
    assert_eq!(of(&[]), Told::TooLittle(TooLittle::Few { has: 0, needs: 3 }));
    assert_eq!(of(&[burn, burn]), Told::TooLittle(TooLittle::Few { has: 2, needs: 3 }));
    assert_eq!(of(&[burn; 3]).told().unwrap().low.value, 10.0 / 3.5 - 0.5);
    let none = Burn::Rate(q(0.0, Unit::LitrePerHour));
    assert!(endurance(q(10.0, Unit::Litre), &[burn, burn, none], Reserve(q(0.0, Unit::Litre))).is_err());
}
