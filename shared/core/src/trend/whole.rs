//! All that is told about one measure.

use serde::{Deserialize, Serialize};

use super::change::{Change, change};
use super::fault::TrendFault;
use super::kendall::{Kendall, mann_kendall};
use super::limit::{Limit, ToLimit, to_limit};
use super::outlier::{Outlier, outliers};
use super::series::Series;
use super::slope::{Slope, theil_sen};
use crate::told::Told;

/// How sure an interval is to hold the slope.
const CONFIDENCE: f64 = 0.95;
/// Chance's share from which on nothing is told of a trend or a change.
const LEVEL: f64 = 0.05;

/// Which way a measure goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Direction {
    /// Up.
    Rising,
    /// Down.
    Falling,
    /// Neither that chance alone wouldn't do as well.
    Neither,
}

/// A trend.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Trend {
    /// How many readings it rests on.
    pub readings: usize,
    /// The test whether there is one.
    pub test: Kendall,
    /// Which way, at 5 %.
    pub direction: Direction,
    /// How steep.
    pub slope: Slope,
    /// A step in level, if there is one at 5 %.
    pub change: Option<Change>,
    /// When it reaches its limit, if one was given.
    pub to_limit: Option<Told<ToLimit>>,
    /// Readings far off the line: shown, not dropped.
    pub outliers: Vec<Outlier>,
}

/// What readings of one measure tell. [`Told::TooLittle`] with fewer than
/// [`FEWEST`](super::FEWEST) readings, all at one time, or all the same.
///
/// # Errors
/// [`TrendFault`].
pub fn trend(series: &Series, limit: Option<Limit>) -> Result<Told<Trend>, TrendFault> {
    if limit.is_some_and(|limit| {
        let (Limit::AtMost(value) | Limit::AtLeast(value) | Limit::Either(value)) = limit;
        !value.is_finite()
    }) {
        return Err(TrendFault::OutOfReach);
    }
    let slope = match theil_sen(series, CONFIDENCE)? {
        Told::Told(slope) => slope,
        Told::TooLittle(why) => return Ok(Told::TooLittle(why)),
    };
    let test = mann_kendall(series);
    let direction = match test.s {
        _ if test.p >= LEVEL => Direction::Neither,
        s if s > 0 => Direction::Rising,
        _ => Direction::Falling,
    };
    let last = series.readings().last().map_or(0.0, |reading| reading.at);
    Ok(Told::Told(Trend {
        readings: series.len(),
        test,
        direction,
        slope,
        change: change(series, LEVEL),
        to_limit: limit.map(|limit| to_limit(&slope, limit, last, test.p, LEVEL)),
        outliers: outliers(series, &slope),
    }))
}
