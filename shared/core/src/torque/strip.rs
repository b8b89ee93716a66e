//! How much pull a tapped thread bears before it strips: steel studs in aluminium.

use super::between::Between;
use super::fault::{TorqueFault, positive, sized};
use super::limits::limits;
use super::thread::Thread;
use crate::units::{Quantity, Unit};

/// Shear area of the internal thread over the engaged length:
/// `ASn = π/P·LE·dmin·[P/2 + 0.57735·(dmin − D2max)]`.
///
/// The thinnest bolt in the widest hole, so that a good pair bears more. Source: ASME B1.1
/// appendix B and FED-STD-H28/2B, in metric form.
///
/// # Errors
/// [`TorqueFault`].
pub fn internal_area(thread: Thread, engaged: Quantity) -> Result<Quantity, TorqueFault> {
    let engaged = positive(engaged, Unit::Millimetre, "the engaged length")?;
    let limits = limits(thread)?;
    let (major, pitch) = (limits.bolt_major_least.value, limits.hole_pitch_most.value);
    let each = thread.p_mm() / 2.0 + 3.0_f64.sqrt().recip() * (major - pitch);
    sized(std::f64::consts::PI / thread.p_mm() * engaged * major * each, Unit::SquareMillimetre)
}

/// The pull that strips it: area × shear strength of the tapped part.
///
/// The geometric area; bending of the threads makes the real one somewhat less, so the
/// strength given should be the part's least, hot as it runs.
///
/// # Errors
/// [`TorqueFault`].
pub fn strip_load(
    thread: Thread,
    engaged: Quantity,
    shear_strength: Quantity,
) -> Result<Quantity, TorqueFault> {
    let strength = positive(shear_strength, Unit::Megapascal, "the shear strength")?;
    sized(internal_area(thread, engaged)?.value * strength, Unit::Newton)
}

/// How deep a hole is tapped in softer material: 1.5 × diameter.
/// Source: US Army TB 43-0218 § 7a.
pub fn tapped_depth(thread: Thread) -> Quantity {
    Quantity::new(1.5 * thread.d_mm(), Unit::Millimetre)
}

/// How far a steel screw engages aluminium: two diameters.
/// Source: US Army TM 9-6115-604-34 table 1-2 note 6.
pub fn aluminium_depth(thread: Thread) -> Quantity {
    Quantity::new(2.0 * thread.d_mm(), Unit::Millimetre)
}

/// A table's torque for steel in steel, taken down for steel in aluminium: by 30 % "or more".
/// Source: US Army TM 9-6115-604-34 table 1-2 note 6.
///
/// # Errors
/// [`TorqueFault`].
pub fn aluminium_torque(steel: Between<Quantity>) -> Result<Between<Quantity>, TorqueFault> {
    steel.each(|torque| {
        positive(torque, Unit::NewtonMetre, "the torque")?;
        sized(0.7 * torque.value, torque.unit)
    })
}
