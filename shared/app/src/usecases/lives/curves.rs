//! The curves of a type of component, and the interval between looks that they bear out.

use witnessmark_core::reliability::{
    Counted, Findings, Inspect, Life, LifeFault, Lived, Lives, Wanted, Weibull, inspect_every, life, steps,
    weibull_at,
};
use witnessmark_core::told::{Told, TooLittle};

use super::super::fleet::Fleet;
use super::Asked;
use crate::Fault;
use crate::house::House;
use crate::views::{LifeFinding, LifePoint, LifeStep, LifeView};

/// Points of the fitted curve.
const DRAWN: u32 = 60;
/// Findings that are drawn as marks, at most: more can't be told apart.
const MARKS: usize = 400;
/// A share that is told of: nine in ten are still serviceable.
const TOLD_SHARE: f64 = 0.9;

/// What the lives of a type of component tell.
pub(super) struct Reckoned {
    pub counted: Counted,
    pub weibull: Result<Weibull, TooLittle>,
    pub inspect: Result<Inspect, TooLittle>,
    /// The same at half the age of the oldest: an age at which many are.
    pub half: Option<Inspect>,
    /// The fitted curve at the age at which nine in ten are still serviceable.
    pub nine_in_ten: Option<LifePoint>,
}

impl House {
    pub(super) fn life_view(
        &self,
        fleet: &Fleet,
        component: &str,
        lives: &Lives,
        asked: &Asked,
    ) -> Result<LifeView, Fault> {
        let findings = lives.findings().map_err(odd)?;
        let wanted = Wanted { chance: asked.chance, age: None, in_force: asked.in_force };
        let found: Life = life(&findings, Some(&wanted)).map_err(odd)?;
        let survival = found.turnbull.as_result().map(|found| steps(&findings, found)).unwrap_or_default();
        let inspect = match found.inspect {
            Some(Told::Told(inspect)) => Ok(inspect),
            Some(Told::TooLittle(why)) => Err(why),
            None => Err(TooLittle::AnySpread),
        };
        let weibull = found.weibull.as_result().copied();
        let (fitted, nine_in_ten) = curve(&findings, &weibull)?;
        let half = match &inspect {
            Ok(inspect) if inspect.age > 0.0 => {
                let wanted = Wanted { age: Some((inspect.age / 2.0).round()), ..wanted };
                inspect_every(&findings, &wanted).map_err(odd)?.told()
            }
            _ => None,
        };
        let reckoned = Reckoned { counted: found.rests_on, weibull, inspect, half, nine_in_ten };
        let every =
            reckoned.inspect.ok().map(|inspect| whole_down(inspect.every)).filter(|every| *every >= 1.0);
        let part = self.life_part(fleet, component, lives);
        Ok(LifeView {
            rests_on: self.life_rests_on(&part, lives),
            sentences: self.life_sentences(&part, lives, asked, &reckoned),
            intervals: self.life_intervals(!survival.is_empty(), !fitted.is_empty()),
            part,
            survival: survival
                .into_iter()
                .map(|step| LifeStep {
                    since: step.since,
                    hours: step.hours,
                    share: step.share,
                    low: step.low,
                    high: step.high,
                })
                .collect(),
            fitted,
            findings: marks(&lives.all),
            // Rounded down it may not fall below what is in force and be called shorter.
            every: every.map(|every| asked.in_force.filter(|_| !shortens(&reckoned)).unwrap_or(every)),
            shortens: shortens(&reckoned),
            in_force: asked.in_force,
            chance: asked.chance,
        })
    }
}

/// Whether the interval in force is too long.
pub(super) fn shortens(reckoned: &Reckoned) -> bool {
    reckoned.inspect.is_ok_and(|inspect| inspect.shortens)
}

/// Hours as a person keeps them: never more than was reckoned.
pub(super) fn whole_down(hours: f64) -> f64 {
    if hours < 10.0 { (hours * 2.0).floor() / 2.0 } else { hours.floor() }
}

/// The fitted curve over all ages that were seen, and at the age that is told of.
fn curve(
    findings: &Findings,
    weibull: &Result<Weibull, TooLittle>,
) -> Result<(Vec<LifePoint>, Option<LifePoint>), Fault> {
    let Ok(weibull) = weibull else { return Ok((Vec::new(), None)) };
    let oldest = findings.oldest();
    let told = weibull.scale * (-TOLD_SHARE.ln()).powf(weibull.shape.recip());
    let told = if told < 10.0 { (told * 10.0).round() / 10.0 } else { told.round() };
    let ages = (0..=DRAWN).map(|n| oldest * f64::from(n) / f64::from(DRAWN));
    let ages: Vec<f64> = ages.chain([told]).collect();
    let Told::Told(at) = weibull_at(findings, &ages).map_err(odd)? else { return Ok((Vec::new(), None)) };
    let mut points: Vec<LifePoint> = at
        .into_iter()
        .map(|at| LifePoint { hours: at.hours, share: at.share, low: at.low, high: at.high })
        .collect();
    // Beyond what was seen nothing is told.
    let told = points.pop().filter(|point| point.hours > 0.0 && point.hours <= oldest);
    Ok((points, told))
}

/// Lives to be drawn as marks: all, or every so many.
fn marks(all: &[Lived]) -> Vec<LifeFinding> {
    let every = all.len().div_ceil(MARKS).max(1);
    let mark = |one: &Lived| LifeFinding { after: one.after, by: one.by };
    all.iter().step_by(every).map(mark).collect()
}

/// What the records say can't be reckoned with.
fn odd(fault: LifeFault) -> Fault {
    match fault {
        LifeFault::OutOfReach => Fault::new("life-out-of-reach"),
        other => Fault::internal(other),
    }
}
