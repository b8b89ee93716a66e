//! The operating system, as the app asks for it: clock, randomness, the data folder, the keychain,
//! the network.
//! Shared by the faces that run on a real machine (the shell, the command line).

mod keychain;
pub mod net;
mod open;

use chrono::{DateTime, FixedOffset, Local};
use keychain::SystemKeychain;
use witnessmark_app::{Fault, Keychain, Platform};

pub use net::{Asking, Door, Line, Net, address};
pub use open::{open, save_bytes, save_file};

/// The app's name among the platform's data folders: the same for every face, so that a machine
/// registered in one is there in the other.
pub const FOLDER: &str = "org.witnessmark.app";

/// The platform this program runs on.
pub struct System {
    keychain: Option<SystemKeychain>,
}

impl System {
    /// The platform, with its keychain if it has one that answers.
    pub fn new() -> Self {
        Self { keychain: SystemKeychain::connect() }
    }

    /// The platform without its keychain, for what keeps no secret.
    pub fn bare() -> Self {
        Self { keychain: None }
    }
}

impl Default for System {
    fn default() -> Self {
        Self::new()
    }
}

impl Platform for System {
    fn now(&self) -> DateTime<FixedOffset> {
        Local::now().fixed_offset()
    }

    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault> {
        getrandom::fill(bytes).map_err(|fault| Fault::new("no-randomness").text("why", fault))
    }

    fn keychain(&self) -> Option<&dyn Keychain> {
        self.keychain.as_ref().map(|keychain| keychain as &dyn Keychain)
    }
}
