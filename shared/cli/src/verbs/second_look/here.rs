//! `second-look here`: another person of this data folder looks, and signs with their own PIN.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::joints::Joints;
use crate::pin::PinFile;
use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::{job, person};

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "NAME")]
    person: String,
    #[command(flatten)]
    joints: Joints,
    #[command(flatten)]
    pin: PinFile,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.pin.source(session)?;
    let voice = session.voice();
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let person = person::find(app, &args.person)?;
    let joints = app.machine(machine.clone())?.job.map(|job| job.independent).unwrap_or_default();
    // Without a job there is nothing to look at, which the app says in its own words.
    let seen = args.joints.seen(app, &joints, voice)?;
    let pin = pin.of(app, &person.name)?;
    let page = app.second_look_here(machine, person.device, seen, pin)?;
    let job = page.job.as_ref().map(|job| job::in_words(app, job)).unwrap_or_default();
    Reply::done(format!("{}\n\n{job}", app.say(&Said::new("cli-second-here"))), &page)
}
