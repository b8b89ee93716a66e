//! `export`: one machine's records as a file that anyone can verify; or everything of this data folder.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::{self, Reply};
use crate::session::Session;
use crate::writing;

#[derive(clap::Args)]
pub struct Args {
    #[arg(required_unless_present = "all")]
    machine: Option<String>,
    #[arg(required_unless_present = "all")]
    to: Option<PathBuf>,
    #[arg(long, value_name = "FILE", conflicts_with_all = ["machine", "to"])]
    all: Option<PathBuf>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let bundle = match &args.machine {
        Some(machine) => {
            let machine = app.find_machine(machine)?;
            app.export(machine)?.text
        }
        None => app.export_all()?.text,
    };
    let to = args.all.or(args.to).unwrap_or_else(|| "-".into());
    let records = bundle.lines().count();
    if writing::is_output(&to) {
        reply::print(bundle.trim_end())?;
        return Ok(Reply::silent());
    }
    writing::write(&to, bundle.as_bytes())?;
    let said = Said::new("cli-exported").number("records", records as f64).text("file", to.display());
    Reply::done(app.say(&said), &json!({ "file": to.display().to_string(), "records": records }))
}
