//! Forms of words shared by all files of the catalogue.

/// What an id looks like, for hints.
pub const ID_HINT: &str = "use lower-case letters, digits and single hyphens, beginning with a letter";

/// Whether a text may be an id: `cylinder-base`.
pub fn is_id(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(|part| {
            !part.is_empty() && part.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
}
