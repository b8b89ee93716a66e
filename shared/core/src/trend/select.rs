//! The k-th smallest of all slopes between two readings, without making them all.
//!
//! Of n readings there are n(n−1)/2 slopes: 660 million for 36 500. But how many lie below some
//! b is the number of inversions among y − b·x, which merge sort counts in O(n log n). So samples
//! narrow the slopes down to some 16·n, which are then listed and sorted.
//!
//! Source: Matoušek, Information Processing Letters 39 (1991) 183–187, for the idea (from memory).
//! The samples come from a fixed seed: the same readings give the same answer everywhere. Up to
//! [`ALL_AT_ONCE`] readings all slopes are made; beyond, the answer is right within rounding.

use super::series::Reading;
use crate::chance::Chance;

/// Up to so many readings it is simplest to make all slopes.
const ALL_AT_ONCE: usize = 512;
/// Pairs drawn per sample: as many for each reading, but no more than that in all.
const DRAWN_EACH: usize = 64;
const DRAWN: usize = 1 << 18;
/// Narrowing steps before bisection must have come to rounding.
const STEPS: usize = 400;

/// How many pairs fall: earlier higher than later. Equal times must stand in order of value.
pub(super) fn discordant(values: &[f64]) -> u64 {
    let mut count = 0;
    merge_sort(&mut values.to_vec(), &mut Vec::with_capacity(values.len()), &mut |left, _| {
        count += left.len() as u64;
    });
    count
}

/// Sorts; tells at each element what stood before it and is greater.
fn merge_sort<T: Copy + PartialOrd>(slice: &mut [T], spare: &mut Vec<T>, told: &mut impl FnMut(&[T], T)) {
    if slice.len() < 2 {
        return;
    }
    let (left, right) = slice.split_at_mut(slice.len() / 2);
    merge_sort(left, spare, told);
    merge_sort(right, spare, told);
    spare.clear();
    let (mut l, mut r): (&[T], &[T]) = (left, right);
    while let ([a, more_l @ ..], [b, more_r @ ..]) = (l, r) {
        if b < a {
            told(l, *b);
            spare.push(*b);
            r = more_r;
        } else {
            spare.push(*a);
            l = more_l;
        }
    }
    spare.extend_from_slice(l);
    spare.extend_from_slice(r);
    slice.copy_from_slice(spare);
}

/// Slopes between every two readings of different times.
pub(super) struct Slopes<'a> {
    readings: &'a [Reading],
    /// All of them, where they are few; else none, and they are counted.
    made: Option<Vec<f64>>,
    total: u64,
}

fn slope(a: &Reading, b: &Reading) -> f64 {
    (b.value - a.value) / (b.at - a.at)
}

impl<'a> Slopes<'a> {
    /// Of readings in order of time, then value.
    pub(super) fn new(readings: &'a [Reading]) -> Self {
        Self::with(readings, ALL_AT_ONCE)
    }

    fn with(readings: &'a [Reading], all_at_once: usize) -> Self {
        let pairs = |n: usize| (n as u64) * (n as u64).saturating_sub(1) / 2;
        let tied: u64 = readings.chunk_by(|a, b| a.at == b.at).map(|run| pairs(run.len())).sum();
        let total = pairs(readings.len()) - tied;
        let made = (readings.len() <= all_at_once).then(|| {
            let later = |(before, a): (usize, &'a Reading)| {
                readings.iter().skip(before + 1).filter(|b| b.at > a.at).map(|b| slope(a, b))
            };
            readings.iter().enumerate().flat_map(later).collect()
        });
        Self { readings, made, total }
    }

    /// How many there are.
    pub(super) fn len(&self) -> u64 {
        self.total
    }

    /// The one with `rank` below it, counted from 0. Not a number where there is none.
    pub(super) fn at(&mut self, rank: u64) -> f64 {
        if rank >= self.total {
            return f64::NAN;
        }
        match &mut self.made {
            Some(made) => {
                let (_, found, _) = made.select_nth_unstable_by(rank as usize, f64::total_cmp);
                *found
            }
            None => self.narrowed(rank),
        }
    }

    fn keys(&self, b: f64) -> Vec<f64> {
        self.readings.iter().map(|reading| reading.value - b * reading.at).collect()
    }

