//! Engine logs taken in.

use witnessmark_core::runlog::Mapping;
use witnessmark_core::units::Quantity;

use crate::views::{LogPreview, LogView, MachinePage};
use crate::{App, Fault};

impl App {
    /// Opens a log.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn log_open(&mut self, _machine: String, _name: String, _text: String) -> Result<LogView, Fault> {
        Err(Fault::new("internal").text("why", "log_open"))
    }

    /// What it would tell.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn log_preview(
        &mut self,
        _machine: String,
        _name: String,
        _text: String,
        _mapping: Option<Mapping>,
    ) -> Result<LogPreview, Fault> {
        Err(Fault::new("internal").text("why", "log_preview"))
    }

    /// Signs it.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn log_take(
        &mut self,
        _machine: String,
        _name: String,
        _text: String,
        _mapping: Option<Mapping>,
        _hours: Option<f64>,
        _on: Option<String>,
        _outside: Option<Quantity>,
        _pin: String,
    ) -> Result<MachinePage, Fault> {
        Err(Fault::new("internal").text("why", "log_take"))
    }
}
