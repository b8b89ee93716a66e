//! Backups: one format for both databases, so that a school can move from one to the other.
//!
//! A backup is a single SQLite file of the same tables ([`super::sqlite`]), taken while the server
//! runs, of one moment. It can itself be opened as a server's database. What passes (nonces,
//! sign-ins, tries) is not in it. Restoring checks everything before anything is kept.

use std::path::Path;

use super::engine::{Engine as _, Tx, Work};
use super::sqlite::{Journal, Sqlite};
use super::verify::{self, Kept};
use super::{Shelf, value};
use crate::{Refusal, ShelfFault};

/// What a backup has: table, columns, order.
pub(super) const KEPT: &[(&str, &str, &str)] = &[
    ("head", "school, size", "school"),
    ("record", "school, n, digest, device, protected, payload, signature", "school, n"),
    ("photo", "school, digest, total, have, whole", "school, digest"),
    ("photo_part", "school, digest, at, bytes", "school, digest, at"),
    ("setting", "school, name, value", "school, name"),
    ("waiting", "school, device, lines, at", "school, device"),
    ("draft", "school, id, kind, body, made", "school, id"),
];

impl Shelf {
    /// Writes a backup to a new file, readable by its owner only, while everything goes on; says
    /// what is in it.
    ///
    /// # Errors
    /// [`Refusal::Exists`]; else no file is left behind under that name.
    pub fn backup(&self, to: &Path) -> Result<Vec<Kept>, ShelfFault> {
        if to.exists() {
            return Err(Refusal::Exists(to.into()).into());
        }
        let mut part = to.as_os_str().to_owned();
        part.push(".part");
        let part = Path::new(&part);
        let disk = |fault: std::io::Error| ShelfFault::Unreachable(fault.to_string());
        if part.exists() {
            // Of a backup that was broken off.
            std::fs::remove_file(part).map_err(disk)?;
        }
        let target = Sqlite::open_as(part, Journal::Alone)?;
        self.with(Work::Snapshot, |from| target.work(Work::Write, &mut |into| copy(from, into)))?;
        drop(target);
        let kept = check_backup(part)?;
        std::fs::rename(part, to).map_err(disk)?;
        Ok(kept)
    }

    /// Fills this empty database from a backup: all of it, or nothing; says what was in it.
    ///
    /// # Errors
    /// [`Refusal::NotEmpty`], [`Refusal::NotABackup`]; [`ShelfFault::Damaged`] when the backup isn't
    /// as it was written, [`ShelfFault::Newer`] when a newer version wrote it.
    pub fn restore(&self, from: &Path) -> Result<Vec<Kept>, ShelfFault> {
        let source = open(from)?;
        let mut kept = Vec::new();
        source.snapshot(&mut |source| {
            kept = verify::check(source)?;
            self.with(Work::Write, |into| {
                for (table, _, _) in KEPT {
                    let some = format!("SELECT count(*) FROM {table}");
                    if into.one(&some, &[], value::Row::count)? != Some(0) {
                        return Err(Refusal::NotEmpty.into());
                    }
                }
                copy(source, into)
            })
        })?;
        Ok(kept)
    }
}

/// Checks a backup without restoring it; says what is in it.
///
/// # Errors
/// As [`Shelf::restore`].
pub fn check_backup(path: &Path) -> Result<Vec<Kept>, ShelfFault> {
    let mut kept = Vec::new();
    open(path)?.snapshot(&mut |tx| {
        kept = verify::check(tx)?;
        Ok(())
    })?;
    Ok(kept)
}

fn open(path: &Path) -> Result<Sqlite, ShelfFault> {
    let none = |why: String| Refusal::NotABackup { path: path.into(), why };
    match std::fs::metadata(path) {
        Ok(file) if file.len() == 0 => return Err(none("it is empty".into()).into()),
        Ok(_) => {}
        Err(fault) => return Err(none(fault.to_string()).into()),
    }
    Sqlite::open_to_read(path)
}

fn copy(from: &mut dyn Tx, into: &mut dyn Tx) -> Result<(), ShelfFault> {
    KEPT.iter().try_for_each(|(table, columns, order)| {
        let all = format!("SELECT {columns} FROM {table} ORDER BY {order}");
        into.fill(table, columns, &mut |put| from.each(&all, &[], &mut |row| put(&row.values())))
    })
}
