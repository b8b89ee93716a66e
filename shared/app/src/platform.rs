//! What the app asks of the operating system. Time and randomness are arguments of
//! everything below; this is where they come in.

use chrono::{DateTime, FixedOffset};

use crate::Fault;

/// The operating system, as far as the app needs it.
pub trait Platform: Send {
    /// The wall clock, with the local offset.
    fn now(&self) -> DateTime<FixedOffset>;

    /// Fills with randomness fit for keys.
    ///
    /// # Errors
    /// Where the system has none.
    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault>;

    /// The platform's keychain, where there is one.
    fn keychain(&self) -> Option<&dyn Keychain>;
}

/// A place that the platform guards: it keeps a secret that is mixed into the key's seal, so that
/// a copied database alone is worth nothing even to someone who guesses the PIN.
pub trait Keychain: Send {
    /// Keeps a secret under a name.
    ///
    /// # Errors
    /// The platform's words.
    fn keep(&self, name: &str, secret: &[u8; 32]) -> Result<(), String>;

    /// The secret of that name; none if there is none.
    ///
    /// # Errors
    /// The platform's words.
    fn secret(&self, name: &str) -> Result<Option<[u8; 32]>, String>;
}
