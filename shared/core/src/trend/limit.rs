//! When a trend reaches a limit.

use serde::{Deserialize, Serialize};

use super::slope::Slope;
use crate::told::{Told, TooLittle};

/// What a measure must not pass.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Limit {
    /// The most it may be.
    AtMost(f64),
    /// The least it may be.
    AtLeast(f64),
    /// Nobody said from which side: only told when the line heads for it.
    #[serde(untagged)]
    Either(f64),
}

/// A time in service and the interval about it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reached {
    /// By the slope.
    pub at: f64,
    /// By the steepest slope of the interval: the careful one.
    pub low: f64,
    /// By the flattest; none when that never gets there.
    pub high: Option<f64>,
}

/// How a line stands to its limit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ToLimit {
    /// It is there already at the last reading.
    There,
    /// It gets there.
    Ahead {
        /// Time in service when it does.
        reached: Reached,
        /// Hours from the last reading until then.
        left: Reached,
    },
    /// It leads away from it.
    Away,
}

/// When the line reaches the limit, if the trend is one (p below `level`).
///
/// x = x̃ + (limit − ỹ)/slope, from the medians, about which all slopes of the interval turn;
/// no earlier than the last reading. It foretells nothing but a straight line's end: wear
/// often comes faster, so the low end is the one to act on.
pub fn to_limit(slope: &Slope, limit: Limit, last: f64, p: f64, level: f64) -> Told<ToLimit> {
    let now = slope.intercept + slope.slope * last;
    let (value, there) = match limit {
        Limit::AtMost(value) => (value, now >= value),
        Limit::AtLeast(value) => (value, now <= value),
        Limit::Either(value) => (value, now == value),
    };
    if there {
        return Told::Told(ToLimit::There);
    }
    if p >= level || slope.slope == 0.0 {
        return Told::TooLittle(TooLittle::NoTrend);
    }
    if (value > now) != (slope.slope > 0.0) {
        return Told::Told(ToLimit::Away);
    }
    // At the last reading already, at the earliest.
    let cross = |b: f64| (slope.at + (value - slope.value) / b).max(last);
    let towards = |b: f64| (b > 0.0) == (slope.slope > 0.0) && b != 0.0;
    let (steep, flat) = if slope.slope > 0.0 { (slope.high, slope.low) } else { (slope.low, slope.high) };
    let at = cross(slope.slope);
    // A limit that the medians are past already is reached soonest by the flattest: then all three
    // lie at or before the last reading, which was told above.
    let high = Some(flat).filter(|b| towards(*b)).map(cross).filter(|x| x.is_finite());
    let reached = Reached { at, low: cross(steep).min(at), high: high.map(|high| high.max(at)) };
    if !at.is_finite() {
        return Told::TooLittle(TooLittle::NoTrend);
    }
    let left = Reached {
        at: reached.at - last,
        low: reached.low - last,
        high: reached.high.map(|high| high - last),
    };
    Told::Told(ToLimit::Ahead { reached, left })
}
