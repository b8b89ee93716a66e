//! `school role`: gives a member another role, or another last day.

use witnessmark_app::Fault;
use witnessmark_core::record::Role;

use super::words::in_words;
use super::{naming, roles};
use crate::pin::Signing;
use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "member")]
    person: String,
    #[arg(value_parser = roles::parser())]
    role: Role,
    #[arg(long, value_name = "DATE")]
    until: Option<String>,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let until = args.until.as_deref().map(reading::day).transpose()?.map(|day| day.to_string());
    let app = session.open()?;
    let person = naming::person(&app.school()?, &args.person)?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.school_role(person, Some(args.role), until, pin)?;
    Reply::done(in_words(app, &view), &view)
}
