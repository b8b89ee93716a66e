//! Fasteners, torque and torque tools against published tables and worked examples.
//! Beside each figure stands where it was read; "memory" where no text was at hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod locknuts;
mod patterns;
mod preload;
mod strength;
mod strip;
mod threads;
mod tools;
mod wrench;

use witnessmark_core::torque::Thread;
use witnessmark_core::units::{Quantity, Unit};

fn thread(name: &str) -> Thread {
    name.parse().unwrap()
}

fn mm(value: f64) -> Quantity {
    Quantity::new(value, Unit::Millimetre)
}

fn lbf_in(value: f64) -> Quantity {
    Quantity::new(value, Unit::PoundForceInch)
}

fn in_unit(quantity: Quantity, unit: Unit) -> f64 {
    quantity.to(unit).unwrap().value
}

/// Within `share` of the printed figure.
#[track_caller]
fn near(value: f64, printed: f64, share: f64, what: impl std::fmt::Display) {
    assert!((value / printed - 1.0).abs() <= share, "{what}: {value}, printed {printed}");
}
