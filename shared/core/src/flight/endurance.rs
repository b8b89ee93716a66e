//! How long the fuel lasts, from what this machine burned before.

use serde::{Deserialize, Serialize};
use statrs::distribution::{ContinuousCDF, StudentsT};
use ts_rs::TS;

use super::fault::{FlightFault, more, some};
use crate::told::{Told, TooLittle};
use crate::units::{Quantity, Unit};

/// Fewest flights to tell a burn from. Our choice.
const FEWEST: usize = 3;
/// From so many on the spread is reckoned; below, the least and the most stand for it. Our choice.
const MANY: usize = 8;
/// How sure the next flight's burn is to lie between the two.
const CONFIDENCE: f64 = 0.90;

/// What one flight burned.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(untagged)]
pub enum Burn {
    /// As it was measured.
    Flight(Burned),
    /// As a rate, such as L/h.
    Rate(Quantity),
}

/// Fuel used in a flight.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Burned {
    /// Volume.
    pub used: Quantity,
    /// Engine time.
    pub time: Quantity,
}

/// What must be left at landing: a volume, or a time at the burn.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
// The reserve parachute has that name already.
#[ts(rename = "FuelReserve")]
pub struct Reserve(pub Quantity);

/// How the interval was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Spread {
    /// Too few flights for more: the least and the most burned so far.
    LeastAndMost,
    /// 90 % prediction interval of the next flight's burn.
    Predicted,
}

/// How long the fuel lasts.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Endurance {
    /// At the higher burn: the one to plan with.
    pub low: Quantity,
    /// At the lower burn.
    pub high: Quantity,
    /// Burn, L/h, lower and higher.
    pub burn: (Quantity, Quantity),
    /// How the interval was made.
    pub by: Spread,
    /// How many flights it rests on.
    pub flights: usize,
}

/// Flight time until only the reserve is left: (fuel − reserve)/burn, or fuel/burn − reserve where
/// that is a time; nothing when the fuel doesn't reach the reserve.
///
/// Burn from 8 flights on: mean ∓ t₉₅,ₙ₋₁·s·√(1 + 1/n) (prediction interval of one more, by any textbook),
/// but not below half the least burned; of fewer, from the least to the most.
///
/// # Errors
/// [`FlightFault`].
pub fn endurance(fuel: Quantity, burns: &[Burn], reserve: Reserve) -> Result<Told<Endurance>, FlightFault> {
    let litres = some(fuel, Unit::Litre, "fuel")?;
    let Reserve(reserve) = reserve;
    let by_time = reserve.unit.dimension() == Unit::Hour.dimension();
    let kept = some(reserve, if by_time { Unit::Hour } else { Unit::Litre }, "reserve")?;
    let rates = burns.iter().map(rate).collect::<Result<Vec<f64>, _>>()?;
    if rates.len() < FEWEST {
        return Ok(Told::TooLittle(TooLittle::Few { has: rates.len(), needs: FEWEST }));
    }
    let least = rates.iter().copied().fold(f64::INFINITY, f64::min);
    let most = rates.iter().copied().fold(0.0, f64::max);
    let (slow, fast, by) = match predicted(&rates) {
        Some((slow, fast)) => (slow.max(least / 2.0), fast, Spread::Predicted),
        None => (least, most, Spread::LeastAndMost),
    };
    let lasts = |rate: f64| {
        let hours = if by_time { litres / rate - kept } else { (litres - kept) / rate };
        Quantity::new(hours.max(0.0), Unit::Hour)
    };
    let per_hour = |rate| Quantity::new(rate, Unit::LitrePerHour);
    let (low, high) = (lasts(fast), lasts(slow));
    if !low.value.is_finite() || !high.value.is_finite() {
        return Err(FlightFault::Impossible { what: "the burn", must: "more than nothing" });
    }
    let burn = (per_hour(slow), per_hour(fast));
    Ok(Told::Told(Endurance { low, high, burn, by, flights: rates.len() }))
}

/// L/h.
fn rate(burn: &Burn) -> Result<f64, FlightFault> {
    match burn {
        Burn::Flight(Burned { used, time }) => {
            Ok(more(*used, Unit::Litre, "used")? / more(*time, Unit::Hour, "time")?)
        }
        Burn::Rate(rate) => more(*rate, Unit::LitrePerHour, "the burn"),
    }
}

fn predicted(rates: &[f64]) -> Option<(f64, f64)> {
    if rates.len() < MANY {
        return None;
    }
    let n = rates.len() as f64;
    let mean = rates.iter().sum::<f64>() / n;
    let variance = rates.iter().map(|rate| (rate - mean).powi(2)).sum::<f64>() / (n - 1.0);
    let t = StudentsT::new(0.0, 1.0, n - 1.0).ok()?.inverse_cdf((1.0 + CONFIDENCE) / 2.0);
    let wide = t * (variance * (1.0 + 1.0 / n)).sqrt();
    Some((mean - wide, mean + wide))
}
