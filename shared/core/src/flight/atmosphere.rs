//! The standard atmosphere below the tropopause.
//!
//! T = T₀ − L·H; p = p₀·(T/T₀)^(g₀/RL); ρ = p/(R·T). H is geopotential height.
//! Source: ICAO Doc 7488 / ISO 2533:1975 (constants from memory; tables checked against PyPI's
//! `ambiance`).

use super::fault::{FlightFault, within};
use super::input::Input;
use crate::units::{Quantity, STANDARD_GRAVITY, Unit};

/// Temperature at sea level, K.
pub(super) const T0: f64 = 288.15;
/// Pressure at sea level, Pa.
pub(super) const P0: f64 = 101_325.0;
/// Kelvin lost a metre.
pub(super) const LAPSE: f64 = 0.006_5;
/// Gas constant of dry air, J/(kg·K).
pub(super) const R: f64 = 287.052_87;
/// Metres for which this is asked: below the tropopause, and above the lowest land.
const HEIGHTS: (f64, f64) = (-1_000.0, 11_000.0);

fn exponent() -> f64 {
    STANDARD_GRAVITY / (R * LAPSE)
}

/// Density at sea level, kg/m³: 1.225.
pub(super) fn rho0() -> f64 {
    P0 / (R * T0)
}

fn height(altitude: Quantity) -> Result<f64, FlightFault> {
    within(altitude, Unit::Metre, Input::Altitude, HEIGHTS)
}

/// Temperature at an altitude, K.
///
/// # Errors
/// [`FlightFault::Outside`] beyond −1 000 to 11 000 m.
pub fn standard_temperature(altitude: Quantity) -> Result<Quantity, FlightFault> {
    Ok(Quantity::new(T0 - LAPSE * height(altitude)?, Unit::Kelvin))
}

/// Pressure at an altitude, Pa.
///
/// # Errors
/// [`FlightFault::Outside`] beyond −1 000 to 11 000 m.
pub fn standard_pressure(altitude: Quantity) -> Result<Quantity, FlightFault> {
    let share = 1.0 - LAPSE * height(altitude)? / T0;
    Ok(Quantity::new(P0 * share.powf(exponent()), Unit::Pascal))
}

/// Density at an altitude, kg/m³.
///
/// # Errors
/// [`FlightFault::Outside`] beyond −1 000 to 11 000 m.
pub fn standard_density(altitude: Quantity) -> Result<Quantity, FlightFault> {
    let share = 1.0 - LAPSE * height(altitude)? / T0;
    Ok(Quantity::new(rho0() * share.powf(exponent() - 1.0), Unit::KilogramPerCubicMetre))
}

/// The altitude that has this pressure, m.
///
/// # Errors
/// [`FlightFault::Outside`].
pub fn altitude_of_pressure(pressure: Quantity) -> Result<Quantity, FlightFault> {
    let pressure = within(pressure, Unit::Pascal, Input::Pressure, (22_632.0, 120_000.0))?;
    Ok(Quantity::new(T0 / LAPSE * (1.0 - (pressure / P0).powf(1.0 / exponent())), Unit::Metre))
}

/// The altitude that has this density, m.
///
/// # Errors
/// [`FlightFault::Outside`].
pub fn altitude_of_density(density: Quantity) -> Result<Quantity, FlightFault> {
    let density = within(density, Unit::KilogramPerCubicMetre, Input::Density, (0.36, 2.0))?;
    Ok(Quantity::new(T0 / LAPSE * (1.0 - (density / rho0()).powf(1.0 / (exponent() - 1.0))), Unit::Metre))
}
