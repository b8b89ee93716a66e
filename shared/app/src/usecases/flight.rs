//! Load, fuel, air and wind before a flight.

use witnessmark_core::record::FlightPlanned;

use crate::views::{FlightForm, FlightView};
use crate::{App, Fault};

impl App {
    /// What is asked before a flight.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn flight_form(&mut self, _machine: String) -> Result<FlightForm, Fault> {
        Err(Fault::new("internal").text("why", "flight_form"))
    }

    /// What comes of a plan.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn flight_judge(
        &mut self,
        _machine: String,
        _plan: Option<FlightPlanned>,
    ) -> Result<FlightView, Fault> {
        Err(Fault::new("internal").text("why", "flight_judge"))
    }

    /// Keeps a plan.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn flight_keep(
        &mut self,
        _machine: String,
        _plan: Option<FlightPlanned>,
    ) -> Result<FlightView, Fault> {
        Err(Fault::new("internal").text("why", "flight_keep"))
    }
}
