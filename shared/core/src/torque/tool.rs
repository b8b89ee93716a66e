//! Torque tools: what they may be used for, how wide they scatter, when they are due.

use chrono::{Days, Months, NaiveDate};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::{Between, Place, quantities};
use super::fault::{TorqueFault, positive};
use super::joint::{Clamp, Joint};
use super::setting::Adapter;
use super::standing::{ToolReason, ToolStanding};
use crate::units::{Quantity, Unit};

/// A setting tool (a click wrench), as its owner describes it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Tool {
    /// Lowest and highest *marked* value. Below the lowest mark nothing is promised
    /// (ISO 6789-1:2017, 5.1.3); no share of the full scale is assumed.
    pub marked: Between<Quantity>,
    /// Permissible deviation either way, a ratio; left out, that of the standard.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub deviation: Option<Quantity>,
    /// When it was last calibrated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional, type = "string")]
    pub calibrated_on: Option<NaiveDate>,
    /// Clicks since then.
    #[serde(default)]
    pub cycles: u32,
    /// Dropped, forced or repaired since then.
    #[serde(default)]
    pub dropped: bool,
    /// How long a calibration holds.
    #[serde(default)]
    pub recheck: Recheck,
}

/// A stretch of calendar time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
#[allow(missing_docs)]
pub enum Period {
    Months(u32),
    Days(u32),
}

/// How long a calibration holds: whichever comes first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Recheck {
    /// On the calendar.
    pub every: Period,
    /// In clicks.
    pub cycles: u32,
}

impl Default for Recheck {
    /// 12 months or 5 000 clicks. Source: ISO 6789:2003 (from memory; public pages differ on
    /// whether 5 000 is an interval or an endurance test, so the owner may set it), and a year
    /// in FAA AC 43.13-1B 7-40.
    fn default() -> Self {
        Self { every: Period::Months(12), cycles: 5000 }
    }
}

/// Stated range, lbf·in or lbf·ft, and its most effective part: US Army TB 43-0218 table 3-1.
const MOST_EFFECTIVE: &[(Unit, f64, f64, f64, f64)] = &[
    (Unit::PoundForceInch, 0.0, 200.0, 50.0, 150.0),
    (Unit::PoundForceFoot, 0.0, 600.0, 50.0, 450.0),
    (Unit::PoundForceFoot, 0.0, 170.0, 44.0, 131.0),
    (Unit::PoundForceFoot, 15.0, 75.0, 30.0, 60.0),
];

impl Tool {
    /// A tool of which only the scale is known.
    pub fn marked(low: Quantity, high: Quantity) -> Self {
        let marked = Between::new(low, high);
        let recheck = Recheck::default();
        Self { marked, deviation: None, calibrated_on: None, cycles: 0, dropped: false, recheck }
    }

    fn scale(&self) -> Result<Between<f64>, TorqueFault> {
        self.marked.positive(Unit::NewtonMetre, "the tool's marked range")
    }

