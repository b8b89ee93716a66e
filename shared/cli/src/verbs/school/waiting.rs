//! `school waiting`: those who wait at the server to be admitted.

use std::sync::Mutex;

use witnessmark_app::Fault;
use witnessmark_core::said::Said;
use witnessmark_host::{Net, net};

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let waiting = net::waiting(&Mutex::new(&mut *app), &Net::default())?;
    let line = |who: &witnessmark_app::views::ApplicantView| {
        app.say(&Said::new("cli-applicant").text("name", &who.name).text("code", &who.code))
    };
    let lines: Vec<String> = waiting.iter().map(line).collect();
    let text = if lines.is_empty() { app.say(&Said::new("cli-nobody-waits")) } else { lines.join("\n") };
    Reply::done(text, &waiting)
}
