//! All that findings tell about one type of part.

use serde::{Deserialize, Serialize};

use super::fault::LifeFault;
use super::finding::{Counted, Findings};
use super::inspect::{Inspect, Wanted, inspect_every};
use super::turnbull::{Turnbull, turnbull};
use super::weibull::{Weibull, weibull};
use crate::told::{Told, TooLittle};

/// Fewest failures that anything is told from. Our choice: two fit any two parameters.
pub const FEWEST_FAILED: usize = 3;

/// Lives of one type of part.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Life {
    /// What it rests on.
    pub rests_on: Counted,
    /// With no form assumed.
    pub turnbull: Told<Turnbull>,
    /// As a Weibull.
    pub weibull: Told<Weibull>,
    /// How often to inspect, if that was asked.
    pub inspect: Option<Told<Inspect>>,
}

/// What findings tell. Parts of it are [`Told::TooLittle`]: with nothing found failed, with fewer
/// than three failures, or where any spread fits.
///
/// # Errors
/// [`LifeFault`].
pub fn life(findings: &Findings, wanted: Option<&Wanted>) -> Result<Life, LifeFault> {
    let rests_on = findings.counted();
    let inspect = wanted.map(|wanted| inspect_every(findings, wanted)).transpose()?;
    let few = match rests_on {
        Counted { findings: 0, .. } => Some(TooLittle::Few { has: 0, needs: FEWEST_FAILED }),
        Counted { failed: 0, whole, .. } => Some(TooLittle::NothingFailed { has: whole }),
        Counted { failed, .. } if failed < FEWEST_FAILED => {
            Some(TooLittle::Few { has: failed, needs: FEWEST_FAILED })
        }
        _ => None,
    };
    if let Some(why) = few {
        let (turnbull, weibull) = (Told::TooLittle(why), Told::TooLittle(why));
        return Ok(Life { rests_on, turnbull, weibull, inspect: inspect.map(|_| Told::TooLittle(why)) });
    }
    Ok(Life { rests_on, turnbull: turnbull(findings), weibull: weibull(findings)?, inspect })
}
