//! `life`: how long parts of one type last, from findings at inspections.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::reliability::{Findings, Life, Turnbull, Wanted, Weibull, life, steps, weibull_at};
use witnessmark_core::told::{Told, TooLittle};

use super::too_little::told;
use super::{Computation, Wrong, read};

pub const IT: Computation = Computation {
    name: "life",
    example: r#"{"findings": [[20, 40], [35, 60], [60, 80], [50, null], [75, 75], [80, null], [40, 55]], "chance": 0.02, "in_force": 25}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    /// Whole after, failed by; null: not failed yet. Both the same: exactly then.
    findings: Vec<(f64, Option<f64>)>,
    /// The chance of an unseen failure since the last clean inspection that is borne.
    #[serde(default = "one_in_a_hundred")]
    chance: f64,
    /// Time in service at the last clean inspection.
    age: Option<f64>,
    /// The interval in force.
    in_force: Option<f64>,
    /// Where the Weibull's curve is wanted.
    #[serde(default)]
    ages: Vec<f64>,
}

fn one_in_a_hundred() -> f64 {
    0.01
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { findings, chance, age, in_force, ages } = read(input)?;
    let wanted = Wanted { chance, age, in_force };
    let findings = Findings::new(&findings)?;
    let Life { rests_on, turnbull, weibull, inspect } = life(&findings, Some(&wanted))?;
    let survival = turnbull.as_result().ok().map(|found| steps(&findings, found));
    let at = weibull_at(&findings, &ages)?.told().filter(|_| weibull.as_result().is_ok());
    let inspect = inspect.and_then(Told::told);
    let why = [turnbull.as_result().err(), weibull.as_result().err()].into_iter().flatten().next();
    let masses = turnbull.as_result().ok().map(masses);
    Ok(json!({
        "rests_on": rests_on,
        "turnbull": masses.as_ref().map(|(masses, _)| masses),
        "turnbull_log_likelihood": masses.as_ref().map(|(_, likelihood)| likelihood),
        "survival": survival,
        "weibull": weibull.told().map(fit),
        "at": at,
        // With nothing known the interval in force stays as it is.
        "inspect_every": inspect.map_or(in_force, |inspect| Some(inspect.every)),
        "inspect": inspect,
        "chance": chance,
        "too_little": why.map(|why: TooLittle| told(why)),
    }))
}

fn masses(found: &Turnbull) -> (Value, f64) {
    (json!(found.masses), found.log_likelihood)
}

fn fit(found: Weibull) -> Value {
    json!({
        "shape": found.shape,
        "scale": found.scale,
        "log_likelihood": found.log_likelihood,
        "intervals": { "shape": found.shape_interval, "scale": found.scale_interval },
    })
}
