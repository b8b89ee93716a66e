//! `print`: the record sheet of an inspection or a job, as PDF.

use std::path::PathBuf;

use witnessmark_app::Fault;

use crate::reply::Reply;
use crate::session::Session;
use crate::writing;

#[derive(clap::Args)]
pub struct Args {
    record: String,
    to: PathBuf,
    #[arg(long, value_name = "a4|letter", default_value = "a4")]
    paper: String,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let record = app.find_record(&args.record)?;
    let sheet = app.sheet(record, args.paper)?;
    writing::paper(app, &args.to, &sheet)
}
