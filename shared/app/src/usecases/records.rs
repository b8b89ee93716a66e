//! A record laid open; what was found put right, or corrected by a later word.

use uuid::Uuid;
use witnessmark_core::list::{Ask, Given, List, Meaning};
use witnessmark_core::record::{Body, Correction, Finding, Inspection, Record, Rectified, Signature};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::walking::meaning_id;
use crate::house::{House, digest, id};
use crate::rights::role_id;
use crate::views::{AnswerView, FindingView, LeftView, MachinePage, RecordView};
use crate::{App, Fault, identity};

/// How the text in a record sheet's code begins.
pub(crate) const RECORD: &str = "WM1RECORD:";
/// Longest text of a rectification or a reason, characters.
const LONGEST: usize = 1000;

impl App {
    /// A record laid open, by its digest or by the text in a record sheet's code.
    ///
    /// # Errors
    /// [`Fault`]: not on this device.
    pub fn record(&mut self, name: String) -> Result<RecordView, Fault> {
        let name = match name.trim().strip_prefix(RECORD) {
            Some(code) => digest(&code.to_lowercase())?,
            None => digest(&name)?,
        };
        self.store.read(|tx| {
            let record = tx.record(&name)?.ok_or_else(|| Fault::new("no-such").text("what", name.short()))?;
            self.house.record_view(tx, &record)
        })
    }

    /// Signs that what is open at a point was put right.
    ///
    /// # Errors
    /// [`Fault`]: nothing open there, no word of what was done, a wrong PIN.
    pub fn rectify(
        &mut self,
        machine: String,
        point: String,
        how: String,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let how = said_how(&how, "rectify-how-missing")?;
        let open = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let history = self.house.known(tx, machine)?;
            let open = history.open_at(&point).and_then(|open| open.leading());
            let open = open.ok_or_else(|| Fault::new("nothing-open").text("point", &point))?;
            Ok(Body::Rectified(Rectified { point: point.clone(), opened_by: open.record, how: how.clone() }))
        };
        self.store.read(open)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &open(tx)?)?;
            self.house.page(tx, machine)
        })
    }

    /// Signs a later word on a finding.
    ///
    /// # Errors
    /// [`Fault`]: no such finding or answer, no reason given, a wrong PIN.
    pub fn correct(
        &mut self,
        record: String,
        point: String,
        answer: String,
        reason: String,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let name = digest(&record)?;
        let reason = said_how(&reason, "correction-reason-missing")?;
        let (machine, body) = self.store.read(|tx| {
            let record = tx.record(&name)?.ok_or_else(|| Fault::new("no-such").text("what", name.short()))?;
            let machine = record.payload.machine.ok_or_else(|| Fault::new("not-an-inspection"))?;
            let Ok(Body::Inspection(inspection)) = record.payload.typed() else {
                return Err(Fault::new("not-an-inspection"));
            };
            let finding = inspection.findings.iter().find(|finding| finding.point == point);
            let finding = finding.ok_or_else(|| Fault::new("no-such-point").text("point", &point))?;
            let list = self.house.list_of(tx, machine, &inspection);
            let choices = self.house.choices_for(list.as_ref(), finding);
            let choice = choices
                .into_iter()
                .find(|choice| choice.id == answer)
                .ok_or_else(|| Fault::new("no-such-answer").text("answer", &answer).text("point", &point))?;
            let correction = Correction {
                of: name,
                point: point.clone(),
                title: finding.title.clone(),
                words: choice.words,
                means: choice.means,
                reason,
            };
            Ok((machine, Body::Correction(correction)))
        })?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body)?;
            self.house.page(tx, machine)
        })
    }
}

fn said_how(text: &str, missing: &'static str) -> Result<String, Fault> {
    let text = text.trim();
    if text.is_empty() {
        return Err(Fault::new(missing));
    }
    if text.chars().count() > LONGEST {
        return Err(Fault::new("note-too-long").number("most", LONGEST as f64));
    }
    Ok(text.to_owned())
}

/// The message that says what came of a signature.
pub(crate) fn signature_id(outcome: Signature) -> &'static str {
    match outcome {
        Signature::Good => "signature-good",
        Signature::Bad => "signature-bad",
        Signature::UnknownKey => "signature-unknown-key",
        Signature::Revoked => "signature-revoked",
        Signature::NotChecked => "signature-not-checked",
    }
}

