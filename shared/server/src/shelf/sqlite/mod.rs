//! SQLite: one file, one writer at a time, readers that never wait for it.

mod fault;
mod open;
mod tx;

use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use rusqlite::{Connection, TransactionBehavior};

use super::engine::{Engine, Tx, Work};
use crate::ShelfFault;
use tx::transact;

pub(super) use open::Journal;

/// So many readers' connections are kept open; more are opened when needed.
const READERS: usize = 8;

pub(super) struct Sqlite {
    path: PathBuf,
    writer: Mutex<Connection>,
    readers: Mutex<Vec<Connection>>,
}

impl Sqlite {
    pub(super) fn open(path: &Path) -> Result<Self, ShelfFault> {
        Self::open_as(path, Journal::Wal)
    }

    pub(super) fn open_as(path: &Path, journal: Journal) -> Result<Self, ShelfFault> {
        Ok(Self::over(path, open::writer(path, journal)?))
    }

    /// Opens a file only for [`Self::snapshot`].
    pub(super) fn open_to_read(path: &Path) -> Result<Self, ShelfFault> {
        Ok(Self::over(path, open::current(path)?))
    }

    fn over(path: &Path, connection: Connection) -> Self {
        Self { path: path.into(), writer: Mutex::new(connection), readers: Mutex::default() }
    }

    fn reading(&self, job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>) -> Result<(), ShelfFault> {
        let kept = locked(&self.readers).pop();
        let mut connection = kept.map_or_else(|| open::reader(&self.path), Ok)?;
        let done = transact(&mut connection, TransactionBehavior::Deferred, job);
        let mut readers = locked(&self.readers);
        if readers.len() < READERS {
            readers.push(connection);
        }
        done
    }

    /// What [`Self::open_to_read`] opened.
    pub(super) fn snapshot(
        &self,
        job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        transact(&mut locked(&self.writer), TransactionBehavior::Deferred, job)
    }
}

impl Engine for Sqlite {
    fn work(
        &self,
        work: Work,
        job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        match work {
            Work::Read | Work::Snapshot => self.reading(job),
            Work::Step | Work::Write => {
                transact(&mut locked(&self.writer), TransactionBehavior::Immediate, job)
            }
        }
    }
}

/// A thread that panicked left no transaction open: it was rolled back on the way.
fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::shelf::value::{Row, Value};

    fn put(sqlite: &Sqlite, name: i64) -> Result<(), ShelfFault> {
        let long = "x".repeat(10_000);
        sqlite.work(Work::Write, &mut |tx| {
            let values = [
                Value::Blob(vec![0; 32].into()),
                Value::Text(name.to_string().into()),
                Value::Text((&*long).into()),
            ];
            tx.run("INSERT INTO setting (school, name, value) VALUES (?1, ?2, ?3)", &values).map(drop)
        })
    }

    /// SQLite's own limit stands in for a disk without room: it answers both with SQLITE_FULL
    /// (its documentation, result codes; from memory).
    #[test]
    fn a_full_database_says_so_and_keeps_what_it_had() {
        let folder = tempfile::TempDir::new().unwrap();
        let sqlite = Sqlite::open(&folder.path().join("shelf.db")).unwrap();
        put(&sqlite, 0).unwrap();
        locked(&sqlite.writer).query_row("PRAGMA max_page_count = 60", [], |_| Ok(())).unwrap();
        let fault = (1..100).find_map(|name| put(&sqlite, name).err());
        assert_eq!(fault, Some(ShelfFault::Full));
        let count = |tx: &mut dyn Tx| tx.one("SELECT count(*) FROM setting", &[], Row::count);
        let mut counted = None;
        sqlite.work(Work::Read, &mut |tx| count(tx).map(|n| counted = n)).unwrap();
        assert!(counted > Some(1) && counted < Some(60), "{counted:?}");
    }

    /// A job that panics leaves no transaction behind.
    #[test]
    fn a_panic_rolls_back() {
        let folder = tempfile::TempDir::new().unwrap();
        let sqlite = Sqlite::open(&folder.path().join("shelf.db")).unwrap();
        let ends = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| {
            sqlite.work(Work::Write, &mut |tx| {
                tx.run("INSERT INTO head (school, size) VALUES (x'00', 1)", &[])?;
                panic!("invented")
            })
        }));
        assert!(ends.is_err());
        put(&sqlite, 1).unwrap();
        let mut heads = None;
        sqlite
            .work(Work::Read, &mut |tx| {
                tx.one("SELECT count(*) FROM head", &[], Row::count).map(|n| heads = n)
            })
            .unwrap();
        assert_eq!(heads, Some(0));
    }
}
