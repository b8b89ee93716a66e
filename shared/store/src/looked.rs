//! What each look found at each point, and the figures out of engine logs: what people's pace, a
//! machine's measures, the lives of parts and the worth of a list's points are read from. Derived
//! from the records that count.

use chrono::NaiveTime;
use rusqlite::{OptionalExtension, Row, params};
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, ComponentMoved, DeviceId, Digest, Inspection, ReadingsTaken, Record};
use witnessmark_core::reliability::{PartMoved, PartSeen};
use witnessmark_core::units::{Quantity, Unit};

use crate::{StoreFault, Tx};

/// How many looks at a point are remembered of a person.
const PACE_KEPT: u32 = 15;
/// How many of everybody.
const FLEET_PACE_KEPT: u32 = 60;
/// From midnight to noon.
const HALF_A_DAY_MS: i64 = 12 * 3_600_000;

/// One figure of a machine, as seen or measured at a time in service.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// The record.
    pub digest: Digest,
    /// When, Unix milliseconds; of a log noon UTC of its day.
    pub at_ms: i64,
    /// Engine hours then.
    pub hours: f64,
    /// What it meant, where it was a finding.
    pub means: Option<Meaning>,
    /// What was measured.
    pub measured: Option<Quantity>,
    /// A joint's greatest movement before the click, eighths of a turn.
    pub moved: Option<f64>,
    /// How warm it was outside, °C.
    pub outside: Option<f64>,
}

/// What one look found at one point of a component, passing matters left out, and whose device says so.
#[derive(Clone, Debug, PartialEq)]
pub struct PartLook {
    /// Who looked.
    pub device: DeviceId,
    /// What they saw.
    pub seen: PartSeen,
}

/// One look at one point: by whom, how long, and what came of it.
#[derive(Clone, Debug, PartialEq)]
pub struct PointLook {
    /// The inspection.
    pub record: Digest,
    /// The machine.
    pub machine: Uuid,
    /// Who looked.
    pub device: DeviceId,
    /// The point.
    pub point: String,
    /// What was found.
    pub means: Meaning,
    /// How long it was on the screen.
    pub seconds: f64,
    /// Whether that was hurried.
    pub hurried: bool,
}

/// Meanings by their number in the tables.
const MEANS: [Meaning; 4] =
    [Meaning::NotFitted, Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable];

fn number(means: Meaning) -> i64 {
    MEANS.iter().position(|one| *one == means).map_or(3, |at| at as i64)
}

fn meaning(number: i64) -> Meaning {
    usize::try_from(number).ok().and_then(|at| MEANS.get(at).copied()).unwrap_or(Meaning::Unserviceable)
}

fn machine_id(text: &str) -> Result<Uuid, StoreFault> {
    text.parse().map_err(|_| StoreFault::Damaged("a machine's id".into()))
}

fn odd(_: rusqlite::types::FromSqlError) -> StoreFault {
    StoreFault::Damaged("an id that is no text".into())
}

/// Reads machines' ids of which many in a row are the same.
#[derive(Default)]
struct Machines(Option<(String, Uuid)>);

impl Machines {
    fn read(&mut self, text: &str) -> Result<Uuid, StoreFault> {
        match &self.0 {
            Some((last, id)) if last == text => Ok(*id),
            _ => {
                let id = machine_id(text)?;
                self.0 = Some((text.to_owned(), id));
                Ok(id)
            }
        }
    }
}

fn quantity(value: Option<f64>, unit: Option<String>) -> Result<Option<Quantity>, StoreFault> {
    let (Some(value), Some(unit)) = (value, unit) else { return Ok(None) };
    let unit: Unit = unit.parse().map_err(|_| StoreFault::Damaged("a unit".into()))?;
    Ok(Some(Quantity::new(value, unit)))
}

