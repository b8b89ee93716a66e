//! Every language says all that English says, with the same things in it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use witnessmark_app::{Catalogue, EMBEDDED};
use witnessmark_core::said::Said;

const LANGUAGES: [&str; 4] = ["de", "en", "es", "fr"];

/// What each message or attribute speaks of, by `file/id.attribute`.
type Speaks = BTreeMap<String, BTreeSet<String>>;

fn variables(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            expressed(expression, found);
        }
    }
}

fn expressed(expression: &Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => inlined(inline, found),
        Expression::Select { selector, variants } => {
            inlined(selector, found);
            variants.iter().for_each(|variant| variables(&variant.value, found));
        }
    }
}

fn inlined(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::FunctionReference { arguments, .. } => {
            arguments.positional.iter().for_each(|argument| inlined(argument, found));
        }
        InlineExpression::Placeable { expression } => expressed(expression, found),
        InlineExpression::MessageReference { .. } | InlineExpression::TermReference { .. } => {
            panic!("the catalogue's texts refer to no other message: one language may lack it")
        }
        _ => {}
    }
}

fn speaks(language: &str) -> Speaks {
    let mut all = Speaks::new();
    for file in EMBEDDED.get_dir(format!("texts/{language}")).unwrap().files() {
        let name = file.path().file_name().unwrap().to_str().unwrap();
        let text = file.contents_utf8().unwrap();
        let resource = fluent_syntax::parser::parse(text).unwrap_or_else(|(_, faults)| {
            panic!("{language}/{name}: {faults:?}");
        });
        for entry in &resource.body {
            let Entry::Message(message) = entry else {
                assert!(matches!(
                    entry,
                    Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_)
                ));
                continue;
            };
            let id = format!("{name}/{}", message.id.name);
            if let Some(value) = &message.value {
                assert!(all.insert(id.clone(), of(value)).is_none(), "{language}: {id} is there twice");
            }
            for attribute in &message.attributes {
                let id = format!("{id}.{}", attribute.id.name);
                assert!(all.insert(id.clone(), of(&attribute.value)).is_none(), "{language}: {id} twice");
            }
        }
    }
    all
}

fn of(pattern: &Pattern<&str>) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    variables(pattern, &mut found);
    found
}

#[test]
fn every_language_says_all_and_of_the_same_things() {
    let english = speaks("en");
    assert!(english.len() > 2000, "{} messages and attributes", english.len());
    let catalogue = Catalogue::embedded().unwrap();
    assert_eq!(catalogue.texts.languages().collect::<Vec<_>>(), LANGUAGES);
    for language in LANGUAGES {
        let theirs = speaks(language);
        let lacking: Vec<_> = english.keys().filter(|id| !theirs.contains_key(*id)).collect();
        let beyond: Vec<_> = theirs.keys().filter(|id| !english.contains_key(*id)).collect();
        assert!(
            lacking.is_empty() && beyond.is_empty(),
            "{language} lacks {lacking:?}, has beyond {beyond:?}"
        );
        for (id, variables) in &english {
            assert_eq!(&theirs[id], variables, "{language}: what {id} speaks of");
        }
    }
}

/// Ordinary ways of writing a day and a decimal in each language; from memory.
#[test]
fn days_and_decimals_are_each_languages_own() {
    let texts = Catalogue::embedded().unwrap().texts;
    let day = |language: &str, day| texts.day(language, NaiveDate::from_ymd_opt(2026, 3, day).unwrap());
    assert_eq!(day("en", 1), "1 March 2026");
    assert_eq!(day("de", 1), "1. März 2026");
    assert_eq!(day("fr", 1), "1er mars 2026");
    assert_eq!(day("fr", 2), "2 mars 2026");
    assert_eq!(day("es", 1), "1 de marzo de 2026");
    for (language, figures) in
        [("en", "12.5 N·m"), ("de", "12,5 N·m"), ("fr", "12,5 N·m"), ("es", "12,5 N·m")]
    {
        assert_eq!(texts.figures(language, "12.5 N·m"), figures);
        let said = Said::new("deferred-hours").figures("hours", "41.6");
        assert!(texts.say(language, &said).contains(&figures[..3].replace("12", "41").replace('5', "6")));
        // A number that a message counts by, too.
        let said = Said::new("reason-refused-record").number("count", 2.5);
        assert!(texts.say(language, &said).contains(&figures[..4].replace("12", "2")[..3]), "{language}");
    }
    // Not every point is a decimal's.
    assert_eq!(texts.figures("de", "v1.2: 3.4, z. B. 5."), "v1,2: 3,4, z. B. 5.");
}
