//! What is said during a conversation: to a person, beside what a program reads.

use std::io::{BufRead, Write};

use witnessmark_app::Fault;

use crate::{reply, told};

/// Where prompts go: standard output, or standard error when what is there goes elsewhere.
#[derive(Clone, Copy)]
pub struct Voice {
    json: bool,
    beside: bool,
}

impl Voice {
    /// The voice of a run whose answer is, or isn't, for programs.
    pub fn new(json: bool) -> Self {
        Self { json, beside: json }
    }

    /// The voice of a run whose answer is handed on as it stands, to a file or to another program.
    pub fn beside(self) -> Self {
        Self { beside: true, ..self }
    }

    /// Whether the answer is for programs, which nobody can ask back.
    pub fn for_programs(self) -> bool {
        self.json
    }

    /// Says lines.
    pub fn say(self, text: &str) -> Result<(), Fault> {
        if self.beside {
            told::aside(text);
            return Ok(());
        }
        reply::print(text)
    }

    /// Says lines that only a person at a terminal waits for.
    pub fn progress(self, text: &str) -> Result<(), Fault> {
        if self.json { Ok(()) } else { self.say(text) }
    }

    /// Says something beside the answer, on standard error: to a program as JSON too, so that
    /// every line there can be read alike.
    pub fn note(self, text: &str) {
        if self.json {
            told::aside(&serde_json::json!({ "note": text }).to_string());
        } else {
            told::aside(text);
        }
    }

    /// Asks for a yes; anything else, and nobody there to say it, is a no.
    pub fn agreed(self, prompt: &str) -> Result<(), Fault> {
        let said = if self.json { None } else { self.ask(prompt)? }.unwrap_or_default().to_lowercase();
        if ["y", "yes"].contains(&said.as_str()) { Ok(()) } else { Err(Fault::new("not-agreed")) }
    }

    /// Asks, and reads one line; none when the input ended.
    pub fn ask(self, prompt: &str) -> Result<Option<String>, Fault> {
        let unreadable =
            |why: std::io::Error| Fault::new("file").text("file", "standard input").text("why", why);
        let prompted = if self.beside {
            write!(std::io::stderr(), "{prompt} ")
        } else {
            let mut out = std::io::stdout().lock();
            write!(out, "{prompt} ").and_then(|()| out.flush())
        };
        // A prompt that nobody sees is no reason to lose the answer that comes all the same.
        drop(prompted);
        let mut line = String::new();
        let read = std::io::stdin().lock().read_line(&mut line).map_err(unreadable)?;
        Ok((read > 0).then(|| line.trim().to_owned()))
    }
}
