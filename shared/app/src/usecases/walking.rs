//! Walking a list: every step durable when it returns.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use uuid::Uuid;
use witnessmark_core::list::{
    Ask, Given, JudgeFault, List, ListPoint, Progress, Sourced, Step, compose, judge, progress, resume,
};
use witnessmark_core::record::Digest;
use witnessmark_core::said::{Arg, Said};
use witnessmark_core::units::Quantity;
use witnessmark_store::{Draft, DraftState, Tx};

use crate::house::{House, id};
use crate::views::{
    AnswerView, AskView, GivenView, JudgedView, LastTime, Look, MachinePage, PointState, PointView,
    StationView, ValueAsk, Walk, WalkProgress,
};
use crate::{App, Fault};

/// A point can't have been looked at for longer than this in one go, seconds; more is a phone left lying.
const LONGEST_LOOK: f64 = 600.0;
/// Longest note, characters.
const LONGEST_NOTE: usize = 2000;

/// What a draft keeps of the list.
#[derive(Serialize, Deserialize)]
pub(crate) struct DraftBody {
    /// As composed when it was begun.
    pub list: List,
    /// Engine hours and flights then.
    pub hours: f64,
    pub flights: u32,
    /// The job after which it is walked.
    #[serde(default)]
    pub job: Option<Digest>,
}

/// A draft that goes on, with all that is known of it.
pub(crate) struct Going {
    pub draft: Draft,
    pub body: DraftBody,
    pub steps: Vec<Step>,
    pub progress: Progress,
}

impl App {
    /// Opens or resumes an inspection.
    ///
    /// # Errors
    /// [`Fault`]: no such machine or list, a list that needs a job, an engine that the catalogue
    /// doesn't have.
    pub fn walk(&mut self, machine: String, occasion: String) -> Result<Walk, Fault> {
        let machine = id(&machine)?;
        self.store.write(|tx| {
            let open = tx.drafts_open(machine)?.into_iter().find(|draft| draft.occasion == occasion);
            let draft = match open {
                Some(draft) => draft,
                None => self.house.begin_walk(tx, machine, &occasion)?,
            };
            let draft_id = draft.id;
            let steps = tx.steps(draft_id)?;
            if let Some(back) = resume(&steps, self.house.now(), self.house.patience(tx)?) {
                tx.step(draft_id, &Step::SteppedBack(back))?;
            }
            self.house.walk_view(tx, draft)
        })
    }

    /// Answers a point; durable when it returns.
    ///
    /// # Errors
    /// [`Fault`]: an answer that the point doesn't have.
    pub fn answer(
        &mut self,
        walk: String,
        point: String,
        given: Option<Given>,
        seconds: f64,
    ) -> Result<WalkProgress, Fault> {
        let given = given.ok_or_else(|| Fault::new("answer-missing"))?;
        let seconds = if seconds.is_finite() { seconds.clamp(0.0, LONGEST_LOOK) } else { 0.0 };
        self.step(&walk, |house, going| {
            let asked = asked(&going.body.list, &point)?;
            house.judged(asked, &given)?;
            Ok(Step::Answered { point, given, seconds, at: house.now() })
        })
    }

    /// What a value would mean, while it is being typed.
    ///
    /// # Errors
    /// [`Fault`]: a point that isn't measured, a unit of another kind.
    pub fn judge_value(
        &mut self,
        walk: String,
        point: String,
        value: Option<Quantity>,
    ) -> Result<JudgedView, Fault> {
        let walk = id(&walk)?;
        let value = value.ok_or_else(|| Fault::new("answer-missing"))?;
        self.store.read(|tx| {
            let going = self.house.going(tx, walk)?;
            let asked = asked(&going.body.list, &point)?;
            let judged = self.house.judged(asked, &Given::Value { value })?;
            let id = format!("judged-{}", meaning_id(judged.means));
            Ok(JudgedView {
                means: judged.means,
                value: judged.measured.map_or(value.value, |measured| measured.value),
                words: self.house.word(&id),
            })
        })
    }

    /// Takes back the last answer; it stays in the record's history.
    ///
    /// # Errors
    /// [`Fault`]: nothing to take back.
    pub fn undo(&mut self, walk: String) -> Result<WalkProgress, Fault> {
        self.step(&walk, |house, going| {
            let point = going.progress.order.last().cloned().ok_or_else(|| Fault::new("nothing-to-undo"))?;
            Ok(Step::Withdrawn { point, at: house.now() })
        })
    }

