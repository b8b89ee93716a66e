//! How an inspection was done: time spent and points hurried, said back before signing.

use crate::list::Progress;

/// No usable habit of this person is known for a point: this is what a look takes at least, seconds.
/// Our choice; nobody reads, looks and answers in less than this.
const LEAST_LOOK: f64 = 2.0;
/// A look much shorter than one's own habit is hurried.
const HURRIED_SHARE: f64 = 0.4;

/// Points answered in much less than the usual time, in the order of answering.
///
/// `usual` gives this person's own median for a point, seconds, where it is known from at
/// least three looks.
pub fn hurried(progress: &Progress, usual: impl Fn(&str) -> Option<f64>) -> Vec<String> {
    progress
        .order
        .iter()
        .filter(|point| {
            progress.seen.get(*point).is_some_and(|seen| {
                let least =
                    usual(point).map_or(LEAST_LOOK, |median| (median * HURRIED_SHARE).max(LEAST_LOOK));
                seen.seconds < least
            })
        })
        .cloned()
        .collect()
}

/// The middle of some durations, seconds, from three of them on.
pub fn median(mut seconds: Vec<f64>) -> Option<f64> {
    if seconds.len() < 3 {
        return None;
    }
    seconds.sort_by(f64::total_cmp);
    let middle = seconds.len() / 2;
    let upper = seconds.get(middle)?;
    if seconds.len() % 2 == 1 {
        return Some(*upper);
    }
    Some((seconds.get(middle - 1)? + upper) / 2.0)
}
