//! The platform's keychain: Secret Service, macOS or iOS keychain, Windows or Android store.

use std::sync::Arc;

use keyring_core::{CredentialStore, Error};
use witnessmark_app::Keychain;

/// The service name under which secrets are kept.
const SERVICE: &str = "org.witnessmark.app";

/// A keychain that answered when the program started.
pub struct SystemKeychain {
    store: Arc<CredentialStore>,
}

impl SystemKeychain {
    /// Connects, if there is a keychain; `WITNESSMARK_KEYCHAIN=off` does without, for machines
    /// whose keychain would ask a person who isn't there.
    pub fn connect() -> Option<Self> {
        if std::env::var_os("WITNESSMARK_KEYCHAIN").is_some_and(|value| value == "off") {
            return None;
        }
        platform_store().map(|store| Self { store })
    }

    fn entry(&self, name: &str) -> Result<keyring_core::Entry, String> {
        self.store.build(SERVICE, name, None).map_err(|fault| fault.to_string())
    }
}

impl Keychain for SystemKeychain {
    fn keep(&self, name: &str, secret: &[u8; 32]) -> Result<(), String> {
        self.entry(name)?.set_secret(secret).map_err(|fault| fault.to_string())
    }

    fn secret(&self, name: &str) -> Result<Option<[u8; 32]>, String> {
        match self.entry(name)?.get_secret() {
            Ok(secret) => Ok(secret.try_into().ok()),
            Err(Error::NoEntry) => Ok(None),
            Err(fault) => Err(fault.to_string()),
        }
    }
}

#[cfg(all(unix, not(any(target_os = "macos", target_os = "ios", target_os = "android"))))]
fn platform_store() -> Option<Arc<CredentialStore>> {
    // Without a session bus the library would try to start one.
    std::env::var_os("DBUS_SESSION_BUS_ADDRESS")?;
    let store: Arc<CredentialStore> = dbus_secret_service_keyring_store::Store::new().ok()?;
    Some(store)
}

#[cfg(target_os = "macos")]
fn platform_store() -> Option<Arc<CredentialStore>> {
    let store: Arc<CredentialStore> = apple_native_keyring_store::keychain::Store::new().ok()?;
    Some(store)
}

#[cfg(target_os = "ios")]
fn platform_store() -> Option<Arc<CredentialStore>> {
    let store: Arc<CredentialStore> = apple_native_keyring_store::protected::Store::new().ok()?;
    Some(store)
}

#[cfg(target_os = "windows")]
fn platform_store() -> Option<Arc<CredentialStore>> {
    let store: Arc<CredentialStore> = windows_native_keyring_store::Store::new().ok()?;
    Some(store)
}

#[cfg(target_os = "android")]
fn platform_store() -> Option<Arc<CredentialStore>> {
    let store: Arc<CredentialStore> = android_native_keyring_store::Store::new().ok()?;
    Some(store)
}
