//! Something to be said to a person: a message's name and what goes into it.
//! The words themselves are in the catalogue's texts, one set a language.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::units::Quantity;

/// What goes into a message.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Arg {
    /// Words as they stand.
    Text(String),
    /// Figures and units as they stand, but for the decimal mark, which is the language's.
    Figures(String),
    /// The words of another message, by its id.
    Word(String),
    /// A quantity, told in the reader's own unit.
    Quantity(Quantity),
    /// A number, written and counted as the language does.
    Number(f64),
    /// A day, written as the language does.
    Date(NaiveDate),
}

/// A message of the catalogue (`said.ftl`) with its arguments, not yet in any language.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Said {
    /// The message's id in the texts.
    pub id: String,
    /// Its arguments.
    pub args: BTreeMap<String, Arg>,
}

impl Said {
    /// A message without arguments.
    pub fn new(id: impl Into<String>) -> Self {
        Self { id: id.into(), args: BTreeMap::new() }
    }

    /// With words.
    #[must_use]
    pub fn text(self, name: &str, value: impl ToString) -> Self {
        self.arg(name, Arg::Text(value.to_string()))
    }

    /// With figures, such as `12.5 N·m`.
    #[must_use]
    pub fn figures(self, name: &str, value: impl ToString) -> Self {
        self.arg(name, Arg::Figures(value.to_string()))
    }

    /// With the words of another message.
    #[must_use]
    pub fn naming(self, name: &str, id: impl ToString) -> Self {
        self.arg(name, Arg::Word(id.to_string()))
    }

    /// With a quantity, rounded to what a person reads.
    #[must_use]
    pub fn quantity(self, name: &str, value: Quantity) -> Self {
        self.arg(name, Arg::Quantity(value))
    }

    /// With a number.
    #[must_use]
    pub fn number(self, name: &str, value: impl Into<f64>) -> Self {
        self.arg(name, Arg::Number(value.into()))
    }

    /// With a day.
    #[must_use]
    pub fn date(self, name: &str, value: NaiveDate) -> Self {
        self.arg(name, Arg::Date(value))
    }

    fn arg(mut self, name: &str, value: Arg) -> Self {
        self.args.insert(name.to_owned(), value);
        self
    }
}
