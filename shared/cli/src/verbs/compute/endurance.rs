//! `endurance`: how long the fuel lasts, from what was burned before.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::flight::{Burn, Endurance, Reserve, endurance};
use witnessmark_core::told::Told;
use witnessmark_core::units::Quantity;

use super::too_little::nothing;
use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "endurance",
    example: r#"{"fuel": {"value": 10, "unit": "L"}, "burn_history": [{"used": {"value": 3.1, "unit": "L"}, "time": {"value": 0.9, "unit": "h"}}, {"used": {"value": 4.0, "unit": "L"}, "time": {"value": 1.1, "unit": "h"}}, {"value": 3.4, "unit": "L/h"}], "reserve": {"value": 1.5, "unit": "L"}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    fuel: Quantity,
    /// What flights used in what engine time, or rates.
    burn_history: Vec<Burn>,
    /// A volume or a time.
    reserve: Quantity,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { fuel, burn_history, reserve } = read(input)?;
    match endurance(fuel, &burn_history, Reserve(reserve))? {
        Told::TooLittle(why) => {
            Ok(Value::Object(nothing(&["flight_time", "flight_time_si", "burn", "by", "flights"], why)))
        }
        Told::Told(Endurance { low, high, burn, by, flights }) => Ok(json!({
            "flight_time": { "low": low, "high": high },
            "flight_time_si": { "low": si(low)?, "high": si(high)? },
            "burn": { "low": burn.0, "high": burn.1 },
            "by": by,
            "flights": flights,
            "too_little": Value::Null,
        })),
    }
}
