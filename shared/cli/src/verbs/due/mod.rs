//! `due`: what falls due again and again, and what jobs made due.

mod done;
mod end;
mod keep;
mod list;

use witnessmark_app::views::{DueForm, DueView, MachinePage};
use witnessmark_app::{App, Fault};
use witnessmark_core::due::Standing;
use witnessmark_core::said::Said;

use crate::naming;

super::group! {
    List list;
    Keep keep;
    Done done;
    End end;
}

/// What falls due, nearest first.
pub fn in_words(app: &App, due: &[DueView]) -> Vec<String> {
    due.iter().map(|due| one_in_words(app, due)).collect()
}

fn one_in_words(app: &App, due: &DueView) -> String {
    let standing = app.say(&Said::new(match due.standing {
        Standing::Later => "cli-due-later",
        Standing::Soon => "cli-due-soon",
        Standing::Tolerated => "cli-due-tolerated",
        Standing::Over => "cli-due-over",
    }));
    let forecast = due.forecast.as_ref().map(|words| format!(" {words}")).unwrap_or_default();
    let id = if due.id.is_empty() { String::new() } else { format!(" [{}]", due.id) };
    format!("{}: {standing}. {}{forecast}{id}", due.title, due.left)
}

/// The kept item that is meant.
fn item(page: &MachinePage, named: &str) -> Result<DueForm, Fault> {
    let kept = || page.due.iter().filter_map(|due| due.kept.clone());
    let id = naming::one(named, kept().map(|form| (form.id, form.title)).collect())?;
    kept().find(|form| form.id == id).ok_or_else(|| Fault::internal("an item that was named is gone"))
}
