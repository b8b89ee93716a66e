//! `confirm-limit`: signs a limit as the maker's manual has it.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::show::in_words;
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    band: String,
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    low: Option<String>,
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    high: Option<String>,
    #[arg(long, value_name = "TEXT")]
    document: String,
    #[arg(long, value_name = "TEXT")]
    page: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let read = |end: &Option<String>| end.as_deref().map(|text| reading::quantity(text, None)).transpose();
    let (low, high) = (read(&args.low)?, read(&args.high)?);
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.confirm_limit(machine, args.band, low, high, args.document, args.page, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-limit-confirmed")), in_words(app, &page));
    Reply::done(text, &page)
}
