//! `demo`: adds the invented machines and prints their ids.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::machine::in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let mut cards = app.demo()?;
    cards.retain(|card| card.invented);
    let machines: Vec<String> = cards.iter().map(|card| in_words(app, card)).collect();
    Reply::done(format!("{}\n\n{}", app.say(&Said::new("cli-demo")), machines.join("\n")), &cards)
}
