//! May it fly? A pure function from a machine's history to a verdict with its reasons.
//!
//! Uncertainty grounds: what is missing, unread or in doubt counts against flying, by rule.

mod flight;
mod inspecting;
mod work;

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use uuid::Uuid;

use crate::history::{BEFORE_FLIGHT, History, Look, Open};
use crate::list::{Limits, Meaning, ResolvedBand, Sheet};
use crate::record::{Deferred, DeviceId, Digest};
use crate::said::Said;

/// Days before a repack falls due from which the verdict speaks of it.
const REPACK_NOTICE: i64 = 30;
/// How far a record may lie ahead of our clock before the dates can't be trusted at all.
const CLOCK_DOUBT: TimeDelta = TimeDelta::days(1);
/// Phones differ by minutes; that much is no doubt.
const CLOCK_SLACK: TimeDelta = TimeDelta::minutes(10);

/// The judgement, mildest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// Fit to fly.
    Fit,
    /// Fit to fly within what the reasons say.
    Limited,
    /// Not fit to fly.
    Grounded,
}

/// The rule a reason comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum Rule {
    NoDescription,
    UnknownEngine,
    NeverLooked,
    NotToday,
    PointMissed,
    OpenDefect,
    WatchItem,
    ReserveExpired,
    ReserveUnknown,
    ReserveSoon,
    LimitMissing,
    LimitUnconfirmed,
    NewerRecord,
    SplitWord,
    RefusedRecord,
    ClockDoubt,
    JobOpen,
    FirstFlight,
    FollowUpDue,
    FollowUpOver,
    DueSoon,
    DueOver,
    DefectDeferred,
    Load,
    Mix,
    FuelTime,
    ThinAir,
    Wind,
    MeasuredEarlier,
    FlightNotPrepared,
    InspectOver,
}

pub use flight::{MIX_RATIO, Part, burn_said, fault_said, flight_faults, mix_parts};
pub use work::{lack_said, left_said};

/// One reason, what stands behind it, and what would clear it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reason {
    /// What this reason alone makes of the machine.
    pub state: State,
    /// The rule.
    pub rule: Rule,
    /// What is so.
    pub say: Said,
    /// What would clear it.
    pub clears: Said,
    /// The record it rests on, where it rests on one.
    pub record: Option<Digest>,
    /// The point it is about, where it is about one.
    pub point: Option<String>,
    /// The facts behind it.
    pub because: Vec<Fact>,
}

/// A leaf of the reason tree: a fact and its record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Fact {
    /// What is so.
    pub say: Said,
    /// The record that says so.
    pub record: Option<Digest>,
}

/// A verdict.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Verdict {
    /// The worst of its reasons.
    pub state: State,
    /// Worst first.
    pub reasons: Vec<Reason>,
}

/// What a verdict is asked from.
#[derive(Clone, Copy, Debug)]
pub struct Question<'a> {
    /// The machine's records, folded.
    pub history: &'a History,
    /// Its engine's data sheet, where the catalogue has it.
    pub sheet: Option<&'a Sheet>,
    /// The reader's wall clock.
    pub now: DateTime<FixedOffset>,
    /// What people are called, by device.
    pub people: &'a BTreeMap<DeviceId, String>,
    /// Whose device each is: one person may have several.
    pub persons: &'a BTreeMap<DeviceId, Uuid>,
    /// Devices whose word about this machine is split (two records in one place).
    pub split: &'a [DeviceId],
    /// Records about this machine that were refused (bad signature, revoked key).
    pub refused: u32,
    /// What the machine's school has set; nothing where it is under none, or another one than the reader's.
    pub limits: &'a Limits,
}

/// Judges.
pub fn judge(question: Question<'_>) -> Verdict {
    let mut reasons = Vec::new();
    reasons.extend(doubts(question));
    reasons.extend(description(question));
    reasons.extend(question.history.open.iter().map(|open| open_matter(question, open)));
    reasons.extend(looks(question));
    reasons.extend(reserve(question));
    reasons.extend(limits(question));
    reasons.extend(work::reasons(question));
    reasons.extend(flight::reasons(question));
    reasons.extend(inspecting::reasons(question));
    reasons.sort_by_key(|reason| std::cmp::Reverse(reason.state));
    let state = reasons.iter().map(|reason| reason.state).max().unwrap_or(State::Fit);
    Verdict { state, reasons }
}

fn reason(state: State, rule: Rule, say: Said, clears: &str) -> Reason {
    Reason { state, rule, say, clears: Said::new(clears), record: None, point: None, because: Vec::new() }
}

