//! A list being walked, said back and signed.

use super::{Named, TorqueAsk, UnitView, VerdictView};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;
use witnessmark_core::list::Given;
use witnessmark_core::list::Meaning;

views! {
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
}
