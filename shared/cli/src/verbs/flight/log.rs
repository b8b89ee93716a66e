//! `flight log`: hours, flights and tanks added, or the hour meter's reading.

use witnessmark_app::Fault;
use witnessmark_core::record::Service;

use super::in_words;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(id = "ran", long = "hours", value_name = "H", conflicts_with = "reading")]
    hours: Option<f64>,
    #[arg(id = "flown", long = "flights", value_name = "N")]
    flights: Option<u32>,
    #[arg(long, action = clap::ArgAction::Count)]
    tank: u8,
    #[arg(long, value_name = "H")]
    reading: Option<f64>,
    #[arg(id = "burned", long = "fuel", value_name = "Q")]
    fuel: Option<String>,
    #[arg(long, value_name = "TEXT")]
    note: Option<String>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let fuel = args.fuel.as_deref().map(|fuel| reading::quantity(fuel, None)).transpose()?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let added = Service {
        hours: args.hours.unwrap_or_default(),
        flights: args.flights.unwrap_or_default(),
        tanks: args.tank.into(),
    };
    let page = app.log_time(machine, Some(added), args.reading, args.note.unwrap_or_default(), fuel)?;
    Reply::done(in_words(app, "cli-logged", &page), &page)
}
