//! `defect`: what is open on a machine, defects and things to watch.

mod defer;
mod list;
mod rectify;

use witnessmark_app::App;
use witnessmark_app::views::{MachinePage, OpenView, ReasonView};
use witnessmark_core::said::Said;
use witnessmark_core::verdict::Rule;

use super::verdict::record;

super::group! {
    List list;
    Defer defer;
    Rectify rectify;
}

/// Why a defect may wait, or may no longer, where somebody let it.
pub fn deferral<'a>(page: &'a MachinePage, open: &OpenView) -> Option<&'a ReasonView> {
    let of = |reason: &&ReasonView| reason.point.as_ref() == Some(&open.point);
    page.card.verdict.reasons.iter().filter(of).find(|reason| reason.rule == Rule::DefectDeferred)
}

/// What is open, a line each, and below it how long it may wait.
pub fn in_words(app: &App, page: &MachinePage) -> Vec<String> {
    let line = |open: &OpenView| {
        let means = app.say(&Said::new(super::means(open.means)));
        let record = record(app, Some(&open.record));
        format!("{}: {}: {} ({means}), {}{record}", open.point, open.title, open.words, open.since)
    };
    let waits = |open: &OpenView| {
        let deferral = deferral(page, open);
        let facts = deferral.iter().flat_map(|reason| reason.because.iter().map(|fact| &fact.words));
        let words = deferral.iter().map(|reason| &reason.words).chain(facts);
        words.map(|words| format!("  {words}")).collect::<Vec<_>>()
    };
    page.open.iter().flat_map(|open| std::iter::once(line(open)).chain(waits(open))).collect()
}
