//! `walk`: asks each point, resumes, and signs. Exit 1 when the verdict after signing is grounded.

mod answers;
mod closing;

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "LIST", default_value = "before-flight")]
    occasion: String,
    #[arg(long, value_name = "FILE")]
    answers: Option<PathBuf>,
    #[arg(long, requires = "answers")]
    leave_missing: bool,
    #[arg(long)]
    no_sign: bool,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    // Before the first point: nobody should find out at the last one that nothing can be signed.
    let pin = if args.no_sign { None } else { Some(args.signing.source()?) };
    let quiet = session.json;
    let given = args.answers.as_deref().map(answers::read).transpose()?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let walk = app.walk(machine, args.occasion)?;
    let walk_id = walk.id.clone();
    match given {
        Some(given) => answers::give(app, &walk, &given, args.leave_missing, quiet)?,
        None => return Err(Fault::new("internal").text("why", "not yet")),
    }
    let summary = app.summary(walk_id.clone())?;
    let Some(pin) = pin else { return closing::unsigned(app, &walk, &summary) };
    let pin = args.signing.pin(pin, app)?;
    closing::sign(app, walk_id, pin, &summary)
}
