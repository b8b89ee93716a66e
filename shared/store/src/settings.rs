//! What this device keeps to itself.

use rusqlite::{OptionalExtension, params};

use crate::{StoreFault, Tx};

impl Tx<'_> {
    /// A setting.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn setting(&self, name: &str) -> Result<Option<String>, StoreFault> {
        Ok(self
            .inner
            .prepare_cached("SELECT value FROM setting WHERE name = ?1")?
            .query_row([name], |row| row.get(0))
            .optional()?)
    }

    /// The values of all settings whose names begin so.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn settings_under(&self, prefix: &str) -> Result<Vec<String>, StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT value FROM setting WHERE substr(name, 1, length(?1)) = ?1 ORDER BY name",
        )?;
        let rows = statement.query_map([prefix], |row| row.get(0))?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// Sets it.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn set(&self, name: &str, value: &str) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached(
                "INSERT INTO setting (name, value) VALUES (?1, ?2)
                 ON CONFLICT (name) DO UPDATE SET value = excluded.value",
            )?
            .execute(params![name, value])?;
        Ok(())
    }
}
