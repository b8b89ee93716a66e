//! `school create`: founds a school; this data folder becomes its root.

use witnessmark_app::Fault;

use super::words::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "school-name", value_name = "NAME")]
    name: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.school_found(args.name, pin)?;
    Reply::done(in_words(app, &view), &view)
}
