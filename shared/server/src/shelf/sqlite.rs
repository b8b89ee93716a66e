//! SQLite: one file, one writer at a time, readers that never wait for it.

use std::collections::HashMap;
use std::fs::OpenOptions;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use rusqlite::types::{ToSqlOutput, ValueRef};
use rusqlite::{Connection, ToSql, Transaction, TransactionBehavior, params_from_iter};
use witnessmark_core::record::Digest;

use super::School;
use super::engine::{Engine, Put, Take, Tx, Work};
use super::value::{Row, Value};
use crate::ShelfFault;

/// One file per format, applied in order; the file's `user_version` counts those applied.
pub(super) const MIGRATIONS: &[&str] = &[include_str!("schema/sqlite-0001.sql")];

/// "WMSH" in the file's `application_id`: a server's database, and no phone's.
pub(super) const OURS: u32 = 0x574d_5348;

/// Up to this size the whole file is checked at every start (some ten milliseconds).
const CHECKED_PAGES: i64 = 4096;

/// So many readers' connections are kept open; more are opened when needed.
const READERS: usize = 8;

/// How long a writer of another process is waited for, in milliseconds.
const PATIENCE: &str = "PRAGMA busy_timeout = 10000;";

/// How a file is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Journal {
    /// With a log beside it: for use.
    Wal,
    /// Alone: a backup is a single file.
    Alone,
}

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
        make(path)?;
        let mut connection = Connection::open(path)?;
        connection.execute_batch(PATIENCE)?;
        look(&connection)?;
        connection.execute_batch(match journal {
            Journal::Wal => "PRAGMA journal_mode = WAL;      -- a reader never waits for a writer",
            Journal::Alone => "PRAGMA journal_mode = DELETE;",
        })?;
        connection.execute_batch(
            "PRAGMA synchronous = FULL;         -- a record acknowledged survives a power cut
             PRAGMA trusted_schema = OFF;       -- a damaged schema can't call functions
             PRAGMA cell_size_check = ON;       -- damage is told early",
        )?;
        migrate(&mut connection)?;
        Ok(Self { path: path.into(), writer: Mutex::new(connection), readers: Mutex::default() })
    }

    /// Opens a file only to read it. One of an older format is brought to this one in a copy that
    /// is gone afterwards.
    pub(super) fn open_to_read(path: &Path) -> Result<Self, ShelfFault> {
        let connection = reader(path)?;
        let found = look(&connection)?;
        let connection = if found < known() {
            let mut copy = Connection::open("")?;
            rusqlite::backup::Backup::new(&connection, &mut copy)?.run_to_completion(
                1024,
                std::time::Duration::ZERO,
                None,
            )?;
            migrate(&mut copy)?;
            copy
        } else {
            connection
        };
        // The writer's place, since the copy can't be opened twice.
        Ok(Self { path: path.into(), writer: Mutex::new(connection), readers: Mutex::default() })
    }

    fn reading(&self, job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>) -> Result<(), ShelfFault> {
        let kept = locked(&self.readers).pop();
        let mut connection = kept.map_or_else(|| reader(&self.path), Ok)?;
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

fn known() -> u32 {
    u32::try_from(MIGRATIONS.len()).unwrap_or(u32::MAX)
}

/// Makes an empty file that only its owner may read: keys and hashes will be in it.
fn make(path: &Path) -> Result<(), ShelfFault> {
    let mut options = OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    match options.open(path) {
        Err(fault) if fault.kind() != std::io::ErrorKind::AlreadyExists => {
            Err(ShelfFault::Unreachable(format!("{}: {fault}", path.display())))
        }
        _ => Ok(()),
    }
}

fn reader(path: &Path) -> Result<Connection, ShelfFault> {
    let connection = Connection::open_with_flags(
        path,
        rusqlite::OpenFlags::SQLITE_OPEN_READ_ONLY | rusqlite::OpenFlags::SQLITE_OPEN_NO_MUTEX,
    )?;
    connection.execute_batch(PATIENCE)?;
    connection.execute_batch("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;")?;
    Ok(connection)
}

/// Before anything is written: is it ours, sound, and of a format that we know? Says which format.
fn look(connection: &Connection) -> Result<u32, ShelfFault> {
    // In this order: another process may be making the tables, and with them says whose they are.
    let tables: u32 = connection.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    let whose: u32 = connection.query_row("PRAGMA application_id", [], |row| row.get(0))?;
    let found: u32 = connection.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    if whose != OURS && tables > 0 {
        return Err(ShelfFault::Damaged("this file is no server's database".into()));
    }
    if found > known() {
        return Err(ShelfFault::Newer { found, known: known() });
    }
    let pages: i64 = connection.query_row("PRAGMA page_count", [], |row| row.get(0))?;
    if pages <= CHECKED_PAGES {
        let sound: String = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
        if sound != "ok" {
            return Err(ShelfFault::Damaged(sound));
        }
    }
    Ok(found)
}

fn migrate(connection: &mut Connection) -> Result<(), ShelfFault> {
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    // Read again under the lock: another process may have been first.
    let found: u32 = transaction.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    for migration in MIGRATIONS.iter().skip(found as usize) {
        transaction.execute_batch(migration).map_err(|fault| match fault.into() {
            // The tables are there already: the number that says so was damaged.
            ShelfFault::Other(why) => ShelfFault::Damaged(why),
            other => other,
        })?;
    }
    if found < known() {
        transaction.pragma_update(None, "application_id", OURS)?;
        transaction.pragma_update(None, "user_version", known())?;
    }
    Ok(transaction.commit()?)
}

fn transact(
    connection: &mut Connection,
    behavior: TransactionBehavior,
    job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
) -> Result<(), ShelfFault> {
    let mut tx = SqliteTx { inner: connection.transaction_with_behavior(behavior)? };
    job(&mut tx)?;
    Ok(tx.inner.commit()?)
}

struct SqliteTx<'a> {
    inner: Transaction<'a>,
}

