//! How far Turnbull's curve may be off: the same findings drawn again and again.

use super::finding::{Findings, Weighed};
use super::turnbull::masses_of;
use super::wilson::{Z_95, wilson};
use crate::chance::Chance;

/// How often the findings are drawn anew. Our choice: what is told moves by about a percent with another
/// seed, and a big fleet is reckoned in a fraction of a second.
pub const RESAMPLES: usize = 200;
/// At most so many ages are told apart, so that time doesn't grow with the fleet.
const AGES: usize = 96;
/// Where of the sorted curves the interval ends.
const ENDS: (f64, f64) = (0.025, 0.975);

/// Intervals of 95 % of the share still whole, over stretches in which the curve stays level.
///
/// The findings are drawn with replacement [`RESAMPLES`] times and Turnbull's curve is made of each
/// (percentile bootstrap; Efron & Tibshirani, An Introduction to the Bootstrap, 1993, chapter 13; from
/// memory). Where a drawn curve doesn't say when in a stretch it falls, the lower end takes it as fallen
/// and the upper end as not. A few findings drawn anew know nothing of what never happened in them:
/// so an end is nowhere nearer than Wilson's interval of those whose state at that age is known.
///
/// With more than 96 ages in the findings these are rounded outward to as many: what was known between
/// two ages is then known between two that lie further apart.
pub(super) fn intervals(findings: &Findings, stretches: &[(f64, f64, f64)]) -> Vec<(f64, f64)> {
    let ages = ages(findings, stretches);
    let coarse = coarse(findings, &ages);
    let draws = index(&coarse);
    // The same interval for everybody.
    let mut random = Chance::new(0x5eed);
    let mut lows: Vec<Vec<f64>> = stretches.iter().map(|_| Vec::with_capacity(RESAMPLES)).collect();
    let mut highs = lows.clone();
    for _ in 0..RESAMPLES {
        let drawn = drawn(&coarse, &draws, &mut random);
        let masses = masses_of(&drawn);
        for ((stretch, low), high) in stretches.iter().zip(&mut lows).zip(&mut highs) {
            let (from, upto, _) = *stretch;
            // Exact ones have fallen at their own time.
            let fallen = |one: &&(f64, f64, f64)| one.0 < upto || one.1 <= upto;
            let not = |one: &&(f64, f64, f64)| one.1 > from;
            low.push(1.0 - masses.iter().filter(fallen).map(|one| one.2).sum::<f64>());
            high.push(masses.iter().filter(not).map(|one| one.2).sum::<f64>());
        }
    }
    let ends = stretches.iter().zip(lows).zip(highs).map(|((stretch, lows), highs)| {
        let (from, upto, share) = *stretch;
        let low = quantile(lows, ENDS.0).min(wilson(share, known_at(findings, upto), Z_95).0);
        let high = quantile(highs, ENDS.1).max(wilson(share, known_at(findings, from), Z_95).1);
        (low.clamp(0.0, share), high.clamp(share, 1.0))
    });
    ends.collect()
}

/// How many findings tell whether they were whole at an age.
fn known_at(findings: &Findings, age: f64) -> f64 {
    let tells = |one: &&Weighed| one.by <= age || one.after >= age;
    findings.weighed().iter().filter(tells).map(|one| one.times).sum()
}

/// The ages that are told apart: all, or those at which the curve changes and, between them, as many
/// findings each.
fn ages(findings: &Findings, stretches: &[(f64, f64, f64)]) -> Vec<f64> {
    let ends = findings.weighed().iter().flat_map(|one| [one.after, one.by]);
    let mut all: Vec<f64> = ends.filter(|age| age.is_finite()).collect();
    all.sort_by(f64::total_cmp);
    let mut apart = all.clone();
    apart.dedup();
    if apart.len() <= AGES {
        return apart;
    }
    let steps = stretches.iter().flat_map(|(from, upto, _)| [*from, *upto]).filter(|age| age.is_finite());
    let mut kept: Vec<f64> = steps.chain(all.first().copied()).chain(all.last().copied()).collect();
    kept.sort_by(f64::total_cmp);
    kept.dedup();
    let every = all.len() / AGES.saturating_sub(kept.len()).max(8);
    kept.extend(all.iter().step_by(every.max(1)));
    kept.sort_by(f64::total_cmp);
    kept.dedup();
    kept
}

/// The findings rounded outward to these ages.
fn coarse(findings: &Findings, ages: &[f64]) -> Vec<Weighed> {
    let down = |age: f64| ages.get(ages.partition_point(|at| *at <= age).saturating_sub(1)).copied();
    let up = |age: f64| ages.get(ages.partition_point(|at| *at < age)).copied();
    let one = |one: &Weighed| Weighed {
        after: down(one.after).unwrap_or(0.0).min(one.after),
        by: if one.failed() { up(one.by).unwrap_or(one.by) } else { f64::INFINITY },
        times: one.times,
    };
    let mut all: Vec<Weighed> = findings.weighed().iter().map(one).collect();
    all.sort_by(|a, b| a.after.total_cmp(&b.after).then(a.by.total_cmp(&b.by)));
    let same = |a: &Weighed, b: &Weighed| a.after == b.after && a.by == b.by;
    let together = all.chunk_by(same).filter_map(|run| {
        let first = run.first()?;
        Some(Weighed { times: run.iter().map(|one| one.times).sum(), ..*first })
    });
    together.collect()
}

/// For each finding, which of the different ones it is.
fn index(coarse: &[Weighed]) -> Vec<u32> {
    let one = |(place, one): (usize, &Weighed)| {
        std::iter::repeat_n(u32::try_from(place).unwrap_or(u32::MAX), one.times as usize)
    };
    coarse.iter().enumerate().flat_map(one).collect()
}

fn drawn(coarse: &[Weighed], draws: &[u32], random: &mut Chance) -> Vec<Weighed> {
    let mut times = vec![0.0; coarse.len()];
    for _ in 0..draws.len() {
        let place = draws.get(random.below(draws.len())).copied().unwrap_or(0);
        if let Some(times) = times.get_mut(place as usize) {
            *times += 1.0;
        }
    }
    let drawn = coarse.iter().zip(times).map(|(one, times)| Weighed { times, ..*one });
    drawn.filter(|one| one.times > 0.0).collect()
}

/// The value below which so much lies, between the two next to it.
fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    let at = share * (values.len().saturating_sub(1)) as f64;
    let (low, part) = (at.floor() as usize, at.fract());
    let value = |place: usize| values.get(place).or(values.last()).copied().unwrap_or(f64::NAN);
    value(low) * (1.0 - part) + value(low + 1) * part
}
