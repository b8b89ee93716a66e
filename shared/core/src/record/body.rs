//! What records say, by kind.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;
use uuid::Uuid;

use super::{
    CataloguePublished, ComponentMoved, Deferred, DeviceId, Digest, DueKept, FlightPlanned, JobBegun, Jwk,
    MachineEnrolled, MemberAdmitted, MemberEnded, ReadingsTaken, Released, RootHanded, SchoolFounded,
    SchoolJoined, SecondLook, TimeLogged, ToolKept, TorqueDone, WingLoad,
};
use crate::list::{Meaning, ResolvedBand};
use crate::units::Quantity;

/// Ties each kind's name to its body, so that a new kind is one line.
macro_rules! bodies {
    ($($name:ident($body:ty) $kind:literal;)*) => {
        /// A record's body, typed.
        #[derive(Clone, Debug, PartialEq)]
        #[allow(missing_docs)]
        pub enum Body {
            $($name($body),)*
            /// A kind of a newer version: kept, passed on, shown; and it grounds, since it might matter.
            Unknown { kind: String, body: Value },
        }

        impl Body {
            /// Reads a body of this kind.
            ///
            /// # Errors
            /// Where a known kind's body is malformed.
            pub fn read(kind: &str, body: &Value) -> Result<Self, serde_json::Error> {
                Ok(match kind {
                    $($kind => Body::$name(<$body as Deserialize>::deserialize(body)?),)*
                    _ => Body::Unknown { kind: kind.to_owned(), body: body.clone() },
                })
            }

            /// The kind's name and the body as JSON.
            ///
            /// # Errors
            /// Where a number isn't finite.
            pub fn write(&self) -> Result<(String, Value), serde_json::Error> {
                Ok(match self {
                    $(Body::$name(body) => ($kind.to_owned(), serde_json::to_value(body)?),)*
                    Body::Unknown { kind, body } => (kind.clone(), body.clone()),
                })
            }
        }
    };
}

bodies! {
    Member(Member) "member";
    Vouched(Vouched) "device-vouched";
    Revoked(Revoked) "key-revoked";
    Machine(Machine) "machine";
    Inspection(Inspection) "inspection";
    Rectified(Rectified) "defect-rectified";
    Correction(Correction) "correction";
    LimitConfirmed(LimitConfirmed) "limit-confirmed";
    TimeLogged(TimeLogged) "time-logged";
    JobBegun(JobBegun) "job-begun";
    SecondLook(SecondLook) "second-look";
    Released(Released) "job-released";
    Deferred(Deferred) "defect-deferred";
    ToolKept(ToolKept) "tool";
    ComponentMoved(ComponentMoved) "component-moved";
    DueKept(DueKept) "due-item";
    SchoolFounded(SchoolFounded) "school-founded";
    SchoolJoined(SchoolJoined) "school-joined";
    MemberAdmitted(MemberAdmitted) "member-admitted";
    MemberEnded(MemberEnded) "member-ended";
    RootHanded(RootHanded) "root-handed";
    MachineEnrolled(MachineEnrolled) "machine-enrolled";
    CataloguePublished(CataloguePublished) "catalogue-published";
    FlightPlanned(Box<FlightPlanned>) "flight-planned";
    ReadingsTaken(ReadingsTaken) "readings-taken";
}

/// A person's device states its key and its holder; the first record of every device.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Member {
    /// The same on each device of one person.
    pub person: Uuid,
    /// What the person is called.
    pub name: String,
    /// The device's public key.
    pub key: Jwk,
    /// True for the invented people of the demonstration.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub invented: bool,
}

/// The holder of this device holds another one too, which may end this one's key.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Vouched {
    /// The other device.
    pub device: DeviceId,
}

/// A lost or retired device's key ends here.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Revoked {
    /// Whose key.
    pub device: DeviceId,
    /// Why.
    pub reason: String,
}

/// A machine as flown, described whole; the latest description holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Machine {
    /// What people call it.
    pub name: String,
    /// The engine's data sheet, by id.
    pub engine: String,
    /// Parts fitted, each with its serial number or an empty text.
    pub fitted: BTreeMap<String, String>,
    /// The reserve, where one is fitted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub reserve: Option<Reserve>,
    /// What the wing may carry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub wing_load: Option<WingLoad>,
    /// What it weighs as flown, wing and reserve with it, without fuel.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub weight: Option<Quantity>,
    /// Engine hours when this was written.
    pub hours: f64,
    /// Flights when this was written.
    pub flights: u32,
    /// Anything else worth knowing.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// True for the invented machines of the demonstration.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub invented: bool,
}

