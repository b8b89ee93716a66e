//! The Weibull log-likelihood of findings, with slope and curvature.
//!
//! In k (shape) and ν = k·ln λ it is concave whatever the censoring (Burridge, Biometrika 68
//! (1981) 273; from memory): one summit, and Newton's way finds it. With z = k·ln t − ν and
//! H = eᶻ: exact ln k + z − ln t − H; still whole −H(after); between two times
//! −A + ln(1 − e^−(B−A)), A = H(after), B = H(by).

use super::finding::{Findings, Weighed};

/// A finding with the logarithms of its times, about the middle one.
struct Logged {
    after: f64,
    by: f64,
    sort: Sort,
    times: f64,
}

#[derive(Clone, Copy, PartialEq)]
enum Sort {
    Exact,
    Whole,
    Between,
}

/// Findings, ready to be weighed.
pub(super) struct Likelihood {
    logged: Vec<Logged>,
    /// ln of the time about which logarithms are taken.
    middle: f64,
    /// Σ times·ln t over exact ones, in hours.
    exact_logs: f64,
}

/// Value, slope and curvature in (k, ν).
#[derive(Clone, Copy, Default)]
pub(super) struct At {
    pub value: f64,
    pub k: f64,
    pub nu: f64,
    pub kk: f64,
    pub knu: f64,
    pub nunu: f64,
}

impl Likelihood {
    pub(super) fn new(findings: &Findings) -> Self {
        let failed = findings.weighed().iter().filter(|one| one.failed());
        let (sum, count) =
            failed.fold((0.0, 0.0), |(sum, count), one| (sum + one.times * one.by.ln(), count + one.times));
        let middle = if count > 0.0 { sum / count } else { 0.0 };
        let log = |one: &Weighed| Logged {
            after: one.after.ln() - middle,
            by: one.by.ln() - middle,
            sort: match () {
                _ if one.exact() => Sort::Exact,
                _ if one.failed() => Sort::Between,
                _ => Sort::Whole,
            },
            times: one.times,
        };
        // What was never in service before it was last seen says nothing.
        let says = |one: &&Weighed| one.failed() || one.after > 0.0;
        let exact = findings.weighed().iter().filter(|one| one.exact());
        Self {
            logged: findings.weighed().iter().filter(says).map(log).collect(),
            middle,
            exact_logs: exact.map(|one| one.times * one.by.ln()).sum(),
        }
    }

    /// ln λ in hours, of a ν about the middle.
    pub(super) fn log_scale(&self, k: f64, nu: f64) -> f64 {
        nu / k + self.middle
    }

    /// ν about the middle, of a ln λ in hours.
    pub(super) fn nu(&self, k: f64, log_scale: f64) -> f64 {
        k * (log_scale - self.middle)
    }

    /// ln H(t) = ln(−ln S(t)).
    pub(super) fn log_hazard(&self, k: f64, nu: f64, hours: f64) -> f64 {
        k * (hours.ln() - self.middle) - nu
    }

    /// Value, slope and curvature.
    pub(super) fn at(&self, k: f64, nu: f64) -> At {
        // ln t was taken about the middle in z only.
        let mut sum = At { value: -self.exact_logs, ..At::default() };
        for one in &self.logged {
            let w = one.times;
            match one.sort {
                Sort::Exact => {
                    let z = k * one.by - nu;
                    let h = z.exp();
                    sum.value += w * (k.ln() + z - h);
                    sum.k += w / k;
                    sum.kk -= w / (k * k);
                    sum.add(w, one.by, 1.0 - h, -h);
                }
                Sort::Whole => {
                    let h = (k * one.after - nu).exp();
                    sum.value -= w * h;
                    sum.add(w, one.after, -h, -h);
                }
                Sort::Between => sum.between(w, k, nu, one),
            }
        }
        sum
    }
}

impl At {
    /// Chain rule for one time: ∂z/∂k = ln t, ∂z/∂ν = −1.
    fn add(&mut self, w: f64, y: f64, first: f64, second: f64) {
        self.k += w * first * y;
        self.nu -= w * first;
        self.kk += w * second * y * y;
        self.knu -= w * second * y;
        self.nunu += w * second;
    }

    fn between(&mut self, w: f64, k: f64, nu: f64, one: &Logged) {
        let b = (k * one.by - nu).exp();
        // From 0 h on, ln t is −∞ and A nothing.
        let a = if one.after.is_finite() { (k * one.after - nu).exp() } else { 0.0 };
        let d = b - a;
        let odds = 1.0 / d.exp_m1();
        self.value += w * (-a + (-(-d).exp_m1()).ln());
        let bend = odds * (1.0 + odds);
        // Far in the tail odds and bend are nothing, and their products with B too.
        let (first, second) = if odds > 0.0 { (odds * b, odds * b - bend * b * b) } else { (0.0, 0.0) };
        self.add(w, one.by, first, second);
        if a > 0.0 {
            let bend = if bend > 0.0 { bend } else { 0.0 };
            self.add(w, one.after, -a * (1.0 + odds), -a * (1.0 + odds) - a * a * bend);
            // The mixed part, both ways.
            let mixed = w * a * b * bend;
            self.kk += 2.0 * mixed * one.after * one.by;
            self.knu -= mixed * (one.after + one.by);
            self.nunu += 2.0 * mixed;
        }
    }
}
