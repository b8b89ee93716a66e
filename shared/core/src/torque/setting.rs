//! What a wrench must be set to so that the fastener gets its torque.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::{TorqueFault, positive, sized};
use crate::units::{Quantity, Unit};

/// Anything between the wrench's square and the fastener that makes the lever longer or shorter.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Adapter {
    /// From the handle's mark to the square drive.
    pub lever: Quantity,
    /// From the square drive to the fastener.
    pub adapter: Quantity,
    /// Between the two: 0 in line, lengthening; 90 changes nothing.
    #[serde(default)]
    pub angle_deg: f64,
}

impl Adapter {
    /// Share of the set torque that reaches the fastener: `(L + E·cos φ) / L`.
    ///
    /// L from the handle's mark to the square drive, E from the square to the fastener, φ
    /// between the two (0 in line, lengthening; 90 leaves the setting unchanged; 180 folded back).
    /// Source: FAA AC 43.13-1B figure 7-2 and US Navy NAVEDTRA 14315 figure 3-44 for the
    /// in-line case; the cosine is the lever's projection.
    ///
    /// # Errors
    /// [`TorqueFault`] for a wrong kind of unit or an impossible lever.
    pub fn gain(self) -> Result<f64, TorqueFault> {
        let lever = self.lever.to(Unit::Metre)?.value;
        let adapter = self.adapter.to(Unit::Metre)?.value;
        if lever <= 0.0 {
            return Err(TorqueFault::Impossible { what: "the lever", must: "longer than nothing" });
        }
        if adapter < 0.0 {
            return Err(TorqueFault::Impossible { what: "the adapter", must: "0 or longer" });
        }
        if !self.angle_deg.is_finite() {
            return Err(TorqueFault::Impossible { what: "the angle", must: "a number of degrees" });
        }
        // cos 90° is 6e-17 in floating point; at a right angle the adapter adds nothing at all.
        let right = (self.angle_deg.abs() - 90.0).abs() < 1e-12;
        let along = if right { 0.0 } else { self.angle_deg.to_radians().cos() };
        let gain = (lever + adapter * along) / lever;
        if gain <= 0.0 {
            return Err(TorqueFault::Impossible {
                what: "a folded-back adapter",
                must: "shorter than the lever",
            });
        }
        if gain.is_finite() { Ok(gain) } else { Err(TorqueFault::OutOfReach) }
    }
}

fn torque(torque: Quantity) -> Result<Quantity, TorqueFault> {
    positive(torque, Unit::NewtonMetre, "the torque")?;
    Ok(torque)
}

/// The setting that gives `torque` at the fastener, in `torque`'s unit: `T·L/(L+E·cos φ)`.
///
/// # Errors
/// [`TorqueFault`] for a wrong kind of unit or an impossible lever.
pub fn wrench_setting(
    torque: Quantity,
    lever: Quantity,
    adapter: Quantity,
    angle_deg: f64,
) -> Result<Quantity, TorqueFault> {
    let torque = self::torque(torque)?;
    sized(torque.value / Adapter { lever, adapter, angle_deg }.gain()?, torque.unit)
}

/// What `setting` becomes at the fastener, in `setting`'s unit.
///
/// # Errors
/// As [`wrench_setting`].
pub fn torque_at_fastener(
    setting: Quantity,
    lever: Quantity,
    adapter: Quantity,
    angle_deg: f64,
) -> Result<Quantity, TorqueFault> {
    let setting = torque(setting)?;
    sized(setting.value * Adapter { lever, adapter, angle_deg }.gain()?, setting.unit)
}
