//! `validate`: checks catalogue files for their authors. Exit 1 when anything is wrong.

use std::path::PathBuf;

use witnessmark_app::{Fault, validate_embedded, validate_files};
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(value_name = "FILE")]
    sheets: Vec<PathBuf>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.unkept()?;
    let faults = if args.sheets.is_empty() {
        validate_embedded()?
    } else {
        let files = args.sheets.iter().map(|file| {
            std::fs::read_to_string(file)
                .map(|text| (file.display().to_string(), text))
                .map_err(|why| Fault::new("file").text("file", file.display()).text("why", why))
        });
        validate_files(&files.collect::<Result<Vec<_>, Fault>>()?)?
    };
    let text = match faults.as_slice() {
        [] => app.say(&Said::new("cli-valid").number("files", args.sheets.len() as f64)),
        faults => faults.iter().map(|fault| format!("{fault}\n  {}\n", fault.hint)).collect(),
    };
    Reply::answer(faults.is_empty(), text, &faults)
}
