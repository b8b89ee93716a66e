//! `school leave`: leaves the school; this person's machines go with them, what was signed stays.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.school_leave(pin)?;
    Reply::done(app.say(&Said::new("cli-left-school")), &view)
}
