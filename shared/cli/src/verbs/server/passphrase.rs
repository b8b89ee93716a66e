//! `board-passphrase`: a passphrase with which somebody may look at the board, or none.

use std::path::PathBuf;

use serde_json::json;
use witnessmark_app::{Fault, Platform};
use witnessmark_core::said::Said;
use witnessmark_host::System;
use witnessmark_server::board::passphrase::{LEAST, set};
use witnessmark_server::school::School;

use super::at::At;
use super::faults::told;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "passphrase-file", value_name = "FILE", required_unless_present = "off")]
    file: Option<PathBuf>,
    #[arg(long, conflicts_with = "passphrase-file")]
    off: bool,
    #[command(flatten)]
    at: At,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let words = match &args.file {
        None => None,
        Some(file) => {
            let text = String::from_utf8_lossy(&reading::bytes(file)?).into_owned();
            let line = text.lines().next().unwrap_or_default().trim().to_owned();
            if line.chars().count() < LEAST {
                return Err(Fault::new("passphrase-short").number("least", LEAST as f64));
            }
            Some(line)
        }
    };
    let school = School::open(args.at.open(session)?).map_err(told)?;
    set(&school, words.as_deref(), System::bare().now().timestamp()).map_err(told)?;
    let said = Said::new(if words.is_some() { "cli-passphrase-set" } else { "cli-passphrase-off" });
    Reply::done(session.unkept()?.say(&said), &json!({ "set": words.is_some() }))
}
