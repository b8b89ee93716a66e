//! What the points of the lists are worth: how often something is found at each.

use super::cell::Cell;
use super::hurry::median;
use super::tally::Tally;
use crate::reliability::{Z_95, wilson};

/// Of fewer looks than this nothing is said: with none found in 30 it may still be one in ten.
const LOOKS_LEAST: u32 = 30;
/// Found wrong in more looks than this, at the lower end of its interval, is often. Our choice.
const OFTEN: f64 = 0.03;
/// On one machine alone it is that machine. Our choice.
const MACHINES_LEAST: usize = 2;

/// What a point's looks come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WorthSort {
    /// Too few looks to say.
    Few,
    /// Nothing was ever found.
    Never,
    /// Found wrong often, on several machines.
    Often,
    /// Found wrong now and then.
    Plain,
}

/// One point's worth.
#[derive(Clone, Debug, PartialEq)]
pub struct Worth {
    /// The point.
    pub point: usize,
    /// Times looked at.
    pub looks: u32,
    /// Times found to be watched, what stays open once.
    pub watch: u32,
    /// Times found unserviceable, what stays open once.
    pub unserviceable: u32,
    /// Machines at which something was found.
    pub machines: usize,
    /// Share of looks that found something, 0 to 1.
    pub share: f64,
    /// Its interval of 95 % (Wilson).
    pub low: f64,
    /// See `low`.
    pub high: f64,
    /// Middle time on it.
    pub seconds: Option<f64>,
    /// Share hurried, 0 to 1.
    pub hurried: f64,
    /// What that comes to.
    pub sort: WorthSort,
}

impl Worth {
    /// Where nothing was found in n looks, at most so large a share of looks would find something, with
    /// 95 %: 3/n, since (1 − p)ⁿ ≥ 0.05 gives p ≤ 1 − 0.05^(1/n) < 3/n (the rule of three; Hanley &
    /// Lippman-Hand, JAMA 249 (1983) 1743–1745; from memory).
    pub fn at_most(&self) -> f64 {
        (3.0 / f64::from(self.looks.max(1))).min(1.0)
    }
}

impl Tally {
    /// Every point that was looked at.
    pub fn worth(&self) -> Vec<Worth> {
        let points = self.by_point();
        let worth = points.iter().map(|(point, cells)| {
            let sum = |count: fn(&Cell) -> u32| cells.iter().map(|(_, cell)| count(cell)).sum::<u32>();
            let (looks, found) = (sum(|cell| cell.looks), sum(Cell::found));
            let machines = self.machines.get(point).map_or(0, |machines| machines.len());
            let share = f64::from(found) / f64::from(looks.max(1));
            let (low, high) = wilson(share, f64::from(looks), Z_95);
            let seconds: Vec<f64> = cells.iter().flat_map(|(_, cell)| cell.seconds.iter().copied()).collect();
            Worth {
                point: *point,
                looks,
                watch: sum(|cell| cell.watch),
                unserviceable: sum(|cell| cell.unserviceable),
                machines,
                share,
                low,
                high,
                seconds: median(seconds),
                hurried: f64::from(sum(|cell| cell.hurried)) / f64::from(looks.max(1)),
                sort: match () {
                    () if looks < LOOKS_LEAST => WorthSort::Few,
                    () if found == 0 => WorthSort::Never,
                    () if low > OFTEN && machines >= MACHINES_LEAST => WorthSort::Often,
                    () => WorthSort::Plain,
                },
            }
        });
        worth.collect()
    }
}
