//! The way to the app, open only while it works: nobody waits at it for the network.

use std::sync::Mutex;

use witnessmark_app::{App, Fault, FaultView};

/// A face's app.
pub trait Door {
    /// Lets the app do something. Whoever waits for the network must be outside.
    ///
    /// # Errors
    /// [`Fault`] where the app couldn't be opened.
    fn app<T>(&self, work: impl FnOnce(&mut App) -> T) -> Result<T, Fault>;
}

/// The app, or why it couldn't be opened: the screens show that too.
impl Door for Mutex<Result<App, Fault>> {
    fn app<T>(&self, work: impl FnOnce(&mut App) -> T) -> Result<T, Fault> {
        // A poisoned lock only means that another call failed; the database holds whole transactions.
        let mut app = self.lock().unwrap_or_else(|poisoned| poisoned.into_inner());
        match app.as_mut() {
            Ok(app) => Ok(work(app)),
            Err(fault) => Err(fault.clone()),
        }
    }
}

/// An app that is borrowed for one question.
impl Door for Mutex<&mut App> {
    fn app<T>(&self, work: impl FnOnce(&mut App) -> T) -> Result<T, Fault> {
        Ok(work(&mut self.lock().unwrap_or_else(|poisoned| poisoned.into_inner())))
    }
}

/// A fault in the person's language, or in English where there is no app.
pub(super) fn show(door: &impl Door, fault: &Fault) -> FaultView {
    door.app(|app| app.show(fault)).unwrap_or_else(|_| witnessmark_app::show(fault))
}
