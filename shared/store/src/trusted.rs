//! Whom this device trusts, kept in memory: read from the log again only after it changed.

use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;
use std::sync::Arc;

use rusqlite::Connection;
use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::record::{DeviceId, TRUST_KINDS, Trust};

use crate::{StoreFault, Tx};

/// What was read last, and at which state of the file.
#[derive(Default)]
pub(crate) struct Trusted {
    read: RefCell<Option<Arc<Trust>>>,
    /// What the histories were folded under, where the log has gone on since.
    folded: RefCell<Option<Arc<Trust>>>,
    version: Cell<i64>,
}

impl Trusted {
    /// At a transaction's beginning: another process may have written since.
    pub(crate) fn begin(&self, connection: &Connection) -> Result<(), StoreFault> {
        let version = connection.query_row("PRAGMA data_version", [], |row| row.get(0))?;
        if self.version.replace(version) != version {
            self.forget();
        }
        Ok(())
    }

    /// After a transaction that was undone.
    pub(crate) fn forget(&self) {
        self.read.take();
        self.folded.take();
    }
}

impl Tx<'_> {
    /// Whom this device trusts, by all its records.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn trust(&self) -> Result<Arc<Trust>, StoreFault> {
        if let Some(trust) = self.trusted.read.borrow().as_ref() {
            return Ok(Arc::clone(trust));
        }
        let records = self.collect(
            "SELECT protected, payload, signature FROM record
             WHERE machine IS NULL AND kind IN (SELECT value FROM json_each(?1))",
            [serde_json::to_string(&TRUST_KINDS)?],
        )?;
        let trust = Arc::new(Trust::from_checked(&records));
        self.trusted.read.replace(Some(Arc::clone(&trust)));
        if let Some(before) = self.trusted.folded.take() {
            self.refold(&before.differs(&trust))?;
        }
        Ok(trust)
    }

    /// Before a record is added that trust is made of: what was folded under the old trust is folded
    /// anew once the new one is asked for, at the latest when the transaction ends.
    pub(crate) fn trust_changes(&self) -> Result<(), StoreFault> {
        let before = match self.trusted.folded.take() {
            Some(before) => before,
            None => self.trust()?,
        };
        self.trusted.folded.replace(Some(before));
        self.trusted.read.take();
        Ok(())
    }

    /// Brings up to date what an added record left behind.
    pub(crate) fn settle(&self) -> Result<(), StoreFault> {
        if self.trusted.folded.borrow().is_some() {
            self.trust()?;
        }
        Ok(())
    }

    /// Folds anew the machines about which any of these devices has written.
    fn refold(&self, devices: &BTreeSet<DeviceId>) -> Result<(), StoreFault> {
        let mut machines: BTreeSet<String> = BTreeSet::new();
        let mut statement = self.inner.prepare_cached(
            "SELECT DISTINCT machine FROM record WHERE device = ?1 AND machine IS NOT NULL",
        )?;
        for device in devices {
            for machine in statement.query_map([&device.0], |row| row.get(0))? {
                machines.insert(machine?);
            }
        }
        for machine in machines {
            let machine: Uuid = machine.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))?;
            let (trust, records) = (self.trust()?, self.records_of(Some(machine))?);
            self.unlook(machine)?;
            for record in records.iter().filter(|record| trust.counts(record)) {
                self.look(record)?;
            }
            self.keep(machine, &History::of(machine, &records, &trust))?;
        }
        Ok(())
    }
}
