//! How long one may go between inspections.

use serde::{Deserialize, Serialize};

use super::fault::LifeFault;
use super::finding::Findings;
use super::life::FEWEST_FAILED;
use super::optimum::falls_to;
use super::weibull::{Fitted, Interval, fitted};
use crate::told::{Told, TooLittle};

/// χ² of one degree of freedom, 90 %: 95 % on the careful side alone.
const ONE_SIDED_95: f64 = 2.705_543_454_095_414;

/// What is asked.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Wanted {
    /// The chance of an unseen failure since the last clean inspection that is borne, 0 to 1.
    pub chance: f64,
    /// Time in service of the part at its last clean inspection; without it, whatever age up to the
    /// oldest in the findings is worst.
    pub age: Option<f64>,
    /// The interval in force, hours.
    pub in_force: Option<f64>,
}

/// An interval, and what it rests on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Inspect {
    /// Inspect every so many hours: never more than the interval in force.
    pub every: f64,
    /// Whether that is less than what is in force.
    pub shortens: bool,
    /// What the fit allows at its lower 95 % bound, hours.
    pub allowed: f64,
    /// What it would allow if the fit were the truth, hours.
    pub at_best: f64,
    /// The age at which this holds.
    pub age: f64,
    /// How many failures it rests on.
    pub failed: usize,
}

/// The longest interval that keeps the chance of an unseen failure under the wanted figure.
///
/// P(fails in τ | whole at t) = 1 − exp(H(t) − H(t+τ)) ≤ chance gives
/// τ = λ·(H(t) − ln(1 − chance))^(1/k) − t. `allowed` is the least τ over all shapes and scales with
/// 2·(ℓ max − ℓ) ≤ χ²₁(90 %) = 2.71: the lower end of a one-sided 95 % profile-likelihood interval.
/// It is about parts that fail as these did, and nothing else.
///
/// # Errors
/// [`LifeFault`].
pub fn inspect_every(findings: &Findings, wanted: &Wanted) -> Result<Told<Inspect>, LifeFault> {
    let impossible = |what, must| Err(LifeFault::Impossible { what, must });
    if !(wanted.chance > 0.0 && wanted.chance < 1.0) {
        return impossible("the chance that is borne", "more than 0 and less than 1, such as 0.01");
    }
    if wanted.age.is_some_and(|age| !age.is_finite() || age < 0.0) {
        return impossible("the age", "0 hours or more");
    }
    if wanted.in_force.is_some_and(|hours| !hours.is_finite() || hours <= 0.0) {
        return impossible("the interval in force", "more than 0 hours");
    }
    let failed = findings.counted().failed;
    if failed > 0 && failed < FEWEST_FAILED {
        return Ok(Told::TooLittle(TooLittle::Few { has: failed, needs: FEWEST_FAILED }));
    }
    let fit = match fitted(findings)? {
        Told::Told(fit) => fit,
        Told::TooLittle(why) => return Ok(Told::TooLittle(why)),
    };
    let Interval { low: Some(low), high: Some(high) } = fit.shapes(ONE_SIDED_95) else {
        return Ok(Told::TooLittle(TooLittle::AnySpread));
    };
    // The rate of failing rises or falls all the way: the worst age is one of the two ends.
    let ages = match wanted.age {
        Some(age) => vec![age],
        None if low >= 1.0 => vec![findings.oldest()],
        None if high <= 1.0 => vec![0.0],
        None => vec![0.0, findings.oldest()],
    };
    let careful = |age: f64| fit.least((low, high), age, wanted.chance).map(|allowed| (allowed, age));
    let allowed: Option<Vec<(f64, f64)>> = ages.into_iter().map(careful).collect();
    let worst = allowed.and_then(|all| all.into_iter().min_by(|a, b| a.0.total_cmp(&b.0)));
    let Some((allowed, age)) = worst.filter(|(allowed, _)| allowed.is_finite()) else {
        return Err(LifeFault::OutOfReach);
    };
    let at_best = span(fit.k, fit.likelihood.log_scale(fit.k, fit.nu), age, wanted.chance);
    let every = wanted.in_force.map_or(allowed, |in_force| allowed.min(in_force));
    let shortens = wanted.in_force.is_some_and(|in_force| every < in_force);
    Ok(Told::Told(Inspect { every, shortens, allowed, at_best, age, failed }))
}

/// τ, without taking two large numbers from one another.
fn span(k: f64, log_scale: f64, age: f64, chance: f64) -> f64 {
    let hazard = -(-chance).ln_1p();
    if age <= 0.0 {
        return (log_scale + hazard.ln() / k).exp();
    }
    let so_far = (k * (age.ln() - log_scale)).exp();
    age * ((hazard / so_far).ln_1p() / k).exp_m1()
}

impl Fitted {
    /// The least span on the level line, over the shapes that it reaches.
    fn least(&self, (low, high): (f64, f64), age: f64, chance: f64) -> Option<f64> {
        let level = self.at.value - ONE_SIDED_95 / 2.0;
        let along = -self.at.knu / self.at.nunu;
        let error = (-self.at.nunu).recip().sqrt();
        let at = |k: f64| {
            let top = self.likelihood.best_nu(k, self.nu + along * (k - self.k))?;
            let summit = self.likelihood.at(k, top).value;
            let value = |nu: f64| {
                let at = self.likelihood.at(k, nu);
                Some((at.value, at.nu))
            };
            // A smaller scale at the same shape: less time.
            let drop = (2.0 * (summit - level)).max(0.0).sqrt();
            let nu = if drop > 1e-6 {
                falls_to(value, top, level, -error * drop, (f64::NEG_INFINITY, f64::INFINITY))?
            } else {
                top
            };
            Some(span(k, self.likelihood.log_scale(k, nu), age, chance))
        };
        // Golden section.
        const PART: f64 = 0.618_033_988_749_894_9;
        let (mut low, mut high) = (low, high);
        let (mut left, mut right) = (high - PART * (high - low), low + PART * (high - low));
        let (mut at_left, mut at_right) = (at(left)?, at(right)?);
        let mut least = at(low)?.min(at(high)?).min(at_left).min(at_right);
        while (high - low) > 1e-5 * self.k {
            if at_left < at_right {
                (high, right, at_right) = (right, left, at_left);
                left = high - PART * (high - low);
                at_left = at(left)?;
            } else {
                (low, left, at_left) = (left, right, at_right);
                right = low + PART * (high - low);
                at_right = at(right)?;
            }
            least = least.min(at_left).min(at_right);
        }
        Some(least)
    }
}
