//! Petrol and oil of a two-stroke: what to add to what is in the tank.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::{FlightFault, Must, some};
use super::input::Input;
use crate::units::{Quantity, Unit};

/// Parts of petrol to one of oil: 50 for 50:1. One that was read as a number may be a slip, which is
/// told where it is used, so that what was typed beside it isn't lost.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "Written", into = "f64")]
pub struct Ratio(f64);

/// Outside which a ratio is a slip, or percent.
const RATIOS: std::ops::RangeInclusive<f64> = 5.0..=200.0;

/// `50`, `"50:1"` or `"1:50"`.
#[derive(Deserialize)]
#[serde(untagged)]
enum Written {
    Number(f64),
    Text(String),
}

impl TryFrom<Written> for Ratio {
    type Error = FlightFault;

    fn try_from(written: Written) -> Result<Self, FlightFault> {
        match written {
            Written::Number(number) => Ok(Ratio(number)),
            Written::Text(text) => text.parse(),
        }
    }
}

impl std::str::FromStr for Ratio {
    type Err = FlightFault;

    fn from_str(text: &str) -> Result<Self, FlightFault> {
        let wrong = || FlightFault::NoRatio(text.to_owned());
        let number = |part: &str| part.trim().parse::<f64>().ok();
        let ratio = match text.split_once(':') {
            Some((petrol, oil)) => match (number(petrol), number(oil)) {
                (Some(petrol), Some(1.0)) => Some(petrol),
                (Some(1.0), Some(petrol)) => Some(petrol),
                _ => None,
            },
            None => number(text),
        };
        ratio.and_then(|ratio| Ratio::new(ratio).ok()).ok_or_else(wrong)
    }
}

impl From<Ratio> for f64 {
    fn from(ratio: Ratio) -> f64 {
        ratio.0
    }
}

impl Ratio {
    /// From parts of petrol to one of oil.
    ///
    /// # Errors
    /// [`FlightFault::NoRatio`].
    pub fn new(petrol: f64) -> Result<Self, FlightFault> {
        if RATIOS.contains(&petrol) {
            Ok(Self(petrol))
        } else {
            Err(FlightFault::NoRatio(petrol.to_string()))
        }
    }
}

/// What is in the tank, and what shall be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Mix {
    /// Petrol and oil together, as they stand in the tank.
    pub in_tank: Quantity,
    /// Their ratio; none for petrol without oil.
    #[ts(type = "number | null")]
    pub ratio_in_tank: Option<Ratio>,
    /// The ratio wanted.
    #[ts(type = "number")]
    pub target_ratio: Ratio,
    /// Petrol without oil that is added.
    pub add_fuel: Quantity,
}

/// What brings it to the ratio.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Oil {
    /// Oil to add.
    Add(Quantity),
    /// There is too much oil already: so much more petrol would bring it to the ratio.
    TooMuch {
        /// Beyond what was to be added.
        more_fuel: Quantity,
    },
}

/// The oil to add: o = (V·r₀/(r₀+1) + F)/r − V/(r₀+1), for V in the tank at r₀, F of petrol added,
/// r wanted. Volumes are taken to add up. In the unit of the petrol added.
///
/// # Errors
/// [`FlightFault`] for a volume below nothing, or nothing to mix at all.
pub fn oil_to_add(mix: &Mix) -> Result<Oil, FlightFault> {
    let (petrol, oil) = contents(mix)?;
    let Ratio(target) = mix.target_ratio;
    let shown = |value: f64| Quantity::new(value, Unit::Litre).to(mix.add_fuel.unit);
    let add = petrol / target - oil;
    // A drop less than nothing is rounding.
    if add < -1e-12 * oil {
        return Ok(Oil::TooMuch { more_fuel: shown(oil * target - petrol)? });
    }
    Ok(Oil::Add(shown(add.max(0.0))?))
}

/// What the tank holds once it was poured into.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poured {
    /// Oil that is there over oil that is wanted: 1 is the ratio wanted.
    pub share: f64,
    /// Parts of petrol to one of oil; none without any oil.
    pub ratio: Option<f64>,
    /// Oil that is missing; nothing where there is enough.
    pub missing: Quantity,
    /// Petrol that brings too much oil to the ratio; nothing where there isn't too much.
    pub more_fuel: Quantity,
}

/// The tank after petrol was added, and oil where any was. In the unit of the petrol added.
///
/// # Errors
/// [`FlightFault`], as [`oil_to_add`].
pub fn poured(mix: &Mix, oil: Option<Quantity>) -> Result<Poured, FlightFault> {
    let (petrol, before) = contents(mix)?;
    let added = oil.map(|oil| some(oil, Unit::Litre, Input::Oil)).transpose()?;
    let oil = before + added.unwrap_or(0.0);
    let Ratio(target) = mix.target_ratio;
    let wanted = petrol / target;
    let shown = |value: f64| Quantity::new(value.max(0.0), Unit::Litre).to(mix.add_fuel.unit);
    Ok(Poured {
        share: oil / wanted,
        ratio: (oil > 0.0).then(|| petrol / oil),
        missing: shown(wanted - oil)?,
        more_fuel: shown(oil * target - petrol)?,
    })
}

/// Petrol and oil, L: what was in the tank and the petrol added.
fn contents(mix: &Mix) -> Result<(f64, f64), FlightFault> {
    for Ratio(ratio) in mix.ratio_in_tank.into_iter().chain([mix.target_ratio]) {
        Ratio::new(ratio)?;
    }
    let tank = some(mix.in_tank, Unit::Litre, Input::InTank)?;
    let fuel = some(mix.add_fuel, Unit::Litre, Input::AddFuel)?;
    if tank + fuel <= 0.0 {
        return Err(FlightFault::Impossible { what: Input::TankOrFuel, must: Must::Positive });
    }
    let oil = mix.ratio_in_tank.map_or(0.0, |Ratio(ratio)| tank / (ratio + 1.0));
    Ok((tank - oil + fuel, oil))
}
