//! What a database must do to serve as the shelf's.
//!
//! Statements are written once for both: numbered placeholders `?1, ?2, …`, ON CONFLICT and
//! RETURNING, which SQLite and PostgreSQL read alike.

use std::collections::HashMap;

use witnessmark_core::record::Digest;

use super::School;
use super::value::{Row, Value};
use crate::ShelfFault;

/// What a piece of work needs of the database.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Work {
    /// Reading statements, each consistent in itself.
    Read,
    /// Reading statements that all see one moment.
    Snapshot,
    /// One writing statement.
    Step,
    /// Statements of which all happen, or none.
    Write,
}

/// A database.
pub(super) trait Engine: Send + Sync {
    /// Does the job once; an error of it leaves nothing behind.
    fn work(
        &self,
        work: Work,
        job: &mut dyn FnMut(&mut dyn Tx) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault>;
}

/// Takes one row.
pub(super) type Take<'a> = dyn FnMut(Row) -> Result<(), ShelfFault> + 'a;
/// Puts one row.
pub(super) type Put<'a> = dyn FnMut(&[Value<'_>]) -> Result<(), ShelfFault> + 'a;

/// A piece of work going on.
pub(super) trait Tx {
    /// Runs statements of this very database's, without values.
    fn batch(&mut self, sql: &str) -> Result<(), ShelfFault>;

    /// Runs a statement; says how many rows it touched.
    fn run(&mut self, sql: &str, values: &[Value<'_>]) -> Result<u64, ShelfFault>;

    /// Gives each row of a statement.
    fn each(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault>;

    /// Gives each row and holds it against every other writer until the work is over.
    fn each_held(&mut self, sql: &str, values: &[Value<'_>], take: &mut Take<'_>) -> Result<(), ShelfFault>;

    /// Where in the school's log these records are, of those that are there.
    fn places(&mut self, school: School, digests: &[Digest]) -> Result<HashMap<Digest, u64>, ShelfFault>;

    /// Inserts many rows; `with` puts them.
    fn fill(
        &mut self,
        table: &str,
        columns: &str,
        with: &mut dyn FnMut(&mut Put<'_>) -> Result<(), ShelfFault>,
    ) -> Result<(), ShelfFault>;
}

impl dyn Tx + '_ {
    /// All rows.
    pub(super) fn all<T>(
        &mut self,
        sql: &str,
        values: &[Value<'_>],
        mut read: impl FnMut(&mut Row) -> Result<T, ShelfFault>,
    ) -> Result<Vec<T>, ShelfFault> {
        let mut found = Vec::new();
        self.each(sql, values, &mut |mut row| {
            found.push(read(&mut row)?);
            Ok(())
        })?;
        Ok(found)
    }

    /// The one row, if there is one.
    pub(super) fn one<T>(
        &mut self,
        sql: &str,
        values: &[Value<'_>],
        read: impl FnMut(&mut Row) -> Result<T, ShelfFault>,
    ) -> Result<Option<T>, ShelfFault> {
        Ok(self.all(sql, values, read)?.into_iter().next())
    }

    /// The one row, if there is one, held until the work is over.
    pub(super) fn held<T>(
        &mut self,
        sql: &str,
        values: &[Value<'_>],
        mut read: impl FnMut(&mut Row) -> Result<T, ShelfFault>,
    ) -> Result<Option<T>, ShelfFault> {
        let mut found = None;
        self.each_held(sql, values, &mut |mut row| {
            found = Some(read(&mut row)?);
            Ok(())
        })?;
        Ok(found)
    }
}
