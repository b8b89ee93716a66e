//! How a measure stands to its band and its limit, in plain words.

use witnessmark_core::said::Said;
use witnessmark_core::told::Told;
use witnessmark_core::trend::{Reached, STANDARD_DAY, ToLimit};
use witnessmark_core::units::{Quantity, Unit};

use super::gather::{Air, Taken};
use super::rounding::hours;
use super::story::Telling;
use crate::house::House;

impl House {
    /// How it stands to its band and when it reaches its limit.
    pub(super) fn held(&self, telling: &Telling<'_>) -> Vec<Said> {
        let Some(band) = telling.band else {
            let wanted = telling.measure.limit.is_some();
            return wanted.then(|| Said::new("trend-limit-missing")).into_iter().collect();
        };
        let scale = &telling.gathered.scale;
        let limit = |said: Said| said.figures("limit", self.amount(scale, band.limit.unwrap_or_default()));
        let mut said = Vec::new();
        match telling.trend().and_then(|trend| trend.to_limit) {
            Some(Told::Told(ToLimit::There)) => said.push(limit(Said::new("trend-there"))),
            Some(Told::Told(ToLimit::Ahead { reached, .. })) => {
                said.push(limit(self.ahead(telling, &reached)));
            }
            Some(Told::Told(ToLimit::Away) | Told::TooLittle(_)) | None => {}
        }
        let readings = &telling.gathered.readings;
        let past: Vec<&Taken> = readings.iter().filter(|taken| telling.past(taken)).collect();
        if let Some(last) = past.last() {
            let is_latest = readings.last().is_some_and(|latest| telling.past(latest));
            let id = if is_latest { "trend-past" } else { "trend-past-before" };
            let bound = match band.limit {
                Some(limit) => self.figures(&self.amount(scale, limit)),
                None => band.words.clone(),
            };
            said.push(
                Said::new(id)
                    .text("of", if band.limit.is_some() { "limit" } else { "band" })
                    .number("n", past.len() as f64)
                    .figures("value", self.amount(scale, last.gauge()))
                    .number("hours", hours(last.hours))
                    .text("bound", bound),
            );
        }
        if telling.gathered.air == Air::Standard {
            let day = self.shown(Quantity::new(STANDARD_DAY, Unit::Celsius));
            said.push(Said::new("trend-standard-day").text("day", day));
        }
        if !band.confirmed {
            said.push(Said::new("trend-band-unconfirmed").text("band", &band.words));
        }
        said
    }

    fn ahead(&self, telling: &Telling<'_>, reached: &Reached) -> Said {
        // The machine may have run on since its last reading.
        let left = (reached.low - telling.now).max(0.0);
        let id = if reached.high.is_some() { "trend-reaches" } else { "trend-reaches-or-never" };
        Said::new(id)
            .number("low", hours(reached.low))
            .number("left", hours(left))
            .number("at", hours(reached.at))
            .number("high", hours(reached.high.unwrap_or_default()))
    }
}
