//! `defect rectify`: signs that what is open at a point was put right.

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
    #[arg(long, value_name = "TEXT")]
    how: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.rectify(machine, args.point, args.how, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-rectified")), show::in_words(app, &page));
    Reply::done(text, &page)
}
