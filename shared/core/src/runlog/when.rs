//! Moments as instruments write them.

use chrono::{DateTime, NaiveDate};

use super::cell::number;
use super::mapping::TimeForm;

/// Times are told in milliseconds at best; what lies closer is the same, seconds.
pub(super) const HAIR: f64 = 1e-3;
/// Seconds in a day.
pub(super) const DAY: f64 = 86_400.0;

/// When a row was logged, as its cell says it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Stamp {
    /// Seconds since some beginning.
    Since(f64),
    /// Seconds on a clock, which begins anew at midnight.
    Clock(f64),
    /// A day and the seconds of it; minutes that the clock is ahead of UTC, where it is said.
    Moment(Day, f64, Option<i32>),
}

/// A day as it is written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Day {
    /// One that can't be mistaken.
    Sure(NaiveDate),
    /// Two numbers of which either may be the month, and the year.
    Unsure(u32, u32, i32),
}

/// Seconds since 1970 between which a number is a moment and no run's length: the years 2000 to 2100.
const EPOCH: std::ops::Range<f64> = 946_684_800.0..4_102_444_800.0;

/// Reads a cell of time.
pub(super) fn stamp(text: &str, form: TimeForm, decimal: char) -> Option<Stamp> {
    let text = text.trim();
    let counted = |seconds: f64| {
        Some(Stamp::Since(number(text, decimal).filter(|n| n.unit.is_none())?.value * seconds))
    };
    match form {
        TimeForm::Seconds => counted(1.0),
        TimeForm::Milliseconds => counted(1e-3),
        TimeForm::Minutes => counted(60.0),
        TimeForm::Clock => clock(text).map(Stamp::Clock),
        TimeForm::Moment => moment(text),
    }
}

/// The moment that seconds since 1970 mean; none of seconds since another beginning.
pub(super) fn epoch(seconds: f64) -> Option<DateTime<chrono::Utc>> {
    // Whole milliseconds are enough to know the day.
    EPOCH.contains(&seconds).then(|| DateTime::from_timestamp_millis((seconds * 1e3) as i64)).flatten()
}

/// The day that a text begins with; none where it isn't sure which is meant.
pub fn day_in(text: &str) -> Option<NaiveDate> {
    let first = text.trim().split([' ', 'T']).next()?;
    match day(first)? {
        Day::Sure(day) => Some(day),
        Day::Unsure(a, b, year) => sure(a, b, year, None),
    }
}

/// `1:02:03.5`, `02:03`, `1:02:03 PM`. Seconds.
fn clock(text: &str) -> Option<f64> {
    let lower = text.to_ascii_lowercase();
    let halves = [("am", false), ("a.m.", false), ("pm", true), ("p.m.", true)];
    let half = halves.into_iter().find_map(|(sign, later)| Some((lower.strip_suffix(sign)?, Some(later))));
    let (digits, later) = half.unwrap_or((&lower, None));
    let parts: Vec<&str> = digits.trim().split(':').collect();
    let whole =
        |part: &str| part.bytes().all(|b| b.is_ascii_digit()).then(|| part.parse::<f64>().ok()).flatten();
    let seconds = |part: &str| {
        let mark = if part.contains(',') { ',' } else { '.' };
        number(part, mark).filter(|n| n.unit.is_none() && (0.0..60.0).contains(&n.value)).map(|n| n.value)
    };
    let below_sixty = |part: &str| whole(part).filter(|minutes| *minutes < 60.0);
    let (hours, rest) = match (later, parts.as_slice()) {
        // With a half of the day beside them, two parts are hours and minutes.
        (Some(_), [h, m]) => (whole(h)?, below_sixty(m)? * 60.0),
        (_, [h, m, s]) => (whole(h)?, below_sixty(m)? * 60.0 + seconds(s)?),
        (None, [m, s]) => (0.0, whole(m)? * 60.0 + seconds(s)?),
        _ => return None,
    };
    let hours = match later {
        None => hours,
        Some(_) if !(1.0..=12.0).contains(&hours) => return None,
        Some(later) => hours % 12.0 + if later { 12.0 } else { 0.0 },
    };
    Some(hours * 3600.0 + rest)
}

fn moment(text: &str) -> Option<Stamp> {
    let (date, time) = text.split_once(['T', 't', ' '])?;
    let time = time.trim();
    let (time, ahead) = match time.strip_suffix(['Z', 'z']) {
        Some(time) => (time, Some(0)),
        None => match time.rfind(['+', '-']).map(|at| time.split_at(at)) {
            Some((time, ahead)) => (time, Some(minutes_ahead(ahead)?)),
            None => (time, None),
        },
    };
    // In a moment two parts are hours and minutes: no date is written before a stop watch.
    let time = time.trim();
    let seconds = match time.matches(':').count() {
        1 if time.ends_with(|c: char| c.is_ascii_digit()) => clock(&format!("{time}:00"))?,
        _ => clock(time)?,
    };
    (seconds <= DAY).then_some(Stamp::Moment(day(date)?, seconds, ahead))
}

/// `+02:00`, `-0530`, `+01`.
fn minutes_ahead(text: &str) -> Option<i32> {
    let (sign, digits) = text.split_at_checked(1)?;
    let digits = digits.replace(':', "");
    let (hours, minutes) = match digits.len() {
        2 => (digits.parse::<i32>().ok()?, 0),
        4 => (digits.get(..2)?.parse::<i32>().ok()?, digits.get(2..)?.parse::<i32>().ok()?),
        _ => return None,
    };
    let ahead = hours * 60 + minutes;
    Some(if sign == "-" { -ahead } else { ahead })
}

