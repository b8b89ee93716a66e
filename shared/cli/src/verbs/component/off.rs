//! `component off`: takes a component off a machine; signed.

use witnessmark_app::Fault;

use super::{find, signed};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    component: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let component = find(&app.machine(machine.clone())?, &args.component)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.component_move(machine, component, None, pin)?;
    Reply::done(signed(app, "cli-component-taken-off", &page), &page)
}
