//! `school vouch`: signs that another device is this person's too, and prints the text to show it.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "CODE|@FILE")]
    code: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let text = reading::text(&args.code)?;
    let app = session.open()?;
    let who = app.school_applicant(text.clone())?;
    voice.note(&app.say(&Said::new("cli-applicant").text("name", &who.name).text("code", &who.code)));
    let pin = args.signing.pin(&pin, app)?;
    let answer = app.school_vouch(text, pin)?;
    voice.note(&app.say(&Said::new("cli-answer")));
    Reply::done(answer.text.clone(), &answer)
}
