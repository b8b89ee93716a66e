//! The readings of one measure, from wherever they come, in one unit and in order.

use chrono::{DateTime, NaiveDate, TimeZone, Utc};
use uuid::Uuid;
use witnessmark_core::flight::Burned;
use witnessmark_core::history::History;
use witnessmark_core::list::{Followed, From, Meaning};
use witnessmark_core::record::Digest;
use witnessmark_core::trend::standard_day;
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::{Figure, Tx};

use crate::Fault;
use crate::house::House;

/// What values are counted in.
pub(super) enum Scale {
    /// A unit: the person's own of its kind.
    Unit(Unit),
    /// Eighths of a turn.
    Eighths,
    /// 0, 1, 2, and the words that answer so.
    Grades(Vec<String>),
}

/// Whether values are as they would have been on a standard day.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Air {
    /// The weather doesn't enter.
    Apart,
    /// All are.
    Standard,
    /// None are, since the weather of some isn't known: the two kinds don't compare.
    Partly,
    /// None are: the weather of none is known.
    Unknown,
}

/// One reading.
pub(super) struct Taken {
    pub hours: f64,
    /// As it is drawn.
    pub value: f64,
    /// As it was read, where that is another.
    pub raw: Option<f64>,
    pub day: NaiveDate,
    pub record: Option<Digest>,
}

impl Taken {
    /// What the gauge showed.
    pub(super) fn gauge(&self) -> f64 {
        self.raw.unwrap_or(self.value)
    }
}

/// All readings of a measure.
pub(super) struct Gathered {
    pub scale: Scale,
    /// In order of time in service.
    pub readings: Vec<Taken>,
    pub air: Air,
    /// Readings in a unit of another kind, or at no time in service.
    pub left_out: usize,
}

impl House {
    /// The readings of a measure that a machine has.
    pub(super) fn gathered(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        history: &History,
        measure: &Followed,
    ) -> Result<Gathered, Fault> {
        let unit = self.units.instead_of(measure.unit.unwrap_or(Unit::One));
        let local = self.now().timezone();
        // Looks at hours that a later description took back were made at those that it states.
        let look = |figure: &Figure, value: Option<f64>| {
            value.map(|value| seen(figure, figure.hours.min(history.hours), value, local))
        };
        let given = |figure: &Figure| figure.measured.map(|measured| of(measured, unit));
        let (scale, air, taken) = match &measure.from {
            From::Point(point) => {
                let figures = tx.figures_at(machine, point)?;
                let taken = figures.iter().filter_map(|figure| look(figure, given(figure)));
                (Scale::Unit(unit), Air::Apart, taken.collect::<Vec<_>>())
            }
            From::Grade(point) => {
                let figures = tx.figures_at(machine, point)?;
                let taken = figures.iter().filter_map(|figure| look(figure, figure.means.and_then(grade)));
                (Scale::Grades(self.grade_words(point)), Air::Apart, taken.collect())
            }
            From::Movement(joint) => {
                let figures = tx.figures_at(machine, &format!("torque-{joint}"))?;
                let taken = figures.iter().filter_map(|figure| look(figure, figure.moved));
                (Scale::Eighths, Air::Apart, taken.collect())
            }
            From::Log(log) => {
                let figures = tx.readings(machine, log)?;
                let (air, taken) = logged(&figures, unit, measure.standard_day);
                (Scale::Unit(unit), air, taken)
            }
            From::Burn => {
                let burned = history.burns.iter().map(|burnt| {
                    let value = rate(&burnt.burned, unit);
                    Taken { hours: burnt.hours, value, raw: None, day: burnt.day, record: burnt.record }
                });
                (Scale::Unit(unit), Air::Apart, burned.collect())
            }
        };
        let whole = |taken: &Taken| taken.value.is_finite() && taken.hours.is_finite() && taken.hours >= 0.0;
        let (mut readings, left_out): (Vec<Taken>, Vec<Taken>) = taken.into_iter().partition(whole);
        readings.sort_by(|a, b| a.hours.total_cmp(&b.hours).then(a.value.total_cmp(&b.value)));
        Ok(Gathered { scale, readings, air, left_out: left_out.len() })
    }

    /// The words of a point's answers by what they mean: serviceable, watch, unserviceable.
    fn grade_words(&self, point: &str) -> Vec<String> {
        let answers = self.catalogue.points.iter().find(|known| known.id == point).map(|point| &point.answer);
        let words = |means: Meaning| {
            let of_that = answers.into_iter().flatten().filter(|answer| answer.means == means);
            let id = format!("point-{point}");
            let said = of_that.map(|answer| {
                self.catalogue.texts.word(&self.language, &id, Some(&answer.id), &Default::default())
            });
            said.collect::<Vec<_>>().join(" / ")
        };
        [Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable].map(words).to_vec()
    }
}

/// A value in a unit; no number where it is of another kind.
fn of(quantity: Quantity, unit: Unit) -> f64 {
    quantity.to(unit).map_or(f64::NAN, |quantity| quantity.value)
}

fn rate(burned: &Burned, unit: Unit) -> f64 {
    let litres = of(burned.used, Unit::Litre) / of(burned.time, Unit::Hour);
    of(Quantity::new(litres, Unit::LitrePerHour), unit)
}

fn grade(means: Meaning) -> Option<f64> {
    match means {
        Meaning::NotFitted => None,
        Meaning::Serviceable => Some(0.0),
        Meaning::Watch => Some(1.0),
        Meaning::Unserviceable => Some(2.0),
    }
}

fn seen<Z: TimeZone>(figure: &Figure, hours: f64, value: f64, zone: Z) -> Taken {
    let at = DateTime::from_timestamp_millis(figure.at_ms).unwrap_or_default();
    let day = at.with_timezone(&zone).date_naive();
    Taken { hours, value, raw: None, day, record: Some(figure.digest) }
}

/// Figures out of logs, all of them brought to a standard day or none: a step where the correction
/// begins would be no engine's doing.
fn logged(figures: &[Figure], unit: Unit, standard: bool) -> (Air, Vec<Taken>) {
    let corrected = |figure: &Figure| {
        let outside = Quantity::new(figure.outside?, Unit::Celsius);
        Some(of(standard_day(figure.measured?, outside).ok()?, unit)).filter(|value| value.is_finite())
    };
    let on_standard: Vec<Option<f64>> =
        figures.iter().map(|figure| corrected(figure).filter(|_| standard)).collect();
    let known = on_standard.iter().flatten().count();
    let air = match known {
        _ if !standard => Air::Apart,
        0 => Air::Unknown,
        _ if known == figures.len() => Air::Standard,
        _ => Air::Partly,
    };
    let taken = figures.iter().zip(on_standard).map(|(figure, corrected)| {
        let read = figure.measured.map_or(f64::NAN, |measured| of(measured, unit));
        // A log's day is kept as noon UTC.
        let taken = seen(figure, figure.hours, read, Utc);
        match corrected.filter(|_| air == Air::Standard) {
            Some(value) => Taken { value, raw: Some(read), ..taken },
            None => taken,
        }
    });
    (air, taken.collect())
}
