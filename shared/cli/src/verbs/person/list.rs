//! `person list`: the other people who sign in this data folder.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let people = app.second_people()?;
    let line = |name: &str, device: &str| {
        app.say(&Said::new("cli-key-of").text("name", name).text("device", device))
    };
    let lines: Vec<String> = people.iter().map(|person| line(&person.name, &person.device)).collect();
    let text = if lines.is_empty() { app.say(&Said::new("cli-no-people")) } else { lines.join("\n") };
    Reply::done(text, &people)
}
