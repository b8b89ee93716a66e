//! What falls due on a machine, as a calendar (RFC 5545): whole days, an alarm a week before.
//!
//! The same thing keeps its UID in every file, so that a calendar that takes a later file moves
//! the entry instead of doubling it.

use chrono::{Days, NaiveDate, TimeDelta, Utc};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, Property};
use uuid::Uuid;
use witnessmark_core::due::{Moment, Remaining, counts_from, forecast, rate, remaining};
use witnessmark_core::record::Interval;
use witnessmark_core::said::Said;
use witnessmark_core::verdict::left_said;
use witnessmark_store::Tx;

use super::telling::Telling;
use crate::house::{House, id};
use crate::views::FileBytes;
use crate::{App, Fault};

impl App {
    /// What falls due on a machine, as an iCalendar file.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn calendar(&mut self, machine: String) -> Result<FileBytes, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.due_calendar(tx, machine))
    }
}

/// Longest line, octets without its end.
const LONGEST: usize = 75;

/// One entry.
struct Dated {
    uid: String,
    day: NaiveDate,
    summary: String,
    about: String,
}

impl House {
    fn due_calendar(&self, tx: &Tx<'_>, machine: Uuid) -> Result<FileBytes, Fault> {
        let telling = Telling::new(self, tx, machine)?;
        let mut dated = Vec::new();
        let mut undated = Vec::new();
        telling.due(&mut dated, &mut undated);
        dated.extend(telling.repack());
        dated.extend(telling.deferrals());
        for tool in self.tools_due(tx)? {
            let (kept, day) = tool;
            dated.push(Dated {
                uid: format!("tool-{}", kept.tool),
                day,
                summary: self.say(&Said::new("paper-calibration").text("tool", &kept.name)),
                about: self.word("paper-calibration-words"),
            });
        }
        let name = telling.name();
        let mut calendar = Calendar::empty();
        calendar
            .append_property(("VERSION", "2.0"))
            .append_property(("PRODID", "-//Witness Mark//Witness Mark 1//EN"))
            .append_property(("CALSCALE", "GREGORIAN"))
            .append_property(("METHOD", "PUBLISH"))
            .name(&plain(&self.say(&Said::new("paper-calendar").text("machine", &name))));
        if !undated.is_empty() {
            let said = Said::new("paper-undated").text("titles", undated.join("; "));
            calendar.description(&plain(&self.say(&said)));
        }
        let stamp = self.now().with_timezone(&Utc);
        for one in dated {
            let mut alarm = Alarm::display(&plain(&one.summary), -TimeDelta::weeks(1));
            alarm.uid(&format!("witnessmark-{}-alarm", one.uid)).timestamp(stamp);
            let mut event = Event::with_uid(&format!("witnessmark-{}", one.uid));
            event
                .timestamp(stamp)
                .starts(one.day)
                .summary(&plain(&one.summary))
                .description(&plain(&one.about))
                .append_property(Property::new("TRANSP", "TRANSPARENT"))
                .alarm(alarm);
            calendar.push(event.done());
        }
        let text = folded(&calendar.to_string());
        Ok(super::file(&name, ".due.ics", "text/calendar", text.as_bytes()))
    }
}

