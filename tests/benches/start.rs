//! The app's start, from its process's birth to its screen's first call answered, against an
//! empty shell of the same kind in the same run. Both end themselves after that call.
//! Needs a display (`make bench` brings a virtual one) and both programs built in release.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::path::PathBuf;
use std::process::{Command, Stdio};

use common::{median, ratio};

fn main() {
    let built = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../target/release");
    let app = built.join("witnessmark-shell");
    let empty = built.join("examples/empty");
    if std::env::var_os("DISPLAY").is_none() || !app.exists() || !empty.exists() {
        println!("app start: not measured here; it needs a display and the release builds (make bench)");
        return;
    }
    let data = tempfile::tempdir().unwrap();
    let run = |program: &PathBuf| {
        let ended = Command::new(program)
            .env("WITNESSMARK_DATA", data.path())
            .env("WITNESSMARK_KEYCHAIN", "off")
            .env("WITNESSMARK_END_AFTER_START", "1")
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()
            .unwrap();
        assert!(ended.success(), "{} ended with {ended}", program.display());
    };
    // Once each to warm the page cache.
    run(&app);
    run(&empty);
    let ours = median(11, || run(&app));
    let bare = median(11, || run(&empty));
    ratio("app start to the first call answered", ours, "an empty shell", bare);
}
