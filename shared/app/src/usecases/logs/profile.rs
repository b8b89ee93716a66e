//! What a log's columns look like, before anybody has said what they hold.

use witnessmark_core::runlog::{day_in, number};

use super::layout::Laid;
use crate::Fault;

/// Values of a column that are shown.
const SHOWN: usize = 5;
/// A column is of a kind if this share of its cells is.
const MOSTLY: f64 = 0.9;

/// One column.
#[derive(Default)]
pub(super) struct Profile {
    /// Its first values.
    pub sample: Vec<String>,
    /// Cells that hold something.
    filled: usize,
    clocks: usize,
    moments: usize,
    numbers: Vec<f64>,
    decimals: bool,
}

/// The columns, in the order of the headings.
pub(super) fn profiles(laid: &Laid<'_>) -> Result<Vec<Profile>, Fault> {
    let mut profiles: Vec<Profile> = laid.headings.iter().map(|_| Profile::default()).collect();
    let decimal = laid.decimal.unwrap_or('.');
    laid.rows(|_, cells| {
        for (profile, cell) in profiles.iter_mut().zip(cells) {
            profile.take(cell.trim(), decimal);
        }
    })?;
    Ok(profiles)
}

/// Whether a cell is a clock's: digits with one or two colons between them.
pub(super) fn is_clock(cell: &str) -> bool {
    let digits = cell.trim_end_matches(|c: char| c.is_ascii_alphabetic() || c == ' ' || c == '.');
    let counted =
        |part: &str| !part.is_empty() && part.chars().all(|c| c.is_ascii_digit() || ".,".contains(c));
    (2..=3).contains(&digits.split(':').count()) && digits.split(':').all(counted)
}

impl Profile {
    fn take(&mut self, cell: &str, decimal: char) {
        if cell.is_empty() {
            return;
        }
        if self.sample.len() < SHOWN {
            self.sample.push(cell.to_owned());
        }
        self.filled += 1;
        if let Some(number) = number(cell, decimal) {
            self.decimals |= number.decimals > 0;
            self.numbers.push(number.value);
        } else if is_clock(cell) {
            self.clocks += 1;
        } else if cell.contains(':') && begins_with_day(cell) {
            self.moments += 1;
        }
    }

    fn mostly(&self, cells: usize) -> bool {
        self.filled > 0 && cells as f64 >= self.filled as f64 * MOSTLY
    }

    /// Whether its cells are numbers.
    pub fn is_numbers(&self) -> bool {
        self.mostly(self.numbers.len())
    }

    /// Whether any of its cells is a number.
    pub fn has_numbers(&self) -> bool {
        !self.numbers.is_empty()
    }

    /// Whether its cells are times on a clock.
    pub fn is_clock(&self) -> bool {
        self.mostly(self.clocks)
    }

    /// Whether its cells are days with a time.
    pub fn is_moments(&self) -> bool {
        self.mostly(self.moments)
    }

    /// Whether its numbers rise with hardly a fall, as time does.
    pub fn rises(&self) -> bool {
        let steps = || self.numbers.windows(2).filter_map(|pair| Some(pair.last()? - pair.first()?));
        let (up, down) =
            (steps().filter(|step| *step > 0.0).count(), steps().filter(|step| *step < 0.0).count());
        self.is_numbers() && up > 0 && down * 100 <= up
    }

    /// The middle one of the steps from row to row.
    pub fn step(&self) -> Option<f64> {
        let mut steps: Vec<f64> = self
            .numbers
            .windows(2)
            .filter_map(|pair| Some(pair.last()? - pair.first()?))
            .filter(|step| *step > 0.0)
            .collect();
        let middle = steps.len() / 2;
        (!steps.is_empty()).then(|| *steps.select_nth_unstable_by(middle, f64::total_cmp).1)
    }

    /// A value that nine in ten don't exceed: high, and not a sensor's stop.
    pub fn high(&self) -> Option<f64> {
        let mut values = self.numbers.clone();
        let place = values.len() * 9 / 10;
        (!values.is_empty()).then(|| *values.select_nth_unstable_by(place, f64::total_cmp).1)
    }

    /// Whether its numbers have decimals.
    pub fn has_decimals(&self) -> bool {
        self.decimals
    }
}

/// Whether a cell begins with a day, sure or not.
fn begins_with_day(cell: &str) -> bool {
    let day = cell.split([' ', 'T']).next().unwrap_or_default();
    let parts = ['-', '/', '.'].iter().any(|mark| day.matches(*mark).count() == 2);
    day_in(cell).is_some() || (parts && day.chars().all(|c| c.is_ascii_digit() || "-/.".contains(c)))
}
