//! The verbs, one a file.

pub mod compute;
pub mod confirm_limit;
pub mod correct;
pub mod demo;
pub mod export;
pub mod machine;
pub mod points;
pub mod put_aside;
pub mod rebuild;
pub mod record;
pub mod rectify;
pub mod serve_ui;
pub mod show;
pub mod validate;
pub mod verdict;
pub mod verify;
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
