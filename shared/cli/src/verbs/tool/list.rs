//! `tool list`: the torque tools, and whether each may be used today.

use witnessmark_app::Fault;

use super::in_words;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let tools = app.tools()?;
    Reply::done(in_words(app, &tools), &tools)
}
