//! `demo`: adds the invented machines and prints their ids; or founds the invented school with its season.

use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use super::machine::in_words;
use super::school;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "demo-school", long = "school")]
    school: bool,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    if !args.school {
        return machines(session.open()?);
    }
    let pin = args.signing.source(session)?;
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.demo_school(pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-demo")), school::in_words(app, &view));
    Reply::done(text, &view)
}

fn machines(app: &mut App) -> Result<Reply, Fault> {
    let mut cards = app.demo()?;
    cards.retain(|card| card.invented);
    let machines: Vec<String> = cards.iter().map(|card| in_words(app, card)).collect();
    Reply::done(format!("{}\n\n{}", app.say(&Said::new("cli-demo")), machines.join("\n")), &cards)
}
