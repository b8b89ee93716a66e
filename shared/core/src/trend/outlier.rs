//! Readings far off the line. They stay in: medians bear them, and they may be the story.

use serde::{Deserialize, Serialize};

use super::series::{Reading, Series};
use super::slope::Slope;
use crate::median::median;

/// From how many robust deviations on a reading is shown as far off (Iglewicz & Hoaglin).
const FAR: f64 = 3.5;
/// Φ⁻¹(3/4): the median absolute deviation of a normal distribution, in standard deviations.
const MAD_OF_NORMAL: f64 = 0.674_489_750_196_081_7;
/// √(π/2): what a normal distribution's mean absolute deviation is multiplied by.
const MEAN_OF_NORMAL: f64 = 1.253_314_137_315_500_3;

/// A reading far off.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Outlier {
    /// Which.
    pub reading: Reading,
    /// How far, in robust standard deviations.
    pub z: f64,
}

/// Readings further than 3.5 robust deviations from the line.
///
/// r = y − (a + b·x); z = 0.6745·(r − median r) / MAD, MAD = median |r − median r|. Where more
/// than half lie on the line, MAD is nothing and z = (r − median r) / (1.2533 · mean |r − median r|).
///
/// Source: Iglewicz & Hoaglin, How to Detect and Handle Outliers, 1993 (from memory).
pub fn outliers(series: &Series, slope: &Slope) -> Vec<Outlier> {
    let residual = |reading: &Reading| reading.value - (slope.intercept + slope.slope * reading.at);
    let off: Vec<f64> = series.readings().iter().map(residual).collect();
    let Some(middle) = median(off.clone()) else { return Vec::new() };
    let apart: Vec<f64> = off.iter().map(|r| (r - middle).abs()).collect();
    let mean = apart.iter().sum::<f64>() / apart.len() as f64;
    // What only rounding puts off the line isn't off it.
    let rounding = 1e-9 * series.readings().iter().map(|r| r.value.abs()).fold(0.0, f64::max);
    let deviation = match median(apart) {
        Some(mad) if mad > rounding => mad / MAD_OF_NORMAL,
        _ => mean * MEAN_OF_NORMAL,
    };
    if deviation <= rounding {
        return Vec::new();
    }
    let told = |(reading, r): (&Reading, f64)| Outlier { reading: *reading, z: (r - middle) / deviation };
    series.readings().iter().zip(off).map(told).filter(|outlier| outlier.z.abs() > FAR).collect()
}
