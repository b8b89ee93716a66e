//! `school publish`: publishes lists or data sheets to all members. Exit 1 when something is wrong with
//! them; nothing is signed then.

use std::path::{Component, Path, PathBuf};

use witnessmark_app::Fault;
use witnessmark_app::views::PublishFile;

use super::words::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

/// The catalogue's folders: a file is published from there on.
const FOLDERS: [&str; 5] = ["engines", "fragments", "assembly", "drawings", "texts"];

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "publication", value_name = "TITLE")]
    title: String,
    #[arg(id = "publish-files", required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
    #[arg(id = "publish-note", long = "note", value_name = "TEXT", default_value = "")]
    note: String,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let voice = session.voice();
    let files = args.files.iter().map(|file| {
        let text = std::fs::read_to_string(file)
            .map_err(|why| Fault::new("file").text("file", file.display()).text("why", why))?;
        Ok(PublishFile { path: path(file), text })
    });
    let files = files.collect::<Result<Vec<_>, Fault>>()?;
    let app = session.open()?;
    let preview = app.publish_preview(args.title.clone(), files.clone())?;
    if !preview.faults.is_empty() {
        let faults = preview.faults.iter();
        let text = faults.map(|f| format!("{}:{}: {}\n  {}\n", f.file, f.line, f.words, f.hint));
        return Reply::answer(false, text.collect(), &preview);
    }
    preview.changes.iter().try_for_each(|change| voice.progress(change))?;
    let pin = args.signing.pin(&pin, app)?;
    let view = app.publish(args.title, files, args.note, pin)?;
    Reply::done(in_words(app, &view), &view)
}

/// The file's path in the catalogue: from the last of its folders on.
fn path(file: &Path) -> String {
    let names: Vec<String> = file
        .components()
        .filter_map(|part| match part {
            Component::Normal(name) => Some(name.to_string_lossy().into_owned()),
            _ => None,
        })
        .collect();
    let from = names.iter().rposition(|name| FOLDERS.contains(&name.as_str()));
    let from = from.unwrap_or(names.len().saturating_sub(1));
    names.get(from..).unwrap_or_default().join("/")
}