fn doubts(q: Question<'_>) -> Vec<Reason> {
    let mut reasons: Vec<Reason> = q
        .history
        .unknown
        .iter()
        .map(|(kind, record)| Reason {
            record: Some(*record),
            ..reason(
                State::Grounded,
                Rule::NewerRecord,
                Said::new("reason-newer-record").text("kind", kind),
                "clears-newer-record",
            )
        })
        .collect();
    reasons.extend(q.split.iter().map(|device| {
        let name = q.people.get(device).cloned().unwrap_or_else(|| device.short());
        reason(
            State::Grounded,
            Rule::SplitWord,
            Said::new("reason-split-word").text("person", name),
            "clears-split-word",
        )
    }));
    if q.refused > 0 {
        reasons.push(reason(
            State::Grounded,
            Rule::RefusedRecord,
            Said::new("reason-refused-record").number("count", q.refused),
            "clears-refused-record",
        ));
    }
    if let Some(latest) = q.history.latest.filter(|latest| *latest > q.now + CLOCK_SLACK) {
        let state = if latest > q.now + CLOCK_DOUBT { State::Grounded } else { State::Limited };
        reasons.push(reason(
            state,
            Rule::ClockDoubt,
            Said::new("reason-clock-doubt").date("day", latest.date_naive()),
            "clears-clock-doubt",
        ));
    }
    reasons
}

fn description(q: Question<'_>) -> Option<Reason> {
    let Some((machine, record)) = &q.history.machine else {
        return Some(reason(
            State::Grounded,
            Rule::NoDescription,
            Said::new("reason-no-description"),
            "clears-no-description",
        ));
    };
    q.sheet.is_none().then(|| Reason {
        record: Some(*record),
        ..reason(
            State::Grounded,
            Rule::UnknownEngine,
            Said::new("reason-unknown-engine").text("engine", &machine.engine),
            "clears-unknown-engine",
        )
    })
}

fn open_matter(q: Question<'_>, open: &Open) -> Reason {
    let defect = open.means() == Meaning::Unserviceable;
    if defect && let Some((deferred, record, holds)) = work::deferral(q, open) {
        return deferred_matter(open, deferred, record, holds);
    }
    let (state, rule, say, clears) = if defect && open.passing() {
        (State::Grounded, Rule::OpenDefect, "reason-open-defect", "clears-passing")
    } else if defect {
        (State::Grounded, Rule::OpenDefect, "reason-open-defect", "clears-open-defect")
    } else {
        (State::Limited, Rule::WatchItem, "reason-watch-item", "clears-watch-item")
    };
    let leading = open.leading();
    let text = |of: fn(&crate::history::Sighting) -> &str| leading.map_or("", of).to_owned();
    let looks = u32::try_from(open.sightings.len()).unwrap_or(u32::MAX);
    Reason {
        record: leading.map(|s| s.record),
        point: Some(open.point.clone()),
        because: open
            .sightings
            .iter()
            .map(|s| Fact {
                say: Said::new("fact-seen")
                    .text("words", &s.words)
                    .date("day", s.at.date_naive())
                    .figures("hours", format!("{:.1}", s.hours))
                    .text("person", q.people.get(&s.device).cloned().unwrap_or_else(|| s.device.short())),
                record: Some(s.record),
            })
            .collect(),
        ..reason(
            state,
            rule,
            Said::new(say)
                .text("title", text(|s| &s.title))
                .text("words", text(|s| &s.words))
                .number("looks", looks),
            clears,
        )
    }
}

/// A defect that may wait, within the limits of its deferral.
fn deferred_matter(open: &Open, deferred: &Deferred, record: Digest, holds: bool) -> Reason {
    let leading = open.leading();
    let say = Said::new(if holds { "reason-deferred" } else { "reason-deferral-over" })
        .text("title", leading.map_or("", |s| &s.title))
        .text("words", leading.map_or("", |s| &s.words))
        .text("condition", &deferred.condition);
    let mut because = Vec::new();
    if let Some(hours) = deferred.until_hours {
        because.push(Said::new("deferred-hours").figures("hours", format!("{hours:.1}")));
    }
    if let Some(flights) = deferred.until_flights {
        because.push(Said::new("deferred-flights").number("flights", flights));
    }
    if let Some(date) = deferred.until_date {
        because.push(Said::new("deferred-date").date("day", date));
    }
    Reason {
        record: Some(record),
        point: Some(open.point.clone()),
        because: because.into_iter().map(|say| Fact { say, record: Some(record) }).collect(),
        ..reason(
            if holds { State::Limited } else { State::Grounded },
            Rule::DefectDeferred,
            say,
            "clears-open-defect",
        )
    }
}

