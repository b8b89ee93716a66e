//! `csv`: everything of one machine as a table, a row a fact.

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::reply::Reply;
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
    let paper = app.csv(machine)?;
    writing::paper(app, &args.to, &paper)
}
