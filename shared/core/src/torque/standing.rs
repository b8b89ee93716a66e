//! Whether a tool may be used for a setting, and why not.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::joint::JointLimit;

/// One thing against a tool or a setting.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "reason", rename_all = "kebab-case")]
pub enum ToolReason {
    /// The setting isn't on the tool's marked scale.
    OutsideRange,
    /// The time between calibrations has passed.
    Overdue {
        /// The last good day.
        #[ts(type = "string")]
        since: NaiveDate,
    },
    /// The clicks between calibrations are used up.
    Worn {
        /// Clicks since the last calibration.
        cycles: u32,
        /// Clicks allowed.
        allowed: u32,
    },
    /// Dropped, forced or repaired since the last calibration.
    Dropped,
    /// Nobody knows when it was calibrated.
    NeverCalibrated,
    /// Calibrated after the day in question: a clock or a date is wrong.
    CalibratedLater {
        /// The written day.
        #[ts(type = "string")]
        on: NaiveDate,
    },
    /// What the tool may give reaches what the joint bears.
    JointLimit {
        /// Which limit.
        limit: JointLimit,
    },
    /// Used nevertheless.
    Overridden {
        /// The person's reason.
        because: String,
    },
}

/// How a tool stands for a setting.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "standing", content = "reasons", rename_all = "kebab-case")]
pub enum ToolStanding {
    /// Nothing against it.
    Fit,
    /// Usable; the work is a watch item.
    Watch(Vec<ToolReason>),
    /// Not usable without a reason for it.
    Refused(Vec<ToolReason>),
}

impl ToolStanding {
    /// What is against it.
    pub fn reasons(&self) -> &[ToolReason] {
        match self {
            ToolStanding::Fit => &[],
            ToolStanding::Watch(reasons) | ToolStanding::Refused(reasons) => reasons,
        }
    }

    /// With more things to watch.
    #[must_use]
    pub fn watching(self, more: impl IntoIterator<Item = ToolReason>) -> Self {
        match self {
            ToolStanding::Fit => Self::of(Vec::new(), more.into_iter().collect()),
            ToolStanding::Watch(reasons) => ToolStanding::Watch(reasons.into_iter().chain(more).collect()),
            ToolStanding::Refused(reasons) => {
                ToolStanding::Refused(reasons.into_iter().chain(more).collect())
            }
        }
    }

    /// From what refuses and what only wants watching.
    pub(super) fn of(refusing: Vec<ToolReason>, watching: Vec<ToolReason>) -> Self {
        let all = || refusing.iter().chain(&watching).cloned().collect();
        match (refusing.is_empty(), watching.is_empty()) {
            (true, true) => ToolStanding::Fit,
            (true, false) => ToolStanding::Watch(all()),
            (false, _) => ToolStanding::Refused(all()),
        }
    }
}
