//! Pettitt: did the level step at some moment?

use serde::{Deserialize, Serialize};

use super::series::{Reading, Series};
use super::slope::Slope;
use crate::median::median;

/// A step in level.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// Time in service of the last reading at the old level.
    pub after: f64,
    /// Of the first at the new one.
    pub at: f64,
    /// Pettitt's K.
    pub k: f64,
    /// How often chance alone gives at least this.
    pub p: f64,
    /// Middle value of all readings before it.
    pub old: f64,
    /// Middle value of all from it on.
    pub new: f64,
}

impl Change {
    /// Whether two levels are nearer to the readings than the line is: by the sum of how far each reading
    /// lies from either. A steady slope makes a change point, too, but not this.
    pub fn fits_better(&self, series: &Series, line: &Slope) -> bool {
        let level = |at: f64| if at < self.at { self.old } else { self.new };
        let off_levels = series.readings().iter().map(|r| (r.value - level(r.at)).abs()).sum::<f64>();
        let on_line = |at: f64| line.intercept + line.slope * at;
        let off_line = series.readings().iter().map(|r| (r.value - on_line(r.at)).abs()).sum::<f64>();
        off_levels < off_line
    }
}

/// The most probable change point, if chance alone gives one in less than `level` of cases.
///
/// U(t) = 2·Σ rank(1..t) − t(n+1), with mean ranks for ties; K = max |U(t)|;
/// p ≈ 2·exp(−6K²/(n³+n²)), good for p ≤ 0.5. Readings at one time are never parted.
/// Below 11 readings no K reaches 0.05. A steady slope makes a change point, too: read it
/// beside the slope.
///
/// Source: Pettitt, Applied Statistics 28 (1979) 126–135; the form with ranks as in R's package
/// `trend` (its documentation seen), after Verstraeten et al. 2006.
pub fn change(series: &Series, level: f64) -> Option<Change> {
    let n = series.len() as f64;
    let mut best: Option<Change> = None;
    let mut sum = 0.0;
    let ranks = mean_ranks(&series.values());
    let pairs = series.readings().windows(2).zip(&ranks).enumerate();
    for (before, (pair, rank)) in pairs {
        sum += rank;
        let [last, first] = pair else { continue };
        if last.at >= first.at {
            continue;
        }
        let k = (2.0 * sum - (before + 1) as f64 * (n + 1.0)).abs();
        if best.is_none_or(|best| k > best.k) {
            best = Some(Change { after: last.at, at: first.at, k, p: 1.0, old: 0.0, new: 0.0 });
        }
    }
    let best = best?;
    let p = 2.0 * (-6.0 * best.k * best.k / (n * n * n + n * n)).exp();
    if p >= level {
        return None;
    }
    let (old, new): (Vec<_>, Vec<_>) = series.readings().iter().partition(|reading| reading.at < best.at);
    let middle = |part: Vec<&Reading>| median(part.into_iter().map(|reading| reading.value).collect());
    Some(Change { p: p.min(1.0), old: middle(old)?, new: middle(new)?, ..best })
}

/// Ranks from 1; those who tie share the mean of theirs.
fn mean_ranks(values: &[f64]) -> Vec<f64> {
    let mut order: Vec<(usize, f64)> = values.iter().copied().enumerate().collect();
    order.sort_by(|a, b| a.1.total_cmp(&b.1));
    let mut ranked: Vec<(usize, f64)> = Vec::with_capacity(values.len());
    for run in order.chunk_by(|a, b| a.1 == b.1) {
        let mean = ranked.len() as f64 + (run.len() + 1) as f64 / 2.0;
        ranked.extend(run.iter().map(|(at, _)| (*at, mean)));
    }
    ranked.sort_by_key(|(at, _)| *at);
    ranked.into_iter().map(|(_, rank)| rank).collect()
}
