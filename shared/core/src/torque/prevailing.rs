//! Self-locking nuts: drag that the wrench feels and the joint does not get.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::{Between, quantities};
use super::fault::{TorqueFault, positive, unmixed};
use super::thread::Thread;
use crate::units::{Quantity, Unit};

/// When drag is added to the wanted torque. The two sources differ.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DragRule {
    /// From a third of the wanted torque on; below, it is left out. US Army TB 43-0218 § 7c.
    #[default]
    Third,
    /// Always. FAA AC 43.13-1B 7-40 d.
    Always,
}

/// What to set for a nut that drags.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Drag {
    /// What the wrench is set to, in the wanted torque's unit.
    pub set: Between<Quantity>,
    /// Whether the drag is in it.
    pub counted: bool,
}

/// Adds the drag, measured on the last turn before the nut seats, to the wanted torque.
///
/// Of a band the lowest end is what a third is taken of: counted too early it costs nothing,
/// since drag never clamps; left out too late it costs clamp load.
///
/// # Errors
/// [`TorqueFault`].
pub fn with_drag(wanted: Between<Quantity>, drag: Quantity, rule: DragRule) -> Result<Drag, TorqueFault> {
    let unit = wanted.low.unit;
    wanted.positive(Unit::NewtonMetre, "the wanted torque")?;
    let wanted = wanted.positive(unit, "the wanted torque")?;
    // A nut that drags more than it is tightened is a slip sooner than a nut.
    unmixed("the drag", drag, unit, |drag| drag <= wanted.high)?;
    let drag = drag.to(unit)?.value;
    if drag < 0.0 {
        return Err(TorqueFault::Impossible { what: "the drag", must: "0 or more" });
    }
    let counted = match rule {
        DragRule::Always => drag > 0.0,
        DragRule::Third => drag >= wanted.low / 3.0 * (1.0 - 1e-9),
    };
    let added = if counted { drag } else { 0.0 };
    let set = quantities(Between::new(wanted.low + added, wanted.high + added), unit)?;
    Ok(Drag { set, counted })
}

/// How much thread shows beyond the nut.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Protrusion {
    /// Threads through the nut.
    pub threads: f64,
    /// At least two complete ones.
    pub enough: bool,
}

/// Threads showing beyond a nut, self-locking or plain, from the length that shows.
///
/// Source: US Army TB 43-0218 § 7b.
///
/// # Errors
/// [`TorqueFault`].
pub fn protrusion(thread: Thread, shows: Quantity) -> Result<Protrusion, TorqueFault> {
    let threads = positive(shows, Unit::Millimetre, "the length beyond the nut")? / thread.p_mm();
    Ok(Protrusion { threads, enough: threads >= 2.0 - 1e-9 })
}
