//! `verdict`: may it fly, and why. Exit 1 when it is grounded.

use witnessmark_app::views::{ReasonView, VerdictView};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;
use witnessmark_core::verdict::State;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let card = app.machine(machine)?.card;
    let text = format!("{}\n{}", card.name, in_words(app, &card.verdict));
    Reply::answer(may_fly(&card.verdict), text, &card.verdict)
}

/// Whether the exit code is 0.
pub fn may_fly(verdict: &VerdictView) -> bool {
    verdict.state != State::Grounded
}

/// The judgement and its reasons, worst first, each with what it rests on and what would clear it.
pub fn in_words(app: &App, verdict: &VerdictView) -> String {
    let reasons = verdict.reasons.iter().map(|reason| reason_in_words(app, reason));
    format!("{}\n{}", verdict.headline, reasons.collect::<String>())
}

fn reason_in_words(app: &App, reason: &ReasonView) -> String {
    let state = app.say(&Said::new(match reason.state {
        State::Fit => "cli-state-fit",
        State::Limited => "cli-state-limited",
        State::Grounded => "cli-state-grounded",
    }));
    let ids = [("cli-point", &reason.point), ("cli-limit", &reason.band)];
    let ids = ids.into_iter().filter_map(|(id, value)| Some(in_brackets(app, id, value.as_deref()?)));
    // Where there are facts behind it, each names its own record.
    let own = reason.record.as_deref().filter(|_| reason.because.is_empty());
    let ids = ids.collect::<String>() + &record(app, own);
    let mut text = format!("\n- {state}: {}{ids}\n", reason.words);
    for fact in &reason.because {
        text.push_str(&format!("    {}{}\n", fact.words, record(app, fact.record.as_deref())));
    }
    // What is well has nothing to be cleared.
    if reason.state > State::Fit {
        text.push_str(&format!("    {}\n", app.say(&Said::new("cli-clears").text("clears", &reason.clears))));
    }
    text
}

/// The record behind it, by the beginning of its digest: enough for `witnessmark record`.
pub fn record(app: &App, digest: Option<&str>) -> String {
    let short = digest.map(|digest| digest.chars().take(12).collect::<String>());
    short.map(|short| in_brackets(app, "cli-record", &short)).unwrap_or_default()
}

/// An id that another verb takes.
fn in_brackets(app: &App, message: &str, id: &str) -> String {
    format!(" [{}]", app.say(&Said::new(message).text("id", id)))
}
