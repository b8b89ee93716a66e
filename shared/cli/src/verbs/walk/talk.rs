//! The walk as a conversation in the terminal. Whatever is typed is durable before the next
//! point is shown; leaving in any way keeps it.

use std::collections::VecDeque;
use std::time::{Duration, SystemTime};

use witnessmark_app::views::{Look, PointView, StationView, Walk, WalkProgress};
use witnessmark_app::{App, Fault};
use witnessmark_core::list::Given;
use witnessmark_core::said::Said;

use super::typed::{self, Typed};
use super::{bench, closing, showing};
use crate::voice::Voice;

/// How a conversation ended.
#[derive(Debug, PartialEq)]
pub enum End {
    /// The person wants to sign.
    Sign,
    /// The person stopped, or the input ended.
    Stop,
}

/// A conversation about one walk.
pub struct Talk<'a> {
    app: &'a mut App,
    walk: Walk,
    voice: Voice,
    may_sign: bool,
    patience: Duration,
    /// The station announced last.
    at: Option<String>,
    /// Points to be shown once more on the person's wish.
    wished: VecDeque<String>,
}

impl<'a> Talk<'a> {
    /// Begins where the walk stands.
    pub fn new(app: &'a mut App, walk: Walk, voice: Voice, may_sign: bool) -> Result<Self, Fault> {
        let patience = Duration::from_secs(u64::from(app.start()?.patience_minutes) * 60);
        Ok(Self { app, walk, voice, may_sign, patience, at: None, wished: VecDeque::new() })
    }

    /// Asks until it is to be signed or left.
    pub fn run(mut self) -> Result<End, Fault> {
        let progress = &self.walk.progress;
        let opened = Said::new("cli-walk-opened")
            .text("list", &self.walk.words)
            .text("machine", &self.walk.machine_name)
            .number("done", progress.done)
            .number("of", progress.of);
        self.voice.say(&self.app.say(&opened))?;
        self.say("cli-walk-keys")?;
        self.tell_step_back()?;
        loop {
            let end = match self.next() {
                Some(point) => self.ask(&point)?,
                None => self.close()?,
            };
            if let Some(end) = end {
                return Ok(end);
            }
        }
    }

    fn say(&self, id: &str) -> Result<(), Fault> {
        self.voice.say(&self.app.say(&Said::new(id)))
    }

    fn tell_step_back(&self) -> Result<(), Fault> {
        match &self.walk.progress.stepped_back {
            Some(back) => self.voice.say(&format!("\n{back}")),
            None => Ok(()),
        }
    }

    fn stations(&self) -> impl Iterator<Item = (&StationView, &PointView)> {
        self.walk.stations.iter().flat_map(|station| station.points.iter().map(move |point| (station, point)))
    }

    /// The point to show now; none when all are done or left.
    fn next(&mut self) -> Option<PointView> {
        let wished = self.wished.pop_front();
        let current = self.walk.progress.current.clone().filter(|id| self.look(id) != Look::Left);
        let id = wished.or(current)?;
        self.stations().find(|(_, point)| point.id == id).map(|(_, point)| point.clone())
    }

    fn look(&self, point: &str) -> Look {
        self.walk.progress.points.get(point).map_or(Look::Open, |state| state.state.clone())
    }

    /// Asks one point until something comes of it.
    fn ask(&mut self, point: &PointView) -> Result<Option<End>, Fault> {
        let station = self.stations().find(|(_, other)| other.id == point.id).map(|(station, _)| station);
        if let Some(station) = station.filter(|station| self.at.as_ref() != Some(&station.id)) {
            self.voice.say(&showing::station(station))?;
            self.at = Some(station.id.clone());
        }
        self.voice.say(&showing::point(self.app, &self.walk, point))?;
        let shown = SystemTime::now();
        loop {
            let Some(line) = self.voice.ask(&showing::prompt(self.app, point))? else {
                return Ok(Some(End::Stop));
            };
            if line.is_empty() {
                continue;
            }
            // A fault ends neither the conversation nor the point: it is told, and asked again.
            match typed::read(&line, point).and_then(|typed| self.do_as_typed(typed, point, shown)) {
                Ok(Done::Next) => return Ok(None),
                Ok(Done::Stay) => {}
                Ok(Done::End(end)) => return Ok(Some(end)),
                Err(fault) => self.tell(&fault)?,
            }
        }
    }

