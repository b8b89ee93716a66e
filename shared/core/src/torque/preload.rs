//! Clamp load from torque and torque from clamp load, always over a band of friction.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::{Between, quantities};
use super::class::Class;
use super::fault::{TorqueFault, positive, sized};
use super::thread::{Series, Thread};
use crate::units::{Quantity, Unit};

/// The ring on which nut or head rubs.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Bearing {
    /// Outer diameter of the ring, dw.
    pub outer: Quantity,
    /// Hole in the part, dh.
    pub hole: Quantity,
}

/// Thread diameter; washer face of hexagon head or nut, least (ISO 4014 grade A as tabulated by
/// a fastener house; M18 from memory); clearance hole, medium (ISO 273 as tabulated; from M18
/// on from memory). All mm.
const BEARINGS: &[(f64, f64, f64)] = &[
    (3.0, 4.57, 3.4),
    (4.0, 5.88, 4.5),
    (5.0, 6.88, 5.5),
    (6.0, 8.88, 6.6),
    (8.0, 11.63, 9.0),
    (10.0, 14.63, 11.0),
    (12.0, 16.63, 13.5),
    (14.0, 19.37, 15.5),
    (16.0, 22.49, 17.5),
    (18.0, 25.34, 20.0),
    (20.0, 28.19, 22.0),
    (24.0, 33.61, 26.0),
];

impl Bearing {
    /// Hexagon head or nut without a washer over a medium hole.
    ///
    /// # Errors
    /// [`TorqueFault::NoBearing`] where the tables have none.
    pub fn usual(thread: Thread) -> Result<Self, TorqueFault> {
        let mm = |value| Quantity::new(value, Unit::Millimetre);
        BEARINGS
            .iter()
            .find(|row| thread.series() == Series::Metric && row.0 == thread.d_mm())
            .map(|&(_, outer, hole)| Self { outer: mm(outer), hole: mm(hole) })
            .ok_or(TorqueFault::NoBearing(thread.name()))
    }

    /// Diameter on which friction acts, DKm = (dw + dh)/2, mm.
    fn mean_mm(self) -> Result<f64, TorqueFault> {
        let outer = positive(self.outer, Unit::Millimetre, "the bearing's outer diameter")?;
        let hole = positive(self.hole, Unit::Millimetre, "the hole's diameter")?;
        if hole >= outer {
            return Err(TorqueFault::Impossible {
                what: "the hole",
                must: "smaller than the bearing's outside",
            });
        }
        Ok(f64::midpoint(outer, hole))
    }
}

/// How torque turns into clamp load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Law {
    /// Friction, the same in the thread and under the nut:
    /// `T = F·(0.16·P + 0.58·d2·μ + DKm/2·μ)`. Source: VDI 2230 part 1, tightening torque.
    Friction {
        /// The thread.
        thread: Thread,
        /// What the nut rubs on.
        bearing: Bearing,
        /// μ, 0 to 1.
        friction: Between<f64>,
    },
    /// One factor for everything: `T = K·D·F`.
    NutFactor {
        /// K: about 0.2 dry, 0.15 oiled, by common practice; it scatters by a third and more.
        factor: Between<f64>,
        /// Nominal diameter D.
        diameter: Quantity,
    },
}

impl Law {
    /// Torque a newton of clamp load takes, mm: at the least and at the most friction.
    fn arm_mm(&self) -> Result<Between<f64>, TorqueFault> {
        match *self {
            Law::Friction { thread, bearing, friction } => {
                let friction = friction.checked("friction", 0.0, 1.0, "from 0 to 1, such as 0.12")?;
                let mean = bearing.mean_mm()?;
                friction.each(|mu| Ok(0.16 * thread.p_mm() + (0.58 * thread.d2_mm() + mean / 2.0) * mu))
            }
            Law::NutFactor { factor, diameter } => {
                let factor = factor.checked("the nut factor", 0.01, 1.0, "from 0.01 to 1, such as 0.2")?;
                let diameter = positive(diameter, Unit::Millimetre, "the diameter")?;
                factor.each(|k| Ok(k * diameter))
            }
        }
    }

    /// Clamp load from torque: the least torque at the most friction, and the other way round.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn preload(&self, torque: Between<Quantity>) -> Result<Between<Quantity>, TorqueFault> {
        let torque = torque.positive(Unit::NewtonMetre, "the torque")?;
        let arm = self.arm_mm()?;
        quantities(Between::new(torque.low * 1e3 / arm.high, torque.high * 1e3 / arm.low), Unit::Newton)
    }

    /// Torque for a clamp load: at the least and at the most friction.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn torque(&self, preload: Quantity) -> Result<Between<Quantity>, TorqueFault> {
        let preload = positive(preload, Unit::Newton, "the clamp load")?;
        let arm = self.arm_mm()?;
        quantities(Between::new(preload * arm.low / 1e3, preload * arm.high / 1e3), Unit::NewtonMetre)
    }
}

/// Pull and twist together, as a multiple of the pull alone, while the nut is turned:
/// `√(1 + 3·[3/2·d2/d0·(P/(π·d2) + 1.155·μ)]²)`. Source: VDI 2230 part 1, assembly preload.
pub(super) fn twisted(thread: Thread, friction: f64) -> f64 {
    let (d2, d0, p) = (thread.d2_mm(), thread.stress_diameter_mm(), thread.p_mm());
    let twist = 1.5 * d2 / d0 * (p / (std::f64::consts::PI * d2) + 1.155 * friction);
    (1.0 + 3.0 * twist * twist).sqrt()
}

/// What a fastener may be tightened to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Assembly {
    /// Clamp load, N.
    pub preload: Quantity,
    /// Torque that gives it at this friction, N·m.
    pub torque: Quantity,
}

/// Assembly preload at the share `used` of Rp0.2, pull and twist together, and its torque.
///
/// `F = used·Rp0.2·As / √(1 + 3·[…]²)`. Source: VDI 2230 part 1 (2003, 2015). Holds for a
/// shank no thinner than the stress area. It says what the steel bears, not what an
/// aluminium thread or a gasket bears.
///
/// # Errors
/// [`TorqueFault`].
pub fn assembly(
    thread: Thread,
    class: Class,
    bearing: Bearing,
    friction: f64,
    used: f64,
) -> Result<Assembly, TorqueFault> {
    let used = Between::just(used).checked("the used share", 0.01, 1.0, "from 0.01 to 1, such as 0.9")?.low;
    let law = Law::Friction { thread, bearing, friction: Between::just(friction) };
    let stress = class.yield_stress(thread)?.value * used / twisted(thread, friction);
    let preload = sized(stress * thread.stress_area_mm2(), Unit::Newton)?;
    Ok(Assembly { preload, torque: law.torque(preload)?.low })
}
