//! Values, days and texts as a person gives them.

use std::io::Read;
use std::path::Path;

use chrono::NaiveDate;
use witnessmark_app::Fault;
use witnessmark_core::units::{Quantity, Unit};

/// Reads `12.5 N.m`, `4L` or, where a unit goes without saying, `4`. Units by code or by sign.
pub fn quantity(text: &str, usual: Option<Unit>) -> Result<Quantity, Fault> {
    let text = text.trim();
    let end = text.find(|c: char| !c.is_ascii_digit() && !"+-.".contains(c)).unwrap_or(text.len());
    let (number, unit) = text.split_at(end);
    let value: f64 = number.parse().map_err(|_| no_value(text))?;
    let unit = match (unit.trim(), usual) {
        ("", Some(usual)) => usual,
        (unit, _) => named(unit).ok_or_else(|| no_value(text))?,
    };
    Ok(Quantity::new(value, unit))
}

/// Reads a day as `2026-05-02`.
pub fn day(text: &str) -> Result<NaiveDate, Fault> {
    text.trim().parse().map_err(|_| Fault::new("day").text("day", text))
}

/// The text itself, or with `@` the file that holds it; `@-` is standard input.
pub fn text(given: &str) -> Result<String, Fault> {
    let Some(file) = given.strip_prefix('@') else { return Ok(given.to_owned()) };
    Ok(String::from_utf8_lossy(&bytes(Path::new(file))?).trim().to_owned())
}

/// A file, or standard input for `-`.
pub fn bytes(file: &Path) -> Result<Vec<u8>, Fault> {
    let read = if file.as_os_str() == "-" {
        let mut bytes = Vec::new();
        std::io::stdin().lock().read_to_end(&mut bytes).map(|_| bytes)
    } else {
        std::fs::read(file)
    };
    read.map_err(|why| Fault::new("file").text("file", file.display()).text("why", why))
}

fn named(name: &str) -> Option<Unit> {
    let fits = |unit: &&Unit| unit.code() == name || (unit.sign() == name && !name.is_empty());
    Unit::ALL.iter().find(fits).copied()
}

fn no_value(text: &str) -> Fault {
    let units: Vec<&str> = Unit::ALL.iter().map(|unit| unit.code()).collect();
    Fault::new("quantity").text("text", text).text("units", units.join(", "))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_read_as_people_write_it() {
        let read = |text: &str| quantity(text, None).unwrap();
        assert_eq!(read("125 lbf.in"), Quantity::new(125.0, Unit::PoundForceInch));
        assert_eq!(read("12.5N·m"), Quantity::new(12.5, Unit::NewtonMetre));
        assert_eq!(read("-5 °C"), Quantity::new(-5.0, Unit::Celsius));
        assert_eq!(read("2000 rpm"), read("2000 1/min"));
        assert_eq!(quantity("4", Some(Unit::Litre)).unwrap(), Quantity::new(4.0, Unit::Litre));
    }

    #[test]
    fn what_could_mean_two_things_is_not_guessed() {
        for text in ["", "four L", "1,800 1/min", "12", "12 ft.lb", "1.2.3 mm"] {
            assert_eq!(quantity(text, None).unwrap_err().kind, "quantity", "{text}");
        }
    }
}
