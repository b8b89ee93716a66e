//! How people look, and what points are worth.

use crate::views::{ListWorth, LookingReport};
use crate::{App, Fault};

impl App {
    /// How people look.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn looking(&mut self) -> Result<LookingReport, Fault> {
        Err(Fault::new("internal").text("why", "looking"))
    }

    /// What points are worth.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn list_worth(&mut self) -> Result<ListWorth, Fault> {
        Err(Fault::new("internal").text("why", "list_worth"))
    }
}
