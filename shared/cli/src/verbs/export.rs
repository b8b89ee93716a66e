//! `export`: one machine's records as a file that anyone can verify.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::{self, Reply};
use crate::session::Session;
use crate::writing;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    to: PathBuf,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let bundle = app.export(machine)?.text;
    let records = bundle.lines().count();
    if writing::is_output(&args.to) {
        reply::print(bundle.trim_end())?;
        return Ok(Reply::silent());
    }
    writing::write(&args.to, bundle.as_bytes())?;
    let said = Said::new("cli-exported").number("records", records as f64).text("file", args.to.display());
    Reply::done(app.say(&said), &json!({ "file": args.to.display().to_string(), "records": records }))
}
