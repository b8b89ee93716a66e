//! Quantities with a unit, and the exact factors between units.
//!
//! Factors: NIST SP 811 (2008) appendix B. All are exact by definition of the
//! inch (25.4 mm), the pound (0.453 592 37 kg), standard gravity (9.806 65 m/s²),
//! conventional mercury, the gallons (231 in³; 4.546 09 L) and the nautical mile (1852 m).

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Standard gravity, m/s² (exact, 3rd CGPM 1901).
pub const STANDARD_GRAVITY: f64 = 9.806_65;
/// The inch, m (exact, 1959).
pub const INCH: f64 = 0.025_4;
/// The avoirdupois pound, kg (exact, 1959).
pub const POUND: f64 = 0.453_592_37;
const POUND_FORCE: f64 = POUND * STANDARD_GRAVITY;
/// Conventional mercury, kg/m³ (exact by convention); SP 811 prints the inch of it as 3386.389 Pa.
const MERCURY: f64 = 13_595.1;

/// The US liquid gallon, m³ (exact: 231 cubic inches).
const GALLON_US: f64 = 231.0 * INCH * INCH * INCH;
/// The imperial gallon, m³ (exact, 1985).
const GALLON_BR: f64 = 4.546_09e-3;
/// The international nautical mile, m (exact, 1929).
const NAUTICAL_MILE: f64 = 1852.0;

/// How far absolute zero, written in another scale, may come out below itself, K.
const ROUNDING_K: f64 = 1e-9;

/// What kind of quantity a unit measures; only units of one dimension convert.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs)]
pub enum Dimension {
    Torque,
    Length,
    Temperature,
    Pressure,
    Voltage,
    Time,
    Volume,
    Mass,
    Force,
    Frequency,
    Angle,
    Ratio,
    Area,
    Speed,
    Density,
    Flow,
}

/// Makes the enum, its codes and its factors from one table, so that a unit is one line.
macro_rules! units {
    ($($name:ident $code:literal $show:literal $dim:ident * $factor:expr, + $offset:expr;)*) => {
        /// A unit, written as a UCUM-like code (`N.m`, `lbf.in`, `Cel`).
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS)]
        #[allow(missing_docs)]
        pub enum Unit { $(#[serde(rename = $code)] $name,)* }

        impl Unit {
            /// Every unit there is.
            pub const ALL: &[Unit] = &[$(Unit::$name),*];
            /// The code used in files and on the command line.
            pub fn code(self) -> &'static str { match self { $(Unit::$name => $code,)* } }
            /// The sign a person reads.
            pub fn sign(self) -> &'static str { match self { $(Unit::$name => $show,)* } }
            /// What it measures.
            pub fn dimension(self) -> Dimension { match self { $(Unit::$name => Dimension::$dim,)* } }
            /// SI value = value × factor + offset.
            fn to_si(self) -> (f64, f64) { match self { $(Unit::$name => ($factor, $offset),)* } }
        }
    };
}

