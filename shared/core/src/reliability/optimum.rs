//! Summits and level lines of a concave function of one variable, and the Weibull's summit.
//!
//! Own and small: Newton's way between bounds that each step narrows, since what is climbed here is
//! concave and its slope and curvature are known.

use super::likelihood::{At, Likelihood};

/// Rounds at most; a dozen are usual.
const ROUNDS: usize = 200;
/// Shapes beyond which findings don't narrow it down: nothing that wears is like that.
pub(super) const SHAPES: (f64, f64) = (0.01, 1000.0);

/// Where a decreasing slope is nothing, between two bounds. `f` gives slope and curvature.
fn level_point(f: impl Fn(f64) -> (f64, f64), start: f64, bounds: (f64, f64), stride: f64) -> Option<f64> {
    let ((mut low, mut high), mut x) = (bounds, start);
    for _ in 0..ROUNDS {
        let (slope, curve) = f(x);
        if slope.is_nan() {
            return None;
        }
        if slope > 0.0 {
            low = x;
        } else {
            high = x;
        }
        let newton = x - slope / curve;
        let next = if newton > low && newton < high && (newton - x).abs() <= stride {
            newton
        } else {
            let far = if slope > 0.0 { (x + stride).min(high) } else { (x - stride).max(low) };
            if low.is_finite() && high.is_finite() { (low + high) / 2.0 } else { far }
        };
        if (next - x).abs() <= 1e-12 * (1.0 + x.abs()) {
            return Some(next);
        }
        x = next;
    }
    None
}

/// Where a concave function falls to `level` on one side of its top. `f` gives value and slope;
/// the first step out is `step`, its sign the side.
pub(super) fn falls_to(
    f: impl Fn(f64) -> Option<(f64, f64)>,
    top: f64,
    level: f64,
    step: f64,
    bounds: (f64, f64),
) -> Option<f64> {
    let (mut inside, mut step) = (top, step);
    let mut outside = None;
    // Towards a bound ever shorter, so that it is reached by nothing that falls before it.
    let out = |inside: f64, step: f64| {
        let bound = if step < 0.0 { bounds.0 } else { bounds.1 };
        let x = inside + step;
        if (x - bound) * step < 0.0 { x } else { (inside + bound) / 2.0 }
    };
    let mut x = out(top, step);
    for _ in 0..ROUNDS {
        let (value, slope) = f(x)?;
        if (value - level).abs() <= 1e-9 {
            return Some(x);
        }
        if value > level {
            inside = x
        } else {
            outside = Some(x)
        }
        let before = x;
        x = match outside {
            Some(outside) => {
                let next = x - (value - level) / slope;
                let between = (next - inside) * (next - outside) < 0.0;
                if (inside - outside).abs() <= 1e-12 * (1.0 + x.abs()) {
                    return Some(x);
                }
                if between { next } else { (inside + outside) / 2.0 }
            }
            None => {
                step *= 2.0;
                out(inside, step)
            }
        };
        if outside.is_none() && (x - before).abs() < 1e-9 * (1.0 + x.abs()) {
            return None;
        }
    }
    None
}

impl Likelihood {
    /// The ν that a shape goes best with.
    pub(super) fn best_nu(&self, k: f64, start: f64) -> Option<f64> {
        let slope = |nu: f64| {
            let at = self.at(k, nu);
            (at.nu, at.nunu)
        };
        level_point(slope, start, (f64::NEG_INFINITY, f64::INFINITY), 3.0)
    }

    /// The shape that a ln λ (in hours) goes best with.
    pub(super) fn best_shape(&self, log_scale: f64, start: f64) -> Option<f64> {
        let c = self.nu(1.0, log_scale);
        let along = |k: f64| {
            let at = self.at(k, c * k);
            (at.k + c * at.nu, at.kk + 2.0 * c * at.knu + c * c * at.nunu)
        };
        level_point(along, start, SHAPES, start)
    }

    /// The summit: k, ν and what holds there. None where it lies at no shape, or at any.
    pub(super) fn summit(&self, start: f64) -> Option<(f64, f64, At)> {
        let mut k = start;
        let mut nu = self.best_nu(k, 0.0)?;
        let mut at = self.at(k, nu);
        for _ in 0..ROUNDS {
            let determinant = at.kk * at.nunu - at.knu * at.knu;
            let by_k = -(at.nunu * at.k - at.knu * at.nu) / determinant;
            let by_nu = -(at.kk * at.nu - at.knu * at.k) / determinant;
            let gain = at.k * by_k + at.nu * by_nu;
            if !gain.is_finite() || gain < 0.0 {
                return None;
            }
            if gain <= 1e-16 * (1.0 + at.value.abs()) {
                return Some((k, nu, at)).filter(|_| k > SHAPES.0 && k < SHAPES.1);
            }
            let mut share: f64 =
                if by_k < 0.0 { (-0.75 * k / by_k).min(1.0) } else { (3.0 * k / by_k).min(1.0) };
            loop {
                let (next_k, next_nu) = (k + share * by_k, nu + share * by_nu);
                let next = self.at(next_k, next_nu);
                // At the summit rounding hides what little is left to gain.
                let rounding = 1e-13 * (1.0 + at.value.abs());
                if next.value >= at.value + 1e-4 * share * gain - rounding {
                    (k, nu, at) = (next_k, next_nu, next);
                    break;
                }
                share /= 2.0;
                if share < 1e-12 {
                    return None;
                }
            }
            if k <= SHAPES.0 || k >= SHAPES.1 {
                return None;
            }
        }
        None
    }
}
