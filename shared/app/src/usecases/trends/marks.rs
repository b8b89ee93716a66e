//! What was done to a machine, to be seen beside its readings.

use uuid::Uuid;
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;
use crate::views::TrendMark;

/// Records that may explain a change.
const KINDS: [&str; 2] = ["job-begun", "component-moved"];

impl House {
    /// Jobs, and components fitted or taken off, in order of engine hours.
    pub(super) fn trend_marks(&self, tx: &Tx<'_>, machine: Uuid) -> Result<Vec<TrendMark>, Fault> {
        let people = self.people(tx)?;
        let mut marks = Vec::new();
        for kind in KINDS {
            for mark in tx.marks_of_kind(machine, kind)? {
                let entry = self.timeline_entry(mark, &people);
                let Some(hours) = entry.hours else { continue };
                marks.push(TrendMark { hours, words: entry.words, record: entry.record });
            }
        }
        marks.sort_by(|a, b| a.hours.total_cmp(&b.hours));
        Ok(marks)
    }
}