    fn do_as_typed(&mut self, typed: Typed, point: &PointView, shown: SystemTime) -> Result<Done, Fault> {
        let (walk, id) = (self.walk.id.clone(), point.id.clone());
        let progress = match typed {
            Typed::Answer(given) => return self.answer(given, point, shown),
            Typed::Tool(tool) => return self.tighten(&tool, point, shown),
            Typed::Back => {
                self.wished.clear();
                self.app.undo(walk)?
            }
            Typed::Leave => self.app.leave(walk, id)?,
            Typed::Note(note) => {
                self.walk.progress = self.app.note(walk, id, note)?;
                self.say("cli-note-kept")?;
                return Ok(Done::Stay);
            }
            Typed::Quit => return Ok(Done::End(End::Stop)),
            Typed::Help => {
                self.say("cli-walk-keys")?;
                return Ok(Done::Stay);
            }
            Typed::Unknown => {
                self.say("cli-not-understood")?;
                self.say("cli-walk-keys")?;
                return Ok(Done::Stay);
            }
        };
        self.walk.progress = progress;
        Ok(Done::Next)
    }

    fn answer(&mut self, given: Given, point: &PointView, shown: SystemTime) -> Result<Done, Fault> {
        // A clock set back counts as a long time, as it does in core.
        let spent = shown.elapsed().unwrap_or(Duration::MAX);
        if spent >= self.patience {
            self.reopen()?;
        }
        let walk = self.walk.id.clone();
        let progress = self.app.answer(walk, point.id.clone(), Some(given), spent.as_secs_f64())?;
        self.answered(progress, point)?;
        Ok(Done::Next)
    }

    /// Goes round the joint with a tool; left half-way, the point is asked again.
    fn tighten(&mut self, tool: &str, point: &PointView, shown: SystemTime) -> Result<Done, Fault> {
        match bench::round(self.app, &self.walk, self.voice, point, tool, shown)? {
            bench::Round::Told(progress) => {
                self.answered(*progress, point)?;
                Ok(Done::Next)
            }
            bench::Round::Left => Ok(Done::Stay),
            bench::Round::Ended => Ok(Done::End(End::Stop)),
        }
    }

    /// Says what is kept now.
    fn answered(&mut self, progress: WalkProgress, point: &PointView) -> Result<(), Fault> {
        let means = progress.points.get(&point.id).and_then(|state| state.given.as_ref());
        if let Some(given) = means {
            let means = self.app.say(&Said::new(crate::verbs::means(given.means)));
            self.voice.say(
                &self.app.say(&Said::new("cli-answered").text("words", &given.words).text("means", means)),
            )?;
        }
        self.walk.progress = progress;
        Ok(())
    }

    /// Nobody typed for a long time: opens the walk once more, which steps back and says why.
    fn reopen(&mut self) -> Result<(), Fault> {
        let walk = self.app.walk(self.walk.machine.clone(), self.walk.occasion.clone())?;
        if walk.id != self.walk.id {
            return Err(Fault::new("walk-closed"));
        }
        self.walk = walk;
        self.tell_step_back()
    }

    /// Nothing is open any more: says it back, and asks what now.
    fn close(&mut self) -> Result<Option<End>, Fault> {
        let summary = self.app.summary(self.walk.id.clone())?;
        self.voice.say(&closing::said_back(self.app, &self.walk, &summary))?;
        if let Some(hurried) = closing::hurried(self.app, &self.walk, &summary) {
            self.voice.say(&hurried)?;
        }
        let would_be = Said::new("cli-would-be").text("verdict", &summary.preview.headline);
        self.voice.say(&format!("\n{}", self.app.say(&would_be)))?;
        self.say(if self.may_sign { "cli-closing-keys" } else { "cli-closing-keys-unsigned" })?;
        loop {
            let Some(line) = self.voice.ask(">")? else { return Ok(Some(End::Stop)) };
            match line.as_str() {
                "s" if self.may_sign => return Ok(Some(End::Sign)),
                "l" if !summary.left.is_empty() => {
                    self.wished = summary.left.into_iter().map(|left| left.id).collect();
                    return Ok(None);
                }
                "b" => match self.app.undo(self.walk.id.clone()) {
                    Ok(progress) => {
                        self.walk.progress = progress;
                        return Ok(None);
                    }
                    Err(fault) => self.tell(&fault)?,
                },
                "q" => return Ok(Some(End::Stop)),
                "" => {}
                number => match self.numbered(number) {
                    Some(point) => {
                        self.wished.push_back(point);
                        return Ok(None);
                    }
                    None => self.say("cli-closing-not-understood")?,
                },
            }
        }
    }

    /// The point of that number in the list.
    fn numbered(&self, number: &str) -> Option<String> {
        let index = number.parse::<usize>().ok()?.checked_sub(1)?;
        self.stations().nth(index).map(|(_, point)| point.id.clone())
    }

    fn tell(&self, fault: &Fault) -> Result<(), Fault> {
        let told = self.app.show(fault);
        self.voice.say(&format!("{}\n  {}", told.message, told.hint))
    }
}

/// What came of one line.
enum Done {
    Next,
    Stay,
    End(End),
}
