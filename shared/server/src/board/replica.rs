//! The board's own copy of the log: an app that signs nothing. It can be thrown away, and is where it
//! doesn't fit the log.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use axum::body::Bytes;
use witnessmark_app::{App, Fault};
use witnessmark_core::record::Record;
use witnessmark_store::{Store, StoreFault};

use super::tongue::Tongue;
use super::{Config, Platforms, fault};
use crate::http::HttpFault;
use crate::{Server, ShelfFault};

/// Its file in the server's data folder.
const FILE: &str = "board.db";
/// Records, and bytes of them, taken in one step; in between, the board can be looked at.
const LINES: usize = 1000;
const BYTES: usize = 8 * 1024 * 1024;
/// How long the board's text may be shown again, seconds: some of it depends on the time.
const FRESH: i64 = 10;

/// The copy.
pub(super) struct Replica {
    /// None until it was opened.
    app: Mutex<Option<App>>,
    /// The whole board as told last in each language: at which size, and when.
    told: Mutex<BTreeMap<String, (u64, i64, Bytes)>>,
    folder: PathBuf,
    platforms: Platforms,
}

impl Replica {
    pub(super) fn new(config: &Config) -> Self {
        let (folder, platforms) = (config.folder.clone(), config.platforms.clone());
        Self { app: Mutex::default(), told: Mutex::default(), folder, platforms }
    }

    // A thread that panicked left the database as it was before its step.
    fn app(&self) -> MutexGuard<'_, Option<App>> {
        self.app.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The copy as somebody asks it who speaks these languages.
    pub(super) fn asked_in<'a>(&'a self, tongue: &'a Tongue) -> Asked<'a> {
        Asked { replica: self, tongue }
    }

    /// Takes what is new in the log; `each` sees every step's records. Where the copy is missing, damaged
    /// or doesn't fit the log, it is made anew from the first record.
    pub(super) fn follow(
        &self,
        server: &Server,
        mut each: impl FnMut(&[Record]) -> Result<(), ShelfFault>,
    ) -> Result<u64, ShelfFault> {
        self.open(server).map_err(other)?;
        loop {
            match self.step(server, &mut each)? {
                Step::Took => {}
                Step::Level(size) => return Ok(size),
                Step::Damaged(why) => {
                    tracing::warn!(%why, "the board's own copy is made anew");
                    let mut app = self.app();
                    *app = None;
                    *app = Some(anew(server, &self.file(), &self.platforms).map_err(other)?);
                    self.told.lock().unwrap_or_else(PoisonError::into_inner).clear();
                }
            }
        }
    }

    fn file(&self) -> PathBuf {
        self.folder.join(FILE)
    }

    fn open(&self, server: &Server) -> Result<(), Fault> {
        let mut app = self.app();
        if app.is_none() {
            fs::create_dir_all(&self.folder).map_err(Fault::internal)?;
            let file = self.file();
            *app = Some(match fitting(server, &file, &self.platforms)? {
                Some(app) => app,
                None => anew(server, &file, &self.platforms)?,
            });
        }
        Ok(())
    }

    fn step(
        &self,
        server: &Server,
        each: &mut impl FnMut(&[Record]) -> Result<(), ShelfFault>,
    ) -> Result<Step, ShelfFault> {
        let school = server.school();
        let Some(from) = self.app().as_mut().map(App::replica_size) else { return Err(ShelfFault::Busy) };
        let from = match from {
            Ok(from) => from,
            Err(why) => return damaged_or_else(why),
        };
        let lines = school.shelf().log(school.on_shelf(), from, LINES, BYTES)?;
        if lines.is_empty() {
            return Ok(Step::Level(from));
        }
        let records: Vec<Record> = lines.into_iter().map(|line| line.record()).collect::<Result<_, _>>()?;
        let Some(taken) = self.app().as_mut().map(|app| app.replica_take(from, &records)) else {
            return Err(ShelfFault::Busy);
        };
        match taken {
            Ok(()) => each(&records).map(|()| Step::Took),
            Err(why) => damaged_or_else(why),
        }
    }
}

