//! What this device knows of its school's server: receipts, what waits to be sent, what is stuck.

use rusqlite::{OptionalExtension, params};
use witnessmark_core::record::{Digest, Record};

use crate::records::{envelope, parse};
use crate::{StoreFault, Tx};

/// A record that the server wouldn't take.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stuck {
    /// The record.
    pub digest: Digest,
    /// The server's kind of fault.
    pub kind: String,
    /// In its words.
    pub why: String,
    /// When, RFC 3339.
    pub at: String,
}

/// What waits to be sent.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Waiting {
    /// Records without a receipt that aren't stuck.
    pub records: u32,
    /// Pictures of this device's records that the server hasn't whole.
    pub photos: u32,
}

/// Records without a receipt that aren't stuck; of the demonstration's people and machines only where asked.
const UNSENT: &str = "FROM record WHERE NOT EXISTS (SELECT 1 FROM receipt WHERE receipt.digest = record.digest)
     AND NOT EXISTS (SELECT 1 FROM stuck WHERE stuck.digest = record.digest)
     AND (?1 OR (device NOT IN (SELECT device FROM record WHERE kind = 'member' AND payload ->> '$.body.invented')
       AND (machine IS NULL OR machine NOT IN
         (SELECT machine FROM history WHERE folded ->> '$.machine[0].invented'))))";

