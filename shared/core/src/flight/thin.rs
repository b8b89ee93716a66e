//! What thin air does to a launch on foot.

use serde::{Deserialize, Serialize};

use super::atmosphere::rho0;
use super::fault::{FlightFault, within};
use super::input::Input;
use crate::units::{Quantity, Unit};

/// How much longer the run gets for each 1 000 ft of density altitude. Common practice, no source.
const ROLL_PER_1000_FT: f64 = 0.12;

/// Shares of what holds at sea level on a standard day: 1 is the same.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Thin {
    /// Density.
    pub density: f64,
    /// Static thrust.
    pub thrust: f64,
    /// Speed over ground at which the wing lifts, in still air.
    pub speed: f64,
    /// Length of the run.
    pub roll: f64,
}

/// Rules of thumb for a density altitude.
///
/// Speed: the wing lifts at the same ½ρv², so v grows with 1/√(ρ/ρ₀) (physics). Thrust: in proportion
/// to density, a two-stroke's power and its propeller both losing with it. Common practice, no source.
/// Run: +12 % for each 1 000 ft. Common practice, no source. Nothing is told as better than at sea
/// level: thick air is no reason to count on it.
///
/// # Errors
/// [`FlightFault::Outside`].
pub fn thin_air(density: Quantity, density_altitude: Quantity) -> Result<Thin, FlightFault> {
    let density = within(density, Unit::KilogramPerCubicMetre, Input::Density, (0.36, 2.0))? / rho0();
    let feet = within(density_altitude, Unit::Foot, Input::DensityAltitude, (-20_000.0, 36_089.24))?;
    let density = density.min(1.0);
    let roll = 1.0 + ROLL_PER_1000_FT * feet.max(0.0) / 1000.0;
    Ok(Thin { density, thrust: density, speed: density.sqrt().recip(), roll })
}
