//! `clamp-load`: what a torque clamps with, and what share of the stud's proof load that is.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{Bearing, Between, Class, Joint, Law, Thread};
use witnessmark_core::units::{Quantity, Unit};

use super::bands::{Band, bearing};
use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "clamp-load",
    example: r#"{"torque": {"value": 127.5, "unit": "lbf.in"}, "thread": "M8", "class": "8.8", "friction": {"low": 0.1, "high": 0.2}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    torque: Quantity,
    thread: Option<Thread>,
    class: Option<Class>,
    friction: Option<Band>,
    nut_factor: Option<Band>,
    diameter: Option<Quantity>,
    bearing: Option<Bearing>,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let input: Input = read(input)?;
    let law = law(&input)?;
    let torque = Between::just(input.torque);
    let share = match (input.class, input.thread) {
        (None, _) => None,
        (Some(_), None) => return Err(wrong("`class` needs `thread`: the proof load hangs on both")),
        (class, Some(thread)) => Joint { thread, class, law, tapped: None }.clamp(torque)?.proof_share,
    };
    // N is SI already.
    Ok(json!({ "preload": law.preload(torque)?, "proof_share": share }))
}

fn law(input: &Input) -> Result<Law, Wrong> {
    let thread = input.thread.ok_or_else(|| wrong("give `thread`, such as M8"));
    match (input.friction, input.nut_factor) {
        (Some(friction), None) => {
            let thread = thread?;
            if let Some(diameter) = input.diameter {
                same(diameter, thread)?;
            }
            let bearing = bearing(input.bearing, thread)?;
            Ok(Law::Friction { thread, bearing, friction: friction.into() })
        }
        (None, Some(factor)) => {
            let diameter = input.diameter.map_or_else(|| thread.map(Thread::diameter), Ok)?;
            Ok(Law::NutFactor { factor: factor.into(), diameter })
        }
        _ => Err(wrong("give either `friction` or `nut_factor`, as {\"low\": …, \"high\": …}")),
    }
}

/// A diameter beside a thread must be the thread's: one of the two is a slip otherwise.
fn same(diameter: Quantity, thread: Thread) -> Result<(), Wrong> {
    let (given, own) = (diameter.to(Unit::Millimetre)?.value, thread.diameter().to(Unit::Millimetre)?.value);
    if (given / own - 1.0).abs() <= 0.01 {
        return Ok(());
    }
    Err(Wrong(format!("diameter: {diameter} isn't that of {thread}: leave it out, or correct one of them")))
}

fn wrong(why: &str) -> Wrong {
    Wrong(why.to_owned())
}
