//! `convert`: a quantity in another unit of its kind.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::units::{Quantity, Unit};

use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "convert",
    example: r#"{"quantity": {"value": 100, "unit": "lbf.in"}, "to": "N.m"}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    quantity: Quantity,
    to: Unit,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { quantity, to } = read(input)?;
    Ok(json!({ "quantity": quantity.to(to)? }))
}
