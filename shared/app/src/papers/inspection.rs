//! What a record sheet says of an inspection. Asked for by 14 CFR 43.11 of an entry: its type and
//! extent, the date, the time in service, who, the statement, and the list of what was found
//! wanting; by the FAA's form for larger work (AC 43.9-1): machine, serial numbers, owner.

use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Inspection, Record, Service};
use witnessmark_core::said::Said;

use super::entry::{Block, Entry, Item, Section};
use super::seen::Later;
use super::telling::Telling;
use crate::usecases::minutes;

impl Telling<'_> {
    /// How far the inspection went.
    pub(super) fn extent(&self, body: &Inspection) -> String {
        let mut stations: Vec<String> = Vec::new();
        for finding in &body.findings {
            let words = self.word(&format!("station-{}", finding.station));
            if !stations.contains(&words) {
                stations.push(words);
            }
        }
        let looked = body.findings.len() as f64;
        let said = Said::new("paper-extent")
            .text("list", self.word(&format!("occasion-{}", body.occasion)))
            .number("looked", looked)
            .number("points", looked + body.left.len() as f64)
            .text("stations", stations.join(", "))
            .text("digest", body.list.short());
        self.say(&said)
    }

    /// The entry of an inspection.
    pub(super) fn inspection(&self, record: &Record, body: &Inspection) -> Entry {
        let worst = body.findings.iter().map(|finding| finding.means).max();
        let missed = body.left.iter().any(|left| left.must);
        let (means, outcome) = match worst {
            Some(Meaning::Unserviceable) => (Some(Meaning::Unserviceable), "paper-outcome-unserviceable"),
            _ if missed => (None, "paper-outcome-missed"),
            Some(Meaning::Watch) => (Some(Meaning::Watch), "paper-outcome-watch"),
            _ => (Some(Meaning::Serviceable), "paper-outcome-serviceable"),
        };
        let count = |means: Meaning| body.findings.iter().filter(|f| f.means == means).count() as f64;
        let said = Said::new(outcome)
            .number("watch", count(Meaning::Watch))
            .number("unserviceable", count(Meaning::Unserviceable));
        let mut words = self.say(&said);
        if missed && means.is_some() {
            words = format!("{words} {}", self.word("paper-outcome-missed"));
        }
        let service = Service { hours: body.hours, flights: body.flights, tanks: 0 };
        let took = Said::new("paper-took")
            .text("from", self.moment(body.started))
            .text("to", self.moment(body.finished))
            .number("minutes", minutes(body.finished, body.started));
        let mut facts = self.machine_facts(record);
        facts.push((self.word("paper-service-then"), self.service(service)));
        facts.push((self.word("paper-date"), self.say(&took)));
        facts.push((self.word("paper-type"), self.extent(body)));
        let mut sections = Vec::new();
        let wanting: Vec<Block> = body
            .findings
            .iter()
            .filter(|finding| finding.means >= Meaning::Watch)
            .map(|finding| {
                Block::Item(Item { notes: Vec::new(), ..self.finding(finding, &Later::default()) })
            })
            .collect();
        if !wanting.is_empty() {
            sections.push(Section { title: self.word("paper-wanting"), blocks: wanting });
        }
        sections.extend(self.looked(record, body));
        sections.push(self.open());
        Entry {
            machine: self.name(),
            kind: self.word("paper-inspection"),
            title: self.word(&format!("occasion-{}", body.occasion)),
            outcome: (means, words),
            facts,
            sections,
            signed: vec![self.signed(record, self.word("paper-signed-inspection"))],
        }
    }
}
