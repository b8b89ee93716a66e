//! An empty shelf of either sort, and invented records to put on it.

#![allow(dead_code, clippy::unwrap_used)]

pub mod postgres;
pub mod records;

use std::path::PathBuf;

use tempfile::TempDir;
use witnessmark_core::record::{Digest, Record};
use witnessmark_server::shelf::{School, Shelf};

use postgres::Cluster;
pub use records::Records;

/// A place for one test's database.
pub struct Place {
    /// As [`Shelf::open`] takes it.
    pub address: String,
    /// A folder for its files.
    pub folder: TempDir,
    database: Option<String>,
}

impl Place {
    pub fn sqlite() -> Self {
        let folder = TempDir::new().unwrap();
        let address = folder.path().join("shelf.db").to_str().unwrap().to_owned();
        Self { address, folder, database: None }
    }

    pub fn postgres() -> Self {
        let database = Cluster::get().database();
        let address = Cluster::get().address(&database);
        Self { address, folder: TempDir::new().unwrap(), database: Some(database) }
    }

    pub fn open(&self) -> Shelf {
        Shelf::open(&self.address).unwrap()
    }

    pub fn file(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// Does something beside the shelf: one text for each database.
    pub fn beside(&self, sqlite: &str, postgres: &str) {
        match &self.database {
            Some(database) => drop(Cluster::get().sql(database, postgres)),
            None => rusqlite::Connection::open(&self.address).unwrap().execute_batch(sqlite).unwrap(),
        }
    }
}

/// Runs each case on both databases.
#[macro_export]
macro_rules! on_both {
    ($($case:ident),+ $(,)?) => {
        mod sqlite {
            $(#[test] fn $case() { super::$case(&$crate::common::Place::sqlite()); })+
        }
        mod postgres {
            $(#[test] fn $case() { super::$case(&$crate::common::Place::postgres()); })+
        }
    };
}

/// The first so many records of an invented device, each following from the one before.
pub fn records(device: u8, count: usize) -> Vec<Record> {
    Records::of(device).take(count).collect()
}

pub fn school(name: &str) -> School {
    School(Digest::of(name.as_bytes()))
}

pub fn digests(records: &[Record]) -> Vec<Digest> {
    records.iter().map(|record| record.digest).collect()
}

pub fn refs(records: &[Record]) -> Vec<&Record> {
    records.iter().collect()
}
