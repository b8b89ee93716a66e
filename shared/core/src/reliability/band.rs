//! How far a Weibull curve may be off, at each age.

use serde::{Deserialize, Serialize};

use super::fault::LifeFault;
use super::finding::Findings;
use super::optimum::{SHAPES, falls_to};
use super::weibull::{Fitted, WITHIN_95, fitted};
use crate::told::{Told, TooLittle};

/// Directions in which the edge of what fits is looked for; between them a parabola finds the extremes.
/// Of few findings the edge may be far from round; of many it is round, and each direction takes long.
const DIRECTIONS: usize = 120;
/// See [`DIRECTIONS`].
const OF_MANY: usize = 24;
/// From so many different findings on they are many.
const MANY: usize = 1000;

/// The curve at an age.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct At {
    /// Hours.
    pub hours: f64,
    /// Share still whole.
    pub share: f64,
    /// Lower end of its interval of 95 %.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// The fitted curve at these ages, each with its own profile-likelihood interval.
///
/// ln(−ln S(t)) = k·ln t − ν is a straight function of k and ν = k·ln λ, so the values it takes where
/// 2·(ℓ max − ℓ) ≤ χ²₁(95 %) = 3.84 are those between its extremes on the edge of that region, which
/// is convex since ℓ is concave: exactly the interval of its profile. It needs no symmetry, and never
/// leaves 0 to 1 as ± 1.96 standard errors of S do.
///
/// Source: Meeker & Escobar, Statistical Methods for Reliability Data, 1998, chapters 8 and appendix B
/// (from memory); figures checked against profiles by SciPy and, in the middle of large samples, against
/// lifelines.
///
/// # Errors
/// [`LifeFault`].
pub fn weibull_at(findings: &Findings, ages: &[f64]) -> Result<Told<Vec<At>>, LifeFault> {
    if ages.iter().any(|age| !age.is_finite() || *age < 0.0) {
        return Err(LifeFault::Impossible { what: "an age of the curve", must: "0 hours or more" });
    }
    let fit = match fitted(findings)? {
        Told::Told(fit) => fit,
        Told::TooLittle(why) => return Ok(Told::TooLittle(why)),
    };
    let directions = if findings.weighed().len() < MANY { DIRECTIONS } else { OF_MANY };
    let Some(edge) = fit.edge(directions) else { return Ok(Told::TooLittle(TooLittle::AnySpread)) };
    Ok(Told::Told(ages.iter().map(|age| fit.at_age(&edge, *age)).collect()))
}

impl Fitted {
    /// Points all round the region that fits, as (k, ν); none where it has no end.
    fn edge(&self, directions: usize) -> Option<Vec<(f64, f64)>> {
        let level = self.at.value - WITHIN_95 / 2.0;
        // With the curvature's Cholesky factor all directions are about as far from the edge.
        let first = (-self.at.kk).sqrt();
        let across = -self.at.knu / first;
        let second = (-self.at.nunu - across * across).sqrt();
        let point = |place: usize| {
            let angle = std::f64::consts::TAU * place as f64 / directions as f64;
            let by_nu = angle.sin() / second;
            let by_k = (angle.cos() - across * by_nu) / first;
            let along = |r: f64| {
                let at = self.likelihood.at(self.k + r * by_k, self.nu + r * by_nu);
                Some((at.value, at.k * by_k + at.nu * by_nu))
            };
            let farthest = match by_k {
                by_k if by_k < 0.0 => (self.k - SHAPES.0) / -by_k,
                by_k if by_k > 0.0 => (SHAPES.1 - self.k) / by_k,
                _ => f64::INFINITY,
            };
            let step = WITHIN_95.sqrt().min(0.9 * farthest);
            let r = falls_to(along, 0.0, level, step, (0.0, farthest))?;
            Some((self.k + r * by_k, self.nu + r * by_nu))
        };
        (0..directions).map(point).collect()
    }

    fn at_age(&self, edge: &[(f64, f64)], hours: f64) -> At {
        if hours <= 0.0 {
            return At { hours, share: 1.0, low: 1.0, high: 1.0 };
        }
        let share = |z: f64| (-z.exp()).exp();
        let z = |(k, nu): &(f64, f64)| self.likelihood.log_hazard(*k, *nu, hours);
        let around: Vec<f64> = edge.iter().map(z).collect();
        let least = -summit(&around.iter().map(|z| -z).collect::<Vec<_>>());
        At { hours, share: share(z(&(self.k, self.nu))), low: share(summit(&around)), high: share(least) }
    }
}

/// The greatest value of a smooth round, between the points at which it is known.
fn summit(around: &[f64]) -> f64 {
    let greatest = around.iter().copied().enumerate().max_by(|a, b| a.1.total_cmp(&b.1));
    let Some((place, top)) = greatest else { return f64::NAN };
    let at = |place: usize| around.get(place % around.len()).copied().unwrap_or(top);
    let (before, after) = (at(place + around.len() - 1), at(place + 1));
    let bend = 2.0 * top - before - after;
    if bend > 0.0 { top + (after - before).powi(2) / (8.0 * bend) } else { top }
}
