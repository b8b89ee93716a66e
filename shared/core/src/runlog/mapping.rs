//! How a log's columns are to be read, as its owner confirmed.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::units::{Dimension, Unit};

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
    /// Hours, minutes and seconds, `1:02:03`; or minutes and seconds, `02:03`. As a clock's it may pass
    /// midnight.
    Clock,
    /// A date and a time, as RFC 3339 or with a space between the two; the date also as `2.5.2026`, or
    /// with strokes, in which case the file itself must show which is the day.
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

/// Why a mapping can't be used on a file.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum MappingFault {
    /// A separator or decimal mark that there isn't.
    #[error("between fields there is a comma, a semicolon or a tab, before decimals a point or a comma")]
    Marks,
    /// A heading that the file doesn't have.
    #[error("the file has no column “{0}”")]
    NoColumn(String),
    /// One column used twice.
    #[error("the column “{0}” is used twice")]
    Twice(String),
    /// No column is read.
    #[error("no column is read")]
    Nothing,
    /// A unit of another kind.
    #[error("the column “{heading}” can't be in {unit}")]
    OtherUnit {
        /// The column.
        heading: String,
        /// The unit's code.
        unit: &'static str,
    },
}

impl Channel {
    /// What its units measure.
    pub fn dimension(self) -> Dimension {
        match self {
            Channel::Cht | Channel::Egt | Channel::Outside => Dimension::Temperature,
            Channel::Speed => Dimension::Frequency,
        }
    }
}

impl Mapping {
    /// Whether it can be used on a file with these headings.
    ///
    /// # Errors
    /// [`MappingFault`].
    pub fn check(&self, headings: &[&str]) -> Result<(), MappingFault> {
        // A decimal comma between commas is quoted, as RFC 4180 has it.
        if ![',', ';', '\t'].contains(&self.separator) || !['.', ','].contains(&self.decimal) {
            return Err(MappingFault::Marks);
        }
        let mut used: Vec<&str> = vec![&self.time];
        if self.columns.is_empty() {
            return Err(MappingFault::Nothing);
        }
        for column in &self.columns {
            if used.contains(&column.heading.as_str()) {
                return Err(MappingFault::Twice(column.heading.clone()));
            }
            used.push(&column.heading);
            if column.unit.dimension() != column.channel.dimension() {
                let (heading, unit) = (column.heading.clone(), column.unit.code());
                return Err(MappingFault::OtherUnit { heading, unit });
            }
        }
        match used.into_iter().find(|heading| !headings.contains(heading)) {
            Some(heading) => Err(MappingFault::NoColumn(heading.to_owned())),
            None => Ok(()),
        }
    }
}
