//! `person add`: another person who signs in this data folder, with a PIN of their own.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::pin::PinFile;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "person-name", value_name = "NAME")]
    name: String,
    #[command(flatten)]
    pin: PinFile,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.pin.source(session)?;
    let app = session.open()?;
    // Before a PIN is thought of: nobody can be second where nobody is first.
    if app.start()?.person.is_none() {
        return Err(Fault::new("not-begun"));
    }
    let chosen = pin.chosen(app, &args.name)?;
    let people = app.second_person_add(args.name.clone(), chosen)?;
    Reply::done(app.say(&Said::new("cli-person-added").text("name", args.name.trim())), &people)
}
