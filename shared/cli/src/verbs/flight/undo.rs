//! `flight undo`: takes back the time logged last, while nobody has signed it.

use witnessmark_app::Fault;

use super::in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let page = app.log_undo(machine)?;
    Reply::done(in_words(app, "cli-log-undone", &page), &page)
}
