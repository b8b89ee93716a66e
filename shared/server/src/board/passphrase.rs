//! A passphrase that lets look at the board, where one is set. It signs nothing and prepares nothing.

use argon2::{Algorithm, Argon2, Params, Version};
use serde::{Deserialize, Serialize};
use subtle::ConstantTimeEq;
use witnessmark_core::record::Digest;
use zeroize::Zeroizing;

use crate::school::School;
use crate::{ServerFault, ShelfFault};

/// Letters that a passphrase has at least.
pub const LEAST: usize = 12;
/// Vain tries taken in a row, and how long they count, seconds.
const MOST: u64 = 10;
const WHILE: i64 = 15 * 60;
/// What Argon2id costs here: more than the second choice of RFC 9106 § 4 in time, as much in memory.
const MEMORY_KIB: u32 = 64 * 1024;
const PASSES: u32 = 3;
const LANES: u32 = 4;

const NAME: &str = "passphrase";

/// A passphrase as it is kept. Salt and hash are written as digests are, being as long.
#[derive(Serialize, Deserialize)]
struct Kept {
    salt: Digest,
    hash: Digest,
    memory_kib: u32,
    passes: u32,
    lanes: u32,
    /// When it was set: pages let in by an older one are out.
    since: i64,
}

/// What came of a try.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Tried {
    /// It is the one.
    Right,
    /// It isn't.
    Wrong,
    /// There is none.
    Off,
    /// There were too many; seconds to wait.
    TooOften(u64),
}

/// Sets it, or takes it away; whoever came in by the one before is out. Blocks.
///
/// # Errors
/// [`ServerFault::System`] for one that is too short; [`ServerFault`].
pub fn set(school: &School, words: Option<&str>, now: i64) -> Result<(), ServerFault> {
    let (shelf, id) = (school.shelf(), school.on_shelf());
    let Some(words) = words else { return Ok(shelf.unset(id, NAME)?) };
    if words.trim().chars().count() < LEAST {
        return Err(ServerFault::System(format!(
            "a passphrase has at least {LEAST} letters; take some words"
        )));
    }
    let mut salt = [0; 32];
    getrandom::fill(&mut salt).map_err(|why| ServerFault::Randomness(why.to_string()))?;
    let zero = Digest([0; 32]);
    let mut kept = Kept {
        salt: Digest(salt),
        hash: zero,
        memory_kib: MEMORY_KIB,
        passes: PASSES,
        lanes: LANES,
        since: now,
    };
    kept.hash = Digest(*kept.hash_of(words)?);
    let text = serde_json::to_string(&kept).map_err(|why| ServerFault::System(why.to_string()))?;
    shelf.set(id, NAME, &text)?;
    Ok(shelf.attempt_clear(id, NAME)?)
}

/// Whether one is set.
pub(super) fn is_set(school: &School) -> Result<bool, ShelfFault> {
    Ok(kept(school)?.is_some())
}

/// Whether a page let in at that moment still is.
pub(super) fn opens(school: &School, made: i64) -> Result<bool, ShelfFault> {
    Ok(kept(school)?.is_some_and(|kept| kept.since <= made))
}

/// Tries one. Tries are counted for everybody together: a guesser has many addresses.
pub(super) fn attempt(school: &School, words: &str, now: i64) -> Result<Tried, ShelfFault> {
    let (shelf, id) = (school.shelf(), school.on_shelf());
    let Some(kept) = kept(school)? else { return Ok(Tried::Off) };
    let (tries, until) = shelf.attempts(id, NAME, now)?;
    if tries >= MOST {
        return Ok(Tried::TooOften(until.saturating_sub(now).max(1).unsigned_abs()));
    }
    // Counted before it is weighed, so that nobody tries many at once.
    if shelf.attempt_add(id, NAME, now, now.saturating_add(WHILE))? > MOST {
        return Ok(Tried::TooOften(WHILE.unsigned_abs()));
    }
    let hash = kept.hash_of(words)?;
    if bool::from(hash.as_slice().ct_eq(kept.hash.0.as_slice())) {
        shelf.attempt_clear(id, NAME)?;
        return Ok(Tried::Right);
    }
    Ok(Tried::Wrong)
}

fn kept(school: &School) -> Result<Option<Kept>, ShelfFault> {
    let Some(text) = school.shelf().setting(school.on_shelf(), NAME)? else { return Ok(None) };
    let kept = serde_json::from_str(&text);
    kept.map(Some).map_err(|why| ShelfFault::Damaged(format!("the passphrase: {why}")))
}

impl Kept {
    fn hash_of(&self, words: &str) -> Result<Zeroizing<[u8; 32]>, ShelfFault> {
        let other = |why: argon2::Error| ShelfFault::Other(why.to_string());
        let params = Params::new(self.memory_kib, self.passes, self.lanes, Some(32)).map_err(other)?;
        let argon = Argon2::new(Algorithm::Argon2id, Version::V0x13, params);
        let mut hash = Zeroizing::new([0; 32]);
        argon
            .hash_password_into(words.trim().as_bytes(), &self.salt.0, hash.as_mut_slice())
            .map_err(other)?;
        Ok(hash)
    }
}
