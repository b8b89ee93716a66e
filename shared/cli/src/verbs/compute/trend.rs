//! `trend`: which way a measure goes, how sure that is, and when it reaches its limit.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::trend::{Limit, Series, ToLimit, Trend, trend};

use super::too_little::{nothing, told};
use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "trend",
    example: r#"{"x": [2, 9, 15, 22, 31, 38, 44, 52], "y": [172, 174, 173, 177, 178, 181, 180, 184], "limit": {"at_most": 205}}"#,
    run,
};

const NAMES: &[&str] = &[
    "s",
    "variance",
    "z",
    "p",
    "direction",
    "slope",
    "slope_low",
    "slope_high",
    "intercept",
    "change_at",
    "change",
    "to_limit",
    "limit",
    "outliers",
];

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    /// Time in service.
    x: Vec<f64>,
    /// What was read then.
    y: Vec<f64>,
    /// `{"at_most": …}`, `{"at_least": …}`, or a number.
    limit: Option<Limit>,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { x, y, limit } = read(input)?;
    let series = Series::paired(&x, &y)?;
    match trend(&series, limit)? {
        Told::Told(trend) => Ok(shown(trend)),
        Told::TooLittle(why) => {
            let mut out = nothing(NAMES, why);
            out.insert("readings".into(), json!(series.len()));
            Ok(Value::Object(out))
        }
    }
}

fn shown(trend: Trend) -> Value {
    let Trend { readings, test, direction, slope, change, to_limit, outliers } = trend;
    // How it stands to the limit, and when it gets there, if it does.
    let (limit, reached) = match to_limit {
        None => (Value::Null, Value::Null),
        Some(Told::Told(ToLimit::There)) => (json!({ "standing": "there" }), Value::Null),
        Some(Told::Told(ToLimit::Away)) => (json!({ "standing": "away" }), Value::Null),
        Some(Told::Told(ToLimit::Ahead { reached, left })) => (
            json!({ "standing": "ahead" }),
            json!({ "at": reached.at, "low": reached.low, "high": reached.high, "left": left }),
        ),
        Some(Told::TooLittle(why)) => (limit_unsaid(why), Value::Null),
    };
    let far = |outlier: &witnessmark_core::trend::Outlier| json!({ "x": outlier.reading.at, "y": outlier.reading.value, "z": outlier.z });
    json!({
        "readings": readings,
        "s": test.s, "variance": test.variance, "z": test.z, "p": test.p,
        "direction": direction,
        "slope": slope.slope, "slope_low": slope.low, "slope_high": slope.high,
        "intercept": slope.intercept,
        "change_at": change.map(|change| change.at),
        "change": change.map(|change| json!({ "after": change.after, "k": change.k, "p": change.p })),
        "to_limit": reached,
        "limit": limit,
        "outliers": outliers.iter().map(far).collect::<Vec<_>>(),
        "too_little": Value::Null,
    })
}

fn limit_unsaid(why: TooLittle) -> Value {
    json!({ "standing": "unknown", "too_little": told(why) })
}
