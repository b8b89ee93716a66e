//! `school code`: what this device shows to be admitted, or to be known as its holder's.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let voice = session.voice();
    let app = session.open()?;
    let code = app.school_code()?;
    let spoken = app.school()?.code;
    // Beside the text, which goes on as it stands.
    voice.note(&app.say(&Said::new("cli-code-shown").text("code", spoken)));
    Reply::done(code.text.clone(), &code)
}
