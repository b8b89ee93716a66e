//! `defect list`: what is open on a machine.

use serde::Serialize;
use witnessmark_app::Fault;
use witnessmark_app::views::{OpenView, ReasonView};
use witnessmark_core::said::Said;

use super::{deferral, in_words};
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
    let text = match page.open.as_slice() {
        [] => app.say(&Said::new("cli-nothing-open")),
        _ => in_words(app, &page).join("\n"),
    };
    let open = page.open.iter().map(|open| Listed { open, deferral: deferral(&page, open) });
    Reply::done(text, &open.collect::<Vec<_>>())
}

/// What is open, and whether it may wait.
#[derive(Serialize)]
struct Listed<'a> {
    #[serde(flatten)]
    open: &'a OpenView,
    #[serde(skip_serializing_if = "Option::is_none")]
    deferral: Option<&'a ReasonView>,
}
