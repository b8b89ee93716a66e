//! Theil–Sen: the slope that half of all pairs of readings are steeper than.

use serde::{Deserialize, Serialize};
use statrs::distribution::{ContinuousCDF, Normal};

use super::fault::TrendFault;
use super::select::Slopes;
use super::series::Series;
use super::ties::{rank, ties};
use crate::median::median;
use crate::told::{Told, TooLittle};

/// Fewest readings for a slope: of four, the widest interval there is, from the least slope to the
/// greatest, holds the true one in 22 of 24 orders only, which is less than 95 %.
pub const FEWEST: usize = 5;

/// A slope, and the line with it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Slope {
    /// Value per hour in service.
    pub slope: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Value of the line at 0 h: median y − slope · median x, so that every slope of the interval
    /// turns about the medians.
    pub intercept: f64,
    /// Median time.
    pub at: f64,
    /// Median value: the line goes through it at `at`.
    pub value: f64,
}

/// The slope of readings, with its interval at a confidence such as 0.95.
///
/// slope = median of (yⱼ − yᵢ)/(xⱼ − xᵢ) over pairs of different times. Interval: of the N slopes
/// in order those numbered (N ± z·σ)/2, the lower less one, σ² = [n(n−1)(2n+5) − Σt(t−1)(2t+5) −
/// Σu(u−1)(2u+5)]/18 for ties t in time and u in value; numbers rounded as SciPy's `theilslopes`
/// does, whose intercept (`method="separate"`, Conover) this is, too. Unlike there, an interval
/// whose ends would lie beyond the slopes there are isn't told.
///
/// Source: Sen, Journal of the American Statistical Association 63 (1968) 1379–1389.
///
/// # Errors
/// [`TrendFault::Outside`] for a confidence not in 0.5 to 0.9999; [`TrendFault::OutOfReach`].
pub fn theil_sen(series: &Series, confidence: f64) -> Result<Told<Slope>, TrendFault> {
    if !(0.5..=0.9999).contains(&confidence) {
        return Err(TrendFault::Outside { what: "the confidence", low: 0.5, high: 0.9999 });
    }
    if series.len() < FEWEST {
        return Ok(Told::TooLittle(TooLittle::Few { has: series.len(), needs: FEWEST }));
    }
    let (x, y) = (series.times(), series.values());
    let (Some(at), Some(value)) = (median(x.clone()), median(y.clone())) else {
        return Ok(Told::TooLittle(TooLittle::Few { has: 0, needs: FEWEST }));
    };
    let same = |values: &[f64]| values.windows(2).all(|pair| matches!(pair, [a, b] if a == b));
    if same(&x) {
        return Ok(Told::TooLittle(TooLittle::OneMoment));
    }
    if same(&y) {
        return Ok(Told::TooLittle(TooLittle::AllSame));
    }
    let wide = |k: f64| k * (k - 1.0) * (2.0 * k + 5.0);
    let tied = |values: Vec<f64>| ties(values).into_iter().map(|count| wide(count as f64)).sum::<f64>();
    let sigma = ((wide(x.len() as f64) - tied(x) - tied(y)) / 18.0).max(0.0).sqrt();
    let z = -Normal::standard().inverse_cdf((1.0 - confidence) / 2.0);
    let mut slopes = Slopes::new(series.readings());
    let total = slopes.len();
    let (low, high) = (rank((total as f64 - z * sigma) / 2.0) - 1, rank((total as f64 + z * sigma) / 2.0));
    let last = total as i64 - 1;
    if low < 0 || high > last {
        return Ok(Told::TooLittle(TooLittle::NoInterval));
    }
    let upper = slopes.at(total / 2);
    let slope = if total % 2 == 1 { upper } else { slopes.at(total / 2 - 1) / 2.0 + upper / 2.0 };
    // Where many slopes are the same, the rounding of selection must not part the ends from it.
    let (low, high) = (slopes.at(low as u64).min(slope), slopes.at(high as u64).max(slope));
    let intercept = value - slope * at;
    if [slope, low, high, intercept].iter().any(|found| !found.is_finite()) {
        return Err(TrendFault::OutOfReach);
    }
    Ok(Told::Told(Slope { slope, low, high, intercept, at, value }))
}
