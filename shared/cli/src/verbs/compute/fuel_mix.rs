//! `fuel-mix`: the oil that brings a tank to its ratio.

use serde_json::{Value, json};
use witnessmark_core::flight::{Mix, Oil, oil_to_add};

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "fuel-mix",
    example: r#"{"in_tank": {"value": 3, "unit": "L"}, "ratio_in_tank": 50, "target_ratio": 40, "add_fuel": {"value": 7, "unit": "L"}}"#,
    run,
};

fn run(input: Value) -> Result<Value, Wrong> {
    let mix: Mix = read(input)?;
    let (add, more_fuel) = match oil_to_add(&mix)? {
        Oil::Add(oil) => (Some(oil), None),
        Oil::TooMuch { more_fuel } => (None, Some(more_fuel)),
    };
    Ok(json!({
        "add_oil": add,
        "add_oil_si": add.map(si).transpose()?,
        "too_much_oil": more_fuel.is_some(),
        "more_fuel": more_fuel,
        "more_fuel_si": more_fuel.map(si).transpose()?,
    }))
}
