//! Everything of one machine as a table: one row a fact, comma-separated (RFC 4180), UTF-8.
//!
//! A cell of words that a spreadsheet would run as a formula gets an apostrophe before it; the
//! columns of numbers hold nothing but our own numbers and are left as they are.

use std::borrow::Cow;

use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Finding, Inspection, LimitConfirmed, Machine, Record, TimeLogged};
use witnessmark_core::said::Said;
use witnessmark_core::units::Quantity;
use witnessmark_store::Tx;

use super::entry::Telling;
use crate::house::{House, id};
use crate::usecases::meaning_id;
use crate::views::FileBytes;
use crate::{App, Fault};

/// The header row: names for programs, the same in every language.
const HEADER: [&str; 14] = [
    "when", "kind", "who", "device", "hours", "flights", "point", "title", "words", "means", "value", "unit",
    "note", "record",
];
/// What a spreadsheet takes for the beginning of a formula.
const FORMULA: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

impl App {
    /// Everything of one machine as a table, one row a fact.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn csv(&mut self, machine: String) -> Result<FileBytes, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.table(tx, machine))
    }
}

/// What one row says beside when, who and where it stands.
#[derive(Default)]
struct Fact {
    /// When, if not when its record was signed.
    when: Option<String>,
    point: String,
    title: String,
    words: String,
    means: Option<Meaning>,
    value: Option<Quantity>,
    note: String,
}

/// What all rows of one record share.
struct Common {
    when: String,
    kind: String,
    who: String,
    device: String,
    hours: f64,
    flights: u32,
    record: String,
}

impl House {
    fn table(&self, tx: &Tx<'_>, machine: Uuid) -> Result<FileBytes, Fault> {
        let telling = Telling::new(self, tx, machine)?;
        let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(Vec::new());
        writer.write_record(HEADER).map_err(Fault::internal)?;
        let mut history = History::default();
        for record in &telling.records {
            history.take(record);
            let payload = &record.payload;
            let common = Common {
                when: payload.at.to_rfc3339(),
                kind: payload.kind.clone(),
                who: telling.by(&payload.device),
                device: payload.device.0.clone(),
                hours: history.hours,
                flights: history.flights,
                record: record.digest.to_string(),
            };
            for fact in self.facts_of(record) {
                writer.write_record(row(&common, &fact)).map_err(Fault::internal)?;
            }
        }
        for pending in tx.pending()?.into_iter().filter(|pending| pending.machine == machine) {
            history.log_time(pending.at.date_naive(), &pending.body);
            let common = Common {
                when: pending.at.to_rfc3339(),
                kind: "time-logged".into(),
                who: String::new(),
                device: String::new(),
                hours: history.hours,
                flights: history.flights,
                record: String::new(),
            };
            let unsigned = self.word("paper-unsigned");
            for fact in self.time(&pending.body) {
                let note = [unsigned.as_str(), &fact.note].join(" ").trim_end().to_owned();
                writer.write_record(row(&common, &Fact { note, ..fact })).map_err(Fault::internal)?;
            }
        }
        let bytes = writer.into_inner().map_err(Fault::internal)?;
        Ok(super::file(&telling.name(), ".facts.csv", "text/csv", &bytes))
    }

    fn facts_of(&self, record: &Record) -> Vec<Fact> {
        let Ok(body) = record.payload.typed() else {
            return vec![Fact { words: self.word("told-unknown"), ..Fact::default() }];
        };
        let said = Fact { words: self.body_words(&body), ..Fact::default() };
        match &body {
            Body::Inspection(body) => self.inspection_facts(body),
            Body::Machine(body) => self.machine_facts(body, said),
            Body::LimitConfirmed(body) => self.limit_facts(body),
            Body::TimeLogged(body) => self.time(body),
            Body::SecondLook(body) => body
                .joints
                .iter()
                .map(|seen| Fact {
                    point: seen.joint.clone(),
                    title: self.word(&format!("joint-{}", seen.joint)),
                    means: Some(seen.means),
                    note: seen.note.clone(),
                    ..Fact::default()
                })
                .collect(),
            Body::JobBegun(body) => vec![Fact { title: body.title.clone(), note: body.note.clone(), ..said }],
            Body::Rectified(body) => vec![Fact { point: body.point.clone(), ..said }],
            Body::Correction(body) => vec![Fact {
                point: body.point.clone(),
                title: body.title.clone(),
                words: body.words.clone(),
                means: Some(body.means),
                note: body.reason.clone(),
                ..Fact::default()
            }],
            Body::Deferred(body) => {
                let day = body.until_date.map(|day| Said::new("deferred-date").date("day", day));
                let hours = body
                    .until_hours
                    .map(|hours| Said::new("deferred-hours").text("hours", format!("{hours:.1}")));
                let flights = body.until_flights.map(|n| Said::new("deferred-flights").number("flights", n));
                let until = [hours, flights, day].into_iter().flatten().map(|said| self.say(&said));
                let note = until.collect::<Vec<_>>().join(" ");
                vec![Fact { point: body.point.clone(), note, ..said }]
            }
            Body::ComponentMoved(body) => vec![Fact {
                point: body.part.clone(),
                title: self.word(&format!("part-{}", body.part)),
                note: body.serial.clone(),
                ..said
            }],
            Body::DueKept(body) => vec![Fact { title: body.title.clone(), ..said }],
            _ => vec![said],
        }
    }

