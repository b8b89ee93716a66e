//! Turnbull: how much of a type fails in which stretch of its life, with no form assumed.

use serde::{Deserialize, Serialize};

use super::finding::{Findings, Weighed};
use crate::told::{Told, TooLittle};

/// A share of all failures, somewhere in a stretch of time: where in it, the findings can't say.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Mass {
    /// After this time in service.
    pub after: f64,
    /// Up to and with this; none where it lies beyond all that was seen. As `after` when exact.
    pub by: Option<f64>,
    /// The share, of 1.
    pub mass: f64,
}

/// The estimate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Turnbull {
    /// Stretches that hold something, in order; they add up to 1.
    pub masses: Vec<Mass>,
    /// Logarithm of the findings' probability under it.
    pub log_likelihood: f64,
    /// By how much at most another estimate could do better than that.
    pub gap: f64,
}

/// How far from the greatest log-likelihood the search may end, per finding.
const ENOUGH: f64 = 1e-10;
/// The same where one curve among hundreds is made.
const ROUGHLY: f64 = 1e-5;
/// Rounds at most; what is reached by then stands with its gap.
const ROUNDS: usize = 20_000;
/// A share below which nothing is said to fail there.
const NOTHING: f64 = 1e-9;

/// The nonparametric maximum likelihood estimate from interval-censored findings.
///
/// Mass can only lie where a left end is followed by a right end with none between (Turnbull's
/// innermost intervals; left ends open, right ends closed, an exact finding is [t, t]). Found by
/// self-consistency steps p ← p·Σ wᵢ αᵢⱼ/(n·Σ αᵢₖpₖ), each with a step of iterative convex
/// minorants between, which makes exact zeros and converges in tens of rounds instead of
/// thousands. It ends when max ∂ℓ/∂pⱼ/n − 1 ≤ 10⁻¹⁰: the log-likelihood is then within
/// n·10⁻¹⁰ of the greatest (`gap`). Of exact and right-censored findings it is Kaplan–Meier.
///
/// Source: Turnbull, JRSS B 38 (1976) 290–295; Wellner & Zhan, JASA 92 (1997) 945–959;
/// Lindsay's bound (all from memory; figures checked against lifelines).
pub fn turnbull(findings: &Findings) -> Told<Turnbull> {
    let counted = findings.counted();
    if counted.failed == 0 {
        return Told::TooLittle(TooLittle::NothingFailed { has: counted.whole });
    }
    let (stretches, spans) = innermost(findings.weighed());
    let mut search = Search { spans, stretches: stretches.len(), all: counted.findings as f64 };
    let (masses, log_likelihood, gap) = search.run(ENOUGH);
    let told = |((after, by), mass): (&(f64, f64), f64)| Mass {
        after: *after,
        by: Some(*by).filter(|by| by.is_finite()),
        mass,
    };
    let masses = stretches.iter().zip(masses).map(told).filter(|one| one.mass > NOTHING).collect();
    Told::Told(Turnbull { masses, log_likelihood, gap })
}

/// The estimate from findings that were drawn: (after, by, mass), to as many digits as a curve among many
/// needs.
pub(super) fn masses_of(findings: &[Weighed]) -> Vec<(f64, f64, f64)> {
    let (stretches, spans) = innermost(findings);
    let all = findings.iter().map(|one| one.times).sum();
    let (masses, _, _) = Search { spans, stretches: stretches.len(), all }.run(ROUGHLY);
    stretches.into_iter().zip(masses).map(|((after, by), mass)| (after, by, mass)).collect()
}

/// A finding as the stretches that it allows, from `first` up to before `end`.
struct Span {
    first: usize,
    end: usize,
    times: f64,
}

/// The stretches, and each finding as a span of them.
fn innermost(findings: &[Weighed]) -> (Vec<(f64, f64)>, Vec<Span>) {
    // At one time an exact finding begins before right ends close, and these before left ends open.
    const BEGINS: u8 = 0;
    const CLOSES: u8 = 1;
    const OPENS: u8 = 2;
    let left = |after: f64, exact: bool| (after, if exact { BEGINS } else { OPENS });
    let mut ends: Vec<(f64, u8)> = Vec::new();
    for one in findings {
        ends.push(left(one.after, one.exact()));
        ends.push((one.by, CLOSES));
    }
    let by_time = |a: &(f64, u8), b: &(f64, u8)| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1));
    ends.sort_by(by_time);
    let inner = |pair: &[(f64, u8)]| match pair {
        [left, right] if left.1 != CLOSES && right.1 == CLOSES => Some((*left, *right)),
        _ => None,
    };
    let inner: Vec<_> = ends.windows(2).filter_map(inner).collect();
    let spans = findings.iter().map(|one| {
        let (from, to) = (left(one.after, one.exact()), (one.by, CLOSES));
        Span {
            first: inner.partition_point(|(left, _)| by_time(left, &from).is_lt()),
            end: inner.partition_point(|(_, right)| by_time(right, &to).is_le()),
            times: one.times,
        }
    });
    let spans = spans.collect();
    (inner.into_iter().map(|(left, right)| (left.0, right.0)).collect(), spans)
}

