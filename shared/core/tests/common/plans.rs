//! Flights prepared, for the tests.

use witnessmark_core::flight::{Burn, Loads, Mix, Pressure, Range, Ratio, Reserve, Wind, WindLimits};
use witnessmark_core::record::{
    AirPlanned, FlightPlanned, FuelPlanned, LoadPlanned, MixPlanned, WindPlanned, WingLoad,
};
use witnessmark_core::units::{Quantity, Unit};

use super::*;

pub fn q(value: f64, unit: Unit) -> Quantity {
    Quantity::new(value, unit)
}

pub fn kg(value: f64) -> Quantity {
    q(value, Unit::Kilogram)
}

pub fn litres(value: f64) -> Quantity {
    q(value, Unit::Litre)
}

pub fn hours(value: f64) -> Quantity {
    q(value, Unit::Hour)
}

pub fn kmh(value: f64) -> Quantity {
    q(value, Unit::KilometrePerHour)
}

/// Nothing asked yet.
pub fn plan(at: DateTime<FixedOffset>) -> FlightPlanned {
    FlightPlanned { at, load: None, mix: None, fuel: None, air: None, wind: None }
}

pub fn range(low: f64, high: f64) -> Range {
    Range { low: kg(low), high: kg(high) }
}

/// 95 to 140 kg with a motor, by an invented manual.
pub fn wing() -> WingLoad {
    WingLoad {
        with_motor: range(95.0, 140.0),
        without_motor: None,
        document: "invented wing manual".into(),
        page: "7".into(),
    }
}

/// A pilot of so many kg with 30 kg of machine and fuel by mass.
pub fn load(pilot: f64, fuel: f64) -> LoadPlanned {
    let loads = Loads { pilot: kg(pilot), machine: kg(30.0), fuel: kg(fuel), ballast: kg(0.0) };
    LoadPlanned { loads, wing: wing() }
}

/// 10 L of petrol into an empty tank, 50:1 wanted: 0.2 L of oil.
pub fn mixed(oil: Option<f64>) -> MixPlanned {
    let mix = Mix {
        in_tank: litres(0.0),
        ratio_in_tank: None,
        target_ratio: Ratio::new(50.0).unwrap(),
        add_fuel: litres(10.0),
    };
    MixPlanned { mix, oil: oil.map(litres) }
}

/// 10 L on board, 1 L to be left, burns of 3.0, 3.2 and 3.6 L/h: 2.5 to 3 h.
pub fn fuelled(time: f64) -> FuelPlanned {
    let burn = |rate| Burn::Rate(q(rate, Unit::LitrePerHour));
    FuelPlanned {
        on_board: litres(10.0),
        burns: [3.0, 3.2, 3.6].map(burn).to_vec(),
        reserve: Reserve(litres(1.0)),
        flight_time: hours(time),
    }
}

/// A standard day at a height.
pub fn standard_air(height: f64) -> AirPlanned {
    AirPlanned {
        pressure: Pressure::Altimeter {
            elevation: q(height, Unit::Metre),
            setting: q(1013.25, Unit::Hectopascal),
        },
        temperature: q(15.0 - 0.0065 * height, Unit::Celsius),
        dew_point: None,
        measured: None,
    }
}

pub fn windy(mean: f64, gust: Option<f64>, limits: WindLimits) -> WindPlanned {
    WindPlanned { wind: Wind { mean: kmh(mean), gust: gust.map(kmh) }, limits, measured: None }
}

/// 18 km/h, gusts of 28, and those at most 1.6 times the mean.
pub fn wind_limits() -> WindLimits {
    WindLimits { mean: Some(kmh(18.0)), gust: Some(kmh(28.0)), gust_factor: Some(1.6) }
}
