//! Telling a fault on standard error.

use std::io::Write;

use witnessmark_app::FaultView;

/// Tells it: as JSON for programs, as a sentence and what to do for people.
pub fn tell(fault: &FaultView, json: bool) {
    let text = match serde_json::to_string(fault) {
        Ok(text) if json => text,
        _ if fault.hint.is_empty() => fault.message.clone(),
        _ => format!("{}\n  {}", fault.message, fault.hint),
    };
    aside(&text);
}

/// A word beside the answer, on standard error, so that it doesn't get into what a program reads.
pub fn aside(text: &str) {
    // Where even standard error is closed nobody is left to tell.
    let _ = writeln!(std::io::stderr(), "{text}");
}
