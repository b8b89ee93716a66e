//! How far each nut turns before the click when a joint is tightened again.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::TorqueFault;

/// A quarter to half a turn on a re-torque is not unusual (common practice, no source).
const USUAL_MOST: u8 = 4;
/// Between a quarter and half a turn, two nuts differ by up to a quarter and both are usual; an
/// eighth more is uneven (our reading of the same practice).
const UNEVEN_FROM: u8 = 3;

/// A sign of a relaxing gasket, a sinking washer or a stretching stud: a watch item.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "sign", rename_all = "kebab-case")]
pub enum Sign {
    /// More than half a turn.
    TooFar {
        /// The nut, from 1.
        nut: usize,
        /// Eighths of a turn.
        eighths: u8,
    },
    /// The nuts moved differently.
    Uneven {
        /// Eighths of the one that moved least.
        least: u8,
        /// Eighths of the one that moved most.
        most: u8,
    },
    /// A nut moved more than at the time before; a joint that settles moves less each time.
    Growing {
        /// The nut, from 1.
        nut: usize,
        /// Eighths at the time before.
        before: u8,
        /// Eighths now.
        now: u8,
    },
}

/// Signs in the latest of these re-torques; empty when the joint settles as it should.
///
/// `passes`: oldest first, since the gasket was last renewed; each the eighths of a turn of
/// every nut, in the nuts' order.
///
/// # Errors
/// [`TorqueFault::Impossible`] where the passes don't have the same nuts.
pub fn signs(passes: &[Vec<u8>]) -> Result<Vec<Sign>, TorqueFault> {
    let Some((now, earlier)) = passes.split_last() else { return Ok(Vec::new()) };
    if passes.iter().any(|pass| pass.len() != now.len()) {
        return Err(TorqueFault::Impossible { what: "each re-torque", must: "of the same number of nuts" });
    }
    let numbered = || now.iter().copied().zip(1_usize..);
    let too_far =
        numbered().filter(|(n, _)| *n > USUAL_MOST).map(|(eighths, nut)| Sign::TooFar { nut, eighths });
    let (least, most) = (now.iter().min().copied().unwrap_or(0), now.iter().max().copied().unwrap_or(0));
    let uneven = (most - least >= UNEVEN_FROM).then_some(Sign::Uneven { least, most });
    let before = earlier.last().into_iter().flatten().copied();
    let growing = numbered()
        .zip(before)
        .filter(|((now, _), before)| now > before)
        .map(|((now, nut), before)| Sign::Growing { nut, before, now });
    Ok(too_far.chain(uneven).chain(growing).collect())
}

/// What marks say when a tightened nut is backed off and tightened again.
///
/// Source: US Army TB 43-0218 § 7d: nut and part marked in line, backed off, tightened again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Marks {
    /// In line: it was right.
    InLine,
    /// The nut went past its old place: it had been under-torqued.
    UnderTorqued,
    /// The wrench clicked before the old place: it had been over-torqued.
    OverTorqued,
}

impl Marks {
    /// From how far past the part's mark the nut's mark now stands, degrees, tightening positive;
    /// within `in_line` degrees they count as in line.
    pub fn read(past_deg: f64, in_line: f64) -> Self {
        if past_deg > in_line {
            Marks::UnderTorqued
        } else if past_deg < -in_line {
            Marks::OverTorqued
        } else {
            Marks::InLine
        }
    }
}
