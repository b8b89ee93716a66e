//! Readings in order of time in service.

use serde::{Deserialize, Serialize};

use super::fault::TrendFault;

/// One reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Time in service at which it was taken, hours.
    pub at: f64,
    /// What was read, in any one unit.
    pub value: f64,
}

/// Readings, checked and in order. Several may share a time.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// In order of `at`, then of `value`.
    readings: Vec<Reading>,
}

/// Pairs of so many readings are still counted exactly in 53 bits, with room for S's variance.
const MOST: usize = 1_000_000;

impl Series {
    /// From readings in any order.
    ///
    /// # Errors
    /// [`TrendFault::NotFinite`], [`TrendFault::Negative`] (numbered from 1, as given),
    /// [`TrendFault::TooMany`].
    pub fn new(mut readings: Vec<Reading>) -> Result<Self, TrendFault> {
        if readings.len() > MOST {
            return Err(TrendFault::TooMany(readings.len()));
        }
        for (before, reading) in readings.iter().enumerate() {
            if !reading.at.is_finite() || !reading.value.is_finite() {
                return Err(TrendFault::NotFinite(before + 1));
            }
            if reading.at < 0.0 {
                return Err(TrendFault::Negative(before + 1));
            }
        }
        for reading in &mut readings {
            // -0 is 0: otherwise the two would count as different.
            reading.at += 0.0;
            reading.value += 0.0;
        }
        readings.sort_by(|a, b| a.at.total_cmp(&b.at).then(a.value.total_cmp(&b.value)));
        Ok(Self { readings })
    }

    /// From times and values, in the same order.
    ///
    /// # Errors
    /// As [`Series::new`], and [`TrendFault::Unpaired`].
    pub fn paired(x: &[f64], y: &[f64]) -> Result<Self, TrendFault> {
        if x.len() != y.len() {
            return Err(TrendFault::Unpaired { x: x.len(), y: y.len() });
        }
        Self::new(x.iter().zip(y).map(|(at, value)| Reading { at: *at, value: *value }).collect())
    }

    /// In order.
    pub fn readings(&self) -> &[Reading] {
        &self.readings
    }

    /// How many.
    pub fn len(&self) -> usize {
        self.readings.len()
    }

    /// None at all.
    pub fn is_empty(&self) -> bool {
        self.readings.is_empty()
    }

    /// Times in order.
    pub(super) fn times(&self) -> Vec<f64> {
        self.readings.iter().map(|reading| reading.at).collect()
    }

    /// Values in order of time.
    pub(super) fn values(&self) -> Vec<f64> {
        self.readings.iter().map(|reading| reading.value).collect()
    }
}
