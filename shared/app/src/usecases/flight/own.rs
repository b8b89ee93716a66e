//! What the person of this device stated last, so that they needn't type it again. Never air or wind.

use serde::{Deserialize, Serialize};
use witnessmark_core::flight::WindLimits;
use witnessmark_core::flight::{Pressure, Reserve};
use witnessmark_core::record::FlightPlanned;
use witnessmark_core::units::Quantity;
use witnessmark_store::Tx;

use crate::Fault;
use crate::views::FlightOwn;

/// Where it is kept.
const SETTING: &str = "flight-own";

/// What is kept.
#[derive(Default, Serialize, Deserialize)]
pub(super) struct Own {
    /// What the screens are told.
    #[serde(flatten)]
    pub stated: FlightOwn,
    /// How long the last flight was meant to last.
    #[serde(default)]
    pub flight_time: Option<Quantity>,
}

/// As kept; nothing where it can't be read.
pub(super) fn kept(tx: &Tx<'_>) -> Result<Own, Fault> {
    Ok(tx.setting(SETTING)?.and_then(|kept| serde_json::from_str(&kept).ok()).unwrap_or_default())
}

/// Remembers what a plan states; of parts that it leaves out, what was stated before.
pub(super) fn keep(tx: &Tx<'_>, plan: &FlightPlanned) -> Result<(), Fault> {
    let Own { mut stated, mut flight_time } = kept(tx)?;
    if let Some(load) = &plan.load {
        stated.pilot = Some(load.loads.pilot);
        stated.ballast = Some(load.loads.ballast);
        stated.fuel = Some(load.loads.fuel);
    }
    if let Some(mix) = &plan.mix {
        stated.ratio = Some(mix.mix.target_ratio.into());
    }
    if let Some(fuel) = &plan.fuel {
        let Reserve(reserve) = fuel.reserve;
        stated.reserve = Some(Reserve(reserve));
        stated.fuel = Some(fuel.on_board);
        flight_time = Some(fuel.flight_time);
    }
    if let Some(air) = &plan.air
        && let Pressure::Altimeter { elevation, .. } = air.pressure
    {
        stated.elevation = Some(elevation);
    }
    if let Some(wind) = &plan.wind {
        stated.wind = Some(wind.limits).filter(|limits| *limits != WindLimits::default());
    }
    Ok(tx.set(SETTING, &serde_json::to_string(&Own { stated, flight_time })?)?)
}
