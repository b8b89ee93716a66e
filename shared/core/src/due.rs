//! What falls due, when, and at this rate of flying on which day.

use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::record::{DueKept, Interval, Service};

/// How near something due must be for the verdict to speak of it.
const NOTICE: Service = Service { hours: 2.0, flights: 3, tanks: 1 };
const NOTICE_DAYS: i64 = 14;

/// A moment in service and on the calendar.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Moment {
    /// Time in service.
    pub service: Service,
    /// The day.
    pub day: NaiveDate,
}

/// What is left of an interval; negative when it has passed. Only what the interval counts is there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Remaining {
    /// Engine hours.
    pub hours: Option<f64>,
    /// Flights.
    pub flights: Option<i64>,
    /// Tanks.
    pub tanks: Option<i64>,
    /// Days.
    pub days: Option<i64>,
}

/// How something due stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// Far off.
    Later,
    /// Near.
    Soon,
    /// Past due, within what is tolerated.
    Tolerated,
    /// Past due.
    Over,
}

/// What is left at `now` of an interval counted from `from`.
pub fn remaining(every: &Interval, from: &Moment, now: &Moment) -> Remaining {
    let count = |every: Option<u32>, from: u32, now: u32| {
        every.map(|every| i64::from(from) + i64::from(every) - i64::from(now))
    };
    Remaining {
        hours: every.hours.map(|every| round(from.service.hours + every - now.service.hours)),
        flights: count(every.flights, from.service.flights, now.service.flights),
        tanks: count(every.tanks, from.service.tanks, now.service.tanks),
        days: every.days.map(|every| (from.day - now.day).num_days() + i64::from(every)),
    }
}

/// Hours are logged in tenths; sums of them must not fall a hair short of due.
fn round(hours: f64) -> f64 {
    (hours * 1e6).round() / 1e6
}

/// The worst of what is left: past by nothing is past, since "after ten hours" is at ten hours.
pub fn standing(left: &Remaining, every: &Interval, tolerance_percent: f64) -> Standing {
    let part = |left: Option<f64>, every: Option<f64>, notice: f64| {
        let (Some(left), Some(every)) = (left, every) else { return Standing::Later };
        if left <= 0.0 {
            let tolerated = every * tolerance_percent / 100.0;
            if -left < tolerated { Standing::Tolerated } else { Standing::Over }
        } else if left <= notice.min(every / 2.0) {
            Standing::Soon
        } else {
            Standing::Later
        }
    };
    let float = |n: Option<i64>| n.map(|n| n as f64);
    [
        part(left.hours, every.hours, NOTICE.hours),
        part(float(left.flights), every.flights.map(f64::from), f64::from(NOTICE.flights)),
        part(float(left.tanks), every.tanks.map(f64::from), f64::from(NOTICE.tanks)),
        part(float(left.days), every.days.map(f64::from), NOTICE_DAYS as f64),
    ]
    .into_iter()
    .max()
    .unwrap_or(Standing::Later)
}

/// What an item counts from: when it was done, or, if its author wants that, the last moment
/// at which it was due before it was done (so that doing it late doesn't shift all that follow).
pub fn counts_from(item: &DueKept, before: Option<&Moment>) -> Moment {
    let done = Moment { service: item.done, day: item.done_on };
    let Some(before) = before.filter(|_| item.from_due) else { return done };
    let mut from = done;
    if let Some(hours) = item.every.hours {
        from.service.hours = before.service.hours + hours;
    }
    if let Some(flights) = item.every.flights {
        from.service.flights = before.service.flights.saturating_add(flights);
    }
    if let Some(tanks) = item.every.tanks {
        from.service.tanks = before.service.tanks.saturating_add(tanks);
    }
    if let Some(days) = item.every.days {
        from.day = before.day.checked_add_days(Days::new(u64::from(days))).unwrap_or(done.day);
    }
    // Done early, it counts from the doing: an interval is never lengthened.
    from.service = from.service.least(done.service);
    from.day = from.day.min(done.day);
    from
}

/// How fast somebody uses a machine: hours a week, weighted towards the last weeks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rate {
    /// Mean, hours a week.
    pub mean: f64,
    /// Variance of a week's hours.
    pub variance: f64,
}

/// Weeks after which a week counts half. Our choice: a season's rhythm, not last year's.
const HALF_LIFE_WEEKS: f64 = 6.0;
/// Fewest whole weeks between the first log and today for a rate to be told.
const FEWEST_WEEKS: i64 = 4;

/// The rate of use from logs (day, hours added) up to `today`; none when there is too little to say.
///
/// Exponentially weighted mean and variance of weekly hours, weeks counted back from today,
/// weight `2^(-age / 6 weeks)`, the partial oldest week left out.
pub fn rate(logs: &[(NaiveDate, f64)], today: NaiveDate) -> Option<Rate> {
    let first = logs.iter().map(|(day, _)| *day).min()?;
    let weeks = (today - first).num_days().div_euclid(7);
    if weeks < FEWEST_WEEKS {
        return None;
    }
    let weeks_count = usize::try_from(weeks).ok()?.min(104);
    let mut hours = vec![0.0; weeks_count];
    for (day, added) in logs {
        let age = usize::try_from((today - *day).num_days().div_euclid(7)).ok();
        if let Some(week) = age.and_then(|age| hours.get_mut(age)) {
            *week += added;
        }
    }
    let weight = |age: usize| 0.5f64.powf(age as f64 / HALF_LIFE_WEEKS);
    let total: f64 = (0..weeks_count).map(weight).sum();
    let mean = hours.iter().enumerate().map(|(age, h)| weight(age) * h).sum::<f64>() / total;
    let spread = hours.iter().enumerate().map(|(age, h)| weight(age) * (h - mean).powi(2));
    let variance = spread.sum::<f64>() / total;
    (mean > 0.0).then_some(Rate { mean, variance })
}

