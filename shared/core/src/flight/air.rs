//! The air as it is today: pressure altitude, density, density altitude.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::atmosphere::{R, altitude_of_density, altitude_of_pressure, standard_pressure};
use super::fault::{FlightFault, within};
use super::input::Input;
use crate::units::{Quantity, Unit};

/// Outside which a temperature of the air is a slip, °C. Our choice: no launch is colder or hotter.
pub const AIR_CELSIUS: std::ops::RangeInclusive<f64> = -60.0..=60.0;
/// Molar mass of water over that of dry air (18.015 28 / 28.964 4).
const EPSILON: f64 = 0.621_98;

/// How the pressure is known.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Pressure {
    /// What an altimeter is set to so that it shows the elevation (QNH).
    Altimeter {
        /// The field's, above mean sea level.
        elevation: Quantity,
        /// The setting.
        setting: Quantity,
    },
    /// What a barometer shows at the field (QFE).
    Field(Quantity),
}

/// The air.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Air {
    /// Pressure at the field, Pa.
    pub pressure: Quantity,
    /// The altitude that has it in the standard atmosphere, m.
    pub pressure_altitude: Quantity,
    /// The altitude that has this density, m.
    pub density_altitude: Quantity,
    /// kg/m³.
    pub density: Quantity,
    /// No dew point was given: damp air is thinner still.
    pub taken_as_dry: bool,
}

/// Pressure altitude, density and density altitude.
///
/// Pressure altitude: elevation + H(setting), H the standard atmosphere's height of a pressure, which
/// is what an altimeter reckons. Density: ρ = p/(R·Tᵥ), virtual temperature Tᵥ = T/(1 − (1 − ε)·e/p),
/// ε = 0.62198. Vapour pressure from the dew point, over water:
/// e = (1.0016 + 3.15·10⁻⁶·p − 0.074/p)·6.112·exp(17.62·t/(243.12 + t)), hPa and °C. Density altitude:
/// the geopotential height at which the standard atmosphere has this density.
///
/// Source: WMO-No. 8, Guide to Meteorological Instruments and Methods of Observation, annex 4.B (the
/// exponential seen quoted, the factor from memory); Tᵥ: AMS Glossary, as quoted by R's `bigleaf` (seen).
///
/// # Errors
/// [`FlightFault`] beyond −60 to 60 °C, 870 to 1085 hPa of altimeter setting, or −430 to 9 000 m.
pub fn air(
    pressure: Pressure,
    temperature: Quantity,
    dew_point: Option<Quantity>,
) -> Result<Air, FlightFault> {
    let pressure = at_field(pressure)?;
    let degrees =
        |quantity, what| within(quantity, Unit::Celsius, what, (*AIR_CELSIUS.start(), *AIR_CELSIUS.end()));
    let celsius = degrees(temperature, Input::Temperature)?;
    let dew = dew_point.map(|dew| degrees(dew, Input::DewPoint)).transpose()?;
    // A reading converted there and back stays where it was.
    if dew.is_some_and(|dew| dew > celsius + 1e-9) {
        return Err(FlightFault::AboveSaturation);
    }
    let vapour = dew.map_or(0.0, |dew| vapour_pressure(dew, pressure));
    let virtual_temperature = (celsius + 273.15) / (1.0 - (1.0 - EPSILON) * vapour / pressure);
    let density = Quantity::new(pressure / (R * virtual_temperature), Unit::KilogramPerCubicMetre);
    let pressure = Quantity::new(pressure, Unit::Pascal);
    Ok(Air {
        pressure,
        pressure_altitude: altitude_of_pressure(pressure)?,
        density_altitude: altitude_of_density(density)?,
        density,
        taken_as_dry: dew.is_none(),
    })
}

/// Pa.
fn at_field(pressure: Pressure) -> Result<f64, FlightFault> {
    match pressure {
        Pressure::Field(pressure) => within(pressure, Unit::Pascal, Input::Pressure, (30_000.0, 108_500.0)),
        Pressure::Altimeter { elevation, setting } => {
            let height = within(elevation, Unit::Metre, Input::Elevation, (-430.0, 9_000.0))?;
            // The lowest and highest that were ever reported, about.
            within(setting, Unit::Pascal, Input::Setting, (87_000.0, 108_500.0))?;
            let altitude = height + altitude_of_pressure(setting)?.value;
            Ok(standard_pressure(Quantity::new(altitude, Unit::Metre))?.value)
        }
    }
}

/// Pa, of a dew point in °C at a pressure in Pa.
fn vapour_pressure(dew: f64, pressure: f64) -> f64 {
    let hecto = pressure / 100.0;
    let factor = 1.0016 + 3.15e-6 * hecto - 0.074 / hecto;
    100.0 * factor * 6.112 * (17.62 * dew / (243.12 + dew)).exp()
}
