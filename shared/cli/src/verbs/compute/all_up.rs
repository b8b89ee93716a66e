//! `all-up`: all-up weight against the wing's range.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::flight::{AllUp, Loads, Range, all_up};
use witnessmark_core::units::{Quantity, Unit};

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "all-up",
    example: r#"{"pilot": {"value": 82, "unit": "kg"}, "machine": {"value": 34, "unit": "kg"}, "fuel": {"value": 10, "unit": "L"}, "ballast": {"value": 0, "unit": "kg"}, "wing": {"low": {"value": 95, "unit": "kg"}, "high": {"value": 135, "unit": "kg"}}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    pilot: Quantity,
    machine: Quantity,
    /// By mass or by volume.
    fuel: Quantity,
    #[serde(default = "none")]
    ballast: Quantity,
    wing: Range,
}

fn none() -> Quantity {
    Quantity::new(0.0, Unit::Kilogram)
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { pilot, machine, fuel, ballast, wing } = read(input)?;
    let AllUp { total, dry, in_range, margin } = all_up(&Loads { pilot, machine, fuel, ballast }, &wing)?;
    Ok(json!({
        "total": total, "total_si": si(total)?,
        "dry": dry, "dry_si": si(dry)?,
        "in_range": in_range,
        // To the lower end with the tank run dry, to the upper end at take-off.
        "margin": { "low": margin.above_low, "high": margin.below_high },
        "margin_si": { "low": si(margin.above_low)?, "high": si(margin.below_high)? },
    }))
}