    /// Permissible deviation either way, as a share: the owner's, else ±6 % for tools up to
    /// 10 N·m and ±4 % above. Source: ISO 6789:2003, setting tools (type II class A), as
    /// summarised in a tool maker's manual.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn deviation(&self) -> Result<f64, TorqueFault> {
        let Some(own) = self.deviation else {
            return Ok(if self.scale()?.high > 10.0 { 0.04 } else { 0.06 });
        };
        let share = own.to(Unit::One)?.value;
        if (0.0..=0.5).contains(&share) {
            return Ok(share);
        }
        Err(TorqueFault::Impossible { what: "the tool's deviation", must: "from 0 to 50 %" })
    }

    /// What the nut may get when the tool clicks at `set`, in its unit: the setting more and
    /// less the deviation, through the adapter.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn spread(&self, set: Quantity, adapter: Option<Adapter>) -> Result<Between<Quantity>, TorqueFault> {
        positive(set, Unit::NewtonMetre, "the setting")?;
        let share = self.deviation()?;
        let at_nut = set.value * adapter.map_or(Ok(1.0), Adapter::gain)?;
        quantities(Between::new(at_nut * (1.0 - share), at_nut * (1.0 + share)), set.unit)
    }

    /// The part of the scale where it is best: by table, else 30 to 80 % of the full scale
    /// (US Army TM 1-1500-204-23-9, 8-3). Advice, not a rule.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn most_effective(&self) -> Result<Between<Quantity>, TorqueFault> {
        let (low, high) = (self.marked.low, self.marked.high.to(self.marked.low.unit)?);
        let row =
            MOST_EFFECTIVE.iter().find(|row| (row.0, row.1, row.2) == (low.unit, low.value, high.value));
        let (from, to) = row.map_or((0.3 * high.value, 0.8 * high.value), |row| (row.3, row.4));
        quantities(Between::new(from.max(low.value), to), low.unit)
    }

    /// The last day on which its calibration holds.
    pub fn due(&self) -> Option<NaiveDate> {
        let calibrated = self.calibrated_on?;
        match self.recheck.every {
            Period::Months(months) => calibrated.checked_add_months(Months::new(months)),
            Period::Days(days) => calibrated.checked_add_days(Days::new(days.into())),
        }
    }

    /// Whether it may be used at this setting on this day. What refuses it can be overridden
    /// with a reason; then the work is a watch item and the reason is in it.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn judge(
        &self,
        set: Quantity,
        on: NaiveDate,
        override_reason: Option<&str>,
    ) -> Result<ToolStanding, TorqueFault> {
        let (mut refusing, mut watching) = (self.worn(on), Vec::new());
        self.scale()?;
        if self.marked.place(set)? != Place::Inside {
            refusing.insert(0, ToolReason::OutsideRange);
        }
        match self.calibrated_on {
            None => watching.push(ToolReason::NeverCalibrated),
            Some(day) if day > on => watching.push(ToolReason::CalibratedLater { on: day }),
            Some(_) => {}
        }
        let Some(because) = override_reason.filter(|_| !refusing.is_empty()) else {
            return Ok(ToolStanding::of(refusing, watching));
        };
        if because.trim().is_empty() {
            return Err(TorqueFault::NoReason);
        }
        watching.push(ToolReason::Overridden { because: because.trim().to_owned() });
        Ok(ToolStanding::Watch(refusing.into_iter().chain(watching).collect()))
    }

    /// What makes a calibration void.
    fn worn(&self, on: NaiveDate) -> Vec<ToolReason> {
        let overdue = self.due().filter(|due| on > *due).map(|since| ToolReason::Overdue { since });
        let (cycles, allowed) = (self.cycles, self.recheck.cycles);
        let worn = (cycles >= allowed).then_some(ToolReason::Worn { cycles, allowed });
        let dropped = self.dropped.then_some(ToolReason::Dropped);
        overdue.into_iter().chain(worn).chain(dropped).collect()
    }

    /// What the click does to the joint at worst and at best, and what of it wants watching:
    /// a spread that reaches what the joint bears. That the spread is wider than the manual's
    /// band is no reason: bands of ±2 % are narrower than any click wrench.
    ///
    /// `drag` is the part of the setting that a self-locking nut eats.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn weigh(
        &self,
        set: Quantity,
        adapter: Option<Adapter>,
        drag: Option<Quantity>,
        joint: &Joint,
    ) -> Result<(Clamp, Vec<ToolReason>), TorqueFault> {
        let spread = self.spread(set, adapter)?;
        let drag = drag.map_or(Ok(0.0), |drag| drag.to(set.unit).map(|drag| drag.value))?;
        let clamping = quantities(Between::new(spread.low.value - drag, spread.high.value - drag), set.unit)?;
        let clamp = joint.clamp(clamping)?;
        let reasons =
            clamp.harm().into_iter().map(|harm| ToolReason::JointLimit { limit: harm.limit }).collect();
        Ok((clamp, reasons))
    }
}
