//! `receipts compare`: compares what another device shows.

use witnessmark_app::Fault;

use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "CODE|@FILE")]
    code: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let text = reading::text(&args.code)?;
    let view = session.open()?.checkpoint_compare(text)?;
    Reply::done(view.words.clone(), &view)
}
