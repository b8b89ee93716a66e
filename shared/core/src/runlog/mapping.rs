//! How a log's columns are to be read, as its owner confirmed.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::units::Unit;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Channel {
    /// Cylinder head temperature.
    Cht,
    /// Exhaust gas temperature.
    Egt,
    /// Engine speed.
    Speed,
    /// Temperature outside.
    Outside,
}

/// How a column of time is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TimeForm {
    /// Seconds since some beginning.
    Seconds,
    /// Milliseconds since some beginning.
    Milliseconds,
    /// Minutes since some beginning.
    Minutes,
    /// Hours, minutes and seconds: `1:02:03` or `02:03`.
    Clock,
    /// A date and a time, as RFC 3339 or with a space between the two.
    Moment,
}

/// One column that is read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Column {
    /// Its heading in the file.
    pub heading: String,
    /// What it holds.
    pub channel: Channel,
    /// In which unit.
    pub unit: Unit,
}

/// How a log's columns are to be read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Mapping {
    /// Between fields: `,`, `;` or a tab.
    pub separator: char,
    /// Before decimals: `.` or `,`.
    pub decimal: char,
    /// The heading of the column of time.
    pub time: String,
    /// How that is written.
    pub time_form: TimeForm,
    /// The columns read, in the file's order.
    pub columns: Vec<Column>,
}
