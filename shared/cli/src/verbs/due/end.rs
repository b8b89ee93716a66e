//! `due end`: signs that something is no longer kept as falling due.

use witnessmark_app::Fault;

use super::item;
use super::keep::kept;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    item: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let form = item(&app.machine(machine.clone())?, &args.item)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.due_save(machine, Some(form), true, pin)?;
    Reply::done(kept(app, "cli-due-ended", &page), &page)
}