/// The day that counts for dates: the reader's, or the records' if those are later (the more careful).
fn today(q: Question<'_>) -> NaiveDate {
    let now = q.now.date_naive();
    q.history.latest.map_or(now, |latest| now.max(latest.date_naive()))
}

/// The latest full look before flight.
fn full_look<'a>(q: Question<'a>) -> Option<&'a Look> {
    let full = q.history.looks.iter().filter(|look| look.occasion == BEFORE_FLIGHT);
    full.max_by_key(|look| look.at)
}

/// The reader's day of a look.
fn day_of(q: Question<'_>, look: &Look) -> NaiveDate {
    look.at.with_timezone(q.now.offset()).date_naive()
}

/// Whether a full look of today stands.
fn looked_today(q: Question<'_>) -> bool {
    full_look(q).is_some_and(|full| day_of(q, full) == today(q))
}

fn looks(q: Question<'_>) -> Vec<Reason> {
    let looks = &q.history.looks;
    let Some(full) = full_look(q) else {
        return vec![reason(
            State::Grounded,
            Rule::NeverLooked,
            Said::new("reason-never-looked"),
            "clears-never-looked",
        )];
    };
    let day = |look: &Look| day_of(q, look);
    let mut reasons = Vec::new();
    if day(full) != today(q) {
        reasons.push(Reason {
            record: Some(full.record),
            ..reason(
                State::Limited,
                Rule::NotToday,
                Said::new("reason-not-today").date("day", day(full)),
                "clears-not-today",
            )
        });
    }
    let later = looks
        .iter()
        .filter(|look| look.occasion != BEFORE_FLIGHT && look.at > full.at && day(look) == day(full));
    for look in std::iter::once(full).chain(later) {
        reasons.extend(look.left.iter().map(|left| Reason {
            record: Some(look.record),
            point: Some(left.point.clone()),
            ..reason(
                if left.must { State::Grounded } else { State::Limited },
                Rule::PointMissed,
                Said::new("reason-point-missed").text("title", &left.title),
                "clears-point-missed",
            )
        }));
    }
    reasons
}

fn reserve(q: Question<'_>) -> Option<Reason> {
    let (machine, record) = q.history.machine.as_ref()?;
    if !machine.fitted.contains_key("reserve") {
        return None;
    }
    let on_record = |reason: Reason| Reason { record: Some(*record), ..reason };
    let known = machine.reserve.as_ref().and_then(|reserve| {
        let repacked = reserve.repacked_on?;
        repacked.checked_add_days(chrono::Days::new(u64::from(reserve.every_days)))
    });
    let Some(due) = known else {
        return Some(on_record(reason(
            State::Grounded,
            Rule::ReserveUnknown,
            Said::new("reason-reserve-unknown"),
            "clears-reserve-unknown",
        )));
    };
    let left = (due - today(q)).num_days();
    let say = |id: &str| Said::new(id).date("day", due);
    if left < 0 {
        Some(on_record(reason(
            State::Grounded,
            Rule::ReserveExpired,
            say("reason-reserve-expired"),
            "clears-reserve-expired",
        )))
    } else if left <= REPACK_NOTICE {
        Some(on_record(reason(
            State::Limited,
            Rule::ReserveSoon,
            say("reason-reserve-soon"),
            "clears-reserve-expired",
        )))
    } else {
        None
    }
}

fn limits(q: Question<'_>) -> Vec<Reason> {
    let Some(sheet) = q.sheet else { return Vec::new() };
    let critical = sheet.bands.iter().filter(|(_, band)| band.get_ref().critical);
    critical
        .filter_map(|(name, _)| {
            let confirmed: Option<ResolvedBand> = q.history.confirmed.get(name).map(|(band, _)| band.clone());
            let band = confirmed.or_else(|| sheet.band(name))?;
            let (state, rule, say, clears) = if band.confirmed() {
                return None;
            } else if band.has_number() {
                (State::Limited, Rule::LimitUnconfirmed, "reason-limit-unconfirmed", "clears-limit")
            } else {
                (State::Grounded, Rule::LimitMissing, "reason-limit-missing", "clears-limit")
            };
            Some(Reason {
                point: None,
                ..reason(state, rule, Said::new(say).text("band", name).figures("value", &band), clears)
            })
        })
        .collect()
}
