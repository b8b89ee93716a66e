//! Invented flights prepared: what a pilot would have entered on a mild day.

use chrono::{DateTime, FixedOffset};
use serde::Deserialize;
use witnessmark_core::flight::{Burn, Loads, Pressure, Range, Reserve, Wind, WindLimits};
use witnessmark_core::record::{AirPlanned, FlightPlanned, FuelPlanned, LoadPlanned, WindPlanned, WingLoad};
use witnessmark_core::units::{Quantity, Unit};

/// What an invented machine weighs, and what its wing may carry, kg.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Carrying {
    weight: f64,
    low: f64,
    high: f64,
    document: String,
    page: String,
}

impl Carrying {
    pub(super) fn weight(&self) -> Quantity {
        Quantity::new(self.weight, Unit::Kilogram)
    }

    pub(super) fn wing(&self) -> WingLoad {
        WingLoad {
            with_motor: Range {
                low: Quantity::new(self.low, Unit::Kilogram),
                high: Quantity::new(self.high, Unit::Kilogram),
            },
            without_motor: None,
            document: self.document.clone(),
            page: self.page.clone(),
        }
    }

    /// A flight prepared: a pilot who suits the wing, a tank half full, and a light breeze.
    pub(super) fn plan(&self, at: DateTime<FixedOffset>, burns: Vec<Burn>) -> FlightPlanned {
        let kg = |value| Quantity::new(value, Unit::Kilogram);
        let litres = Quantity::new(7.5, Unit::Litre);
        let pilot = ((self.low + 2.0 * self.high) / 3.0 - self.weight).round();
        let hours = |value| Quantity::new(value, Unit::Hour);
        let wind = |value| Quantity::new(value, Unit::KilometrePerHour);
        FlightPlanned {
            at,
            load: Some(LoadPlanned {
                loads: Loads { pilot: kg(pilot), machine: self.weight(), fuel: litres, ballast: kg(0.0) },
                wing: self.wing(),
            }),
            mix: None,
            // A machine that burns nothing, or whose burn nobody measured, isn't asked.
            fuel: (burns.len() >= 3).then(|| FuelPlanned {
                on_board: litres,
                burns,
                reserve: Reserve(hours(0.5)),
                flight_time: hours(0.75),
            }),
            air: Some(AirPlanned {
                pressure: Pressure::Altimeter {
                    elevation: Quantity::new(310.0, Unit::Metre),
                    setting: Quantity::new(1019.0, Unit::Hectopascal),
                },
                temperature: Quantity::new(16.0, Unit::Celsius),
                dew_point: Some(Quantity::new(9.0, Unit::Celsius)),
                measured: None,
            }),
            wind: Some(WindPlanned {
                wind: Wind { mean: wind(8.0), gust: Some(wind(12.0)) },
                limits: WindLimits { mean: Some(wind(18.0)), gust: Some(wind(25.0)), gust_factor: None },
                measured: None,
            }),
        }
    }
}
