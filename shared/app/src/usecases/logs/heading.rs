//! What headings say, in the words of the trade.

use witnessmark_core::runlog::{Channel, TimeForm, unit_named};
use witnessmark_core::units::Unit;

/// A heading taken apart.
pub(super) struct Heading {
    /// Its words, in small letters without accents; digits are words of their own.
    words: Vec<String>,
    /// The same with nothing between them.
    joined: String,
    /// What stands in brackets, or at its end, as a unit.
    unit: Option<String>,
}

// Words of the trade in English, German, French and Spanish, some Italian; from memory. Where words are
// written as one, or belong together, they are found within the heading without its spaces.
const EGT_WORDS: [&str; 4] = ["egt", "agt", "exhaust", "escape"];
const EGT_WITHIN: [&str; 6] = ["abgas", "auspuff", "exhaustgas", "echappement", "gasesdeescape", "scarico"];
const CHT_WORDS: [&str; 4] = ["cht", "zkt", "culasse", "culata"];
const CHT_WITHIN: [&str; 6] = ["cylinderhead", "zylinderkopf", "zylkopf", "kopftemp", "headtemp", "testata"];
const CYLINDER: [&str; 6] = ["cylinder", "zylinder", "cylindre", "cilindro", "head", "kopf"];
const SPEED_WORDS: [&str; 10] =
    ["rpm", "upm", "regime", "tours", "revs", "rev", "revoluciones", "vueltas", "tach", "tacho"];
const SPEED_WITHIN: [&str; 5] = ["drehzahl", "enginespeed", "motorspeed", "tachometer", "girimotore"];
const PROPELLER: [&str; 5] = ["prop", "propeller", "luftschraube", "helice", "elica"];
const OUTSIDE_WORDS: [&str; 7] = ["oat", "outside", "outdoor", "ambient", "ambiente", "ambiante", "aussen"];
const OUTSIDE_WITHIN: [&str; 7] =
    ["aussentemp", "umgebung", "lufttemp", "airtemp", "tempext", "exterieur", "exterior"];
const ELSEWHERE: [&str; 19] = [
    "intake",
    "inlet",
    "ansaug",
    "admission",
    "oil",
    "huile",
    "aceite",
    "water",
    "wasser",
    "coolant",
    "battery",
    "akku",
    "batterie",
    "board",
    "cpu",
    "carb",
    "vergaser",
    "internal",
    "platine",
];
const TEMPERATURE: [&str; 6] = ["temp", "temperature", "temperatur", "temperatura", "thermo", "tc"];
const TIME: [&str; 19] = [
    "time",
    "zeit",
    "uhrzeit",
    "laufzeit",
    "temps",
    "heure",
    "hora",
    "tiempo",
    "timestamp",
    "datetime",
    "elapsed",
    "clock",
    "ora",
    "tempo",
    "date",
    "datum",
    "fecha",
    "t",
    "zeitstempel",
];

/// How a unit of time says that time is written.
pub(super) fn time_unit(text: &str) -> Option<TimeForm> {
    Some(match text.trim_matches(['[', ']', '(', ')', ' ']).to_lowercase().as_str() {
        "s" | "sec" | "secs" | "second" | "seconds" | "sek" | "sekunden" | "secondes" | "segundos" => {
            TimeForm::Seconds
        }
        "ms" | "msec" | "millis" | "milliseconds" | "millisekunden" | "millisecondes" => {
            TimeForm::Milliseconds
        }
        "min" | "mins" | "minutes" | "minuten" | "minutos" => TimeForm::Minutes,
        "hh:mm:ss" | "h:m:s" | "hms" | "mm:ss" => TimeForm::Clock,
        _ => return None,
    })
}

impl Heading {
    pub fn of(text: &str) -> Self {
        let (text, unit) = split_unit(text);
        let mut words: Vec<String> = vec![String::new()];
        let mut digit = false;
        for c in text.chars().flat_map(plain) {
            let begins = !c.is_alphanumeric() || c.is_ascii_digit() != digit;
            if begins && words.last().is_some_and(|word| !word.is_empty()) {
                words.push(String::new());
            }
            digit = c.is_ascii_digit();
            if c.is_alphanumeric()
                && let Some(word) = words.last_mut()
            {
                word.push(c);
            }
        }
        words.retain(|word| !word.is_empty());
        Self { joined: words.concat(), words, unit }
    }

    fn has(&self, words: &[&str]) -> bool {
        self.words.iter().any(|word| words.contains(&word.as_str()))
    }

    fn holds(&self, parts: &[&str]) -> bool {
        parts.iter().any(|part| self.joined.contains(part))
    }

    /// The unit that it names.
    pub fn unit(&self) -> Option<Unit> {
        self.unit.as_deref().and_then(unit_named)
    }

    /// How it says that time is counted.
    pub fn time_form(&self) -> Option<TimeForm> {
        let named = |word: &String| time_unit(word).filter(|_| word.len() > 1);
        self.unit.as_deref().and_then(time_unit).or_else(|| self.words.iter().find_map(named))
    }

    /// Whether it speaks of time.
    pub fn is_time(&self) -> bool {
        if self.channel().is_some() {
            return false;
        }
        self.has(&TIME) || self.time_form().is_some() || self.words.first().is_some_and(|word| word == "s")
    }

    /// Whether it speaks of a temperature, wherever that is.
    pub fn is_temperature(&self) -> bool {
        let degrees = [Unit::Celsius, Unit::Fahrenheit, Unit::Kelvin];
        let named =
            self.has(&TEMPERATURE) || self.holds(&["temperat"]) || self.has(&["t"]) && !self.is_bare();
        (named || self.unit().is_some_and(|unit| degrees.contains(&unit))) && !self.holds(&ELSEWHERE)
    }

