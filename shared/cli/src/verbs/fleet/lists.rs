//! `fleet lists`: what the points of the lists are worth.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let worth = app.list_worth()?;
    if worth.points.is_empty() {
        return Reply::done(app.say(&Said::new("cli-fleet-nothing")), &worth);
    }
    let rows =
        worth.points.iter().map(|point| format!("{} [{}]\n  {}\n", point.title, point.point, point.words));
    let text = format!("{}\n{}\n", rows.collect::<String>(), worth.caution);
    Reply::done(text, &worth)
}
