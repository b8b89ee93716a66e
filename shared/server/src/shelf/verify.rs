//! Is what was kept still what was taken?

use sha2::{Digest as _, Sha256};
use witnessmark_core::record::Digest;

use super::School;
use super::backup::KEPT;
use super::engine::Tx;
use super::log;
use crate::ShelfFault;

/// What is kept of one school.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Kept {
    /// Which.
    pub school: School,
    /// How many records its log has.
    pub records: u64,
    /// How many of its photos are whole.
    pub photos: u64,
}

/// Every school of which anything is kept, with the length that its log should have.
const HEADS: &str = "SELECT school, coalesce((SELECT size FROM head WHERE head.school = one.school), 0)
     FROM (SELECT school FROM head UNION SELECT school FROM record UNION SELECT school FROM photo) AS one
     ORDER BY school";

/// Reads everything: each record is one, signed text and digest fit, no index is missing; each
/// photo's parts are in line, and a whole one fits its name.
///
/// # Errors
/// [`ShelfFault::Damaged`], with what was found.
pub(super) fn check(tx: &mut dyn Tx) -> Result<Vec<Kept>, ShelfFault> {
    look(tx).map_err(|fault| match fault {
        // A table or a column that isn't there: in a file of ours that is damage.
        ShelfFault::Other(why) => ShelfFault::Damaged(why),
        other => other,
    })
}

fn look(tx: &mut dyn Tx) -> Result<Vec<Kept>, ShelfFault> {
    for (table, columns, _) in KEPT {
        tx.each(&format!("SELECT {columns} FROM {table} LIMIT 1"), &[], &mut |_| Ok(()))?;
    }
    let heads = tx.all(HEADS, &[], |row| Ok((School(row.digest()?), row.count()?)))?;
    let mut kept = Vec::new();
    for (school, size) in heads {
        let records = records(tx, school)?;
        if records != size {
            return damaged(format!("{records} records are there of {size}"));
        }
        kept.push(Kept { school, records, photos: photos(tx, school)? });
    }
    Ok(kept)
}

fn damaged<T>(why: String) -> Result<T, ShelfFault> {
    Err(ShelfFault::Damaged(why))
}

fn records(tx: &mut dyn Tx, school: School) -> Result<u64, ShelfFault> {
    let sql = format!("SELECT {} FROM record WHERE school = ?1 ORDER BY n", log::COLUMNS);
    let mut next = 0_u64;
    tx.each(&sql, &[school.into()], &mut |mut row| {
        let line = log::line(&mut row)?;
        if line.index != next {
            return damaged(format!("record {next} is missing"));
        }
        line.record()?;
        next = next.saturating_add(1);
        Ok(())
    })?;
    Ok(next)
}

fn photos(tx: &mut dyn Tx, school: School) -> Result<u64, ShelfFault> {
    let all = tx.all(
        "SELECT digest, total, have, whole FROM photo WHERE school = ?1 ORDER BY digest",
        &[school.into()],
        |row| Ok((row.digest()?, row.count()?, row.count()?, row.int()? == 1)),
    )?;
    let mut wholes = 0_u64;
    for (digest, total, have, whole) in all {
        let (sum, length) = bytes(tx, school, digest)?;
        if length != have || have > total || (whole && (have != total || sum != digest)) {
            return damaged(format!("photo {digest} is not as it came"));
        }
        wholes = wholes.saturating_add(u64::from(whole));
    }
    Ok(wholes)
}

/// The SHA-256 and the length of a photo's parts.
fn bytes(tx: &mut dyn Tx, school: School, digest: Digest) -> Result<(Digest, u64), ShelfFault> {
    let mut sum = Sha256::new();
    let mut length = 0_u64;
    tx.each(
        "SELECT at, bytes FROM photo_part WHERE school = ?1 AND digest = ?2 ORDER BY at",
        &[school.into(), digest.into()],
        &mut |mut row| {
            let at = row.count()?;
            let part = row.blob()?;
            if at != length {
                return damaged(format!("photo {digest} lacks a part"));
            }
            length = length.saturating_add(part.len() as u64);
            sum.update(part);
            Ok(())
        },
    )?;
    Ok((Digest(sum.finalize().into()), length))
}
