//! Trends of a machine: each measure that has readings, over its time in service.

mod band;
mod gather;
mod held;
mod marks;
mod rounding;
mod story;

use std::collections::BTreeMap;

use chrono::NaiveDate;
use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::list::{Followed, Side};
use witnessmark_core::said::Said;
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::trend::{Direction, Limit, Reading, Series, Slope, ToLimit, Trend, trend};
use witnessmark_core::units::Unit;
use witnessmark_store::Tx;

use self::gather::{Gathered, Scale, Taken};
use self::story::Telling;
use crate::house::{House, id};
use crate::views::{
    TrendBand, TrendChange, TrendLine, TrendMark, TrendPoint, TrendReach, TrendView, UnitView,
};
use crate::{App, Fault};

/// Engine hours over which a slope is told.
const PER_HOURS: f64 = 100.0;

/// Days in words: years of readings share theirs from measure to measure.
type Days = BTreeMap<NaiveDate, String>;

/// What readings tell, as far as they do.
enum Outcome {
    Told(Box<Trend>),
    TooLittle(TooLittle),
    /// Numbers that nobody could have read off an instrument.
    Beyond,
}

impl App {
    /// Every measure that has readings.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn trends(&mut self, machine: String) -> Result<Vec<TrendView>, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.trends(tx, machine))
    }
}

impl House {
    pub(crate) fn trends(&self, tx: &Tx<'_>, machine: Uuid) -> Result<Vec<TrendView>, Fault> {
        let history = self.known(tx, machine)?;
        let marks = self.trend_marks(tx, machine)?;
        let mut days = Days::new();
        let mut views = Vec::new();
        for measure in &self.catalogue.measures {
            let gathered = self.gathered(tx, machine, &history, measure)?;
            if !gathered.readings.is_empty() || gathered.left_out > 0 {
                views.push(self.trend_view(measure, &history, &gathered, &marks, &mut days));
            }
        }
        Ok(views)
    }

    fn trend_view(
        &self,
        measure: &Followed,
        history: &History,
        gathered: &Gathered,
        marks: &[TrendMark],
        days: &mut Days,
    ) -> TrendView {
        let id = format!("measure-{}", measure.id);
        let band = self.trend_band(measure, history, &gathered.scale);
        let series = Series::new(gathered.readings.iter().map(Taken::reading).collect());
        let limit = band.as_ref().and_then(|band| limit(measure.limit, band));
        let outcome = match series.as_ref().map(|series| trend(series, limit)) {
            Ok(Ok(Told::Told(trend))) => Outcome::Told(Box::new(trend)),
            Ok(Ok(Told::TooLittle(why))) => Outcome::TooLittle(why),
            Ok(Err(_)) | Err(_) => Outcome::Beyond,
        };
        let told = match &outcome {
            Outcome::Told(trend) => Some(trend.as_ref()),
            Outcome::TooLittle(_) | Outcome::Beyond => None,
        };
        let change = told.and_then(|trend| trend.change.zip(Some(&trend.slope)));
        let change = change
            .filter(|(change, slope)| series.as_ref().is_ok_and(|series| change.fits_better(series, slope)));
        let graded = matches!(gathered.scale, Scale::Grades(_));
        let telling = Telling {
            measure,
            gathered,
            band: band.as_ref(),
            outcome: &outcome,
            change: change.map(|(change, _)| change),
            marks,
            now: history.hours,
        };
        let ends = gathered.readings.first().zip(gathered.readings.last());
        let line = told.zip(ends).filter(|_| !graded);
        TrendView {
            title: self.word(&id),
            what: self.catalogue.texts.word(&self.language, &id, Some("what"), &Default::default()),
            unit: self.trend_unit(&gathered.scale),
            grades: match &gathered.scale {
                Scale::Grades(words) => words.clone(),
                Scale::Unit(_) | Scale::Eighths => Vec::new(),
            },
            points: gathered
                .readings
                .iter()
                .map(|taken| self.trend_point(taken, gathered, told, days))
                .collect(),
            line: line.map(|(trend, (first, last))| drawn(&trend.slope, first.hours, last.hours)),
            chance: told.map(|trend| trend.test.p),
            change: change.map(|(change, _)| TrendChange {
                hours: change.at,
                before: change.old,
                after: change.new,
            }),
            reaches: told.and_then(reach),
            marks: marks.to_vec(),
            direction: direction(told).to_owned(),
            drifts: telling.drifts(),
            sentences: self.trend_sentences(&telling),
            band,
            id: measure.id.clone(),
        }
    }

    /// What stands beside values.
    fn trend_unit(&self, scale: &Scale) -> UnitView {
        match scale {
            Scale::Unit(unit) => UnitView { code: *unit, sign: unit.sign().to_owned() },
            Scale::Eighths => UnitView { code: Unit::One, sign: self.word("trend-unit-eighths") },
            Scale::Grades(_) => UnitView { code: Unit::One, sign: String::new() },
        }
    }

    fn trend_point(
        &self,
        taken: &Taken,
        gathered: &Gathered,
        told: Option<&Trend>,
        days: &mut Days,
    ) -> TrendPoint {
        let day =
            days.entry(taken.day).or_insert_with(|| self.catalogue.texts.day(&self.language, taken.day));
        let far = |trend: &Trend| trend.outliers.iter().any(|far| far.reading == taken.reading());
        let graded = matches!(gathered.scale, Scale::Grades(_));
        let said = match taken.raw {
            None => Said::new("trend-point"),
            Some(raw) => Said::new("trend-point-standard").figures("raw", self.amount(&gathered.scale, raw)),
        };
        let said = said.figures("value", self.amount(&gathered.scale, taken.value)).text("day", day);
        TrendPoint {
            hours: taken.hours,
            value: taken.value,
            raw: taken.raw,
            words: self.say(&said),
            record: taken.record.map(|record| record.to_string()).unwrap_or_default(),
            far_off: !graded && told.is_some_and(far),
        }
    }
}

impl Taken {
    fn reading(&self) -> Reading {
        Reading { at: self.hours, value: self.value }
    }
}

fn limit(side: Option<Side>, band: &TrendBand) -> Option<Limit> {
    Some(match side? {
        Side::AtMost => Limit::AtMost(band.limit?),
        Side::AtLeast => Limit::AtLeast(band.limit?),
    })
}

/// All slopes turn about the medians.
fn drawn(slope: &Slope, from: f64, to: f64) -> TrendLine {
    let at = |b: f64, hours: f64| slope.value + b * (hours - slope.at);
    TrendLine {
        per_100_hours: slope.slope * PER_HOURS,
        low: slope.low * PER_HOURS,
        high: slope.high * PER_HOURS,
        from_hours: from,
        to_hours: to,
        from: at(slope.slope, from),
        to: at(slope.slope, to),
        low_from: at(slope.low, from),
        low_to: at(slope.low, to),
        high_from: at(slope.high, from),
        high_to: at(slope.high, to),
    }
}

fn reach(trend: &Trend) -> Option<TrendReach> {
    match trend.to_limit {
        Some(Told::Told(ToLimit::Ahead { reached, .. })) => {
            Some(TrendReach { low: reached.low, at: reached.at, high: reached.high })
        }
        _ => None,
    }
}

fn direction(told: Option<&Trend>) -> &'static str {
    match told.map(|trend| trend.direction) {
        Some(Direction::Rising) => "rising",
        Some(Direction::Falling) => "falling",
        Some(Direction::Neither) => "neither",
        None => "too-little",
    }
}
