//! What is derived from the log: each machine's folded history, its timeline, what looks found.

use std::cmp::Ordering;

use rusqlite::{OptionalExtension, Params, params};
use serde::{Deserialize, Serialize};
use uuid::Uuid;
use witnessmark_core::history::{History, Place};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, ChainFault, DeviceId, Digest, Record, check_chain};

use crate::records::{envelope, parse};
use crate::{StoreFault, Tx};

/// What a timeline tells of a record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Told {
    /// When, RFC 3339.
    pub at: String,
    /// Who signed.
    pub device: DeviceId,
    /// Engine hours then, where stated.
    pub hours: Option<f64>,
    /// For an inspection: the list and the worst found.
    pub look: Option<(String, Option<Meaning>)>,
    /// Words that go into its sentence: a title, a name.
    pub words: String,
}

/// A mark on the timeline.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// The record.
    pub digest: Digest,
    /// Its kind.
    pub kind: String,
    /// What is told of it.
    pub told: Told,
}

impl Tx<'_> {
    /// A machine's history as folded so far.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn history(&self, machine: Uuid) -> Result<Option<History>, StoreFault> {
        let folded: Option<String> = self
            .inner
            .prepare_cached("SELECT folded FROM history WHERE machine = ?1")?
            .query_row([machine.to_string()], |row| row.get(0))
            .optional()?;
        folded.map(|folded| Ok(serde_json::from_str(&folded)?)).transpose()
    }

    /// A machine's timeline, latest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn timeline(&self, machine: Uuid, most: u32) -> Result<Vec<Mark>, StoreFault> {
        self.marks(
            "SELECT digest, kind, told FROM mark WHERE machine = ?1 ORDER BY at_ms DESC, digest LIMIT ?2",
            params![machine.to_string(), most],
        )
    }

    /// A machine's marks of one kind, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn marks_of_kind(&self, machine: Uuid, kind: &str) -> Result<Vec<Mark>, StoreFault> {
        self.marks(
            "SELECT digest, kind, told FROM mark WHERE machine = ?1 AND kind = ?2 ORDER BY at_ms, digest",
            params![machine.to_string(), kind],
        )
    }

    fn marks(&self, sql: &str, params: impl Params) -> Result<Vec<Mark>, StoreFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let rows = statement.query_map(params, |row| {
            Ok((row.get::<_, [u8; 32]>(0)?, row.get(1)?, row.get::<_, String>(2)?))
        })?;
        rows.map(|row| {
            let (digest, kind, told) = row?;
            Ok(Mark { digest: Digest(digest), kind, told: serde_json::from_str(&told)? })
        })
        .collect()
    }

    /// Whether every machine's history can be read back; what can't is derived anew.
    pub(crate) fn derived_reads(&self) -> Result<bool, StoreFault> {
        let mut statement = self.inner.prepare("SELECT folded FROM history")?;
        let folded = statement.query_map([], |row| row.get::<_, String>(0))?;
        for folded in folded {
            if serde_json::from_str::<History>(&folded?).is_err() {
                return Ok(false);
            }
        }
        Ok(true)
    }

    /// Throws away all that is derived and derives it anew from the log.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn rebuild(&self) -> Result<(), StoreFault> {
        self.inner
            .execute_batch("DELETE FROM history; DELETE FROM mark; DELETE FROM looked; DELETE FROM reading; DELETE FROM fitted; DELETE FROM click; DELETE FROM split; DELETE FROM photo_named;")?;
        let mut statement = self
            .inner
            .prepare("SELECT DISTINCT machine FROM record WHERE machine IS NOT NULL ORDER BY machine")?;
        let machines: Vec<String> = statement.query_map([], |row| row.get(0))?.collect::<Result<_, _>>()?;
        for machine in machines {
            let machine: Uuid = machine.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))?;
            let records = self.records_of(Some(machine))?;
            let trust = self.trust()?;
            for record in &records {
                self.mark(record)?;
                if trust.counts(record) {
                    self.look(record)?;
                }
            }
            self.keep(machine, &History::of(machine, &records, &trust))?;
            for fault in check_chain(&records) {
                if let ChainFault::Broken { device, .. } | ChainFault::Forked { device, .. } = fault {
                    self.split(machine, &device)?;
                }
            }
        }
        self.inner.execute_batch(
            "INSERT INTO split (machine, device)
             SELECT DISTINCT one.machine, one.device FROM record AS one JOIN record AS other
             ON other.device = one.device AND other.seq = one.seq AND other.digest <> one.digest
             WHERE one.machine IS NOT NULL
             ON CONFLICT DO NOTHING;",
        )?;
        Ok(())
    }

    /// Brings what is derived up to date with a record just appended.
    pub(crate) fn derive(&self, record: &Record) -> Result<(), StoreFault> {
        let Some(machine) = record.payload.machine else { return Ok(()) };
        self.mark(record)?;
        // First: a change of trust folds anew what was folded under the old one.
        let trust = self.trust()?;
        if trust.counts(record) {
            self.look(record)?;
        }
        let mut history = self.history(machine)?.unwrap_or_default();
        // What puts a machine under a school judges what was signed before, too.
        let alone = record.payload.kind != "machine-enrolled";
        if alone && history.upto.as_ref().is_none_or(|upto| *upto < Place::of(record)) {
            history.take(record, &trust);
        } else {
            // Fold the machine's whole log, in the order all devices fold.
            history = History::of(machine, &self.records_of(Some(machine))?, &trust);
        }
        self.keep(machine, &history)?;
        self.check_place(machine, record)
    }

    /// Whether a record just added stands where its neighbours say: else its device's word is split.
    fn check_place(&self, machine: Uuid, record: &Record) -> Result<(), StoreFault> {
        let payload = &record.payload;
        let mut statement = self.inner.prepare_cached(
            "SELECT protected, payload, signature FROM record
             WHERE machine = ?1 AND device = ?2 AND of_seq BETWEEN ?3 - 1 AND ?3 + 1",
        )?;
        let place = i64::try_from(payload.of_seq).unwrap_or(i64::MAX - 1);
        let near = statement.query_map(params![machine.to_string(), payload.device.0, place], envelope)?;
        for other in near {
            let other = parse(other?)?;
            let follows = |one: &Record, two: &Record| two.payload.of_prev == Some(one.digest);
            let fits = match other.payload.of_seq.cmp(&payload.of_seq) {
                Ordering::Less => follows(&other, record),
                Ordering::Equal => other.digest == record.digest,
                Ordering::Greater => follows(record, &other),
            };
            if !fits {
                self.split(machine, &payload.device)?;
            }
        }
        Ok(())
    }

    /// Whether a device has said two things under one of its numbers, whatever they are about: who may say
    /// no more since its last number can't say it under an earlier one.
    pub(crate) fn check_number(&self, record: &Record) -> Result<(), StoreFault> {
        let payload = &record.payload;
        let mut statement = self
            .inner
            .prepare_cached("SELECT machine FROM record WHERE device = ?1 AND seq = ?2 AND digest <> ?3")?;
        let seq = i64::try_from(payload.seq).unwrap_or(i64::MAX);
        let others = statement
            .query_map(params![payload.device.0, seq, record.digest.0], |row| {
                row.get::<_, Option<String>>(0)
            })?
            .collect::<Result<Vec<_>, _>>()?;
        if others.is_empty() {
            return Ok(());
        }
        for machine in others.into_iter().flatten() {
            let machine = machine.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))?;
            self.split(machine, &payload.device)?;
        }
        payload.machine.map_or(Ok(()), |machine| self.split(machine, &payload.device))
    }

    fn split(&self, machine: Uuid, device: &DeviceId) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached("INSERT INTO split (machine, device) VALUES (?1, ?2) ON CONFLICT DO NOTHING")?
            .execute(params![machine.to_string(), device.0])?;
        Ok(())
    }

    pub(crate) fn keep(&self, machine: Uuid, history: &History) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached(
                "INSERT INTO history (machine, folded) VALUES (?1, ?2)
                 ON CONFLICT (machine) DO UPDATE SET folded = excluded.folded",
            )?
            .execute(params![machine.to_string(), serde_json::to_string(history)?])?;
        Ok(())
    }

    fn mark(&self, record: &Record) -> Result<(), StoreFault> {
        let payload = &record.payload;
        let mut told = Told {
            at: payload.at.to_rfc3339(),
            device: payload.device.clone(),
            hours: None,
            look: None,
            words: String::new(),
        };
        match payload.typed() {
            Ok(Body::Machine(body)) => {
                told.hours = Some(body.hours);
                told.words = body.name;
            }
            Ok(Body::Inspection(body)) => {
                told.hours = Some(body.hours);
                let worst = body.findings.iter().map(|finding| finding.means).max();
                for finding in &body.findings {
                    for photo in &finding.photos {
                        self.inner
                            .prepare_cached(
                                "INSERT INTO photo_named (digest, machine) VALUES (?1, ?2) ON CONFLICT DO NOTHING",
                            )?
                            .execute(params![photo.0, payload.machine.map(|machine| machine.to_string())])?;
                    }
                    if let Some(torque) = &finding.torque {
                        self.inner
                            .prepare_cached(
                                "INSERT INTO click (tool, at_ms, digest, point, clicks) VALUES (?1, ?2, ?3, ?4, ?5)
                                 ON CONFLICT DO NOTHING",
                            )?
                            .execute(params![
                                torque.tool.to_string(),
                                payload.at.timestamp_millis(),
                                record.digest.0,
                                finding.point,
                                i64::try_from(torque.eighths.len()).unwrap_or(i64::MAX)
                            ])?;
                    }
                }
                told.look = Some((body.occasion, worst));
            }
            Ok(Body::Rectified(body)) => told.words = body.how,
            Ok(Body::Correction(body)) => told.words = format!("{}: {}", body.title, body.words),
            Ok(Body::LimitConfirmed(body)) => told.words = body.band,
            Ok(Body::TimeLogged(body)) => {
                told.hours = body.reading;
                told.words = format!("{:.1}", body.added.hours);
            }
            Ok(Body::JobBegun(body)) => {
                told.hours = Some(body.service.hours);
                told.words = body.title;
            }
            Ok(Body::Released(body)) => told.hours = Some(body.service.hours),
            Ok(Body::Deferred(body)) => told.words = body.condition,
            Ok(Body::ComponentMoved(body)) => {
                told.hours = Some(body.service.hours);
                told.words = format!("{} {}", body.name, body.serial);
            }
            Ok(Body::DueKept(body)) => told.words = body.title,
            Ok(Body::ReadingsTaken(body)) => {
                told.hours = Some(body.hours);
                told.words = body.name;
            }
            Ok(_) | Err(_) => {}
        }
        self.inner
            .prepare_cached(
                "INSERT INTO mark (machine, at_ms, digest, kind, told) VALUES (?1, ?2, ?3, ?4, ?5)
                 ON CONFLICT DO NOTHING",
            )?
            .execute(params![
                payload.machine.map(|machine| machine.to_string()),
                payload.at.timestamp_millis(),
                record.digest.0,
                payload.kind,
                serde_json::to_string(&told)?,
            ])?;
        Ok(())
    }
}
