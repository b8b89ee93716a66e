//! A school's log: every record taken, in order of arrival.

use std::collections::HashMap;

use witnessmark_core::record::{DeviceId, Digest, Envelope, Record};

use super::engine::{Tx, Work};
use super::value::{Row, int, text};
use super::{School, Shelf};
use crate::ShelfFault;

/// A record as the log keeps it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// Its place, from 0; its leaf in the Merkle tree.
    pub index: u64,
    /// Its digest.
    pub digest: Digest,
    /// Who signed it.
    pub device: DeviceId,
    /// As it was signed.
    pub envelope: Envelope,
}

impl Line {
    /// The record.
    ///
    /// # Errors
    /// [`ShelfFault::Damaged`] when it isn't what was written.
    pub fn record(self) -> Result<Record, ShelfFault> {
        let damaged = |why: String| ShelfFault::Damaged(format!("record {}: {why}", self.index));
        let record = Record::parse(self.envelope).map_err(|fault| damaged(fault.to_string()))?;
        if record.digest != self.digest || record.payload.device != self.device {
            return Err(damaged("it is not what was written".into()));
        }
        Ok(record)
    }

    fn bytes(&self) -> usize {
        let Envelope { payload, protected, signature } = &self.envelope;
        payload.len().saturating_add(protected.len()).saturating_add(signature.len())
    }
}

pub(super) const COLUMNS: &str = "n, digest, device, protected, payload, signature";

pub(super) fn line(row: &mut Row) -> Result<Line, ShelfFault> {
    Ok(Line {
        index: row.count()?,
        digest: row.digest()?,
        device: DeviceId(row.text()?),
        envelope: Envelope { protected: row.text()?, payload: row.text()?, signature: row.text()? },
    })
}

/// How many lines are fetched at a time, so that a page of long records doesn't fill the memory.
const FETCHED: usize = 256;

/// The length of the school's log; nobody else appends until the work is over.
pub(super) fn hold(tx: &mut dyn Tx, school: School) -> Result<u64, ShelfFault> {
    let held =
        |tx: &mut dyn Tx| tx.held("SELECT size FROM head WHERE school = ?1", &[school.into()], Row::count);
    if let Some(size) = held(tx)? {
        return Ok(size);
    }
    tx.run(
        "INSERT INTO head (school, size) VALUES (?1, 0) ON CONFLICT (school) DO NOTHING",
        &[school.into()],
    )?;
    held(tx)?.ok_or_else(|| ShelfFault::Damaged("a school has no head".into()))
}

impl Shelf {
    /// Appends records that the caller has checked, all or none of them, and says each one's index.
    /// A record that is here already has the index it had.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn append(&self, school: School, records: &[&Record]) -> Result<Vec<u64>, ShelfFault> {
        if records.is_empty() {
            return Ok(Vec::new());
        }
        self.with(Work::Write, |tx| {
            let size = hold(tx, school)?;
            let digests: Vec<Digest> = records.iter().map(|record| record.digest).collect();
            let mut places = tx.places(school, &digests)?;
            let mut next = size;
            let fresh = fresh(records, &mut places, &mut next);
            if !fresh.is_empty() {
                tx.fill("record", "school, n, digest, device, protected, payload, signature", &mut |put| {
                    fresh.iter().try_for_each(|(index, record)| {
                        let Envelope { payload, protected, signature } = &record.envelope;
                        put(&[
                            school.into(),
                            int(*index),
                            record.digest.into(),
                            text(&record.payload.device.0)?,
                            text(protected)?,
                            text(payload)?,
                            text(signature)?,
                        ])
                    })
                })?;
                tx.run("UPDATE head SET size = ?2 WHERE school = ?1", &[school.into(), int(next)])?;
            }
            let lost = || ShelfFault::Other("a record has no place".into());
            digests.iter().map(|digest| places.get(digest).copied().ok_or_else(lost)).collect()
        })
    }

    /// How many records the log has. Cheap: followers ask for it again and again.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn size(&self, school: School) -> Result<u64, ShelfFault> {
        self.with(Work::Read, |tx| {
            let size = tx.one("SELECT size FROM head WHERE school = ?1", &[school.into()], Row::count)?;
            Ok(size.unwrap_or(0))
        })
    }

    /// The log from an index on: at most so many records, and no more bytes than `most_bytes`
    /// unless the first alone has them.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn log(
        &self,
        school: School,
        from: u64,
        most: usize,
        most_bytes: usize,
    ) -> Result<Vec<Line>, ShelfFault> {
        let sql = format!("SELECT {COLUMNS} FROM record WHERE school = ?1 AND n >= ?2 ORDER BY n LIMIT ?3");
        self.with(Work::Read, |tx| {
            let mut page: Vec<Line> = Vec::new();
            let mut bytes = 0_usize;
            while page.len() < most {
                let wanted = FETCHED.min(most - page.len());
                let at = from.saturating_add(page.len() as u64);
                let lines = tx.all(&sql, &[school.into(), int(at), int(wanted as u64)], line)?;
                let last = lines.len() < wanted;
                for line in lines {
                    bytes = bytes.saturating_add(line.bytes());
                    if bytes > most_bytes && !page.is_empty() {
                        return Ok(page);
                    }
                    page.push(line);
                }
                if last {
                    break;
                }
            }
            Ok(page)
        })
    }

    /// The digests from an index on, at most so many: the leaves of the Merkle tree.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn digests(&self, school: School, from: u64, most: usize) -> Result<Vec<Digest>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.all(
                "SELECT digest FROM record WHERE school = ?1 AND n >= ?2 ORDER BY n LIMIT ?3",
                &[school.into(), int(from), int(most as u64)],
                Row::digest,
            )
        })
    }

    /// The index of a record, if it is here.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn index_of(&self, school: School, digest: Digest) -> Result<Option<u64>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.one(
                "SELECT n FROM record WHERE school = ?1 AND digest = ?2",
                &[school.into(), digest.into()],
                Row::count,
            )
        })
    }

    /// A record by its digest, if it is here.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn line(&self, school: School, digest: Digest) -> Result<Option<Line>, ShelfFault> {
        let sql = format!("SELECT {COLUMNS} FROM record WHERE school = ?1 AND digest = ?2");
        self.with(Work::Read, |tx| tx.one(&sql, &[school.into(), digest.into()], line))
    }
}

/// The records that have no place yet, each once, each with its new one.
fn fresh<'a>(
    records: &[&'a Record],
    places: &mut HashMap<Digest, u64>,
    next: &mut u64,
) -> Vec<(u64, &'a Record)> {
    let mut fresh = Vec::new();
    for record in records {
        places.entry(record.digest).or_insert_with(|| {
            let index = *next;
            *next = next.saturating_add(1);
            fresh.push((index, *record));
            index
        });
    }
    fresh
}
