//! `school show`: this device's place in a school.

use witnessmark_app::Fault;

use super::words::in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let view = app.school()?;
    Reply::done(in_words(app, &view), &view)
}