struct Search {
    spans: Vec<Span>,
    stretches: usize,
    all: f64,
}

impl Search {
    fn run(&mut self, enough: f64) -> (Vec<f64>, f64, f64) {
        let mut masses = vec![1.0 / self.stretches as f64; self.stretches];
        let mut gap = f64::INFINITY;
        for _ in 0..ROUNDS {
            let steps = self.steps(&masses);
            gap = self.all * (steps.iter().copied().fold(0.0, f64::max) - 1.0).max(0.0);
            if gap <= self.all * enough {
                break;
            }
            for (mass, step) in masses.iter_mut().zip(steps) {
                *mass *= step;
            }
            let total: f64 = masses.iter().sum();
            masses.iter_mut().for_each(|mass| *mass /= total);
            masses = self.minorant(masses);
        }
        let log_likelihood = self.log_likelihood(&sums(&masses));
        (masses, log_likelihood, gap)
    }

    /// Probability of each span, given running sums of the masses.
    fn probabilities<'a>(&'a self, sums: &'a [f64]) -> impl Iterator<Item = (&'a Span, f64)> {
        let at = |place: usize| sums.get(place).copied().unwrap_or(0.0);
        self.spans.iter().map(move |span| (span, at(span.end) - at(span.first)))
    }

    fn log_likelihood(&self, sums: &[f64]) -> f64 {
        let log = |(span, p): (&Span, f64)| if p > 0.0 { span.times * p.ln() } else { f64::NEG_INFINITY };
        self.probabilities(sums).map(log).sum()
    }

    /// ∂ℓ/∂pⱼ/n: what self-consistency multiplies each mass by.
    fn steps(&self, masses: &[f64]) -> Vec<f64> {
        let sums = sums(masses);
        let mut change = vec![0.0; self.stretches + 1];
        for (span, p) in self.probabilities(&sums) {
            add(&mut change, span.first, span.times / p);
            add(&mut change, span.end, -span.times / p);
        }
        let mut running = 0.0;
        let sum = |change: f64| {
            running += change;
            running / self.all
        };
        change.into_iter().take(self.stretches).map(sum).collect()
    }

    /// A step of the iterative convex minorant: Newton with the curvature's diagonal on the running
    /// sums, made to rise by pooling, and shortened until the likelihood grows.
    fn minorant(&self, masses: Vec<f64>) -> Vec<f64> {
        let before = sums(&masses);
        let mut slope = vec![0.0; self.stretches + 1];
        let mut curve = vec![0.0; self.stretches + 1];
        for (span, p) in self.probabilities(&before) {
            let (first, second) = (span.times / p, span.times / (p * p));
            add(&mut slope, span.end, first);
            add(&mut curve, span.end, second);
            add(&mut slope, span.first, -first);
            add(&mut curve, span.first, second);
        }
        // The sums at both ends are 0 and 1 and stay there.
        let inner = before.iter().zip(slope).zip(curve).skip(1).take(self.stretches - 1);
        let target = inner.map(|((sum, slope), curve)| {
            if curve > 0.0 && curve.is_finite() { (sum + slope / curve, curve) } else { (*sum, 1e-300) }
        });
        let mut wanted = vec![0.0];
        wanted.extend(pooled(target).into_iter().map(|sum| sum.clamp(0.0, 1.0)));
        wanted.push(1.0);
        let start = self.log_likelihood(&before);
        let mut share = 1.0;
        while share > 1e-3 {
            let trial: Vec<f64> = before.iter().zip(&wanted).map(|(b, w)| b + share * (w - b)).collect();
            if self.log_likelihood(&trial) > start {
                let mass = |pair: &[f64]| if let [a, b] = pair { (b - a).max(0.0) } else { 0.0 };
                return trial.windows(2).map(mass).collect();
            }
            share /= 2.0;
        }
        masses
    }
}

/// 0, p₁, p₁ + p₂, …
fn sums(masses: &[f64]) -> Vec<f64> {
    let mut sum = 0.0;
    let running = masses.iter().map(|mass| {
        sum += mass;
        sum
    });
    std::iter::once(0.0).chain(running).collect()
}

fn add(to: &mut [f64], at: usize, what: f64) {
    if let Some(place) = to.get_mut(at) {
        *place += what;
    }
}

/// The rising sequence nearest to values with weights (pool adjacent violators).
fn pooled(values: impl Iterator<Item = (f64, f64)>) -> Vec<f64> {
    let mut blocks: Vec<(f64, f64, usize)> = Vec::new();
    for (value, weight) in values {
        let mut block = (value, weight, 1);
        while let Some(last) = blocks.pop_if(|last| last.0 >= block.0) {
            let weight = last.1 + block.1;
            block = ((last.0 * last.1 + block.0 * block.1) / weight, weight, last.2 + block.2);
        }
        blocks.push(block);
    }
    blocks.into_iter().flat_map(|(value, _, count)| std::iter::repeat_n(value, count)).collect()
}
