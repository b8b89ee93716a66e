//! `tool change`: describes a torque tool anew, signed; what isn't said stays as it was.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::described::Described;
use super::{find, in_words};
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    tool: String,
    #[command(flatten)]
    described: Described,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let before = find(app, &args.tool)?;
    let mut kept = before.kept.clone();
    // A description counts clicks from its own moment: those that were counted since go into it.
    kept.cycles = before.cycles;
    let mut said = kept.clone();
    args.described.put_into(&mut said)?;
    if said == kept {
        return Err(Fault::new("tool-unchanged"));
    }
    let pin = args.signing.pin(&pin, app)?;
    let tools = app.tool_save(Some(said), pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-tool-changed")), in_words(app, &tools));
    Reply::done(text, &tools)
}
