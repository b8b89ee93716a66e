//! One joint: what a torque does to its stud and to the thread it sits in.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::Between;
use super::class::Class;
use super::fault::TorqueFault;
use super::preload::{Law, twisted};
use super::strip::strip_load;
use super::thread::Thread;
use crate::units::Quantity;

/// A thread in a softer part.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Tapped {
    /// How far the stud is in.
    pub engaged: Quantity,
    /// Shear strength of the part, as hot as it runs.
    pub shear_strength: Quantity,
}

/// A joint. What isn't known is left out, and then not judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Joint {
    /// The thread that is tightened.
    pub thread: Thread,
    /// The stud's property class.
    pub class: Option<Class>,
    /// How torque turns into clamp load.
    pub law: Law,
    /// What the stud sits in.
    pub tapped: Option<Tapped>,
}

/// What a torque does. Shares of what would do harm: 1 is the limit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Clamp {
    /// Clamp load, N.
    pub preload: Between<Quantity>,
    /// Of the stud's proof load, pull alone.
    pub proof_share: Option<Between<f64>>,
    /// Of its yield, pull and twist together while the nut turns; by friction only.
    pub yield_share: Option<Between<f64>>,
    /// Of the least pull that breaks it.
    pub breaking_share: Option<Between<f64>>,
    /// How many times the clamp load the tapped thread bears.
    pub strip_margin: Option<Between<f64>>,
}

/// What a joint doesn't bear any more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum JointLimit {
    /// The stud's proof load: it may be stretched for good.
    Proof,
    /// Yield under pull and twist: the same, and at usual friction it comes first.
    Yield,
    /// The least pull that breaks it.
    Breaking,
    /// The tapped thread strips.
    Strip,
}

/// A limit that a torque may have passed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Harm {
    /// Which.
    pub limit: JointLimit,
    /// Passed at the most favourable friction too.
    pub certain: bool,
}

impl Joint {
    /// What this torque does. Beyond yield the clamp load grows no further: then the figures
    /// say only that it was passed.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn clamp(&self, torque: Between<Quantity>) -> Result<Clamp, TorqueFault> {
        let preload = self.law.preload(torque)?;
        let share =
            |limit: Quantity| Between::new(preload.low.value / limit.value, preload.high.value / limit.value);
        let strength = |class: Class| Ok::<_, TorqueFault>(share(class.proof_load(self.thread)?));
        let breaking = |class: Class| Ok::<_, TorqueFault>(share(class.breaking_load(self.thread)?));
        let margin = |tapped: Tapped| {
            let load = strip_load(self.thread, tapped.engaged, tapped.shear_strength)?.value;
            Ok::<_, TorqueFault>(Between::new(load / preload.high.value, load / preload.low.value))
        };
        Ok(Clamp {
            preload,
            proof_share: self.class.map(strength).transpose()?,
            yield_share: self.yield_share(torque)?,
            breaking_share: self.class.map(breaking).transpose()?,
            strip_margin: self.tapped.map(margin).transpose()?,
        })
    }

    /// Pull and twist: each end of friction with the clamp load that it gives, since much
    /// friction twists more but pulls less.
    fn yield_share(&self, torque: Between<Quantity>) -> Result<Option<Between<f64>>, TorqueFault> {
        let (Some(class), Law::Friction { thread, bearing, friction }) = (self.class, self.law) else {
            return Ok(None);
        };
        let strength = class.yield_stress(thread)?.value * thread.stress_area_mm2();
        let at = |torque: Quantity, mu: f64| {
            let law = Law::Friction { thread, bearing, friction: Between::just(mu) };
            let preload = law.preload(Between::just(torque))?.low.value;
            Ok::<_, TorqueFault>(preload * twisted(thread, mu) / strength)
        };
        let low = Between::sorted(at(torque.low, friction.low)?, at(torque.low, friction.high)?).low;
        let high = Between::sorted(at(torque.high, friction.low)?, at(torque.high, friction.high)?).high;
        Ok(Some(Between::new(low, high)))
    }
}

impl Clamp {
    /// The limits it may have passed; empty when the joint bears it.
    pub fn harm(&self) -> Vec<Harm> {
        let over = |limit, share: Option<Between<f64>>| {
            share.filter(|s| s.high >= 1.0).map(|s| Harm { limit, certain: s.low >= 1.0 })
        };
        let stripped = self
            .strip_margin
            .filter(|m| m.low <= 1.0)
            .map(|m| Harm { limit: JointLimit::Strip, certain: m.high <= 1.0 });
        [
            over(JointLimit::Proof, self.proof_share),
            over(JointLimit::Yield, self.yield_share),
            over(JointLimit::Breaking, self.breaking_share),
            stripped,
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}
