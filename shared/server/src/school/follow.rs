//! Reading what is new in the log, and appending to it.

use std::collections::BTreeMap;
use std::sync::{MutexGuard, PoisonError};

use witnessmark_core::record::Record;

use super::School;
use crate::ShelfFault;

/// Records and bytes read at once.
const LINES: usize = 4096;
const BYTES: usize = 8 * 1024 * 1024;

impl School {
    /// Reads what is new, by whichever process; says how long the log is.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn follow(&self) -> Result<u64, ShelfFault> {
        let size = self.shelf.size(self.id)?;
        if self.known().size() != size {
            let _one = self.one_at_a_time();
            self.catch_up()?;
        }
        Ok(self.known().size())
    }

    /// Appends records that were checked; says where each lies.
    pub(super) fn append(&self, records: &[&Record]) -> Result<Vec<u64>, ShelfFault> {
        let _one = self.one_at_a_time();
        let places = self.shelf.append(self.id, records)?;
        let here = self.known().size();
        let fresh: BTreeMap<u64, &Record> =
            places.iter().copied().zip(records.iter().copied()).filter(|(place, _)| *place >= here).collect();
        // Another process may have appended in between, and some of these.
        if fresh.keys().copied().eq((here..).take(fresh.len())) {
            self.known_mut().take(fresh.into_values());
            self.tell();
        } else {
            self.catch_up()?;
        }
        Ok(places)
    }

    fn catch_up(&self) -> Result<(), ShelfFault> {
        if self.shelf.size(self.id)? < self.known().size() {
            return Err(ShelfFault::Damaged("the log is shorter than it was".into()));
        }
        loop {
            let here = self.known().size();
            let lines = self.shelf.log(self.id, here, LINES, BYTES)?;
            if lines.is_empty() {
                self.tell();
                return Ok(());
            }
            self.known_mut().read(lines)?;
        }
    }

    fn tell(&self) {
        self.grown.send_replace(self.known().size());
    }

    fn one_at_a_time(&self) -> MutexGuard<'_, ()> {
        self.appending.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
