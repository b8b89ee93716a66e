//! Opening a file: whose it is, whether it is sound, and its format.

use std::fs::OpenOptions;
use std::path::Path;
use std::time::Duration;

use rusqlite::backup::Backup;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, TransactionBehavior};

use crate::ShelfFault;

/// One file per format, applied in order; the file's `user_version` counts those applied.
const MIGRATIONS: &[&str] = &[include_str!("../schema/sqlite-0001.sql")];

/// "WMSH" in the file's `application_id`: a server's database, and no phone's.
const OURS: u32 = 0x574d_5348;

/// Up to this size the whole file is checked at every start (some ten milliseconds).
const CHECKED_PAGES: i64 = 4096;

/// How long a writer of another process is waited for, in milliseconds.
const PATIENCE: &str = "PRAGMA busy_timeout = 10000;";

/// How a file is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Journal {
    /// With a log beside it: for use.
    Wal,
    /// Alone: a backup is a single file.
    Alone,
}

/// Opens or makes the file that is written to.
pub(super) fn writer(path: &Path, journal: Journal) -> Result<Connection, ShelfFault> {
    make(path)?;
    let mut connection = Connection::open(path)?;
    connection.execute_batch(PATIENCE)?;
    // Closing would else write the log beside the file into it, and a damaged file is left as it is.
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    look(&connection)?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
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
    Ok(connection)
}

/// Opens a file only to read it. One of an older format is brought to this one in a copy that is
/// gone afterwards.
pub(super) fn current(path: &Path) -> Result<Connection, ShelfFault> {
    let connection = reader(path)?;
    if look(&connection)? == known() {
        return Ok(connection);
    }
    let mut copy = Connection::open("")?;
    Backup::new(&connection, &mut copy)?.run_to_completion(1024, Duration::ZERO, None)?;
    migrate(&mut copy)?;
    Ok(copy)
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

pub(super) fn reader(path: &Path) -> Result<Connection, ShelfFault> {
    let connection = Connection::open_with_flags(
        path,
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
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
