//! `due`: what is left of intervals, how each stands, and on which day it falls due at this rate.

use chrono::{Days, NaiveDate};
use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::due::{Moment, Rate, counts_from, forecast, rate, remaining, standing};
use witnessmark_core::record::{DueKept, Interval, Service};

use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "due",
    example: r#"{"items": [{"title": "Plug", "every": {"hours": 25, "days": 365}, "done": {"hours": 10}, "done_on": "2026-01-01", "tolerance_percent": 10}], "service": {"hours": 20}, "on": "2026-06-01", "history": [["2026-04-20", 2.0], ["2026-05-11", 3.5]]}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    items: Vec<Item>,
    service: Counted,
    on: NaiveDate,
    /// Days, and the hours logged on each: the rate of use.
    #[serde(default)]
    history: Vec<(NaiveDate, f64)>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Item {
    title: String,
    every: Interval,
    done: Counted,
    done_on: NaiveDate,
    #[serde(default)]
    tolerance_percent: f64,
    /// Counts from when it was due, which the doing `before` tells.
    #[serde(default)]
    from_due: bool,
    before: Option<Before>,
}

/// The doing before the last.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Before {
    done: Counted,
    done_on: NaiveDate,
}

/// Time in service; what isn't said is none.
#[derive(Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields, default)]
struct Counted {
    hours: f64,
    flights: u32,
    tanks: u32,
}

impl Default for Counted {
    fn default() -> Self {
        Self { hours: 0.0, flights: 0, tanks: 0 }
    }
}

impl From<Counted> for Service {
    fn from(Counted { hours, flights, tanks }: Counted) -> Self {
        Self { hours, flights, tanks }
    }
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { items, service, on, history } = read(input)?;
    if service.hours < 0.0 {
        return Err(Wrong("service: give hours of 0 or more".into()));
    }
    if let Some((day, hours)) = history.iter().find(|(day, hours)| *hours < 0.0 || *day > on) {
        return Err(Wrong(format!(
            "history: {hours} h on {day}: give hours of 0 or more, up to the day `on`"
        )));
    }
    let now = Moment { service: service.into(), day: on };
    let rate = rate(&history, on);
    let told = items.into_iter().map(|item| stands(item, &now, rate.as_ref()));
    Ok(json!({ "items": told.collect::<Result<Vec<_>, _>>()? }))
}

fn stands(item: Item, now: &Moment, rate: Option<&Rate>) -> Result<Value, Wrong> {
    let Item { title, every, done, done_on, tolerance_percent, from_due, before } = item;
    let whole = [every.flights, every.tanks, every.days];
    if every == Interval::default() || every.hours.is_some_and(|h| h <= 0.0) || whole.contains(&Some(0)) {
        return Err(Wrong(format!("every: {title}: give hours, flights, tanks or days, each more than 0")));
    }
    if !(0.0..=100.0).contains(&tolerance_percent) {
        return Err(Wrong(format!("tolerance_percent: {title}: give 0 to 100")));
    }
    if from_due && before.is_none() {
        return Err(Wrong(format!(
            "before: {title}: to count from when it was due, say when it was done the time before"
        )));
    }
    // A doing that lies ahead would put off what falls due.
    let at = now.service;
    let ahead = done.hours > at.hours || done.flights > at.flights || done.tanks > at.tanks;
    if ahead || done_on > now.day || done.hours < 0.0 {
        return Err(Wrong(format!(
            "done: {title}: give when it was last done, from 0 up to `service`, and up to the day `on`"
        )));
    }
    let before = before.map(|before| Moment { service: before.done.into(), day: before.done_on });
    let kept = DueKept {
        item: Default::default(),
        title,
        every,
        tolerance_percent,
        from_due,
        done: done.into(),
        done_on,
        ended: false,
    };
    let from = counts_from(&kept, before.as_ref());
    let left = remaining(&every, &from, now);
    let ahead = left.hours.filter(|hours| *hours > 0.0);
    Ok(json!({
        "title": kept.title,
        "next": next(&every, &from),
        "remaining": left,
        "standing": standing(&left, &every, tolerance_percent),
        "forecast": ahead.zip(rate).and_then(|(hours, rate)| forecast(hours, rate, now.day)),
    }))
}

/// The moment at which each count of the interval is full.
fn next(every: &Interval, from: &Moment) -> Value {
    let count = |every: Option<u32>, from: u32| every.map(|every| u64::from(from) + u64::from(every));
    json!({
        "hours": every.hours.map(|hours| from.service.hours + hours),
        "flights": count(every.flights, from.service.flights),
        "tanks": count(every.tanks, from.service.tanks),
        "day": every.days.and_then(|days| from.day.checked_add_days(Days::new(days.into()))),
    })
}
