//! One run of the command: where the data lie, and how answers are told.

use std::path::PathBuf;

use chrono::{DateTime, FixedOffset, NaiveDate};
use witnessmark_app::{App, Fault, FaultView, Platform};
use witnessmark_host::System;

use crate::voice::Voice;

/// A server's name among the platform's data folders.
const SERVER_FOLDER: &str = "org.witnessmark.server";

/// One run.
pub struct Session {
    data: Option<PathBuf>,
    /// Whether answers are for programs.
    pub json: bool,
    app: Option<App>,
}

impl Session {
    /// A run over this data folder, or the platform's own.
    pub fn new(data: Option<PathBuf>, json: bool) -> Self {
        Self { data, json, app: None }
    }

    /// How this run speaks beside its answer.
    pub fn voice(&self) -> Voice {
        Voice::new(self.json)
    }

    /// The day it is, where this runs.
    pub fn today() -> NaiveDate {
        Self::now().date_naive()
    }

    /// The moment it is, where this runs.
    pub fn now() -> DateTime<FixedOffset> {
        System::new().now()
    }

    /// The folder of a server's data: what was given, or one beside the app's own.
    pub fn server_folder(&self) -> Result<PathBuf, Fault> {
        match &self.data {
            Some(folder) => Ok(folder.clone()),
            None => Ok(dirs::data_dir().ok_or_else(|| Fault::new("no-data-folder"))?.join(SERVER_FOLDER)),
        }
    }

    /// The app over the data folder.
    pub fn open(&mut self) -> Result<&mut App, Fault> {
        let folder = match &self.data {
            Some(folder) => folder.clone(),
            None => {
                dirs::data_dir().ok_or_else(|| Fault::new("no-data-folder"))?.join(witnessmark_host::FOLDER)
            }
        };
        let mut app = witnessmark_host::open(&folder)?;
        if let Some(warning) = app.start()?.warning {
            self.voice().note(&warning);
        }
        Ok(self.app.insert(app))
    }

    /// The app over nothing, for what needs no data folder.
    pub fn unkept(&mut self) -> Result<&mut App, Fault> {
        let app = App::unkept(Box::new(System::new()))?;
        Ok(self.app.insert(app))
    }

    /// The app over the data folder, to be kept by a server.
    pub fn take_for_server(&mut self) -> Result<App, Fault> {
        self.open()?;
        self.app.take().ok_or_else(|| Fault::internal("the app was opened and isn't there"))
    }

    /// A fault in the person's language.
    pub fn show(&self, fault: &Fault) -> FaultView {
        match &self.app {
            Some(app) => app.show(fault),
            None => witnessmark_app::show(fault),
        }
    }
}
