//! The UI's types are generated from ours, and the schemas of the catalogue from its readers.
//! `WITNESSMARK_BLESS=1 cargo test -p witnessmark-app --test types` writes them anew.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::fs;
use std::path::Path;

fn current(path: &Path, wanted: &str) {
    if std::env::var_os("WITNESSMARK_BLESS").is_some() {
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, wanted).unwrap();
    }
    let found = fs::read_to_string(path).unwrap_or_default();
    assert!(
        found == wanted,
        "{} is not what the Rust types say; run this test with WITNESSMARK_BLESS=1",
        path.display()
    );
}

fn root() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

#[test]
fn ui_types_are_current() {
    current(&root().join("ui/src/types.ts"), &witnessmark_app::typescript());
}

#[test]
fn schemas_are_current() {
    for (name, schema) in witnessmark_app::schemas().unwrap() {
        current(&root().join("shared/catalogue/schema").join(name), &schema);
    }
}
