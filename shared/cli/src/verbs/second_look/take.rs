//! `second-look take`: takes what another person saw.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reading;
use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::job;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(value_name = "TEXT|@FILE")]
    text: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let text = reading::text(&args.text)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let page = app.second_look_take(machine, text)?;
    let job = page.job.as_ref().map(|job| job::in_words(app, job)).unwrap_or_default();
    Reply::done(format!("{}\n\n{job}", app.say(&Said::new("cli-second-taken"))), &page)
}
