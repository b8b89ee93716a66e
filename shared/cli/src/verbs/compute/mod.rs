//! `compute`: one computation, JSON in and out. A new one is a file here and a line in [`ALL`].

mod all_up;
mod bands;
mod bolt_limit;
mod clamp_load;
mod convert;
mod density_altitude;
mod due;
mod endurance;
mod fuel_mix;
mod life;
mod merkle_root;
mod prevailing;
mod refit;
mod strip_area;
mod tightening_plan;
mod too_little;
mod torque_at_fastener;
mod trend;
mod wind_limit;
mod wrench_setting;

use std::io::Read;

use serde::de::DeserializeOwned;
use serde_json::Value;
use witnessmark_app::Fault;
use witnessmark_core::units::{Quantity, Unit};

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    computation: String,
}

/// A computation by name.
struct Computation {
    name: &'static str,
    /// An input that computes: shown where one can't be used, and tried by a test.
    example: &'static str,
    run: fn(Value) -> Result<Value, Wrong>,
}

const ALL: &[Computation] = &[
    wrench_setting::IT,
    torque_at_fastener::IT,
    prevailing::IT,
    bolt_limit::IT,
    clamp_load::IT,
    strip_area::IT,
    tightening_plan::IT,
    refit::IT,
    due::IT,
    trend::IT,
    life::IT,
    density_altitude::IT,
    all_up::IT,
    fuel_mix::IT,
    endurance::IT,
    wind_limit::IT,
    merkle_root::IT,
    convert::IT,
];

/// Why an input can't be used.
struct Wrong(String);

impl<E: std::error::Error> From<E> for Wrong {
    fn from(why: E) -> Self {
        Self(why.to_string())
    }
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    // Programs ask here: faults and answers are JSON, asked for or not.
    session.json = true;
    let computation = ALL.iter().find(|known| known.name == args.computation).ok_or_else(|| {
        let known: Vec<&str> = ALL.iter().map(|known| known.name).collect();
        Fault::new("no-such-computation").text("name", &args.computation).text("known", known.join(", "))
    })?;
    let mut text = String::new();
    std::io::stdin()
        .lock()
        .read_to_string(&mut text)
        .map_err(|why| Fault::new("file").text("file", "standard input").text("why", why))?;
    let help = session
        .unkept()?
        .say(&witnessmark_core::said::Said::new("cli-compute-example").text("example", computation.example));
    let computed = serde_json::from_str(&text).map_err(Wrong::from).and_then(computation.run);
    let value = computed.map_err(|Wrong(why)| Fault::new("input").text("why", why).text("help", help))?;
    Reply::done(String::new(), &value)
}

/// Reads an input; what is wrong in it is told with the member's name.
fn read<T: DeserializeOwned>(input: Value) -> Result<T, Wrong> {
    // Members are named: a bare list of values would be taken in whatever order it has.
    if !input.is_object() {
        return Err(Wrong("this is not a JSON object".into()));
    }
    serde_path_to_error::deserialize(input).map_err(|why| match why.path().to_string() {
        path if path == "." => Wrong(why.inner().to_string()),
        path => Wrong(format!("{path}: {}", why.inner())),
    })
}

/// The same in the coherent SI unit of its dimension.
fn si(quantity: Quantity) -> Result<Quantity, Wrong> {
    let coherent = |unit: &&Unit| {
        unit.dimension() == quantity.unit.dimension()
            && Quantity::new(0.0, **unit).si() == Ok(0.0)
            && Quantity::new(1.0, **unit).si() == Ok(1.0)
    };
    let unit = Unit::ALL.iter().find(coherent).copied().unwrap_or(quantity.unit);
    Ok(quantity.to(unit)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_example_computes() {
        for computation in ALL {
            let input = serde_json::from_str(computation.example).unwrap();
            let computed = (computation.run)(input);
            assert!(computed.is_ok(), "{}", computation.name);
        }
    }
}