    /// Leaves a point for now.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn leave(&mut self, walk: String, point: String) -> Result<WalkProgress, Fault> {
        self.step(&walk, |house, going| {
            asked(&going.body.list, &point)?;
            Ok(Step::Left { point, at: house.now() })
        })
    }

    /// Writes the note beside a point.
    ///
    /// # Errors
    /// [`Fault`]: a note too long.
    pub fn note(&mut self, walk: String, point: String, note: String) -> Result<WalkProgress, Fault> {
        self.step(&walk, |house, going| {
            asked(&going.body.list, &point)?;
            let note = note.trim().to_owned();
            if note.chars().count() > LONGEST_NOTE {
                return Err(Fault::new("note-too-long").number("most", LONGEST_NOTE as f64));
            }
            Ok(Step::Noted { point, note, at: house.now() })
        })
    }

    /// Puts an inspection aside without signing.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn put_aside(&mut self, walk: String) -> Result<MachinePage, Fault> {
        let walk = id(&walk)?;
        self.store.write(|tx| {
            let going = self.house.going(tx, walk)?;
            tx.draft_close(walk, DraftState::Aside)?;
            self.house.page(tx, going.draft.machine)
        })
    }

    /// One step of one walk, in one transaction.
    pub(crate) fn step(
        &mut self,
        walk: &str,
        decide: impl FnOnce(&House, &Going) -> Result<Step, Fault>,
    ) -> Result<WalkProgress, Fault> {
        let walk = id(walk)?;
        self.store.write(|tx| {
            let mut going = self.house.going(tx, walk)?;
            let step = decide(&self.house, &going)?;
            tx.step(walk, &step)?;
            going.steps.push(step);
            going.progress = progress(&going.steps);
            Ok(self.house.progress_view(&going, None))
        })
    }
}

/// A point of the list, or the fault that it has none of that name.
fn asked<'a>(list: &'a List, point: &str) -> Result<&'a ListPoint, Fault> {
    list.point(point).ok_or_else(|| Fault::new("no-such-point").text("point", point))
}

pub(crate) fn meaning_id(means: witnessmark_core::list::Meaning) -> &'static str {
    use witnessmark_core::list::Meaning;
    match means {
        Meaning::NotFitted => "not-fitted",
        Meaning::Serviceable => "serviceable",
        Meaning::Watch => "watch",
        Meaning::Unserviceable => "unserviceable",
    }
}

impl House {
    /// The list of an occasion for a machine as it is now.
    pub(crate) fn composed(&self, tx: &Tx<'_>, machine: Uuid, occasion: &str) -> Result<DraftBody, Fault> {
        if !self.catalogue.occasions.iter().any(|known| known.id == occasion) {
            let known: Vec<_> = self.catalogue.occasions.iter().map(|o| o.id.as_str()).collect();
            return Err(Fault::new("no-such-occasion")
                .text("occasion", occasion)
                .text("known", known.join(", ")));
        }
        let history = self.known(tx, machine)?;
        let machinery = self.machinery(&history).ok_or_else(|| {
            let engine = history.machine.as_ref().map(|(machine, _)| machine.engine.clone());
            Fault::new("engine-unknown").text("engine", engine.unwrap_or_default())
        })?;
        let list = compose(self.catalogue.parts(), &machinery, occasion).map_err(Fault::internal)?;
        Ok(DraftBody { list, hours: history.hours, flights: history.flights, job: None })
    }

    /// What a walk begun now would ask: for a list that follows work, what the open job disturbed.
    pub(crate) fn asked_now(&self, tx: &Tx<'_>, machine: Uuid, occasion: &str) -> Result<DraftBody, Fault> {
        let needs_job = self.catalogue.occasions.iter().any(|known| known.job && known.id == occasion);
        if needs_job {
            self.composed_after_job(tx, machine, occasion)
        } else {
            self.composed(tx, machine, occasion)
        }
    }

    fn begin_walk(&self, tx: &Tx<'_>, machine: Uuid, occasion: &str) -> Result<Draft, Fault> {
        let body = self.asked_now(tx, machine, occasion)?;
        let draft = Draft {
            id: self.uuid()?,
            machine,
            occasion: occasion.to_owned(),
            state: DraftState::Open,
            started: self.now().to_rfc3339(),
            body: serde_json::to_string(&body)?,
        };
        tx.draft_begin(&draft)?;
        Ok(draft)
    }

