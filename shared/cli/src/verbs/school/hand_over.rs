//! `school hand-over`: hands the root over to a member's device.

use witnessmark_app::Fault;

use super::naming;
use super::words::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    device: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let device = naming::device(&app.school()?, &args.device)?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.school_hand(device, pin)?;
    Reply::done(in_words(app, &view), &view)
}
