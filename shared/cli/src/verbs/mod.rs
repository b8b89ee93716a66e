//! The verbs, one a file.

pub mod demo;
pub mod machine;
pub mod points;
pub mod serve_ui;
pub mod verdict;
pub mod walk;

use witnessmark_core::list::Meaning;

/// The words of a meaning.
pub fn means(meaning: Meaning) -> &'static str {
    match meaning {
        Meaning::NotFitted => "cli-means-not-fitted",
        Meaning::Serviceable => "cli-means-serviceable",
        Meaning::Watch => "cli-means-watch",
        Meaning::Unserviceable => "cli-means-unserviceable",
    }
}
