//! `bolt-limit`: what a bolt or stud may be tightened to.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{Bearing, Between, Class, Thread, assembly};

use super::bands::{Band, bearing};
use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "bolt-limit",
    example: r#"{"thread": "M8", "class": "8.8", "friction": 0.12, "use": 0.9}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    thread: Thread,
    class: Class,
    friction: Band,
    #[serde(rename = "use", default = "nine_tenths")]
    used: f64,
    bearing: Option<Bearing>,
}

fn nine_tenths() -> f64 {
    0.9
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { thread, class, friction, used, bearing: given } = read(input)?;
    let bearing = bearing(given, thread)?;
    let at = |friction| assembly(thread, class, bearing, friction, used);
    // N and N·m are SI already.
    match friction {
        Band::One(friction) => {
            let limit = at(friction)?;
            Ok(json!({ "preload": limit.preload, "torque": limit.torque }))
        }
        // More friction: less clamp load for the same stress, and more torque.
        Band::Both(friction) => {
            let (slick, rough) = (at(friction.low)?, at(friction.high)?);
            Ok(json!({
                "preload": Between::new(rough.preload, slick.preload),
                "torque": Between::new(slick.torque, rough.torque),
            }))
        }
    }
}
