//! How often something was tried in vain: what slows down guessing a passphrase.

use super::engine::Work;
use super::value::{Row, text};
use super::{School, Shelf};
use crate::ShelfFault;

impl Shelf {
    /// Counts one more vain try, which counts until then; says how many count. Tries whose time
    /// has passed `now` count no more.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn attempt_add(&self, school: School, name: &str, now: i64, until: i64) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            let tries = tx.one(
                "INSERT INTO attempt (school, name, tries, until) VALUES (?1, ?2, 1, ?4)
                 ON CONFLICT (school, name) DO UPDATE SET
                   tries = CASE WHEN attempt.until <= ?3 THEN 1 ELSE attempt.tries + 1 END,
                   until = excluded.until
                 RETURNING tries",
                &[school.into(), text(name)?, now.into(), until.into()],
                Row::count,
            )?;
            tries.ok_or_else(|| ShelfFault::Other("a try was not counted".into()))
        })
    }

    /// How many vain tries count now, and until when.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn attempts(&self, school: School, name: &str, now: i64) -> Result<(u64, i64), ShelfFault> {
        self.with(Work::Read, |tx| {
            let counted = tx.one(
                "SELECT tries, until FROM attempt WHERE school = ?1 AND name = ?2 AND until > ?3",
                &[school.into(), text(name)?, now.into()],
                |row| Ok((row.count()?, row.int()?)),
            )?;
            Ok(counted.unwrap_or((0, now)))
        })
    }

    /// Forgets the tries of a name, since one succeeded.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn attempt_clear(&self, school: School, name: &str) -> Result<(), ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM attempt WHERE school = ?1 AND name = ?2", &[school.into(), text(name)?])?;
            Ok(())
        })
    }

    /// Forgets all tries whose time has passed.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn attempt_forget(&self, school: School, now: i64) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM attempt WHERE school = ?1 AND until <= ?2", &[school.into(), now.into()])
        })
    }
}
