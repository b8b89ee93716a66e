//! Threads by name, and the diameters that strength hangs on.

use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize};

use super::fault::TorqueFault;
use crate::units::{INCH, Quantity, Unit};

/// Which standard a thread is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Series {
    /// ISO general purpose metric threads, ISO 261.
    Metric,
    /// Unified inch threads, ASME B1.1.
    Unified,
}

/// A 60° screw thread of the tables, known by its name: `M8`, `M8x1`, `1/4-28`.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(into = "&'static str")]
pub struct Thread {
    name: &'static str,
    series: Series,
    /// Major diameter d, mm.
    d: f64,
    /// Pitch P, mm.
    p: f64,
}

/// Name, d and P in mm. ISO 261; the first of a diameter is its coarse pitch.
/// M10x1, M12x1.25, M14x1.25 are also those of spark plugs.
const METRIC: &[(&str, f64, f64)] = &[
    ("M3", 3.0, 0.5),
    ("M4", 4.0, 0.7),
    ("M5", 5.0, 0.8),
    ("M5x0.5", 5.0, 0.5),
    ("M6", 6.0, 1.0),
    ("M6x0.75", 6.0, 0.75),
    ("M7", 7.0, 1.0),
    ("M7x0.75", 7.0, 0.75),
    ("M8", 8.0, 1.25),
    ("M8x1", 8.0, 1.0),
    ("M8x0.75", 8.0, 0.75),
    ("M10", 10.0, 1.5),
    ("M10x1.25", 10.0, 1.25),
    ("M10x1", 10.0, 1.0),
    ("M10x0.75", 10.0, 0.75),
    ("M12", 12.0, 1.75),
    ("M12x1.5", 12.0, 1.5),
    ("M12x1.25", 12.0, 1.25),
    ("M12x1", 12.0, 1.0),
    ("M14", 14.0, 2.0),
    ("M14x1.5", 14.0, 1.5),
    ("M14x1.25", 14.0, 1.25),
    ("M14x1", 14.0, 1.0),
    ("M16", 16.0, 2.0),
    ("M16x1.5", 16.0, 1.5),
    ("M18", 18.0, 2.5),
    ("M18x1.5", 18.0, 1.5),
    ("M20", 20.0, 2.5),
    ("M20x1.5", 20.0, 1.5),
    ("M24", 24.0, 3.0),
    ("M24x2", 24.0, 2.0),
];

/// Name, major diameter in inches, threads per inch. ASME B1.1; a number size n is
/// 0.060 + 0.013·n inch.
const UNIFIED: &[(&str, f64, f64)] = &[
    ("8-32", 0.164, 32.0),
    ("8-36", 0.164, 36.0),
    ("10-24", 0.190, 24.0),
    ("10-32", 0.190, 32.0),
    ("1/4-20", 0.25, 20.0),
    ("1/4-28", 0.25, 28.0),
    ("5/16-18", 0.3125, 18.0),
    ("5/16-24", 0.3125, 24.0),
    ("3/8-16", 0.375, 16.0),
    ("3/8-24", 0.375, 24.0),
    ("7/16-14", 0.4375, 14.0),
    ("7/16-20", 0.4375, 20.0),
    ("1/2-13", 0.5, 13.0),
    ("1/2-20", 0.5, 20.0),
    ("9/16-12", 0.5625, 12.0),
    ("9/16-18", 0.5625, 18.0),
    ("5/8-11", 0.625, 11.0),
    ("5/8-18", 0.625, 18.0),
    ("3/4-10", 0.75, 10.0),
    ("3/4-16", 0.75, 16.0),
    ("7/8-9", 0.875, 9.0),
    ("7/8-14", 0.875, 14.0),
    ("1-8", 1.0, 8.0),
    ("1-12", 1.0, 12.0),
    ("1-14", 1.0, 14.0),
    ("1-1/8-8", 1.125, 8.0),
    ("1-1/8-12", 1.125, 12.0),
    ("1-1/4-8", 1.25, 8.0),
    ("1-1/4-12", 1.25, 12.0),
];

