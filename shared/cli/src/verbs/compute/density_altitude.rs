//! `density-altitude`: the air of today as an altitude, and what it does to a launch.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::flight::{Air, Pressure, air, thin_air};
use witnessmark_core::units::{Quantity, Unit};

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "density-altitude",
    example: r#"{"elevation": {"value": 5883, "unit": "ft"}, "altimeter": {"value": 30.10, "unit": "inHg"}, "temperature": {"value": 70, "unit": "degF"}, "dew_point": {"value": 5, "unit": "Cel"}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    /// Above mean sea level; needed with `altimeter`.
    elevation: Option<Quantity>,
    /// What an altimeter is set to so that it shows the elevation.
    altimeter: Option<Quantity>,
    /// Or what a barometer shows there.
    pressure: Option<Quantity>,
    temperature: Quantity,
    /// Without it the air is taken as dry.
    dew_point: Option<Quantity>,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { elevation, altimeter, pressure, temperature, dew_point } = read(input)?;
    let known = match (altimeter, pressure, elevation) {
        (Some(setting), None, Some(elevation)) => Pressure::Altimeter { elevation, setting },
        (Some(_), None, None) => return Err(Wrong("elevation: `altimeter` needs it".into())),
        (None, Some(pressure), _) => Pressure::Field(pressure),
        _ => return Err(Wrong("give either `altimeter` with `elevation`, or `pressure`".into())),
    };
    let Air { pressure, pressure_altitude, density_altitude, density, taken_as_dry } =
        air(known, temperature, dew_point)?;
    let thin = thin_air(density, density_altitude)?;
    // As high as one asked: in the elevation's unit.
    let unit = elevation.map_or(Unit::Metre, |elevation| elevation.unit);
    Ok(json!({
        "pressure_altitude": pressure_altitude.to(unit)?,
        "pressure_altitude_si": si(pressure_altitude)?,
        "density_altitude": density_altitude.to(unit)?,
        "density_altitude_si": si(density_altitude)?,
        "density": density,
        "pressure": pressure,
        "altitudes": "geopotential",
        "taken_as_dry": taken_as_dry,
        "thin_air": {
            "density": thin.density, "thrust": thin.thrust, "speed": thin.speed, "roll": thin.roll,
            "source": "common practice, no source",
        },
    }))
}
