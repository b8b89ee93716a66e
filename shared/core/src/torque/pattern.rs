//! Where nuts sit and in which order they are tightened: across, from the middle outward.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::fault::TorqueFault;

/// More than any joint of such a machine has.
const MOST: usize = 64;

/// How the nuts of a joint lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Layout {
    /// Evenly on a circle; numbered clockwise, 1 at the top.
    Circle {
        /// How many.
        nuts: usize,
    },
    /// In rows and columns; numbered as one reads, 1 at the top left.
    Grid {
        /// Rows.
        rows: usize,
        /// Columns.
        columns: usize,
    },
}

/// Where a nut is drawn: x to the right, y down, all within the unit circle.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Position {
    /// Its number, from 1.
    pub nut: usize,
    /// To the right of the middle.
    pub x: f64,
    /// Below the middle.
    pub y: f64,
}

impl Layout {
    /// How many nuts.
    ///
    /// # Errors
    /// [`TorqueFault::Impossible`] for none, or for more than any such joint has.
    pub fn nuts(self) -> Result<usize, TorqueFault> {
        let nuts = match self {
            Layout::Circle { nuts } => Some(nuts),
            Layout::Grid { rows, columns } => rows.checked_mul(columns),
        };
        nuts.filter(|nuts| (1..=MOST).contains(nuts))
            .ok_or(TorqueFault::Impossible { what: "the number of nuts", must: "from 1 to 64" })
    }

    /// The crossing order, nuts numbered from 1.
    ///
    /// On a circle: opposite nuts one after the other, quarter by quarter where four divides the
    /// number, as in the star pattern of ASME PCC-1 (from memory; the rule in words is on public
    /// pages: 12, 6, 3 and 9 o'clock, then between); an odd number goes round in steps of nearly
    /// half. On a grid: from the middle outward, each nut followed by its opposite, as the
    /// straight pattern of US Army TM 5-3805-298-23-2 does.
    ///
    /// # Errors
    /// As [`Layout::nuts`].
    pub fn order(self) -> Result<Vec<usize>, TorqueFault> {
        let nuts = self.nuts()?;
        let order = match self {
            Layout::Circle { .. } => star(nuts),
            Layout::Grid { rows, columns } => outward(rows, columns),
        };
        Ok(order.into_iter().map(|nut| nut + 1).collect())
    }

    /// The order of the checking pass: round the circle once more, at the same setting; on a grid
    /// as before. Source: ASME PCC-1 ends with passes in a circle (public pages about it).
    ///
    /// # Errors
    /// As [`Layout::nuts`].
    pub fn round(self) -> Result<Vec<usize>, TorqueFault> {
        match self {
            Layout::Circle { .. } => Ok((1..=self.nuts()?).collect()),
            Layout::Grid { .. } => self.order(),
        }
    }

    /// Where each nut is drawn, the whole turned clockwise by so many degrees (four nuts on a
    /// square head: 45).
    ///
    /// # Errors
    /// As [`Layout::nuts`].
    pub fn positions(self, turned_deg: f64) -> Result<Vec<Position>, TorqueFault> {
        let nuts = self.nuts()?;
        let turn = turned_deg.to_radians();
        if !turn.is_finite() {
            return Err(TorqueFault::Impossible { what: "the turn", must: "a number of degrees" });
        }
        let place = |nut: usize| {
            let (x, y) = match self {
                Layout::Circle { .. } => {
                    let angle = std::f64::consts::TAU * nut as f64 / nuts as f64;
                    (angle.sin(), -angle.cos())
                }
                Layout::Grid { rows, columns } => {
                    let (x, y) = off_middle(nut, rows, columns);
                    let corner = ((rows - 1) as f64).hypot((columns - 1) as f64).max(1.0);
                    (x as f64 / corner, y as f64 / corner)
                }
            };
            let (sin, cos) = turn.sin_cos();
            Position { nut: nut + 1, x: x * cos - y * sin, y: x * sin + y * cos }
        };
        Ok((0..nuts).map(place).collect())
    }
}

/// The crossing order on a circle, from 0.
fn star(nuts: usize) -> Vec<usize> {
    let together: &[usize] = match nuts {
        n if n.is_multiple_of(4) => &[0, 2, 1, 3],
        n if n.is_multiple_of(2) => &[0, 1],
        _ => &[0],
    };
    let apart = nuts / together.len();
    scattered(apart)
        .into_iter()
        .flat_map(|first| together.iter().map(move |quarter| first + quarter * apart))
        .collect()
}

/// 0 to `n` − 1 so that neighbours come far apart: halves in turn, or steps of nearly half.
fn scattered(n: usize) -> Vec<usize> {
    let half = n / 2;
    if n.is_multiple_of(2) {
        return (0..half).flat_map(|i| [i, i + half]).collect();
    }
    // n and (n − 1)/2 have no common divisor, so every number comes once.
    (0..n).map(|i| i * half.max(1) % n).collect()
}

/// Twice the distance from the middle of the grid, to the right and down.
fn off_middle(nut: usize, rows: usize, columns: usize) -> (isize, isize) {
    let twice = |at: usize, of: usize| 2 * at as isize - (of as isize - 1);
    (twice(nut % columns, columns), twice(nut / columns, rows))
}

/// From the middle outward, each nut followed by its opposite; of several equally near the
/// middle, the one farthest from where the wrench is.
fn outward(rows: usize, columns: usize) -> Vec<usize> {
    let at = |nut: usize| off_middle(nut, rows, columns);
    let square = |(x, y): (isize, isize)| x * x + y * y;
    let mut left: Vec<usize> = (0..rows * columns).collect();
    let mut order: Vec<usize> = Vec::new();
    while let Some(next) = left.iter().copied().min_by_key(|nut| {
        let from = order.last().map_or((0, 0), |last| at(*last));
        let (x, y) = at(*nut);
        (square((x, y)), -square((x - from.0, y - from.1)), *nut)
    }) {
        let opposite = rows * columns - 1 - next;
        left.retain(|nut| *nut != next && *nut != opposite);
        order.push(next);
        if opposite != next {
            order.push(opposite);
        }
    }
    order
}