impl Tx<'_> {
    /// Keeps the server's word on where these records lie in its log, from number `first` on.
    ///
    /// # Errors
    /// [`StoreFault`]; also where the numbers don't go on from those here.
    pub fn receipts_keep(&self, first: u64, digests: &[Digest]) -> Result<(), StoreFault> {
        if first != self.receipts()? {
            return Err(StoreFault::Other("receipts must follow each other".into()));
        }
        let mut insert = self.inner.prepare_cached("INSERT INTO receipt (n, digest) VALUES (?1, ?2)")?;
        let mut settle = self.inner.prepare_cached("DELETE FROM stuck WHERE digest = ?1")?;
        for (n, digest) in (first..).zip(digests) {
            let n = i64::try_from(n).map_err(|_| StoreFault::Other("a number is too large".into()))?;
            insert.execute(params![n, digest.0])?;
            settle.execute([digest.0])?;
        }
        Ok(())
    }

    /// How many receipts are here.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn receipts(&self) -> Result<u64, StoreFault> {
        let last: Option<i64> =
            self.inner.prepare_cached("SELECT max(n) FROM receipt")?.query_row([], |row| row.get(0))?;
        Ok(last.and_then(|last| u64::try_from(last).ok()).map_or(0, |last| last.saturating_add(1)))
    }

    /// The leaves of the server's tree as known here, in order, from number `from` on.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn receipt_digests(&self, from: u64, most: u32) -> Result<Vec<Digest>, StoreFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT digest FROM receipt WHERE n >= ?1 ORDER BY n LIMIT ?2")?;
        let from = i64::try_from(from).unwrap_or(i64::MAX);
        let rows = statement.query_map(params![from, most], |row| row.get(0))?;
        rows.map(|row| Ok(Digest(row?))).collect()
    }

    /// Where the server has put a record.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn receipt(&self, digest: &Digest) -> Result<Option<u64>, StoreFault> {
        let found: Option<i64> = self
            .inner
            .prepare_cached("SELECT n FROM receipt WHERE digest = ?1")?
            .query_row([digest.0], |row| row.get(0))
            .optional()?;
        Ok(found.and_then(|n| u64::try_from(n).ok()))
    }

    /// Forgets all that is known of a server: this device follows another one, or begins anew.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn server_forget(&self) -> Result<(), StoreFault> {
        Ok(self.inner.execute_batch(
            "DELETE FROM receipt; DELETE FROM stuck; DELETE FROM photo_sent; DELETE FROM photo_part;",
        )?)
    }

    /// Records to be sent that arrived here after number `after`, each with its number, in order of
    /// arrival, so that what a record follows goes before it: at least one where there is one, no more than
    /// `most`, ending with the one that makes `bytes` full. `invented` takes the demonstration's too.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn unsent(
        &self,
        invented: bool,
        after: u64,
        most: u32,
        bytes: usize,
    ) -> Result<Vec<(u64, Record)>, StoreFault> {
        let mut statement = self.inner.prepare_cached(&format!(
            "SELECT protected, payload, signature, arrival {UNSENT} AND arrival > ?2 ORDER BY arrival LIMIT ?3"
        ))?;
        let after = i64::try_from(after).unwrap_or(i64::MAX);
        let rows = statement
            .query_map(params![invented, after, most], |row| Ok((row.get::<_, i64>(3)?, envelope(row)?)))?;
        let (mut unsent, mut full) = (Vec::new(), 0);
        for row in rows {
            let (arrival, envelope) = row?;
            full += envelope.payload.len();
            unsent.push((u64::try_from(arrival).unwrap_or(0), parse(envelope)?));
            if full >= bytes {
                break;
            }
        }
        Ok(unsent)
    }

    /// What waits to be sent.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn waiting(&self, invented: bool) -> Result<Waiting, StoreFault> {
        Ok(Waiting {
            records: self
                .inner
                .prepare_cached(&format!("SELECT count(*) {UNSENT}"))?
                .query_row([invented], |row| row.get(0))?,
            photos: self
                .inner
                .prepare_cached(
                    "SELECT count(*) FROM photo JOIN photo_named USING (digest)
                     WHERE digest NOT IN (SELECT digest FROM photo_sent)",
                )?
                .query_row([], |row| row.get(0))?,
        })
    }

    /// Keeps what the server wouldn't take, with its reason.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn stuck_keep(&self, stuck: &Stuck) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached(
                "INSERT INTO stuck (digest, kind, why, at) VALUES (?1, ?2, ?3, ?4)
                 ON CONFLICT (digest) DO UPDATE SET kind = excluded.kind, why = excluded.why, at = excluded.at",
            )?
            .execute(params![stuck.digest.0, stuck.kind, stuck.why, stuck.at])?;
        Ok(())
    }

    /// What the server wouldn't take, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn stuck(&self) -> Result<Vec<Stuck>, StoreFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT digest, kind, why, at FROM stuck ORDER BY at, digest")?;
        let rows = statement.query_map([], |row| {
            Ok(Stuck { digest: Digest(row.get(0)?), kind: row.get(1)?, why: row.get(2)?, at: row.get(3)? })
        })?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// Lets what is stuck be sent again.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn stuck_retry(&self) -> Result<(), StoreFault> {
        Ok(self.inner.execute_batch("DELETE FROM stuck;")?)
    }

    /// Lets what is stuck for this kind of fault be sent again.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn stuck_retry_kind(&self, kind: &str) -> Result<(), StoreFault> {
        self.inner.prepare_cached("DELETE FROM stuck WHERE kind = ?1")?.execute([kind])?;
        Ok(())
    }

    /// Pictures to be sent, of records that have a receipt: a picture goes after the record that names it.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photos_unsent(&self, most: u32) -> Result<Vec<Digest>, StoreFault> {
        self.digests(
            "SELECT digest FROM photo JOIN photo_named USING (digest)
             WHERE digest NOT IN (SELECT digest FROM photo_sent) ORDER BY digest LIMIT ?1",
            most,
        )
    }

    /// Pictures that records name and that aren't here.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photos_missing(&self, most: u32) -> Result<Vec<Digest>, StoreFault> {
        self.digests(
            "SELECT digest FROM photo_named WHERE digest NOT IN (SELECT digest FROM photo) ORDER BY digest LIMIT ?1",
            most,
        )
    }

    fn digests(&self, sql: &str, most: u32) -> Result<Vec<Digest>, StoreFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let rows = statement.query_map([most], |row| row.get(0))?;
        rows.map(|row| Ok(Digest(row?))).collect()
    }

    /// The server has a picture whole.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photo_sent(&self, digest: &Digest) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached("INSERT INTO photo_sent (digest) VALUES (?1) ON CONFLICT DO NOTHING")?
            .execute([digest.0])?;
        Ok(())
    }

    /// What has come of a picture so far.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photo_part(&self, digest: &Digest) -> Result<Vec<u8>, StoreFault> {
        let found = self
            .inner
            .prepare_cached("SELECT bytes FROM photo_part WHERE digest = ?1")?
            .query_row([digest.0], |row| row.get(0))
            .optional()?;
        Ok(found.unwrap_or_default())
    }

    /// Keeps what has come of a picture; nothing, to begin anew.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photo_part_keep(&self, digest: &Digest, bytes: &[u8]) -> Result<(), StoreFault> {
        if bytes.is_empty() {
            self.inner.execute("DELETE FROM photo_part WHERE digest = ?1", [digest.0])?;
        } else {
            self.inner.execute(
                "INSERT INTO photo_part (digest, bytes) VALUES (?1, ?2)
                 ON CONFLICT (digest) DO UPDATE SET bytes = excluded.bytes",
                params![digest.0, bytes],
            )?;
        }
        Ok(())
    }
}
