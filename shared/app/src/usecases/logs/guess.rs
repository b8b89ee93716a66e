//! How a log's columns might be read, as far as its headings and its values tell. What rests on values
//! alone is said, so that the log's owner looks at it.

use witnessmark_core::runlog::{Channel, Column, Mapping, TimeForm, unit_named};
use witnessmark_core::said::Said;
use witnessmark_core::units::Unit;

use super::heading::{Heading, time_unit};
use super::layout::Laid;
use super::profile::Profile;

// Between what engines show in °C and what they show in °F. Our choices, of common practice without a
// source: heads run at 90 to 260 °C, gas at 350 to 780 °C, air is below 50 °C.
const HEAD_C: f64 = 260.0;
const GAS_C: f64 = 780.0;
const AIR_C: f64 = 50.0;
/// A temperature of no known place above this is the gas's, °C; above the next, the head's.
const GAS_FROM: f64 = 300.0;
const HEAD_FROM: f64 = 60.0;
/// Rows aren't so many seconds apart: then they are milliseconds.
const STEP_MILLIS: f64 = 20.0;
/// Nor so few: then they are minutes.
const STEP_MINUTES: f64 = 0.02;
/// Milliseconds since 1970 are more than this, seconds less.
const EPOCH_MILLIS: f64 = 1e11;

/// A mapping, and what of it was guessed.
pub(super) struct Guess {
    pub mapping: Mapping,
    pub guesses: Vec<Said>,
}

/// A column with a name.
struct Named<'a> {
    text: &'a str,
    heading: Heading,
    profile: &'a Profile,
    /// What stands under its heading as a unit.
    below: &'a str,
}

/// Guesses how a file is to be read. `own`: the person's unit of temperature.
pub(super) fn guess(laid: &Laid<'_>, profiles: &[Profile], own: Unit) -> Guess {
    let named: Vec<Named<'_>> = laid
        .headings
        .iter()
        .zip(profiles)
        .enumerate()
        .filter(|(_, (text, _))| !text.is_empty())
        .map(|(n, (text, profile))| {
            let below = laid.units.get(n).map(String::as_str).unwrap_or_default();
            Named { text, heading: Heading::of(text), profile, below }
        })
        .collect();
    let mut guesses = Vec::new();
    let (time, time_form) = time(&named, &mut guesses);
    // A sensor that is often missing is still what its heading says.
    let holds = |column: &&Named<'_>| {
        let profile = column.profile;
        profile.is_numbers() || (column.heading.channel().is_some() && profile.has_numbers())
    };
    let measured = || named.iter().filter(|column| column.text != time).filter(holds);
    // What one column says of its unit holds for its neighbours: one instrument wrote them.
    let stated = measured().find_map(|column| column.stated().filter(|unit| *unit != Unit::PerMinute));
    let mut columns = Vec::new();
    for column in measured() {
        let Some((channel, sure)) = column.channel(stated.unwrap_or(own)) else { continue };
        if !sure {
            guesses.push(
                Said::new("log-guess-channel")
                    .text("column", column.text)
                    .naming("channel", channel_id(channel)),
            );
        }
        let unit = column.stated().filter(|unit| unit.dimension() == channel.dimension());
        let unit = unit.or_else(|| (channel == Channel::Speed).then_some(Unit::PerMinute)).or(stated);
        let unit = unit.unwrap_or_else(|| {
            let unit = plausible(channel, column.profile.high(), own);
            guesses.push(Said::new("log-guess-unit").text("column", column.text).text("unit", unit.sign()));
            unit
        });
        columns.push(Column { heading: column.text.to_owned(), channel, unit });
    }
    if columns.is_empty() {
        guesses.push(Said::new("log-guess-no-channel"));
    }
    let decimal = laid.decimal.unwrap_or('.');
    Guess { mapping: Mapping { separator: laid.separator, decimal, time, time_form, columns }, guesses }
}

