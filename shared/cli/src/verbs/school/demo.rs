//! `school demo`: founds the demonstration's invented school in this data folder, with a season of history.

use witnessmark_app::Fault;

use super::words::in_words;
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
    let view = app.demo_school(pin)?;
    Reply::done(in_words(app, &view), &view)
}
