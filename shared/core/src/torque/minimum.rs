//! The least drag a used self-locking nut must still have.

use serde::Serialize;

use super::fault::TorqueFault;
use super::thread::Thread;
use crate::units::{Quantity, Unit};

/// A published least drag.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Minimum {
    /// The nut still locks from here on.
    pub torque: Quantity,
    /// Where it is written.
    pub source: &'static str,
}

/// One publication's table.
struct Table {
    source: &'static str,
    unit: Unit,
    rows: &'static [(&'static str, f64)],
}

/// In the order in which they hold: the civil circular; the army's for the small sizes which
/// the circular leaves out; the international standard for metric nuts.
const TABLES: &[Table] = &[
    Table {
        source: "FAA AC 43.13-1B table 7-2",
        unit: Unit::PoundForceInch,
        rows: &[
            ("7/16-20", 8.0),
            ("1/2-20", 10.0),
            ("9/16-18", 13.0),
            ("5/8-18", 18.0),
            ("3/4-16", 27.0),
            ("7/8-14", 40.0),
            ("1-14", 55.0),
            ("1-1/8-12", 73.0),
            ("1-1/4-12", 94.0),
            ("7/16-14", 8.0),
            ("1/2-13", 10.0),
            ("9/16-12", 14.0),
            ("5/8-11", 20.0),
            ("3/4-10", 27.0),
            ("7/8-9", 40.0),
            ("1-8", 51.0),
            ("1-1/8-8", 68.0),
            ("1-1/4-8", 88.0),
        ],
    },
    Table {
        source: "US Army TM 55-1520-240-23-1 p. 1-14",
        unit: Unit::PoundForceInch,
        rows: &[
            ("8-32", 1.5),
            ("10-32", 2.0),
            ("1/4-28", 3.5),
            ("5/16-24", 6.5),
            ("3/8-24", 9.5),
            ("7/16-20", 14.0),
            ("1/2-20", 18.0),
            ("1-12", 90.0),
        ],
    },
    Table {
        source: "US Army TM 1-1500-204-23-6 table 2-8",
        unit: Unit::PoundForceInch,
        rows: &[("5/16-18", 7.5), ("3/8-16", 12.0)],
    },
    // By size alone, nylon insert: what is left for 1/4-20, and the stricter word elsewhere.
    Table {
        source: "US Army TM 9-6115-604-34 table 1-3, nylon insert",
        unit: Unit::PoundForceInch,
        rows: &[
            ("1/4-20", 4.0),
            ("1/4-28", 4.0),
            ("5/16-18", 5.0),
            ("5/16-24", 5.0),
            ("3/8-16", 9.0),
            ("3/8-24", 9.0),
            ("7/16-14", 12.0),
            ("7/16-20", 12.0),
            ("1/2-13", 15.0),
            ("1/2-20", 15.0),
        ],
    },
    // The fifth loosening.
    Table {
        source: "ISO 2320, fifth removal",
        unit: Unit::NewtonMetre,
        rows: &[
            ("M3", 0.08),
            ("M4", 0.12),
            ("M5", 0.2),
            ("M6", 0.3),
            ("M7", 0.45),
            ("M8", 0.6),
            ("M8x1", 0.6),
            ("M10", 1.0),
            ("M10x1.25", 1.0),
            ("M10x1", 1.0),
            ("M12", 1.6),
            ("M12x1.5", 1.6),
            ("M12x1.25", 1.6),
            ("M14", 2.3),
            ("M14x1.5", 2.3),
            ("M16", 3.0),
            ("M16x1.5", 3.0),
        ],
    },
];

/// Every published least drag for this thread, the one that holds first. They differ, since
/// they speak of different nuts.
pub fn minimums(thread: Thread) -> Vec<Minimum> {
    let of = |table: &'static Table| {
        let (_, value) = table.rows.iter().find(|row| row.0 == thread.name())?;
        Some(Minimum { torque: Quantity::new(*value, table.unit), source: table.source })
    };
    TABLES.iter().filter_map(of).collect()
}

/// The published least drag that holds for this thread.
pub fn minimum(thread: Thread) -> Option<Minimum> {
    minimums(thread).first().copied()
}

impl Minimum {
    /// Whether a nut with this drag may be used again.
    ///
    /// # Errors
    /// [`TorqueFault::Unit`].
    pub fn reusable(self, drag: Quantity) -> Result<bool, TorqueFault> {
        Ok(drag.to(self.torque.unit)?.value >= self.torque.value * (1.0 - 1e-9))
    }
}

/// Whether a nut with a nylon insert bears the place's temperature: up to 250 °F (121 °C).
/// Near a cylinder head it doesn't.
///
/// Source: FAA AC 43.13-1B 7-64 f.
///
/// # Errors
/// [`TorqueFault::Unit`].
pub fn nylon_bears(hottest: Quantity) -> Result<bool, TorqueFault> {
    Ok(hottest.to(Unit::Fahrenheit)?.value <= 250.0)
}
