//! Limits of a school for its members' machines: wind, and how often a component is inspected.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::fault::{CatalogueFault, read_toml};
use crate::flight::WindLimits;

/// What a school has set. The catalogue that is shipped sets nothing.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Limits {
    /// What the wind may be at most.
    pub wind: WindLimits,
    /// How often a component is inspected at least, by its name.
    pub inspect: BTreeMap<String, Inspecting>,
}

/// How often a component is inspected.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Inspecting {
    /// At least every so many engine hours.
    pub every_hours: f64,
    /// The chance of an unseen failure between two inspections that is borne, 0 to 1.
    pub chance: f64,
}

/// Reads a file of limits.
///
/// # Errors
/// [`CatalogueFault`], with file and line.
pub fn read_limits(file: &str, text: &str) -> Result<Limits, CatalogueFault> {
    let limits: Limits = read_toml(file, text)?;
    let wrong = |line: usize, what: String, hint: &str| CatalogueFault {
        file: file.to_owned(),
        line,
        what,
        hint: hint.to_owned(),
    };
    for (component, inspecting) in &limits.inspect {
        let line = text.lines().position(|line| line.contains(component.as_str())).map_or(1, |at| at + 1);
        if !(inspecting.every_hours.is_finite() && inspecting.every_hours > 0.0) {
            let what = format!("`{component}`: every {} hours is no interval", inspecting.every_hours);
            return Err(wrong(line, what, "give hours above 0, such as 25"));
        }
        if !(inspecting.chance > 0.0 && inspecting.chance < 1.0) {
            let what = format!("`{component}`: {} is no chance", inspecting.chance);
            return Err(wrong(line, what, "give more than 0 and less than 1, such as 0.01"));
        }
    }
    Ok(limits)
}
