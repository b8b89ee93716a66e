//! How long an engine ran.

use super::log::Sample;
use super::peak::RPM;
use super::when::HAIR;

/// Above this an engine runs, 1/s. Our choice: no engine of the trade idles below.
pub(super) const RUNS: f64 = 500.0 * RPM;
/// Samples further apart than this say nothing of what was between, seconds. Our choice: twice the
/// slowest rate at which anybody logs.
pub(super) const GAP: f64 = 120.0;
/// A head that warms by less was not run, K.
const WARMED: f64 = 40.0;
/// A log that begins with a hot engine tells nothing of how cold it was, K.
const COLD_AT_MOST: f64 = 273.15 + 40.0;

/// How long a value lies above a level, seconds: each time between two samples counts whole where both lie
/// above, half where one does, and not where they lie further apart than [`GAP`].
pub(super) fn time_above(runs: &[Vec<Sample>], level: f64) -> f64 {
    let between = |pair: &[Sample]| match pair {
        [a, b] if b.at - a.at <= GAP + HAIR => {
            let above = [a, b].iter().filter(|sample| sample.value > level).count();
            (b.at - a.at) * above as f64 / 2.0
        }
        _ => 0.0,
    };
    runs.iter().flat_map(|run| run.windows(2)).map(between).sum()
}

/// The head temperature above which an engine is taken to run, where nobody logged its speed: half way
/// from its coldest (at most 40 °C) to its highest. What is lost while it warms is about won while it
/// cools. Our choice. None where it didn't warm by 40 K.
pub(super) fn warm(runs: &[Vec<Sample>]) -> Option<f64> {
    let all = || runs.iter().flatten().map(|sample| sample.value);
    let coldest = all().min_by(f64::total_cmp)?.min(COLD_AT_MOST);
    let hottest = all().max_by(f64::total_cmp)?;
    (hottest - coldest >= WARMED).then_some(coldest + (hottest - coldest) / 2.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn every(seconds: f64, values: &[f64]) -> Vec<Vec<Sample>> {
        vec![
            values
                .iter()
                .enumerate()
                .map(|(n, value)| Sample { at: n as f64 * seconds, value: *value })
                .collect(),
        ]
    }

    #[test]
    fn time_counts_while_it_runs() {
        let speed = every(10.0, &[0.0, 30.0, 30.0, 30.0, 0.0]);
        assert_eq!(time_above(&speed, RUNS), 30.0, "two whole, two half");
        assert_eq!(time_above(&every(300.0, &[30.0, 30.0]), RUNS), 0.0, "nobody knows what was between");
        assert_eq!(time_above(&[], RUNS), 0.0);
    }

    #[test]
    fn a_head_that_stays_cold_tells_nothing() {
        assert_eq!(warm(&every(1.0, &[290.0, 300.0])), None);
        assert_eq!(warm(&every(1.0, &[293.15, 453.15])), Some(373.15));
        assert_eq!(warm(&every(1.0, &[433.15, 453.15])), Some(COLD_AT_MOST + 70.0), "begun hot");
        assert_eq!(warm(&[]), None);
    }
}
