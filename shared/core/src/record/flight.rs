//! What records say of a flight that is prepared: load, fuel, air and wind as they were then.
//! What comes of them is reckoned anew whenever it is asked, and never stored.

use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::flight::{Burn, Loads, Mix, Pressure, Range, Reserve, Wind, WindLimits};
use crate::units::Quantity;

/// What the wing may carry, as its maker states it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct WingLoad {
    /// All-up weight with a motor.
    pub with_motor: Range,
    /// All-up weight without one, where its maker states both.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub without_motor: Option<Range>,
    /// The manual; empty while nobody has looked it up.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub document: String,
    /// Where in it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub page: String,
}

/// A flight prepared. Each part is there if it was asked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct FlightPlanned {
    /// When it was worked out: air and wind hold for a few hours.
    #[ts(type = "string")]
    pub at: DateTime<FixedOffset>,
    /// All-up weight.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub load: Option<LoadPlanned>,
    /// Petrol and oil.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub mix: Option<MixPlanned>,
    /// How long the fuel lasts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub fuel: Option<FuelPlanned>,
    /// The air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub air: Option<AirPlanned>,
    /// The wind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub wind: Option<WindPlanned>,
}

/// All-up weight and what the wing may carry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct LoadPlanned {
    /// What goes up.
    pub loads: Loads,
    /// The wing's, as the machine's description had it then.
    pub wing: WingLoad,
}

/// What was poured into the tank.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct MixPlanned {
    /// What is in it, what comes in, and the ratio wanted.
    pub mix: Mix,
    /// Oil poured in; none while it wasn't.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub oil: Option<Quantity>,
}

/// Fuel against the time to be flown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct FuelPlanned {
    /// In the tank at launch.
    pub on_board: Quantity,
    /// What earlier flights burned.
    pub burns: Vec<Burn>,
    /// What must be left at landing.
    pub reserve: Reserve,
    /// How long the flight is meant to last.
    pub flight_time: Quantity,
}

/// The air at the field.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct AirPlanned {
    /// Its pressure.
    pub pressure: Pressure,
    /// Its temperature.
    pub temperature: Quantity,
    /// Its dew point, where that is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub dew_point: Option<Quantity>,
    /// When, where that was before the plan was worked out anew.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional, type = "string")]
    pub measured: Option<DateTime<FixedOffset>>,
}

/// The wind and what it may be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct WindPlanned {
    /// As measured at launch.
    pub wind: Wind,
    /// The limits that the pilot set.
    pub limits: WindLimits,
    /// When it was measured, where that was before the plan was worked out anew.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional, type = "string")]
    pub measured: Option<DateTime<FixedOffset>>,
}