impl Tx<'_> {
    /// How long the person of a device looked at a point the last times, seconds.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn pace(&self, device: &DeviceId, point: &str) -> Result<Vec<f64>, StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT seconds FROM looked WHERE device = ?1 AND point = ?2 ORDER BY at_ms DESC LIMIT ?3",
        )?;
        let rows = statement.query_map(params![device.0, point, PACE_KEPT], |row| row.get(0))?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// What a machine's looks at a point found, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn figures_at(&self, machine: Uuid, point: &str) -> Result<Vec<Figure>, StoreFault> {
        self.figures(
            "SELECT digest, at_ms, hours, value, unit, means, moved, NULL FROM looked
             WHERE machine = ?1 AND point = ?2 ORDER BY at_ms, digest",
            machine,
            point,
        )
    }

    /// A machine's figures out of logs for a measure, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn readings(&self, machine: Uuid, measure: &str) -> Result<Vec<Figure>, StoreFault> {
        self.figures(
            "SELECT digest, at_ms, hours, value, unit, NULL, NULL, outside FROM reading
             WHERE machine = ?1 AND measure = ?2 ORDER BY at_ms, digest, n",
            machine,
            measure,
        )
    }

    fn figures(&self, sql: &str, machine: Uuid, what: &str) -> Result<Vec<Figure>, StoreFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let read = |row: &Row<'_>| {
            let figure = Figure {
                digest: Digest(row.get(0)?),
                at_ms: row.get(1)?,
                hours: row.get(2)?,
                means: row.get::<_, Option<i64>>(5)?.map(meaning),
                measured: None,
                moved: row.get(6)?,
                outside: row.get(7)?,
            };
            Ok((figure, row.get::<_, Option<f64>>(3)?, row.get::<_, Option<String>>(4)?))
        };
        let rows = statement.query_map(params![machine.to_string(), what], read)?;
        rows.map(|row| {
            let (figure, value, unit) = row?;
            Ok(Figure { measured: quantity(value, unit)?, ..figure })
        })
        .collect()
    }

    /// The record by which a log's file was taken, by the SHA-256 of its bytes.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn log_taken(&self, machine: Uuid, file: &Digest) -> Result<Option<Digest>, StoreFault> {
        let found: Option<[u8; 32]> = self
            .inner
            .prepare_cached("SELECT digest FROM reading WHERE file = ?1 AND machine = ?2 LIMIT 1")?
            .query_row(params![file.0, machine.to_string()], |row| row.get(0))
            .optional()?;
        Ok(found.map(Digest))
    }

    /// How long anybody looked at a point the last times, seconds.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn fleet_pace(&self, point: &str) -> Result<Vec<f64>, StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT seconds FROM looked WHERE point = ?1 ORDER BY at_ms DESC, digest LIMIT ?2",
        )?;
        let rows = statement.query_map(params![point, FLEET_PACE_KEPT], |row| row.get(0))?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// What all looks found at one component, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn part_looks(&self, component: &str) -> Result<Vec<PartLook>, StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT digest, machine, device, at_ms, hours, point, means FROM looked
             WHERE component = ?1 AND passing = 0 ORDER BY machine, at_ms, digest, n",
        )?;
        let mut rows = statement.query([component])?;
        let (mut all, mut machines) = (Vec::new(), Machines::default());
        while let Some(row) = rows.next()? {
            all.push(PartLook {
                device: DeviceId(row.get(2)?),
                seen: PartSeen {
                    record: Digest(row.get(0)?),
                    machine: machines.read(row.get_ref(1)?.as_str().map_err(odd)?)?,
                    at_ms: row.get(3)?,
                    hours: row.get(4)?,
                    point: row.get(5)?,
                    means: meaning(row.get(6)?),
                },
            });
        }
        Ok(all)
    }

    /// When components of a part were fitted and taken off, oldest first.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn part_moves(&self, part: &str) -> Result<Vec<PartMoved>, StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT digest, machine, at_ms, component, on_machine, own, hours FROM fitted
             WHERE part = ?1 ORDER BY machine, at_ms, digest",
        )?;
        let mut rows = statement.query([part])?;
        let mut all = Vec::new();
        while let Some(row) = rows.next()? {
            all.push(PartMoved {
                record: Digest(row.get(0)?),
                machine: machine_id(row.get_ref(1)?.as_str().map_err(odd)?)?,
                at_ms: row.get(2)?,
                component: machine_id(row.get_ref(3)?.as_str().map_err(odd)?)?,
                fitted: row.get(4)?,
                own: row.get(5)?,
                hours: row.get(6)?,
            });
        }
        Ok(all)
    }

    /// Every look at every point, point by point, oldest first: handed on one by one, since there are
    /// many.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn point_looks(&self, mut each: impl FnMut(PointLook)) -> Result<(), StoreFault> {
        let mut statement = self.inner.prepare_cached(
            "SELECT digest, machine, device, point, means, seconds, hurried FROM looked
             ORDER BY point, at_ms, digest, n",
        )?;
        let mut rows = statement.query([])?;
        let mut machines = Machines::default();
        while let Some(row) = rows.next()? {
            each(PointLook {
                record: Digest(row.get(0)?),
                machine: machines.read(row.get_ref(1)?.as_str().map_err(odd)?)?,
                device: DeviceId(row.get(2)?),
                point: row.get(3)?,
                means: meaning(row.get(4)?),
                seconds: row.get(5)?,
                hurried: row.get(6)?,
            });
        }
        Ok(())
    }

    /// The components that looks have spoken of, passing matters left out, by name.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn parts_looked(&self) -> Result<Vec<String>, StoreFault> {
        let mut statement = self
            .inner
            .prepare_cached("SELECT DISTINCT component FROM looked WHERE passing = 0 ORDER BY component")?;
        let rows = statement.query_map([], |row| row.get(0))?;
        rows.map(|row| Ok(row?)).collect()
    }

    /// Forgets what was found in a machine's records: trust in some of them has changed.
    pub(crate) fn unlook(&self, machine: Uuid) -> Result<(), StoreFault> {
        for sql in [
            "DELETE FROM looked WHERE machine = ?1",
            "DELETE FROM reading WHERE machine = ?1",
            "DELETE FROM fitted WHERE machine = ?1",
        ] {
            self.inner.prepare_cached(sql)?.execute([machine.to_string()])?;
        }
        Ok(())
    }

    /// Keeps what a record that counts found.
    pub(crate) fn look(&self, record: &Record) -> Result<(), StoreFault> {
        let Some(machine) = record.payload.machine else { return Ok(()) };
        match record.payload.typed() {
            Ok(Body::Inspection(body)) => self.look_inspection(machine, record, &body),
            Ok(Body::ReadingsTaken(body)) => self.look_log(machine, record, &body),
            Ok(Body::ComponentMoved(body)) => self.look_component(machine, record, &body),
            Ok(_) | Err(_) => Ok(()),
        }
    }

    fn look_inspection(&self, machine: Uuid, record: &Record, body: &Inspection) -> Result<(), StoreFault> {
        let payload = &record.payload;
        let mut insert = self.inner.prepare_cached(
            "INSERT INTO looked (digest, n, machine, device, at_ms, occasion, point, component, means, passing,
                                 hours, seconds, hurried, value, unit, moved)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16)
             ON CONFLICT DO NOTHING",
        )?;
        for (n, finding) in body.findings.iter().enumerate() {
            let moved = finding.torque.as_ref().and_then(|torque| torque.eighths.iter().max());
            insert.execute(params![
                record.digest.0,
                i64::try_from(n).unwrap_or(i64::MAX),
                machine.to_string(),
                payload.device.0,
                payload.at.timestamp_millis(),
                body.occasion,
                finding.point,
                finding.component,
                number(finding.means),
                finding.passing,
                body.hours,
                finding.seconds,
                body.hurried.contains(&finding.point),
                finding.measured.map(|measured| measured.value),
                finding.measured.map(|measured| measured.unit.code()),
                moved.map(|eighths| f64::from(*eighths)),
            ])?;
        }
        Ok(())
    }

    fn look_log(&self, machine: Uuid, record: &Record, body: &ReadingsTaken) -> Result<(), StoreFault> {
        // When it was logged, not when it was signed; noon, as its owner names the day alone.
        let noon = body.on.and_time(NaiveTime::MIN).and_utc().timestamp_millis() + HALF_A_DAY_MS;
        let outside = body.outside.and_then(|outside| outside.to(Unit::Celsius).ok()).map(|air| air.value);
        let mut insert = self.inner.prepare_cached(
            "INSERT INTO reading (digest, n, machine, at_ms, measure, hours, value, unit, outside, file)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10) ON CONFLICT DO NOTHING",
        )?;
        for (n, reading) in body.readings.iter().enumerate() {
            insert.execute(params![
                record.digest.0,
                i64::try_from(n).unwrap_or(i64::MAX),
                machine.to_string(),
                noon,
                reading.measure,
                body.hours,
                reading.value.value,
                reading.value.unit.code(),
                outside,
                body.file.0,
            ])?;
        }
        Ok(())
    }

    fn look_component(
        &self,
        machine: Uuid,
        record: &Record,
        body: &ComponentMoved,
    ) -> Result<(), StoreFault> {
        self.inner
            .prepare_cached(
                "INSERT INTO fitted (digest, machine, part, component, at_ms, on_machine, own, hours)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT DO NOTHING",
            )?
            .execute(params![
                record.digest.0,
                machine.to_string(),
                body.part,
                body.component.to_string(),
                record.payload.at.timestamp_millis(),
                body.fitted,
                body.own.hours,
                body.service.hours,
            ])?;
        Ok(())
    }
}
