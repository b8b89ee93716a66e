//! `school sign-in`: confirms a sign-in at the school's board.

use std::sync::Mutex;

use witnessmark_app::Fault;
use witnessmark_core::said::Said;
use witnessmark_host::{Net, net};

use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "board-code", value_name = "CODE|@FILE")]
    code: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let code = reading::text(&args.code)?;
    let app = session.open()?;
    let asked = app.desk_open(code.clone())?;
    let where_ = Said::new("cli-desk-where").text("school", &asked.school).text("address", &asked.address);
    voice.progress(&format!("{}\n{}", app.say(&where_), asked.words))?;
    // The PIN is the word of agreement.
    let pin = args.signing.pin(&pin, app)?;
    let view = net::confirm(&Mutex::new(&mut *app), &Net::default(), &code, &pin)?;
    Reply::done(app.say(&Said::new("cli-signed-in")), &view)
}
