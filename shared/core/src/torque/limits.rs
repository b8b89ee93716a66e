//! Tolerances that decide how much of an internal thread is left to hold: the thinnest bolt
//! that may be in the widest hole.

use super::fault::TorqueFault;
use super::thread::{Series, Thread};
use crate::units::{INCH, Quantity, Unit};

/// The two limits of size that a strip area needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Least major diameter of the bolt, d min.
    pub bolt_major_least: Quantity,
    /// Most pitch diameter of the hole, D2 max.
    pub hole_pitch_most: Quantity,
}

/// µm by pitch in mm: deviation g of the bolt, tolerance Td(6) of its major diameter, and
/// TD2(6) of the hole's pitch diameter for major diameters over 2.8, 5.6, 11.2 and 22.4 mm.
///
/// Source: ISO 965-1:1998 tables 1, 3 and 4. Held against charts of limits (6g external, 6H
/// internal) where these were at hand; the last column and pitches of 2 mm and more from memory.
/// Its formulas (es = 15 + 11·P, Td = 180·∛P² − 3.15/√P, TD2 = 1.32·90·P^0.4·d^0.1, rounded to
/// R 40) give these within one step; where they differ, the standard's tables hold.
const METRIC: &[(f64, f64, f64, [Option<f64>; 4])] = &[
    (0.5, 20.0, 106.0, [Some(100.0), Some(112.0), Some(118.0), None]),
    (0.7, 22.0, 140.0, [Some(118.0), None, None, None]),
    (0.75, 22.0, 140.0, [Some(118.0), Some(132.0), Some(140.0), None]),
    (0.8, 24.0, 150.0, [Some(125.0), None, None, None]),
    (1.0, 26.0, 180.0, [None, Some(150.0), Some(160.0), Some(170.0)]),
    (1.25, 28.0, 212.0, [None, Some(160.0), Some(180.0), None]),
    (1.5, 32.0, 236.0, [None, Some(180.0), Some(190.0), Some(200.0)]),
    (1.75, 34.0, 265.0, [None, None, Some(200.0), None]),
    (2.0, 38.0, 280.0, [None, None, Some(212.0), Some(224.0)]),
    (2.5, 42.0, 335.0, [None, None, Some(224.0), None]),
    (3.0, 48.0, 375.0, [None, None, None, Some(265.0)]),
];

/// Limits of the usual fit: 6g in 6H for metric, 2A in 2B for Unified threads.
///
/// # Errors
/// [`TorqueFault::NoLimits`].
pub fn limits(thread: Thread) -> Result<Limits, TorqueFault> {
    let (thinner, wider) = match thread.series() {
        Series::Metric => metric(thread).ok_or(TorqueFault::NoLimits(thread.name()))?,
        Series::Unified => unified(thread),
    };
    let mm = |value| Quantity::new(value, Unit::Millimetre);
    Ok(Limits { bolt_major_least: mm(thread.d_mm() - thinner), hole_pitch_most: mm(thread.d2_mm() + wider) })
}

/// How much thinner and wider than basic, mm.
fn metric(thread: Thread) -> Option<(f64, f64)> {
    let (_, deviation, major, pitch) = METRIC.iter().find(|row| row.0 == thread.p_mm())?;
    let range = [22.4, 11.2, 5.6, 2.8].iter().position(|over| thread.d_mm() > *over)?;
    let wider = pitch.iter().rev().nth(range).copied().flatten()?;
    Some(((deviation + major) / 1e3, wider / 1e3))
}

/// The same for class 2A in 2B, engaged one diameter, in inches rounded to 0.0001:
/// Td2 = 0.0015·(∛D + √D) + 0.015·∛P², allowance 0.3·Td2, Td = 0.060·∛P², TD2 = 1.3·Td2.
/// Source: ASME B1.1 formulas as explained by a calculator's notes, whose 1/4-20 this gives.
fn unified(thread: Thread) -> (f64, f64) {
    let inch = INCH * 1e3;
    let (d, p) = (thread.d_mm() / inch, thread.p_mm() / inch);
    let by_pitch = (p * p).cbrt();
    // To six places first, as the standard reckons: a half of the fourth place hangs on it.
    let pitch = ((0.0015 * (d.cbrt() + d.sqrt()) + 0.015 * by_pitch) * 1e6).round() / 1e6;
    let rounded = |inches: f64| (inches * 1e4).round() / 1e4;
    ((rounded(0.3 * pitch) + rounded(0.060 * by_pitch)) * inch, rounded(1.3 * pitch) * inch)
}
