//! How long the fuel lasts, from what this machine burned before.

use serde::{Deserialize, Serialize};
use statrs::distribution::{ContinuousCDF, StudentsT};
use ts_rs::TS;

use super::fault::{FlightFault, Must, more, some};
use super::input::Input;
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
    let litres = some(fuel, Unit::Litre, Input::Fuel)?;
    let Reserve(reserve) = reserve;
    let by_time = reserve.unit.dimension() == Unit::Hour.dimension();
    let kept = some(reserve, if by_time { Unit::Hour } else { Unit::Litre }, Input::Reserve)?;
    let Burning { slow, fast, by, flights } = match burning(burns)? {
        Told::Told(burning) => burning,
        Told::TooLittle(why) => return Ok(Told::TooLittle(why)),
    };
    let lasts = |rate: Quantity| {
        let hours = if by_time { litres / rate.value - kept } else { (litres - kept) / rate.value };
        Quantity::new(hours.max(0.0), Unit::Hour)
    };
    let (low, high) = (lasts(fast), lasts(slow));
    if !low.value.is_finite() || !high.value.is_finite() {
        return Err(FlightFault::Impossible { what: Input::Burn, must: Must::Positive });
    }
    Ok(Told::Told(Endurance { low, high, burn: (slow, fast), by, flights }))
}

/// What an engine burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Burning {
    /// The lower burn, L/h.
    pub slow: Quantity,
    /// The higher.
    pub fast: Quantity,
    /// How the interval was made.
    pub by: Spread,
    /// How many flights it rests on.
    pub flights: usize,
}

/// What an engine burns, by what it burned before. See [`endurance`].
///
/// # Errors
/// [`FlightFault`].
pub fn burning(burns: &[Burn]) -> Result<Told<Burning>, FlightFault> {
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
    let per_hour = |rate| Quantity::new(rate, Unit::LitrePerHour);
    Ok(Told::Told(Burning { slow: per_hour(slow), fast: per_hour(fast), by, flights: rates.len() }))
}

/// Whether the fuel lasts for a flight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lasts {
    /// Also at the higher burn.
    Surely,
    /// Only if the engine burns less than it may.
    Perhaps,
    /// Not even at the lower burn.
    No,
}

impl Endurance {
    /// Whether it lasts for a flight of this length. At the end of the interval is within.
    ///
    /// # Errors
    /// [`FlightFault`] for no time, or a time of nothing.
    pub fn lasts(&self, flight_time: Quantity) -> Result<Lasts, FlightFault> {
        let time = flight_hours(flight_time)?;
        // A time typed in minutes must not fall a hair outside.
        let within = |end: Quantity| time <= end.value * (1.0 + 1e-9);
        Ok(if within(self.low) {
            Lasts::Surely
        } else if within(self.high) {
            Lasts::Perhaps
        } else {
            Lasts::No
        })
    }
}

/// How long a flight is meant to last, h.
///
/// # Errors
/// [`FlightFault`] for no time, or a time of nothing.
pub fn flight_hours(flight_time: Quantity) -> Result<f64, FlightFault> {
    more(flight_time, Unit::Hour, Input::FlightTime)
}

/// L/h.
fn rate(burn: &Burn) -> Result<f64, FlightFault> {
    match burn {
        Burn::Flight(Burned { used, time }) => {
            Ok(more(*used, Unit::Litre, Input::Used)? / more(*time, Unit::Hour, Input::Time)?)
        }
        Burn::Rate(rate) => more(*rate, Unit::LitrePerHour, Input::Burn),
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
