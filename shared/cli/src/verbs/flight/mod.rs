//! `flight`: prepared before launch, and its time logged after landing.

mod log;
mod prepare;
mod undo;

use witnessmark_app::App;
use witnessmark_app::views::MachinePage;
use witnessmark_core::said::Said;

use super::{machine, verdict};

super::group! {
    Prepare prepare;
    Log log;
    Undo undo;
}

/// The machine as it stands with its time, what waits for a signature, and the verdict.
fn in_words(app: &App, done: &str, page: &MachinePage) -> String {
    let card = machine::in_words(app, &page.card);
    let waiting = match page.waiting {
        0 => String::new(),
        entries => format!("  {}\n", app.say(&Said::new("cli-waiting").number("entries", entries))),
    };
    let verdict = verdict::in_words(app, &page.card.verdict);
    format!("{}\n\n{card}{waiting}\n{verdict}", app.say(&Said::new(done)))
}
