//! One ordered list for one machine: fragments × data sheet × parts fitted × open watch items.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::authored::{Answer, Meaning, Measure, Point, Station};
use super::sheet::{ResolvedBand, Sheet};
use crate::record::Digest;

/// The catalogue's part in a list, read and checked.
#[derive(Clone, Copy, Debug)]
pub struct Parts<'a> {
    /// In walking order.
    pub stations: &'a [Station],
    /// In the order of the files, then of the points in them.
    pub points: &'a [Point],
}

/// The machine's part in a list.
#[derive(Clone, Debug)]
pub struct Machinery<'a> {
    /// Its engine's data sheet.
    pub sheet: &'a Sheet,
    /// Parts fitted.
    pub fitted: BTreeSet<String>,
    /// Limits that the owner confirmed, by band.
    pub confirmed: BTreeMap<String, ResolvedBand>,
    /// What was found last time and must be looked at again, by point.
    pub remembered: BTreeMap<String, Rememberance>,
}

/// What must be looked at again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Rememberance {
    /// Watch or unserviceable.
    pub means: Meaning,
    /// In the words of then.
    pub words: String,
    /// The record that says so.
    pub record: Digest,
    /// Engine hours then.
    pub hours: f64,
}

impl Machinery<'_> {
    /// A band as it holds for this machine.
    pub fn band(&self, name: &str) -> Option<ResolvedBand> {
        let sheet = self.sheet.band(name)?;
        // Whether a life hangs on it stays the data sheet's word.
        let confirmed = self.confirmed.get(name).cloned();
        Some(confirmed.map_or(sheet.clone(), |band| ResolvedBand { critical: sheet.critical, ..band }))
    }

    /// A band or a single value, as words read it, and whether a document confirms it.
    fn filling(&self, name: &str) -> Option<Filling> {
        if let Some(band) = self.band(name) {
            return Some(Filling {
                text: band.has_number().then(|| band.to_string()),
                confirmed: band.confirmed(),
            });
        }
        let value = self.sheet.values.get(name)?.get_ref();
        Some(Filling {
            text: value.quantity().map(|quantity| quantity.to_string()),
            confirmed: value.value.is_some() && value.source.is_some(),
        })
    }
}

/// What fills a placeholder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Filling {
    /// Number and unit; none where nobody has given the number.
    pub text: Option<String>,
    /// Whether a document says so.
    pub confirmed: bool,
}

/// How a point is answered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
// A list has some sixty of these: their size is nothing.
#[allow(clippy::large_enum_variant)]
#[serde(tag = "by", rename_all = "kebab-case")]
pub enum Ask {
    /// By one of its own answers.
    Words {
        /// In the author's order.
        answers: Vec<Answer>,
    },
    /// By a value.
    Value {
        /// The band it is held against.
        band: ResolvedBand,
        /// What under the band means.
        below: Meaning,
        /// What over the band means.
        above: Meaning,
    },
    /// By tightening it.
    Torque {
        /// The joint in the assembly graph.
        joint: String,
        /// The torque.
        band: ResolvedBand,
        /// How many fasteners.
        nuts: u32,
    },
}

/// A point of a composed list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ListPoint {
    /// The point's id.
    pub id: String,
    /// Where one stands.
    pub station: String,
    /// What it belongs to.
    pub component: String,
    /// Whether leaving it out grounds the machine.
    pub must: bool,
    /// Whether it comes first within its station.
    pub critical: bool,
    /// Whether a later look alone clears it; see [`Point::passing`].
    pub passing: bool,
    /// The drawing and the place in it.
    pub drawing: String,
    /// See `drawing`.
    pub focus: String,
    /// The caution to show.
    pub caution: Option<String>,
    /// How it is answered.
    pub ask: Ask,
    /// What goes into its words.
    pub fills: BTreeMap<String, Filling>,
    /// What was found last time, when it must be looked at again.
    pub remembered: Option<Rememberance>,
}

/// A station of a composed list, with at least one point.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ListStation {
    /// The station's id.
    pub id: String,
    /// Its points: critical ones first, then the author's order.
    pub points: Vec<ListPoint>,
}

/// The points of one occasion for one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct List {
    /// The occasion's id.
    pub occasion: String,
    /// In walking order.
    pub stations: Vec<ListStation>,
}

impl List {
    /// All points in the order in which they are asked.
    pub fn points(&self) -> impl Iterator<Item = &ListPoint> {
        self.stations.iter().flat_map(|station| &station.points)
    }

    /// A point by id.
    pub fn point(&self, id: &str) -> Option<&ListPoint> {
        self.points().find(|point| point.id == id)
    }

    /// The digest of the list as composed.
    ///
    /// # Errors
    /// Where a number of a band isn't finite (a checked sheet has none).
    pub fn digest(&self) -> Result<Digest, serde_json::Error> {
        serde_json_canonicalizer::to_vec(self).map(|bytes| Digest::of(&bytes))
    }
}

/// Composes the list of one occasion. What is remembered from last time comes back on every
/// list, also on one that doesn't have the point by itself.
///
/// # Errors
/// The name of a band that a point asks for and the data sheet doesn't have.
pub fn compose(parts: Parts<'_>, machine: &Machinery<'_>, occasion: &str) -> Result<List, MissingBand> {
    let mut stations = Vec::new();
    for station in parts.stations {
        let mut points = Vec::new();
        for point in parts.points.iter().filter(|point| point.station == station.id) {
            let asked = point.occasions.contains(occasion) || machine.remembered.contains_key(&point.id);
            if asked && applies(point, machine) {
                points.push(compose_point(point, machine)?);
            }
        }
        points.sort_by_key(|point| !point.critical);
        if !points.is_empty() {
            stations.push(ListStation { id: station.id.clone(), points });
        }
    }
    Ok(List { occasion: occasion.to_owned(), stations })
}

/// A point asks for a band or value that the data sheet doesn't have.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("point `{point}` asks for `{name}`, which the data sheet `{sheet}` doesn't have")]
pub struct MissingBand {
    /// The point.
    pub point: String,
    /// The band or value.
    pub name: String,
    /// The data sheet.
    pub sheet: String,
}

fn applies(point: &Point, machine: &Machinery<'_>) -> bool {
    point.when.suits(machine.sheet) && point.when.fitted.is_subset(&machine.fitted)
}

fn compose_point(point: &Point, machine: &Machinery<'_>) -> Result<ListPoint, MissingBand> {
    let missing = |name: &str| MissingBand {
        point: point.id.clone(),
        name: name.to_owned(),
        sheet: machine.sheet.id.clone(),
    };
    let fills = point
        .fill
        .iter()
        .map(|(variable, name)| {
            machine.filling(name).map(|filling| (variable.clone(), filling)).ok_or_else(|| missing(name))
        })
        .collect::<Result<_, _>>()?;
    let ask = match &point.measure {
        Some(Measure { band, below, above }) => Ask::Value {
            band: machine.band(band).ok_or_else(|| missing(band))?,
            below: *below,
            above: *above,
        },
        None => Ask::Words { answers: point.answer.clone() },
    };
    Ok(ListPoint {
        id: point.id.clone(),
        station: point.station.clone(),
        component: point.component.clone(),
        must: point.must,
        critical: point.critical,
        passing: point.passing,
        drawing: point.drawing.clone(),
        focus: point.focus.clone(),
        caution: point.caution.clone(),
        ask,
        fills,
        remembered: machine.remembered.get(&point.id).cloned(),
    })
}
