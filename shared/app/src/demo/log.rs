//! Invented engine logs, fuel and measured values, so that trends have something to tell of.

use chrono::{DateTime, FixedOffset};
use serde::Deserialize;
use witnessmark_core::chance::Chance;
use witnessmark_core::record::{Digest, ReadingTaken, ReadingsTaken};
use witnessmark_core::runlog::{Channel, Column, Mapping, TimeForm};
use witnessmark_core::units::{Quantity, Unit};

/// How an invented engine runs.
#[derive(Clone, Copy, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Running {
    /// Highest head temperature on a day of 15 °C when its story begins, °C.
    cht: f64,
    /// How much hotter it gets each hour it runs.
    cht_per_hour: f64,
    /// What it burns, L/h.
    burn: f64,
}

/// A number from −1 to 1, the same for the same seed: a story that is told again is the same story.
pub(super) fn chance(seed: u64) -> f64 {
    Chance::new(seed).draw() as f64 / (u64::MAX as f64) * 2.0 - 1.0
}

impl Running {
    /// Fuel burned in so many hours on some day.
    pub(super) fn burned(&self, hours: f64, day: u64) -> Quantity {
        let litres = self.burn * hours * (1.0 + 0.12 * chance(day));
        Quantity::new((litres * 10.0).round() / 10.0, Unit::Litre)
    }

    /// What the log of a flight told, the engine having run `run` hours since its story began.
    pub(super) fn told(&self, at: DateTime<FixedOffset>, day: u64, hours: f64, run: f64) -> ReadingsTaken {
        // Warm and cold days come in waves of some weeks.
        let outside = (14.0 + 9.0 * (day as f64 / 25.0).sin() + 2.0 * chance(day + 1)).round();
        let cht = self.cht + self.cht_per_hour * run + 3.5 * chance(day + 2) + (outside - 15.0);
        let figure = |measure: &str, value: f64, unit| ReadingTaken {
            measure: measure.to_owned(),
            value: Quantity::new(value.round(), unit),
            left_out: 0,
        };
        let column = |heading: &str, channel, unit| Column { heading: heading.to_owned(), channel, unit };
        let name = format!("invented-{}.csv", at.format("%Y-%m-%d"));
        ReadingsTaken {
            file: Digest::of(format!("{name} {hours}").as_bytes()),
            name,
            rows: 1800,
            unread: 0,
            mapping: Mapping {
                separator: ',',
                decimal: '.',
                time: "time".into(),
                time_form: TimeForm::Seconds,
                columns: vec![
                    column("CHT", Channel::Cht, Unit::Celsius),
                    column("rpm", Channel::Speed, Unit::PerMinute),
                ],
            },
            hours,
            on: at.date_naive(),
            outside: Some(Quantity::new(outside, Unit::Celsius)),
            readings: vec![
                figure("peak-cht", cht, Unit::Celsius),
                figure("peak-speed", 9100.0 + 60.0 * chance(day + 3), Unit::PerMinute),
                figure("idle-speed", 2050.0 + 70.0 * chance(day + 4), Unit::PerMinute),
            ],
        }
    }
}
