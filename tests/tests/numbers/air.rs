use witnessmark_core::flight::{
    Air, Pressure, air, altitude_of_density, altitude_of_pressure, standard_density, standard_pressure,
    standard_temperature, thin_air,
};
use witnessmark_core::units::{Quantity, Unit};

use crate::near;

fn feet(value: f64) -> Quantity {
    Quantity::new(value, Unit::Foot)
}

fn metres(value: f64) -> Quantity {
    Quantity::new(value, Unit::Metre)
}

fn mercury(value: f64) -> Quantity {
    Quantity::new(value, Unit::InchOfMercury)
}

fn to(quantity: Quantity, unit: Unit) -> f64 {
    quantity.to(unit).unwrap().value
}

fn field(elevation: Quantity, setting: Quantity, temperature: Quantity) -> Air {
    air(Pressure::Altimeter { elevation, setting }, temperature, None).unwrap()
}

/// ICAO standard atmosphere by geopotential height, as PyPI's `ambiance` tabulates it.
#[test]
fn the_standard_atmospheres_table() {
    for (height, pascal, density) in
        [(1000.0, 89_874.6, 1.11164), (2000.0, 79_495.2, 1.00649), (3000.0, 70_108.5, 0.90912)]
    {
        let (pressure, found) =
            (standard_pressure(metres(height)).unwrap(), standard_density(metres(height)).unwrap());
        near(pressure.value, pascal, 1e-6, format!("pressure at {height} m"));
        near(found.value, density, 5e-6, format!("density at {height} m"));
        near(standard_temperature(metres(height)).unwrap().value, 288.15 - height * 0.0065, 1e-12, "K");
        near(altitude_of_pressure(pressure).unwrap().value, height, 1e-12, "back from pressure");
        near(altitude_of_density(found).unwrap().value, height, 1e-12, "back from density");
    }
}

/// A standard day at the field, the altimeter at 1013.25 hPa: every altitude is the elevation.
#[test]
fn a_standard_day_is_where_it_is() {
    for height in [0.0, 300.0, 1500.0, 2800.0] {
        let kelvin = Quantity::new(288.15 - 0.0065 * height, Unit::Kelvin);
        let found = field(metres(height), Quantity::new(1013.25, Unit::Hectopascal), kelvin);
        assert!((found.pressure_altitude.value - height).abs() < 1e-6);
        assert!((found.density_altitude.value - height).abs() < 1e-6);
        let thin = thin_air(found.density, found.density_altitude).unwrap();
        near(thin.density, standard_density(metres(height)).unwrap().value / 1.225, 1e-6, "share of density");
    }
}

/// FAA-H-8083-25 (PHAK), performance charts, sample problem 1 (seen quoted): elevation 5 883 ft, 70 °F,
/// 30.10 inHg: pressure altitude 5 718 ft, density altitude "approximately" 7 700 ft, off a chart.
#[test]
fn phak_sample_problem() {
    let found = field(feet(5883.0), mercury(30.10), Quantity::new(70.0, Unit::Fahrenheit));
    near(to(found.pressure_altitude, Unit::Foot), 5718.0, 1e-3, "pressure altitude");
    near(to(found.density_altitude, Unit::Foot), 7700.0, 0.02, "density altitude");
}

/// PHAK figure 10-3 (seen): at sea level with 29.7 set, 205 ft.
#[test]
fn phak_pressure_altitude_at_sea_level() {
    let found = field(feet(0.0), mercury(29.7), Quantity::new(15.0, Unit::Celsius));
    assert!((to(found.pressure_altitude, Unit::Foot) - 205.0).abs() < 3.0, "{found:?}");
}

/// A barometry page (seen): 5 045 ft with 30.20 inHg is 84 977 Pa, 7 014 ft with 30.37 is 79 375 Pa.
#[test]
fn pressure_at_two_airfields() {
    for (elevation, setting, pascal) in [(5045.0, 30.20, 84_977.0), (7014.0, 30.37, 79_375.0)] {
        let found = field(feet(elevation), mercury(setting), Quantity::new(15.0, Unit::Celsius));
        near(found.pressure.value, pascal, 4e-4, format!("{elevation} ft"));
    }
}

/// The rule of thumb of 120 ft a degree above the standard temperature: 1 600 ft, 13 °C, standard
/// 11.8 °C: 1 744 ft (a flying school's book, seen).
#[test]
fn the_rule_of_thumb_comes_near() {
    let found = field(feet(1600.0), mercury(29.9213), Quantity::new(13.0, Unit::Celsius));
    assert!((to(found.density_altitude, Unit::Foot) - 1744.0).abs() < 30.0, "{found:?}");
}

/// Damp air is thinner. At 30 °C and 1013.25 hPa saturated air holds 42.4 hPa (WMO-No. 8's formula, by
/// hand 42.43) and has 1.146 kg/m³ against 1.164 dry (engineering tables, memory).
#[test]
fn damp_air_is_thinner() {
    let sea = Pressure::Field(Quantity::new(1013.25, Unit::Hectopascal));
    let thirty = Quantity::new(30.0, Unit::Celsius);
    let (dry, damp) = (air(sea, thirty, None).unwrap(), air(sea, thirty, Some(thirty)).unwrap());
    near(dry.density.value, 1.164, 1e-3, "dry");
    near(damp.density.value, 1.146, 1e-3, "damp");
    assert!(dry.taken_as_dry && !damp.taken_as_dry);
    assert!(damp.density_altitude.value > dry.density_altitude.value + 100.0);
    assert_eq!(damp.pressure_altitude, dry.pressure_altitude);
}
