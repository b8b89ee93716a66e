//! The log.

use std::collections::BTreeMap;

use rusqlite::{OptionalExtension, Row, params};
use uuid::Uuid;
use witnessmark_core::record::{Author, Clock, DeviceId, Digest, Envelope, Position, Record, Trust};

use crate::{StoreFault, Tx};

/// A line that was not taken as a record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RefusedLine {
    /// Its number here.
    pub number: i64,
    /// The machine that it speaks of, where that could be read.
    pub machine: Option<String>,
    /// As it came.
    pub line: String,
    /// Why it was not taken.
    pub reason: String,
}

pub(crate) fn envelope(row: &Row<'_>) -> rusqlite::Result<Envelope> {
    Ok(Envelope { protected: row.get(0)?, payload: row.get(1)?, signature: row.get(2)? })
}

pub(crate) fn parse(envelope: Envelope) -> Result<Record, StoreFault> {
    Record::parse(envelope).map_err(|fault| StoreFault::Damaged(fault.to_string()))
}

impl Tx<'_> {
    /// Appends a record whose signature the caller has checked, and brings what is
    /// derived up to date. A record that is here already changes nothing; says whether it was new.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn append(&self, record: &Record) -> Result<bool, StoreFault> {
        let payload = &record.payload;
        if Trust::is_made_of(&payload.kind) {
            self.trust_changes()?;
        }
        let added = self.inner.prepare_cached(
            "INSERT INTO record (digest, device, seq, machine, of_seq, kind, clock_ms, clock_n, protected, payload, signature)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11) ON CONFLICT (digest) DO NOTHING",
        )?.execute(params![
            record.digest.0,
            payload.device.0,
            integer(payload.seq)?,
            payload.machine.map(|machine| machine.to_string()),
            integer(payload.of_seq)?,
            payload.kind,
            integer(payload.clock.ms)?,
            payload.clock.n,
            record.envelope.protected,
            record.envelope.payload,
            record.envelope.signature,
        ])?;
        if added == 1 {
            self.check_number(record)?;
            self.derive(record)?;
        }
        Ok(added == 1)
    }

    /// A record by its digest.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn record(&self, digest: &Digest) -> Result<Option<Record>, StoreFault> {
        let found = self
            .inner
            .prepare_cached("SELECT protected, payload, signature FROM record WHERE digest = ?1")?
            .query_row([digest.0], envelope)
            .optional()?;
        found.map(parse).transpose()
    }

    /// Whether a record is here with this very signature.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn holds(&self, record: &Record) -> Result<bool, StoreFault> {
        let envelope = &record.envelope;
        Ok(self
            .inner
            .prepare_cached("SELECT 1 FROM record WHERE digest = ?1 AND protected = ?2 AND signature = ?3")?
            .exists(params![record.digest.0, envelope.protected, envelope.signature])?)
    }

    /// All records about one machine (or about none), in order of arrival.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn records_of(&self, machine: Option<Uuid>) -> Result<Vec<Record>, StoreFault> {
        self.collect(
            "SELECT protected, payload, signature FROM record WHERE machine IS ?1 ORDER BY arrival",
            [machine.map(|machine| machine.to_string())],
        )
    }

    /// All records of one kind about no machine, in order of arrival.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn records_of_none(&self, kind: &str) -> Result<Vec<Record>, StoreFault> {
        self.collect(
            "SELECT protected, payload, signature FROM record WHERE machine IS NULL AND kind = ?1 ORDER BY arrival",
            [kind],
        )
    }

    /// All records of one kind about one machine, in order of arrival.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn records_of_kind(&self, machine: Uuid, kind: &str) -> Result<Vec<Record>, StoreFault> {
        self.collect(
            "SELECT protected, payload, signature FROM record WHERE machine = ?1 AND kind = ?2 ORDER BY arrival",
            [machine.to_string(), kind.to_owned()],
        )
    }

    pub(crate) fn collect(
        &self,
        sql: &str,
        params: impl rusqlite::Params,
    ) -> Result<Vec<Record>, StoreFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let rows = statement.query_map(params, envelope)?;
        rows.map(|row| parse(row?)).collect()
    }

    /// Where a device stands when it writes its next record about `machine`.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn author(&self, device: &DeviceId, machine: Option<Uuid>) -> Result<Author, StoreFault> {
        let position = |row: &Row<'_>| Ok((row.get::<_, i64>(0)?, row.get::<_, [u8; 32]>(1)?));
        let at = |(seq, digest): (i64, [u8; 32])| -> Result<Position, StoreFault> {
            Ok(Position { seq: unsigned(seq)?, digest: Digest(digest) })
        };
        let last = self
            .inner
            .prepare_cached("SELECT seq, digest FROM record WHERE device = ?1 ORDER BY seq DESC LIMIT 1")?
            .query_row([&device.0], position)
            .optional()?
            .map(at)
            .transpose()?;
        let last_of = self
            .inner
            .prepare_cached(
                "SELECT of_seq, digest FROM record WHERE machine IS ?1 AND device = ?2 ORDER BY of_seq DESC LIMIT 1",
            )?
            .query_row(params![machine.map(|machine| machine.to_string()), device.0], position)
            .optional()?
            .map(at)
            .transpose()?;
        // A bundle of one machine brings some of its authors' numbers and not those between: of a machine, its
        // author knew what is here about it.
        let mut seen = match machine {
            Some(machine) => self.seen_of(machine)?,
            None => self.version_vector()?,
        };
        seen.remove(device);
        Ok(Author { last, last_of, seen, clock: self.clock()? })
    }

    /// Each device's latest number here.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn version_vector(&self) -> Result<BTreeMap<DeviceId, u64>, StoreFault> {
        self.latest("SELECT device, max(seq) FROM record GROUP BY device", [])
    }

    /// Each device's latest number here among those about a machine.
    fn seen_of(&self, machine: Uuid) -> Result<BTreeMap<DeviceId, u64>, StoreFault> {
        self.latest(
            "SELECT device, max(seq) FROM record WHERE machine = ?1 GROUP BY device",
            [machine.to_string()],
        )
    }

    fn latest(
        &self,
        sql: &str,
        params: impl rusqlite::Params,
    ) -> Result<BTreeMap<DeviceId, u64>, StoreFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let rows = statement.query_map(params, |row| Ok((row.get(0)?, row.get::<_, i64>(1)?)))?;
        rows.map(|row| {
            let (device, seq) = row?;
            Ok((DeviceId(device), unsigned(seq)?))
        })
        .collect()
    }

    /// The latest causal time known here.
    fn clock(&self) -> Result<Clock, StoreFault> {
        let found = self
            .inner
            .prepare_cached(
                "SELECT clock_ms, clock_n FROM record ORDER BY clock_ms DESC, clock_n DESC LIMIT 1",
            )?
            .query_row([], |row| Ok((row.get::<_, i64>(0)?, row.get(1)?)))
            .optional()?;
        found.map_or(Ok(Clock::default()), |(ms, n)| Ok(Clock { ms: unsigned(ms)?, n }))
    }

    /// Every machine that any record is about.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn machines(&self) -> Result<Vec<Uuid>, StoreFault> {
        let mut statement = self.inner.prepare_cached("SELECT machine FROM history ORDER BY machine")?;
        let rows = statement.query_map([], |row| row.get::<_, String>(0))?;
        rows.map(|row| row?.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))).collect()
    }

    /// Keeps a line that was not taken as a record, with the reason.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn refuse(&self, machine: Option<Uuid>, line: &str, reason: &str) -> Result<(), StoreFault> {
        self.inner.execute(
            "INSERT INTO refused (machine, line, reason) VALUES (?1, ?2, ?3)",
            params![machine.map(|machine| machine.to_string()), line, reason],
        )?;
        Ok(())
    }

    /// Lines that were not taken as records, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn refused_lines(&self) -> Result<Vec<RefusedLine>, StoreFault> {
        let mut statement = self
            .inner
            .prepare_cached("SELECT arrival, machine, line, reason FROM refused ORDER BY arrival")?;
        let rows = statement.query_map([], |row| {
            Ok(RefusedLine {
                number: row.get(0)?,
                machine: row.get(1)?,
                line: row.get(2)?,
                reason: row.get(3)?,
            })
        })?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// Puts away a line that was not taken: a person has looked into it.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn refused_away(&self, number: i64) -> Result<bool, StoreFault> {
        Ok(self.inner.execute("DELETE FROM refused WHERE arrival = ?1", [number])? == 1)
    }

    /// How many records about a machine were refused.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn refused(&self, machine: Uuid) -> Result<u32, StoreFault> {
        Ok(self
            .inner
            .prepare_cached("SELECT count(*) FROM refused WHERE machine = ?1")?
            .query_row([machine.to_string()], |row| row.get(0))?)
    }

    /// Devices whose records about this machine don't follow from each other: two in one place.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn split_words(&self, machine: Uuid) -> Result<Vec<DeviceId>, StoreFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT device FROM split WHERE machine = ?1 ORDER BY device")?;
        let rows = statement.query_map([machine.to_string()], |row| row.get(0))?;
        rows.map(|row| Ok(DeviceId(row?))).collect()
    }
}

/// SQLite's integers are signed; a number past their range is no number of ours.
fn integer(value: u64) -> Result<i64, StoreFault> {
    i64::try_from(value).map_err(|_| StoreFault::Other("a number is too large".into()))
}

fn unsigned(value: i64) -> Result<u64, StoreFault> {
    u64::try_from(value).map_err(|_| StoreFault::Damaged("a negative number".into()))
}
