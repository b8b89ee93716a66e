//! What was read of a file.

use std::ops::Range;

use chrono::{DateTime, NaiveDate, Utc};

use super::mapping::Column;
use crate::units::Unit;

/// What a file holds, as read by a mapping.
#[derive(Clone, Debug, PartialEq)]
pub struct Log {
    /// When each row was logged: seconds from its run's beginning of counting.
    pub(super) times: Vec<f64>,
    /// The rows of each run, in the file's order: a clock that begins anew begins another run.
    pub(super) runs: Vec<Range<usize>>,
    /// The columns that were read.
    pub(super) tracks: Vec<Track>,
    /// Rows that were read whole.
    pub rows: u32,
    /// Rows of which something couldn't be read; the rest of such a row is used.
    pub unread: u32,
    /// The first of those.
    pub first_unread: Option<Unread>,
    /// When it begins, where the file says it.
    pub began: Option<Began>,
}

/// One column.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Track {
    pub column: Column,
    /// The most decimals that it is told with.
    pub decimals: u32,
    /// Row by row, in SI; none where nothing was measured, or it couldn't be read.
    pub values: Vec<Option<f64>>,
}

/// One value of a column, and when it was logged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Sample {
    /// Seconds.
    pub at: f64,
    /// SI.
    pub value: f64,
}

/// The first row that couldn't be read whole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    /// Its line in the file, from 1.
    pub line: u64,
    /// What is wrong with it.
    pub why: Why,
}

/// Why a row couldn't be read whole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// More or fewer fields than there are headings.
    Fields {
        /// In the row.
        has: usize,
        /// In the heading row.
        wants: usize,
    },
    /// No time, or one that isn't written as the mapping says.
    Time {
        /// What is there instead.
        cell: String,
    },
    /// A time that lies behind that of the rows around it, or far ahead.
    OutOfOrder {
        /// As it is written.
        cell: String,
    },
    /// No number.
    Number {
        /// What is there instead.
        cell: String,
        /// In which column.
        heading: String,
    },
    /// A number with another unit than the mapping says.
    Unit {
        /// As it is written.
        cell: String,
        /// In which column.
        heading: String,
        /// What the mapping says.
        unit: Unit,
    },
}

/// When a file begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Began {
    /// On this day, by the instrument's own clock.
    On(NaiveDate),
    /// At this moment: which day that is depends on where it was.
    At(DateTime<Utc>),
}

impl Log {
    /// What a column measured, run by run.
    pub(super) fn samples(&self, track: &Track) -> Vec<Vec<Sample>> {
        let one = |run: &Range<usize>| {
            let rows = self.times.iter().zip(&track.values).skip(run.start).take(run.len());
            rows.filter_map(|(at, value)| Some(Sample { at: *at, value: (*value)? })).collect()
        };
        self.runs.iter().map(one).collect()
    }

    /// How long each run lasts, seconds.
    pub(super) fn lengths(&self) -> impl Iterator<Item = f64> {
        self.runs.iter().filter_map(|run| {
            let last = run.end.checked_sub(1)?;
            Some(self.times.get(last)? - self.times.get(run.start)?)
        })
    }
}
