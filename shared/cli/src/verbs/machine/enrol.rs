//! `machine enrol`: puts a machine under the school's roles, signed.

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
    let page = app.machine_enrol(machine, true, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-enrolled")), super::in_words(app, &page.card));
    Reply::done(text, &page)
}
