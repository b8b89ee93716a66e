//! The lives of one component: from new, or from being put right, to the look that finds it wrong.

use std::collections::{BTreeMap, BTreeSet};

use crate::list::Meaning;

/// Hours that differ by less than this are the same.
const HAIR: f64 = 1e-6;

/// Found wrong, and not put right yet.
#[derive(Debug)]
struct Failed<'a> {
    /// Still whole at this age, where it was found wrong.
    after: f64,
    /// The age of the look that found it.
    by: f64,
    /// When that was.
    at_ms: i64,
    /// The points at which it is wrong.
    open: BTreeSet<&'a str>,
}

/// When a point was last found in order, and when before that.
#[derive(Clone, Copy, Debug)]
struct InOrder {
    last: f64,
    before: Option<f64>,
}

/// What comes of one life.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum End {
    /// Found wrong: whole after, failed by.
    Failed(f64, f64),
    /// Not found wrong: whole so far.
    Whole(f64),
    /// Found wrong before it had run at all: none that wore out.
    NeverRan,
}

/// A component, its age counted on.
#[derive(Debug)]
pub(super) struct Component<'a> {
    /// Machine hours from which age is counted, and the age then.
    from: (f64, f64),
    /// Its age as last known.
    pub age: f64,
    /// The age at which this life was taken for whole: new, fitted, or put right.
    begun: f64,
    /// Each point's last looks that found it in order.
    in_order: BTreeMap<&'a str, InOrder>,
    /// The age of the latest look that found nothing wrong.
    whole: Option<f64>,
    failed: Option<Failed<'a>>,
    /// Whether it was put right: its age isn't that of the component any more.
    renewed: bool,
}

impl<'a> Component<'a> {
    /// A component of this age, on a machine of these hours.
    pub fn new(hours: f64, age: f64) -> Self {
        Self {
            from: (hours, age),
            age,
            begun: age,
            in_order: BTreeMap::new(),
            whole: None,
            failed: None,
            renewed: false,
        }
    }

    /// Its age on a machine of these hours; to the thousandth, so that sums don't make ages of their own.
    fn at(&self, hours: f64) -> f64 {
        let age = self.from.1 + (hours - self.from.0).max(0.0);
        ((age * 1000.0).round() / 1000.0).max(self.age)
    }

    /// Taken off a machine of these hours.
    pub fn off(&mut self, hours: f64) {
        self.age = self.at(hours);
    }

    /// Fitted to a machine of these hours, as old as is stated, and never younger than is known. One that
    /// was put right counts from then, not by the hours it ever ran.
    pub fn on(&mut self, hours: f64, stated: f64) {
        let age = if self.renewed { self.age } else { stated.max(self.age) };
        self.from = (hours, age);
        self.age = age;
    }

    /// One look's findings; gives what ended with it.
    pub fn look(&mut self, at_ms: i64, hours: f64, seen: &[(&'a str, Meaning)]) -> Option<End> {
        let age = self.at(hours);
        self.age = age;
        let wrong = |means: Meaning| means == Meaning::Unserviceable;
        let is_wrong: BTreeSet<&str> =
            seen.iter().filter(|(_, means)| wrong(*means)).map(|(point, _)| *point).collect();
        let is_right = |point: &&str| seen.iter().any(|(seen, _)| seen == point) && !is_wrong.contains(point);
        if let Some(mut failed) = self.failed.take() {
            // One inspection may be two records: what both found wrong is one failure.
            if at_ms == failed.at_ms {
                failed.after =
                    is_wrong.iter().map(|point| self.before(point, age)).fold(failed.after, f64::min);
            }
            failed.open.retain(|point| !is_right(point));
            failed.open.extend(&is_wrong);
            if !failed.open.is_empty() {
                self.failed = Some(failed);
                return None;
            }
            self.begin_anew(hours);
            self.keep(0.0, seen);
            return Some(ended(&failed));
        }
        if is_wrong.is_empty() {
            self.keep(age, seen);
            return None;
        }
        let after = is_wrong.iter().map(|point| self.before(point, age)).fold(f64::INFINITY, f64::min);
        self.failed = Some(Failed { after, by: age, at_ms, open: is_wrong });
        None
    }

    /// The life that is going on.
    pub fn end(&self) -> Option<End> {
        match &self.failed {
            Some(failed) => Some(ended(failed)),
            None => self.whole.filter(|whole| *whole > 0.0).map(End::Whole),
        }
    }

    /// The last age before `age` at which a point was in order. Found in order and wrong at the same
    /// hours, it was overlooked the first time.
    fn before(&self, point: &str, age: f64) -> f64 {
        let kept = self.in_order.get(point);
        let known = kept.and_then(|kept| {
            [Some(kept.last), kept.before].into_iter().flatten().find(|at| *at < age - HAIR)
        });
        // Wrong as soon as it was fitted: it began before, nobody knows when.
        known.unwrap_or(if self.begun < age - HAIR { self.begun } else { 0.0 })
    }

    fn keep(&mut self, age: f64, seen: &[(&'a str, Meaning)]) {
        for (point, _) in seen {
            let entry = self.in_order.entry(point).or_insert(InOrder { last: age, before: None });
            if entry.last < age - HAIR {
                *entry = InOrder { last: age, before: Some(entry.last) };
            }
        }
        self.whole = Some(age);
    }

    fn begin_anew(&mut self, hours: f64) {
        *self = Self { renewed: true, ..Self::new(hours, 0.0) };
    }
}

fn ended(failed: &Failed<'_>) -> End {
    if failed.by <= HAIR { End::NeverRan } else { End::Failed(failed.after, failed.by) }
}
