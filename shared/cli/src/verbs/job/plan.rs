//! `job plan`: what doing some jobs means, before anything is signed.

use witnessmark_app::Fault;

use super::{ids, plan_in_words};
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "JOB", required = true, num_args = 1..)]
    did: Vec<String>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let jobs = ids(app, &machine, &args.did)?;
    let plan = app.job_plan(machine, jobs)?;
    Reply::done(plan_in_words(app, &plan), &plan)
}
