//! Units of temperature and speed as instruments write them.

use crate::units::Unit;

/// The unit that a text means: `°C`, `[degF]`, `U/min`, `tr/min`, `rpm`. None of any other text.
///
/// The words of the trade in English, German, French, Spanish and Italian; from memory.
pub fn unit_named(text: &str) -> Option<Unit> {
    let plain: String = text
        .chars()
        .filter(|c| !c.is_whitespace() && !"()[]{}°º˚*.".contains(*c))
        .flat_map(char::to_lowercase)
        .collect();
    // A degree sign that a program wrote in one encoding and another read in a second one.
    let plain = plain.trim_start_matches(['\u{c2}', 'â', '\u{fffd}']);
    Some(match plain {
        "c" | "℃" | "degc" | "gradc" | "celsius" | "cel" | "gradcelsius" | "degcelsius" => Unit::Celsius,
        "f" | "℉" | "degf" | "gradf" | "fahrenheit" | "degfahrenheit" => Unit::Fahrenheit,
        "k" | "kelvin" => Unit::Kelvin,
        "rpm" | "1/min" | "min-1" | "min^-1" | "/min" | "min⁻¹" | "u/min" | "upm" | "umin" | "tr/min"
        | "trmin" | "tours/min" | "t/min" | "rev/min" | "r/min" | "giri/min" => Unit::PerMinute,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_are_known_as_instruments_write_them() {
        for text in ["°C", "(°C)", "[degC]", "c", "Â°C", "Grad Celsius"] {
            assert_eq!(unit_named(text), Some(Unit::Celsius), "{text}");
        }
        assert_eq!(unit_named("Deg. F"), Some(Unit::Fahrenheit));
        for text in ["RPM", "U/min", "[1/min]", "tr/min", "min⁻¹"] {
            assert_eq!(unit_named(text), Some(Unit::PerMinute), "{text}");
        }
        for text in ["", "m/s", "cht", "V", "s"] {
            assert_eq!(unit_named(text), None, "{text}");
        }
    }
}
