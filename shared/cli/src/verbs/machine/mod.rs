//! `machine`: registering machines, describing them anew, listing them, putting them under a school.

mod add;
mod carrying;
mod change;
mod described;
mod engines;
mod enrol;
mod list;
mod withdraw;

use witnessmark_app::App;
use witnessmark_app::views::MachineCard;
use witnessmark_core::said::Said;

super::group! {
    Add add;
    Change change;
    List list;
    Engines engines;
    Enrol enrol;
    Withdraw withdraw;
}

pub use carrying::in_words as weights;

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
