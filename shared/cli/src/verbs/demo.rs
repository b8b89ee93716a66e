//! `demo`: adds the invented machines and prints their ids.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::machine::line;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let mut cards = app.demo()?;
    cards.retain(|card| card.invented);
    let mut text = app.say(&Said::new("cli-demo")) + "\n\n";
    cards.iter().for_each(|card| text.push_str(&line(app, card)));
    Reply::done(text, &cards)
}
