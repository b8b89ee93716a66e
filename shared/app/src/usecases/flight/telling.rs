//! A flight prepared, told as it was stated.

use witnessmark_core::flight::{Pressure, Reserve};
use witnessmark_core::record::{
    AirPlanned, FlightPlanned, FuelPlanned, LoadPlanned, MixPlanned, WindPlanned,
};
use witnessmark_core::said::Said;
use witnessmark_core::units::Quantity;

use crate::house::House;

impl House {
    /// What a plan states, a sentence for each part.
    pub(crate) fn flight_words(&self, plan: &FlightPlanned) -> String {
        let head = Said::new("says-flight-planned").text("time", plan.at.format("%H:%M"));
        let parts = [
            plan.load.as_ref().map(load),
            plan.mix.as_ref().map(mix),
            plan.fuel.as_ref().map(fuel),
            plan.air.as_ref().map(air),
            plan.wind.as_ref().map(wind),
        ];
        let said: Vec<String> =
            std::iter::once(head).chain(parts.into_iter().flatten()).map(|said| self.say(&said)).collect();
        said.join(" ")
    }
}

fn load(plan: &LoadPlanned) -> Said {
    Said::new("says-flight-load")
        .quantity("pilot", plan.loads.pilot)
        .quantity("machine", plan.loads.machine)
        .quantity("fuel", plan.loads.fuel)
        .quantity("ballast", plan.loads.ballast)
        .quantity("low", plan.wing.with_motor.low)
        .quantity("high", plan.wing.with_motor.high)
}

fn mix(plan: &MixPlanned) -> Said {
    let said = Said::new("says-flight-mix")
        .quantity("tank", plan.mix.in_tank)
        .quantity("petrol", plan.mix.add_fuel)
        .number("wanted", plan.mix.target_ratio);
    let said = match plan.mix.ratio_in_tank {
        Some(before) => said.number("before", before),
        None => said.text("before", "none"),
    };
    or_none(said, "oil", plan.oil)
}

fn fuel(plan: &FuelPlanned) -> Said {
    let Reserve(reserve) = plan.reserve;
    Said::new("says-flight-fuel")
        .quantity("fuel", plan.on_board)
        .quantity("reserve", reserve)
        .quantity("time", plan.flight_time)
        .number("flights", plan.burns.len() as f64)
}

fn air(plan: &AirPlanned) -> Said {
    let said = match plan.pressure {
        Pressure::Field(pressure) => Said::new("says-flight-air-field").quantity("pressure", pressure),
        Pressure::Altimeter { elevation, setting } => {
            Said::new("says-flight-air-setting").quantity("elevation", elevation).quantity("setting", setting)
        }
    };
    or_none(said.quantity("temperature", plan.temperature), "dew", plan.dew_point)
}

fn wind(plan: &WindPlanned) -> Said {
    let said = Said::new("says-flight-wind").quantity("mean", plan.wind.mean);
    let said = or_none(said, "gust", plan.wind.gust);
    let said = or_none(said, "mean-limit", plan.limits.mean);
    let said = or_none(said, "gust-limit", plan.limits.gust);
    match plan.limits.gust_factor {
        Some(factor) => said.number("factor-limit", factor),
        None => said.text("factor-limit", "none"),
    }
}

fn or_none(said: Said, name: &str, quantity: Option<Quantity>) -> Said {
    match quantity {
        Some(quantity) => said.quantity(name, quantity),
        None => said.text(name, "none"),
    }
}
