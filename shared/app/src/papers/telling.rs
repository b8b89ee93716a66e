//! What every record sheet is written from: the machine's records, and who signed them.

use std::sync::Arc;

use chrono::{DateTime, FixedOffset};
use uuid::Uuid;
use witnessmark_core::history::{History, Place};
use witnessmark_core::record::{Body, DeviceId, Record, Service, Trust};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::entry::{Block, Item, Section, Signed};
use crate::Fault;
use crate::house::House;
use crate::usecases::signature_id;
use crate::verdicts::People;

/// What an entry is written from.
pub(super) struct Telling<'a> {
    pub house: &'a House,
    pub machine: Uuid,
    pub history: History,
    pub people: People,
    /// All records of the machine, in the order in which they are folded.
    pub records: Vec<Record>,
    trust: Arc<Trust>,
}

impl<'a> Telling<'a> {
    pub(super) fn new(house: &'a House, tx: &Tx<'_>, machine: Uuid) -> Result<Self, Fault> {
        let mut records = tx.records_of(Some(machine))?;
        records.sort_by_cached_key(Place::of);
        Ok(Self {
            house,
            machine,
            history: house.known(tx, machine)?,
            people: house.people(tx)?,
            records,
            trust: tx.trust()?,
        })
    }

    pub(super) fn say(&self, said: &Said) -> String {
        self.house.say(said)
    }

    pub(super) fn word(&self, id: &str) -> String {
        self.house.word(id)
    }

    pub(super) fn name(&self) -> String {
        let described = self.history.machine.as_ref().map(|(machine, _)| machine.name.clone());
        described.unwrap_or_else(|| self.word("machine-unnamed"))
    }

    pub(super) fn by(&self, device: &DeviceId) -> String {
        self.people.name(device)
    }

    pub(super) fn service(&self, service: Service) -> String {
        let hours = format!("{:.1}", service.hours);
        self.say(&Said::new("paper-service").text("hours", hours).number("flights", service.flights))
    }

    /// The machine as it was described when this record was written, by what is known here.
    pub(super) fn machine_facts(&self, upto: &Record) -> Vec<(String, String)> {
        let place = Place::of(upto);
        let before = |record: &&Record| Place::of(record) <= place;
        let described =
            self.records.iter().filter(before).rev().find_map(|record| match record.payload.typed() {
                Ok(Body::Machine(machine)) => Some(machine),
                _ => None,
            });
        let Some(machine) = described.or_else(|| self.history.machine.clone().map(|(machine, _)| machine))
        else {
            return Vec::new();
        };
        let sheet = self.house.catalogue.sheets.get(&machine.engine);
        let engine = sheet.map_or(machine.engine.as_str(), |sheet| &sheet.name).to_owned();
        let numbered = machine.fitted.iter().filter(|(_, serial)| !serial.trim().is_empty());
        let numbers: Vec<String> = numbered
            .map(|(part, serial)| format!("{} {serial}", self.word(&format!("part-{part}"))))
            .collect();
        let none = || self.word("paper-none-written");
        let owner = self.history.registered_by.as_ref().map(|device| self.by(device));
        let mut facts = vec![
            (self.word("paper-machine"), machine.name),
            (self.word("paper-engine"), engine),
            (self.word("paper-serials"), if numbers.is_empty() { none() } else { numbers.join("; ") }),
            (self.word("paper-owner"), owner.unwrap_or_else(none)),
        ];
        if machine.invented {
            facts.push((self.word("paper-invented"), self.word("paper-invented-words")));
        }
        facts
    }

    /// Who signed a record, and whether that holds.
    pub(super) fn signed(&self, record: &Record, title: String) -> Signed {
        let payload = &record.payload;
        let outcome = self.trust.check(record);
        Signed {
            title,
            facts: vec![
                (self.word("paper-by"), self.by(&payload.device)),
                (self.word("paper-at"), self.moment(payload.at)),
                (self.word("paper-device"), payload.device.0.clone()),
                (self.word("paper-digest"), record.digest.to_string()),
                (self.word("paper-checked"), self.word(signature_id(outcome))),
            ],
        }
    }

    pub(super) fn moment(&self, at: DateTime<FixedOffset>) -> String {
        format!("{} {}", self.house.when(at), at.format("%:z"))
    }

    /// What is open on the machine now.
    pub(super) fn open(&self) -> Section {
        let items = self.history.open.iter().filter_map(|open| {
            let leading = open.leading()?;
            let since = Said::new("open-since")
                .date("day", leading.at.date_naive())
                .figures("hours", format!("{:.1}", leading.hours))
                .text("person", self.by(&leading.device));
            let deferral = self.history.work.deferrals.get(&open.point).map(|(_, _, body)| body);
            let deferred = deferral.filter(|body| open.sightings.iter().any(|s| s.record == body.opened_by));
            let until = deferred.map(|body| {
                let said = Said::new("says-deferred").text("condition", &body.condition);
                let mut words = vec![self.say(&said.text("reason", &body.reason))];
                words.extend(body.until_hours.map(|hours| {
                    self.say(&Said::new("deferred-hours").figures("hours", format!("{hours:.1}")))
                }));
                words.extend(
                    body.until_flights.map(|n| self.say(&Said::new("deferred-flights").number("flights", n))),
                );
                words.extend(
                    body.until_date.map(|day| self.say(&Said::new("deferred-date").date("day", day))),
                );
                words
            });
            Some(Block::Item(Item {
                means: Some(open.means()),
                title: leading.title.clone(),
                words: leading.words.clone(),
                notes: std::iter::once(self.say(&since)).chain(until.into_iter().flatten()).collect(),
            }))
        });
        let blocks: Vec<Block> = items.collect();
        let blocks =
            if blocks.is_empty() { vec![Block::Text(self.word("paper-nothing-open"))] } else { blocks };
        let said = Said::new("paper-open").date("day", self.house.now().date_naive());
        Section { title: self.say(&said), blocks }
    }
}
