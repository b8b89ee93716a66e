//! What would be asked, and what has been begun, without opening an inspection.

use crate::house::id;
use crate::views::{StationView, WalkBrief};
use crate::{App, Fault};

impl App {
    /// The list of an occasion, as it would be composed for the machine now.
    ///
    /// # Errors
    /// [`Fault`]: no such machine or list, a list that needs a job, an engine that the catalogue
    /// doesn't have.
    pub fn points(&mut self, machine: &str, occasion: &str) -> Result<Vec<StationView>, Fault> {
        let machine = id(machine)?;
        self.store.read(|tx| {
            let body = self.house.asked_now(tx, machine, occasion)?;
            Ok(self.house.station_views(&body.list))
        })
    }

    /// The inspections of a machine that were begun and neither signed nor put aside.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn begun(&mut self, machine: &str) -> Result<Vec<WalkBrief>, Fault> {
        let machine = id(machine)?;
        self.store.read(|tx| {
            self.house.known(tx, machine)?;
            let mut begun = Vec::new();
            for draft in tx.drafts_open(machine)? {
                let progress = self.house.progress_of(tx, &draft)?;
                begun.push(WalkBrief {
                    id: draft.id.to_string(),
                    words: self.house.word(&format!("occasion-{}", draft.occasion)),
                    occasion: draft.occasion,
                    done: progress.done,
                    of: progress.of,
                });
            }
            Ok(begun)
        })
    }
}
