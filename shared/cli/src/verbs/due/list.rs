//! `due list`: what falls due on a machine, nearest first.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

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
    let due = app.machine(machine)?.due;
    let text = match due.as_slice() {
        [] => app.say(&Said::new("cli-nothing-due")),
        due => in_words(app, due).join("\n"),
    };
    Reply::done(text, &due)
}
