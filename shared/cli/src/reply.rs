//! What a verb answers: the same for a person and for a program.

use std::io::{ErrorKind, Write};

use serde::Serialize;
use serde_json::Value;
use witnessmark_app::Fault;

use crate::session::Session;

/// The answer of a verb.
pub struct Reply {
    /// Whether the answer is yes: exit 0, else 1.
    good: bool,
    /// For people.
    text: String,
    /// For programs.
    json: Value,
}

impl Reply {
    /// Done.
    pub fn done(text: String, json: &impl Serialize) -> Result<Self, Fault> {
        Self::answer(true, text, json)
    }

    /// Yes or no.
    pub fn answer(good: bool, text: String, json: &impl Serialize) -> Result<Self, Fault> {
        Ok(Self { good, text, json: serde_json::to_value(json)? })
    }

    /// Done, with nothing more to say.
    pub fn silent() -> Self {
        Self { good: true, text: String::new(), json: Value::Null }
    }

    /// Prints it, and says whether it was yes.
    pub fn print(self, session: &Session) -> Result<bool, Fault> {
        if session.json && !self.json.is_null() {
            print(&serde_json::to_string_pretty(&self.json)?)?;
        } else if !session.json && !self.text.is_empty() {
            print(self.text.trim_end())?;
        }
        Ok(self.good)
    }
}

/// Prints lines at once. A reader that went away (`| head`) has had enough: no fault.
pub fn print(text: &str) -> Result<(), Fault> {
    let mut out = std::io::stdout().lock();
    match writeln!(out, "{text}").and_then(|()| out.flush()) {
        Err(why) if why.kind() != ErrorKind::BrokenPipe => {
            Err(Fault::new("file").text("file", "standard output").text("why", why))
        }
        _ => Ok(()),
    }
}
