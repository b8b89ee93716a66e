//! Weibull: how lives are spread, if failure comes ever more (or ever less) often with age.

use serde::{Deserialize, Serialize};

use super::fault::LifeFault;
use super::finding::{Findings, Weighed};
use super::likelihood::{At, Likelihood};
use super::optimum::{SHAPES, falls_to};
use crate::told::{Told, TooLittle};

/// χ² of one degree of freedom, 95 %: a profile may lie half of it below the summit.
pub(super) const WITHIN_95: f64 = 3.841_458_820_694_124;

/// From `low` to `high`; none where that end can't be told.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Interval {
    /// Lower end.
    pub low: Option<f64>,
    /// Upper end.
    pub high: Option<f64>,
}

/// The fit: S(t) = exp(−(t/scale)^shape).
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Weibull {
    /// Above 1 failures come more often with age, below 1 less.
    pub shape: f64,
    /// Hours by which 63 % have failed.
    pub scale: f64,
    /// Logarithm of the findings' probability (density, for exact ones) under it.
    pub log_likelihood: f64,
    /// 95 % profile-likelihood interval of the shape.
    pub shape_interval: Interval,
    /// 95 % profile-likelihood interval of the scale.
    pub scale_interval: Interval,
}

/// The summit, for what goes on from it.
pub(super) struct Fitted {
    pub likelihood: Likelihood,
    pub k: f64,
    pub nu: f64,
    pub at: At,
}

/// Maximum likelihood from exact, right-, left- and interval-censored findings.
///
/// Intervals hold what 2·(ℓ max − ℓ profile) ≤ χ²₁(95 %) = 3.84 leaves: they need no symmetry, and
/// so are not those of programs which take ± 1.96 standard errors.
///
/// Source: Meeker & Escobar, Statistical Methods for Reliability Data, 1998, chapters 7 and 8 (from
/// memory); figures checked against lifelines and by likelihood alone.
///
/// # Errors
/// [`LifeFault::OutOfReach`].
pub fn weibull(findings: &Findings) -> Result<Told<Weibull>, LifeFault> {
    Ok(match fitted(findings)? {
        Told::TooLittle(why) => Told::TooLittle(why),
        Told::Told(fit) => Told::Told(Weibull {
            shape: fit.k,
            scale: fit.likelihood.log_scale(fit.k, fit.nu).exp(),
            log_likelihood: fit.at.value,
            shape_interval: fit.shapes(WITHIN_95),
            scale_interval: fit.scales(WITHIN_95),
        }),
    })
}

pub(super) fn fitted(findings: &Findings) -> Result<Told<Fitted>, LifeFault> {
    let counted = findings.counted();
    if counted.failed == 0 {
        return Ok(Told::TooLittle(TooLittle::NothingFailed { has: counted.whole }));
    }
    // One moment at which all could have failed: the narrower the spread the likelier, without end.
    let all = findings.weighed();
    let latest_whole = all.iter().map(|one| one.after).fold(0.0, f64::max);
    let first_failed = all.iter().map(|one| one.by).fold(f64::INFINITY, f64::min);
    if latest_whole <= first_failed {
        return Ok(Told::TooLittle(TooLittle::AnySpread));
    }
    let likelihood = Likelihood::new(findings);
    let start = start(all);
    let Some((k, nu, at)) = likelihood.summit(start) else {
        // Whatever the shape it grows, or it can't be computed anywhere.
        let there = likelihood.at(start, 0.0).value;
        return if there.is_nan() {
            Err(LifeFault::OutOfReach)
        } else {
            Ok(Told::TooLittle(TooLittle::AnySpread))
        };
    };
    if !at.value.is_finite() || !likelihood.log_scale(k, nu).exp().is_normal() {
        return Err(LifeFault::OutOfReach);
    }
    Ok(Told::Told(Fitted { likelihood, k, nu, at }))
}

/// A shape to begin with: π/√6 over the standard deviation of the failed ones' logarithms.
fn start(all: &[Weighed]) -> f64 {
    let failed = || all.iter().filter(|one| one.failed());
    let middle = |one: &Weighed| ((one.after + one.by) / 2.0).ln();
    let count: f64 = failed().map(|one| one.times).sum();
    let mean = failed().map(|one| one.times * middle(one)).sum::<f64>() / count;
    let variance = failed().map(|one| one.times * (middle(one) - mean).powi(2)).sum::<f64>() / count;
    (1.282_549_830_161_86 / variance.sqrt()).clamp(0.2, 10.0)
}

impl Fitted {
    /// What the profile of the shape leaves at a drop of `within`/2.
    pub(super) fn shapes(&self, within: f64) -> Interval {
        let along = -self.at.knu / self.at.nunu;
        let profile = |k: f64| {
            let nu = self.likelihood.best_nu(k, self.nu + along * (k - self.k))?;
            let at = self.likelihood.at(k, nu);
            Some((at.value, at.k))
        };
        let error = (-(self.at.kk - self.at.knu * self.at.knu / self.at.nunu)).recip().sqrt();
        let level = self.at.value - within / 2.0;
        let side = |step: f64| falls_to(profile, self.k, level, step, SHAPES);
        let step = error * within.sqrt();
        Interval { low: side(-step.min(0.9 * self.k)), high: side(step) }
    }

    /// The same of the scale, hours.
    fn scales(&self, within: f64) -> Interval {
        let top = self.likelihood.log_scale(self.k, self.nu);
        let profile = |log_scale: f64| {
            let k = self.likelihood.best_shape(log_scale, self.k)?;
            let at = self.likelihood.at(k, self.likelihood.nu(k, log_scale));
            // ∂ν/∂ln λ = k at a given shape.
            Some((at.value, k * at.nu))
        };
        let error = (-(self.at.nunu - self.at.knu * self.at.knu / self.at.kk)).recip().sqrt() / self.k;
        let level = self.at.value - within / 2.0;
        let bounds = (top - 60.0, top + 60.0);
        let side = |step: f64| falls_to(profile, top, level, step, bounds).map(f64::exp);
        let step = (error * within.sqrt()).min(20.0);
        Interval { low: side(-step), high: side(step) }
    }
}
