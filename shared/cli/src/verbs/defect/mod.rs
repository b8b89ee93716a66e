//! `defect`: what is open on a machine, defects and things to watch.

mod defer;
mod list;
mod rectify;

use witnessmark_app::App;
use witnessmark_app::views::OpenView;
use witnessmark_core::said::Said;

use super::verdict::record;

super::group! {
    List list;
    Defer defer;
    Rectify rectify;
}

/// What is open, a line each.
pub fn in_words(app: &App, open: &[OpenView]) -> Vec<String> {
    let line = |open: &OpenView| {
        let means = app.say(&Said::new(super::means(open.means)));
        let record = record(app, Some(&open.record));
        format!("{}: {}: {} ({means}), {}{record}", open.point, open.title, open.words, open.since)
    };
    open.iter().map(line).collect()
}
