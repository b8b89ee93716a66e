//! Bands and fasteners as the computations about torque take and give them.

use serde::Deserialize;
use witnessmark_core::torque::{Bearing, Between, Thread};
use witnessmark_core::units::Quantity;

use super::{Wrong, si};

/// `{"low": 0.1, "high": 0.14}`, or one number for both ends.
#[derive(Clone, Copy, Deserialize)]
#[serde(untagged)]
pub enum Band {
    One(f64),
    Both(Between<f64>),
}

impl From<Band> for Between<f64> {
    fn from(band: Band) -> Self {
        match band {
            Band::One(value) => Between::just(value),
            Band::Both(band) => band,
        }
    }
}

/// Both ends in the coherent SI unit.
pub fn si_band(band: Between<Quantity>) -> Result<Between<Quantity>, Wrong> {
    Ok(Between::new(si(band.low)?, si(band.high)?))
}

/// What the nut rubs on: as given, else as usual for the thread.
pub fn bearing(given: Option<Bearing>, thread: Thread) -> Result<Bearing, Wrong> {
    match given {
        Some(bearing) => Ok(bearing),
        None => Ok(Bearing::usual(thread)?),
    }
}
