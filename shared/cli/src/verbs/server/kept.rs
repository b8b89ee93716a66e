//! What a backup has, in words.

use serde_json::{Value, json};
use witnessmark_app::App;
use witnessmark_core::said::Said;
use witnessmark_server::shelf::Kept;

/// For people: one school a line.
pub fn in_words(app: &App, kept: &[Kept]) -> String {
    let line = |kept: &Kept| {
        let said = Said::new("cli-backup-has").text("school", kept.school.0);
        app.say(&said.number("records", kept.records as f64).number("photos", kept.photos as f64))
    };
    kept.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// For programs.
pub fn told(kept: &[Kept]) -> Vec<Value> {
    let one = |kept: &Kept| json!({ "school": kept.school.0.to_string(), "records": kept.records, "photos": kept.photos });
    kept.iter().map(one).collect()
}
