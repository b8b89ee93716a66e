//! Values of the shapes that the program's own types have: mostly of the right form, with content
//! that nobody would type.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};

use super::chance::Chance;

/// The types that the screens are given, by name, as the TypeScript that the program writes.
pub struct Shapes {
    types: BTreeMap<String, String>,
    /// Each call and its arguments' shape, as an object's.
    pub calls: Vec<(String, String)>,
}

/// Splits where no bracket is open and no text either.
fn split(text: &str, at: &[char]) -> Vec<String> {
    let (mut parts, mut depth, mut quoted) = (vec![String::new()], 0, false);
    for c in text.chars() {
        match c {
            '"' => quoted = !quoted,
            '{' | '<' | '[' if !quoted => depth += 1,
            '}' | '>' | ']' if !quoted => depth -= 1,
            _ => {}
        }
        if depth == 0 && !quoted && at.contains(&c) {
            parts.push(String::new());
        } else {
            parts.last_mut().unwrap().push(c);
        }
    }
    parts.into_iter().map(|part| part.trim().to_owned()).filter(|part| !part.is_empty()).collect()
}

impl Shapes {
    pub fn read(typescript: &str) -> Self {
        let parts = typescript.split("/**").map(|part| part.split_once("*/").map_or(part, |(_, rest)| rest));
        let plain: String = parts.collect::<Vec<_>>().join(" ");
        let lines: String =
            plain.lines().filter(|line| !line.starts_with("//")).collect::<Vec<_>>().join(" ");
        let (types, calls) = lines.split_once("export interface Calls").unwrap();
        let types = split(types, &[';'])
            .iter()
            .filter_map(|text| text.strip_prefix("export type ")?.split_once('='))
            .map(|(name, shape)| (name.trim().to_owned(), shape.trim().to_owned()))
            .collect();
        let calls = split(calls.trim().trim_matches(['{', '}']), &[';'])
            .iter()
            .map(|call| {
                let (name, shape) = call.split_once(':').unwrap();
                let args = split(shape.trim().trim_matches(['{', '}']), &[';']);
                let args = args[0].split_once(':').unwrap().1.trim().to_owned();
                (name.trim_matches('"').to_owned(), args)
            })
            .collect();
        Self { types, calls }
    }

    /// A value of a shape; `known` are values that exist, by the names under which they are asked for.
    pub fn value(
        &self,
        shape: &str,
        name: &str,
        known: &BTreeMap<&str, Value>,
        chance: &mut Chance,
    ) -> Value {
        // A wrong PIN is soon made to wait, and nothing more would be tried.
        let oddly = if ["pin", "old"].contains(&name) { 30 } else { 4 };
        if let Some(known) = known.get(name).filter(|_| chance.below(oddly) > 0) {
            return known.clone();
        }
        let mut choices = split(shape, &['|']);
        // What may be left out is there more often than not.
        if choices.len() > 1 && chance.below(4) > 0 {
            choices.retain(|choice| choice != "null");
        }
        let shape = chance.pick(&choices).as_str();
        if let Some(inner) = shape.strip_prefix("Array<").and_then(|rest| rest.strip_suffix('>')) {
            return (0..chance.below(4)).map(|_| self.value(inner, name, known, chance)).collect();
        }
        if let Some(inner) = shape.strip_prefix('{').and_then(|rest| rest.strip_suffix('}')) {
            return self.object(inner, known, chance);
        }
        match shape {
            "string" => chance.pick(&texts()).clone(),
            "number" => chance.pick(&numbers()).clone(),
            "boolean" => json!(chance.below(2) == 0),
            "null" => Value::Null,
            literal if literal.starts_with('"') => json!(literal.trim_matches('"')),
            named => self.value(&self.types[named], name, known, chance),
        }
    }

    fn object(&self, inner: &str, known: &BTreeMap<&str, Value>, chance: &mut Chance) -> Value {
        let mut object = Map::new();
        for member in split(inner, &[',', ';']) {
            let (name, shape) = member.split_once(':').unwrap();
            if name.starts_with('[') {
                for _ in 0..chance.below(3) {
                    let key = chance.pick(&texts()).as_str().unwrap().to_owned();
                    object.insert(key, self.value(shape, "", known, chance));
                }
                continue;
            }
            let (name, optional) = match name.trim().trim_matches('"').strip_suffix('?') {
                Some(name) => (name.trim_matches('"'), true),
                None => (name.trim().trim_matches('"'), false),
            };
            if !(optional && chance.below(2) == 0) {
                object.insert(name.to_owned(), self.value(shape.trim(), name, known, chance));
            }
        }
        Value::Object(object)
    }
}

fn texts() -> Vec<Value> {
    let long = "x".repeat(5000);
    let texts = [
        "",
        " ",
        "good",
        "reserve",
        "2026-05-02",
        "+262142-12-31",
        "0000-01-01",
        "00000000-0000-0000-0000-000000000000",
        "\u{0}\u{202e}🪂",
        "../../etc/passwd",
        "'; DROP TABLE record; --",
        &long,
    ];
    texts.iter().map(|text| json!(text)).collect()
}

fn numbers() -> Vec<Value> {
    vec![
        json!(0),
        json!(1),
        json!(3),
        json!(12.5),
        json!(-1),
        json!(4_000_000_000_u64),
        json!(1e308),
        json!(5e-324),
    ]
}
