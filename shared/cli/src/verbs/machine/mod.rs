//! `machine`: registering machines and listing them.

mod list;

use clap::Subcommand;
use witnessmark_app::views::MachineCard;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[command(subcommand)]
    verb: Verb,
}

#[derive(Subcommand)]
enum Verb {
    List(list::Args),
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    match args.verb {
        Verb::List(args) => list::run(args, session),
    }
}

/// A machine in two lines: what it is called and its id, then its verdict.
pub fn line(app: &App, card: &MachineCard) -> String {
    let said = Said::new("cli-machine")
        .text("name", &card.name)
        .text("id", &card.id)
        .text("engine", &card.engine)
        .text("hours", format!("{:.1}", card.hours))
        .number("flights", card.flights);
    let invented = if card.invented { app.say(&Said::new("cli-invented")) } else { String::new() };
    let walk = card.walk.as_ref().map_or_else(String::new, |walk| {
        let said = Said::new("cli-machine-walk");
        let said = said.text("list", &walk.words).number("done", walk.done).number("of", walk.of);
        format!("  {}\n", app.say(&said))
    });
    format!("{}{invented}\n  {}\n{walk}", app.say(&said), card.verdict.headline)
}
