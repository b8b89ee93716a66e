//! A point as it is shown in the terminal.

use witnessmark_app::App;
use witnessmark_app::views::{AskView, PointView, StationView, Walk};
use witnessmark_core::said::Said;

use crate::verbs::means;

/// Where to stand now.
pub fn station(station: &StationView) -> String {
    format!("\n== {} ==\n{}", station.words, station.stand)
}

/// A point's number in its list, from 1.
pub fn number(walk: &Walk, point: &str) -> usize {
    let mut points = walk.stations.iter().flat_map(|station| &station.points);
    points.position(|other| other.id == point).map_or(0, |index| index + 1)
}

/// What to look at, what is good and bad, why, and how it may be answered.
pub fn point(app: &App, walk: &Walk, point: &PointView) -> String {
    let progress = &walk.progress;
    let mut text = format!("\n[{}/{}] {}\n", number(walk, &point.id), progress.of, point.title);
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
            let band = Said::new("cli-band").text("band", &ask.words).text("source", &ask.source);
            text.push_str(&format!("  {}\n", app.say(&band)));
        }
        AskView::Torque(ask) => {
            let band = Said::new("cli-tighten").number("nuts", ask.nuts);
            let band = band.text("band", &ask.words).text("source", &ask.source);
            text.push_str(&format!("  {}\n", app.say(&band)));
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
        AskView::Torque(_) => app.say(&Said::new("cli-prompt-tool")),
    }
}