    /// Whether it is but one word.
    fn is_bare(&self) -> bool {
        self.words.len() == 1
    }

    /// What it says that the column holds.
    pub fn channel(&self) -> Option<Channel> {
        if self.has(&EGT_WORDS) || self.holds(&EGT_WITHIN) {
            return Some(Channel::Egt);
        }
        if self.has(&CHT_WORDS) || self.holds(&CHT_WITHIN) {
            return Some(Channel::Cht);
        }
        if self.has(&PROPELLER) || self.holds(&ELSEWHERE) {
            return None;
        }
        if self.has(&OUTSIDE_WORDS) || self.holds(&OUTSIDE_WITHIN) {
            return Some(Channel::Outside);
        }
        if self.has(&SPEED_WORDS) || self.holds(&SPEED_WITHIN) || self.unit() == Some(Unit::PerMinute) {
            return Some(Channel::Speed);
        }
        (self.has(&CYLINDER) && self.is_temperature()).then_some(Channel::Cht)
    }
}

/// A letter as it is compared: small, without its accent.
fn plain(c: char) -> impl Iterator<Item = char> {
    let folded = match c.to_lowercase().next().unwrap_or(c) {
        'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' => "a",
        'è' | 'é' | 'ê' | 'ë' => "e",
        'ì' | 'í' | 'î' | 'ï' => "i",
        'ò' | 'ó' | 'ô' | 'õ' | 'ö' => "o",
        'ù' | 'ú' | 'û' | 'ü' => "u",
        'ç' => "c",
        'ñ' => "n",
        'ß' => "ss",
        _ => "",
    };
    let same = folded.is_empty().then(|| c.to_lowercase()).into_iter().flatten();
    folded.chars().chain(same)
}

/// What comes before the unit, and the unit: in brackets, or the last word where it can only be one.
fn split_unit(text: &str) -> (String, Option<String>) {
    let text = text.trim();
    if unit_named(text).is_some() {
        return (text.to_owned(), Some(text.to_owned()));
    }
    if let Some(from) = text.find(['(', '[']) {
        let (name, rest) = text.split_at(from);
        let inside: String = rest.chars().skip(1).take_while(|c| !")]".contains(*c)).collect();
        if unit_named(&inside).is_some() || time_unit(&inside).is_some() {
            return (name.to_owned(), Some(inside));
        }
        // Other words in brackets belong to the name.
        return (text.to_owned(), None);
    }
    for mark in [' ', ',', '_', '/', '-'] {
        if let Some((name, last)) = text.rsplit_once(mark)
            && !name.is_empty()
            && (unit_named(last).is_some() || time_unit(last).is_some())
        {
            return (name.to_owned(), Some(last.to_owned()));
        }
    }
    (text.to_owned(), None)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Headings as invented instruments of four countries may write them.
    #[test]
    fn headings_are_understood_in_the_trades_words() {
        let egt =
            ["EGT", "EGT1 [°C]", "Abgastemp.", "Temp. échappement (°C)", "Exhaust gas temp", "T escape"];
        let cht = [
            "CHT2",
            "cht_f",
            "Zylinderkopftemperatur",
            "T culasse",
            "Cylinder Head Temp (F)",
            "ZKT",
            "Temp. culata",
            "Head 1 °C",
        ];
        let speed = [
            "RPM",
            "Drehzahl [1/min]",
            "Régime moteur",
            "tours/min",
            "Motor U/min",
            "engine speed",
            "tr/min",
        ];
        let outside = ["OAT", "Außentemperatur", "Temp. extérieure", "Ambient", "air temp C"];
        let none =
            ["Prop RPM", "GPS speed", "Intake air temp", "Altitude (m)", "oil temp", "Note", "Airspeed"];
        for (headings, channel) in [
            (&egt[..], Some(Channel::Egt)),
            (&cht, Some(Channel::Cht)),
            (&speed, Some(Channel::Speed)),
            (&outside, Some(Channel::Outside)),
            (&none, None),
        ] {
            for heading in headings {
                assert_eq!(Heading::of(heading).channel(), channel, "{heading}");
            }
        }
    }

    #[test]
    fn a_unit_is_read_out_of_a_heading() {
        for (heading, unit) in [
            ("CHT [°C]", Some(Unit::Celsius)),
            ("cht_f", Some(Unit::Fahrenheit)),
            ("EGT, deg F", Some(Unit::Fahrenheit)),
            ("Motor U/min", Some(Unit::PerMinute)),
            ("CHT", None),
            ("CHT (left)", None),
        ] {
            assert_eq!(Heading::of(heading).unit(), unit, "{heading}");
        }
    }

    #[test]
    fn time_is_told_from_temperature() {
        for heading in ["Time", "temps (s)", "Zeit", "timestamp_ms", "t [s]", "Hora", "s", "millis"] {
            let heading_ = Heading::of(heading);
            assert!(heading_.is_time(), "{heading}");
        }
        for heading in ["Temp", "CHT", "EGT 1", "minimum"] {
            assert!(!Heading::of(heading).is_time(), "{heading}");
        }
        assert_eq!(Heading::of("timestamp_ms").time_form(), Some(TimeForm::Milliseconds));
        assert_eq!(Heading::of("Temps (s)").time_form(), Some(TimeForm::Seconds));
        assert_eq!(Heading::of("millis").time_form(), Some(TimeForm::Milliseconds));
        assert!(Heading::of("Temp 1").is_temperature() && !Heading::of("Temps").is_temperature());
    }
}