/// The copy, in front of somebody who asks.
pub(super) struct Asked<'a> {
    replica: &'a Replica,
    tongue: &'a Tongue,
}

impl Asked<'_> {
    /// Asks the app.
    pub(super) fn ask<T>(&self, ask: impl FnOnce(&mut App) -> Result<T, Fault>) -> Result<T, HttpFault> {
        let mut app = self.replica.app();
        let app = app.as_mut().ok_or(ShelfFault::Busy)?;
        app.speak(self.tongue.wished());
        ask(app).map_err(|why| fault::told(app, &why))
    }

    /// The whole board, as JSON.
    pub(super) fn board(&self, now: i64) -> Result<Bytes, HttpFault> {
        let mut told = self.replica.told.lock().unwrap_or_else(PoisonError::into_inner);
        let (language, size) = self.ask(|app| Ok((app.language().to_owned(), app.replica_size()?)))?;
        if let Some((at, when, text)) = told.get(&language)
            && *at == size
            && now.abs_diff(*when) < FRESH.unsigned_abs()
        {
            return Ok(text.clone());
        }
        let board = self.ask(App::board)?;
        let text = serde_json::to_vec(&board).map_err(|why| ShelfFault::Other(why.to_string()))?;
        let text = Bytes::from(text);
        told.insert(language, (size, now, text.clone()));
        Ok(text)
    }
}

/// A copy that is damaged is made anew; anything else may pass.
fn damaged_or_else(why: Fault) -> Result<Step, ShelfFault> {
    if why.kind == "database-damaged" { Ok(Step::Damaged(why.to_string())) } else { Err(other(why)) }
}

fn other(why: Fault) -> ShelfFault {
    ShelfFault::Other(why.to_string())
}

/// What one step came to.
enum Step {
    /// More may be there.
    Took,
    /// Nothing new at this size.
    Level(u64),
    /// The copy can't be used.
    Damaged(String),
}

/// The copy that is there, if it is sound and its last record is the log's at that place.
fn fitting(server: &Server, file: &Path, platforms: &Platforms) -> Result<Option<App>, Fault> {
    if !file.exists() {
        return Ok(None);
    }
    let store = match Store::open(&file.to_string_lossy()) {
        Ok(store) => store,
        // Of a newer version too: it is only a copy.
        Err(StoreFault::Damaged(_) | StoreFault::Newer { .. }) => return Ok(None),
        Err(other) => return Err(other.into()),
    };
    let school = server.school();
    let mut app = App::new(store, platforms())?;
    let same = match app.school() {
        Ok(view) => view.school.is_some_and(|brief| brief.id == school.id().to_string()),
        Err(_) => false,
    };
    let Some(last) = app.replica_size()?.checked_sub(1).filter(|_| same) else { return Ok(None) };
    let lines = school.shelf().log(school.on_shelf(), last, 1, BYTES).map_err(Fault::internal)?;
    let known = lines.first().is_some_and(|line| app.record(line.digest.to_string()).is_ok());
    Ok(known.then_some(app))
}

/// An empty copy in the place of whatever lies there.
fn anew(server: &Server, file: &Path, platforms: &Platforms) -> Result<App, Fault> {
    for suffix in ["", "-wal", "-shm"] {
        let part = PathBuf::from(format!("{}{suffix}", file.display()));
        match fs::remove_file(&part) {
            Err(why) if why.kind() != std::io::ErrorKind::NotFound => {
                return Err(Fault::new("file").text("file", part.display()).text("why", why));
            }
            _ => {}
        }
    }
    let mut app = App::new(Store::open(&file.to_string_lossy())?, platforms())?;
    app.replica_of(server.school().id(), None)?;
    Ok(app)
}