impl House {
    /// What a correction of a finding may say: the point's other answers, as the catalogue has them;
    /// for a measured point, that the value was fit, to be watched or not fit.
    fn choices_for(&self, list: Option<&List>, finding: &Finding) -> Vec<AnswerView> {
        if let Some(point) = list.and_then(|list| list.point(&finding.point))
            && let Ask::Words { answers } = &point.ask
        {
            let others = answers.iter().filter(|answer| finding.answer.as_ref() != Some(&answer.id));
            return others
                .map(|answer| AnswerView {
                    id: answer.id.clone(),
                    words: self.given_words(point, &Given::Words { answer: answer.id.clone() }),
                    means: answer.means,
                })
                .collect();
        }
        let all = [Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable];
        all.into_iter()
            .filter(|means| *means != finding.means)
            .map(|means| AnswerView {
                id: meaning_id(means).to_owned(),
                words: self.word(&format!("judged-{}", meaning_id(means))),
                means,
            })
            .collect()
    }

    /// The inspection's list as it would be composed now; none where the catalogue no longer can.
    fn list_of(&self, tx: &Tx<'_>, machine: Uuid, inspection: &Inspection) -> Option<List> {
        self.composed(tx, machine, &inspection.occasion).ok().map(|body| body.list)
    }

    fn record_view(&self, tx: &Tx<'_>, record: &Record) -> Result<RecordView, Fault> {
        let payload = &record.payload;
        let outcome = tx.trust()?.check(record);
        let people = self.people(tx)?;
        let by = people.name(&payload.device);
        let mut view = RecordView {
            digest: record.digest.to_string(),
            kind: self.kind_words(&payload.kind),
            words: String::new(),
            by,
            device: payload.device.0.clone(),
            when: self.when(payload.at),
            seq: u32::try_from(payload.seq).unwrap_or(u32::MAX),
            signature: self.word(signature_id(outcome)),
            good: outcome == Signature::Good,
            machine: payload.machine.map(|machine| machine.to_string()),
            sheet: crate::papers::has_sheet(record),
            findings: Vec::new(),
            left: Vec::new(),
            interruptions: Vec::new(),
            payload: record.envelope.payload.clone(),
        };
        match payload.typed() {
            Ok(Body::Inspection(body)) => self.open_inspection(tx, record, &body, &mut view)?,
            Ok(body) => view.words = self.body_words(&body),
            Err(_) => view.words = self.word("told-unknown"),
        }
        Ok(view)
    }

    pub(crate) fn kind_words(&self, kind: &str) -> String {
        let id = format!("kind-{kind}");
        if self.catalogue.texts.has(&id, None) { self.word(&id) } else { kind.to_owned() }
    }