    /// The list, then every finding with the answers taken back before it, then what was left.
    fn inspection_facts(&self, body: &Inspection) -> Vec<Fact> {
        let whole = Fact {
            title: self.word(&format!("occasion-{}", body.occasion)),
            means: body.findings.iter().map(|finding| finding.means).max(),
            ..Fact::default()
        };
        let findings = body.findings.iter().flat_map(|finding| self.finding_facts(finding));
        let left = body.left.iter().map(|left| Fact {
            point: left.point.clone(),
            title: left.title.clone(),
            words: self.word(if left.must { "paper-left-must" } else { "paper-left" }),
            ..Fact::default()
        });
        std::iter::once(whole).chain(findings).chain(left).collect()
    }

    fn finding_facts(&self, finding: &Finding) -> Vec<Fact> {
        let about = |words: &str, means| Fact {
            point: finding.point.clone(),
            title: finding.title.clone(),
            words: words.to_owned(),
            means: Some(means),
            ..Fact::default()
        };
        let taken_back = finding.before.iter().map(|before| Fact {
            when: Some(before.at.to_rfc3339()),
            note: self.word("paper-taken-back"),
            ..about(&before.words, before.means)
        });
        let tightened = finding.torque.as_ref().map(|torque| torque.reading.unwrap_or(torque.setting));
        let stands = Fact {
            when: Some(finding.at.to_rfc3339()),
            value: finding.measured.or(tightened),
            note: finding.note.clone(),
            ..about(&finding.words, finding.means)
        };
        taken_back.chain(std::iter::once(stands)).collect()
    }

    fn machine_facts(&self, body: &Machine, said: Fact) -> Vec<Fact> {
        let parts = body.fitted.iter().map(|(part, serial)| Fact {
            point: part.clone(),
            title: self.word(&format!("part-{part}")),
            words: serial.clone(),
            ..Fact::default()
        });
        let repacked = body.reserve.as_ref().and_then(|reserve| reserve.repacked_on);
        let repacked = repacked.map(|day| Fact {
            point: "reserve".into(),
            title: self.word("paper-repacked"),
            words: day.to_string(),
            ..Fact::default()
        });
        let whole = Fact { title: body.name.clone(), note: body.note.clone(), ..said };
        std::iter::once(whole).chain(parts).chain(repacked).collect()
    }

    /// Each end of the limit is a fact.
    fn limit_facts(&self, body: &LimitConfirmed) -> Vec<Fact> {
        let ends = [("paper-least", body.low), ("paper-most", body.high)];
        let ends = ends.into_iter().filter_map(|(words, end)| Some((words, end?)));
        ends.map(|(words, end)| Fact {
            point: body.band.clone(),
            title: self.word(&format!("band-{}", body.band)),
            words: self.word(words),
            value: Some(end),
            note: format!("{}, {}", body.document, body.page),
            ..Fact::default()
        })
        .collect()
    }

    fn time(&self, body: &TimeLogged) -> Vec<Fact> {
        let words = self.body_words(&Body::TimeLogged(body.clone()));
        let value = Quantity::new(body.added.hours, witnessmark_core::units::Unit::Hour);
        vec![Fact { words, value: Some(value), note: body.note.clone(), ..Fact::default() }]
    }
}

fn row(common: &Common, fact: &Fact) -> [String; 14] {
    let words = |text: &str| guarded(text).into_owned();
    [
        fact.when.clone().unwrap_or_else(|| common.when.clone()),
        words(&common.kind),
        words(&common.who),
        words(&common.device),
        number(common.hours),
        common.flights.to_string(),
        words(&fact.point),
        words(&fact.title),
        words(&fact.words),
        fact.means.map(meaning_id).unwrap_or_default().to_owned(),
        fact.value.map(|value| number(value.value)).unwrap_or_default(),
        fact.value.map(|value| value.unit.code()).unwrap_or_default().to_owned(),
        words(&fact.note),
        common.record.clone(),
    ]
}

/// Nine decimals at most: what is beyond comes from floating point, not from an instrument.
fn number(value: f64) -> String {
    let text = format!("{value:.9}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

fn guarded(text: &str) -> Cow<'_, str> {
    if text.starts_with(FORMULA) { Cow::Owned(format!("'{text}")) } else { Cow::Borrowed(text) }
}
