//! Everything of one machine as a table: one row a fact, comma-separated (RFC 4180), UTF-8.
//!
//! A cell of words that a spreadsheet would run as a formula gets an apostrophe before it; the
//! columns of numbers hold nothing but our own numbers and are left as they are.

use std::borrow::Cow;

use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_store::Tx;

use super::facts::Fact;
use super::telling::Telling;
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
            history.take(record, &*tx.trust()?);
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
            history.expect_signed(pending.at.date_naive(), &pending.body);
            let common = Common {
                when: pending.at.to_rfc3339(),
                kind: pending.body.write().map_err(Fault::internal)?.0,
                who: String::new(),
                device: String::new(),
                hours: history.hours,
                flights: history.flights,
                record: String::new(),
            };
            let unsigned = self.word("paper-unsigned");
            for fact in self.facts_in(&pending.body) {
                let note = [unsigned.as_str(), &fact.note].join(" ").trim_end().to_owned();
                writer.write_record(row(&common, &Fact { note, ..fact })).map_err(Fault::internal)?;
            }
        }
        let bytes = writer.into_inner().map_err(Fault::internal)?;
        Ok(super::file(&telling.name(), ".facts.csv", "text/csv", &bytes))
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
