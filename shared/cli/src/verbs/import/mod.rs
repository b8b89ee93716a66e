//! `import`: takes the records of a file. Exit 1 when a line was not taken.

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "brought", value_name = "FILE")]
    file: PathBuf,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let text = String::from_utf8_lossy(&reading::bytes(&args.file)?).into_owned();
    let view = session.open()?.import(text)?;
    let refused = view.refused.iter().map(|line| format!("  {line}\n"));
    let text = format!("{}\n{}", view.words, refused.collect::<String>());
    Reply::answer(view.refused.is_empty(), text, &view)
}
