//! What an inspection saw, point by point, and what was said of it afterwards.

use witnessmark_core::record::{Body, Correction, Finding, Inspection, Record, Rectified};
use witnessmark_core::said::Said;

use super::entry::{Block, Item, Section};
use super::telling::Telling;

impl Telling<'_> {
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
            let all = body.hurried.len() == body.findings.len();
            let said = Said::new(if all { "paper-hurried-all" } else { "paper-hurried" })
                .number("points", body.hurried.len() as f64)
                .text("titles", titles(&body.hurried).join("; "));
            Block::Text(self.say(&said))
        });
        let blocks: Vec<Block> = back.chain(hurried).collect();
        let blocks =
            if blocks.is_empty() { vec![Block::Text(self.word("paper-no-interruptions"))] } else { blocks };
        sections.push(Section { title: self.word("paper-interruptions"), blocks });
        sections
    }

    pub(super) fn finding(&self, finding: &Finding, later: &Later) -> Item {
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
                .figures("setting", torque.setting)
                .figures("least", torque.least)
                .figures("most", torque.most)
                .text("eighths", eighths.join(", "));
            notes.push(self.say(&said));
            if let Some(reading) = torque.reading {
                notes.push(self.say(&Said::new("paper-reading").figures("reading", reading)));
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
}

/// What was said of an inspection's findings afterwards.
#[derive(Default)]
pub(super) struct Later {
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