units! {
    NewtonMetre "N.m" "N·m" Torque * 1.0, + 0.0;
    PoundForceInch "lbf.in" "lbf·in" Torque * POUND_FORCE * INCH, + 0.0;
    PoundForceFoot "lbf.ft" "lbf·ft" Torque * POUND_FORCE * INCH * 12.0, + 0.0;
    KilogramForceMetre "kgf.m" "kgf·m" Torque * STANDARD_GRAVITY, + 0.0;
    KilogramForceCentimetre "kgf.cm" "kgf·cm" Torque * STANDARD_GRAVITY / 100.0, + 0.0;
    Metre "m" "m" Length * 1.0, + 0.0;
    Millimetre "mm" "mm" Length * 1e-3, + 0.0;
    Inch "in" "in" Length * INCH, + 0.0;
    Foot "ft" "ft" Length * INCH * 12.0, + 0.0;
    Kelvin "K" "K" Temperature * 1.0, + 0.0;
    Celsius "Cel" "°C" Temperature * 1.0, + 273.15;
    Fahrenheit "degF" "°F" Temperature * 5.0 / 9.0, + 459.67 * 5.0 / 9.0;
    Pascal "Pa" "Pa" Pressure * 1.0, + 0.0;
    Hectopascal "hPa" "hPa" Pressure * 100.0, + 0.0;
    Bar "bar" "bar" Pressure * 1e5, + 0.0;
    Megapascal "MPa" "MPa" Pressure * 1e6, + 0.0;
    PoundForcePerSquareInch "psi" "psi" Pressure * POUND_FORCE / (INCH * INCH), + 0.0;
    InchOfMercury "inHg" "inHg" Pressure * INCH * MERCURY * STANDARD_GRAVITY, + 0.0;
    Volt "V" "V" Voltage * 1.0, + 0.0;
    Second "s" "s" Time * 1.0, + 0.0;
    Hour "h" "h" Time * 3600.0, + 0.0;
    Day "d" "d" Time * 86_400.0, + 0.0;
    Litre "L" "L" Volume * 1e-3, + 0.0;
    Millilitre "mL" "mL" Volume * 1e-6, + 0.0;
    CubicMetre "m3" "m³" Volume * 1.0, + 0.0;
    GallonUs "gal_us" "US gal" Volume * GALLON_US, + 0.0;
    GallonBritish "gal_br" "imp gal" Volume * GALLON_BR, + 0.0;
    Kilogram "kg" "kg" Mass * 1.0, + 0.0;
    Pound "lb" "lb" Mass * POUND, + 0.0;
    KilogramPerCubicMetre "kg/m3" "kg/m³" Density * 1.0, + 0.0;
    LitrePerHour "L/h" "L/h" Flow * 1e-3 / 3600.0, + 0.0;
    MetrePerSecond "m/s" "m/s" Speed * 1.0, + 0.0;
    KilometrePerHour "km/h" "km/h" Speed * 1.0 / 3.6, + 0.0;
    Knot "kt" "kt" Speed * NAUTICAL_MILE / 3600.0, + 0.0;
    Newton "N" "N" Force * 1.0, + 0.0;
    Kilonewton "kN" "kN" Force * 1e3, + 0.0;
    PoundForce "lbf" "lbf" Force * POUND_FORCE, + 0.0;
    SquareMetre "m2" "m²" Area * 1.0, + 0.0;
    SquareMillimetre "mm2" "mm²" Area * 1e-6, + 0.0;
    SquareInch "in2" "in²" Area * INCH * INCH, + 0.0;
    PerMinute "1/min" "rpm" Frequency * 1.0 / 60.0, + 0.0;
    Degree "deg" "°" Angle * std::f64::consts::PI / 180.0, + 0.0;
    Percent "%" "%" Ratio * 0.01, + 0.0;
    One "1" "" Ratio * 1.0, + 0.0;
}

/// A number with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Quantity {
    /// The number, in `unit`; always finite.
    pub value: f64,
    /// Its unit.
    pub unit: Unit,
}

/// Why a quantity can't be used as asked.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum UnitFault {
    /// The two units measure different things.
    #[error("{from} can't be turned into {to}: they measure different things")]
    OtherDimension {
        /// The code given.
        from: &'static str,
        /// The code wanted.
        to: &'static str,
    },
    /// Not a finite number.
    #[error("the number of {0} is not finite")]
    NotFinite(&'static str),
    /// A temperature below absolute zero.
    #[error("nothing is colder than absolute zero: 0 K, -273.15 °C, -459.67 °F")]
    TooCold,
    /// No unit of that code.
    #[error("there is no unit `{0}`")]
    Unknown(String),
}

impl std::str::FromStr for Unit {
    type Err = UnitFault;

    fn from_str(code: &str) -> Result<Self, UnitFault> {
        Unit::ALL
            .iter()
            .copied()
            .find(|unit| unit.code() == code)
            .ok_or_else(|| UnitFault::Unknown(code.to_owned()))
    }
}

impl Quantity {
    /// A quantity from its parts.
    pub fn new(value: f64, unit: Unit) -> Self {
        Self { value, unit }
    }

    /// The same quantity in another unit of the same dimension.
    ///
    /// # Errors
    /// [`UnitFault`] when the dimensions differ, the number isn't finite, or there is no such
    /// temperature.
    pub fn to(self, unit: Unit) -> Result<Self, UnitFault> {
        let si = self.si()?;
        if self.unit == unit {
            return Ok(self);
        }
        if self.unit.dimension() != unit.dimension() {
            return Err(UnitFault::OtherDimension { from: self.unit.code(), to: unit.code() });
        }
        let (wanted_factor, wanted_offset) = unit.to_si();
        Ok(Self::new((si - wanted_offset) / wanted_factor, unit))
    }

