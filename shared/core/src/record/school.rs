//! What records say of a school: who belongs to it, as what, and which machines are its own.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

use super::{Body, DeviceId, Digest, Jwk};

/// What a person may be in a school, least rights first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// Sees everything.
    Viewer,
    /// Looks at machines before flight, and looks after their own.
    Pilot,
    /// Works on any machine, and gives the second look.
    Mechanic,
    /// All of that, and decides what may wait and which lists are used.
    Instructor,
}

/// What a record may do to a machine's state or a school's lists.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum Right {
    /// Say that a point is as it should be; log time in service.
    Look,
    /// Work on it, put defects right, release; describe it, keep its limits, parts and due items.
    Work,
    /// Be the second pair of eyes.
    SecondLook,
    /// Say that a defect may wait.
    Defer,
    /// Publish lists and data sheets.
    Publish,
}

impl Right {
    /// The right that a record of this kind needs to count in full; none where anybody's counts.
    pub fn needed(body: &Body) -> Option<Self> {
        match body {
            Body::Inspection(body) if body.job.is_some() => Some(Self::Work),
            Body::Inspection(_) | Body::TimeLogged(_) | Body::FlightPlanned(_) | Body::ReadingsTaken(_) => {
                Some(Self::Look)
            }
            Body::Machine(_)
            | Body::Rectified(_)
            | Body::LimitConfirmed(_)
            | Body::Released(_)
            | Body::ComponentMoved(_)
            | Body::DueKept(_) => Some(Self::Work),
            Body::SecondLook(_) => Some(Self::SecondLook),
            Body::Deferred(_) => Some(Self::Defer),
            Body::CataloguePublished(_) => Some(Self::Publish),
            _ => None,
        }
    }
}

impl Role {
    /// All roles, least rights first.
    pub const ALL: [Self; 4] = [Self::Viewer, Self::Pilot, Self::Mechanic, Self::Instructor];

    /// Whether a role gives a right over a machine; `own` where its holder registered the machine.
    pub fn gives(self, right: Right, own: bool) -> bool {
        match right {
            Right::Look => self >= Self::Pilot,
            Right::Work => self >= Self::Mechanic || (self == Self::Pilot && own),
            Right::SecondLook => self >= Self::Mechanic,
            Right::Defer | Right::Publish => self == Self::Instructor,
        }
    }
}

/// A school begins. The record's digest is the school's name for ever; its device is the root,
/// which alone admits and ends members, until it hands that over.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SchoolFounded {
    /// What people call it.
    pub name: String,
    /// True for the invented school of the demonstration.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub invented: bool,
}

/// The root admits a person's device, or admits it anew in another role.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MemberAdmitted {
    /// The school.
    pub school: Digest,
    /// The device.
    pub device: DeviceId,
    /// Who holds it; must be what the device itself says.
    pub person: Uuid,
    /// What the person is called.
    pub name: String,
    /// As what.
    pub role: Role,
    /// The first day.
    pub from: NaiveDate,
    /// The last day; none for an open end.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<NaiveDate>,
}

/// The root ends a person's membership, on all their devices: what it had seen of them stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MemberEnded {
    /// The school.
    pub school: Digest,
    /// The person.
    pub person: Uuid,
    /// Why.
    pub reason: String,
}

/// The root gives its place to a member's device.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RootHanded {
    /// The school.
    pub school: Digest,
    /// The new root.
    pub to: DeviceId,
}

/// A device takes its place in a school: its holder agrees that the school's root may end its key.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SchoolJoined {
    /// The school.
    pub school: Digest,
    /// A second key that may carry records to and from the school's server. It states no fact, so
    /// it needs no PIN; the latest one named holds.
    pub courier: Jwk,
}

/// A machine's owner puts it under a school's roles, or takes it out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MachineEnrolled {
    /// The school; none to take it out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub school: Option<Digest>,
}

/// Lists, data sheets or words for all members, in place of those of the same name before.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CataloguePublished {
    /// The school.
    pub school: Digest,
    /// What people call it; a later one of the same title takes its place.
    pub title: String,
    /// Counts up with each publication of this title, from 1.
    pub version: u32,
    /// Files by their path in the catalogue (`engines/x.toml`), each with its text.
    pub files: BTreeMap<String, String>,
    /// What is new.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}
