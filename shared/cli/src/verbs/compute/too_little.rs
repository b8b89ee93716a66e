//! How "too little to say" is told: the names of the result stay, with nothing in them.

use serde_json::{Map, Value, json};
use witnessmark_core::told::TooLittle;

/// Every one of these names without a value, and why.
pub fn nothing(names: &[&str], why: TooLittle) -> Map<String, Value> {
    let mut out: Map<String, Value> = names.iter().map(|name| ((*name).to_owned(), Value::Null)).collect();
    out.insert("too_little".into(), told(why));
    out
}

/// The reason, with its words.
pub fn told(why: TooLittle) -> Value {
    let mut out = json!(why);
    if let Some(out) = out.as_object_mut() {
        out.insert("say".into(), json!(why.to_string()));
    }
    out
}