    /// A walk that goes on.
    pub(crate) fn going(&self, tx: &Tx<'_>, walk: Uuid) -> Result<Going, Fault> {
        let draft = tx.draft(walk)?.ok_or_else(|| Fault::new("no-such").text("what", walk))?;
        if draft.state != DraftState::Open {
            return Err(Fault::new("walk-closed"));
        }
        self.read_draft(tx, draft)
    }

    fn read_draft(&self, tx: &Tx<'_>, draft: Draft) -> Result<Going, Fault> {
        let body = serde_json::from_str(&draft.body)?;
        let steps = tx.steps(draft.id)?;
        let progress = progress(&steps);
        Ok(Going { draft, body, steps, progress })
    }

    pub(crate) fn progress_of(&self, tx: &Tx<'_>, draft: &Draft) -> Result<WalkProgress, Fault> {
        Ok(self.progress_view(&self.read_draft(tx, draft.clone())?, None))
    }

    /// Judges an answer, with the fault worded.
    pub(crate) fn judged(
        &self,
        point: &ListPoint,
        given: &Given,
    ) -> Result<witnessmark_core::list::Judged, Fault> {
        judge(&point.ask, given).map_err(|fault| match fault {
            JudgeFault::NoSuchAnswer(answer) => {
                Fault::new("no-such-answer").text("answer", answer).text("point", &point.id)
            }
            JudgeFault::WrongKind(what) => {
                Fault::new("answer-kind").text("what", what).text("point", &point.id)
            }
            JudgeFault::Unit(fault) => Fault::new("unit").text("why", fault),
        })
    }

    fn walk_view(&self, tx: &Tx<'_>, draft: Draft) -> Result<Walk, Fault> {
        let machine = draft.machine;
        let history = self.known(tx, machine)?;
        let going = self.read_draft(tx, draft)?;
        // Only a step back that nothing followed is said: later it is history.
        let back = match going.steps.last() {
            Some(Step::SteppedBack(back)) => Some(self.say(&self.back_said(back))),
            _ => None,
        };
        Ok(Walk {
            id: going.draft.id.to_string(),
            machine: machine.to_string(),
            machine_name: history.machine.map(|(machine, _)| machine.name).unwrap_or_default(),
            words: self.word(&format!("occasion-{}", going.draft.occasion)),
            occasion: going.draft.occasion.clone(),
            stations: self.station_views(&going.body.list),
            progress: self.progress_view(&going, back),
        })
    }

    /// Why a list stepped back.
    pub(crate) fn back_said(&self, back: &witnessmark_core::list::StepBack) -> Said {
        let id = if back.another_day { "stepped-back-day" } else { "stepped-back" };
        Said::new(id)
            .number("minutes", back.away_minutes.abs().round())
            .number("points", back.points.len() as f64)
    }

    pub(crate) fn station_views(&self, list: &List) -> Vec<StationView> {
        list.stations
            .iter()
            .map(|station| {
                let id = format!("station-{}", station.id);
                StationView {
                    words: self.word(&id),
                    stand: self.attribute(&id, "stand"),
                    points: station.points.iter().map(|point| self.point_view(point)).collect(),
                    id: station.id.clone(),
                }
            })
            .collect()
    }

    pub(crate) fn attribute(&self, id: &str, attribute: &str) -> String {
        if self.catalogue.texts.has(id, Some(attribute)) {
            self.catalogue.texts.word(&self.language, id, Some(attribute), &BTreeMap::new())
        } else {
            String::new()
        }
    }

    /// A point's words with its placeholders filled.
    pub(crate) fn point_words(&self, point: &ListPoint, attribute: Option<&str>) -> String {
        if let Ask::Torque { joint, .. } = &point.ask {
            return self.torque_point_words(joint, attribute);
        }
        let missing = || self.word("figure-missing");
        let args = point.fills.iter().map(|(variable, filling)| {
            (variable.clone(), Arg::Figures(filling.text.clone().unwrap_or_else(missing)))
        });
        self.catalogue.texts.word(&self.language, &format!("point-{}", point.id), attribute, &args.collect())
    }