    /// Rounded to so many digits that count.
    #[must_use]
    pub fn significant(self, digits: i32) -> Self {
        if self.value == 0.0 || !self.value.is_finite() {
            return self;
        }
        let decimals = digits - 1 - self.value.abs().log10().floor() as i32;
        let scale = 10f64.powi(decimals.abs());
        // By division where there are decimals: a tenth is no binary number.
        let value = if decimals > 0 {
            (self.value * scale).round() / scale
        } else {
            (self.value / scale).round() * scale
        };
        Self { value, ..self }
    }

    /// The same quantity in the coherent SI unit of its dimension (the ratio's is 1, the angle's rad).
    ///
    /// # Errors
    /// [`UnitFault`] when the number isn't finite, or there is no such temperature.
    pub fn si(self) -> Result<f64, UnitFault> {
        if !self.value.is_finite() {
            return Err(UnitFault::NotFinite(self.unit.code()));
        }
        let (factor, offset) = self.unit.to_si();
        let si = self.value * factor + offset;
        if self.unit.dimension() == Dimension::Temperature && si < -ROUNDING_K {
            return Err(UnitFault::TooCold);
        }
        Ok(si)
    }
}

impl std::fmt::Display for Quantity {
    /// At most three decimals, none that say nothing: `12.5 N·m`, `4`.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let number = format!("{:.3}", self.value);
        let number = number.trim_end_matches('0').trim_end_matches('.');
        match self.unit.sign() {
            "" => f.write_str(number),
            sign => write!(f, "{number} {sign}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_reads_back() {
        for unit in Unit::ALL {
            assert_eq!(unit.code().parse::<Unit>().unwrap(), *unit);
        }
        assert!("ft.lb".parse::<Unit>().is_err());
    }

    #[test]
    fn different_dimensions_do_not_mix() {
        let torque = Quantity::new(10.0, Unit::PoundForceInch);
        assert!(torque.to(Unit::Millimetre).is_err());
        assert!(Quantity::new(f64::NAN, Unit::Volt).to(Unit::Volt).is_err());
    }

    #[test]
    fn temperatures_carry_their_offset() {
        let boiling = Quantity::new(212.0, Unit::Fahrenheit).to(Unit::Celsius).unwrap();
        assert!((boiling.value - 100.0).abs() < 1e-9);
    }

    /// Absolute zero: -273.15 °C exactly, by definition of the Celsius scale (SI brochure; from
    /// memory), and so -459.67 °F.
    #[test]
    fn nothing_is_colder_than_absolute_zero() {
        let to = |value: f64, unit: Unit| Quantity::new(value, unit).to(Unit::Celsius);
        for (zero, unit) in [(0.0, Unit::Kelvin), (-273.15, Unit::Celsius), (-459.67, Unit::Fahrenheit)] {
            assert!((to(zero, unit).unwrap().value + 273.15).abs() < 1e-9, "{unit:?}");
            assert_eq!(to(zero - 0.01, unit), Err(UnitFault::TooCold), "{unit:?}");
        }
        assert_eq!(Quantity::new(-300.0, Unit::Celsius).si(), Err(UnitFault::TooCold));
        assert!(Quantity::new(-5.0, Unit::Millimetre).to(Unit::Inch).is_ok(), "a length is told elsewhere");
    }

    #[test]
    fn digits_that_count() {
        let rounded = |value: f64, digits| Quantity::new(value, Unit::Kilogram).significant(digits).value;
        assert_eq!(
            [181.4378, 29.92126, 0.012345, 98_765.4].map(|value| rounded(value, 4)),
            [181.4, 29.92, 0.01235, 98_770.0]
        );
        assert_eq!(
            [66.666_7, -0.244_9, 0.235_29, 235.29, 0.0].map(|value| rounded(value, 3)),
            [66.7, -0.245, 0.235, 235.0, 0.0]
        );
    }

    #[test]
    fn a_person_reads_no_empty_decimals() {
        assert_eq!(Quantity::new(12.50, Unit::NewtonMetre).to_string(), "12.5 N·m");
        assert_eq!(Quantity::new(4.0, Unit::One).to_string(), "4");
        assert_eq!(Quantity::new(100.0, Unit::PerMinute).to_string(), "100 rpm");
    }
}
