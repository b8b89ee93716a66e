//! `import`: takes the records of a file. Exit 1 when a line was not taken. `import readings`: an
//! engine's log.

mod readings;

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
#[command(args_conflicts_with_subcommands = true, subcommand_negates_reqs = true)]
pub struct Args {
    #[arg(id = "brought", value_name = "FILE", required = true)]
    file: Option<PathBuf>,
    #[command(subcommand)]
    what: Option<What>,
}

#[derive(clap::Subcommand)]
enum What {
    Readings(readings::Args),
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    if let Some(What::Readings(args)) = args.what {
        return readings::run(args, session);
    }
    let file = args.file.unwrap_or_default();
    let text = String::from_utf8_lossy(&reading::bytes(&file)?).into_owned();
    let view = session.open()?.import(text)?;
    let refused = view.refused.iter().map(|line| format!("  {line}\n"));
    let text = format!("{}\n{}", view.words, refused.collect::<String>());
    Reply::answer(view.refused.is_empty(), text, &view)
}
