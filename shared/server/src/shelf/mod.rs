//! What the server keeps, in SQLite or PostgreSQL: each school's log in order of arrival, its
//! photos, and what signing in and preparing need.
//!
//! One set of statements serves both (`value`, `engine`); the two engines differ in how they lock,
//! insert in bulk and are opened. Everything blocks: call it from a thread that may (tokio's
//! `spawn_blocking`). Nothing here knows the time: moments are unix seconds, and arguments.

mod address;
mod attempts;
mod backup;
mod desk;
mod drafts;
mod engine;
mod log;
mod nonces;
mod photos;
mod postgres;
mod settings;
mod sqlite;
mod value;
mod verify;
mod waiting;

use std::fmt;

use witnessmark_core::record::Digest;

use crate::ShelfFault;
use engine::{Engine, Tx, Work};

pub use backup::check_backup;
pub use desk::{Challenge, Session};
pub use drafts::Draft;
pub use log::Line;
pub use photos::PhotoState;
pub use verify::Kept;
pub use waiting::Waiting;

/// A school, named by the digest of its founding record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct School(pub Digest);

/// What the server keeps, of every school in one database.
pub struct Shelf {
    engine: Box<dyn Engine>,
}

impl fmt::Debug for Shelf {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Shelf")
    }
}

impl Shelf {
    /// Opens the database at `address` and brings it to this version's format:
    /// `postgres://…` for PostgreSQL, else the path of an SQLite file, made if it isn't there.
    ///
    /// A PostgreSQL on another machine is spoken to by TLS, checked against the system's
    /// certificates (or those in `SSL_CERT_FILE`), unless the address says `sslmode=disable`.
    ///
    /// # Errors
    /// [`ShelfFault`]; a database of a newer version or of another program is left as it is.
    pub fn open(address: &str) -> Result<Self, ShelfFault> {
        let engine: Box<dyn Engine> = if address::is_postgres(address) {
            Box::new(postgres::Postgres::open(address)?)
        } else {
            Box::new(sqlite::Sqlite::open(address.as_ref())?)
        };
        Ok(Self { engine })
    }

    /// The schools that have a log here.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn schools(&self) -> Result<Vec<School>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.all("SELECT school FROM head WHERE size > 0 ORDER BY school", &[], |row| {
                Ok(School(row.digest()?))
            })
        })
    }

    fn with<T>(
        &self,
        work: Work,
        job: impl FnOnce(&mut dyn Tx) -> Result<T, ShelfFault>,
    ) -> Result<T, ShelfFault> {
        let mut job = Some(job);
        let mut done = None;
        self.engine.work(work, &mut |tx| {
            if let Some(job) = job.take() {
                done = Some(job(tx)?);
            }
            Ok(())
        })?;
        done.ok_or_else(|| ShelfFault::Other("nothing was done".into()))
    }
}
