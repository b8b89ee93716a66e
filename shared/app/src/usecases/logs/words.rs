//! What a log tells, in words.

use witnessmark_core::runlog::{Figure, Note, Unread, Why};
use witnessmark_core::said::Said;

use super::guess::channel_id;
use super::read::Read;
use crate::house::House;
use crate::views::{LogPreview, LogReading};

impl House {
    /// What a log would tell.
    pub(super) fn log_preview(&self, read: &Read) -> LogPreview {
        let told = &read.told;
        LogPreview {
            rows: read.log.rows,
            unread: read.log.unread,
            first_unread: read.log.first_unread.as_ref().map(|unread| self.say(&unread_said(unread))),
            lasts: self.say(&lasting(told.lasts)),
            on: read.on.map(|day| day.to_string()),
            outside: told.outside,
            readings: told.figures.iter().map(|figure| self.log_reading(figure)).collect(),
            notes: told.notes.iter().map(|note| self.say(&note_said(note))).collect(),
        }
    }

    fn log_reading(&self, figure: &Figure) -> LogReading {
        let left_out = Said::new("log-left-out").number("samples", figure.left_out);
        LogReading {
            measure: figure.measure.to_owned(),
            words: self.word(figure_id(figure.measure)),
            value: match figure.measure {
                // Hours with decimals are read off no clock.
                "run-time" => self.say(&lasting(figure.value.value * 3600.0)),
                _ => self.shown(figure.value),
            },
            left_out: (figure.left_out > 0).then(|| self.say(&left_out)),
        }
    }
}

fn figure_id(measure: &str) -> &'static str {
    match measure {
        "peak-cht" => "log-peak-cht",
        "peak-egt" => "log-peak-egt",
        "peak-speed" => "log-peak-speed",
        "idle-speed" => "log-idle-speed",
        _ => "log-run-time",
    }
}

/// A time in whole minutes, or in seconds where it is short.
fn lasting(seconds: f64) -> Said {
    let seconds = seconds.round();
    if seconds < 120.0 {
        return Said::new("log-lasts-seconds").number("seconds", seconds);
    }
    let minutes = (seconds / 60.0).round();
    if minutes < 60.0 {
        return Said::new("log-lasts-minutes").number("minutes", minutes);
    }
    let hours = (minutes / 60.0).floor();
    Said::new("log-lasts-hours").number("hours", hours).number("minutes", minutes - hours * 60.0)
}

pub(super) fn unread_said(unread: &Unread) -> Said {
    let said = match &unread.why {
        Why::Fields { has, wants } => {
            Said::new("log-unread-fields").number("has", *has as f64).number("wants", *wants as f64)
        }
        Why::Time { cell } if cell.is_empty() => Said::new("log-unread-no-time"),
        Why::Time { cell } => Said::new("log-unread-time").text("cell", cell),
        Why::OutOfOrder { cell } => Said::new("log-unread-order").text("cell", cell),
        Why::Number { cell, heading } => {
            Said::new("log-unread-number").text("cell", cell).text("column", heading)
        }
        Why::Unit { cell, heading, unit } => {
            Said::new("log-unread-unit").text("cell", cell).text("column", heading).text("unit", unit.sign())
        }
    };
    // A line's number is a name, not a count: nobody writes it with marks between its digits.
    said.text("line", unread.line)
}

pub(super) fn note_said(note: &Note) -> Said {
    match note {
        Note::Runs(runs) => Said::new("log-note-runs").number("runs", *runs as f64),
        Note::Gaps { gaps, minutes } => {
            Said::new("log-note-gaps").number("gaps", *gaps as f64).number("minutes", *minutes)
        }
        Note::AllSame(column) => Said::new("log-note-all-same").text("column", column),
        Note::Impossible(column) => Said::new("log-note-impossible").text("column", column),
        Note::Nothing(column) => Said::new("log-note-nothing").text("column", column),
        Note::ByHead => {
            Said::new("log-note-by-head").naming("head", channel_id(witnessmark_core::runlog::Channel::Cht))
        }
        Note::NoRunTime => Said::new("log-note-no-run-time"),
        Note::NeverRan => Said::new("log-note-never-ran"),
        Note::NeverIdled => Said::new("log-note-never-idled"),
    }
}
