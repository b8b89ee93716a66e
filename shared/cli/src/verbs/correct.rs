//! `correct`: signs a later word on a finding; the first word stays as it was signed.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use super::show::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    record: String,
    point: String,
    answer: String,
    #[arg(long, value_name = "TEXT")]
    reason: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let record = app.find_record(&args.record)?;
    let pin = args.signing.pin(&pin, app)?;
    let page = app.correct(record, args.point, args.answer, args.reason, pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-corrected")), in_words(app, &page));
    Reply::done(text, &page)
}
