//! `defect defer`: signs that a defect may wait, within limits and under a condition.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::show;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    point: String,
    #[arg(long, value_name = "H")]
    until_hours: Option<f64>,
    #[arg(long, value_name = "N")]
    until_flights: Option<u32>,
    #[arg(long, value_name = "DATE")]
    until_date: Option<String>,
    #[arg(long, value_name = "TEXT")]
    condition: String,
    #[arg(id = "why-wait", long = "reason", value_name = "TEXT")]
    reason: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let pin = args.signing.pin(&pin, app)?;
    let Args { point, until_hours, until_flights, until_date, condition, reason, .. } = args;
    let page = app.defer(machine, point, until_hours, until_flights, until_date, condition, reason, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-deferred")), show::in_words(app, &page));
    Reply::done(text, &page)
}
