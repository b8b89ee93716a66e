//! `school file`: what a server needs to serve this school.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::{self, Reply};
use crate::session::Session;
use crate::writing;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "school-file", short = 'o', long = "to", value_name = "FILE", default_value = "-")]
    to: PathBuf,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let file = app.school_file()?;
    if writing::is_output(&args.to) {
        reply::print(file.text.trim_end())?;
        return Ok(Reply::silent());
    }
    writing::write(&args.to, file.text.as_bytes())?;
    let said = Said::new("cli-written").text("file", args.to.display());
    Reply::done(app.say(&said), &json!({ "file": args.to.display().to_string() }))
}