    /// What a record says, in a sentence.
    pub(crate) fn body_words(&self, body: &Body) -> String {
        let said = match body {
            Body::Member(member) => Said::new("says-member").text("name", &member.name),
            Body::Vouched(vouched) => Said::new("says-vouched").text("device", vouched.device.short()),
            Body::Revoked(revoked) => Said::new("says-revoked")
                .text("device", revoked.device.short())
                .text("reason", &revoked.reason),
            Body::Machine(machine) => return self.description_words(machine),
            Body::Rectified(body) => Said::new("says-rectified").text("how", &body.how),
            Body::Correction(body) => Said::new("says-correction")
                .text("title", &body.title)
                .text("words", &body.words)
                .text("reason", &body.reason),
            Body::LimitConfirmed(body) => Said::new("says-limit")
                .text("band", self.word(&format!("band-{}", body.band)))
                .figures("low", body.low.map(|q| q.to_string()).unwrap_or_else(|| "–".into()))
                .figures("high", body.high.map(|q| q.to_string()).unwrap_or_else(|| "–".into()))
                .text("document", &body.document)
                .text("page", &body.page),
            Body::TimeLogged(body) => Said::new("says-time")
                .figures("hours", format!("{:.1}", body.added.hours))
                .number("flights", body.added.flights)
                .number("tanks", body.added.tanks)
                .figures("reading", body.reading.map(|h| format!("{h:.1}")).unwrap_or_else(|| "–".into())),
            Body::FlightPlanned(body) => return self.flight_words(body),
            Body::ReadingsTaken(body) => Said::new("says-readings-taken")
                .text("name", &body.name)
                .number("figures", body.readings.len() as f64),
            Body::JobBegun(body) => Said::new("says-job").text("title", &body.title).text("note", &body.note),
            Body::SecondLook(body) => {
                Said::new("says-second-look").number("joints", body.joints.len() as f64)
            }
            Body::Released(_) => Said::new("says-released"),
            Body::Deferred(body) => {
                Said::new("says-deferred").text("condition", &body.condition).text("reason", &body.reason)
            }
            Body::ToolKept(body) => Said::new("says-tool")
                .text("name", &body.name)
                .figures("low", body.low)
                .figures("high", body.high),
            Body::ComponentMoved(body) => Said::new("says-component")
                .text("name", &body.name)
                .text("fitted", if body.fitted { "on" } else { "off" })
                .figures("hours", format!("{:.1}", body.own.hours)),
            Body::DueKept(body) => Said::new("says-due").text("title", &body.title),
            Body::SchoolFounded(body) => Said::new("says-school-founded").text("name", &body.name),
            Body::SchoolJoined(body) => Said::new("says-school-joined").text("school", body.school.short()),
            Body::MemberAdmitted(body) => Said::new("says-member-admitted")
                .text("name", &body.name)
                .text("role", self.word(role_id(body.role)))
                .text("from", self.catalogue.texts.day(&self.language, body.from))
                .text(
                    "until",
                    body.until
                        .map(|day| self.catalogue.texts.day(&self.language, day))
                        .unwrap_or("empty".into()),
                ),
            Body::MemberEnded(body) => Said::new("says-member-ended").text("reason", &body.reason),
            Body::RootHanded(body) => Said::new("says-root-handed").text("device", body.to.short()),
            Body::MachineEnrolled(body) => Said::new("says-machine-enrolled")
                .text("school", body.school.map(|school| school.short()).unwrap_or("empty".into())),
            Body::CataloguePublished(body) => Said::new("says-published")
                .text("title", &body.title)
                .number("version", body.version)
                .number("files", body.files.len() as f64),
            Body::Inspection(_) | Body::Unknown { .. } => Said::new("told-unknown"),
        };
        self.say(&said)
    }

    fn open_inspection(
        &self,
        tx: &Tx<'_>,
        record: &Record,
        body: &Inspection,
        view: &mut RecordView,
    ) -> Result<(), Fault> {
        let machine = record.payload.machine.ok_or_else(|| Fault::new("not-an-inspection"))?;
        let list = self.list_of(tx, machine, body);
        let mut corrections = Vec::new();
        for later in tx.records_of_kind(machine, "correction")? {
            if let Ok(Body::Correction(correction)) = later.payload.typed()
                && correction.of == record.digest
            {
                corrections.push(correction);
            }
        }
        let worst = body.findings.iter().map(|finding| finding.means).max();
        view.words = self.say(
            &Said::new("told-inspection")
                .text("list", self.word(&format!("occasion-{}", body.occasion)))
                .text("worst", worst.map(meaning_id).unwrap_or_default())
                .text("words", ""),
        );
        view.left = body
            .left
            .iter()
            .map(|left| LeftView { id: left.point.clone(), words: left.title.clone(), must: left.must })
            .collect();
        view.interruptions = body
            .stepped_back
            .iter()
            .map(|back| {
                self.say(
                    &Said::new("stepped-back")
                        .number("minutes", back.away_minutes.abs().round())
                        .number("points", back.points.len() as f64),
                )
            })
            .collect();
        for finding in &body.findings {
            let later = corrections.iter().filter(|correction| correction.point == finding.point);
            let later = later.map(|correction| self.body_words(&Body::Correction(correction.clone())));
            view.findings.push(FindingView {
                point: finding.point.clone(),
                station: self.word(&format!("station-{}", finding.station)),
                title: finding.title.clone(),
                words: finding.words.clone(),
                means: finding.means,
                band: finding.band.as_ref().map(ToString::to_string),
                note: finding.note.clone(),
                photos: finding.photos.iter().map(ToString::to_string).collect(),
                seconds: finding.seconds,
                before: finding.before.iter().map(|earlier| earlier.words.clone()).collect(),
                corrections: later.collect(),
                choices: self.choices_for(list.as_ref(), finding),
            });
        }
        Ok(())
    }
}
