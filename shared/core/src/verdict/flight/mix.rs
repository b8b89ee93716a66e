//! Petrol and oil: what the tank holds against what the engine wants.

use super::read::ratio;
use super::{Come, Question, State};
use crate::flight::{FlightFault, Poured, poured};
use crate::list::ResolvedBand;
use crate::record::MixPlanned;
use crate::said::Said;
use crate::units::Quantity;

/// The band in a data sheet that says how much petrol goes with one part of oil.
pub const MIX_RATIO: &str = "mix-ratio";

/// Digits that count in what is poured.
const DIGITS: i32 = 3;
/// Below this share of the oil wanted the engine is grounded. Our choice: a measuring cup is read to about
/// so much, and less oil than that is a seizure waiting.
const LEAST_OIL: f64 = 0.95;
/// Above this share it is told. Our choice: more oil fouls plugs and leans the mixture, and stops no engine
/// at once.
const MOST_OIL: f64 = 1.25;

pub(super) fn mix(q: Question<'_>, plan: &MixPlanned) -> Result<Come, FlightFault> {
    let tank = poured(&plan.mix, plan.oil)?;
    let target = f64::from(plan.mix.target_ratio);
    let mut come = Come::default();
    if tank.share < LEAST_OIL {
        let missing = tank.missing.significant(DIGITS);
        match plan.oil {
            None => come.find(
                State::Limited,
                Said::new("reason-mix-add").quantity("oil", missing).number("wanted", ratio(target)),
                "clears-mix-add",
            ),
            Some(_) => come.find(
                State::Grounded,
                told("reason-mix-lean", &tank, target).quantity("oil", missing),
                "clears-mix-lean",
            ),
        }
    } else if tank.share > MOST_OIL {
        let petrol = tank.more_fuel.significant(DIGITS);
        come.find(
            State::Limited,
            told("reason-mix-rich", &tank, target).quantity("petrol", petrol),
            "clears-mix-rich",
        );
    } else {
        come.well(told("reason-mix", &tank, target));
    }
    manual(q, target, &mut come);
    Ok(come)
}

/// The ratio as it is in the tank, or that there is no oil.
fn told(id: &str, tank: &Poured, target: f64) -> Said {
    let said = Said::new(id).number("wanted", ratio(target));
    match tank.ratio {
        Some(now) => said.number("ratio", ratio(now)),
        None => said.text("ratio", "none"),
    }
}

/// The ratio wanted against the manual's.
fn manual(q: Question<'_>, target: f64, come: &mut Come) {
    let confirmed = q.history.confirmed.get(MIX_RATIO).map(|(band, _)| band.clone());
    let band = confirmed.or_else(|| q.sheet.and_then(|sheet| sheet.band(MIX_RATIO)));
    let Some(band) = band.filter(ResolvedBand::confirmed) else {
        let say = Said::new("reason-mix-unconfirmed").number("wanted", ratio(target));
        return come.find(State::Limited, say, "clears-mix-unconfirmed");
    };
    let (low, high) = (mix_parts(&band, f64::min), mix_parts(&band, f64::max));
    let say =
        |id: &str, manual: f64| Said::new(id).number("wanted", ratio(target)).number("manual", ratio(manual));
    // More petrol to the oil than the manual asks for is too little oil.
    if let Some(high) = high.filter(|high| high / target < LEAST_OIL) {
        come.find(State::Grounded, say("reason-mix-manual-lean", high), "clears-mix-manual");
    } else if let Some(low) = low.filter(|low| low / target > MOST_OIL) {
        come.find(State::Limited, say("reason-mix-manual-rich", low), "clears-mix-manual");
    }
    if let Some(source) = band.ends().find_map(|end| end.source.as_ref()) {
        let said = Said::new("fact-mix-source");
        come.fact(said.text("document", &source.document).text("page", &source.page));
    }
}

/// Parts of petrol to one of oil by a data sheet's band: the richest (`f64::min`) or the leanest (`f64::max`).
pub fn mix_parts(band: &ResolvedBand, which: fn(f64, f64) -> f64) -> Option<f64> {
    band.ends().filter_map(|end| parts(end.quantity()?)).reduce(which)
}

/// Parts of petrol to one of oil, of a ratio written so, or as so many percent of oil to the petrol.
fn parts(ratio: Quantity) -> Option<f64> {
    let ratio = ratio.si().ok().filter(|ratio| *ratio > 0.0)?;
    Some(if ratio < 1.0 { ratio.recip() } else { ratio })
}
