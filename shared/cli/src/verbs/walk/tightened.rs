//! A joint told as tightened: in a file of answers, or at the end of a round in the terminal.

use serde::Deserialize;
use witnessmark_app::views::{Walk, WalkProgress};
use witnessmark_app::{App, Fault};
use witnessmark_core::list::Given;
use witnessmark_core::torque::Adapter;
use witnessmark_core::units::Quantity;

use crate::verbs::tool;

/// With what, how each nut moved, and what the tool read.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tightened {
    /// By id, its beginning, or name.
    pub tool: String,
    /// Each nut's movement before the click, eighths of a turn; nut 1 first.
    pub eighths: Vec<u8>,
    pub reading: Option<Quantity>,
    pub adapter: Option<Adapter>,
    /// Why a tool is used that may not be used without a reason, or a reading insisted on.
    #[serde(default)]
    pub because: String,
}

impl Tightened {
    /// Tells it; durable when it returns.
    pub fn tell(&self, app: &mut App, walk: &Walk, point: &str, seconds: f64) -> Result<WalkProgress, Fault> {
        let tool = tool::find(app, &self.tool)?.kept.tool.to_string();
        let (eighths, because) = (self.eighths.clone(), self.because.clone());
        let (walk, point) = (walk.id.clone(), point.to_owned());
        app.torque_done(walk, point, tool, self.adapter, eighths, self.reading, because, seconds)
    }

    /// Whether it stands already as told here.
    pub fn stands(&self, app: &mut App, given: &Given) -> Result<bool, Fault> {
        let Given::Torque { torque } = given else { return Ok(false) };
        let because = Some(self.because.trim()).filter(|because| !because.is_empty());
        Ok(tool::find(app, &self.tool)?.kept.tool == torque.tool
            && self.eighths == torque.eighths
            && self.reading == torque.reading
            && because == torque.override_reason.as_deref()
            // The adapter isn't kept, but what it makes of the setting is: told anew, if there is one.
            && self.adapter.is_none())
    }
}
