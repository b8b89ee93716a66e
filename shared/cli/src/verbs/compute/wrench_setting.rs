//! `wrench-setting`: what to set so that the fastener gets its torque.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{torque_at_fastener, wrench_setting};
use witnessmark_core::units::Quantity;

use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "wrench-setting",
    example: r#"{"torque": {"value": 11.3, "unit": "N.m"}, "lever": {"value": 300, "unit": "mm"}, "adapter": {"value": 150, "unit": "mm"}, "angle_deg": 0}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    torque: Quantity,
    lever: Quantity,
    adapter: Quantity,
    #[serde(default)]
    angle_deg: f64,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { torque, lever, adapter, angle_deg } = read(input)?;
    let setting = wrench_setting(torque, lever, adapter, angle_deg)?;
    let at_fastener = torque_at_fastener(setting, lever, adapter, angle_deg)?;
    Ok(json!({
        "setting": setting,
        "setting_si": si(setting)?,
        "at_fastener": at_fastener,
        "at_fastener_si": si(at_fastener)?,
    }))
}