impl Telling<'_> {
    /// Recurring items and follow-ups: each on the day on which it comes first, by the calendar or
    /// by the forecast of flying; those of which no day can be told, apart.
    fn due(&self, dated: &mut Vec<Dated>, undated: &mut Vec<String>) {
        let work = &self.history.work;
        let items = work.due.iter().map(|(item, kept)| {
            let from = counts_from(&kept.body, kept.before.as_ref());
            (format!("due-{item}"), &kept.body.title, kept.body.every, from)
        });
        let later = work.follow_ups.iter().map(|due| {
            let uid = format!("follow-up-{}-{}", due.record.short(), due.planned.id);
            (uid, &due.planned.title, due.planned.after, due.from)
        });
        for (uid, title, every, from) in items.chain(later) {
            match self.first(&every, &from) {
                Some((day, about_then, words)) => {
                    let id = if about_then { "paper-due-about" } else { "paper-due" };
                    let said = Said::new(id).text("machine", self.name()).text("title", title);
                    dated.push(Dated { uid, day, summary: self.say(&said), about: words });
                }
                None => undated.push(title.clone()),
            }
        }
    }

    /// The day, whether it is only about then, and the words.
    fn first(&self, every: &Interval, from: &Moment) -> Option<(NaiveDate, bool, String)> {
        let today = self.house.now().date_naive();
        let now = Moment { service: self.history.service(), day: today };
        let left = remaining(every, from, &now);
        let fixed = every.days.and_then(|days| from.day.checked_add_days(Days::new(u64::from(days))));
        let over = [left.hours, left.flights.map(|n| n as f64), left.tanks.map(|n| n as f64)];
        let over = over.into_iter().flatten().any(|left| left <= 0.0);
        let foreseen = left.hours.filter(|hours| *hours > 0.0).and_then(|hours| {
            let rate = rate(&self.history.work.logs, today)?;
            forecast(hours, &rate, today)
        });
        let mut words = vec![self.left(&left)];
        words.extend(foreseen.map(|f| {
            self.say(&Said::new("due-forecast").date("at", f.at).date("low", f.low).date("high", f.high))
        }));
        words.extend(fixed.map(|day| self.say(&Said::new("paper-due-day").date("day", day))));
        words.push(self.say(&Said::new("paper-every").text("every", self.interval(every))));
        let words = words.join(" ");
        if over {
            // Due by use already: today, unless the calendar said so before.
            return Some((fixed.map_or(today, |day| day.min(today)), false, words));
        }
        match (fixed, foreseen.map(|f| f.at)) {
            (Some(day), Some(about)) if about < day => Some((about, true, words)),
            (Some(day), _) => Some((day, false, words)),
            (None, Some(about)) => Some((about, true, words)),
            (None, None) => None,
        }
    }

    fn left(&self, left: &Remaining) -> String {
        let counts = [left.flights, left.tanks, left.days].into_iter().flatten();
        let over = left.hours.is_some_and(|hours| hours <= 0.0) || counts.into_iter().any(|n| n <= 0);
        self.say(&left_said(Said::new(if over { "due-over" } else { "due-left" }), left))
    }

    fn repack(&self) -> Option<Dated> {
        let (machine, _) = self.history.machine.as_ref()?;
        let reserve = machine.reserve.as_ref().filter(|_| machine.fitted.contains_key("reserve"))?;
        let day = reserve.repacked_on?.checked_add_days(Days::new(u64::from(reserve.every_days)))?;
        Some(Dated {
            uid: format!("reserve-{}", self.machine),
            day,
            summary: self.say(&Said::new("paper-repack").text("machine", &machine.name)),
            about: self.say(&Said::new("paper-repack-words").number("days", reserve.every_days)),
        })
    }

    /// The last days of deferrals whose defect is still open.
    fn deferrals(&self) -> Vec<Dated> {
        let standing = self.history.work.deferrals.values().filter_map(|(_, _, body)| {
            let open = self.history.open_at(&body.point)?;
            let sighting = open.sightings.iter().find(|sighting| sighting.record == body.opened_by)?;
            let said =
                Said::new("paper-deferral").text("machine", self.name()).text("title", &sighting.title);
            let words = Said::new("says-deferred").text("reason", &body.reason);
            Some(Dated {
                uid: format!("deferral-{}-{}", self.machine, body.point),
                day: body.until_date?,
                summary: self.say(&said),
                about: self.say(&words.text("condition", &body.condition)),
            })
        });
        standing.collect()
    }
}

/// Words as a calendar's text may hold them: line ends as one sort, nothing that only controls.
fn plain(text: &str) -> String {
    text.replace("\r\n", "\n").chars().filter(|letter| *letter == '\n' || !letter.is_control()).collect()
}

/// Lines of 75 octets at most (RFC 5545, 3.1): the library lets the last of a folded line have one more.
fn folded(text: &str) -> String {
    let mut folded = String::new();
    for mut line in text.split_inclusive("\r\n") {
        while line.len() > LONGEST + 2
            && let Some((now, rest)) = line.split_at_checked(line.floor_char_boundary(LONGEST))
        {
            folded.push_str(now);
            folded.push_str("\r\n ");
            line = rest;
        }
        folded.push_str(line);
    }
    folded
}
