//! Load, fuel, air: what is worked out before a flight.
//!
//! The wing maker's and the engine maker's manual come first. Heights are geopotential, as in the
//! standard atmosphere itself: at 3 000 m one and a half metres less than measured with a tape.

mod air;
mod atmosphere;
mod endurance;
mod fault;
mod input;
mod mix;
mod thin;
mod weight;
mod wind;

pub use air::{AIR_CELSIUS, Air, Pressure, air};
pub use atmosphere::{
    altitude_of_density, altitude_of_pressure, standard_density, standard_pressure, standard_temperature,
};
pub use endurance::{
    Burn, Burned, Burning, Endurance, Lasts, Reserve, Spread, burning, endurance, flight_hours,
};
pub use fault::{FlightFault, Must};
pub use input::Input;
pub use mix::{Mix, Oil, Poured, Ratio, oil_to_add, poured};
pub use thin::{Thin, thin_air};
pub use weight::{AllUp, Loads, Margin, PETROL_KG_PER_LITRE, Range, all_up};
pub use wind::{Over, Wind, WindLimits, WindStanding, wind_standing};
