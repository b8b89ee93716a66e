//! How long components last.

use crate::views::{LifePart, LifeView};
use crate::{App, Fault};

impl App {
    /// Types of component.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn life_parts(&mut self) -> Result<Vec<LifePart>, Fault> {
        Err(Fault::new("internal").text("why", "life_parts"))
    }

    /// How long they last.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn life(
        &mut self,
        _component: String,
        _chance: Option<f64>,
        _in_force: Option<f64>,
    ) -> Result<LifeView, Fault> {
        Err(Fault::new("internal").text("why", "life"))
    }
}
