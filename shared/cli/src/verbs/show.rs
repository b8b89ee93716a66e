//! `show`: a machine with what is open and due, its components, its limits and what happened.

use witnessmark_app::views::MachinePage;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use super::verdict::record;
use super::{component, defect, due, job};
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let page = app.machine(machine)?;
    Reply::done(in_words(app, &page), &page)
}

/// The machine as it stands: also said after something was signed about it.
pub fn in_words(app: &App, page: &MachinePage) -> String {
    let mut text = super::machine::in_words(app, &page.card);
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    part("cli-weights", super::machine::weights(app, &page.description));
    part("cli-open", defect::in_words(app, page));
    let job = page.job.as_ref().map(|job| job::in_words(app, job)).unwrap_or_default();
    part("cli-job", job.lines().map(str::to_owned).collect());
    part("cli-due", due::in_words(app, &page.due));
    part("cli-components", component::in_words(app, &page.components));
    let limits = page
        .limits
        .iter()
        .map(|limit| format!("{}: {}, {}; {}", limit.band, limit.words, limit.value, limit.source));
    part("cli-limits", limits.collect());
    let timeline = page.timeline.iter().map(|entry| {
        format!("{}: {} ({}){}", entry.when, entry.words, entry.by, record(app, Some(&entry.record)))
    });
    part("cli-timeline", timeline.collect());
    text
}
