//! What is remembered: trends of a machine, logs taken in, lives of parts, how people look.

use super::{Named, UnitView};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::runlog::{Mapping, TimeForm};
use witnessmark_core::units::Quantity;

views! {
/// One measure of a machine over its time in service.
struct TrendView {
    /// The measure's id.
    pub id: String,
    /// Its name.
    pub title: String,
    /// What it is, and why it is followed.
    pub what: String,
    /// In which unit all values here are; its sign is empty for grades, and in words for eighths of a turn.
    pub unit: UnitView,
    /// For grades: the words for 0, 1, 2.
    pub grades: Vec<String>,
    /// The readings, in order of time in service.
    pub points: Vec<TrendPoint>,
    /// The band it is held against; none where the data sheet has no number.
    pub band: Option<TrendBand>,
    /// The line through the readings with its interval; none where they tell too little, and through grades.
    pub line: Option<TrendLine>,
    /// How often chance alone makes such a trend, 0 to 1; none where the readings tell too little.
    pub chance: Option<f64>,
    /// A step in level, where two levels are nearer to the readings than the line is.
    pub change: Option<TrendChange>,
    /// When the line reaches the limit, engine hours.
    pub reaches: Option<TrendReach>,
    /// Jobs, and components fitted or taken off.
    pub marks: Vec<TrendMark>,
    /// What it all says, in plain words: the first is the main one; or that there is too little to say.
    pub sentences: Vec<String>,
    /// Whether a trend is told (`rising`, `falling`), or nothing (`neither`, `too-little`).
    pub direction: String,
    /// Whether a person should act on it: a trend toward the limit, or to the worse; or past it already.
    pub drifts: bool,
}
/// A reading.
struct TrendPoint {
    /// Engine hours.
    pub hours: f64,
    /// The value, as drawn.
    pub value: f64,
    /// As it was read, where it was brought to a standard day.
    pub raw: Option<f64>,
    /// In words: value and day.
    pub words: String,
    /// The record it is from; empty while that isn't signed.
    pub record: String,
    /// Whether it lies far off the line: shown, not dropped.
    pub far_off: bool,
}
/// The band that a measure is held against.
struct TrendBand {
    /// Its lower end.
    pub low: Option<f64>,
    /// Its upper end.
    pub high: Option<f64>,
    /// Which end is the limit, where one is.
    pub limit: Option<f64>,
    /// As a person reads it.
    pub words: String,
    /// Where it is written, or that it is unconfirmed.
    pub source: String,
    /// Whether a document confirms it.
    pub confirmed: bool,
}
/// A line through readings: all turn about the medians.
struct TrendLine {
    /// Change in a hundred engine hours.
    pub per_100_hours: f64,
    /// The least it may be.
    pub low: f64,
    /// The most.
    pub high: f64,
    /// Where it begins and ends, engine hours.
    pub from_hours: f64,
    /// See `from_hours`.
    pub to_hours: f64,
    /// Its value at the beginning, and at the end.
    pub from: f64,
    /// See `from`.
    pub to: f64,
    /// The ends of the line with the least slope.
    pub low_from: f64,
    /// See `low_from`.
    pub low_to: f64,
    /// The ends of the line with the greatest slope.
    pub high_from: f64,
    /// See `high_from`.
    pub high_to: f64,
}
/// A step in level.
struct TrendChange {
    /// Engine hours of the first reading at the new level.
    pub hours: f64,
    /// Middle value before.
    pub before: f64,
    /// Middle value after.
    pub after: f64,
}
/// When a line reaches its limit, engine hours.
struct TrendReach {
    /// The earliest: the one to act on.
    pub low: f64,
    /// By the slope.
    pub at: f64,
    /// The latest, where there is one.
    pub high: Option<f64>,
}
/// Something that was done to the machine.
struct TrendMark {
    /// Engine hours.
    pub hours: f64,
    /// What.
    pub words: String,
    /// Its record.
    pub record: String,
}
/// A log opened, before it is taken in.
struct LogView {
    /// SHA-256 of its text in UTF-8, without a byte order mark.
    pub file: String,
    /// What it was called.
    pub name: String,
    /// How its columns are to be read: as remembered for these headings, else as guessed.
    pub mapping: Mapping,
    /// Whether that was remembered from an earlier file with the same headings.
    pub remembered: bool,
    /// What of it rests on the values alone, in sentences: to be looked at before it is confirmed. None
    /// where it is remembered.
    pub guesses: Vec<String>,
    /// Its columns.
    pub columns: Vec<LogColumn>,
    /// What a column may hold.
    pub channels: Vec<Named>,
    /// How time may be written.
    pub time_forms: Vec<LogTimeForm>,
    /// Units of temperature.
    pub temperatures: Vec<UnitView>,
    /// Units of speed.
    pub speeds: Vec<UnitView>,
    /// The record by which this very file was taken in before.
    pub taken: Option<String>,
    /// The machine's engine hours now.
    pub hours: f64,
}
/// A column of a log.
struct LogColumn {
    /// Its heading.
    pub heading: String,
    /// Its first values.
    pub sample: Vec<String>,
}
/// A way in which time may be written.
struct LogTimeForm {
    /// Its id.
    pub id: TimeForm,
    /// In words.
    pub words: String,
}
/// What a log would tell, read by a mapping.
struct LogPreview {
    /// Rows read whole.
    pub rows: u32,
    /// Rows of which something can't be read; the rest of such a row is used.
    pub unread: u32,
    /// The first of those, and why.
    pub first_unread: Option<String>,
    /// How long it lasts, in words.
    pub lasts: String,
    /// The day it begins, where the file says it.
    pub on: Option<String>,
    /// How warm it was outside, where the file says it.
    pub outside: Option<Quantity>,
    /// The figures.
    pub readings: Vec<LogReading>,
    /// What else is worth knowing, in sentences.
    pub notes: Vec<String>,
}
/// A figure out of a log.
struct LogReading {
    /// Its measure.
    pub measure: String,
    /// Its name.
    pub words: String,
    /// The figure, as a person reads it.
    pub value: String,
    /// What was left out of it, in a sentence.
    pub left_out: Option<String>,
}
/// A type of component of which lives can be told.
struct LifePart {
    /// Its id.
    pub id: String,
    /// Its name.
    pub words: String,
    /// Machines whose looks speak of it.
    pub machines: u32,
    /// Lives counted.
    pub lives: u32,
    /// Of these ended by something unserviceable.
    pub failed: u32,
    /// Whether all of it is the demonstration's.
    pub invented: bool,
}
/// How long components of one type last.
struct LifeView {
    /// The type.
    pub part: LifePart,
    /// What it rests on, in a sentence: always there.
    pub rests_on: String,
    /// Share still serviceable over time in service, with no form assumed: steps.
    pub survival: Vec<LifeStep>,
    /// The same by a Weibull, with its interval at each age; empty where the findings tell too little.
    pub fitted: Vec<LifePoint>,
    /// Findings, for the marks: where each was last seen whole, and first found failed.
    pub findings: Vec<LifeFinding>,
    /// What it says, in plain words; or that there is too little to say.
    pub sentences: Vec<String>,
    /// The suggested interval between inspections, hours: never more than the one in force.
    pub every: Option<f64>,
    /// Whether that is less than what is in force.
    pub shortens: bool,
    /// The interval in force, hours.
    pub in_force: Option<f64>,
    /// The chance of an unseen failure that is borne.
    pub chance: f64,
    /// How the intervals around the curves were made, in sentences; empty where there are none.
    pub intervals: Vec<String>,
}
/// A step of the survival curve. Between `since` and `hours` it fell from the step before: where, the
/// findings can't say.
struct LifeStep {
    /// Hours up to which the step before holds.
    pub since: f64,
    /// Hours from which this holds.
    pub hours: f64,
    /// Share still serviceable.
    pub share: f64,
    /// Lower end of its interval of 95 %.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}
/// A point of the fitted curve.
struct LifePoint {
    /// Hours.
    pub hours: f64,
    /// Share still serviceable.
    pub share: f64,
    /// Lower end of its interval of 95 %.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}
/// One life.
struct LifeFinding {
    /// Still whole at so many hours.
    pub after: f64,
    /// Found failed at so many.
    pub by: Option<f64>,
}
/// How people look, for an instructor.
struct LookingReport {
    /// One row a person.
    pub people: Vec<LookingPerson>,
    /// What it rests on, and what it doesn't say.
    pub caution: String,
}
/// How one person looks.
struct LookingPerson {
    /// Their name.
    pub name: String,
    /// Whether that is who asks.
    pub you: bool,
    /// Inspections signed.
    pub inspections: u32,
    /// Points looked at that others look at too: what all comparing rests on.
    pub looks: u32,
    /// Middle time on a point, seconds.
    pub seconds: f64,
    /// The others' middle time on the same points, seconds; none where too few others look at them.
    pub fleet_seconds: Option<f64>,
    /// Share of points hurried, percent.
    pub hurried_percent: f64,
    /// That of the others on the same points.
    pub fleet_hurried_percent: Option<f64>,
    /// Things found other than serviceable in a hundred points; what stays open counts once.
    pub found_percent: f64,
    /// That of the others on the same points.
    pub fleet_found_percent: Option<f64>,
    /// What stands out, in sentences; none when nothing does, or there is too little to say.
    pub sentences: Vec<String>,
    /// Points hurried most often, by name.
    pub points: Vec<String>,
}
/// What the points of the lists are worth, for their author.
struct ListWorth {
    /// One row a point.
    pub points: Vec<PointWorth>,
    /// What it rests on, and what it doesn't say.
    pub caution: String,
}
/// One point's worth.
struct PointWorth {
    /// Its id.
    pub point: String,
    /// What is looked at.
    pub title: String,
    /// Whether a list demands it, or the joint is critical.
    pub must: bool,
    /// Times looked at.
    pub looks: u32,
    /// Times it was found to be watched; what stays open counts once.
    pub watch: u32,
    /// Times it was found unserviceable; what stays open counts once.
    pub unserviceable: u32,
    /// Machines on which it was found wrong.
    pub machines: u32,
    /// Share found wrong, percent of the looks, with its interval of 95 %.
    pub percent: f64,
    /// See `percent`.
    pub low: f64,
    /// See `percent`.
    pub high: f64,
    /// Middle time on it, seconds; none from fewer than three looks.
    pub seconds: Option<f64>,
    /// Share hurried, percent.
    pub hurried_percent: f64,
    /// What it means for its author, in a sentence.
    pub words: String,
    /// `never`, `often` or `plain`; `few` where too few looks tell nothing.
    pub sort: String,
}
}