/// `2026-05-02`, `2.5.2026`, `2.5.26`; `5/2/2026`, which may be either of two days.
fn day(text: &str) -> Option<Day> {
    let mark = ['-', '/', '.'].into_iter().find(|mark| text.matches(*mark).count() == 2)?;
    let parts: Vec<&str> = text.split(mark).collect();
    let [a, b, c] = parts.as_slice() else { return None };
    let read = |part: &str| {
        let short = (1..=4).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
        short.then(|| part.parse::<u32>().ok()).flatten()
    };
    let (first, second, third) = (read(a)?, read(b)?, read(c)?);
    let year = |part: &str, number: u32| match part.len() {
        4 => i32::try_from(number).ok(),
        2 => i32::try_from(number).ok().map(|year| year + 2000),
        _ => None,
    };
    if a.len() == 4 {
        return NaiveDate::from_ymd_opt(year(a, first)?, second, third).map(Day::Sure);
    }
    let year = year(c, third)?;
    if mark == '.' {
        return NaiveDate::from_ymd_opt(year, second, first).map(Day::Sure);
    }
    let either = [(first, second), (second, first)];
    let possible = either.iter().any(|(day, month)| NaiveDate::from_ymd_opt(year, *month, *day).is_some());
    possible.then_some(Day::Unsure(first, second, year))
}

/// The day that is meant, where it is known that the first number is the day (or is the month); or where
/// only one of the two can be.
pub(super) fn sure(first: u32, second: u32, year: i32, day_first: Option<bool>) -> Option<NaiveDate> {
    let day_first = match day_first {
        Some(known) => known,
        None if first > 12 => true,
        None if second > 12 || first == second => false,
        None => return None,
    };
    let (day, month) = if day_first { (first, second) } else { (second, first) };
    NaiveDate::from_ymd_opt(year, month, day)
}

/// Seconds from 1970 to a day's beginning: not so many that fractions of a second get lost.
pub(super) fn days_on(day: NaiveDate) -> f64 {
    (day - NaiveDate::default()).num_days() as f64 * DAY
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day_of(text: &str) -> Option<String> {
        day_in(text).map(|day| day.to_string())
    }

    #[test]
    fn clocks_are_read() {
        for (text, seconds) in [
            ("1:02:03", 3723.0),
            ("02:03", 123.0),
            ("00:00:00.25", 0.25),
            ("23:59:59,5", 86_399.5),
            ("12:00:01 AM", 1.0),
            ("1:30:00 pm", 48_600.0),
            ("1:30 p.m.", 48_600.0),
        ] {
            assert_eq!(clock(text), Some(seconds), "{text}");
        }
        for text in ["", "12", "1:60:00", "1:2:3:4", "-1:00:00", "13:00 pm", "a:b:c", "1:00:60"] {
            assert_eq!(clock(text), None, "{text}");
        }
    }

    #[test]
    fn moments_are_read() {
        let may = NaiveDate::from_ymd_opt(2026, 5, 2).unwrap();
        let at = |seconds, ahead| Some(Stamp::Moment(Day::Sure(may), seconds, ahead));
        for (text, told) in [
            ("2026-05-02T06:41:07+02:00", at(24_067.0, Some(120))),
            ("2026-05-02T06:41:07Z", at(24_067.0, Some(0))),
            ("2026-05-02 06:41:07.5", at(24_067.5, None)),
            ("2.5.2026 06:41", at(24_060.0, None)),
            ("02.05.26 6:41:07", at(24_067.0, None)),
            ("2026-05-02 06:41:07-0530", at(24_067.0, Some(-330))),
        ] {
            assert_eq!(moment(text), told, "{text}");
        }
        assert_eq!(
            moment("5/2/2026 6:41:07 AM"),
            Some(Stamp::Moment(Day::Unsure(5, 2, 2026), 24_067.0, None))
        );
        for text in
            ["", "2026-05-02", "06:41:07", "2026-13-02 06:41:07", "30.2.2026 06:00", "2026-05-02 99:00:00"]
        {
            assert_eq!(moment(text), None, "{text}");
        }
    }

    #[test]
    fn a_day_that_may_be_two_is_not_guessed() {
        assert_eq!(day_of("2026-05-02"), Some("2026-05-02".into()));
        assert_eq!(day_of("2.5.2026 06:41"), Some("2026-05-02".into()));
        assert_eq!(day_of("25/5/2026"), Some("2026-05-25".into()));
        assert_eq!(day_of("5/25/2026"), Some("2026-05-25".into()));
        assert_eq!(day_of("5/5/2026"), Some("2026-05-05".into()));
        assert_eq!(day_of("5/2/2026"), None);
        assert_eq!(day_of("6200"), None);
        assert_eq!(day_of("1.2.3"), None);
    }

    #[test]
    fn seconds_since_1970_are_a_moment_and_a_runs_are_not() {
        assert_eq!(epoch(1_777_704_067.0).unwrap().to_rfc3339(), "2026-05-02T06:41:07+00:00");
        assert_eq!(epoch(3600.0), None);
    }
}
