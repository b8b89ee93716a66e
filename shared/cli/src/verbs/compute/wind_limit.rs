//! `wind-limit`: the wind against the limits that a pilot or a school has set.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::flight::{Wind, WindLimits, wind_standing};
use witnessmark_core::units::Quantity;

use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "wind-limit",
    example: r#"{"mean": {"value": 8, "unit": "kt"}, "gust": {"value": 13, "unit": "kt"}, "limits": {"mean": {"value": 5, "unit": "m/s"}, "gust": {"value": 25, "unit": "km/h"}, "gust_factor": 1.5}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    mean: Quantity,
    gust: Option<Quantity>,
    limits: WindLimits,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { mean, gust, limits } = read(input)?;
    Ok(json!(wind_standing(&Wind { mean, gust }, &limits)?))
}