impl Tx for SqliteTx<'_> {
    fn batch(&mut self, sql: &str) -> Result<(), ShelfFault> {
        Ok(self.inner.execute_batch(sql)?)
    }

    fn run(&mut self, sql: &str, values: &[Value<'_>]) -> Result<u64, ShelfFault> {
        Ok(self.inner.prepare_cached(sql)?.execute(params_from_iter(values))? as u64)
    }

    fn each(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        let mut statement = self.inner.prepare_cached(sql)?;
        let columns = statement.column_count();
        let mut rows = statement.query(params_from_iter(values))?;
        while let Some(row) = rows.next()? {
            let values = (0..columns).map(|column| owned(row.get_ref(column)?));
            take(Row::new(values.collect::<Result<_, ShelfFault>>()?))?;
        }
        Ok(())
    }

    fn each_held(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault> {
        // A writing transaction holds the whole file.
        self.each(sql, values, take)
    }

    fn places(&mut self, school: School, digests: &[Digest]) -> Result<HashMap<Digest, u64>, ShelfFault> {
        let mut statement =
            self.inner.prepare_cached("SELECT n FROM record WHERE school = ?1 AND digest = ?2")?;
        let mut places = HashMap::new();
        for digest in digests {
            let mut rows = statement.query((school.0.0, digest.0))?;
            if let Some(row) = rows.next()? {
                places.insert(*digest, Row::new(vec![owned(row.get_ref(0)?)?]).count()?);
            }
        }
        Ok(places)
    }

    fn fill(
        &mut self,
        table: &str,
        columns: &str,
        with: &mut dyn FnMut(&mut Put<'_>) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        let places: Vec<String> = (1..).zip(columns.split(',')).map(|(n, _)| format!("?{n}")).collect();
        let sql = format!("INSERT INTO {table} ({columns}) VALUES ({})", places.join(", "));
        let mut statement = self.inner.prepare_cached(&sql)?;
        with(&mut |values| {
            statement.execute(params_from_iter(values))?;
            Ok(())
        })
    }
}

fn owned(value: ValueRef<'_>) -> Result<Value<'static>, ShelfFault> {
    Ok(match value {
        ValueRef::Null => Value::Null,
        ValueRef::Integer(number) => Value::Int(number),
        ValueRef::Text(bytes) => {
            let text = std::str::from_utf8(bytes);
            Value::Text(
                text.map_err(|_| ShelfFault::Damaged("a text is not UTF-8".into()))?.to_owned().into(),
            )
        }
        ValueRef::Blob(bytes) => Value::Blob(bytes.to_vec().into()),
        ValueRef::Real(_) => return Err(ShelfFault::Damaged("a broken number".into())),
    })
}

impl ToSql for Value<'_> {
    fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
        Ok(ToSqlOutput::Borrowed(match self {
            Value::Null => ValueRef::Null,
            Value::Int(number) => ValueRef::Integer(*number),
            Value::Text(text) => ValueRef::Text(text.as_bytes()),
            Value::Blob(bytes) => ValueRef::Blob(bytes),
        }))
    }
}

impl From<rusqlite::Error> for ShelfFault {
    fn from(fault: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode::{
            CannotOpen, DatabaseBusy, DatabaseCorrupt, DatabaseLocked, DiskFull, NotADatabase,
            PermissionDenied, ReadOnly, SystemIoFailure,
        };
        let text = fault.to_string();
        match fault.sqlite_error_code() {
            Some(DiskFull) => Self::Full,
            Some(DatabaseCorrupt | NotADatabase) => Self::Damaged(text),
            Some(SystemIoFailure | CannotOpen | ReadOnly | PermissionDenied) => Self::Unreachable(text),
            Some(DatabaseBusy | DatabaseLocked) => Self::Busy,
            _ => Self::Other(text),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
