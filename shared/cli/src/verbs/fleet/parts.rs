//! `fleet parts`: types of component of which lives can be told.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::part_in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let parts = app.life_parts()?;
    let text = match parts.as_slice() {
        [] => app.say(&Said::new("cli-fleet-nothing")),
        parts => parts.iter().map(|part| part_in_words(app, part)).collect::<Vec<_>>().join("\n"),
    };
    Reply::done(text, &parts)
}