/// A day, and the days between which it lies four times out of five.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Forecast {
    /// The day at the mean rate.
    pub at: NaiveDate,
    /// Flying much.
    pub low: NaiveDate,
    /// Flying little.
    pub high: NaiveDate,
}

/// z of the normal distribution for 80 % in the middle.
const Z: f64 = 1.281_551_565_5;

/// The day on which `hours` more will have been flown at this rate.
///
/// Hours over t weeks are taken as normal with mean m·t and variance v·t; low and high are where
/// the upper and lower 10 % lines reach the hours: `√t = (∓z√v + √(z²v + 4mh)) / 2m`.
pub fn forecast(hours: f64, rate: &Rate, today: NaiveDate) -> Option<Forecast> {
    let hours = hours.max(0.0);
    let day =
        |weeks: f64| today.checked_add_days(Days::new((weeks * 7.0).ceil().clamp(0.0, 36_500.0) as u64));
    let root = |z: f64| {
        let deviation = z * rate.variance.sqrt();
        let root = (deviation + (deviation.powi(2) + 4.0 * rate.mean * hours).sqrt()) / (2.0 * rate.mean);
        root.powi(2)
    };
    Some(Forecast { at: day(hours / rate.mean)?, low: day(root(-Z))?, high: day(root(Z))? })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    fn moment(hours: f64, flights: u32, on: &str) -> Moment {
        Moment { service: Service { hours, flights, tanks: 0 }, day: day(on) }
    }

    fn every(hours: f64, days: u32) -> Interval {
        Interval { hours: Some(hours), days: Some(days), ..Interval::default() }
    }

    #[test]
    fn whichever_comes_first() {
        let every = every(25.0, 365);
        let from = moment(10.0, 5, "2026-01-01");
        let left = remaining(&every, &from, &moment(20.0, 9, "2026-12-25"));
        assert_eq!((left.hours, left.days, left.flights), (Some(15.0), Some(7), None));
        assert_eq!(standing(&left, &every, 0.0), Standing::Soon, "the calendar is nearer");
        let over = remaining(&every, &from, &moment(35.0, 9, "2026-02-01"));
        assert_eq!(standing(&over, &every, 0.0), Standing::Over, "at 25 h it is due");
        assert_eq!(standing(&over, &every, 10.0), Standing::Tolerated);
        let far = remaining(&every, &from, &moment(37.5, 9, "2026-02-01"));
        assert_eq!(standing(&far, &every, 10.0), Standing::Over, "2.5 h late is all of 10 %");
    }

    #[test]
    fn tenths_of_hours_do_not_fall_a_hair_short() {
        let every = Interval { hours: Some(0.3), ..Interval::default() };
        let now = moment(0.1 + 0.2, 0, "2026-01-01");
        let left = remaining(&every, &moment(0.0, 0, "2026-01-01"), &now);
        assert_eq!(standing(&left, &every, 0.0), Standing::Over);
    }

    #[test]
    fn late_does_not_shift_what_counts_from_due_and_early_is_not_rewarded() {
        let mut item = DueKept {
            item: uuid::Uuid::nil(),
            title: "Spark plug".into(),
            every: every(25.0, 365),
            tolerance_percent: 10.0,
            from_due: true,
            done: Service { hours: 36.0, flights: 0, tanks: 0 },
            done_on: day("2026-06-01"),
            ended: false,
        };
        let before = moment(10.0, 0, "2025-03-01");
        let from = counts_from(&item, Some(&before));
        assert_eq!((from.service.hours, from.day), (35.0, day("2026-03-01")));
        item.done.hours = 30.0;
        assert_eq!(counts_from(&item, Some(&before)).service.hours, 30.0);
        item.from_due = false;
        assert_eq!(counts_from(&item, Some(&before)).day, day("2026-06-01"));
        // Of tanks it is the same: due at 4, done at 6, the next is due at 8.
        let service = |tanks| Service { tanks, ..Service::default() };
        let every = Interval { tanks: Some(4), ..Interval::default() };
        let by_tanks = DueKept { every, from_due: true, done: service(6), ..item };
        let before = Moment { service: service(0), day: day("2026-03-01") };
        assert_eq!(counts_from(&by_tanks, Some(&before)).service.tanks, 4);
    }

    #[test]
    fn a_steady_rate_forecasts_its_day_and_too_little_says_nothing() {
        let today = day("2026-06-01");
        let logs: Vec<_> = (0..20).map(|week| (today - Days::new(week * 7 + 3), 2.0)).collect();
        let rate = rate(&logs, today).unwrap();
        assert!((rate.mean - 2.0).abs() < 1e-12 && rate.variance.abs() < 1e-12);
        let forecast = forecast(6.0, &rate, today).unwrap();
        assert_eq!(forecast.at, day("2026-06-22"));
        assert_eq!((forecast.low, forecast.high), (forecast.at, forecast.at), "no spread, no doubt");
        assert_eq!(super::rate(&logs[..2], today), None);
    }

    #[test]
    fn an_uneven_rate_has_a_wider_interval_around_the_same_day() {
        let today = day("2026-06-01");
        let logs: Vec<_> = (0..10).map(|n| (today - Days::new(n * 14 + 3), 4.0)).collect();
        let rate = rate(&logs, today).unwrap();
        assert!(rate.variance > 3.0);
        let forecast = forecast(10.0, &rate, today).unwrap();
        assert!(forecast.low < forecast.at && forecast.at < forecast.high, "{forecast:?}");
    }
}
