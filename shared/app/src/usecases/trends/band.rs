//! The band that a measure is held against, in the unit of its readings.

use witnessmark_core::history::History;
use witnessmark_core::list::{Followed, Side, Sourced};
use witnessmark_core::units::Unit;

use super::gather::Scale;
use crate::house::House;
use crate::views::TrendBand;

impl House {
    /// The band of the data sheet, or as its owner confirmed it; none where there is no number.
    pub(super) fn trend_band(
        &self,
        measure: &Followed,
        history: &History,
        scale: &Scale,
    ) -> Option<TrendBand> {
        let Scale::Unit(unit) = scale else { return None };
        let band = self.machinery(history)?.band(measure.band.as_deref()?)?;
        let (low, high) = (end(&band.low, *unit), end(&band.high, *unit));
        low.or(high)?;
        Some(TrendBand {
            low,
            high,
            limit: match measure.limit {
                Some(Side::AtMost) => high,
                Some(Side::AtLeast) => low,
                None => None,
            },
            words: self.band_words(&band),
            source: self.source_words(&band),
            confirmed: band.confirmed(),
        })
    }
}

fn end(end: &Option<Sourced>, unit: Unit) -> Option<f64> {
    let quantity = end.as_ref().and_then(Sourced::quantity)?;
    quantity.to(unit).ok().map(|quantity| quantity.value)
}
