//! Every message that the sources speak of exists, and every message of the command line is spoken of.

#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;
use std::path::Path;

use witnessmark_app::Catalogue;

/// The sources of a folder, as one text.
fn sources(folder: &Path) -> String {
    let mut text = String::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            text += &sources(&path);
        } else {
            text += &std::fs::read_to_string(path).unwrap();
        }
    }
    text
}

/// The string literal among the arguments, wherever `call` is called with one.
fn literals_in<'a>(text: &'a str, call: &str) -> Vec<&'a str> {
    let arguments = |at: usize| text.get(at + call.len()..)?.split(')').next()?.split('"').nth(1);
    text.match_indices(call).filter_map(|(at, _)| arguments(at)).collect()
}

/// Literals that are message ids of the command line's own.
fn own_ids(text: &str) -> BTreeSet<&str> {
    text.split('"').filter(|part| part.starts_with("cli-") && !part.contains(char::is_whitespace)).collect()
}

fn here(path: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(path)
}

#[test]
fn every_message_that_is_spoken_of_exists() {
    let (text, catalogue) = (sources(&here("src")), Catalogue::embedded().unwrap());
    let ids = own_ids(&text);
    assert!(ids.len() > 40, "the sources were not read: {ids:?}");
    let lacking: Vec<_> = ids.into_iter().filter(|id| !catalogue.texts.has(id, None)).collect();
    assert!(lacking.is_empty(), "{lacking:?}");
}

#[test]
fn every_fault_has_its_words_and_what_to_do() {
    let (text, catalogue) = (sources(&here("src")), Catalogue::embedded().unwrap());
    let mut kinds = literals_in(&text, "Fault::new(");
    kinds.extend(literals_in(&text, ".refuse(StatusCode::"));
    assert!(kinds.contains(&"token-used") && kinds.contains(&"pin-needed"), "{kinds:?}");
    for kind in kinds {
        let id = format!("fault-{kind}");
        assert!(catalogue.texts.has(&id, None) && catalogue.texts.has(&id, Some("hint")), "{id}");
    }
}

#[test]
fn no_message_of_the_command_line_is_left_over() {
    let text = sources(&here("src"));
    let words = std::fs::read_to_string(here("../catalogue/texts/en/cli.ftl")).unwrap();
    let ids = own_ids(&text);
    for line in words.lines() {
        let Some((id, _)) = line.split_once(" =").filter(|_| !line.starts_with([' ', '#'])) else { continue };
        let spoken = match id.strip_prefix("fault-") {
            Some(kind) => text.contains(&format!("\"{kind}\"")),
            None => id.starts_with("help") || ids.contains(id),
        };
        // Two kinds come from finding a record, which the app does.
        assert!(spoken || ["fault-no-such-record", "fault-ambiguous-record"].contains(&id), "{id}");
    }
}
