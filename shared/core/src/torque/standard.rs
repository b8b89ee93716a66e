//! Torque of aircraft hardware by thread, for a fastener that no manual gives a torque for.

use serde::Serialize;

use super::between::Between;
use super::thread::Thread;
use crate::units::{Quantity, Unit};

/// A row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Standard {
    /// Recommended for tension nuts.
    pub recommended: Between<Quantity>,
    /// The most that may ever be reached.
    pub allowed: Quantity,
}

/// Thread; recommended for tension nuts, least and most; most allowed. lbf·in.
const ROWS: &[(&str, f64, f64, f64)] = &[
    ("8-36", 12.0, 15.0, 20.0),
    ("10-32", 20.0, 25.0, 40.0),
    ("1/4-28", 50.0, 70.0, 100.0),
    ("5/16-24", 100.0, 140.0, 225.0),
    ("3/8-24", 160.0, 190.0, 390.0),
    ("7/16-20", 450.0, 500.0, 840.0),
    ("1/2-20", 480.0, 690.0, 1100.0),
    ("9/16-18", 800.0, 1000.0, 1600.0),
    ("5/8-18", 1100.0, 1300.0, 2400.0),
    ("3/4-16", 2300.0, 2500.0, 5000.0),
    ("7/8-14", 2500.0, 3000.0, 7000.0),
    ("1-14", 3700.0, 5500.0, 10_000.0),
    ("8-32", 12.0, 15.0, 20.0),
    ("10-24", 20.0, 25.0, 35.0),
    ("1/4-20", 40.0, 50.0, 75.0),
    ("5/16-18", 80.0, 90.0, 160.0),
    ("3/8-16", 160.0, 185.0, 275.0),
    ("7/16-14", 235.0, 255.0, 475.0),
    ("1/2-13", 400.0, 480.0, 880.0),
];

/// Dry, cadmium-plated steel, tension nuts, bolts loaded mainly in shear. For a place that the
/// engine's manual speaks of, the manual holds.
///
/// Source: FAA AC 43.13-1B table 7-1.
pub fn standard(thread: Thread) -> Option<Standard> {
    let quantity = |value| Quantity::new(value, Unit::PoundForceInch);
    ROWS.iter().find(|row| row.0 == thread.name()).map(|&(_, low, high, most)| Standard {
        recommended: Between::new(quantity(low), quantity(high)),
        allowed: quantity(most),
    })
}
