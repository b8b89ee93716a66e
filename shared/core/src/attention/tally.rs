//! All looks of a fleet, counted by person and point.

use std::collections::{BTreeMap, BTreeSet};

use super::cell::Cell;
use crate::list::Meaning;
use crate::record::Digest;

/// One look at one point. Persons, machines and points are numbers that the caller gives them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PointSeen {
    /// The inspection.
    pub record: Digest,
    /// Who looked.
    pub person: usize,
    /// At which machine.
    pub machine: usize,
    /// At which point.
    pub point: usize,
    /// What was found.
    pub means: Meaning,
    /// How long it was on the screen.
    pub seconds: f64,
    /// Whether that was hurried.
    pub hurried: bool,
}

/// The counts.
///
/// A thing found counts once, for the look that found it first or found it worse: what stays open and is
/// seen again at every look says nothing new, of the point or of who looks. A part that isn't fitted
/// isn't looked at.
#[derive(Debug, Default)]
pub struct Tally {
    pub(super) cells: BTreeMap<(usize, usize), Cell>,
    pub(super) inspections: BTreeMap<usize, BTreeSet<Digest>>,
    /// Machines at which something was found at a point.
    pub(super) machines: BTreeMap<usize, BTreeSet<usize>>,
    /// What the look before found, by point and machine.
    before: BTreeMap<(usize, usize), Meaning>,
}

impl Tally {
    /// Takes one more look. Those at one point of one machine come in order, oldest first.
    pub fn take(&mut self, look: PointSeen) {
        self.inspections.entry(look.person).or_default().insert(look.record);
        if look.means == Meaning::NotFitted {
            return;
        }
        let before = self.before.insert((look.point, look.machine), look.means);
        let cell = self.cells.entry((look.person, look.point)).or_default();
        cell.looks += 1;
        cell.hurried += u32::from(look.hurried);
        if look.seconds.is_finite() {
            cell.seconds.push(look.seconds.max(0.0));
        }
        if look.means >= Meaning::Watch && before.is_none_or(|before| before < look.means) {
            match look.means {
                Meaning::Watch => cell.watch += 1,
                _ => cell.unserviceable += 1,
            }
            self.machines.entry(look.point).or_default().insert(look.machine);
        }
    }

    /// Points, each with everybody's cells.
    pub(super) fn by_point(&self) -> BTreeMap<usize, Vec<(usize, &Cell)>> {
        let mut points: BTreeMap<usize, Vec<(usize, &Cell)>> = BTreeMap::new();
        for ((person, point), cell) in &self.cells {
            points.entry(*point).or_default().push((*person, cell));
        }
        points
    }
}
