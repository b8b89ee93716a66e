//! Opening the database, its format, and transactions.

use rusqlite::config::DbConfig;
use rusqlite::{Connection, Transaction, TransactionBehavior};

use crate::trusted::Trusted;
use crate::{StoreFault, sound};

/// One file per format, applied in order; the file's `user_version` counts those applied.
const MIGRATIONS: &[&str] = &[
    include_str!("../schema/0001.sql"),
    include_str!("../schema/0002.sql"),
    include_str!("../schema/0003.sql"),
    include_str!("../schema/0004.sql"),
];

/// Raised when what is derived changes its form: an older one is thrown away and derived anew.
const DERIVED: &str = "7";

/// Up to this size the whole file is checked at every start (some ten milliseconds).
const CHECKED_PAGES: i64 = 4096;

/// The database of one device.
pub struct Store {
    connection: Connection,
    trusted: Trusted,
}

/// A transaction: all of it happens, or none.
pub struct Tx<'a> {
    pub(crate) inner: Transaction<'a>,
    pub(crate) trusted: &'a Trusted,
}

impl Store {
    /// Opens or makes the database at `path` (`:memory:` for one that isn't kept).
    ///
    /// # Errors
    /// [`StoreFault::Damaged`] for a file that isn't sound, [`StoreFault::Newer`] for one
    /// of a newer version; neither is touched.
    pub fn open(path: &str) -> Result<Self, StoreFault> {
        let mut connection = Connection::open(path)?;
        // Closing would else write the log beside the file into it, and a damaged file is left as it is.
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
        // Before anything is written: is it ours, sound, and of a format that we know?
        let found: u32 = connection.query_row("PRAGMA user_version", [], |row| row.get(0))?;
        let known = u32::try_from(MIGRATIONS.len()).unwrap_or(u32::MAX);
        if found > known {
            return Err(StoreFault::Newer { found, known });
        }
        let pages: i64 = connection.query_row("PRAGMA page_count", [], |row| row.get(0))?;
        if pages <= CHECKED_PAGES {
            let sound: String = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
            if sound != "ok" {
                return Err(StoreFault::Damaged(sound));
            }
            if found == known {
                sound::check(&connection)?;
            }
        }
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
        connection.execute_batch(
            "PRAGMA journal_mode = WAL;         -- a reader never waits for a writer
             PRAGMA synchronous = FULL;         -- an answer acknowledged survives the battery falling out
             PRAGMA foreign_keys = ON;
             PRAGMA trusted_schema = OFF;       -- a damaged schema can't call functions
             PRAGMA cell_size_check = ON;       -- damage is told early
             PRAGMA busy_timeout = 3000;        -- the command line beside the app waits its turn",
        )?;
        let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        // Read again under the lock: another process may have been first.
        let found: u32 = transaction.query_row("PRAGMA user_version", [], |row| row.get(0))?;
        for migration in MIGRATIONS.iter().skip(found as usize) {
            transaction.execute_batch(migration).map_err(|fault| match fault.into() {
                // The tables are there already: the number that says so was damaged.
                StoreFault::Other(why) => StoreFault::Damaged(why),
                other => other,
            })?;
        }
        transaction.pragma_update(None, "user_version", known)?;
        transaction.commit()?;
        let mut store = Self { connection, trusted: Trusted::default() };
        store.write(|tx| {
            if tx.setting("derived")?.as_deref() != Some(DERIVED) || !tx.derived_reads()? {
                tx.rebuild()?;
                tx.set("derived", DERIVED)?;
            }
            Ok::<_, StoreFault>(())
        })?;
        Ok(store)
    }

    /// Does `work` in one writing transaction; an error leaves nothing behind.
    ///
    /// # Errors
    /// That of `work`, or of the commit.
    pub fn write<T, E: From<StoreFault>>(
        &mut self,
        work: impl FnOnce(&Tx<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        self.transact(TransactionBehavior::Immediate, work)
    }

    /// Does `work` on one consistent state.
    ///
    /// # Errors
    /// That of `work`.
    pub fn read<T, E: From<StoreFault>>(
        &mut self,
        work: impl FnOnce(&Tx<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        self.transact(TransactionBehavior::Deferred, work)
    }

    fn transact<T, E: From<StoreFault>>(
        &mut self,
        behavior: TransactionBehavior,
        work: impl FnOnce(&Tx<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        let inner = self.connection.transaction_with_behavior(behavior).map_err(StoreFault::from)?;
        self.trusted.begin(&inner)?;
        let tx = Tx { inner, trusted: &self.trusted };
        let done = work(&tx).and_then(|done| {
            tx.settle()?;
            tx.inner.commit().map_err(StoreFault::from)?;
            Ok(done)
        });
        if done.is_err() {
            self.trusted.forget();
        }
        done
    }

    /// Sets the most that the file may grow to, in pages, and returns the limit in force;
    /// beyond it every write is [`StoreFault::Full`].
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn limit_pages(&self, pages: u32) -> Result<u32, StoreFault> {
        Ok(self.connection.query_row(&format!("PRAGMA max_page_count = {pages}"), [], |row| row.get(0))?)
    }
}