/// A reserve parachute and its repacking.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Reserve {
    /// The date on its packing card; none when nobody knows.
    #[ts(type = "string | null")]
    pub repacked_on: Option<NaiveDate>,
    /// Days until the next repack, as its manual says.
    pub every_days: u32,
}

/// One list carried out on one machine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Inspection {
    /// Which list (`before-flight`).
    pub occasion: String,
    /// Digest of the list as composed, so that one can tell later what was asked.
    pub list: Digest,
    /// The job after which it was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub job: Option<Digest>,
    /// The language the points were read in.
    pub language: String,
    /// First point shown.
    pub started: DateTime<FixedOffset>,
    /// Last point answered.
    pub finished: DateTime<FixedOffset>,
    /// Engine hours at the time, as known.
    pub hours: f64,
    /// Flights at the time, as known.
    pub flights: u32,
    /// What was seen, in the order of the list.
    pub findings: Vec<Finding>,
    /// Points nobody looked at.
    pub left: Vec<Left>,
    /// Where an interruption made the list step back.
    pub stepped_back: Vec<SteppedBack>,
    /// Points answered in much less than the usual time, said back before signing.
    pub hurried: Vec<String>,
}

/// What the inspector saw at one point, in the words shown then.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Finding {
    /// The point's id.
    pub point: String,
    /// Where it lies.
    pub station: String,
    /// What it belongs to.
    pub component: String,
    /// What was to be looked at.
    pub title: String,
    /// What it means.
    pub means: Meaning,
    /// Whether a later look alone clears it: the day, the pilot, a buckle.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub passing: bool,
    /// The answer's id, for a point answered in words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub answer: Option<String>,
    /// The answer's words, or the measured value as read.
    pub words: String,
    /// The value, for a measured point.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured: Option<Quantity>,
    /// The band it was held against, with its sources.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub band: Option<ResolvedBand>,
    /// How the joint was tightened, for a point that is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub torque: Option<TorqueDone>,
    /// What the inspector added.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Pictures, by digest of their bytes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<Digest>,
    /// When it was answered.
    pub at: DateTime<FixedOffset>,
    /// How long the point was on the screen.
    pub seconds: f64,
    /// Answers given before this one and taken back.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub before: Vec<Earlier>,
}

/// An answer that was taken back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Earlier {
    /// Its words.
    pub words: String,
    /// What it meant.
    pub means: Meaning,
    /// When it was given.
    pub at: DateTime<FixedOffset>,
}

/// A point that nobody looked at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Left {
    /// The point's id.
    pub point: String,
    /// What was to be looked at.
    pub title: String,
    /// Whether the list demands it.
    pub must: bool,
}

/// An interruption after which earlier points were asked again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SteppedBack {
    /// When the inspector came back.
    pub at: DateTime<FixedOffset>,
    /// How long nobody answered, minutes.
    pub away_minutes: f64,
    /// The points asked again.
    pub points: Vec<String>,
}

/// A defect put right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rectified {
    /// The point at which it was found.
    pub point: String,
    /// The record that opened it.
    pub opened_by: Digest,
    /// What was done.
    pub how: String,
}

/// A later word on a signed finding. It can only make a verdict more careful: what
/// was found wrong is put right by a rectification, not by a second thought.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Correction {
    /// The inspection's record.
    pub of: Digest,
    /// The point.
    pub point: String,
    /// What was to be looked at.
    pub title: String,
    /// What should have been said.
    pub words: String,
    /// What that means.
    pub means: Meaning,
    /// Why.
    pub reason: String,
}

/// The owner confirms a limit from the maker's manual.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LimitConfirmed {
    /// The band in the engine's data sheet.
    pub band: String,
    /// Its lower end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub low: Option<Quantity>,
    /// Its upper end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub high: Option<Quantity>,
    /// The manual.
    pub document: String,
    /// Where in it.
    pub page: String,
}
