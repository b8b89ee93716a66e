//! `refused`: lines from a server that were not taken as records; puts one away.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(long, value_name = "N")]
    put_away: Option<u32>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let lines = match args.put_away {
        Some(number) => app.refused_away(f64::from(number))?,
        None => app.refused()?,
    };
    let text: String =
        lines.iter().map(|line| format!("{}: {}\n  {}\n", line.number, line.words, line.line)).collect();
    let text = if text.is_empty() { app.say(&Said::new("cli-none-refused")) } else { text };
    Reply::done(text, &lines)
}
