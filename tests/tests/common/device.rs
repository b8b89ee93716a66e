//! A device inside the test: its clock stands at one moment, its randomness is a stream of its own.

use std::path::Path;
use std::sync::Mutex;

use chrono::{DateTime, FixedOffset};
use witnessmark_app::views::MachineCard;
use witnessmark_app::{App, Fault, Keychain, Platform};
use witnessmark_core::record::Digest;
use witnessmark_store::Store;

use super::PIN;

pub const NOW: &str = "2026-05-02T06:41:07+02:00";

pub struct Device(Mutex<u64>);

impl Device {
    pub fn new() -> Box<Self> {
        Box::new(Self(Mutex::new(0)))
    }
}

impl Platform for Device {
    fn now(&self) -> DateTime<FixedOffset> {
        DateTime::parse_from_rfc3339(NOW).unwrap()
    }

    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault> {
        for chunk in bytes.chunks_mut(32) {
            let mut count = self.0.lock().unwrap();
            *count += 1;
            let drawn = Digest::of(&count.to_be_bytes()).0;
            chunk.copy_from_slice(&drawn[..chunk.len()]);
        }
        Ok(())
    }

    fn keychain(&self) -> Option<&dyn Keychain> {
        None
    }
}

/// An app over this database, not begun.
pub fn app(database: &str) -> App {
    App::new(Store::open(database).unwrap(), Device::new()).unwrap()
}

/// An app over this database, begun, with the invented machines.
pub fn begun(database: &str) -> (App, Vec<MachineCard>) {
    let mut app = app(database);
    app.begin("Test Pilot".into(), PIN.into()).unwrap();
    let machines = app.demo().unwrap();
    (app, machines)
}

/// The database in a data folder.
pub fn database(folder: &Path) -> String {
    folder.join("witnessmark.db").to_str().unwrap().to_owned()
}
