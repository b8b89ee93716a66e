//! Devices that ask to be admitted.

use witnessmark_core::record::DeviceId;

use super::engine::Work;
use super::value::{Row, text};
use super::{School, Shelf, log};
use crate::{Refusal, ShelfFault};

/// A device that waits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Waiting {
    /// Which.
    pub device: DeviceId,
    /// What it says of itself: its records, as JSON Lines.
    pub lines: String,
    /// Since when, unix seconds.
    pub at: i64,
}

impl Shelf {
    /// Lets a device wait, or puts what it says now in place of what it said; no more than `most` wait.
    ///
    /// # Errors
    /// [`Refusal::TooManyWaiting`].
    pub fn waiting_put(&self, school: School, waiting: &Waiting, most: u64) -> Result<(), ShelfFault> {
        self.with(Work::Write, |tx| {
            // One at a time, so that the count holds.
            log::hold(tx, school)?;
            let device = text(&waiting.device.0)?;
            let others = tx.one(
                "SELECT count(*) FROM waiting WHERE school = ?1 AND device <> ?2",
                &[school.into(), device.clone()],
                Row::count,
            )?;
            if others.unwrap_or(0) >= most {
                return Err(Refusal::TooManyWaiting.into());
            }
            tx.run(
                "INSERT INTO waiting (school, device, lines, at) VALUES (?1, ?2, ?3, ?4)
                 ON CONFLICT (school, device) DO UPDATE SET lines = excluded.lines, at = excluded.at",
                &[school.into(), device, text(&waiting.lines)?, waiting.at.into()],
            )?;
            Ok(())
        })
    }

    /// Who waits, longest first.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn waiting(&self, school: School) -> Result<Vec<Waiting>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.all(
                "SELECT device, lines, at FROM waiting WHERE school = ?1 ORDER BY at, device",
                &[school.into()],
                |row| Ok(Waiting { device: DeviceId(row.text()?), lines: row.text()?, at: row.int()? }),
            )
        })
    }

    /// A device waits no more; says whether it did.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn waiting_drop(&self, school: School, device: &DeviceId) -> Result<bool, ShelfFault> {
        self.with(Work::Step, |tx| {
            let dropped = tx.run(
                "DELETE FROM waiting WHERE school = ?1 AND device = ?2",
                &[school.into(), text(&device.0)?],
            )?;
            Ok(dropped == 1)
        })
    }

    /// Forgets who has waited since before a moment.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn waiting_forget(&self, school: School, before: i64) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM waiting WHERE school = ?1 AND at < ?2", &[school.into(), before.into()])
        })
    }
}
