//! What a record sheet says of work: the job, its list, the second look, the release. Asked for by
//! 14 CFR 43.9 of an entry: what was done, the date of completion, who did it, the signature.

use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Digest, Inspection, Interval, JobBegun, Record, Released, SecondLook};
use witnessmark_core::said::Said;
use witnessmark_core::verdict::lack_said;
use witnessmark_core::work::lacks;

use super::entry::{Block, Entry, Item, Section, Signed};
use super::telling::Telling;

/// All that was signed about one job.
struct Parts<'a> {
    begun: (&'a Record, JobBegun),
    lists: Vec<(&'a Record, Inspection)>,
    looks: Vec<(&'a Record, SecondLook)>,
    released: Option<(&'a Record, Released)>,
}

impl<'a> Parts<'a> {
    fn of(records: &'a [Record], job: Digest) -> Option<Self> {
        let (mut begun, mut lists, mut looks, mut released) = (None, Vec::new(), Vec::new(), None);
        for record in records {
            match record.payload.typed() {
                Ok(Body::JobBegun(body)) if record.digest == job => begun = Some((record, body)),
                Ok(Body::Inspection(body)) if body.job == Some(job) => lists.push((record, body)),
                Ok(Body::SecondLook(body)) if body.job == job => looks.push((record, body)),
                Ok(Body::Released(body)) if body.job == job => released = Some((record, body)),
                _ => {}
            }
        }
        Some(Self { begun: begun?, lists, looks, released })
    }
}

impl Telling<'_> {
    /// The entry of a job; none where the job's beginning isn't here.
    pub(super) fn job(&self, job: Digest) -> Option<Entry> {
        let mut parts = Parts::of(&self.records, job)?;
        // A release that the records don't bear out is none: the job is still open.
        let open = self.history.work.job(&job).is_some_and(|job| job.released.is_none());
        parts.released = parts.released.filter(|_| !open);
        let (record, body) = &parts.begun;
        let mut facts = self.machine_facts(record);
        let begun = Said::new("paper-begun-words")
            .text("at", self.moment(record.payload.at))
            .text("person", self.by(&record.payload.device))
            .text("service", self.service(body.service));
        facts.push((self.word("paper-begun"), self.say(&begun)));
        if let Some((record, released)) = &parts.released {
            facts.push((self.word("paper-service-then"), self.service(released.service)));
            facts.push((self.word("paper-completed"), self.moment(record.payload.at)));
        } else {
            facts.push((self.word("paper-completed"), self.word("paper-not-released")));
        }
        let mut sections = vec![self.description(body)];
        if let Some((record, list)) = parts.lists.last() {
            sections.push(Section {
                title: self.word("paper-list-after"),
                blocks: vec![Block::Text(self.extent(list))],
            });
            sections.extend(self.looked(record, list));
        }
        sections.extend(self.second_looks(&parts));
        sections.push(self.open());
        Some(Entry {
            machine: self.name(),
            kind: self.word("paper-work"),
            title: body.title.clone(),
            outcome: self.job_outcome(&parts, job),
            facts,
            sections,
            signed: self.job_signed(&parts),
        })
    }

    fn description(&self, body: &JobBegun) -> Section {
        let words = |joints: Vec<&String>| -> String {
            let named = joints.into_iter().map(|joint| body.disturbed.get(joint).unwrap_or(joint).clone());
            named.collect::<Vec<_>>().join("; ")
        };
        let mut blocks = vec![Block::Text(body.title.clone())];
        if !body.note.is_empty() {
            blocks.push(Block::Text(self.say(&Said::new("paper-note").text("note", &body.note))));
        }
        let disturbed = words(body.disturbed.keys().collect());
        if !disturbed.is_empty() {
            blocks.push(Block::Text(self.say(&Said::new("paper-disturbed").text("joints", disturbed))));
        }
        let independent = words(body.independent.iter().collect());
        if !independent.is_empty() {
            blocks.push(Block::Text(self.say(&Said::new("paper-independent").text("joints", independent))));
        }
        blocks.extend(body.follow_ups.iter().map(|later| {
            let said = Said::new("paper-follow-up").text("title", &later.title);
            Block::Text(self.say(&said.text("after", self.interval(&later.after))))
        }));
        Section { title: self.word("paper-description"), blocks }
    }

    /// How much may pass, in words.
    pub(super) fn interval(&self, every: &Interval) -> String {
        let count = |id: &str, n: Option<f64>| n.map(|n| self.say(&Said::new(id).number("n", n)));
        let parts = [
            count("paper-hours", every.hours),
            count("paper-flights", every.flights.map(f64::from)),
            count("paper-tanks", every.tanks.map(f64::from)),
            count("paper-days", every.days.map(f64::from)),
        ];
        let parts: Vec<String> = parts.into_iter().flatten().collect();
        let words = parts.join(&self.word("paper-or"));
        if parts.len() > 1 { self.say(&Said::new("paper-first-of").text("words", words)) } else { words }
    }

    fn second_looks(&self, parts: &Parts<'_>) -> Option<Section> {
        if parts.begun.1.independent.is_empty() {
            return None;
        }
        let mut blocks = Vec::new();
        for (record, look) in &parts.looks {
            let said = Said::new("paper-looked-by")
                .text("person", self.by(&record.payload.device))
                .text("at", self.moment(record.payload.at));
            blocks.push(Block::Station(self.say(&said)));
            blocks.extend(look.joints.iter().map(|seen| {
                let id = if seen.means <= Meaning::Serviceable {
                    "paper-joint-good"
                } else {
                    "paper-joint-wanting"
                };
                Block::Item(Item {
                    means: Some(seen.means),
                    title: parts.begun.1.disturbed.get(&seen.joint).unwrap_or(&seen.joint).clone(),
                    words: self.word(id),
                    notes: (!seen.note.is_empty())
                        .then(|| self.say(&Said::new("paper-note").text("note", &seen.note)))
                        .into_iter()
                        .collect(),
                })
            }));
        }
        if blocks.is_empty() {
            blocks.push(Block::Text(self.word("paper-no-second-look")));
        }
        Some(Section { title: self.word("paper-second-look"), blocks })
    }

    fn job_outcome(&self, parts: &Parts<'_>, job: Digest) -> (Option<Meaning>, String) {
        if parts.released.is_some() {
            return (Some(Meaning::Serviceable), self.word("paper-outcome-released"));
        }
        let lacking = self.history.work.job(&job).map(|job| {
            let lacking = lacks(job, |device| self.people.person(device));
            lacking.iter().map(|lack| self.say(&lack_said(job, lack))).collect::<Vec<_>>().join(" ")
        });
        let said = Said::new("paper-outcome-open").text("lacks", lacking.unwrap_or_default());
        (Some(Meaning::Unserviceable), self.say(&said).trim().to_owned())
    }

    fn job_signed(&self, parts: &Parts<'_>) -> Vec<Signed> {
        let last = parts.lists.len().saturating_sub(1);
        let mut signed = vec![self.signed(parts.begun.0, self.word("paper-signed-job"))];
        signed.extend(parts.lists.iter().enumerate().map(|(n, (record, _))| {
            let id = if n == last { "paper-signed-list" } else { "paper-signed-earlier-list" };
            self.signed(record, self.word(id))
        }));
        let looks = parts.looks.iter().map(|(record, _)| self.signed(record, self.word("paper-signed-look")));
        signed.extend(looks);
        let released = parts.released.iter();
        signed.extend(released.map(|(record, _)| self.signed(record, self.word("paper-signed-release"))));
        signed
    }
}
