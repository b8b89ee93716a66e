//! The app over nothing: for what needs words and rules, but no data folder (checking a file).

use witnessmark_store::Store;

use crate::{App, Fault, Platform};

impl App {
    /// The app over a database that isn't kept.
    ///
    /// # Errors
    /// A fault of the catalogue.
    pub fn unkept(platform: Box<dyn Platform>) -> Result<Self, Fault> {
        Self::new(Store::open(":memory:")?, platform)
    }
}
