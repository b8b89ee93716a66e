//! Pictures, which come in parts and are named by the SHA-256 of the whole.

use sha2::{Digest as _, Sha256};
use witnessmark_core::record::Digest;

use super::engine::{Tx, Work};
use super::value::{blob, int};
use super::{School, Shelf};
use crate::{Refusal, ShelfFault};

/// How much of a photo is here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PhotoState {
    /// So many bytes, from its beginning.
    pub have: u64,
    /// Of so many.
    pub total: u64,
    /// All, and they fit its name: only then can it be read.
    pub whole: bool,
}

const STATE: &str = "SELECT have, total, whole FROM photo WHERE school = ?1 AND digest = ?2";

fn state(row: &mut super::value::Row) -> Result<PhotoState, ShelfFault> {
    Ok(PhotoState { have: row.count()?, total: row.count()?, whole: row.int()? == 1 })
}

impl Shelf {
    /// How much of a photo is here; none of one that nobody began to send.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn photo_state(&self, school: School, digest: Digest) -> Result<Option<PhotoState>, ShelfFault> {
        self.with(Work::Read, |tx| tx.one(STATE, &[school.into(), digest.into()], state))
    }

    /// Takes a part that begins at `offset` of a photo of `total` bytes. What is here already may
    /// come again, if it is the same.
    ///
    /// # Errors
    /// [`Refusal::Gap`], [`Refusal::Differs`], [`Refusal::PastEnd`], [`Refusal::OtherTotal`]; and
    /// [`Refusal::WrongDigest`] when the whole doesn't fit its name: then all of it is thrown away.
    pub fn photo_put(
        &self,
        school: School,
        digest: Digest,
        offset: u64,
        total: u64,
        bytes: &[u8],
    ) -> Result<PhotoState, ShelfFault> {
        let end = offset.checked_add(bytes.len() as u64).filter(|end| *end <= total);
        let end = end.ok_or(Refusal::PastEnd)?;
        let key = [school.into(), digest.into()];
        self.with(Work::Write, |tx| {
            tx.run(
                "INSERT INTO photo (school, digest, total, have, whole) VALUES (?1, ?2, ?3, 0, 0)
                 ON CONFLICT (school, digest) DO NOTHING",
                &[school.into(), digest.into(), int(total)],
            )?;
            let now = tx.held(STATE, &key, state)?;
            let now = now.ok_or_else(|| ShelfFault::Damaged("a photo was lost".into()))?;
            if now.total != total {
                return Err(Refusal::OtherTotal { total: now.total }.into());
            }
            if offset > now.have {
                return Err(Refusal::Gap { have: now.have }.into());
            }
            let known = usize::try_from(now.have.min(end) - offset).unwrap_or(usize::MAX);
            let (again, new) = bytes.split_at_checked(known).unwrap_or((bytes, &[]));
            if read(tx, school, digest, offset, again.len())? != again {
                return Err(Refusal::Differs.into());
            }
            if !new.is_empty() {
                tx.run(
                    "INSERT INTO photo_part (school, digest, at, bytes) VALUES (?1, ?2, ?3, ?4)",
                    &[school.into(), digest.into(), int(now.have), blob(new)],
                )?;
            }
            let have = now.have.max(end);
            if now.whole || have < total {
                tx.run(
                    "UPDATE photo SET have = ?3 WHERE school = ?1 AND digest = ?2",
                    &[school.into(), digest.into(), int(have)],
                )?;
                return Ok(Ok(PhotoState { have, total, whole: now.whole }));
            }
            if sum(tx, school, digest)? != digest {
                drop(tx, school, digest)?;
                // Not an error of this transaction, which is to throw it away.
                return Ok(Err(Refusal::WrongDigest));
            }
            tx.run("UPDATE photo SET have = total, whole = 1 WHERE school = ?1 AND digest = ?2", &key)?;
            Ok(Ok(PhotoState { have, total, whole: true }))
        })?
        .map_err(ShelfFault::from)
    }

    /// Bytes of a whole photo from `from` on, at most so many; none of one that isn't whole.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn photo_read(
        &self,
        school: School,
        digest: Digest,
        from: u64,
        most: usize,
    ) -> Result<Option<Vec<u8>>, ShelfFault> {
        self.with(Work::Snapshot, |tx| {
            let state = tx.one(STATE, &[school.into(), digest.into()], state)?;
            match state {
                Some(PhotoState { whole: true, .. }) => read(tx, school, digest, from, most).map(Some),
                _ => Ok(None),
            }
        })
    }

    /// Throws away what is here of a photo that isn't whole, so that it can be begun anew; says
    /// whether there was any.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn photo_drop(&self, school: School, digest: Digest) -> Result<bool, ShelfFault> {
        let key = [school.into(), digest.into()];
        self.with(Work::Write, |tx| match tx.held(STATE, &key, state)? {
            Some(PhotoState { whole: false, .. }) => drop(tx, school, digest).map(|()| true),
            _ => Ok(false),
        })
    }
}

fn drop(tx: &mut dyn Tx, school: School, digest: Digest) -> Result<(), ShelfFault> {
    let key = [school.into(), digest.into()];
    tx.run("DELETE FROM photo_part WHERE school = ?1 AND digest = ?2", &key)?;
    tx.run("DELETE FROM photo WHERE school = ?1 AND digest = ?2", &key)?;
    Ok(())
}

/// Bytes of what is here.
fn read(
    tx: &mut dyn Tx,
    school: School,
    digest: Digest,
    from: u64,
    most: usize,
) -> Result<Vec<u8>, ShelfFault> {
    let to = from.saturating_add(most as u64);
    let mut found = Vec::new();
    tx.each(
        "SELECT at, bytes FROM photo_part WHERE school = ?1 AND digest = ?2
         AND at + length(bytes) > ?3 AND at < ?4 ORDER BY at",
        &[school.into(), digest.into(), int(from), int(to)],
        &mut |mut row| {
            let at = row.count()?;
            let bytes = row.blob()?;
            let skip = usize::try_from(from.saturating_sub(at)).unwrap_or(usize::MAX);
            let keep = most.saturating_sub(found.len());
            found.extend(bytes.into_iter().skip(skip).take(keep));
            Ok(())
        },
    )?;
    Ok(found)
}

/// The SHA-256 of what is here.
fn sum(tx: &mut dyn Tx, school: School, digest: Digest) -> Result<Digest, ShelfFault> {
    let mut sum = Sha256::new();
    tx.each(
        "SELECT bytes FROM photo_part WHERE school = ?1 AND digest = ?2 ORDER BY at",
        &[school.into(), digest.into()],
        &mut |mut row| {
            sum.update(row.blob()?);
            Ok(())
        },
    )?;
    Ok(Digest(sum.finalize().into()))
}
