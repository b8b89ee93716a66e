//! Turnbull's curve as it is drawn: level stretches, and how far each may be off.

use serde::{Deserialize, Serialize};

use super::bootstrap::intervals;
use super::finding::Findings;
use super::turnbull::Turnbull;

/// At most so many steps are drawn: neighbours fall together, over the time of all of them.
const DRAWN: usize = 40;

/// A step of the share still whole.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Step {
    /// Up to here the step before holds; from here to `hours` the curve falls, nobody knows where.
    pub since: f64,
    /// From here on this holds.
    pub hours: f64,
    /// The share still whole.
    pub share: f64,
    /// Lower end of its interval of 95 %, over the whole step.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// The steps of an estimate from these findings, beginning with all whole at nothing.
pub fn steps(findings: &Findings, found: &Turnbull) -> Vec<Step> {
    let falls: Vec<_> = found.masses.iter().filter_map(|one| Some((one.after, one.by?, one.mass))).collect();
    let together = falls.len().div_ceil(DRAWN).max(1);
    let mut whole = 1.0;
    // Since, hours, and what is left then.
    let mut steps = vec![(0.0, 0.0, 1.0)];
    for run in falls.chunks(together) {
        let (Some(first), Some(last)) = (run.first(), run.last()) else { continue };
        whole -= run.iter().map(|one| one.2).sum::<f64>();
        steps.push((first.0, last.1, whole.max(0.0)));
    }
    let next = steps.iter().skip(1).map(|step| step.0).chain([findings.oldest()]);
    let stretches: Vec<(f64, f64, f64)> =
        steps.iter().zip(next).map(|((_, hours, share), next)| (*hours, next.max(*hours), *share)).collect();
    let ends = intervals(findings, &stretches);
    let step = |((since, hours, share), (low, high)): ((f64, f64, f64), (f64, f64))| Step {
        since,
        hours,
        share,
        low,
        high,
    };
    steps.into_iter().zip(ends).map(step).collect()
}
