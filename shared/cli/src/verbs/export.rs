//! `export`: one machine's records as a file that anyone can verify.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::{self, Reply};
use crate::session::Session;

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
    if args.to.as_os_str() == "-" {
        reply::print(bundle.trim_end())?;
        return Ok(Reply::silent());
    }
    write(&args.to, &bundle)?;
    let said = Said::new("cli-exported").number("records", records as f64).text("file", args.to.display());
    Reply::done(app.say(&said), &json!({ "file": args.to.display().to_string(), "records": records }))
}

/// Writes beside, then moves: a full disk can't leave half a file in a whole one's place.
fn write(to: &std::path::Path, text: &str) -> Result<(), Fault> {
    let fault = |why: std::io::Error| Fault::new("file").text("file", to.display()).text("why", why);
    let mut beside = to.as_os_str().to_owned();
    beside.push(".part");
    let beside = PathBuf::from(beside);
    let written = std::fs::write(&beside, text)
        .and_then(|()| std::fs::File::open(&beside)?.sync_all())
        .and_then(|()| std::fs::rename(&beside, to));
    written.map_err(|why| {
        // Nothing of the half file is worth keeping, and the first fault is the one to tell.
        let _ = std::fs::remove_file(&beside);
        fault(why)
    })
}
