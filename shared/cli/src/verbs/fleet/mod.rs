//! `fleet`: what all looks here tell together, of parts, of people and of the lists.

mod life;
mod lists;
mod looking;
mod parts;

use witnessmark_app::App;
use witnessmark_app::views::LifePart;
use witnessmark_core::said::Said;

super::group! {
    Parts parts;
    Life life;
    Looking looking;
    Lists lists;
}

/// A type of component, and what is there to tell of it.
fn part_in_words(app: &App, part: &LifePart) -> String {
    let said = Said::new("cli-fleet-part")
        .text("part", &part.words)
        .text("id", &part.id)
        .number("machines", part.machines)
        .number("lives", part.lives)
        .number("failed", part.failed);
    app.say(&said)
}
