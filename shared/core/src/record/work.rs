//! What records say of work, time and looks after work.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

use super::Digest;
use crate::list::Meaning;
use crate::units::Quantity;

/// The three things that time in service counts, and fuel, for what falls due after a tank.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Service {
    /// Engine hours.
    pub hours: f64,
    /// Flights.
    pub flights: u32,
    /// Tanks of fuel used up.
    pub tanks: u32,
}

impl Service {
    /// The lesser of each count.
    #[must_use]
    pub fn least(self, other: Self) -> Self {
        Self {
            hours: self.hours.min(other.hours),
            flights: self.flights.min(other.flights),
            tanks: self.tanks.min(other.tanks),
        }
    }

    /// The greater of each count.
    #[must_use]
    pub fn most(self, other: Self) -> Self {
        Self {
            hours: self.hours.max(other.hours),
            flights: self.flights.max(other.flights),
            tanks: self.tanks.max(other.tanks),
        }
    }
}

impl std::ops::Add for Service {
    type Output = Self;

    fn add(self, more: Self) -> Self {
        Self {
            // Never past what a number can be: infinity can't be kept.
            hours: (self.hours + more.hours).clamp(f64::MIN, f64::MAX),
            flights: self.flights.saturating_add(more.flights),
            tanks: self.tanks.saturating_add(more.tanks),
        }
    }
}

/// Time in service logged after running or flying.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TimeLogged {
    /// What was added.
    pub added: Service,
    /// The hour meter's reading, where it was read: it then holds, whatever was added.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reading: Option<f64>,
    /// Fuel burned, where it was measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fuel: Option<Quantity>,
    /// Anything worth knowing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// Work begun on a machine: it stays on the ground until the work is released.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct JobBegun {
    /// The jobs, by id in the assembly graph.
    pub jobs: Vec<String>,
    /// The jobs in the words shown.
    pub title: String,
    /// Joints disturbed, each with the words shown.
    pub disturbed: BTreeMap<String, String>,
    /// Points of the list after service.
    pub points: Vec<String>,
    /// Joints that another person must look at.
    pub independent: Vec<String>,
    /// What falls due later.
    pub follow_ups: Vec<FollowUpPlanned>,
    /// Time in service when the work was begun.
    pub service: Service,
    /// Anything worth knowing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// An inspection that a job makes due later.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FollowUpPlanned {
    /// Its id in the assembly graph.
    pub id: String,
    /// In the words shown.
    pub title: String,
    /// The jobs that fulfil it.
    pub by: Vec<String>,
    /// After how much, counted from the release; whichever comes first.
    pub after: Interval,
}

/// How much may pass; whichever comes first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Interval {
    /// Engine hours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hours: Option<f64>,
    /// Flights.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flights: Option<u32>,
    /// Tanks of fuel.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tanks: Option<u32>,
    /// Calendar days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub days: Option<u32>,
}

impl Interval {
    /// Whether only the calendar counts.
    pub fn by_days_alone(&self) -> bool {
        self.hours.is_none() && self.flights.is_none() && self.tanks.is_none()
    }
}

/// The second pair of eyes on critical joints. It counts only from another person than those
/// who did the work and signed its inspection.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SecondLook {
    /// The job.
    pub job: Digest,
    /// What was seen, joint by joint.
    pub joints: Vec<JointSeen>,
}

/// What a second person saw at one joint.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct JointSeen {
    /// The joint.
    pub joint: String,
    /// What it means.
    pub means: Meaning,
    /// What was added.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// The signed statement that a job's inspections are complete. Not a legal certificate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Released {
    /// The job.
    pub job: Digest,
    /// The inspection after the work.
    pub inspection: Digest,
    /// The second looks.
    pub second_looks: Vec<Digest>,
    /// Time in service then: what falls due later counts from here.
    pub service: Service,
}

/// A defect that somebody entitled lets fly, within limits.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Deferred {
    /// The point.
    pub point: String,
    /// The record that opened it.
    pub opened_by: Digest,
    /// Engine hours up to which it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until_hours: Option<f64>,
    /// Flights up to which it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until_flights: Option<u32>,
    /// The last day on which it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until_date: Option<NaiveDate>,
    /// How it may be flown meanwhile.
    pub condition: String,
    /// Why it may wait.
    pub reason: String,
}

/// A torque tool, described whole; the latest description holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct ToolKept {
    /// The tool, the same in every description.
    #[ts(type = "string")]
    pub tool: Uuid,
    /// What people call it.
    pub name: String,
    /// Lowest marked value.
    pub low: Quantity,
    /// Highest marked value.
    pub high: Quantity,
    /// Permissible deviation, percent of the reading.
    pub deviation_percent: f64,
    /// When it was last calibrated; none when nobody knows.
    #[ts(type = "string | null")]
    pub calibrated_on: Option<NaiveDate>,
    /// Days between calibrations.
    pub every_days: u32,
    /// Clicks between calibrations.
    pub every_cycles: u32,
    /// Clicks since the last calibration, as known when this was written.
    pub cycles: u32,
    /// Dropped or forced since.
    pub dropped: bool,
}

/// A component with its own time in service, fitted to the record's machine or taken off it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ComponentMoved {
    /// The component.
    pub component: Uuid,
    /// Which part of a machine it is.
    pub part: String,
    /// What people call it.
    pub name: String,
    /// Its serial number.
    pub serial: String,
    /// On, or off.
    pub fitted: bool,
    /// Its own time in service at that moment.
    pub own: Service,
    /// The machine's time in service at that moment.
    pub service: Service,
}

/// Something that falls due again and again; the latest description holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DueKept {
    /// The item.
    pub item: Uuid,
    /// What is due.
    pub title: String,
    /// How often; whichever comes first.
    pub every: Interval,
    /// How much later is still tolerated, percent of the interval.
    pub tolerance_percent: f64,
    /// Whether the next counts from when it was due rather than from when it was done.
    pub from_due: bool,
    /// The time in service at which it was last done.
    pub done: Service,
    /// The day on which it was last done.
    pub done_on: NaiveDate,
    /// No longer wanted.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub ended: bool,
}

/// A joint tightened: with what, how far, and how each nut moved before the click.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct TorqueDone {
    /// The tool.
    #[ts(type = "string")]
    pub tool: Uuid,
    /// What it was called then.
    pub tool_name: String,
    /// What it was set to in the last stage.
    pub setting: Quantity,
    /// What each nut may then have, given the tool's deviation: least.
    pub least: Quantity,
    /// Most.
    pub most: Quantity,
    /// Each nut's movement before the click in the last stage, eighths of a turn; nut 1 first.
    pub eighths: Vec<u8>,
    /// What the tool read, where it reads.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reading: Option<Quantity>,
    /// What was against the tool or the movement, in words; empty where nothing was.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub watch: Vec<String>,
    /// Why the tool was used although it is overdue or outside its marked range.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub override_reason: Option<String>,
}
