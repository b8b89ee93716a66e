//! `prevailing`: what to set for a self-locking nut, and whether it may be used again.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{Between, Drag, DragRule, Thread, minimum, with_drag};
use witnessmark_core::units::Quantity;

use super::bands::si_band;
use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "prevailing",
    example: r#"{"wanted": {"low": {"value": 50, "unit": "lbf.in"}, "high": {"value": 70, "unit": "lbf.in"}}, "drag": {"value": 30, "unit": "lbf.in"}, "thread": "1/4-28"}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    wanted: Between<Quantity>,
    drag: Quantity,
    thread: Option<Thread>,
    #[serde(default)]
    rule: DragRule,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { wanted, drag, thread, rule } = read(input)?;
    let Drag { set, counted } = with_drag(wanted, drag, rule)?;
    let mut out = json!({ "set": set, "set_si": si_band(set)?, "counted": counted });
    if let (Some(thread), Some(out)) = (thread, out.as_object_mut()) {
        // No published figure: nothing is said about using it again.
        let least = minimum(thread);
        let torque = least.map(|least| least.torque);
        out.insert("minimum".into(), json!(torque));
        out.insert("minimum_si".into(), json!(torque.map(si).transpose()?));
        out.insert("minimum_source".into(), json!(least.map(|least| least.source)));
        out.insert("reusable".into(), json!(least.map(|least| least.reusable(drag)).transpose()?));
    }
    Ok(out)
}
