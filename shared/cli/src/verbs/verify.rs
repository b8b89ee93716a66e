//! `verify`: checks files of records with nothing but the files. Exit 1 when anything is wrong.

use std::path::{Path, PathBuf};

use serde::Serialize;
use witnessmark_app::views::VerifyView;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reading;
use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    #[arg(required = true, value_name = "FILE")]
    bundles: Vec<PathBuf>,
}

#[derive(Serialize)]
struct Verified {
    good: bool,
    files: Vec<File>,
}

#[derive(Serialize)]
struct File {
    file: String,
    #[serde(flatten)]
    view: VerifyView,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.unkept()?;
    let mut files = Vec::new();
    for file in &args.bundles {
        files.push(File { file: file.display().to_string(), view: app.verify(read(file)?)? });
    }
    let good = files.iter().all(|file| file.view.good);
    let text: Vec<String> = files.iter().map(|file| in_words(app, file)).collect();
    Reply::answer(good, text.join("\n"), &Verified { good, files })
}

/// The file, or standard input for `-`. Bytes that are no text make their line unreadable, not the file.
fn read(file: &Path) -> Result<String, Fault> {
    Ok(String::from_utf8_lossy(&reading::bytes(file)?).into_owned())
}

fn in_words(app: &App, file: &File) -> String {
    let mut text = format!("{}: {}\n", file.file, file.view.headline);
    for machine in &file.view.machines {
        text.push_str(&format!("  {}  {}\n", machine.words, machine.id));
    }
    for person in &file.view.people {
        let said = Said::new("cli-key-of").text("name", &person.words).text("device", &person.id);
        text.push_str(&format!("  {}\n", app.say(&said)));
    }
    for fault in &file.view.faults {
        text.push_str(&format!("\n  {}\n    {}\n", fault.words, fault.hint));
    }
    text
}
