//! `strip-area`: how much of a tapped thread holds, and the pull it bears.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{Thread, internal_area, strip_load};
use witnessmark_core::units::Quantity;

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "strip-area",
    example: r#"{"thread": "M8", "engaged": {"value": 16, "unit": "mm"}, "shear_strength": {"value": 120, "unit": "MPa"}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    thread: Thread,
    engaged: Quantity,
    shear_strength: Option<Quantity>,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { thread, engaged, shear_strength } = read(input)?;
    let area = internal_area(thread, engaged)?;
    let load = shear_strength.map(|strength| strip_load(thread, engaged, strength)).transpose()?;
    // N is SI already.
    Ok(json!({ "internal_area": area, "internal_area_si": si(area)?, "load": load }))
}