    /// How many lie below `b`.
    fn below(&self, b: f64) -> u64 {
        match b {
            f64::NEG_INFINITY => 0,
            f64::INFINITY => self.total,
            b => discordant(&self.keys(b)),
        }
    }

    fn narrowed(&self, rank: u64) -> f64 {
        let list = 16 * self.readings.len() as u64;
        let mut span = Span { low: f64::NEG_INFINITY, high: f64::INFINITY, under: 0, upto: self.total };
        let mut chance = Chance::new(0x5eed);
        let mut sampling = true;
        for _ in 0..STEPS {
            if span.upto - span.under <= list {
                break;
            }
            let sample = if sampling { self.sample(&span, &mut chance) } else { Vec::new() };
            let share = (rank - span.under) as f64 / (span.upto - span.under) as f64;
            let n = sample.len() as f64;
            let (at, margin) = (n * share, 3.0 * (n * share * (1.0 - share)).sqrt() + 2.0);
            let pick = |at: f64| sample.get(at.max(0.0) as usize).copied().filter(|_| at >= 0.0);
            if let Some(middle) = pick(at).filter(|middle| self.is_shared(*middle, rank)) {
                return middle;
            }
            let (low, high) = (pick(at - margin), pick(at + margin));
            let before = (span.low, span.high);
            for end in [low, high].into_iter().flatten() {
                self.cut(&mut span, end, rank);
            }
            sampling = sampling && before != (span.low, span.high);
            if !sampling {
                let middle = span.low / 2.0 + span.high / 2.0;
                if !middle.is_finite() || middle <= span.low || middle >= span.high {
                    return span.low.max(f64::MIN);
                }
                self.cut(&mut span, middle, rank);
            }
        }
        let mut listed = self.listed(&span);
        let last = listed.len().saturating_sub(1);
        let at = ((rank - span.under) as usize).min(last);
        listed.sort_by(f64::total_cmp);
        listed.get(at).copied().unwrap_or(span.low)
    }

    /// Takes `end` as the new end on the side where the wanted slope isn't.
    fn cut(&self, span: &mut Span, end: f64, rank: u64) {
        if end <= span.low || end >= span.high {
            return;
        }
        let under = self.below(end).clamp(span.under, span.upto);
        if under <= rank {
            (span.low, span.under) = (end, under);
        } else {
            (span.high, span.upto) = (end, under);
        }
    }

    /// Whether so many pairs share this slope that the wanted one is among them: coarse readings
    /// do that, and no narrowing parts them.
    fn is_shared(&self, middle: f64, rank: u64) -> bool {
        let most = |f: fn(&Reading) -> f64| self.readings.iter().map(f).fold(0.0f64, |a, b| a.max(b.abs()));
        let (y, x) = (most(|reading| reading.value), most(|reading| reading.at));
        let rounding = 1e-13 * (middle.abs() + if x > 0.0 { y / x } else { 0.0 });
        self.below(middle - rounding) <= rank && rank < self.below(middle + rounding)
    }

    /// Some slopes within the span, sorted.
    fn sample(&self, span: &Span, chance: &mut Chance) -> Vec<f64> {
        let n = self.readings.len();
        let drawn = DRAWN.min(DRAWN_EACH * self.readings.len());
        let mut some: Vec<f64> = (0..drawn)
            .filter_map(|_| {
                let (a, b) = (chance.below(n), chance.below(n));
                let (a, b) = (self.readings.get(a.min(b))?, self.readings.get(a.max(b))?);
                (a.at < b.at).then(|| slope(a, b))
            })
            .filter(|slope| *slope > span.low && *slope < span.high)
            .collect();
        some.sort_by(f64::total_cmp);
        some
    }