/// The column of time, and how it is written.
fn time(named: &[Named<'_>], guesses: &mut Vec<Said>) -> (String, TimeForm) {
    // Moments tell the day too; a column that is called time goes before one that merely rises.
    let worth = |column: &Named<'_>| {
        let called = u32::from(column.heading.is_time());
        match column.profile {
            profile if profile.is_moments() => 6 + called,
            profile if profile.is_clock() => 4 + called,
            profile if profile.rises() && column.heading.channel().is_none() => 1 + 2 * called,
            _ => 0,
        }
    };
    // The first of those that are worth the most.
    let best = named.iter().rev().max_by_key(|column| worth(column)).filter(|column| worth(column) > 0);
    let Some(best) = best else {
        guesses.push(Said::new("log-guess-no-time"));
        let first = named.first().map(|column| column.text.to_owned());
        return (first.unwrap_or_default(), TimeForm::Seconds);
    };
    let written = match best.profile {
        profile if profile.is_moments() => Some(TimeForm::Moment),
        profile if profile.is_clock() => Some(TimeForm::Clock),
        _ => best.heading.time_form().or_else(|| time_unit(best.below)),
    };
    let counted = [TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Minutes];
    let stated = written.filter(|form| !best.profile.is_numbers() || counted.contains(form));
    let form = stated.unwrap_or_else(|| {
        let form = plausible_form(best.profile);
        guesses.push(Said::new("log-guess-time").text("column", best.text).naming("form", form_id(form)));
        form
    });
    (best.text.to_owned(), form)
}

fn plausible_form(profile: &Profile) -> TimeForm {
    let step = profile.step().unwrap_or(1.0);
    if profile.high().is_some_and(|high| high > EPOCH_MILLIS) || step >= STEP_MILLIS {
        return TimeForm::Milliseconds;
    }
    if step < STEP_MINUTES && profile.has_decimals() { TimeForm::Minutes } else { TimeForm::Seconds }
}

/// The unit of temperature in which values up to this are what an engine shows; the person's own where
/// nothing ever got warm.
fn plausible(channel: Channel, high: Option<f64>, own: Unit) -> Unit {
    let (cold, between) = match channel {
        Channel::Egt => (GAS_FROM, GAS_C),
        Channel::Outside => (f64::MIN, AIR_C),
        Channel::Cht | Channel::Speed => (HEAD_FROM, HEAD_C),
    };
    match high {
        Some(high) if high > between => Unit::Fahrenheit,
        Some(high) if high > cold => Unit::Celsius,
        _ => own,
    }
}

impl Named<'_> {
    /// The unit that the file states: in the heading, in the row below, or in the cells themselves.
    fn stated(&self) -> Option<Unit> {
        let in_cell = |cell: &String| {
            let digits = cell.rfind(|c: char| c.is_ascii_digit())?;
            unit_named(cell.get(digits + 1..)?)
        };
        let cells = || self.profile.sample.iter().find_map(in_cell);
        self.heading.unit().or_else(|| unit_named(self.below)).or_else(cells)
    }

    /// What it holds, and whether its heading says so.
    fn channel(&self, unit: Unit) -> Option<(Channel, bool)> {
        if let Some(channel) = self.heading.channel() {
            return Some((channel, true));
        }
        if self.stated() == Some(Unit::PerMinute) {
            return Some((Channel::Speed, true));
        }
        if !self.heading.is_temperature() && self.stated().is_none() {
            return None;
        }
        let high =
            witnessmark_core::units::Quantity::new(self.profile.high()?, self.stated().unwrap_or(unit));
        match high.to(Unit::Celsius).ok()?.value {
            celsius if celsius > GAS_FROM => Some((Channel::Egt, false)),
            celsius if celsius > HEAD_FROM => Some((Channel::Cht, false)),
            // A cold one may be anything.
            _ => None,
        }
    }
}

/// The message that names a channel.
pub(super) fn channel_id(channel: Channel) -> &'static str {
    match channel {
        Channel::Cht => "log-channel-cht",
        Channel::Egt => "log-channel-egt",
        Channel::Speed => "log-channel-speed",
        Channel::Outside => "log-channel-outside",
    }
}

/// The message that names a way of writing time.
pub(super) fn form_id(form: TimeForm) -> &'static str {
    match form {
        TimeForm::Seconds => "log-time-seconds",
        TimeForm::Milliseconds => "log-time-milliseconds",
        TimeForm::Minutes => "log-time-minutes",
        TimeForm::Clock => "log-time-clock",
        TimeForm::Moment => "log-time-moment",
    }
}
