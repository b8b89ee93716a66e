//! What a record sheet says, and of an inspection. Asked for by 14 CFR 43.9 and 43.11 of an entry:
//! what was done or what was inspected and how far, the date, the time in service, who, the
//! statement, and the list of what was found wanting; by the FAA's form for larger work (AC 43.9-1):
//! machine, serial numbers, owner.

use chrono::{DateTime, FixedOffset};
use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Body, Correction, DeviceId, Finding, Inspection, Record, Rectified, Service, Trust,
};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;
use crate::usecases::{meaning_id, minutes};
use crate::verdicts::People;

/// A sheet's words, in the order in which they are read.
pub(super) struct Entry {
    pub machine: String,
    /// What sort of sheet it is.
    pub kind: String,
    /// What it is about: the list, or the job.
    pub title: String,
    /// The outcome in a sentence, with its ring.
    pub outcome: (Option<Meaning>, String),
    /// Label and value.
    pub facts: Vec<(String, String)>,
    pub sections: Vec<Section>,
    pub signed: Vec<Signed>,
}

/// Words under a heading.
pub(super) struct Section {
    pub title: String,
    pub blocks: Vec<Block>,
}

/// One thing in a section.
pub(super) enum Block {
    Text(String),
    /// A place to stand.
    Station(String),
    Item(Item),
}

/// One thing found, done or left.
pub(super) struct Item {
    /// Its ring; an empty ring where there is none.
    pub means: Option<Meaning>,
    pub title: String,
    pub words: String,
    /// What stands below, in small letters.
    pub notes: Vec<String>,
}

/// A signature and what it covers.
pub(super) struct Signed {
    pub title: String,
    pub facts: Vec<(String, String)>,
}

/// What an entry is written from.
pub(super) struct Telling<'a> {
    pub house: &'a House,
    pub machine: Uuid,
    pub history: History,
    pub people: People,
    /// All records of the machine, in the order in which they are folded.
    pub records: Vec<Record>,
    trust: Trust,
}

