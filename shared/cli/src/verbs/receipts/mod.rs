//! `receipts`: checks all that the server signed for. Exit 1 when it doesn't fit.

mod code;
mod compare;

use witnessmark_app::Fault;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[command(subcommand)]
    verb: Option<Verb>,
}

#[derive(clap::Subcommand)]
enum Verb {
    Code(code::Args),
    Compare(compare::Args),
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    match args.verb {
        Some(Verb::Code(args)) => code::run(args, session),
        Some(Verb::Compare(args)) => compare::run(args, session),
        None => {
            let view = session.open()?.receipts()?;
            Reply::answer(view.good, view.words.clone(), &view)
        }
    }
}
