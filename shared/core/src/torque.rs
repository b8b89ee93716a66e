//! What a wrench must be set to so that the fastener gets its torque.

use crate::units::{Quantity, Unit, UnitFault};

/// Why no setting can be computed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum TorqueFault {
    /// A quantity of the wrong kind.
    #[error(transparent)]
    Unit(#[from] UnitFault),
    /// A length or torque that can't be.
    #[error("{what} must be {must}")]
    Impossible {
        /// Which input.
        what: &'static str,
        /// What would be possible.
        must: &'static str,
    },
}

/// Share of the set torque that reaches the fastener: `(L + E·cos φ) / L`.
///
/// `lever` L is from the handle's mark to the square drive, `adapter` E from
/// the square to the fastener, `angle_deg` φ between the two (0 in line,
/// lengthening; 90 leaves the setting unchanged; 180 folded back).
/// Source: FAA AC 43.13-1B figure 7-2 and US Navy NAVEDTRA 14315 figure 3-44 for the
/// in-line case; the cosine is the lever's projection.
fn gain(lever: Quantity, adapter: Quantity, angle_deg: f64) -> Result<f64, TorqueFault> {
    let lever = lever.to(Unit::Metre)?.value;
    let adapter = adapter.to(Unit::Metre)?.value;
    if lever <= 0.0 {
        return Err(TorqueFault::Impossible { what: "the lever", must: "longer than nothing" });
    }
    if adapter < 0.0 {
        return Err(TorqueFault::Impossible { what: "the adapter", must: "0 or longer" });
    }
    if !angle_deg.is_finite() {
        return Err(TorqueFault::Impossible { what: "the angle", must: "a number of degrees" });
    }
    // cos 90° is 6e-17 in floating point; at a right angle the adapter adds nothing at all.
    let along = if (angle_deg.abs() - 90.0).abs() < 1e-12 { 0.0 } else { angle_deg.to_radians().cos() };
    let gain = (lever + adapter * along) / lever;
    if gain <= 0.0 {
        return Err(TorqueFault::Impossible {
            what: "a folded-back adapter",
            must: "shorter than the lever",
        });
    }
    Ok(gain)
}

fn positive(torque: Quantity) -> Result<Quantity, TorqueFault> {
    torque.to(Unit::NewtonMetre)?;
    if torque.value <= 0.0 {
        return Err(TorqueFault::Impossible { what: "the torque", must: "more than nothing" });
    }
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
    let torque = positive(torque)?;
    let gain = gain(lever, adapter, angle_deg)?;
    Ok(Quantity::new(torque.value / gain, torque.unit))
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
    let setting = positive(setting)?;
    let gain = gain(lever, adapter, angle_deg)?;
    Ok(Quantity::new(setting.value * gain, setting.unit))
}
