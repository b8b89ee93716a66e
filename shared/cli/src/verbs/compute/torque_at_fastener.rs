//! `torque-at-fastener`: what a setting becomes at the fastener.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::torque_at_fastener;
use witnessmark_core::units::Quantity;

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "torque-at-fastener",
    example: r#"{"setting": {"value": 8, "unit": "N.m"}, "lever": {"value": 300, "unit": "mm"}, "adapter": {"value": 150, "unit": "mm"}, "angle_deg": 0}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    setting: Quantity,
    lever: Quantity,
    adapter: Quantity,
    #[serde(default)]
    angle_deg: f64,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { setting, lever, adapter, angle_deg } = read(input)?;
    let at_fastener = torque_at_fastener(setting, lever, adapter, angle_deg)?;
    Ok(json!({ "at_fastener": at_fastener, "at_fastener_si": si(at_fastener)? }))
}
