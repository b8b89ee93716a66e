//! Data sheets: one engine type's limits, each with its source.

use std::collections::{BTreeMap, BTreeSet};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::Spanned;
use ts_rs::TS;

use super::fault::{CatalogueFault, line_at, read_toml};
use crate::torque::{Bearing, Between, Class, Joint, Law, Tapped, Thread, TorqueFault};
use crate::units::{Quantity, Unit};

/// What drives the propeller.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum EngineKind {
    TwoStroke,
    FourStroke,
    Electric,
}

/// A document and the place in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Source {
    /// The manual's title and issue.
    pub document: String,
    /// Page or section.
    pub page: String,
}

/// A value with its source, or with the reason why it has none yet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Sourced {
    /// The number; left out when the person must bring it from the manual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub value: Option<f64>,
    /// Its unit.
    pub unit: Unit,
    /// Where it is written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub source: Option<Source>,
    /// Why it isn't confirmed by a document.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub unconfirmed: Option<String>,
}

impl Sourced {
    /// The number with its unit, where there is one.
    pub fn quantity(&self) -> Option<Quantity> {
        self.value.map(|value| Quantity::new(value, self.unit))
    }
}

/// The range in which a measured value is serviceable.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Band {
    /// Whether a life hangs on it: unconfirmed, it limits the verdict; without a number, it grounds.
    #[serde(default)]
    pub critical: bool,
    /// The least.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub low: Option<Sourced>,
    /// The most.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub high: Option<Sourced>,
}

/// A stud and what it sits in, so that a torque can be weighed against what the joint bears.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Stud {
    /// `M8`, `M8x1`.
    #[schemars(with = "String")]
    pub thread: Thread,
    /// Property class (ISO 898-1): `8.8`.
    #[schemars(with = "String")]
    pub class: Class,
    /// Friction in the thread and under the nut, least to most.
    pub friction: Between<f64>,
    /// The softer part that the stud is screwed into.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tapped: Option<Tapped>,
    /// Where it is written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub source: Option<Source>,
    /// Why it isn't confirmed by a document.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unconfirmed: Option<String>,
}

impl Stud {
    /// As the torque computations take it.
    ///
    /// # Errors
    /// [`TorqueFault`] for a thread whose bearing surface isn't known.
    pub fn joint(&self) -> Result<Joint, TorqueFault> {
        let (thread, friction) = (self.thread, self.friction);
        let law = Law::Friction { thread, bearing: Bearing::usual(thread)?, friction };
        Ok(Joint { thread, class: Some(self.class), law, tapped: self.tapped })
    }
}

/// One engine type.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Sheet {
    /// Its id, unique in the catalogue.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// What drives it.
    pub kind: EngineKind,
    /// True for types of the demonstration, which exist nowhere.
    #[serde(default)]
    pub invented: bool,
    /// What it has, for the conditions of fragments.
    #[serde(default)]
    pub features: BTreeSet<String>,
    /// Single values: counts, lives, gaps.
    #[serde(default)]
    #[schemars(with = "BTreeMap<String, Sourced>")]
    pub values: BTreeMap<String, Spanned<Sourced>>,
    /// Ranges.
    #[serde(default)]
    #[schemars(with = "BTreeMap<String, Band>")]
    pub bands: BTreeMap<String, Spanned<Band>>,
    /// Studs, by the joint of the assembly graph that they hold.
    #[serde(default)]
    #[schemars(with = "BTreeMap<String, Stud>")]
    pub studs: BTreeMap<String, Spanned<Stud>>,
}

/// A band as it holds for one machine: the sheet's, or what the owner confirmed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct ResolvedBand {
    /// Its name in the data sheet.
    pub name: String,
    /// See [`Band::critical`].
    pub critical: bool,
    /// The least.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub low: Option<Sourced>,
    /// The most.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub high: Option<Sourced>,
}

impl ResolvedBand {
    /// Both ends that are there.
    pub fn ends(&self) -> impl Iterator<Item = &Sourced> {
        self.low.iter().chain(&self.high)
    }

    /// Whether any number is there at all.
    pub fn has_number(&self) -> bool {
        self.ends().any(|end| end.value.is_some())
    }

    /// Whether every end has a number from a document.
    pub fn confirmed(&self) -> bool {
        self.ends().count() > 0 && self.ends().all(|end| end.value.is_some() && end.source.is_some())
    }

    /// The unit the sheet speaks.
    pub fn unit(&self) -> Unit {
        self.ends().next().map_or(Unit::One, |end| end.unit)
    }
}

