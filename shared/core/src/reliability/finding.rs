//! Findings, checked, and how many of each sort.

use serde::{Deserialize, Serialize};

use super::fault::LifeFault;

/// What a set of findings holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Counted {
    /// All.
    pub findings: usize,
    /// Failed: known at all, between two times or exactly.
    pub failed: usize,
    /// Of these known exactly.
    pub exact: usize,
    /// Not failed yet when last seen.
    pub whole: usize,
}

/// One finding as many times as it was made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Weighed {
    /// Still whole at this time.
    pub after: f64,
    /// Failed by this time; infinite where it hasn't.
    pub by: f64,
    /// How many such findings.
    pub times: f64,
}

impl Weighed {
    /// Failed at a time that is known.
    pub fn exact(&self) -> bool {
        self.after == self.by
    }

    /// Has failed.
    pub fn failed(&self) -> bool {
        self.by.is_finite()
    }
}

/// Findings in order.
#[derive(Clone, Debug, PartialEq)]
pub struct Findings {
    weighed: Vec<Weighed>,
    counted: Counted,
}

impl Findings {
    /// From pairs of times in service: still whole `after`, found failed `by` (none: not failed
    /// yet). Both the same: failed exactly then.
    ///
    /// # Errors
    /// [`LifeFault`], with the finding's number, from 1.
    pub fn new(pairs: &[(f64, Option<f64>)]) -> Result<Self, LifeFault> {
        let mut counted = Counted { findings: pairs.len(), ..Counted::default() };
        let mut all = Vec::with_capacity(pairs.len());
        for (before, (after, by)) in pairs.iter().enumerate() {
            let number = before + 1;
            if !after.is_finite() || by.is_some_and(|by| !by.is_finite()) {
                return Err(LifeFault::NotFinite(number));
            }
            if *after < 0.0 || by.is_some_and(|by| by < 0.0) {
                return Err(LifeFault::Negative(number));
            }
            match *by {
                Some(0.0) => return Err(LifeFault::AtNothing(number)),
                Some(by) if by < *after => return Err(LifeFault::Backwards(number)),
                Some(by) => {
                    counted.failed += 1;
                    counted.exact += usize::from(by == *after);
                }
                None => counted.whole += 1,
            }
            // -0 is 0.
            all.push(Weighed { after: after + 0.0, by: by.unwrap_or(f64::INFINITY), times: 1.0 });
        }
        all.sort_by(|a, b| a.after.total_cmp(&b.after).then(a.by.total_cmp(&b.by)));
        let same = |a: &Weighed, b: &Weighed| a.after == b.after && a.by == b.by;
        let run = |run: &[Weighed]| run.first().map(|one| Weighed { times: run.len() as f64, ..*one });
        Ok(Self { weighed: all.chunk_by(same).filter_map(run).collect(), counted })
    }

    /// How many of each sort.
    pub fn counted(&self) -> Counted {
        self.counted
    }

    pub(super) fn weighed(&self) -> &[Weighed] {
        &self.weighed
    }

    /// The greatest time in service that any of them speaks of.
    pub fn oldest(&self) -> f64 {
        let end = |one: &Weighed| if one.failed() { one.by } else { one.after };
        self.weighed.iter().map(end).fold(0.0, f64::max)
    }
}
