//! Mann–Kendall: is there a trend at all, whatever its form?

use serde::{Deserialize, Serialize};
use statrs::function::erf::erfc;

use super::select::discordant;
use super::series::Series;
use super::ties::ties;

/// What the test says.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Kendall {
    /// Pairs that rise with time, less pairs that fall.
    pub s: i64,
    /// Variance of S if there were no trend.
    pub variance: f64,
    /// S in standard deviations, moved by one towards nothing.
    pub z: f64,
    /// How often chance alone gives at least this, either way.
    pub p: f64,
}

/// The test on values in order of time.
///
/// S = Σ sgn(xⱼ − xᵢ)·sgn(yⱼ − yᵢ) over all pairs;
/// var S = [n(n−1)(2n+5) − Σt(t−1)(2t+5) − Σu(u−1)(2u+5)]/18
/// plus Σt(t−1)(t−2)·Σu(u−1)(u−2) / 9n(n−1)(n−2) plus Σt(t−1)·Σu(u−1) / 2n(n−1),
/// t and u the sizes of ties in time and value; z = (S ∓ 1)/√var S, 0 for S = 0;
/// p = 2·(1 − Φ(|z|)). S in O(n log n) by counting inversions (Knight 1966).
///
/// Source: Mann 1945; Kendall, Rank Correlation Methods, 4th ed. 1970, with the terms for ties in
/// both; without ties in time it is the test of Gilbert, Statistical Methods for Environmental
/// Pollution Monitoring, 1987, chapter 16. Assumes readings that don't hang on one another.
/// All the same, or all at one time, give S = 0, variance 0, z = 0, p = 1: see to that before.
pub fn mann_kendall(series: &Series) -> Kendall {
    let (x, y) = (series.times(), series.values());
    let n = series.len() as f64;
    let (t, u) = (ties(x.clone()), ties(y.clone()));
    let sum = |ties: &[u64], f: fn(f64) -> f64| ties.iter().map(|count| f(*count as f64)).sum::<f64>();
    let pairs = |k: f64| k * (k - 1.0);
    let triples = |k: f64| k * (k - 1.0) * (k - 2.0);
    let wide = |k: f64| k * (k - 1.0) * (2.0 * k + 5.0);
    let mut variance = (wide(n) - sum(&t, wide) - sum(&u, wide)) / 18.0;
    if !t.is_empty() && !u.is_empty() {
        if n > 2.0 {
            variance += sum(&t, triples) * sum(&u, triples) / (9.0 * triples(n));
        }
        variance += sum(&t, pairs) * sum(&u, pairs) / (2.0 * pairs(n));
    }
    // Pairs untied in both, less twice those that fall.
    let tied_in_both: Vec<u64> = series
        .readings()
        .chunk_by(|a, b| a == b)
        .map(|run| run.len() as u64)
        .filter(|count| *count > 1)
        .collect();
    let untied = pairs(n) / 2.0 - (sum(&t, pairs) + sum(&u, pairs) - sum(&tied_in_both, pairs)) / 2.0;
    let s = untied as i64 - 2 * discordant(&y) as i64;
    let variance = variance.max(0.0);
    let z = match s {
        _ if variance <= 0.0 => 0.0,
        0 => 0.0,
        s => (s - s.signum()) as f64 / variance.sqrt(),
    };
    Kendall { s, variance, z, p: erfc(z.abs() / std::f64::consts::SQRT_2) }
}
