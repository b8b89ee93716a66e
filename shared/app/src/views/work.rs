//! Work on a machine: jobs, torque tools, second looks.

use super::{Named, UnitView};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::record::ToolKept;
use witnessmark_core::torque::Position;

views! {
/// A torque tool.
struct ToolView {
    /// As kept.
    pub kept: ToolKept,
    /// Clicks since its calibration, those of signed inspections among them.
    pub cycles: u32,
    /// Whether it may be used today.
    pub usable: bool,
    /// Why or why not, in a sentence.
    pub words: String,
}
/// A joint to be tightened.
struct TorqueAsk {
    /// The joint in the assembly graph.
    pub joint: String,
    /// The torque as a person reads it.
    pub words: String,
    /// Where it is written, or that it is unconfirmed.
    pub source: String,
    /// The band's name in the data sheet.
    pub band: String,
    /// Whether there is a number at all: without one nothing can be set.
    pub has_number: bool,
    /// How many fasteners.
    pub nuts: u32,
    /// Where each is drawn, within the unit circle.
    pub positions: Vec<Position>,
    /// What may be typed for a reading; the first is the data sheet's.
    pub units: Vec<UnitView>,
}
/// How to tighten a joint with one tool.
struct TorqueView {
    /// How the tool stands (`fit`, `watch`, `refused`).
    pub standing: String,
    /// Why, in sentences; empty where nothing is against it.
    pub against: Vec<String>,
    /// What to set the tool to at the full torque.
    pub setting: String,
    /// The same in another unit.
    pub setting_other: String,
    /// What the nut then gets, in a sentence.
    pub spread: String,
    /// What that does to stud and thread, in a sentence; none where the data sheet doesn't know them.
    pub borne: Option<String>,
    /// Every step in its order.
    pub steps: Vec<TorqueStep>,
}
/// One nut at one stage.
struct TorqueStep {
    /// Which round, from 1.
    pub stage: u32,
    /// The round in words.
    pub stage_words: String,
    /// Which nut, from 1.
    pub nut: u32,
    /// What the tool is set to.
    pub setting: String,
    /// Whether the movement before the click is asked: in the round at full torque.
    pub movement: bool,
}
/// Jobs that can be done on a machine.
struct JobChoice {
    /// Its id.
    pub id: String,
    /// What people call it.
    pub words: String,
    /// What it is, in one line.
    pub what: String,
}
/// What doing some jobs means.
struct JobPlan {
    /// What comes off, first to last.
    pub take_off: Vec<PlanItem>,
    /// The same backwards.
    pub refit: Vec<PlanItem>,
    /// What is renewed.
    pub renew: Vec<String>,
    /// Tools to count back.
    pub count_tools: Vec<String>,
    /// Joints that another person must look at.
    pub independent: Vec<String>,
    /// What falls due later.
    pub follow_ups: Vec<String>,
    /// Points on the list after the work.
    pub points: u32,
}
/// A part or a joint in its place of the order.
struct PlanItem {
    /// Its id.
    pub id: String,
    /// Its words.
    pub words: String,
    /// Whether it is a joint.
    pub joint: bool,
}
/// A job not released.
struct JobView {
    /// The record that began it.
    pub record: String,
    /// The jobs in words.
    pub title: String,
    /// When and by whom.
    pub since: String,
    /// What it means.
    pub plan: Option<JobPlan>,
    /// What it still lacks, in sentences.
    pub lacks: Vec<String>,
    /// Whether its list has been signed.
    pub inspected: bool,
    /// Joints that another person must look at.
    pub independent: Vec<Named>,
    /// Whether it may be released.
    pub ready: bool,
}
/// What another phone asks to be looked at.
struct SecondLookView {
    /// The machine.
    pub machine: String,
    /// The job in words.
    pub title: String,
    /// The joints.
    pub joints: Vec<Named>,
    /// Whether this device asks itself: then somebody else must look.
    pub own: bool,
}
/// Somebody who signs on this device beside its own person.
struct SecondPerson {
    /// Their device key.
    pub device: String,
    /// Their name.
    pub name: String,
}
}
