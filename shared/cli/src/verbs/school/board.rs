//! `school board`: every machine of the school, those that need a person first.

use witnessmark_app::views::{Board, BoardRow};
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;
use crate::verbs::machine;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let board = app.board()?;
    Reply::done(in_words(app, &board), &board)
}

fn in_words(app: &App, board: &Board) -> String {
    let mut text = board.rows.iter().map(|row| row_in_words(app, row)).collect::<Vec<_>>().join("\n");
    if text.is_empty() {
        text = format!("{}\n", app.say(&Said::new("cli-no-machines")));
    }
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n", app.say(&Said::new(id))));
            lines.iter().for_each(|line| text.push_str(&format!("  {line}\n")));
        }
    };
    let second = board.second.iter().map(|one| format!("{}: {} ({})", one.name, one.title, one.by));
    part("cli-board-second", second.collect());
    let people = board.people.iter().map(|person| {
        let machines = person.machines.join(", ");
        let machines = if machines.is_empty() { machines } else { format!(": {machines}") };
        format!("{}, {}{machines}", person.name, person.role_words)
    });
    part("cli-members", people.collect());
    text
}

fn row_in_words(app: &App, row: &BoardRow) -> String {
    let mut text = machine::in_words(app, &row.card);
    let mut line = |words: &str| text.push_str(&format!("  {words}\n"));
    if !row.owner.is_empty() {
        line(&app.say(&Said::new("cli-board-owner").text("name", &row.owner)));
    }
    line(&row.looked);
    if !row.first.is_empty() {
        line(&row.first);
    }
    row.defects.iter().chain(&row.watched).for_each(|open| line(&format!("{}: {}", open.title, open.words)));
    row.deferred.iter().for_each(|deferred| line(deferred));
    if let Some(job) = &row.job {
        line(&app.say(&Said::new("cli-board-job").text("title", job)));
    }
    if let Some(due) = &row.due {
        line(&format!("{}: {}", due.title, due.left));
    }
    text
}
