//! Figures as a person reads them: no more digits than they are worth, and rounded to the careful side.

use crate::units::Quantity;

/// Rounded to tenths.
pub(super) fn tenths(quantity: Quantity) -> Quantity {
    by_tenths(quantity, f64::round)
}

/// Down to tenths: what is left must not look like more.
pub(super) fn tenths_down(quantity: Quantity) -> Quantity {
    // What is a tenth but for rounding stays it.
    by_tenths(quantity, |tenths| (tenths + 1e-6).floor())
}

/// Up to tenths: what is too much must not look like nothing.
pub(super) fn tenths_up(quantity: Quantity) -> Quantity {
    by_tenths(quantity, |tenths| (tenths - 1e-6).ceil())
}

fn by_tenths(quantity: Quantity, round: fn(f64) -> f64) -> Quantity {
    Quantity::new(round(quantity.value * 10.0) / 10.0, quantity.unit)
}

/// Rounded to tens: heights.
pub(super) fn tens(quantity: Quantity) -> Quantity {
    Quantity::new((quantity.value / 10.0).round() * 10.0, quantity.unit)
}

/// Hours as `1 h 22 min`, full minutes.
pub(super) fn time(hours: f64) -> String {
    // A time typed in minutes stays that many.
    let minutes = (hours * 60.0 + 1e-6).floor();
    let (whole, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
    match (whole > 0.0, rest > 0.0) {
        (true, true) => format!("{whole:.0} h {rest:.0} min"),
        (true, false) => format!("{whole:.0} h"),
        _ => format!("{rest:.0} min"),
    }
}

/// Percent with one decimal.
pub(super) fn percent(share: f64) -> f64 {
    (share * 1000.0).round() / 10.0
}

/// A ratio of petrol to oil, with one decimal.
pub(super) fn ratio(ratio: f64) -> f64 {
    (ratio * 10.0).round() / 10.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Unit;

    #[test]
    fn figures_are_rounded_to_the_careful_side() {
        let kg = |value| Quantity::new(value, Unit::Kilogram);
        assert_eq!(tenths_down(kg(12.29)), kg(12.2));
        assert_eq!(tenths_down(kg(0.3)), kg(0.3));
        assert_eq!(tenths_up(kg(0.01)), kg(0.1));
        assert_eq!(tenths_up(kg(8.3)), kg(8.3));
        assert_eq!(time(82.9 / 60.0), "1 h 22 min");
        assert_eq!((time(0.5), time(2.0), time(0.0)), ("30 min".into(), "2 h".into(), "0 min".into()));
    }
}
