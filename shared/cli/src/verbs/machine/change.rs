//! `machine change`: describes a machine anew, signed; what isn't said stays as it was.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::described::Described;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "NAME")]
    name: Option<String>,
    #[arg(long, value_name = "ID")]
    engine: Option<String>,
    #[command(flatten)]
    described: Described,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let id = app.find_machine(&args.machine)?;
    let before = app.machine(id.clone())?.description;
    let mut machine = before.clone();
    machine.name = args.name.unwrap_or(machine.name);
    machine.engine = args.engine.unwrap_or(machine.engine);
    args.described.put_into(&mut machine)?;
    if machine == before {
        return Err(Fault::new("nothing-changed"));
    }
    let pin = args.signing.pin(&pin, app)?;
    let page = app.machine_save(id, Some(machine), pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-changed")), super::in_words(app, &page.card));
    Reply::done(text, &page)
}
