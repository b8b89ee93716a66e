//! `due done`: signs that what falls due was done, now or at a moment that is said.

use witnessmark_app::Fault;

use super::item;
use super::keep::{Done, kept};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    item: String,
    #[command(flatten)]
    done: Done,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let page = app.machine(machine.clone())?;
    let mut form = item(&page, &args.item)?;
    form.done_hours = page.card.hours;
    form.done_flights = page.card.flights;
    form.done_on = Session::today();
    args.done.put_into(&mut form)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.due_save(machine, Some(form), false, pin)?;
    Reply::done(kept(app, "cli-due-done", &page), &page)
}
