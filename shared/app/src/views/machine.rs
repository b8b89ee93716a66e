//! A machine: its card, its verdict, its page.

use super::{JobView, Named, UnitView};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::due::Standing;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Interval;
use witnessmark_core::record::Machine;
use witnessmark_core::record::Service;
use witnessmark_core::units::Quantity;
use witnessmark_core::verdict::Rule;
use witnessmark_core::verdict::State;

views! {
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
    /// Whether it speaks of a flight that is prepared: it is answered there.
    pub of_flight: bool,
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
}
