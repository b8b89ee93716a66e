//! Rows put on one line of time.

use std::ops::Range;

use super::log::Began;
use super::when::{DAY, Day, Stamp, days_on, epoch, sure};

/// A clock that falls by more than this has passed midnight; by less, it was begun anew.
const PAST_MIDNIGHT: f64 = DAY / 2.0;

/// Rows in their order of time.
#[derive(Debug, PartialEq)]
pub(super) struct Ordered {
    /// Seconds, row by row; none of a row whose time is out of order.
    pub times: Vec<Option<f64>>,
    /// The runs, as ranges of the rows that have a time.
    pub runs: Vec<Range<usize>>,
    /// When the first row was logged.
    pub began: Option<Began>,
}

/// Puts rows on one line of time. Our choices:
///
/// - One row alone whose time lies behind the row before, or ahead of the row after, while these two are
///   in order, is out of order and left out.
/// - A clock that falls by more than twelve hours has passed midnight.
/// - Any other time that falls back was begun anew: from there it is another run.
pub(super) fn ordered(stamps: &[Stamp]) -> Ordered {
    let day_first = day_first(stamps);
    let at: Vec<(f64, bool)> = stamps.iter().map(|stamp| on_line(*stamp, day_first)).collect();
    let (mut times, mut runs) = (Vec::with_capacity(at.len()), Vec::new());
    let (mut start, mut kept, mut shift) = (0, 0, 0.0);
    let mut before: Option<f64> = None;
    for (n, (now, clock)) in at.iter().copied().enumerate() {
        let after = [1, 2].map(|more| at.get(n + more).map(|(after, _)| *after));
        if let Some(before) = before {
            let midnight = clock && before - now > PAST_MIDNIGHT;
            // Nothing follows the last row that could show it to be odd after midnight.
            if odd_one_out(before, now, after) && !(midnight && after == [None; 2]) {
                times.push(None);
                continue;
            }
            if midnight {
                shift += DAY;
            } else if now < before {
                runs.push(start..kept);
                (start, shift) = (kept, 0.0);
            }
        }
        times.push(Some(now + shift));
        kept += 1;
        before = Some(now);
    }
    if kept > start {
        runs.push(start..kept);
    }
    Ordered { times, runs, began: stamps.first().and_then(|first| began(*first, day_first)) }
}

/// Whether a time alone breaks the order of those around it: it lies behind, and the next doesn't; or it
/// lies ahead of the next two, which don't lie behind. Also the last, where it falls back.
fn odd_one_out(before: f64, now: f64, after: [Option<f64>; 2]) -> bool {
    match after {
        [None, _] => now < before,
        [Some(after), _] if before > after => false,
        [Some(after), then] => now < before || (now > after && then.is_none_or(|then| then < now)),
    }
}

/// What the file itself shows of dates like 5/2/2026: a number above twelve is the day. None where it
/// shows nothing, or both.
fn day_first(stamps: &[Stamp]) -> Option<bool> {
    let mut shown = [false, false];
    for stamp in stamps {
        if let Stamp::Moment(Day::Unsure(first, second, _), ..) = stamp {
            let [day_first, month_first] = &mut shown;
            *day_first |= *first > 12;
            *month_first |= *second > 12;
        }
    }
    match shown {
        [true, false] => Some(true),
        [false, true] => Some(false),
        _ => None,
    }
}

/// Seconds, and whether they begin anew at midnight.
fn on_line(stamp: Stamp, day_first: Option<bool>) -> (f64, bool) {
    match stamp {
        Stamp::Since(seconds) => (seconds, false),
        Stamp::Clock(seconds) => (seconds, true),
        Stamp::Moment(day, seconds, ahead) => {
            let seconds = seconds - f64::from(ahead.unwrap_or_default()) * 60.0;
            match meant(day, day_first) {
                Some(day) => (days_on(day) + seconds, false),
                // Of a day that may be two only the clock is sure.
                None => (seconds, true),
            }
        }
    }
}

fn meant(day: Day, day_first: Option<bool>) -> Option<chrono::NaiveDate> {
    match day {
        Day::Sure(day) => Some(day),
        // Only what the whole file shows counts: row by row some dates would be known and others not.
        Day::Unsure(a, b, year) => day_first.and_then(|first| sure(a, b, year, Some(first))),
    }
}

fn began(first: Stamp, day_first: Option<bool>) -> Option<Began> {
    match first {
        Stamp::Since(seconds) => epoch(seconds).map(Began::At),
        Stamp::Clock(_) => None,
        Stamp::Moment(Day::Unsure(a, b, year), ..) => sure(a, b, year, day_first).map(Began::On),
        Stamp::Moment(Day::Sure(day), ..) => Some(Began::On(day)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn runs(stamps: &[Stamp]) -> (Vec<Option<f64>>, Vec<Range<usize>>) {
        let told = ordered(stamps);
        (told.times, told.runs)
    }

    fn since(times: &[f64]) -> Vec<Stamp> {
        times.iter().map(|at| Stamp::Since(*at)).collect()
    }

    #[test]
    fn one_row_out_of_order_is_left_out() {
        let (times, all) = runs(&since(&[0.0, 1.0, 0.5, 2.0, 900.0, 3.0, 3.0, 1.0]));
        let kept = [Some(0.0), Some(1.0), None, Some(2.0), None, Some(3.0), Some(3.0), None];
        assert_eq!((times, all.as_slice()), (kept.to_vec(), std::slice::from_ref(&(0..5))));
    }

    #[test]
    fn a_clock_begun_anew_begins_another_run() {
        let (times, all) = runs(&since(&[0.0, 1.0, 2.0, 0.0, 1.0]));
        assert_eq!((times.iter().flatten().count(), all), (5, vec![0..3, 3..5]));
    }

    #[test]
    fn a_clock_passes_midnight() {
        let clock: Vec<Stamp> = [86_398.0, 86_399.0, 0.0, 1.0].into_iter().map(Stamp::Clock).collect();
        let (times, all) = runs(&clock);
        let on = [86_398.0, 86_399.0, 86_400.0, 86_401.0].map(Some);
        assert_eq!((times, all.as_slice()), (on.to_vec(), std::slice::from_ref(&(0..4))));
    }

    #[test]
    fn dates_that_may_be_two_are_settled_by_the_file_or_left_open() {
        let at = |first, second, seconds| Stamp::Moment(Day::Unsure(first, second, 2026), seconds, None);
        // The night from the 12th to the 13th of May: the second date shows the order of both.
        let told = ordered(&[at(12, 5, 86_399.0), at(13, 5, 1.0)]);
        assert_eq!(told.began, Some(Began::On("2026-05-12".parse().unwrap())));
        assert_eq!(told.runs, std::slice::from_ref(&(0..2)));
        let open = ordered(&[at(4, 5, 86_399.0), at(5, 5, 1.0)]);
        assert_eq!((open.began, open.runs.len()), (None, 1));
        assert_eq!(open.times, [Some(86_399.0), Some(86_401.0)]);
    }
}
