//! `second-look ask`: the text to hand to another person.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let voice = session.voice();
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let ask = app.second_look_ask(machine)?;
    // Beside the text, which goes on as it stands.
    voice.note(&app.say(&Said::new("cli-second-asked")));
    Reply::done(ask.text.clone(), &ask)
}
