//! Time logged and not yet signed.

use chrono::{DateTime, FixedOffset};
use rusqlite::params;
use uuid::Uuid;
use witnessmark_core::record::TimeLogged;

use crate::{StoreFault, Tx};

/// Time logged and not yet signed.
#[derive(Clone, Debug, PartialEq)]
pub struct Pending {
    /// The machine.
    pub machine: Uuid,
    /// When it was logged.
    pub at: DateTime<FixedOffset>,
    /// What was logged.
    pub body: TimeLogged,
}

impl Tx<'_> {
    /// Keeps time logged until somebody signs.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending_add(&self, pending: &Pending) -> Result<(), StoreFault> {
        self.inner.prepare_cached("INSERT INTO pending (machine, at, body) VALUES (?1, ?2, ?3)")?.execute(
            params![
                pending.machine.to_string(),
                pending.at.to_rfc3339(),
                serde_json::to_string(&pending.body)?
            ],
        )?;
        Ok(())
    }

    /// All time logged and not yet signed, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending(&self) -> Result<Vec<Pending>, StoreFault> {
        let mut statement = self.inner.prepare_cached("SELECT machine, at, body FROM pending ORDER BY n")?;
        let rows = statement.query_map([], |row| {
            Ok((row.get::<_, String>(0)?, row.get::<_, String>(1)?, row.get::<_, String>(2)?))
        })?;
        rows.map(|row| {
            let (machine, at, body) = row?;
            Ok(Pending {
                machine: machine.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))?,
                at: DateTime::parse_from_rfc3339(&at).map_err(|_| StoreFault::Damaged("a moment".into()))?,
                body: serde_json::from_str(&body)?,
            })
        })
        .collect()
    }

    /// Forgets it all: it was signed.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending_signed(&self) -> Result<(), StoreFault> {
        self.inner.execute("DELETE FROM pending", [])?;
        Ok(())
    }

    /// Takes back the time logged last for a machine, while nobody has signed it; says whether there was any.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending_undo(&self, machine: Uuid) -> Result<bool, StoreFault> {
        Ok(self.inner.execute(
            "DELETE FROM pending WHERE n = (SELECT max(n) FROM pending WHERE machine = ?1)",
            [machine.to_string()],
        )? == 1)
    }

    /// How often a tool clicked since a moment (Unix milliseconds).
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn clicks(&self, tool: Uuid, since_ms: i64) -> Result<u32, StoreFault> {
        Ok(self
            .inner
            .prepare_cached("SELECT coalesce(sum(clicks), 0) FROM click WHERE tool = ?1 AND at_ms > ?2")?
            .query_row(params![tool.to_string(), since_ms], |row| row.get(0))?)
    }
}
