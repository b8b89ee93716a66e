//! `machine`: registering machines, describing them anew, listing them.

mod add;
mod change;
mod described;
mod engines;
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
    Add(add::Args),
    Change(change::Args),
    List(list::Args),
    Engines(engines::Args),
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    match args.verb {
        Verb::Add(args) => add::run(args, session),
        Verb::Change(args) => change::run(args, session),
        Verb::List(args) => list::run(args, session),
        Verb::Engines(args) => engines::run(args, session),
    }
}

/// A machine in a few lines: what it is called, its id, its engine, its verdict.
pub fn in_words(app: &App, card: &MachineCard) -> String {
    let engine = Said::new("cli-machine")
        .text("engine", &card.engine)
        .text("hours", format!("{:.1}", card.hours))
        .number("flights", card.flights);
    let invented = if card.invented { app.say(&Said::new("cli-invented")) } else { String::new() };
    let walk = card.walk.as_ref().map_or_else(String::new, |walk| {
        let said = Said::new("cli-machine-walk").text("list", &walk.words);
        format!("  {}\n", app.say(&said.number("done", walk.done).number("of", walk.of)))
    });
    format!(
        "{}{invented}\n  {}\n  {}\n  {}\n{walk}",
        card.name,
        card.id,
        app.say(&engine),
        card.verdict.headline
    )
}
