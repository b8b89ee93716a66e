//! `component fit`: fits a component that is new here, with the time in service it brings; signed.

use witnessmark_app::{App, Fault};
use witnessmark_core::record::Service;

use super::signed;
use crate::naming;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    part: String,
    #[arg(id = "component-name", value_name = "NAME")]
    name: String,
    #[arg(id = "serial-number", long = "serial", value_name = "NUMBER")]
    serial: Option<String>,
    #[arg(id = "own-hours", long = "hours", value_name = "H")]
    hours: Option<f64>,
    #[arg(id = "own-flights", long = "flights", value_name = "N")]
    flights: Option<u32>,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let part = part(app, &machine, &args.part)?;
    let own = Service {
        hours: args.hours.unwrap_or_default(),
        flights: args.flights.unwrap_or_default(),
        tanks: 0,
    };
    let pin = args.signing.pin(&pin, app)?;
    let serial = args.serial.unwrap_or_default();
    let page = app.component_fit(machine, part, args.name, serial, Some(own), pin)?;
    Reply::done(signed(app, "cli-component-fitted", &page), &page)
}

/// The part's id, among those of the machine's engine type.
fn part(app: &mut App, machine: &str, named: &str) -> Result<String, Fault> {
    let engine = app.machine(machine.to_owned())?.description.engine;
    let engines = app.choices()?.engines;
    let parts = engines.into_iter().find(|known| known.id == engine).map(|known| known.parts);
    naming::one(named, parts.unwrap_or_default().into_iter().map(|part| (part.id, part.words)).collect())
}
