//! `person begin`: first start of this data folder as another device of a person who has one.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::pin::PinFile;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "CODE|@FILE")]
    code: String,
    #[command(flatten)]
    pin: PinFile,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.pin.source(session)?;
    let text = reading::text(&args.code)?;
    let app = session.open()?;
    // Before a PIN is thought of: a code that can't be read, or a device that has its key.
    let name = app.school_applicant(text.clone())?.name;
    if app.start()?.person.is_some() {
        return Err(Fault::new("already-begun"));
    }
    let chosen = pin.chosen(app, &name)?;
    let start = app.begin_as(text, chosen)?;
    Reply::done(app.say(&Said::new("cli-begun-as").text("name", name)), &start)
}
