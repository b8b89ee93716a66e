//! What the board prepared and a device is to sign.

use super::engine::Work;
use super::value::{Row, text};
use super::{School, Shelf};
use crate::{Refusal, ShelfFault};

/// Something prepared.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// Its id, as its code carries it.
    pub id: String,
    /// What is to be signed.
    pub kind: String,
    /// What it says, JSON.
    pub body: String,
    /// When it was prepared, unix seconds.
    pub made: i64,
}

const COLUMNS: &str = "id, kind, body, made";

fn draft(row: &mut Row) -> Result<Draft, ShelfFault> {
    Ok(Draft { id: row.text()?, kind: row.text()?, body: row.text()?, made: row.int()? })
}

impl Shelf {
    /// Keeps a draft. Once kept it never changes: somebody may be about to sign it.
    ///
    /// # Errors
    /// [`Refusal::Taken`] for an id that is in use.
    pub fn draft_put(&self, school: School, draft: &Draft) -> Result<(), ShelfFault> {
        let put = self.with(Work::Step, |tx| {
            tx.run(
                "INSERT INTO draft (school, id, kind, body, made) VALUES (?1, ?2, ?3, ?4, ?5)
                 ON CONFLICT (school, id) DO NOTHING",
                &[school.into(), text(&draft.id)?, text(&draft.kind)?, text(&draft.body)?, draft.made.into()],
            )
        })?;
        if put == 1 { Ok(()) } else { Err(Refusal::Taken.into()) }
    }

    /// A draft.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn draft(&self, school: School, id: &str) -> Result<Option<Draft>, ShelfFault> {
        let sql = format!("SELECT {COLUMNS} FROM draft WHERE school = ?1 AND id = ?2");
        self.with(Work::Read, |tx| tx.one(&sql, &[school.into(), text(id)?], draft))
    }

    /// All drafts, oldest first.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn drafts(&self, school: School) -> Result<Vec<Draft>, ShelfFault> {
        let sql = format!("SELECT {COLUMNS} FROM draft WHERE school = ?1 ORDER BY made, id");
        self.with(Work::Read, |tx| tx.all(&sql, &[school.into()], draft))
    }

    /// Drops a draft; says whether it was there.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn draft_drop(&self, school: School, id: &str) -> Result<bool, ShelfFault> {
        self.with(Work::Step, |tx| {
            Ok(tx.run("DELETE FROM draft WHERE school = ?1 AND id = ?2", &[school.into(), text(id)?])? == 1)
        })
    }

    /// Forgets drafts made before a moment.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn draft_forget(&self, school: School, before: i64) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM draft WHERE school = ?1 AND made < ?2", &[school.into(), before.into()])
        })
    }
}
