//! `job begin`: signs that work was begun; the machine stays on the ground until it is released.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::{ids, in_words};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "JOB", required = true, num_args = 1..)]
    did: Vec<String>,
    #[arg(long, value_name = "TEXT")]
    note: Option<String>,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let jobs = ids(app, &machine, &args.did)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.job_begin(machine, jobs, args.note.unwrap_or_default(), pin)?;
    let job = page.job.as_ref().map(|job| in_words(app, job)).unwrap_or_default();
    let text = format!("{}\n\n{job}", app.say(&Said::new("cli-job-begun")));
    Reply::done(text, &page)
}
