//! The inspection said back, and signed.

use std::collections::BTreeMap;

use chrono::DateTime;
use uuid::Uuid;
use witnessmark_core::attention::{hurried, in_short, median};
use witnessmark_core::list::{Ask, ListPoint, Meaning, Seen, judge};
use witnessmark_core::record::{Body, Digest, Earlier, Finding, Inspection, Left, SigningSeed, SteppedBack};
use witnessmark_core::said::Said;
use witnessmark_store::{DraftState, Tx};

use super::walking::{Going, count, minutes};
use crate::house::{House, id};
use crate::views::{FoundView, LeftView, Named, Signed, Summary, VerdictView};
use crate::{App, Fault, identity};

/// What points usually take, seconds.
type Usual = BTreeMap<String, f64>;

impl App {
    /// The inspection said back.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn summary(&mut self, walk: String) -> Result<Summary, Fault> {
        let walk = id(&walk)?;
        self.store.read(|tx| {
            let going = self.house.going(tx, walk)?;
            self.house.summary(tx, &going)
        })
    }

    /// Signs and closes the inspection.
    ///
    /// # Errors
    /// [`Fault`]: nothing answered, a list that must step back first, a wrong PIN.
    pub fn sign(&mut self, walk: String, pin: String) -> Result<Signed, Fault> {
        let walk = id(&walk)?;
        self.store.read(|tx| self.house.signable(&self.house.going(tx, walk)?))?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let going = self.house.going(tx, walk)?;
            self.house.signable(&going)?;
            let machine = going.draft.machine;
            let body = Body::Inspection(self.house.inspection(&going, &self.house.usual(tx, &going)?)?);
            let record = self.house.write_record(tx, &seed, Some(machine), &body)?;
            tx.draft_close(walk, DraftState::Signed)?;
            let people = self.house.people(tx)?;
            let verdict = self.house.verdict(tx, machine, &self.house.known(tx, machine)?, &people)?;
            Ok(Signed {
                record: record.digest.to_string(),
                machine: machine.to_string(),
                verdict: self.house.verdict_view(&verdict),
            })
        })
    }
}

impl House {
    /// Whether there is something to sign, and all of it of one day.
    fn signable(&self, going: &Going) -> Result<(), Fault> {
        let last = going.progress.seen.values().map(|seen| seen.at).max();
        let last = last.ok_or_else(|| Fault::new("nothing-to-sign"))?;
        if last.date_naive() != self.now().date_naive() {
            return Err(Fault::new("walk-of-another-day"));
        }
        // Asked again after an interruption and not answered: say so, or answer.
        if let Some(point) = going.progress.again.iter().next() {
            let point = going.body.list.point(point).map(|p| self.point_words(p, None)).unwrap_or_default();
            return Err(Fault::new("look-again-first").text("point", point));
        }
        Ok(())
    }

    /// What each point answered usually takes: this person's own habit, else everybody's.
    fn usual(&self, tx: &Tx<'_>, going: &Going) -> Result<Usual, Fault> {
        let own = identity::signatory(tx)?;
        let mut usual = BTreeMap::new();
        for point in &going.progress.order {
            let habit = match &own {
                Some(own) => median(tx.pace(&own.device, point)?),
                None => None,
            };
            let habit = match habit {
                Some(habit) => Some(habit),
                None => median(tx.fleet_pace(point)?),
            };
            usual.extend(habit.map(|habit| (point.clone(), habit)));
        }
        Ok(usual)
    }

    /// "All serviceable in nine seconds", where the whole list took less time than looking takes.
    fn in_short(&self, going: &Going, usual: &Usual, found: bool) -> Option<String> {
        let short = in_short(&going.progress, |point| usual.get(point).copied());
        short.map(|short| {
            let said = Said::new(if found { "summary-short" } else { "summary-short-serviceable" });
            let said = said.number("points", short.points as f64).number("seconds", short.seconds.round());
            let mut words = self.say(&said);
            if let Some(usual) = short.usual {
                let usual = Said::new("summary-short-usual").number("seconds", usual.round());
                words = format!("{words} {}", self.say(&usual));
            }
            words
        })
    }

    fn inspection(&self, going: &Going, usual: &Usual) -> Result<Inspection, Fault> {
        let list = &going.body.list;
        let progress = &going.progress;
        let started = DateTime::parse_from_rfc3339(&going.draft.started)
            .map_err(|fault| Fault::new("database-damaged").text("why", fault))?;
        let findings = list
            .points()
            .filter_map(|point| Some((point, progress.seen.get(&point.id)?)))
            .map(|(point, seen)| self.finding(point, seen, going))
            .collect::<Result<Vec<_>, Fault>>()?;
        let left = list.points().filter(|point| !progress.seen.contains_key(&point.id)).map(|point| Left {
            point: point.id.clone(),
            title: self.point_words(point, None),
            must: point.must,
        });
        Ok(Inspection {
            occasion: list.occasion.clone(),
            list: list.digest()?,
            language: self.language.clone(),
            started,
            finished: progress.seen.values().map(|seen| seen.at).max().unwrap_or(started),
            hours: going.body.hours,
            flights: going.body.flights,
            findings,
            left: left.collect(),
            stepped_back: progress
                .backs
                .iter()
                .map(|back| SteppedBack {
                    at: back.at,
                    away_minutes: back.away_minutes,
                    points: back.points.clone(),
                })
                .collect(),
            hurried: hurried(&going.progress, |point| usual.get(point).copied()),
            job: going.body.job,
        })
    }