    fn point_view(&self, point: &ListPoint) -> PointView {
        let ask = match &point.ask {
            Ask::Words { answers } => AskView::Words {
                answers: answers
                    .iter()
                    .map(|answer| AnswerView {
                        id: answer.id.clone(),
                        words: self.point_words(point, Some(&answer.id)),
                        means: answer.means,
                    })
                    .collect(),
            },
            Ask::Torque { joint, band, nuts } => AskView::Torque(self.torque_ask(joint, band, *nuts)),
            Ask::Value { band, .. } => {
                let number = |end: &Option<Sourced>| {
                    let quantity = end.as_ref().and_then(Sourced::quantity)?;
                    quantity.to(band.unit()).ok().map(|q| q.value)
                };
                AskView::Value(ValueAsk {
                    band: band.name.clone(),
                    words: self.band_words(band),
                    low: number(&band.low),
                    high: number(&band.high),
                    units: self.units_beside(band.unit()),
                    source: self.source_words(band),
                })
            }
        };
        let unconfirmed = point.fills.values().any(|filling| !filling.confirmed)
            || matches!(&point.ask, Ask::Value { band, .. } | Ask::Torque { band, .. } if !band.confirmed());
        PointView {
            id: point.id.clone(),
            title: self.point_words(point, None),
            good: self.point_words(point, Some("good")),
            bad: self.point_words(point, Some("bad")),
            why: self.point_words(point, Some("why")),
            must: point.must,
            critical: point.critical,
            drawing: point.drawing.clone(),
            focus: point.focus.clone(),
            caution: point.caution.as_ref().map(|caution| self.word(&format!("caution-{caution}"))),
            ask,
            unconfirmed: unconfirmed.then(|| self.word("figure-unconfirmed")),
            last_time: point.remembered.as_ref().map(|last| LastTime {
                words: self.say(
                    &Said::new("last-time")
                        .text("words", &last.words)
                        .figures("hours", format!("{:.1}", last.hours)),
                ),
                means: last.means,
                record: last.record.to_string(),
            }),
        }
    }

    pub(crate) fn progress_view(&self, going: &Going, stepped_back: Option<String>) -> WalkProgress {
        let list = &going.body.list;
        let p = &going.progress;
        let started = DateTime::parse_from_rfc3339(&going.draft.started);
        let until = self.now();
        WalkProgress {
            current: p.next(list).map(str::to_owned),
            done: count(list.points().filter(|point| p.is_done(&point.id))),
            of: count(list.points()),
            minutes: started.map_or(0.0, |started| minutes(until, started)),
            points: list.points().map(|point| (point.id.clone(), self.point_state(point, p))).collect(),
            stepped_back,
            can_undo: !p.order.is_empty(),
        }
    }

    fn point_state(&self, point: &ListPoint, p: &Progress) -> PointState {
        let state = if p.is_done(&point.id) {
            Look::Done
        } else if p.again.contains(&point.id) {
            Look::Again
        } else if p.left.contains(&point.id) {
            Look::Left
        } else {
            Look::Open
        };
        PointState {
            state,
            given: p.seen.get(&point.id).and_then(|seen| self.given_view(point, &seen.given)),
            note: p.notes.get(&point.id).cloned().unwrap_or_default(),
            photos: p
                .photos
                .get(&point.id)
                .map(|photos| photos.iter().map(ToString::to_string).collect())
                .unwrap_or_default(),
        }
    }

    fn given_view(&self, point: &ListPoint, given: &Given) -> Option<GivenView> {
        let judged = judge(&point.ask, given).ok()?;
        Some(GivenView { given: given.clone(), words: self.given_words(point, given), means: judged.means })
    }

    /// An answer as a person reads it.
    pub(crate) fn given_words(&self, point: &ListPoint, given: &Given) -> String {
        match given {
            Given::Words { answer } => self.point_words(point, Some(answer)),
            Given::Value { value } => self.figures(&value.to_string()),
            Given::Torque { torque } => self.torque_words(torque),
        }
    }
}

pub(crate) fn count(items: impl Iterator) -> u32 {
    u32::try_from(items.count()).unwrap_or(u32::MAX)
}

/// Minutes between two moments, to a tenth.
pub(crate) fn minutes(until: DateTime<FixedOffset>, from: DateTime<FixedOffset>) -> f64 {
    ((until - from).num_seconds() as f64 / 6.0).round() / 10.0
}
