//! What an answer means: the author's word for it, or where the value lies against its band.

use super::authored::Meaning;
use super::compose::Ask;
use super::walk::Given;
use crate::units::{Quantity, UnitFault};

/// Why an answer can't be taken.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum JudgeFault {
    /// Not one of the point's answers.
    #[error("the point has no answer `{0}`")]
    NoSuchAnswer(String),
    /// Words for a measured point, or a value for one that isn't; what it asks for instead: `words`,
    /// `value` or `torque`.
    #[error("this point is answered in another way: {0}")]
    WrongKind(&'static str),
    /// A unit of another kind.
    #[error(transparent)]
    Unit(#[from] UnitFault),
}

/// A judged answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// What it means.
    pub means: Meaning,
    /// The value in the band's unit, for a measured point.
    pub measured: Option<Quantity>,
}

/// Judges an answer. A value for which there is no number to hold it against is a watch
/// item: written down, and looked at again once the manual's value is known.
///
/// # Errors
/// [`JudgeFault`].
pub fn judge(ask: &Ask, given: &Given) -> Result<Judged, JudgeFault> {
    match (ask, given) {
        (Ask::Words { answers }, Given::Words { answer }) => answers
            .iter()
            .find(|a| a.id == *answer)
            .map(|a| Judged { means: a.means, measured: None })
            .ok_or_else(|| JudgeFault::NoSuchAnswer(answer.clone())),
        (Ask::Value { band, below, above }, Given::Value { value }) => {
            let value = value.to(band.unit())?;
            let against = |end: &Option<super::Sourced>| {
                end.as_ref().and_then(super::Sourced::quantity).map(|q| q.to(value.unit)).transpose()
            };
            let (low, high) = (against(&band.low)?, against(&band.high)?);
            let means = if low.is_some_and(|low| value.value < low.value) {
                *below
            } else if high.is_some_and(|high| value.value > high.value) {
                *above
            } else if band.ends().all(|end| end.value.is_some()) {
                Meaning::Serviceable
            } else {
                Meaning::Watch
            };
            Ok(Judged { means, measured: Some(value) })
        }
        (Ask::Torque { band, .. }, Given::Torque { torque }) => {
            let outside = torque.reading.map(|reading| outside(band, reading)).transpose()?.unwrap_or(false);
            let means = if outside {
                Meaning::Unserviceable
            } else if torque.watch.is_empty() {
                Meaning::Serviceable
            } else {
                Meaning::Watch
            };
            Ok(Judged { means, measured: None })
        }
        (Ask::Torque { .. }, _) => Err(JudgeFault::WrongKind("torque")),
        (Ask::Words { .. }, _) => Err(JudgeFault::WrongKind("words")),
        (Ask::Value { .. }, _) => Err(JudgeFault::WrongKind("value")),
    }
}

/// Whether a reading lies outside a band.
fn outside(band: &super::ResolvedBand, reading: Quantity) -> Result<bool, UnitFault> {
    let reading = reading.to(band.unit())?;
    let end = |end: &Option<super::Sourced>| {
        end.as_ref().and_then(super::Sourced::quantity).map(|q| q.to(reading.unit)).transpose()
    };
    let low = end(&band.low)?.is_some_and(|low| reading.value < low.value);
    let high = end(&band.high)?.is_some_and(|high| reading.value > high.value);
    Ok(low || high)
}