    /// All slopes within the span.
    fn listed(&self, span: &Span) -> Vec<f64> {
        // In the order at its low end, with their places at its high end: each pair that changes
        // places between the two has its slope there.
        let at_high = self.order(span.high);
        let mut place = vec![0u32; at_high.len()];
        for (at, index) in at_high.iter().enumerate() {
            if let Some(place) = place.get_mut(*index as usize) {
                *place = at as u32;
            }
        }
        let placed = |index: u32| place.get(index as usize).map(|place| (*place, index));
        let mut sequence: Vec<(u32, u32)> = self.order(span.low).into_iter().filter_map(placed).collect();
        let mut found = Vec::new();
        merge_sort(&mut sequence, &mut Vec::new(), &mut |left, (_, b)| {
            for (_, a) in left {
                let pair = (self.readings.get(*a as usize), self.readings.get(b as usize));
                if let (Some(a), Some(b)) = pair
                    && a.at < b.at
                {
                    found.push(slope(a, b));
                }
            }
        });
        found
    }

    /// Readings in order of y − b·x.
    fn order(&self, b: f64) -> Vec<u32> {
        let mut order: Vec<u32> = (0..self.readings.len() as u32).collect();
        let keys: Vec<f64> = match b {
            f64::NEG_INFINITY => return order,
            f64::INFINITY => self.readings.iter().map(|reading| -reading.at).collect(),
            b => self.keys(b),
        };
        let key = |index: &u32| keys.get(*index as usize).copied().unwrap_or(0.0);
        order.sort_by(|a, b| key(a).total_cmp(&key(b)).then(a.cmp(b)));
        order
    }
}

/// The wanted slope is at least `low` and below `high`; `under` lie below the first, `upto` below
/// the second.
struct Span {
    low: f64,
    high: f64,
    under: u64,
    upto: u64,
}

#[cfg(test)]
mod tests {
    use super::super::series::Series;
    use super::*;

    /// Counting against making them all, where both can.
    fn agree(points: Vec<(f64, f64)>, within: f64) {
        let readings = points.into_iter().map(|(at, value)| Reading { at, value }).collect();
        let series = Series::new(readings).unwrap();
        let mut made = Slopes::with(series.readings(), usize::MAX);
        let mut counted = Slopes::with(series.readings(), 0);
        assert_eq!(made.len(), counted.len());
        assert_eq!(made.made.as_ref().unwrap().len() as u64, made.len());
        let n = made.len();
        for rank in [0, 1, n / 3, (n - 1) / 2, n / 2, n * 9 / 10, n - 1] {
            let (a, b) = (made.at(rank), counted.at(rank));
            assert!((a - b).abs() <= within * a.abs().max(1e-3), "rank {rank} of {n}: {a} made, {b} counted");
        }
        assert!(made.at(n).is_nan() && counted.at(n).is_nan());
    }

    fn noise(chance: &mut Chance) -> f64 {
        (0..12).map(|_| chance.below(1 << 20) as f64 / f64::from(1 << 20)).sum::<f64>() - 6.0
    }

    #[test]
    fn counting_finds_what_making_them_all_finds() {
        let mut chance = Chance::new(1);
        let scattered = |n: u64, chance: &mut Chance| -> Vec<(f64, f64)> {
            (0..n).map(|at| (at as f64 * 0.7, 180.0 + 0.01 * at as f64 + noise(chance))).collect()
        };
        for n in [40, 300, 900] {
            agree(scattered(n, &mut chance), 1e-12);
        }
        // Times that are shared, values in whole degrees, and in a handful of grades.
        let coarse = |n: u64, step: f64, chance: &mut Chance| {
            let value = |chance: &mut Chance| ((150.0 + 3.0 * noise(chance)) / step).round() * step;
            (0..n).map(|at| ((at / 3) as f64, value(chance))).collect::<Vec<_>>()
        };
        agree(coarse(900, 1.0, &mut chance), 1e-12);
        agree(coarse(900, 5.0, &mut chance), 1e-12);
        // On a line, and none on it.
        agree((0..700).map(|at| (at as f64 * 0.1, 20.0 + at as f64 * 0.03)).collect(), 1e-11);
        agree((0..700).map(|at| (at as f64, f64::from(at % 2))).collect(), 1e-12);
    }

    #[test]
    fn discordant_pairs_by_hand() {
        assert_eq!(discordant(&[3.0, 1.0, 2.0]), 2);
        assert_eq!(discordant(&[1.0, 1.0, 1.0]), 0);
        assert_eq!(discordant(&[4.0, 3.0, 2.0, 1.0]), 6);
    }
}
