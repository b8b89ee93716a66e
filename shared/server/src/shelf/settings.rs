//! A school's own settings: its server's sealed key, the passphrase's hash.

use super::engine::Work;
use super::value::{Row, text};
use super::{School, Shelf};
use crate::ShelfFault;

const GET: &str = "SELECT value FROM setting WHERE school = ?1 AND name = ?2";

impl Shelf {
    /// A setting.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn setting(&self, school: School, name: &str) -> Result<Option<String>, ShelfFault> {
        self.with(Work::Read, |tx| tx.one(GET, &[school.into(), text(name)?], Row::text))
    }

    /// Sets it.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn set(&self, school: School, name: &str, value: &str) -> Result<(), ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run(
                "INSERT INTO setting (school, name, value) VALUES (?1, ?2, ?3)
                 ON CONFLICT (school, name) DO UPDATE SET value = excluded.value",
                &[school.into(), text(name)?, text(value)?],
            )?;
            Ok(())
        })
    }

    /// Sets it if it isn't set, and returns what holds: processes that do so at once agree.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn set_once(&self, school: School, name: &str, value: &str) -> Result<String, ShelfFault> {
        self.with(Work::Write, |tx| {
            tx.run(
                "INSERT INTO setting (school, name, value) VALUES (?1, ?2, ?3)
                 ON CONFLICT (school, name) DO NOTHING",
                &[school.into(), text(name)?, text(value)?],
            )?;
            let holds = tx.one(GET, &[school.into(), text(name)?], Row::text)?;
            holds.ok_or_else(|| ShelfFault::Other("a setting was taken away meanwhile".into()))
        })
    }

    /// Takes it away.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn unset(&self, school: School, name: &str) -> Result<(), ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM setting WHERE school = ?1 AND name = ?2", &[school.into(), text(name)?])?;
            Ok(())
        })
    }
}
