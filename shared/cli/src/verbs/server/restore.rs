//! `restore`: fills an empty server from a backup: all of it, or nothing.

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
    #[arg(id = "backup-from", value_name = "FILE")]
    from: PathBuf,
    #[command(flatten)]
    at: At,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let shelf = args.at.open(session)?;
    let kept = shelf.restore(&args.from).map_err(faults::kept)?;
    let app = session.unkept()?;
    let file = args.from.display().to_string();
    let said = app.say(&Said::new("cli-restored").text("file", &file));
    let text = format!("{said}\n{}", kept::in_words(app, &kept));
    Reply::done(text, &json!({ "file": file, "schools": kept::told(&kept) }))
}
