//! `school end`: ends a membership; what the person signed stands.

use witnessmark_app::Fault;

use super::naming;
use super::words::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "member")]
    person: String,
    #[arg(id = "why-end", long = "why", value_name = "TEXT")]
    why: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let person = naming::person(&app.school()?, &args.person)?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.school_end(person, args.why, pin)?;
    Reply::done(in_words(app, &view), &view)
}
