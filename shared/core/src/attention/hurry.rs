//! Time spent on a list's points against what is usual, said back before signing.

use crate::list::Progress;
use crate::median;

/// No usable habit of this person is known for a point: this is what a look takes at least, seconds.
/// Our choice; nobody reads, looks and answers in less than this.
pub const LEAST_LOOK: f64 = 2.0;
/// A look much shorter than one's own habit is hurried.
const HURRIED_SHARE: f64 = 0.4;

/// A middle time needs so many looks.
const FEWEST_TIMES: usize = 3;
/// Of fewer points than this nothing is said of the list as a whole. Our choice.
const FEWEST_IN_SHORT: usize = 5;

/// Points answered in much less than the usual time, in the order of answering.
///
/// `usual` gives the median for a point, seconds: this person's own where it is known from at least
/// three looks, else everybody's.
pub fn hurried(progress: &Progress, usual: impl Fn(&str) -> Option<f64>) -> Vec<String> {
    progress
        .order
        .iter()
        .filter(|point| progress.seen.get(*point).is_some_and(|seen| seen.seconds < least(usual(point))))
        .cloned()
        .collect()
}

/// What a look takes at least, where it usually takes this long.
fn least(usual: Option<f64>) -> f64 {
    usual.map_or(LEAST_LOOK, |median| (median * HURRIED_SHARE).max(LEAST_LOOK))
}

/// A list walked in less time than looking takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InShort {
    /// Points answered.
    pub points: usize,
    /// In how many seconds, all of them.
    pub seconds: f64,
    /// What they usually take, seconds; none where that isn't known of most of them.
    pub usual: Option<f64>,
}

/// Whether all points together were answered in less time than looking at them takes: "all serviceable
/// in nine seconds". One point hurried, or a few, don't make it so.
pub fn in_short(progress: &Progress, usual: impl Fn(&str) -> Option<f64>) -> Option<InShort> {
    let seen = &progress.seen;
    let seconds: f64 = seen.values().map(|seen| seen.seconds).sum();
    let known: Vec<f64> = seen.keys().filter_map(|point| usual(point)).collect();
    let needed: f64 = seen.keys().map(|point| least(usual(point))).sum();
    let all = seen.len() as f64 * known.iter().sum::<f64>() / known.len().max(1) as f64;
    let most = known.len() * 2 > seen.len();
    let short = seen.len() >= FEWEST_IN_SHORT && seconds < needed;
    short.then_some(InShort { points: seen.len(), seconds, usual: most.then_some(all) })
}

/// The middle of some durations, seconds, from three of them on.
pub fn median(seconds: Vec<f64>) -> Option<f64> {
    if seconds.len() < FEWEST_TIMES { None } else { median::median(seconds) }
}