fn metric(&(name, d, p): &(&'static str, f64, f64)) -> Thread {
    Thread { name, series: Series::Metric, d, p }
}

fn unified(&(name, inches, per_inch): &(&'static str, f64, f64)) -> Thread {
    let inch = INCH * 1e3;
    Thread { name, series: Series::Unified, d: inches * inch, p: inch / per_inch }
}

/// As people write it, to as the tables do: `m10 × 1,25` → `m10x1.25`, `#10-32 UNF` → `10-32`.
fn plain(text: &str) -> String {
    let text = text.trim().trim_start_matches('#').to_lowercase().replace(['×', '*'], "x").replace(',', ".");
    let text = ["unef", "unf", "unc", "uns", "un"].iter().fold(text.as_str(), |t, s| t.trim_end_matches(s));
    let words: Vec<&str> = text.split([' ', '-', '"', '″']).filter(|word| !word.is_empty()).collect();
    words.join(if text.starts_with('m') { "" } else { "-" })
}

impl std::str::FromStr for Thread {
    type Err = TorqueFault;

    fn from_str(text: &str) -> Result<Self, TorqueFault> {
        let unknown = || TorqueFault::NoThread(text.to_owned());
        let plain = plain(text);
        let Some(sizes) = plain.strip_prefix('m') else {
            return UNIFIED.iter().find(|row| row.0 == plain).map(unified).ok_or_else(unknown);
        };
        let (d, p) = sizes.split_once('x').map_or((sizes, None), |(d, p)| (d, Some(p)));
        let number = |text: &str| text.parse::<f64>().map_err(|_| unknown());
        let (d, p) = (number(d)?, p.map(number).transpose()?);
        let named = |row: &&(&str, f64, f64)| row.1 == d && p.is_none_or(|p| row.2 == p);
        METRIC.iter().find(named).map(metric).ok_or_else(unknown)
    }
}

/// Written out: derived, it would want text that lives as long as the tables' names.
impl<'de> Deserialize<'de> for Thread {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?.parse().map_err(D::Error::custom)
    }
}

impl From<Thread> for &'static str {
    fn from(thread: Thread) -> Self {
        thread.name
    }
}

impl std::fmt::Display for Thread {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

/// Diameters: ISO 68-1 and ISO 724, H = √3/2·P; ASME B1.1 has the same basic profile.
impl Thread {
    /// Every thread of the tables.
    pub fn all() -> impl Iterator<Item = Thread> {
        METRIC.iter().map(metric).chain(UNIFIED.iter().map(unified))
    }

    /// Its name in the tables.
    pub fn name(self) -> &'static str {
        self.name
    }

    /// Which standard it is of.
    pub fn series(self) -> Series {
        self.series
    }

    /// Major diameter d.
    pub fn diameter(self) -> Quantity {
        mm(self.d)
    }

    /// Pitch P: how far the nut goes in one turn.
    pub fn pitch(self) -> Quantity {
        mm(self.p)
    }

    /// Pitch diameter d2 = d − 3/4·H.
    pub fn pitch_diameter(self) -> Quantity {
        mm(self.d2_mm())
    }

    /// Minor diameter of the internal thread's basic profile, d1 = d − 5/4·H.
    pub fn minor_diameter(self) -> Quantity {
        mm(self.d - 1.25 * self.triangle())
    }

    /// Root diameter of the bolt, d3 = d1 − H/6.
    pub fn root_diameter(self) -> Quantity {
        mm(self.d3_mm())
    }

    /// Tensile stress area: metric π/4·((d2+d3)/2)² (ISO 898-1, 9.1.6.1), Unified
    /// π/4·(D − 0.9743/n)² (ASME B1.1, FED-STD-H28/2B).
    pub fn stress_area(self) -> Quantity {
        Quantity::new(self.stress_area_mm2(), Unit::SquareMillimetre)
    }

    pub(super) fn d_mm(self) -> f64 {
        self.d
    }

    pub(super) fn p_mm(self) -> f64 {
        self.p
    }

    pub(super) fn d2_mm(self) -> f64 {
        self.d - 0.75 * self.triangle()
    }

    pub(super) fn stress_area_mm2(self) -> f64 {
        std::f64::consts::FRAC_PI_4 * self.stress_diameter_mm().powi(2)
    }

    /// Diameter of the circle with the stress area, d0.
    pub(super) fn stress_diameter_mm(self) -> f64 {
        match self.series {
            Series::Metric => (self.d2_mm() + self.d3_mm()) / 2.0,
            Series::Unified => self.d - 0.9743 * self.p,
        }
    }

    fn d3_mm(self) -> f64 {
        self.d - (1.25 + 1.0 / 6.0) * self.triangle()
    }

    /// Height H of the fundamental triangle, mm.
    fn triangle(self) -> f64 {
        3.0_f64.sqrt() / 2.0 * self.p
    }
}

fn mm(value: f64) -> Quantity {
    Quantity::new(value, Unit::Millimetre)
}