    fn finding(&self, point: &ListPoint, seen: &Seen, going: &Going) -> Result<Finding, Fault> {
        let judged = self.judged(point, &seen.given)?;
        let p = &going.progress;
        let before = p.before.get(&point.id).into_iter().flatten();
        Ok(Finding {
            point: point.id.clone(),
            station: point.station.clone(),
            component: point.component.clone(),
            title: self.point_words(point, None),
            means: judged.means,
            passing: point.passing,
            answer: match &seen.given {
                witnessmark_core::list::Given::Words { answer } => Some(answer.clone()),
                _ => None,
            },
            words: self.given_words(point, &seen.given),
            measured: match &seen.given {
                witnessmark_core::list::Given::Value { value } => Some(*value),
                _ => None,
            },
            band: match &point.ask {
                Ask::Value { band, .. } | Ask::Torque { band, .. } => Some(band.clone()),
                Ask::Words { .. } => None,
            },
            torque: match &seen.given {
                witnessmark_core::list::Given::Torque { torque } => Some(torque.clone()),
                _ => None,
            },
            note: p.notes.get(&point.id).cloned().unwrap_or_default(),
            photos: p.photos.get(&point.id).cloned().unwrap_or_default(),
            at: seen.at,
            seconds: seen.seconds,
            before: before
                .filter_map(|earlier| {
                    Some(Earlier {
                        words: self.given_words(point, &earlier.given),
                        means: judge(&point.ask, &earlier.given).ok()?.means,
                        at: earlier.at,
                    })
                })
                .collect(),
        })
    }

    fn summary(&self, tx: &Tx<'_>, going: &Going) -> Result<Summary, Fault> {
        let usual = self.usual(tx, going)?;
        let body = self.inspection(going, &usual)?;
        let of = count(going.body.list.points());
        let done = count(going.body.list.points().filter(|p| going.progress.is_done(&p.id)));
        let spent = minutes(body.finished, body.started);
        let title = |point: &String| Named {
            id: point.clone(),
            words: going.body.list.point(point).map(|p| self.point_words(p, None)).unwrap_or_default(),
        };
        let hurried: Vec<Named> = body.hurried.iter().map(title).collect();
        let left: Vec<LeftView> = body
            .left
            .iter()
            .map(|left| LeftView { id: left.point.clone(), words: left.title.clone(), must: left.must })
            .collect();
        let mut sentences = vec![self.say(
            &Said::new("summary-looked").number("done", done).number("of", of).number("minutes", spent),
        )];
        let wrong = body.findings.iter().any(|finding| finding.means >= Meaning::Watch);
        sentences.extend(self.in_short(going, &usual, wrong));
        if !hurried.is_empty() {
            sentences.push(self.say(&Said::new("summary-hurried").number("points", hurried.len() as f64)));
        }
        if !left.is_empty() {
            sentences.push(self.say(&Said::new("summary-left").number("points", left.len() as f64)));
        }
        sentences.extend(going.progress.backs.iter().map(|back| self.say(&self.back_said(back))));
        let found = body.findings.iter().filter(|finding| finding.means >= Meaning::Watch);
        let found = found
            .map(|finding| FoundView {
                id: finding.point.clone(),
                title: finding.title.clone(),
                words: finding.words.clone(),
                means: finding.means,
            })
            .collect();
        let preview = self.preview_of(tx, going.draft.machine, &Body::Inspection(body))?;
        Ok(Summary { minutes: spent, done, of, sentences, hurried, left, found, preview })
    }

    /// The verdict that signing now would give: the history taken further by an unsigned record.
    pub(crate) fn preview_of(&self, tx: &Tx<'_>, machine: Uuid, body: &Body) -> Result<VerdictView, Fault> {
        // On the command line a list may be walked before the first start: a stand-in says then what its
        // author will say.
        let device = match identity::signatory(tx)? {
            Some(own) => own.device,
            None => SigningSeed::from_bytes(&[0; 32]).device(),
        };
        let author = tx.author(&device, Some(machine))?;
        let record = author.preview(body, Some(machine), self.now(), device)?;
        let mut history = self.known(tx, machine)?;
        history.take(&record, &*tx.trust()?);
        let mut verdict = self.verdict(tx, machine, &history, &self.people(tx)?)?;
        // An unsigned record is nowhere to be opened.
        let real = |named: &mut Option<Digest>| *named = named.filter(|digest| *digest != record.digest);
        for reason in &mut verdict.reasons {
            real(&mut reason.record);
            reason.because.iter_mut().for_each(|fact| real(&mut fact.record));
        }
        Ok(self.verdict_view(&verdict))
    }
}
