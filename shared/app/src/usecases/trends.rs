//! Trends of a machine.

use crate::views::TrendView;
use crate::{App, Fault};

impl App {
    /// Every measure that has readings.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn trends(&mut self, _machine: String) -> Result<Vec<TrendView>, Fault> {
        Err(Fault::new("internal").text("why", "trends"))
    }
}
