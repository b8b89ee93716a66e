//! `rebuild`: throws away what was derived from the records, and derives it anew.

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    app.rebuild()?;
    let machines = app.machines()?.len();
    let said = Said::new("cli-rebuilt").number("machines", machines as f64);
    Reply::done(app.say(&said), &json!({ "machines": machines }))
}
