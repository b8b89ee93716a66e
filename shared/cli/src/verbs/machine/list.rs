//! `machine list`: all machines, those that need a person first.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let cards = app.machines()?;
    let text = match cards.as_slice() {
        [] => app.say(&Said::new("cli-no-machines")),
        cards => cards.iter().map(|card| super::in_words(app, card)).collect::<Vec<_>>().join("\n"),
    };
    Reply::done(text, &cards)
}
