//! An assembly graph as its author writes it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use toml::Spanned;

use crate::record::Interval;

/// A name with its place in the file, so that a fault can say where.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(transparent)]
pub struct Name(#[schemars(with = "String")] Spanned<String>);

impl Name {
    /// The name.
    pub fn as_str(&self) -> &str {
        self.0.get_ref()
    }

    /// Where it stands: a byte offset.
    pub fn at(&self) -> usize {
        self.0.span().start
    }
}

impl PartialEq<str> for Name {
    fn eq(&self, other: &str) -> bool {
        self.as_str() == other
    }
}

/// What holds a joint. Only the words differ: whatever was undone is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum Fastener {
    Nut,
    Locknut,
    Bolt,
    Screw,
    /// A part that is screwed in itself: a spark plug.
    Thread,
    Spring,
    Clip,
    Clamp,
    Strap,
    /// An electric connector.
    Connector,
    /// Pushed on: a plug cap.
    Push,
    /// Two faces and what seals them; other joints hold them together.
    Seal,
    /// A belt round its pulleys.
    Belt,
}

/// One thing that comes off, or that other things come off from.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// Unique among parts and joints. Words: `graph-part-ID`.
    pub id: Name,
    /// Which component of the machine it belongs to.
    pub component: Name,
    /// Only engines have it whose data sheet names all of these features.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub feature: Vec<Name>,
    /// Parts that must be off before it comes off.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub after: Vec<Name>,
    /// Points to look at when it was off.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Name>,
}

/// Where parts meet and are held together.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Joint {
    /// Unique among parts and joints. Words: `joint-ID`.
    pub id: Name,
    /// The parts that it joins, two or more. An engine that lacks one of them lacks the joint.
    pub parts: Vec<Name>,
    /// What holds it.
    pub fastener: Fastener,
    /// The torque: a band of the data sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub band: Option<Name>,
    /// How many fasteners: a value of the data sheet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub count: Option<Name>,
    /// Parts that must be off to reach it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub after: Vec<Name>,
    /// Whether a life hangs on it: another person must look at it too.
    #[serde(default)]
    pub critical: bool,
    /// What is renewed whenever it was undone. Words: `consumable-ID`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub renew: Vec<Name>,
    /// Tools that are counted back. Words: `tool-ID`.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tools: Vec<Name>,
    /// Points to look at when it was undone or loosened.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Name>,
}

/// What a job makes due later. Words: `follow-up-ID`.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FollowUp {
    /// Unique among follow-ups.
    pub id: Name,
    /// The joint to come back to, if it was disturbed; this or a point.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub joint: Option<Name>,
    /// The point to look at again; this or a joint.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub point: Option<Name>,
    /// The jobs that fulfil it. At least one of them doesn't make it due again.
    pub by: Vec<Name>,
    /// After how much; whichever comes first.
    pub after: Interval,
}

/// A piece of work that people speak of. Words: `job-ID`, and `.what` in one line.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// Unique among jobs.
    pub id: Name,
    /// Parts that it takes off.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub off: Vec<Name>,
    /// Joints that it loosens or re-torques in place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub loosened: Vec<Name>,
    /// Points of its own, beside those of what it disturbs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Name>,
    /// What it makes due later.
    #[serde(default, rename = "follow-ups", skip_serializing_if = "Vec::is_empty")]
    pub follow_ups: Vec<Name>,
}

/// A file: one assembly, and the engines that are built so. Parts stand in the order in which
/// one would strip the engine: where the needs leave a choice, that order holds.
#[derive(Clone, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GraphFile {
    /// Data sheets of the engines that are built so.
    pub serves: Vec<Name>,
    /// Points that every job ends with.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<Name>,
    /// Parts.
    pub part: Vec<Part>,
    /// Joints.
    #[serde(default)]
    pub joint: Vec<Joint>,
    /// What falls due after jobs.
    #[serde(default, rename = "follow-up", skip_serializing_if = "Vec::is_empty")]
    pub follow_up: Vec<FollowUp>,
    /// Jobs.
    pub job: Vec<Job>,
}
