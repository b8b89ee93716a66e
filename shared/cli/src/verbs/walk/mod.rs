//! `walk`: asks each point, resumes, and signs. Exit 1 when the verdict after signing is grounded.

mod answers;
mod bench;
mod closing;
mod showing;
mod talk;
mod tightened;
mod typed;

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;
use talk::{End, Talk};

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
    let pin = if args.no_sign { None } else { Some(args.signing.source(session)?) };
    let given = args.answers.as_deref().map(answers::read).transpose()?;
    let voice = session.voice();
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let walk = app.walk(machine, args.occasion)?;
    let id = walk.id.clone();
    let end = match given {
        Some(given) => {
            answers::give(app, &walk, &given, args.leave_missing, voice)?;
            let summary = app.summary(id.clone())?;
            voice.progress(&closing::said_back(app, &walk, &summary))?;
            End::Sign
        }
        None => Talk::new(app, walk, voice, pin.is_some())?.run()?,
    };
    match (pin, end) {
        (Some(pin), End::Sign) => closing::sign(app, id, &pin, &args.signing),
        _ => closing::unsigned(app, id),
    }
}
