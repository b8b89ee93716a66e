//! Tightening, step by step: which nut next, and what the tool is set to.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::between::{Between, Place, quantities};
use super::fault::{TorqueFault, sized};
use super::pattern::Layout;
use super::prevailing::{DragRule, with_drag};
use super::setting::Adapter;
use super::tool::Tool;
use crate::units::{Quantity, Unit};

/// One round over all nuts.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Stage {
    /// To this share of the full torque.
    Share(f64),
    /// At the full torque once more: nothing should move.
    Check,
}

/// Half, full, check: what is done where the manual names no stages (common practice).
pub fn default_stages() -> Vec<Stage> {
    vec![Stage::Share(0.5), Stage::Share(1.0), Stage::Check]
}

/// What the nuts shall get, and what stands between them and the tool.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Wanted {
    /// The manual's band.
    pub band: Between<Quantity>,
    /// Drag of a self-locking nut.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub drag: Option<Quantity>,
    /// When drag counts.
    #[serde(default)]
    pub rule: DragRule,
    /// An extension or crowfoot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub adapter: Option<Adapter>,
}

/// One nut at one stage.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Step {
    /// Which round, from 1.
    pub stage: usize,
    /// Which nut, from 1.
    pub nut: usize,
    /// What the tool is set to, in the band's unit.
    pub setting: Quantity,
}

/// The whole job on one joint.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Plan {
    /// In the order of doing.
    pub steps: Vec<Step>,
    /// What a nut may have after the last click, by the tool's deviation; without the drag,
    /// so that it can be held against the band.
    pub spread: Option<Between<Quantity>>,
}

impl Wanted {
    /// The part of the drag that counts, in the band's unit.
    fn counted(&self) -> Result<f64, TorqueFault> {
        let Some(drag) = self.drag else { return Ok(0.0) };
        let counted = with_drag(self.band, drag, self.rule)?.counted;
        Ok(if counted { drag.to(self.band.low.unit)?.value } else { 0.0 })
    }

    fn gain(&self) -> Result<f64, TorqueFault> {
        self.adapter.map_or(Ok(1.0), Adapter::gain)
    }

    /// What to set for this share of the band's middle: the drag comes whole at every stage.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn setting(&self, share: f64) -> Result<Quantity, TorqueFault> {
        self.band.to(Unit::NewtonMetre)?;
        let full = self.band.middle()?;
        sized((full.value * share + self.counted()?) / self.gain()?, full.unit)
    }

    /// What a nut may have when this tool clicks at the full setting, without the drag.
    ///
    /// # Errors
    /// [`TorqueFault`].
    pub fn spread(&self, tool: &Tool) -> Result<Between<Quantity>, TorqueFault> {
        let with = tool.spread(self.setting(1.0)?, self.adapter)?;
        let drag = self.counted()?;
        quantities(Between::new(with.low.value - drag, with.high.value - drag), with.low.unit)
    }
}

impl Plan {
    /// Every step, crossing from nut to nut, stage by stage.
    ///
    /// # Errors
    /// [`TorqueFault`]: among others, a setting outside the tool's marked range. Whether the
    /// tool is otherwise fit that day, [`Tool::judge`] says.
    pub fn new(
        layout: Layout,
        stages: &[Stage],
        wanted: &Wanted,
        tool: Option<&Tool>,
    ) -> Result<Self, TorqueFault> {
        rising(stages)?;
        let mut steps = Vec::new();
        for (stage, number) in stages.iter().zip(1..) {
            let (share, order) = match stage {
                Stage::Share(share) => (*share, layout.order()?),
                Stage::Check => (1.0, layout.round()?),
            };
            let setting = wanted.setting(share)?;
            if let Some(tool) = tool {
                on_scale(tool, setting)?;
            }
            steps.extend(order.into_iter().map(|nut| Step { stage: number, nut, setting }));
        }
        let spread = tool.map(|tool| wanted.spread(tool)).transpose()?;
        Ok(Self { steps, spread })
    }
}

fn on_scale(tool: &Tool, setting: Quantity) -> Result<(), TorqueFault> {
    let (low, high) = (tool.marked.low, tool.marked.high);
    match tool.marked.place(setting)? {
        Place::Inside => Ok(()),
        Place::Below | Place::Above => Err(TorqueFault::OutsideTool { setting, low, high }),
    }
}

/// Shares rise to 1; checks come after that.
fn rising(stages: &[Stage]) -> Result<(), TorqueFault> {
    let must = "shares above 0 that rise to 1, then check passes";
    let mut reached = 0.0;
    for stage in stages {
        let good = match stage {
            Stage::Share(share) => *share > reached && *share <= 1.0,
            Stage::Check => reached == 1.0,
        };
        if !good {
            return Err(TorqueFault::Impossible { what: "the stages", must });
        }
        if let Stage::Share(share) = stage {
            reached = *share;
        }
    }
    if reached == 1.0 { Ok(()) } else { Err(TorqueFault::Impossible { what: "the stages", must }) }
}
