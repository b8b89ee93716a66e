//! Writing a verb's file: whole or not at all, or to standard output for `-`.

use std::io::Write;
use std::path::{Path, PathBuf};

use base64ct::{Base64, Encoding};
use serde_json::json;
use witnessmark_app::views::FileBytes;
use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::reply::Reply;

/// Whether the file is standard output.
pub fn is_output(to: &Path) -> bool {
    to.as_os_str() == "-"
}

/// Writes beside, then moves: a full disk can't leave half a file in a whole one's place.
pub fn write(to: &Path, bytes: &[u8]) -> Result<(), Fault> {
    let fault = |why: std::io::Error| Fault::new("file").text("file", to.display()).text("why", why);
    let mut beside = to.as_os_str().to_owned();
    beside.push(".part");
    let beside = PathBuf::from(beside);
    let written = std::fs::write(&beside, bytes)
        .and_then(|()| std::fs::File::open(&beside)?.sync_all())
        .and_then(|()| std::fs::rename(&beside, to));
    written.map_err(|why| {
        // Nothing of the half file is worth keeping, and the first fault is the one to tell.
        let _ = std::fs::remove_file(&beside);
        fault(why)
    })
}

/// A paper made by the app, written where the person wants it.
pub fn paper(app: &App, to: &Path, paper: &FileBytes) -> Result<Reply, Fault> {
    let bytes = Base64::decode_vec(&paper.data).map_err(Fault::internal)?;
    if is_output(to) {
        let mut out = std::io::stdout().lock();
        return match out.write_all(&bytes).and_then(|()| out.flush()) {
            // A reader that went away has had enough.
            Err(why) if why.kind() != std::io::ErrorKind::BrokenPipe => {
                Err(Fault::new("file").text("file", "standard output").text("why", why))
            }
            _ => Ok(Reply::silent()),
        };
    }
    write(to, &bytes)?;
    let said = Said::new("cli-written").text("file", to.display());
    let told = json!({ "file": to.display().to_string(), "media": paper.media, "bytes": bytes.len() });
    Reply::done(app.say(&said), &told)
}
