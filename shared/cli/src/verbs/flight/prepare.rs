//! `flight prepare`: load, fuel, air and wind before a flight. Exit 1 when it grounds the machine.

use std::path::{Path, PathBuf};

use serde_json::Value;
use witnessmark_app::views::{FlightForm, FlightView};
use witnessmark_app::{App, Fault};
use witnessmark_core::record::FlightPlanned;
use witnessmark_core::said::Said;

use super::verdict;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

/// A plan with every part in it, for whoever begins from nothing.
const EXAMPLE: &str = r#"{
  "load": {
    "loads": {
      "pilot": { "value": 88, "unit": "kg" },
      "machine": { "value": 32, "unit": "kg" },
      "fuel": { "value": 10, "unit": "L" },
      "ballast": { "value": 0, "unit": "kg" }
    },
    "wing": { "with_motor": { "low": { "value": 95, "unit": "kg" }, "high": { "value": 140, "unit": "kg" } } }
  },
  "mix": {
    "mix": {
      "in_tank": { "value": 2, "unit": "L" },
      "ratio_in_tank": 50,
      "target_ratio": 50,
      "add_fuel": { "value": 8, "unit": "L" }
    },
    "oil": { "value": 160, "unit": "mL" }
  },
  "fuel": {
    "on_board": { "value": 10, "unit": "L" },
    "burns": [{ "used": { "value": 3.2, "unit": "L" }, "time": { "value": 1, "unit": "h" } }],
    "reserve": { "value": 0.5, "unit": "h" },
    "flight_time": { "value": 1.5, "unit": "h" }
  },
  "air": {
    "pressure": {
      "altimeter": { "elevation": { "value": 310, "unit": "m" }, "setting": { "value": 1019, "unit": "hPa" } }
    },
    "temperature": { "value": 16, "unit": "Cel" },
    "dew_point": { "value": 9, "unit": "Cel" }
  },
  "wind": {
    "wind": { "mean": { "value": 8, "unit": "km/h" }, "gust": { "value": 12, "unit": "km/h" } },
    "limits": { "mean": { "value": 18, "unit": "km/h" }, "gust": null, "gust_factor": null }
  }
}"#;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(id = "plan", long = "file", value_name = "FILE")]
    file: Option<PathBuf>,
    #[arg(long, requires = "plan")]
    check: bool,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let plan = args.file.as_deref().map(read).transpose()?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let Some(plan) = plan else {
        let form = app.flight_form(machine)?;
        return Reply::done(known(app, &form)?, &form);
    };
    let done = if args.check { "cli-flight-judged" } else { "cli-flight-kept" };
    let view = match args.check {
        true => app.flight_judge(machine.clone(), Some(plan))?,
        false => app.flight_keep(machine.clone(), Some(plan))?,
    };
    let name = app.machine(machine)?.card.name;
    let text = format!("{name}: {}\n\n{}", app.say(&Said::new(done)), in_words(app, &view));
    Reply::answer(verdict::may_fly(&view.verdict), text, &view)
}

/// Reads a plan. When it is worked out goes without saying: now.
fn read(file: &Path) -> Result<FlightPlanned, Fault> {
    let wrong = |why: String| Fault::new("plan-file").text("file", file.display()).text("why", why);
    let text = String::from_utf8_lossy(&reading::bytes(file)?).into_owned();
    let plan = worked_out_now(&text).map_err(wrong)?;
    serde_path_to_error::deserialize(plan).map_err(|why| match why.path().to_string() {
        path if path == "." => wrong(why.inner().to_string()),
        path => wrong(format!("{path}: {}", why.inner())),
    })
}

fn worked_out_now(text: &str) -> Result<Value, String> {
    let mut plan: Value = serde_json::from_str(text).map_err(|why| why.to_string())?;
    let members = plan.as_object_mut().ok_or("this is not a JSON object")?;
    members.entry("at").or_insert_with(|| Session::now().to_rfc3339().into());
    Ok(plan)
}

/// What comes of a plan: what can't be, what to pour, and the verdict with every reason.
fn in_words(app: &App, view: &FlightView) -> String {
    let mut text = String::new();
    for fault in &view.faults {
        text.push_str(&format!("{}\n", fault.words));
    }
    if let Some(pour) = &view.pour {
        text.push_str(&format!("{}\n", app.say(&Said::new("cli-flight-pour").text("oil", &pour.words))));
    }
    if !text.is_empty() {
        text.push('\n');
    }
    text + &verdict::in_words(app, &view.verdict)
}

/// What is known before anything is entered, and the plan as it stands: as JSON, to be changed and given back.
fn known(app: &App, form: &FlightForm) -> Result<String, Fault> {
    let said = Said::new(if form.today { "cli-flight-today" } else { "cli-flight-known" });
    let mut text = format!("{}: {}\n\n", form.machine_name, app.say(&said));
    let mixes = form.ratio_words.iter().filter(|_| form.mixes);
    let burns = Some(&form.burns_words).filter(|_| form.burns_fuel);
    for words in mixes.chain(burns) {
        text.push_str(&format!("{words}\n"));
    }
    let example = app.say(&Said::new("cli-flight-example"));
    Ok(format!("{text}{}\n\n{example}\n{EXAMPLE}", serde_json::to_string_pretty(&form.plan)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_example_is_a_plan() {
        let plan: FlightPlanned = serde_json::from_value(worked_out_now(EXAMPLE).unwrap()).unwrap();
        assert!(plan.load.is_some() && plan.mix.is_some() && plan.fuel.is_some());
        assert!(plan.air.is_some() && plan.wind.is_some());
    }
}
