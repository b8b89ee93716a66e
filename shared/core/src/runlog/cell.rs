//! What stands in one cell.

use super::named::unit_named;
use crate::units::Unit;

/// A number as a cell tells it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// The number.
    pub value: f64,
    /// The decimals that it was told with.
    pub decimals: u32,
    /// The unit that stands beside it in the cell.
    pub unit: Option<Unit>,
}

/// What stands for nothing measured, in small letters.
const NOTHING: [&str; 11] = ["", "-", "--", "---", "–", "nan", "n/a", "na", "#n/a", "null", "none"];
/// Between groups of three digits.
const GROUPS: [char; 5] = [' ', '\u{a0}', '\u{202f}', '\'', '’'];

/// Whether a cell says that nothing was measured.
pub(super) fn is_nothing(text: &str) -> bool {
    let text = text.trim();
    NOTHING.iter().any(|nothing| text.eq_ignore_ascii_case(nothing))
}

/// Reads a number with this decimal mark: `-12`, `185,5`, `6 200`, `1.2E+02`, `185.5 °C`. None of any
/// other text, of one with another decimal mark, and of what is no finite number.
pub fn number(text: &str, decimal: char) -> Option<Number> {
    let text = text.trim();
    let ends = |c: char| c.is_ascii_digit() || c == decimal;
    let end = text.rfind(ends).map_or(0, |at| at + 1);
    let (told, beside) = text.split_at_checked(end)?;
    let unit = match beside.trim() {
        "" => None,
        beside => Some(unit_named(beside)?),
    };
    let (mantissa, power) = match told.split_once(['e', 'E']) {
        Some((mantissa, power)) => (mantissa, power.parse::<i32>().ok()?),
        None => (told, 0),
    };
    let (whole, fraction) = mantissa.split_once(decimal).unwrap_or((mantissa, ""));
    let (sign, whole) = match whole.strip_prefix(['-', '\u{2212}']) {
        Some(whole) => ("-", whole),
        None => ("", whole.strip_prefix('+').unwrap_or(whole)),
    };
    let whole = ungrouped(whole)?;
    if !fraction.bytes().all(|b| b.is_ascii_digit()) || (whole.is_empty() && fraction.is_empty()) {
        return None;
    }
    let value: f64 = format!("{sign}{whole}.{fraction}e{power}").parse().ok()?;
    let decimals = i64::try_from(fraction.len()).ok()? - i64::from(power);
    value.is_finite().then_some(Number { value, decimals: u32::try_from(decimals.max(0)).ok()?, unit })
}

/// Digits without the marks between groups of three; none where these stand elsewhere.
fn ungrouped(whole: &str) -> Option<String> {
    let mut groups = whole.split(GROUPS);
    let first = groups.next()?;
    let mut digits = first.to_owned();
    for group in groups {
        if group.len() != 3 || first.is_empty() || first.len() > 3 {
            return None;
        }
        digits.push_str(group);
    }
    digits.bytes().all(|b| b.is_ascii_digit()).then_some(digits)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str, decimal: char) -> Option<(f64, u32)> {
        number(text, decimal).map(|number| (number.value, number.decimals))
    }

    #[test]
    fn numbers_are_read_as_instruments_write_them() {
        assert_eq!(read("185.5", '.'), Some((185.5, 1)));
        assert_eq!(read(" -12 ", '.'), Some((-12.0, 0)));
        assert_eq!(read("185,50", ','), Some((185.5, 2)));
        assert_eq!(read("6 200", ','), Some((6200.0, 0)));
        assert_eq!(read("6\u{a0}200,5", ','), Some((6200.5, 1)));
        assert_eq!(read("1.25E+02", '.'), Some((125.0, 0)));
        assert_eq!(read("1.5e-3", '.'), Some((0.0015, 4)));
        assert_eq!(read(".5", '.'), Some((0.5, 1)));
        assert_eq!(number("185.5 °C", '.').unwrap().unit, Some(Unit::Celsius));
        assert_eq!(number("6200rpm", '.').unwrap().unit, Some(Unit::PerMinute));
    }

    #[test]
    fn what_could_mean_two_things_is_not_read() {
        for text in
            ["185,5", "1,234.5", "ERR", "1.2.3", "", "12 34", "--5", "1e999", "5 apples", "OL", "1e", "."]
        {
            assert_eq!(read(text, '.'), None, "{text}");
        }
        assert_eq!(read("6.200", ','), None);
    }

    #[test]
    fn nothing_measured_is_known() {
        for text in ["", "  ", "---", "NaN", "n/a"] {
            assert!(is_nothing(text), "{text}");
        }
        assert!(!is_nothing("0") && !is_nothing("ERR"));
    }
}
