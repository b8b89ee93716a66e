//! The wind against the limits that a pilot or a school has set.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::{FlightFault, Must, more, some};
use super::input::Input;
use crate::units::{Quantity, Unit};

/// The wind as measured.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Wind {
    /// Mean.
    pub mean: Quantity,
    /// The strongest gust; none when nobody measured it.
    pub gust: Option<Quantity>,
}

impl Wind {
    /// Mean and gusts, m/s, if there is such a wind.
    ///
    /// # Errors
    /// [`FlightFault`], among them [`FlightFault::CalmGust`].
    pub fn speeds(&self) -> Result<(f64, Option<f64>), FlightFault> {
        let speed = Unit::MetrePerSecond;
        let mean = some(self.mean, speed, Input::Mean)?;
        let gust = self.gust.map(|gust| some(gust, speed, Input::Gust)).transpose()?;
        if gust.is_some_and(|gust| gust < mean * (1.0 - 1e-9)) {
            return Err(FlightFault::CalmGust);
        }
        Ok((mean, gust))
    }
}

/// What it may be at most. There is no default: somebody has to set it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct WindLimits {
    /// Mean.
    pub mean: Option<Quantity>,
    /// Gusts.
    pub gust: Option<Quantity>,
    /// Gust over mean.
    pub gust_factor: Option<f64>,
}

/// A limit that isn't kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Over {
    /// The mean wind.
    Mean,
    /// The gusts.
    Gust,
    /// The gusts over the mean wind.
    GustFactor,
    /// There is a limit for gusts, and nobody measured them.
    GustUnknown,
}

/// How the wind stands to its limits.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WindStanding {
    /// All are kept.
    pub within: bool,
    /// Those that aren't.
    pub over: Vec<Over>,
    /// Gust over mean; none without a gust or in still air.
    pub gust_factor: Option<f64>,
}

/// A gust factor says nothing of a breeze below this, m/s: 1 m/s with puffs of 2 is calm. Our choice.
const BREEZE: f64 = 2.0;

/// Each limit that is set, against the wind. At the limit is within. The gust factor is
/// judged from gusts of 2 m/s on.
///
/// # Errors
/// [`FlightFault`], among them [`FlightFault::NoLimit`] and [`FlightFault::CalmGust`].
pub fn wind_standing(wind: &Wind, limits: &WindLimits) -> Result<WindStanding, FlightFault> {
    if *limits == WindLimits::default() {
        return Err(FlightFault::NoLimit);
    }
    let (mean, gust) = wind.speeds()?;
    let speed = Unit::MetrePerSecond;
    let limit = |limit: Option<Quantity>, what| limit.map(|limit| more(limit, speed, what)).transpose();
    let (mean_limit, gust_limit) =
        (limit(limits.mean, Input::MeanLimit)?, limit(limits.gust, Input::GustLimit)?);
    if limits.gust_factor.is_some_and(|factor| !factor.is_finite() || factor < 1.0) {
        return Err(FlightFault::Impossible { what: Input::GustFactorLimit, must: Must::AtLeastOne });
    }
    // A limit in knots and a wind in m/s stay on the side where they were.
    let past = |value: f64, limit: f64| value > limit * (1.0 + 1e-9);
    let gust_factor = gust.filter(|_| mean > 0.0).map(|gust| gust / mean);
    let mut over = Vec::new();
    if mean_limit.is_some_and(|limit| past(mean, limit)) {
        over.push(Over::Mean);
    }
    match gust {
        Some(gust) => {
            if gust_limit.is_some_and(|limit| past(gust, limit)) {
                over.push(Over::Gust);
            }
            // Gusts out of still air have no factor, and are uneven all the same.
            if limits.gust_factor.is_some_and(|limit| gust >= BREEZE && past(gust, limit * mean)) {
                over.push(Over::GustFactor);
            }
        }
        None if gust_limit.is_some() || limits.gust_factor.is_some() => over.push(Over::GustUnknown),
        None => {}
    }
    Ok(WindStanding { within: over.is_empty(), over, gust_factor })
}
