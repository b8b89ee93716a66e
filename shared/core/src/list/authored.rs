//! Stations, occasions and fragments as their authors write them.

use std::collections::{BTreeMap, BTreeSet};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::Spanned;
use ts_rs::TS;

use super::fault::{CatalogueFault, line_at, read_toml};
use super::sheet::{EngineKind, Sheet};
use crate::words::{ID_HINT, is_id};

/// What a finding means for the machine, mildest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Meaning {
    /// This machine doesn't have the part.
    NotFitted,
    /// Nothing against flying.
    Serviceable,
    /// Look at it again on every list until it is cleared.
    Watch,
    /// A defect: the machine stays on the ground.
    Unserviceable,
}

/// A place where the inspector stands.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Station {
    /// Its id.
    pub id: String,
}

/// How long a signed list holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Valid {
    /// For the local calendar day of its signature.
    Day,
}

/// A reason to inspect.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Occasion {
    /// Its id.
    pub id: String,
    /// How long the signed list holds.
    pub valid: Valid,
    /// The occasion that must have been signed before, within its own validity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<String>,
    /// Whether it follows a job: its list is what the job disturbed, and there is none without.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub job: bool,
}

/// One answer of a point.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// Its id; its words are in the texts.
    pub id: String,
    /// What it means.
    pub means: Meaning,
}

/// How a measured point is judged.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Measure {
    /// The band in the engine's data sheet.
    pub band: String,
    /// What a value under the band means.
    #[serde(default = "worst")]
    pub below: Meaning,
    /// What a value over the band means.
    #[serde(default = "worst")]
    pub above: Meaning,
}

/// An end that the author says nothing of grounds.
fn worst() -> Meaning {
    Meaning::Unserviceable
}

/// Conditions; every one that is given must hold.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct When {
    /// The engine is of one of these kinds.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub engine: BTreeSet<EngineKind>,
    /// The data sheet names all of these features.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub feature: BTreeSet<String>,
    /// All of these parts are fitted.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub fitted: BTreeSet<String>,
}

impl When {
    /// Whether the conditions on the engine hold.
    pub fn suits(&self, sheet: &Sheet) -> bool {
        (self.engine.is_empty() || self.engine.contains(&sheet.kind))
            && self.feature.is_subset(&sheet.features)
    }
}

/// One thing to inspect.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Point {
    /// Unique over all fragments.
    pub id: String,
    /// Where one stands.
    pub station: String,
    /// What it belongs to.
    pub component: String,
    /// The lists it is on.
    pub occasions: BTreeSet<String>,
    /// Whether leaving it out grounds the machine.
    pub must: bool,
    /// Whether it comes first within its station.
    #[serde(default)]
    pub critical: bool,
    /// Whether it is about the day, the pilot or a state that a hand changes (wind, a buckle, a
    /// plug cap), not about wear: what was wrong then is cleared by a later look alone.
    #[serde(default)]
    pub passing: bool,
    /// When it applies.
    #[serde(default)]
    pub when: When,
    /// The drawing, by file name without ending.
    pub drawing: String,
    /// The place in the drawing.
    pub focus: String,
    /// The caution to show with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub caution: Option<String>,
    /// Placeholders of its words and the sheet's bands or values that fill them.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub fill: BTreeMap<String, String>,
    /// Its answers, unless it is measured.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub answer: Vec<Answer>,
    /// How it is measured, unless it has answers.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measure: Option<Measure>,
}

/// A file of points.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Fragment {
    /// Its points, in the order in which they are asked.
    #[schemars(with = "Vec<Point>")]
    pub point: Vec<Spanned<Point>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Stations {
    station: Vec<Station>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Occasions {
    occasion: Vec<Occasion>,
}

/// Reads the stations, in walking order.
///
/// # Errors
/// The fault with its line.
pub fn read_stations(file: &str, text: &str) -> Result<Vec<Station>, CatalogueFault> {
    Ok(read_toml::<Stations>(file, text)?.station)
}

/// Reads the occasions.
///
/// # Errors
/// The fault with its line.
pub fn read_occasions(file: &str, text: &str) -> Result<Vec<Occasion>, CatalogueFault> {
    Ok(read_toml::<Occasions>(file, text)?.occasion)
}

/// Reads a fragment and checks each point by itself.
///
/// # Errors
/// Every fault found, each with file and line.
pub fn read_fragment(file: &str, text: &str) -> Result<Fragment, Vec<CatalogueFault>> {
    let fragment: Fragment = read_toml(file, text).map_err(|fault| vec![fault])?;
    let faults: Vec<_> = fragment
        .point
        .iter()
        .flat_map(|point| {
            let line = line_at(text, point.span().start);
            faults_of(point.get_ref()).into_iter().map(move |(what, hint)| CatalogueFault {
                file: file.to_owned(),
                line,
                what: format!("point `{}`: {what}", point.get_ref().id),
                hint: hint.to_owned(),
            })
        })
        .collect();
    if faults.is_empty() { Ok(fragment) } else { Err(faults) }
}

fn faults_of(point: &Point) -> Vec<(String, &'static str)> {
    let mut faults = Vec::new();
    if !is_id(&point.id) {
        faults.push((format!("`{}` is not an id", point.id), ID_HINT));
    }
    if point.occasions.is_empty() {
        faults.push(("is on no list".into(), "name at least one occasion"));
    }
    match (&point.measure, point.answer.is_empty()) {
        (None, true) => faults.push(("can't be answered".into(), "give it answers, or a measure")),
        (Some(_), false) => faults.push((
            "has answers and a measure".into(),
            "keep one of the two; make two points if both are wanted",
        )),
        (Some(measure), true) => {
            let harmless = |means| !matches!(means, Meaning::Watch | Meaning::Unserviceable);
            if harmless(measure.below) || harmless(measure.above) {
                faults.push((
                    "a value outside the band means nothing bad".into(),
                    "below and above are watch or unserviceable",
                ));
            }
        }
        (None, false) => {
            let ids: BTreeSet<_> = point.answer.iter().map(|answer| &answer.id).collect();
            if ids.len() != point.answer.len() {
                faults.push(("two answers have the same id".into(), "rename one"));
            }
            faults.extend(
                ids.iter().filter(|id| !is_id(id)).map(|id| (format!("`{id}` is not an id"), ID_HINT)),
            );
            if !point.answer.iter().any(|answer| answer.means == Meaning::Serviceable) {
                faults.push(("no answer is serviceable".into(), "say what good looks like"));
            }
            if !point.answer.iter().any(|answer| answer.means >= Meaning::Watch) {
                faults.push((
                    "nothing can be found wrong".into(),
                    "add the answer that a person gives who sees something wrong",
                ));
            }
        }
    }
    faults
}
