//! The measures whose trends are followed, as authored.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::fault::{CatalogueFault, read_toml};
use crate::units::Unit;

/// A measure that is followed over a machine's time in service. Its words are `measure-ID` in the texts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Followed {
    /// Its id.
    pub id: String,
    /// Where its readings come from.
    pub from: From,
    /// In which unit it is shown, unless a person wants another of its kind; grades have none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// The band in the data sheet that it is held against.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub band: Option<String>,
    /// Which end of it is the limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<Side>,
    /// Whether a temperature is brought to a standard day where it was known how warm it was outside.
    #[serde(default)]
    pub standard_day: bool,
}

/// Where readings come from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum From {
    /// A measured point, by its id.
    Point(String),
    /// The grade of a point answered in words: serviceable, watch, unserviceable.
    Grade(String),
    /// The greatest movement before the click at a joint, by the joint's id.
    Movement(String),
    /// A figure out of engine logs.
    Log(String),
    /// Fuel burned, as logged after flights.
    Burn,
}

/// An end of a band.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Side {
    /// The least it may be.
    AtLeast,
    /// The most it may be.
    AtMost,
}

/// A file of measures.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Followeds {
    /// In the order in which they are shown.
    pub measure: Vec<Followed>,
}

/// Reads a file of measures.
///
/// # Errors
/// [`CatalogueFault`], with file and line.
pub fn read_measures(file: &str, text: &str) -> Result<Vec<Followed>, CatalogueFault> {
    Ok(read_toml::<Followeds>(file, text)?.measure)
}
