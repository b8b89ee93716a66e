//! Numbers as a person reads them: no digits that the readings don't bear.

use witnessmark_core::said::Said;
use witnessmark_core::units::Quantity;

use super::gather::Scale;
use crate::house::House;

/// Digits that count in a value, and in a slope.
const VALUE: i32 = 4;
const SLOPE: i32 = 2;

impl House {
    /// A value with what it is counted in, its decimals yet to be written as the language does.
    pub(super) fn amount(&self, scale: &Scale, value: f64) -> String {
        self.amount_to(scale, to_decimals(value, decimals(value, VALUE)))
    }

    fn amount_to(&self, scale: &Scale, value: f64) -> String {
        match scale {
            Scale::Unit(unit) => Quantity::new(value, *unit).to_string(),
            Scale::Eighths => self.say(&Said::new("trend-eighths").number("n", value)),
            Scale::Grades(words) => grade(words, value),
        }
    }

    /// A slope with its interval; none where nothing of the slope is left.
    pub(super) fn slopes(&self, scale: &Scale, slopes: [f64; 3]) -> Option<[String; 3]> {
        let rounded = alike(slopes);
        let [slope, _, _] = rounded;
        (slope != 0.0).then(|| rounded.map(|slope| self.amount_to(scale, slope)))
    }

    /// The ends of an interval; none where nothing of either is left.
    pub(super) fn interval(&self, scale: &Scale, ends: [f64; 2]) -> Option<[String; 2]> {
        let rounded = alike(ends);
        rounded.iter().any(|end| *end != 0.0).then(|| rounded.map(|end| self.amount_to(scale, end)))
    }
}

/// All with the decimals of the greatest.
fn alike<const N: usize>(values: [f64; N]) -> [f64; N] {
    let most = values.into_iter().map(f64::abs).fold(0.0, f64::max);
    values.map(|value| to_decimals(value, decimals(most, SLOPE)))
}

/// Engine hours as they are told.
pub(super) fn hours(hours: f64) -> f64 {
    to_decimals(hours, 1)
}

/// The nearest grade, the worse one of two.
fn grade(words: &[String], value: f64) -> String {
    let nearest = (value + 0.5).floor().max(0.0) as usize;
    words.get(nearest).cloned().unwrap_or_default()
}

/// Decimals that leave so many digits, three at most.
fn decimals(value: f64, digits: i32) -> i32 {
    if value == 0.0 {
        return 0;
    }
    (digits - 1 - value.abs().log10().floor() as i32).clamp(0, 3)
}

fn to_decimals(value: f64, decimals: i32) -> f64 {
    let step = 10f64.powi(decimals);
    // Without the sign of a nought.
    (value * step).round() / step + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_digits_that_say_nothing() {
        let told = |value: f64| to_decimals(value, decimals(value, VALUE));
        assert_eq!([192.345, 6512.4, 8.4567, 0.6543, 0.0].map(told), [192.3, 6512.0, 8.457, 0.654, 0.0]);
        assert_eq!(decimals(20.13, SLOPE), 0);
        assert_eq!(decimals(4.56, SLOPE), 1);
        assert!(to_decimals(-0.001, 1).is_sign_positive());
    }

    #[test]
    fn between_two_grades_it_is_the_worse() {
        let words = ["Dry", "Stain", "Wet"].map(str::to_owned);
        assert_eq!(
            [0.0, 0.5, 1.4, 1.5, 2.0].map(|v| grade(&words, v)),
            ["Dry", "Stain", "Stain", "Wet", "Wet"]
        );
    }
}
