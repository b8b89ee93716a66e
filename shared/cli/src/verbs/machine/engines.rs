//! `machine engines`: the engine types there are, and the parts of a machine with each.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {}

pub fn run(_: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.unkept()?;
    let engines = app.choices()?.engines;
    let mut text = String::new();
    for engine in &engines {
        let invented = if engine.invented { app.say(&Said::new("cli-invented")) } else { String::new() };
        text.push_str(&format!("{}: {}, {}{invented}\n", engine.id, engine.name, engine.words));
        let parts: Vec<&str> = engine.parts.iter().map(|part| part.id.as_str()).collect();
        text.push_str(&format!("  {}\n\n", app.say(&Said::new("cli-parts").text("parts", parts.join(", ")))));
    }
    Reply::done(text, &engines)
}
