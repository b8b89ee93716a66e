//! `release`: signs that the open job's inspections are complete. Exit 1 while it lacks something.

use serde_json::json;
use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::{job, verdict};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    // All that is lacking is told before a PIN is asked that couldn't sign anything.
    if let Some(job) = app.machine(machine.clone())?.job.filter(|job| !job.ready) {
        let text = format!("{}\n\n{}", app.say(&Said::new("cli-not-released")), job::in_words(app, &job));
        return Reply::answer(false, text, &json!({ "released": false, "lacks": job.lacks, "job": job }));
    }
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.job_release(machine, pin)?;
    let verdict = verdict::in_words(app, &page.card.verdict);
    let text = format!("{}\n\n{}\n{verdict}", app.say(&Said::new("cli-released")), page.card.name);
    Reply::done(text, &json!({ "released": true, "lacks": [], "machine": page }))
}
