//! What a record sheet says, before it has a place on a page.

use witnessmark_core::list::Meaning;

use crate::house::House;
use crate::usecases::meaning_id;

/// A sheet's words, in the order in which they are read.
pub(super) struct Entry {
    pub machine: String,
    /// What sort of sheet it is.
    pub kind: String,
    /// What it is about: the list, or the job.
    pub title: String,
    /// The outcome in a sentence, with its ring.
    pub outcome: (Option<Meaning>, String),
    /// Label and value.
    pub facts: Vec<(String, String)>,
    pub sections: Vec<Section>,
    pub signed: Vec<Signed>,
}

/// Words under a heading.
pub(super) struct Section {
    pub title: String,
    pub blocks: Vec<Block>,
}

/// One thing in a section.
pub(super) enum Block {
    Text(String),
    /// A place to stand.
    Station(String),
    Item(Item),
}

/// One thing found, done or left.
pub(super) struct Item {
    /// Its ring; an empty ring where there is none.
    pub means: Option<Meaning>,
    pub title: String,
    pub words: String,
    /// What stands below, in small letters.
    pub notes: Vec<String>,
}

/// A signature and what it covers.
pub(super) struct Signed {
    pub title: String,
    pub facts: Vec<(String, String)>,
}

/// A meaning in a word.
pub(super) fn meaning_words(house: &House, means: Option<Meaning>) -> String {
    house.word(&format!("paper-means-{}", means.map_or("open", meaning_id)))
}