impl std::fmt::Display for ResolvedBand {
    /// `125–130 lbf·in`, `50` where both ends are the same, `≥ 3 L`, or a dash.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let number = |end: &Option<Sourced>| end.as_ref().and_then(Sourced::quantity);
        match (number(&self.low), number(&self.high)) {
            (Some(low), Some(high)) if low == high => write!(f, "{low}"),
            (Some(low), Some(high)) => {
                let bare = Quantity::new(low.value, Unit::One);
                match high.to(low.unit) {
                    Ok(high) => write!(f, "{bare}–{high}"),
                    Err(_) => write!(f, "{low}–{high}"),
                }
            }
            (Some(low), None) => write!(f, "≥ {low}"),
            (None, Some(high)) => write!(f, "≤ {high}"),
            (None, None) => f.write_str("–"),
        }
    }
}

impl Sheet {
    /// A band by name, as the sheet has it.
    pub fn band(&self, name: &str) -> Option<ResolvedBand> {
        let band = self.bands.get(name)?.get_ref();
        Some(ResolvedBand {
            name: name.to_owned(),
            critical: band.critical,
            low: band.low.clone(),
            high: band.high.clone(),
        })
    }
}

/// Reads and checks a data sheet.
///
/// # Errors
/// Every fault found, each with file and line.
pub fn read_sheet(file: &str, text: &str) -> Result<Sheet, Vec<CatalogueFault>> {
    let sheet: Sheet = read_toml(file, text).map_err(|fault| vec![fault])?;
    let mut faults = Vec::new();
    let mut fault = |offset: usize, what: String, hint: &str| {
        faults.push(CatalogueFault {
            file: file.to_owned(),
            line: line_at(text, offset),
            what,
            hint: hint.to_owned(),
        });
    };
    if !crate::words::is_id(&sheet.id) {
        fault(0, format!("`{}` is not an id", sheet.id), crate::words::ID_HINT);
    }
    for (name, value) in &sheet.values {
        for (what, hint) in faults_of(value.get_ref()) {
            fault(value.span().start, format!("value `{name}`: {what}"), hint);
        }
    }
    for (name, stud) in &sheet.studs {
        let at = stud.span().start;
        let stud = stud.get_ref();
        if stud.source.is_some() == stud.unconfirmed.is_some() {
            fault(
                at,
                format!("stud `{name}` needs either a source or the reason why it is unconfirmed"),
                "add source = { document, page }, or unconfirmed = \"why\"",
            );
        }
        let torque = Between::just(Quantity::new(1.0, Unit::NewtonMetre));
        if let Err(why) = stud.joint().and_then(|joint| joint.clamp(torque)) {
            fault(at, format!("stud `{name}`: {why}"), "look at its thread, class, friction and depth");
        }
    }
    for (name, band) in &sheet.bands {
        let at = band.span().start;
        let ends = || band.get_ref().low.iter().chain(&band.get_ref().high);
        for (what, hint) in ends().flat_map(faults_of) {
            fault(at, format!("band `{name}`: {what}"), hint);
        }
        if ends().count() == 0 {
            fault(at, format!("band `{name}` has neither low nor high"), "give at least one end");
        }
        if let (Some(low), Some(high)) = (&band.get_ref().low, &band.get_ref().high) {
            match (low.quantity(), high.quantity()) {
                _ if low.unit.dimension() != high.unit.dimension() => fault(
                    at,
                    format!("band `{name}`: low and high measure different things"),
                    "give both ends in units of one kind",
                ),
                (Some(low), Some(high)) if low.si().ok() > high.si().ok() => fault(
                    at,
                    format!("band `{name}`: low lies above high"),
                    "swap the two, or look whether a unit is wrong",
                ),
                _ => {}
            }
        }
    }
    if faults.is_empty() { Ok(sheet) } else { Err(faults) }
}

fn faults_of(sourced: &Sourced) -> Vec<(String, &'static str)> {
    let mut faults = Vec::new();
    match (&sourced.source, &sourced.unconfirmed) {
        (None, None) => faults.push((
            "has no source and doesn't say that it is unconfirmed".into(),
            "add source = { document, page }, or unconfirmed = \"why\"",
        )),
        (Some(_), Some(_)) => {
            faults.push(("has a source and says that it is unconfirmed".into(), "keep one of the two"))
        }
        (Some(_), None) if sourced.value.is_none() => {
            faults.push(("has a source but no value".into(), "add the value, or say that it is unconfirmed"))
        }
        _ => {}
    }
    if sourced.value.is_some_and(|value| !value.is_finite()) {
        faults.push(("is not a finite number".into(), "give a number"));
    }
    faults
}
