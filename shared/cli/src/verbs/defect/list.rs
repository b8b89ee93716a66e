//! `defect list`: what is open on a machine.

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
    let open = app.machine(machine)?.open;
    let text = match open.as_slice() {
        [] => app.say(&Said::new("cli-nothing-open")),
        open => in_words(app, open).join("\n"),
    };
    Reply::done(text, &open)
}
