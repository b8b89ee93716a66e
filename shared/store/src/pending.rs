//! What waits for a signature: time logged, flights prepared.

use chrono::{DateTime, FixedOffset};
use rusqlite::params;
use uuid::Uuid;
use witnessmark_core::record::Body;

use crate::{StoreFault, Tx};

/// A fact that waits for a signature.
#[derive(Clone, Debug, PartialEq)]
pub struct Pending {
    /// The machine.
    pub machine: Uuid,
    /// When it was stated.
    pub at: DateTime<FixedOffset>,
    /// The fact.
    pub body: Body,
}

impl Tx<'_> {
    /// Keeps a fact until somebody signs.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending_add(&self, pending: &Pending) -> Result<(), StoreFault> {
        let (kind, body) = pending.body.write()?;
        self.inner
            .prepare_cached("INSERT INTO pending (machine, at, kind, body) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![pending.machine.to_string(), pending.at.to_rfc3339(), kind, body.to_string()])?;
        Ok(())
    }

    /// All that waits, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending(&self) -> Result<Vec<Pending>, StoreFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT machine, at, kind, body FROM pending ORDER BY n")?;
        let rows = statement.query_map([], |row| {
            let text = |at| row.get::<_, String>(at);
            Ok((text(0)?, text(1)?, text(2)?, text(3)?))
        })?;
        rows.map(|row| {
            let (machine, at, kind, body) = row?;
            Ok(Pending {
                machine: machine.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))?,
                at: DateTime::parse_from_rfc3339(&at).map_err(|_| StoreFault::Damaged("a moment".into()))?,
                body: Body::read(&kind, &serde_json::from_str(&body)?)?,
            })
        })
        .collect()
    }

    /// Forgets what waits of a kind for a machine: something newer takes its place.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pending_drop(&self, machine: Uuid, kind: &str) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached("DELETE FROM pending WHERE machine = ?1 AND kind = ?2")?
            .execute(params![machine.to_string(), kind])?;
        Ok(())
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
            "DELETE FROM pending WHERE n = (SELECT max(n) FROM pending WHERE machine = ?1 AND kind = 'time-logged')",
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
