//! `component move`: takes a component off one machine and fits it to another, its own time kept.

use witnessmark_app::Fault;

use super::{find, signed};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    component: String,
    #[arg(id = "other-machine", value_name = "OTHER")]
    to: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let to = app.find_machine(&args.to)?;
    let component = find(&app.machine(machine.clone())?, &args.component)?;
    let pin = args.signing.pin(&pin, app)?;
    app.component_move(machine, component, Some(to.clone()), pin)?;
    // Where it is now is what is asked next.
    let page = app.machine(to)?;
    Reply::done(signed(app, "cli-component-moved", &page), &page)
}
