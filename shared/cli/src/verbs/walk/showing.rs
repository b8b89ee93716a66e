//! A point as it is shown in the terminal.

use witnessmark_app::App;
use witnessmark_app::views::{AskView, PointView, StationView, WalkProgress};
use witnessmark_core::said::Said;

use crate::verbs::means;

/// Where to stand now.
pub fn station(station: &StationView) -> String {
    format!("\n== {} ==\n{}", station.words, station.stand)
}

/// What to look at, what is good and bad, why, and how it may be answered.
pub fn point(app: &App, point: &PointView, progress: &WalkProgress) -> String {
    let mut text = format!("\n[{}/{}] {}\n", progress.done + 1, progress.of, point.title);
    let mut line = |id: &str, words: &str| {
        text.push_str(&format!("  {}\n", app.say(&Said::new(id).text("words", words))));
    };
    line("cli-good", &point.good);
    line("cli-bad", &point.bad);
    line("cli-why", &point.why);
    if let Some(caution) = &point.caution {
        line("cli-caution", caution);
    }
    if let Some(unconfirmed) = &point.unconfirmed {
        line("cli-note-well", unconfirmed);
    }
    if let Some(last) = &point.last_time {
        line("cli-note-well", &last.words);
    }
    let state = progress.points.get(&point.id);
    if let Some(note) = state.map(|state| &state.note).filter(|note| !note.is_empty()) {
        line("cli-noted", note);
    }
    match &point.ask {
        AskView::Words { answers } => {
            for (number, answer) in (1..).zip(answers) {
                let means = app.say(&Said::new(means(answer.means)));
                text.push_str(&format!("  {number}  {} ({means})\n", answer.words));
            }
        }
        AskView::Value(ask) => {
            text.push_str(&format!("  {}: {}\n", ask.words, ask.source));
        }
    }
    text.trim_end().to_owned()
}

/// What stands before the cursor.
pub fn prompt(app: &App, point: &PointView) -> String {
    match &point.ask {
        AskView::Words { answers } => app.say(&Said::new("cli-prompt").number("most", answers.len() as f64)),
        AskView::Value(ask) => {
            let unit = ask.units.first().map(|unit| unit.code.code()).unwrap_or_default();
            app.say(&Said::new("cli-prompt-value").text("unit", unit))
        }
    }
}
