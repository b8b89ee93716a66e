//! `backup`: writes all that a server keeps to a file, while it runs.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::at::At;
use super::{faults, kept};
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "backup-to", value_name = "FILE")]
    to: PathBuf,
    #[command(flatten)]
    at: At,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let shelf = args.at.open(session)?;
    let kept = shelf.backup(&args.to).map_err(faults::kept)?;
    let app = session.unkept()?;
    let file = args.to.display().to_string();
    let said = app.say(&Said::new("cli-backed-up").text("file", &file));
    let text = format!("{said}\n{}", kept::in_words(app, &kept));
    Reply::done(text, &json!({ "file": file, "schools": kept::told(&kept) }))
}
