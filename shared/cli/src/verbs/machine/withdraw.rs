//! `machine withdraw`: takes a machine out of the school, signed.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

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
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.machine_enrol(machine, false, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-withdrawn")), super::in_words(app, &page.card));
    Reply::done(text, &page)
}
