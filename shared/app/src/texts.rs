//! Words: Fluent messages, one set a language, English where a language lacks one.

use std::borrow::Cow;
use std::collections::BTreeMap;

use chrono::{Datelike, NaiveDate};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentError, FluentResource, FluentValue};
use fluent_syntax::ast::Pattern;
use unic_langid::LanguageIdentifier;
use witnessmark_core::list::{CatalogueFault, line_at};
use witnessmark_core::said::{Arg, Said};

/// The language every message exists in.
pub const FALLBACK: &str = "en";

/// All words there are.
pub struct Texts {
    languages: BTreeMap<String, FluentBundle<FluentResource>>,
}

impl Texts {
    /// Reads the texts: language, file name, content.
    ///
    /// # Errors
    /// A file that isn't Fluent, or that says a message twice.
    pub fn read<'a>(
        files: impl IntoIterator<Item = (&'a str, &'a str, &'a str)>,
    ) -> Result<Self, CatalogueFault> {
        let mut languages: BTreeMap<String, FluentBundle<FluentResource>> = BTreeMap::new();
        for (language, file, content) in files {
            let fault = |line: usize, what: String| CatalogueFault {
                file: file.to_owned(),
                line,
                what,
                hint: "see the guide to the syntax at projectfluent.org".into(),
            };
            let id: LanguageIdentifier =
                language.parse().map_err(|_| fault(1, format!("`{language}` is no language")))?;
            let resource = FluentResource::try_new(content.to_owned()).map_err(|(_, faults)| {
                let first = faults.first();
                let line = first.map_or(1, |first| line_at(content, first.pos.start));
                fault(line, first.map(ToString::to_string).unwrap_or_default())
            })?;
            let bundle = languages.entry(language.to_owned()).or_insert_with(|| {
                let mut bundle = FluentBundle::new_concurrent(vec![id]);
                // Isolation marks would end up in signed words.
                bundle.set_use_isolating(false);
                bundle
            });
            bundle.add_resource(resource).map_err(|faults| {
                let twice = faults.iter().find_map(|found| match found {
                    FluentError::Overriding { id, .. } => Some(id.clone()),
                    _ => None,
                });
                let twice = twice.unwrap_or_default();
                let at =
                    content.lines().position(|line| line.split('=').next().map(str::trim) == Some(&twice));
                fault(at.map_or(1, |at| at + 1), format!("the message `{twice}` is there already"))
            })?;
        }
        for bundle in languages.values_mut().filter(|bundle| comma_marks(bundle)) {
            bundle.set_formatter(Some(|value, _| match value {
                FluentValue::Number(number) => Some(with_comma(&number.as_string())),
                _ => None,
            }));
        }
        Ok(Self { languages })
    }

    /// The languages there are.
    pub fn languages(&self) -> impl Iterator<Item = &str> {
        self.languages.keys().map(String::as_str)
    }

    /// Whether a message, or one of its attributes, exists in the fallback language.
    pub fn has(&self, id: &str, attribute: Option<&str>) -> bool {
        self.pattern(FALLBACK, id, attribute).is_some()
    }

    /// The words of a message.
    pub fn say(&self, language: &str, said: &Said) -> String {
        self.word(language, &said.id, None, &said.args)
    }

    /// The words of a message or of one of its attributes. A missing one shows its id, so that it is found.
    pub fn word(
        &self,
        language: &str,
        id: &str,
        attribute: Option<&str>,
        args: &BTreeMap<String, Arg>,
    ) -> String {
        let own = self.pattern(language, id, attribute).map(|pattern| (language, pattern));
        let found = own.or_else(|| Some((FALLBACK, self.pattern(FALLBACK, id, attribute)?)));
        let Some((language, pattern)) = found else { return id.to_owned() };
        let Some(bundle) = self.languages.get(language) else { return id.to_owned() };
        let mut values = FluentArgs::new();
        for (name, arg) in args {
            let value = match arg {
                Arg::Text(text) => FluentValue::from(text.as_str()),
                Arg::Figures(text) => FluentValue::from(self.figures(language, text)),
                Arg::Word(id) => FluentValue::from(self.word(language, id, None, &BTreeMap::new())),
                Arg::Quantity(quantity) => FluentValue::from(self.figures(language, &quantity.to_string())),
                Arg::Number(number) => FluentValue::from(*number),
                Arg::Date(day) => FluentValue::String(Cow::Owned(self.day(language, *day))),
            };
            values.set(name.as_str(), value);
        }
        // A variable that isn't given shows as {$name}; `witnessmark validate` finds those.
        let mut faults = Vec::new();
        bundle.format_pattern(pattern, Some(&values), &mut faults).into_owned()
    }

    /// Figures as the language writes them: with its decimal mark.
    pub fn figures(&self, language: &str, figures: &str) -> String {
        match self.languages.get(language).is_some_and(comma_marks) {
            true => with_comma(figures),
            false => figures.to_owned(),
        }
    }

    /// A day as the language writes it.
    pub fn day(&self, language: &str, day: NaiveDate) -> String {
        let args = BTreeMap::from([
            // As numbers: a message chooses its words by them.
            ("day".to_owned(), Arg::Number(day.day().into())),
            ("month".to_owned(), Arg::Number(day.month().into())),
            ("year".to_owned(), Arg::Text(day.year().to_string())),
        ]);
        self.word(language, "day", None, &args)
    }

    fn pattern(&self, language: &str, id: &str, attribute: Option<&str>) -> Option<&Pattern<&str>> {
        let message = self.languages.get(language)?.get_message(id)?;
        match attribute {
            None => message.value(),
            Some(name) => message.get_attribute(name).map(|attribute| attribute.value()),
        }
    }
}

/// Whether a language writes decimals with a comma: its texts say so.
fn comma_marks(bundle: &FluentBundle<FluentResource>) -> bool {
    let mark = bundle.get_message("decimal-mark").and_then(|message| message.value());
    mark.is_some_and(|mark| bundle.format_pattern(mark, None, &mut Vec::new()) == ",")
}

/// Points between digits become commas; others, as in an abbreviation, stay.
fn with_comma(figures: &str) -> String {
    let mut before = ' ';
    let mut letters = figures.chars().peekable();
    let mut written = String::with_capacity(figures.len());
    while let Some(letter) = letters.next() {
        let decimal =
            letter == '.' && before.is_ascii_digit() && letters.peek().is_some_and(char::is_ascii_digit);
        written.push(if decimal { ',' } else { letter });
        before = letter;
    }
    written
}
