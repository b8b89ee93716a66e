//! What the screens are told. Every text is already in the person's language; no screen
//! decides anything of the trade.

use std::collections::BTreeMap;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::due::Standing;
use witnessmark_core::list::{EngineKind, Given, Meaning};
use witnessmark_core::record::{Interval, Machine, Service, ToolKept};
use witnessmark_core::torque::Position;
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Rule, State};

/// Gives every view the same derives, so that a view is only its members.
macro_rules! views {
    ($($(#[$meta:meta])* $kind:ident $name:ident $body:tt)*) => {
        $(#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)] $(#[$meta])* pub $kind $name $body)*
    };
}

views! {
/// What the app is when it opens.
struct Start {
    /// Who signs here; none before the first start is done.
    pub person: Option<Person>,
    /// The language in use.
    pub language: String,
    /// The languages there are.
    pub languages: Vec<String>,
    /// Minutes without an answer after which a list steps back.
    pub patience_minutes: u32,
    /// The cautions that hold always.
    pub cautions: Vec<String>,
    /// Something that went wrong with the stored data, and what was done.
    pub warning: Option<String>,
}
/// The person who signs on this device.
struct Person {
    /// Their name.
    pub name: String,
    /// The key's thumbprint: what another person compares.
    pub device: String,
    /// Whether the platform's keychain helps to seal the key.
    pub keychain: bool,
}
/// A machine in short.
struct MachineCard {
    /// Its id.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// Its engine's name.
    pub engine: String,
    /// Engine hours.
    pub hours: f64,
    /// Flights.
    pub flights: u32,
    /// Whether it exists only in the demonstration.
    pub invented: bool,
    /// The verdict.
    pub verdict: VerdictView,
    /// An inspection begun and not signed.
    pub walk: Option<WalkBrief>,
}
/// An inspection begun and not signed.
struct WalkBrief {
    /// Its id.
    pub id: String,
    /// Which list.
    pub occasion: String,
    /// The list's name.
    pub words: String,
    /// Points looked at.
    pub done: u32,
    /// Points in all.
    pub of: u32,
}
/// May it fly?
struct VerdictView {
    /// The judgement.
    pub state: State,
    /// The judgement as a sentence.
    pub headline: String,
    /// Why, worst first.
    pub reasons: Vec<ReasonView>,
}
/// One reason.
struct ReasonView {
    /// What this reason alone makes of the machine.
    pub state: State,
    /// The rule it comes from.
    pub rule: Rule,
    /// What is so.
    pub words: String,
    /// What would clear it.
    pub clears: String,
    /// The record it rests on.
    pub record: Option<String>,
    /// The point it is about.
    pub point: Option<String>,
    /// The limit it is about.
    pub band: Option<String>,
    /// The facts behind it.
    pub because: Vec<FactView>,
}
/// A fact behind a reason.
struct FactView {
    /// What is so.
    pub words: String,
    /// The record that says so.
    pub record: Option<String>,
}
/// What a machine can be made of.
struct Choices {
    /// The engine types there are.
    pub engines: Vec<EngineType>,
}
/// A part.
struct PartView {
    /// Its id: the key in `Machine.fitted`.
    pub id: String,
    /// Its name.
    pub words: String,
    /// Whether there are machines without it.
    pub optional: bool,
}
/// An engine type.
struct EngineType {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What drives the propeller.
    pub kind: EngineKind,
    /// The kind in words.
    pub words: String,
    /// Whether it exists only in the demonstration.
    pub invented: bool,
    /// The parts of a machine with this engine; each may have a serial number.
    pub parts: Vec<PartView>,
}
/// An id with its words.
struct Named {
    /// The id.
    pub id: String,
    /// Its words.
    pub words: String,
}
/// Everything about one machine.
struct MachinePage {
    /// In short.
    pub card: MachineCard,
    /// As described.
    pub description: Machine,
    /// The lists that can be walked.
    pub occasions: Vec<Named>,
    /// What is open.
    pub open: Vec<OpenView>,
    /// What happened, latest first.
    pub timeline: Vec<TimelineEntry>,
    /// The engine's limits.
    pub limits: Vec<LimitView>,
    /// What falls due, nearest first.
    pub due: Vec<DueView>,
    /// Components with their own time in service.
    pub components: Vec<ComponentView>,
    /// The job not released, if there is one.
    pub job: Option<JobView>,
    /// Tanks of fuel used up, as logged.
    pub tanks: u32,
    /// Entries of time that wait for a signature.
    pub waiting: u32,
}
/// Something that falls due.
struct DueView {
    /// Its id; empty for what a job made due.
    pub id: String,
    /// What is due.
    pub title: String,
    /// How it stands (`later`, `soon`, `tolerated`, `over`).
    pub standing: Standing,
    /// What is left, in a sentence.
    pub left: String,
    /// When, at this rate of flying, in a sentence; none where there is too little to say.
    pub forecast: Option<String>,
    /// The record it rests on.
    pub record: String,
    /// The item as kept, for changing it; none for what a job made due.
    pub kept: Option<DueForm>,
}
/// Something that falls due again and again, as a form has it.
struct DueForm {
    /// Its id; empty for a new one.
    pub id: String,
    /// What is due.
    pub title: String,
    /// How often; whichever comes first.
    pub every: Interval,
    /// How much later is still tolerated, percent of the interval.
    pub tolerance_percent: f64,
    /// Whether the next counts from when it was due rather than from when it was done.
    pub from_due: bool,
    /// When it was last done: engine hours then.
    pub done_hours: f64,
    /// Flights then.
    pub done_flights: u32,
    /// The day.
    #[ts(type = "string")]
    pub done_on: NaiveDate,
}
/// A component with its own time in service.
struct ComponentView {
    /// Its id.
    pub id: String,
    /// The part it is.
    pub part: String,
    /// The part in words.
    pub part_words: String,
    /// What people call it.
    pub name: String,
    /// Its serial number.
    pub serial: String,
    /// Whether it is on this machine now.
    pub fitted: bool,
    /// Its own time in service.
    pub own: Service,
    /// That in a sentence.
    pub words: String,
    /// The record it rests on.
    pub record: String,
}
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
/// A defect or a watch item.
struct OpenView {
    /// The point.
    pub point: String,
    /// What is to be looked at.
    pub title: String,
    /// Watch or unserviceable.
    pub means: Meaning,
    /// What was seen.
    pub words: String,
    /// When and by whom.
    pub since: String,
    /// The record that says so.
    pub record: String,
}
/// One mark on the line of time.
struct TimelineEntry {
    /// The record.
    pub record: String,
    /// When, as the language writes it.
    pub when: String,
    /// When (RFC 3339).
    pub at: String,
    /// Kind of record.
    pub kind: String,
    /// What happened, in a sentence.
    pub words: String,
    /// Engine hours then, where known.
    pub hours: Option<f64>,
    /// The worst that was seen, for an inspection.
    pub worst: Option<Meaning>,
    /// Who signed.
    pub by: String,
}
/// A limit of the engine.
struct LimitView {
    /// The band's name in the data sheet.
    pub band: String,
    /// Its words.
    pub words: String,
    /// The band as a person reads it.
    pub value: String,
    /// Lower end.
    pub low: Option<Quantity>,
    /// Upper end.
    pub high: Option<Quantity>,
    /// Which ends the band has: the form asks for these.
    pub has_low: bool,
    /// See `has_low`.
    pub has_high: bool,
    /// The sheet's unit, and others of its kind.
    pub units: Vec<UnitView>,
    /// Whether a life hangs on it.
    pub critical: bool,
    /// Whether a document confirms it.
    pub confirmed: bool,
    /// Where it is written, or that it is unconfirmed and why.
    pub source: String,
}
/// A unit.
struct UnitView {
    /// Its code.
    pub code: Unit,
    /// As a person reads it.
    pub sign: String,
}
/// A list being walked.
struct Walk {
    /// The inspection's id.
    pub id: String,
    /// The machine.
    pub machine: String,
    /// What people call it.
    pub machine_name: String,
    /// Which list.
    pub occasion: String,
    /// The list's name.
    pub words: String,
    /// In walking order.
    pub stations: Vec<StationView>,
    /// Where the inspector stands.
    pub progress: WalkProgress,
}
/// A place to stand.
struct StationView {
    /// Its id, as in the machine's drawing.
    pub id: String,
    /// Its name.
    pub words: String,
    /// Where to stand.
    pub stand: String,
    /// Its points, in the order in which they are asked.
    pub points: Vec<PointView>,
}
/// One thing to look at.
struct PointView {
    /// Its id.
    pub id: String,
    /// What to look at.
    pub title: String,
    /// What good looks like.
    pub good: String,
    /// What bad looks like.
    pub bad: String,
    /// Why it matters.
    pub why: String,
    /// Whether leaving it out grounds the machine.
    pub must: bool,
    /// Whether it comes first within its station.
    pub critical: bool,
    /// The drawing's name.
    pub drawing: String,
    /// The place in the drawing.
    pub focus: String,
    /// Caution to show above the answers.
    pub caution: Option<String>,
    /// How it is answered.
    pub ask: AskView,
    /// That a figure in it is unconfirmed, and what to do.
    pub unconfirmed: Option<String>,
    /// What was found last time, if it must be looked at again.
    pub last_time: Option<LastTime>,
}
/// What was found last time.
struct LastTime {
    /// In a sentence.
    pub words: String,
    /// Watch or unserviceable.
    pub means: Meaning,
    /// The record that says so.
    pub record: String,
}
/// How a point is answered.
#[serde(tag = "by", rename_all = "kebab-case")]
enum AskView {
    /// By one of its own answers.
    Words {
        /// In the author's order.
        answers: Vec<AnswerView>,
    },
    /// By a value.
    Value(ValueAsk),
    /// By tightening it.
    Torque(TorqueAsk),
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
/// A code to be shown to another phone.
struct CodeOut {
    /// The text in it.
    pub text: String,
    /// The code as SVG, where it fits one.
    pub svg: Option<String>,
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
/// An answer.
struct AnswerView {
    /// Its id.
    pub id: String,
    /// What is seen.
    pub words: String,
    /// What it means.
    pub means: Meaning,
}
/// A measured point's question.
struct ValueAsk {
    /// The band's name in the data sheet.
    pub band: String,
    /// The band as a person reads it.
    pub words: String,
    /// Lower end, in the first of `units`.
    pub low: Option<f64>,
    /// Upper end, in the first of `units`.
    pub high: Option<f64>,
    /// What may be typed; the first is the data sheet's.
    pub units: Vec<UnitView>,
    /// Where the band is written, or that it is unconfirmed.
    pub source: String,
}
/// Where the inspector stands.
struct WalkProgress {
    /// The point to look at now; none when all are done or left once more.
    pub current: Option<String>,
    /// Points done.
    pub done: u32,
    /// Points in all.
    pub of: u32,
    /// Minutes since the first point was shown.
    pub minutes: f64,
    /// Each point's state.
    pub points: BTreeMap<String, PointState>,
    /// Why the list stepped back when it was opened, in a sentence.
    pub stepped_back: Option<String>,
    /// Whether there is an answer to take back.
    pub can_undo: bool,
}
/// One point's state.
struct PointState {
    /// Whether it needs a look.
    pub state: Look,
    /// The answer that stands.
    pub given: Option<GivenView>,
    /// The note beside it.
    pub note: String,
    /// Pictures, by digest.
    pub photos: Vec<String>,
}
/// Whether a point needs a look.
#[serde(rename_all = "kebab-case")]
enum Look {
    /// Not looked at yet.
    Open,
    /// Looked at.
    Done,
    /// Looked at, and to be looked at again after an interruption.
    Again,
    /// Left for now.
    Left,
}
/// An answer given.
struct GivenView {
    /// As given.
    pub given: Given,
    /// In words.
    pub words: String,
    /// What it means.
    pub means: Meaning,
}
/// A value held against its band while it is being typed.
struct JudgedView {
    /// What it means.
    pub means: Meaning,
    /// The value in the band's unit.
    pub value: f64,
    /// In a sentence.
    pub words: String,
}
/// An inspection said back before it is signed.
struct Summary {
    /// Minutes from the first point shown to the last answered.
    pub minutes: f64,
    /// Points done.
    pub done: u32,
    /// Points in all.
    pub of: u32,
    /// What is said back, sentence by sentence.
    pub sentences: Vec<String>,
    /// Points answered in much less than the usual time.
    pub hurried: Vec<Named>,
    /// Points that nobody looked at.
    pub left: Vec<LeftView>,
    /// Findings that aren't serviceable.
    pub found: Vec<FoundView>,
    /// The verdict that signing would give.
    pub preview: VerdictView,
}
/// A point that nobody looked at.
struct LeftView {
    /// Its id.
    pub id: String,
    /// What was to be looked at.
    pub words: String,
    /// Whether that grounds the machine.
    pub must: bool,
}
/// A finding in short.
struct FoundView {
    /// The point.
    pub id: String,
    /// What was to be looked at.
    pub title: String,
    /// What was seen.
    pub words: String,
    /// What it means.
    pub means: Meaning,
}
/// An inspection signed.
struct Signed {
    /// The record.
    pub record: String,
    /// The machine.
    pub machine: String,
    /// The verdict.
    pub verdict: VerdictView,
}
/// A record laid open.
struct RecordView {
    /// Its digest.
    pub digest: String,
    /// Its kind in words.
    pub kind: String,
    /// What it says, in a sentence.
    pub words: String,
    /// Who signed.
    pub by: String,
    /// The device that signed.
    pub device: String,
    /// When, as the language writes it.
    pub when: String,
    /// Number in the device's chain.
    pub seq: u32,
    /// Whether its signature is good, in words.
    pub signature: String,
    /// Whether its signature is good.
    pub good: bool,
    /// The machine it is about.
    pub machine: Option<String>,
    /// Whether a sheet can be printed of it.
    pub sheet: bool,
    /// What was seen, for an inspection.
    pub findings: Vec<FindingView>,
    /// Points nobody looked at, for an inspection.
    pub left: Vec<LeftView>,
    /// Interruptions, in sentences.
    pub interruptions: Vec<String>,
    /// The payload, as signed.
    pub payload: String,
}
/// A finding laid open.
struct FindingView {
    /// The point.
    pub point: String,
    /// Where it lies.
    pub station: String,
    /// What was to be looked at.
    pub title: String,
    /// What was seen.
    pub words: String,
    /// What it means.
    pub means: Meaning,
    /// The band it was held against.
    pub band: Option<String>,
    /// What the inspector added.
    pub note: String,
    /// Pictures, by digest.
    pub photos: Vec<String>,
    /// How long it was looked at, seconds.
    pub seconds: f64,
    /// Answers taken back, in words.
    pub before: Vec<String>,
    /// Corrections signed later, in sentences.
    pub corrections: Vec<String>,
    /// What a correction may say instead.
    pub choices: Vec<AnswerView>,
}
/// A file to give to somebody.
struct FileOut {
    /// Its name.
    pub name: String,
    /// Its text.
    pub text: String,
}
/// A file to give to somebody, of any kind.
struct FileBytes {
    /// Its name.
    pub name: String,
    /// Its media type.
    pub media: String,
    /// Its bytes, base64.
    pub data: String,
}
/// What came of verifying a file.
struct VerifyView {
    /// Whether nothing is wrong.
    pub good: bool,
    /// In a sentence.
    pub headline: String,
    /// Records read.
    pub records: u32,
    /// Who signed, with the thumbprint to compare.
    pub people: Vec<Named>,
    /// What it tells of: each machine's id and name.
    pub machines: Vec<Named>,
    /// Every fault.
    pub faults: Vec<VerifyFault>,
}
/// One fault of a file.
struct VerifyFault {
    /// What is wrong, for programs (`bad-signature`).
    pub what: String,
    /// Line in the file.
    pub line: Option<u32>,
    /// The record.
    pub record: Option<String>,
    /// In a sentence.
    pub words: String,
    /// What to do.
    pub hint: String,
}
/// A picture.
struct Photo {
    /// Its media type.
    pub media: String,
    /// Its bytes, base64.
    pub data: String,
}
}
