//! The PIN, and this data folder's first start when something is to be signed in it.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use witnessmark_app::{App, Fault};
use witnessmark_core::said::Said;

use crate::session::Session;
use crate::voice::Voice;

/// Longest PIN file read, bytes: more is another file given by mistake.
const LONGEST: u64 = 4096;

/// How a PIN is given.
#[derive(clap::Args)]
pub struct PinFile {
    #[arg(long, value_name = "FILE")]
    pin_file: Option<PathBuf>,
}

/// How a verb signs as this data folder's own person.
#[derive(clap::Args)]
pub struct Signing {
    #[command(flatten)]
    pin: PinFile,
    #[arg(long, value_name = "NAME")]
    signatory: Option<String>,
}

/// Where the PIN comes from: known to be there before any work is done that it shall sign.
pub struct Pin {
    /// From a file; else the person is asked.
    read: Option<String>,
    voice: Voice,
}

impl PinFile {
    /// Finds the PIN's source, before anything else is asked of the person.
    pub fn source(&self, session: &Session) -> Result<Pin, Fault> {
        let read = self.pin_file.as_deref().map(read).transpose()?;
        if read.is_none() && !std::io::stdin().is_terminal() {
            return Err(Fault::new("pin-needed"));
        }
        Ok(Pin { read, voice: session.voice() })
    }
}

impl Signing {
    /// Finds the PIN's source, before anything else is asked of the person.
    pub fn source(&self, session: &Session) -> Result<Pin, Fault> {
        self.pin.source(session)
    }

    /// The PIN. Where nobody signs in this data folder yet, makes the key first and says so.
    pub fn pin(&self, pin: &Pin, app: &mut App) -> Result<String, Fault> {
        match (app.start()?.person, &self.signatory) {
            (Some(person), Some(given)) if person.name != given.trim() => {
                Err(Fault::new("signatory-other").text("name", person.name).text("given", given))
            }
            (Some(person), _) => pin.of(app, &person.name),
            (None, _) => self.begin(pin, app),
        }
    }

    fn begin(&self, pin: &Pin, app: &mut App) -> Result<String, Fault> {
        let name = self.signatory.clone().or_else(|| std::env::var("USER").ok());
        let name = name.filter(|name| !name.trim().is_empty());
        let name = name.unwrap_or_else(|| app.say(&Said::new("cli-owner")));
        let chosen = pin.chosen(app, &name)?;
        if let Some(person) = app.begin(name, chosen.clone())?.person {
            let begun = Said::new("cli-begun").text("name", person.name).text("device", person.device);
            pin.voice.note(&app.say(&begun));
        }
        Ok(chosen)
    }
}

impl Pin {
    /// Whether the person at the terminal can mend this by typing once more.
    pub fn may_be_asked_again(&self, fault: &Fault) -> bool {
        let slips = ["pin-wrong", "pin-wait", "pin-weak", "pins-differ"];
        self.read.is_none() && slips.contains(&fault.kind)
    }

    /// The PIN of this person.
    pub fn of(&self, app: &App, name: &str) -> Result<String, Fault> {
        self.get(&app.say(&Said::new("cli-pin").text("name", name)))
    }

    /// A PIN that this person chooses now.
    pub fn chosen(&self, app: &App, name: &str) -> Result<String, Fault> {
        let chosen = self.get(&app.say(&Said::new("cli-pin-new").text("name", name)))?;
        if self.read.is_none() && self.get(&app.say(&Said::new("cli-pin-again")))? != chosen {
            return Err(Fault::new("pins-differ"));
        }
        Ok(chosen)
    }

    fn get(&self, prompt: &str) -> Result<String, Fault> {
        match &self.read {
            Some(pin) => Ok(pin.clone()),
            None => rpassword::prompt_password(format!("{prompt} "))
                .map(|pin| pin.trim().to_owned())
                .map_err(|_| Fault::new("pin-needed")),
        }
    }
}

/// The file's first line.
fn read(file: &Path) -> Result<String, Fault> {
    let unreadable = |why: String| Fault::new("file").text("file", file.display()).text("why", why);
    let size = std::fs::metadata(file).map_err(|why| unreadable(why.to_string()))?.len();
    if size > LONGEST {
        return Err(Fault::new("pin-file-empty").text("file", file.display()));
    }
    let text = std::fs::read_to_string(file).map_err(|why| unreadable(why.to_string()))?;
    let pin = text.lines().next().unwrap_or_default().trim();
    if pin.is_empty() {
        return Err(Fault::new("pin-file-empty").text("file", file.display()));
    }
    Ok(pin.to_owned())
}
