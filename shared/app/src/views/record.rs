//! A record laid open, a file verified.

use super::{AnswerView, LeftView, Named};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::list::Meaning;

views! {
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
}
