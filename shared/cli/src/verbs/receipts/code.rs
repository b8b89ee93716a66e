//! `receipts code`: what to show another device, so that both can tell whether the server tells them
//! the same.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let voice = session.voice();
    let app = session.open()?;
    let code = app.checkpoint_code()?;
    voice.note(&app.say(&Said::new("cli-receipts-code")));
    Reply::done(code.text.clone(), &code)
}
