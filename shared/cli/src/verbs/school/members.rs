//! `school members`: everybody who is or was a member.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::words::members_in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let view = app.school()?;
    let text = match view.school {
        None => app.say(&Said::new("cli-no-school")),
        Some(_) => members_in_words(app, &view.members),
    };
    Reply::done(text, &view.members)
}
