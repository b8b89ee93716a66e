//! `job choices`: the jobs that can be done on a machine.

use witnessmark_app::Fault;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let jobs = app.job_choices(machine)?;
    let lines = jobs.iter().map(|job| format!("{}  {}\n    {}\n", job.id, job.words, job.what));
    Reply::done(lines.collect(), &jobs)
}