impl<'a> Telling<'a> {
    pub(super) fn new(house: &'a House, tx: &Tx<'_>, machine: Uuid) -> Result<Self, Fault> {
        let mut records = tx.records_of(Some(machine))?;
        records.sort_by_cached_key(witnessmark_core::history::Place::of);
        Ok(Self {
            house,
            machine,
            history: house.known(tx, machine)?,
            people: house.people(tx)?,
            records,
            trust: Trust::from_records(&tx.records_of(None)?),
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
        let place = witnessmark_core::history::Place::of(upto);
        let before = |record: &&Record| witnessmark_core::history::Place::of(record) <= place;
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

    /// The findings of an inspection station by station, and what went with them.
    pub(super) fn looked(&self, record: &Record, body: &Inspection) -> Vec<Section> {
        let later = Later::of(self, record);
        let mut blocks = Vec::new();
        let mut station = "";
        for finding in &body.findings {
            if finding.station != station {
                station = &finding.station;
                blocks.push(Block::Station(self.word(&format!("station-{station}"))));
            }
            blocks.push(Block::Item(self.finding(finding, &later)));
        }
        let mut sections = vec![Section { title: self.word("paper-findings"), blocks }];
        if !body.left.is_empty() {
            let left = body.left.iter().map(|left| {
                Block::Item(Item {
                    means: None,
                    title: left.title.clone(),
                    words: self.word(if left.must { "paper-left-must" } else { "paper-left" }),
                    notes: Vec::new(),
                })
            });
            sections.push(Section { title: self.word("paper-points-left"), blocks: left.collect() });
        }
        let titles = |points: &[String]| -> Vec<String> {
            let title = |point: &String| {
                let found = body.findings.iter().find(|finding| finding.point == *point);
                found.map_or(point, |finding| &finding.title).clone()
            };
            points.iter().map(title).collect()
        };
        let back = body.stepped_back.iter().map(|back| {
            let said = Said::new("paper-stepped-back").number("minutes", back.away_minutes.abs().round());
            let titles = titles(&back.points).join("; ");
            Block::Text(self.say(&said.text("at", self.moment(back.at)).text("titles", titles)))
        });
        let hurried = (!body.hurried.is_empty()).then(|| {
            let titles = titles(&body.hurried).join("; ");
            Block::Text(self.say(&Said::new("paper-hurried").text("titles", titles)))
        });
        let blocks: Vec<Block> = back.chain(hurried).collect();
        let blocks =
            if blocks.is_empty() { vec![Block::Text(self.word("paper-no-interruptions"))] } else { blocks };
        sections.push(Section { title: self.word("paper-interruptions"), blocks });
        sections
    }

    fn finding(&self, finding: &Finding, later: &Later) -> Item {
        let mut notes = Vec::new();
        if let Some(band) = &finding.band {
            let said =
                Said::new("paper-band").text("band", band).text("source", self.house.source_words(band));
            notes.push(self.say(&said));
        }
        if let Some(torque) = &finding.torque {
            let eighths: Vec<String> = torque.eighths.iter().map(ToString::to_string).collect();
            let said = Said::new("paper-torque")
                .text("tool", &torque.tool_name)
                .text("setting", torque.setting)
                .text("least", torque.least)
                .text("most", torque.most)
                .text("eighths", eighths.join(", "));
            notes.push(self.say(&said));
            if let Some(reading) = torque.reading {
                notes.push(self.say(&Said::new("paper-reading").text("reading", reading)));
            }
            if let Some(because) = &torque.override_reason {
                notes.push(self.say(&Said::new("paper-override").text("because", because)));
            }
        }
        if !finding.note.is_empty() {
            notes.push(self.say(&Said::new("paper-note").text("note", &finding.note)));
        }
        if !finding.photos.is_empty() {
            let photos: Vec<String> = finding.photos.iter().map(|photo| photo.short()).collect();
            let said = Said::new("paper-photos").number("count", photos.len() as f64);
            notes.push(self.say(&said.text("photos", photos.join(", "))));
        }
        notes.extend(
            finding
                .before
                .iter()
                .map(|before| self.say(&Said::new("paper-before").text("words", &before.words))),
        );
        notes.extend(later.notes(self, &finding.point));
        Item { means: Some(finding.means), title: finding.title.clone(), words: finding.words.clone(), notes }
    }

    /// What is open on the machine now.
    pub(super) fn open(&self) -> Section {
        let items = self.history.open.iter().filter_map(|open| {
            let leading = open.leading()?;
            let since = Said::new("open-since")
                .date("day", leading.at.date_naive())
                .text("hours", format!("{:.1}", leading.hours))
                .text("person", self.by(&leading.device));
            let deferral = self.history.work.deferrals.get(&open.point).map(|(_, _, body)| body);
            let deferred = deferral.filter(|body| open.sightings.iter().any(|s| s.record == body.opened_by));
            let until = deferred.map(|body| {
                let said = Said::new("says-deferred").text("condition", &body.condition);
                let mut words = vec![self.say(&said.text("reason", &body.reason))];
                words.extend(body.until_hours.map(|hours| {
                    self.say(&Said::new("deferred-hours").text("hours", format!("{hours:.1}")))
                }));
                words.extend(
                    body.until_flights.map(|n| self.say(&Said::new("deferred-flights").number("flights", n))),
                );
                words.extend(
                    body.until_date.map(|day| self.say(&Said::new("deferred-date").date("day", day))),
                );
                words.join(" ")
            });
            Some(Block::Item(Item {
                means: Some(open.means()),
                title: leading.title.clone(),
                words: leading.words.clone(),
                notes: std::iter::once(self.say(&since)).chain(until).collect(),
            }))
        });
        let blocks: Vec<Block> = items.collect();
        let blocks =
            if blocks.is_empty() { vec![Block::Text(self.word("paper-nothing-open"))] } else { blocks };
        let said = Said::new("paper-open").date("day", self.house.now().date_naive());
        Section { title: self.say(&said), blocks }
    }

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
        sections.push(self.open());
        sections.extend(self.looked(record, body));
        Entry {
            machine: self.name(),
            kind: self.word("paper-inspection"),
            title: self.word(&format!("occasion-{}", body.occasion)),
            outcome: (means, self.say(&said)),
            facts,
            sections,
            signed: vec![self.signed(record, self.word("paper-signed-inspection"))],
        }
    }
}

fn signature_id(outcome: witnessmark_core::record::Signature) -> &'static str {
    use witnessmark_core::record::Signature;
    match outcome {
        Signature::Good => "signature-good",
        Signature::Bad => "signature-bad",
        Signature::UnknownKey => "signature-unknown-key",
        Signature::Revoked => "signature-revoked",
        Signature::NotChecked => "signature-not-checked",
    }
}

/// What was said of an inspection's findings afterwards.
#[derive(Default)]
struct Later {
    corrections: Vec<Correction>,
    rectified: Vec<(Record, Rectified)>,
}

impl Later {
    fn of(telling: &Telling<'_>, inspection: &Record) -> Self {
        let mut later = Self::default();
        for record in &telling.records {
            match record.payload.typed() {
                Ok(Body::Correction(body)) if body.of == inspection.digest => later.corrections.push(body),
                Ok(Body::Rectified(body)) if body.opened_by == inspection.digest => {
                    later.rectified.push((record.clone(), body));
                }
                _ => {}
            }
        }
        later
    }

    fn notes(&self, telling: &Telling<'_>, point: &str) -> Vec<String> {
        let corrections = self.corrections.iter().filter(|body| body.point == point).map(|body| {
            let said = Said::new("paper-corrected").text("words", &body.words).text("reason", &body.reason);
            telling.say(&said)
        });
        let rectified =
            self.rectified.iter().filter(|(_, body)| body.point == point).map(|(record, body)| {
                let said = Said::new("paper-rectified")
                    .text("how", &body.how)
                    .date("day", record.payload.at.date_naive())
                    .text("person", telling.by(&record.payload.device));
                telling.say(&said)
            });
        corrections.chain(rectified).collect()
    }
}

/// A meaning in a word.
pub(super) fn meaning_words(house: &House, means: Option<Meaning>) -> String {
    house.word(&format!("paper-means-{}", means.map_or("open", meaning_id)))
}
