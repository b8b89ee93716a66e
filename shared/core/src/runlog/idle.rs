//! The speed at which an engine idles.

use std::collections::VecDeque;

use super::log::Sample;
use super::peak::RPM;
use super::running::RUNS;
use super::when::HAIR;
use crate::median::median;

/// How long a steady stretch lasts at least, seconds.
const STRETCH: f64 = 10.0;
/// Samples further apart than this say nothing of what was between, seconds.
const APART: f64 = 5.0;
/// In a steady stretch the fastest sample is at most so many times the slowest.
const STEADY: f64 = 1.25;
/// No engine of the trade idles faster, 1/s (common practice, no source).
const FASTEST: f64 = 3500.0 * RPM;
/// Stretches whose mean is at most so many times that of the lowest are idle too.
const ALIKE: f64 = 1.1;

/// Steady samples that follow each other, by their places; the second exclusive.
struct Stretch {
    from: usize,
    to: usize,
    mean: f64,
}

/// The idle speed, 1/s: the median of all samples in steady stretches no more than a tenth faster, by
/// their means, than the slowest one. None where the engine never idled.
///
/// A steady stretch: all samples of ten seconds, no two neighbours more than five seconds apart, all above
/// 500 and with their mean at most 3500 turns a minute, the fastest at most 1.25 times the slowest. Our
/// choice: the median of the slowest stretch alone would be the lower the longer the engine idles.
pub(super) fn idle(runs: &[Vec<Sample>]) -> Option<f64> {
    let pieces = runs.iter().flat_map(|run| pieces(run)).map(|piece| (piece, stretches(piece)));
    let pieces: Vec<(&[Sample], Vec<Stretch>)> = pieces.collect();
    let means = pieces.iter().flat_map(|(_, stretches)| stretches).map(|stretch| stretch.mean);
    let lowest = means.min_by(f64::total_cmp)?;
    let mut samples = Vec::new();
    for (piece, stretches) in &pieces {
        let mut taken = 0;
        for stretch in stretches.iter().filter(|stretch| stretch.mean <= lowest * ALIKE) {
            // Stretches overlap: each sample counts once.
            let from = stretch.from.max(taken);
            samples.extend(piece.iter().take(stretch.to).skip(from).map(|sample| sample.value));
            taken = taken.max(stretch.to);
        }
    }
    median(samples)
}

/// Samples without a gap, all with the engine running.
fn pieces(run: &[Sample]) -> impl Iterator<Item = &[Sample]> {
    let together = |a: &Sample, b: &Sample| b.at - a.at <= APART + HAIR && a.value > RUNS && b.value > RUNS;
    run.chunk_by(together).filter(|piece| piece.first().is_some_and(|first| first.value > RUNS))
}

/// The steady stretches of a piece: from each sample on, up to the first that is ten seconds later, and
/// any of the same moment as that. In the order of their beginnings.
fn stretches(piece: &[Sample]) -> Vec<Stretch> {
    let mut found = Vec::new();
    let mut ends = Ends::default();
    let (mut to, mut sum) = (0_usize, 0.0);
    for (from, first) in piece.iter().enumerate() {
        let mut last = to.checked_sub(1).and_then(|last| piece.get(last)).map_or(first.at, |last| last.at);
        while let Some(next) =
            piece.get(to).filter(|next| last - first.at < STRETCH - HAIR || next.at == last)
        {
            ends.push(to, next.value);
            sum += next.value;
            last = next.at;
            to += 1;
        }
        let mean = sum / (to - from) as f64;
        if last - first.at >= STRETCH - HAIR && mean <= FASTEST && ends.are_close() {
            found.push(Stretch { from, to, mean });
        }
        ends.forget(from);
        sum -= first.value;
    }
    found
}

/// The slowest and the fastest of a window that moves on: of each, those samples that may yet be it.
#[derive(Default)]
struct Ends {
    slowest: VecDeque<(usize, f64)>,
    fastest: VecDeque<(usize, f64)>,
}

impl Ends {
    fn push(&mut self, at: usize, value: f64) {
        self.slowest.truncate(self.slowest.partition_point(|(_, kept)| *kept < value));
        self.slowest.push_back((at, value));
        self.fastest.truncate(self.fastest.partition_point(|(_, kept)| *kept > value));
        self.fastest.push_back((at, value));
    }

    fn forget(&mut self, at: usize) {
        for ends in [&mut self.slowest, &mut self.fastest] {
            if ends.front().is_some_and(|(first, _)| *first == at) {
                ends.pop_front();
            }
        }
    }

    fn are_close(&self) -> bool {
        let both = self.slowest.front().zip(self.fastest.front());
        both.is_some_and(|((_, slowest), (_, fastest))| *fastest <= slowest * STEADY)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One sample a second, turns a minute.
    fn rpm(values: &[f64]) -> Option<f64> {
        let sample = |(n, value): (usize, &f64)| Sample { at: n as f64, value: value * RPM };
        idle(&[values.iter().enumerate().map(sample).collect()]).map(|idle| (idle / RPM).round())
    }

    fn flown(idle: &[f64], cruise: usize) -> Vec<f64> {
        idle.iter().copied().chain(vec![6200.0; cruise]).collect()
    }

    #[test]
    fn the_lowest_level_is_told_not_its_lowest_moment() {
        let rough: Vec<f64> = (0..40).map(|n| 2000.0 + 100.0 * f64::from(n % 3 - 1)).collect();
        assert_eq!(rpm(&flown(&rough, 60)), Some(2000.0));
        let falling: Vec<f64> = (0..300).map(|n| 2100.0 - f64::from(n / 10)).collect();
        assert_eq!(rpm(&flown(&falling, 60)), Some(2086.0), "all of it, 2071 to 2100");
    }

    #[test]
    fn an_engine_that_never_idled_has_no_idle_speed() {
        assert_eq!(rpm(&[6200.0; 60]), None);
        assert_eq!(rpm(&flown(&[2000.0; 8], 60)), None, "eight seconds are no stretch");
        assert_eq!(rpm(&[0.0; 60]), None);
        assert_eq!(rpm(&[]), None);
    }

    #[test]
    fn a_stretch_ends_where_samples_are_missing() {
        let at = |at: f64| Sample { at, value: 2000.0 * RPM };
        let gap: Vec<Sample> = (0..8).chain(14..22).map(|n| at(f64::from(n))).collect();
        assert_eq!(idle(&[gap]), None);
        let sparse: Vec<Sample> = (0..4).map(|n| at(f64::from(n) * 5.0)).collect();
        assert!(idle(&[sparse]).is_some());
    }
}
