//! What records say of a file that an instrument logged.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::Digest;
use crate::runlog::Mapping;
use crate::units::Quantity;

/// What one file of an engine's temperatures and speeds told. The file itself stays with its
/// owner: whoever has it can read it again by the mapping, and know it by its digest.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReadingsTaken {
    /// SHA-256 of the file's text in UTF-8, without a byte order mark.
    pub file: Digest,
    /// What it was called.
    pub name: String,
    /// Rows that were read whole.
    pub rows: u32,
    /// Rows of which something couldn't be read; the rest of such a row is used.
    pub unread: u32,
    /// How its columns were read.
    pub mapping: Mapping,
    /// Engine hours when it was logged, as its owner says.
    pub hours: f64,
    /// The day it was logged on.
    pub on: NaiveDate,
    /// How warm it was outside, where that is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outside: Option<Quantity>,
    /// What it told.
    pub readings: Vec<ReadingTaken>,
}

/// One figure out of a log.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReadingTaken {
    /// Which: `peak-cht`, `peak-egt`, `peak-speed`, `idle-speed`, `run-time`.
    pub measure: String,
    /// The figure.
    pub value: Quantity,
    /// Samples left out of it as no engine's doing, such as a lead's that came off.
    pub left_out: u32,
}
