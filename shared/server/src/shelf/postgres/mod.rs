//! PostgreSQL: several server processes over one database.

mod connect;
mod fault;
mod tx;

use std::fmt;

use deadpool_postgres::{Object, Pool};
use tokio::runtime::Runtime;

use super::address;
use super::engine::{Engine, Tx, Work};
use crate::ShelfFault;
use tx::PostgresTx;

/// One file per format, applied in order; the table `format` counts those applied.
pub(super) const MIGRATIONS: &[&str] = &[include_str!("../schema/postgres-0001.sql")];

/// Held while the format is brought up to date. Any number does that nobody else uses here.
const MIGRATING: i64 = 0x574d_5348;

pub(super) struct Postgres {
    /// The connections' own: callers are threads that may block.
    runtime: Option<Runtime>,
    pool: Pool,
}

impl Postgres {
    pub(super) fn open(address: &str) -> Result<Self, ShelfFault> {
        let config = address::postgres(address)?;
        let runtime = tokio::runtime::Builder::new_multi_thread()
            .worker_threads(1)
            .thread_name("shelf")
            .enable_all()
            .build()
            .map_err(|fault| ShelfFault::Other(fault.to_string()))?;
        let pool = connect::pool(config)?;
        let postgres = Self { runtime: Some(runtime), pool };
        postgres.work(Work::Write, &mut |tx| migrate(tx))?;
        Ok(postgres)
    }
}

impl Engine for Postgres {
    fn work(
        &self,
        work: Work,
        job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault> {
        let closed = || ShelfFault::Other("the database was closed".into());
        let handle = self.runtime.as_ref().ok_or_else(closed)?.handle();
        let connection = handle.block_on(self.pool.get())?;
        let mut tx = PostgresTx::begin(handle, Borrowed(Some(connection)), work)?;
        job(&mut tx)?;
        tx.commit()
    }
}

impl Drop for Postgres {
    /// Wherever the last owner lets go, even where nothing may block.
    fn drop(&mut self) {
        if let Some(runtime) = self.runtime.take() {
            runtime.shutdown_background();
        }
    }
}

/// A connection of the pool. It goes back only if its work came to a clean end: a transaction
/// left open would swallow the next one's work.
struct Borrowed(Option<Object>);

impl Borrowed {
    fn discard(&mut self) {
        if let Some(connection) = self.0.take() {
            drop(Object::take(connection));
        }
    }
}

impl fmt::Debug for Postgres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Postgres")
    }
}

fn migrate(tx: &mut dyn Tx) -> Result<(), ShelfFault> {
    tx.each("SELECT 1::bigint FROM pg_advisory_xact_lock(?1)", &[MIGRATING.into()], &mut |_| Ok(()))?;
    let known = u32::try_from(MIGRATIONS.len()).unwrap_or(u32::MAX);
    let made = tx.one("SELECT 1::bigint WHERE to_regclass('format') IS NOT NULL", &[], |row| row.int())?;
    if made.is_none() {
        tx.batch("CREATE TABLE format (number BIGINT NOT NULL); INSERT INTO format (number) VALUES (0)")?;
    }
    let found = tx.one("SELECT number FROM format", &[], |row| row.count())?;
    let found = found.and_then(|number| u32::try_from(number).ok());
    let found = found.ok_or_else(|| ShelfFault::Damaged("the format's number is lost".into()))?;
    if found > known {
        return Err(ShelfFault::Newer { found, known });
    }
    for migration in MIGRATIONS.iter().skip(found as usize) {
        tx.batch(migration)?;
    }
    if found < known {
        tx.run("UPDATE format SET number = ?1", &[i64::from(known).into()])?;
    }
    Ok(())
}
