//! A fault in a catalogue file, with the place where its author must look.

/// What is wrong in a catalogue file.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, thiserror::Error, serde::Serialize)]
#[error("{file}:{line}: {what}")]
pub struct CatalogueFault {
    /// The file, as the author named it.
    pub file: String,
    /// Line in it, from 1.
    pub line: usize,
    /// What is wrong.
    pub what: String,
    /// What to do about it.
    pub hint: String,
}

/// Reads TOML; an error keeps its line.
pub(crate) fn read_toml<T: serde::de::DeserializeOwned>(file: &str, text: &str) -> Result<T, CatalogueFault> {
    toml::from_str(text).map_err(|fault| CatalogueFault {
        file: file.to_owned(),
        line: line_at(text, fault.span().map_or(0, |span| span.start)),
        what: fault.message().to_owned(),
        hint: "see the catalogue's chapter in DEVELOPERS.md and the schema beside the file".into(),
    })
}

/// The line (from 1) of a byte offset.
pub fn line_at(text: &str, offset: usize) -> usize {
    text.bytes().take(offset).filter(|byte| *byte == b'\n').count() + 1
}
