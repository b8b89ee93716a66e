//! Reading rows by a mapping.

use std::collections::BTreeMap;

use super::cell::{is_nothing, number};
use super::log::{Log, Track, Unread, Why};
use super::mapping::{Channel, Column, Mapping, MappingFault};
use super::order::ordered;
use super::when::{Stamp, stamp};
use crate::units::Quantity;

/// Letters of a cell that are kept to name it by.
const NAMED_BY: usize = 40;

/// Takes a file's rows one by one.
pub struct Reader<'m> {
    mapping: &'m Mapping,
    /// Fields of the heading row.
    wants: usize,
    time: usize,
    columns: Vec<(usize, &'m Column)>,
    stamps: Vec<Stamp>,
    /// The line, and the cell of time, of each row that has a stamp.
    lines: Vec<(u64, Box<str>)>,
    tracks: Vec<Track>,
    /// By line, so that the first is first also of those that are found out of order later.
    unread: BTreeMap<u64, Why>,
}

impl<'m> Reader<'m> {
    /// A reader of rows under these headings.
    ///
    /// # Errors
    /// [`MappingFault`].
    pub fn new(mapping: &'m Mapping, headings: &[&str]) -> Result<Self, MappingFault> {
        mapping.check(headings)?;
        let place = |heading: &str| {
            let at = headings.iter().position(|one| *one == heading);
            at.ok_or_else(|| MappingFault::NoColumn(heading.to_owned()))
        };
        let columns = mapping.columns.iter().map(|column| Ok((place(&column.heading)?, column)));
        let track = |column: &Column| Track { column: column.clone(), decimals: 0, values: Vec::new() };
        Ok(Self {
            mapping,
            wants: headings.len(),
            time: place(&mapping.time)?,
            columns: columns.collect::<Result<_, _>>()?,
            stamps: Vec::new(),
            lines: Vec::new(),
            tracks: mapping.columns.iter().map(track).collect(),
            unread: BTreeMap::new(),
        })
    }

    /// Takes the row on this line. A row of nothing but empty fields is none.
    pub fn row(&mut self, line: u64, cells: &[&str]) {
        if cells.iter().all(|cell| cell.trim().is_empty()) {
            return;
        }
        let surplus = cells.iter().skip(self.wants).any(|cell| !cell.trim().is_empty());
        if cells.len() < self.wants || surplus {
            self.unread.insert(line, Why::Fields { has: cells.len(), wants: self.wants });
            return;
        }
        let when = cells.get(self.time).copied().unwrap_or_default();
        let Some(at) = stamp(when, self.mapping.time_form, self.mapping.decimal) else {
            self.unread.insert(line, Why::Time { cell: short(when) });
            return;
        };
        self.stamps.push(at);
        self.lines.push((line, short(when).into()));
        for ((place, column), track) in self.columns.iter().zip(&mut self.tracks) {
            let cell = cells.get(*place).copied().unwrap_or_default();
            match value(cell, column, self.mapping.decimal) {
                Ok(Some((value, decimals))) => {
                    track.values.push(Some(value));
                    track.decimals = track.decimals.max(decimals);
                }
                Ok(None) => track.values.push(None),
                Err(why) => {
                    track.values.push(None);
                    self.unread.entry(line).or_insert(why);
                }
            }
        }
    }

    /// What was read.
    pub fn finish(mut self) -> Log {
        let order = ordered(&self.stamps);
        let out = order.times.iter().zip(&self.lines).filter(|(at, _)| at.is_none());
        for (_, (line, cell)) in out {
            self.unread.insert(*line, Why::OutOfOrder { cell: cell.to_string() });
        }
        for track in &mut self.tracks {
            let mut kept = order.times.iter().map(Option::is_some);
            track.values.retain(|_| kept.next().unwrap_or_default());
        }
        let taken = self.lines.iter().filter(|(line, _)| !self.unread.contains_key(line)).count();
        let count = |rows: usize| u32::try_from(rows).unwrap_or(u32::MAX);
        Log {
            times: order.times.into_iter().flatten().collect(),
            runs: order.runs,
            tracks: self.tracks,
            rows: count(taken),
            unread: count(self.unread.len()),
            first_unread: self.unread.into_iter().next().map(|(line, why)| Unread { line, why }),
            began: order.began,
        }
    }
}

/// What a cell of this column tells, SI, and with how many decimals; none where nothing was measured.
fn value(cell: &str, column: &Column, decimal: char) -> Result<Option<(f64, u32)>, Why> {
    if is_nothing(cell) {
        return Ok(None);
    }
    let heading = || column.heading.clone();
    let told = number(cell, decimal).ok_or_else(|| Why::Number { cell: short(cell), heading: heading() })?;
    if told.unit.is_some_and(|unit| unit != column.unit) {
        return Err(Why::Unit { cell: short(cell), heading: heading(), unit: column.unit });
    }
    // Below absolute zero stand the numbers by which instruments say that a sensor is missing: kept as
    // absolute zero, which no channel takes for a measurement, so that they are counted among what is
    // left out.
    let si = Quantity::new(told.value, column.unit).si().unwrap_or(match column.channel {
        Channel::Cht | Channel::Egt | Channel::Outside => 0.0,
        Channel::Speed => -1.0,
    });
    Ok(Some((si, told.decimals)))
}

/// The beginning of a cell.
fn short(cell: &str) -> String {
    cell.trim().chars().take(NAMED_BY).collect()
}
