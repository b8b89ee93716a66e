//! Where an inspector stands in a list: folded from the steps taken, never stored.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{DateTime, FixedOffset, TimeDelta};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::compose::List;
use crate::record::{Digest, TorqueDone};
use crate::units::Quantity;

/// How many points an interruption takes back. Source: Degani & Wiener, NASA CR-177549
/// (1990), recommends resuming a few items before the one at which attention was lost; three is our choice.
const POINTS_BACK: usize = 3;

/// What a person answered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(untagged)]
pub enum Given {
    /// One of the point's own answers.
    Words {
        /// Its id.
        answer: String,
    },
    /// A measured value.
    Value {
        /// The value as read.
        value: Quantity,
    },
    /// A joint tightened.
    Torque {
        /// How.
        torque: TorqueDone,
    },
}

/// One thing that happened during an inspection; appended, never changed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "step", rename_all = "kebab-case")]
pub enum Step {
    /// A point was answered.
    Answered {
        /// Which.
        point: String,
        /// How.
        given: Given,
        /// How long it was on the screen.
        seconds: f64,
        /// When.
        at: DateTime<FixedOffset>,
    },
    /// An answer was taken back.
    Withdrawn {
        /// Which point's.
        point: String,
        /// When.
        at: DateTime<FixedOffset>,
    },
    /// A point was left for now; it stays unlooked-at until answered.
    Left {
        /// Which.
        point: String,
        /// When.
        at: DateTime<FixedOffset>,
    },
    /// Something was written beside a point.
    Noted {
        /// Which.
        point: String,
        /// The whole note.
        note: String,
        /// When.
        at: DateTime<FixedOffset>,
    },
    /// A picture was put to a point.
    Pictured {
        /// Which.
        point: String,
        /// The picture.
        photo: Digest,
        /// When.
        at: DateTime<FixedOffset>,
    },
    /// Attention was lost: these points are asked again.
    SteppedBack(StepBack),
}

/// An interruption and what it makes asked again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StepBack {
    /// When the inspector came back.
    pub at: DateTime<FixedOffset>,
    /// How long nothing was answered, minutes.
    pub away_minutes: f64,
    /// Whether the day changed meanwhile, so that all is asked again.
    pub another_day: bool,
    /// The points asked again.
    pub points: Vec<String>,
}

impl Step {
    fn at(&self) -> DateTime<FixedOffset> {
        match self {
            Step::Answered { at, .. }
            | Step::Withdrawn { at, .. }
            | Step::Left { at, .. }
            | Step::Noted { at, .. }
            | Step::Pictured { at, .. } => *at,
            Step::SteppedBack(back) => back.at,
        }
    }
}

/// A point's answer with its history.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The answer.
    pub given: Given,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// How long the point was on the screen, over all looks, seconds.
    pub seconds: f64,
}

/// Where the inspector stands.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Progress {
    /// The answers that stand, by point.
    pub seen: BTreeMap<String, Seen>,
    /// Answers taken back or given again, by point, oldest first.
    pub before: BTreeMap<String, Vec<Seen>>,
    /// Points that must be looked at again although an answer is there.
    pub again: BTreeSet<String>,
    /// Points left for now.
    pub left: BTreeSet<String>,
    /// Notes, by point.
    pub notes: BTreeMap<String, String>,
    /// Pictures, by point.
    pub photos: BTreeMap<String, Vec<Digest>>,
    /// Interruptions.
    pub backs: Vec<StepBack>,
    /// Answered points in the order of answering, for undo.
    pub order: Vec<String>,
}

impl Progress {
    /// Whether a point needs nothing more.
    pub fn is_done(&self, point: &str) -> bool {
        self.seen.contains_key(point) && !self.again.contains(point)
    }

    /// The next point to look at: the first that is neither done nor left; then those left.
    pub fn next<'a>(&self, list: &'a List) -> Option<&'a str> {
        let open = || list.points().map(|p| p.id.as_str()).filter(|id| !self.is_done(id));
        open().find(|id| !self.left.contains(*id)).or_else(|| open().next())
    }
}

/// Folds the steps taken into where the inspector stands.
pub fn progress(steps: &[Step]) -> Progress {
    let mut p = Progress::default();
    for step in steps {
        match step {
            Step::Answered { point, given, seconds, at } => {
                let before = p.seen.remove(point);
                let spent = before.as_ref().map_or(0.0, |seen| seen.seconds);
                p.before.entry(point.clone()).or_default().extend(before);
                p.seen
                    .insert(point.clone(), Seen { given: given.clone(), at: *at, seconds: spent + seconds });
                p.again.remove(point);
                p.left.remove(point);
                p.order.retain(|earlier| earlier != point);
                p.order.push(point.clone());
            }
            Step::Withdrawn { point, .. } => {
                p.before.entry(point.clone()).or_default().extend(p.seen.remove(point));
                p.again.remove(point);
                p.order.retain(|earlier| earlier != point);
            }
            Step::Left { point, .. } => {
                p.left.insert(point.clone());
            }
            Step::Noted { point, note, .. } => {
                p.notes.insert(point.clone(), note.clone());
            }
            Step::Pictured { point, photo, .. } => {
                let photos = p.photos.entry(point.clone()).or_default();
                if !photos.contains(photo) {
                    photos.push(*photo);
                }
            }
            Step::SteppedBack(back) => {
                p.again.extend(back.points.iter().filter(|id| p.seen.contains_key(*id)).cloned());
                p.backs.push(back.clone());
            }
        }
    }
    p.before.retain(|_, before| !before.is_empty());
    p
}

/// Decides whether coming back now must step back, and to what.
///
/// After more than `patience_minutes` without a step, the last three points answered are asked
/// again. On another local day than the last step, all are: yesterday's look says nothing of
/// what the night did. A clock that ran backwards counts as an interruption too.
pub fn resume(steps: &[Step], now: DateTime<FixedOffset>, patience_minutes: u32) -> Option<StepBack> {
    let last = steps.last()?.at();
    let away = now - last;
    let before = progress(steps);
    let another_day = now.date_naive() != last.with_timezone(now.offset()).date_naive();
    let long = away > TimeDelta::minutes(i64::from(patience_minutes)) || away < TimeDelta::zero();
    let points: Vec<String> = if another_day {
        before.order.clone()
    } else if long {
        let back = before.order.len().saturating_sub(POINTS_BACK);
        before.order.iter().skip(back).cloned().collect()
    } else {
        return None;
    };
    if points.is_empty() {
        return None;
    }
    let away_minutes = (away.num_seconds() as f64 / 6.0).round() / 10.0;
    Some(StepBack { at: now, away_minutes, another_day, points })
}
