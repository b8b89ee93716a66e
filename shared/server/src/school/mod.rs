//! A server's one school: its log, the tree over it, its members, and what is said of them.
//!
//! Everything here blocks; nothing knows the time. Other processes may append to the same log: each
//! call that depends on it first reads what is new.

mod adopt;
mod card;
mod drafts;
mod follow;
mod judge;
mod key;
mod known;
mod members;
mod photos;
mod proofs;
mod take;
mod waiting;

use std::sync::{Arc, Mutex, PoisonError, RwLock, RwLockReadGuard, RwLockWriteGuard};

use tokio::sync::watch;
use witnessmark_core::record::{Digest, SigningSeed};
use witnessmark_sync::note::Verifier;

use crate::shelf::{self, Shelf};
use crate::{ServerFault, ShelfFault};
use known::Known;

pub use adopt::adopt;
pub use members::{Carrier, Members};
pub use take::Sender;
pub use waiting::Introduced;

/// Payloads longer than this are refused.
pub const LONGEST: usize = 256 * 1024;
/// More records than this at once are refused, or not told in one page.
pub const MOST: usize = 2000;

/// A school as one server process serves it.
pub struct School {
    shelf: Shelf,
    id: shelf::School,
    seed: SigningSeed,
    verifier: Verifier,
    known: RwLock<Known>,
    /// Held by whoever appends or catches up, so that leaves are taken in the log's order.
    appending: Mutex<()>,
    grown: watch::Sender<u64>,
}

impl School {
    /// The school whose log is on this shelf.
    ///
    /// # Errors
    /// [`ServerFault::NoSchool`] if there is none yet: see [`adopt`].
    pub fn open(shelf: Shelf) -> Result<Self, ServerFault> {
        let id = match shelf.schools()?.as_slice() {
            [] => return Err(ServerFault::NoSchool),
            [one] => *one,
            _ => return Err(ServerFault::SeveralSchools),
        };
        let (seed, verifier) = key::of(&shelf, id)?;
        let school = Self {
            shelf,
            id,
            seed,
            verifier,
            known: RwLock::new(Known::nothing(id.0)),
            appending: Mutex::default(),
            grown: watch::Sender::new(0),
        };
        school.follow()?;
        Ok(school)
    }

    /// The digest of its founding record.
    pub fn id(&self) -> Digest {
        self.id.0
    }

    /// Its name in the shelf.
    pub fn on_shelf(&self) -> shelf::School {
        self.id
    }

    /// What is kept of it.
    pub fn shelf(&self) -> &Shelf {
        &self.shelf
    }

    /// The key that signs checkpoints.
    pub fn verifier(&self) -> &Verifier {
        &self.verifier
    }

    /// Who may come in, as far as the log was read.
    pub fn members(&self) -> Arc<Members> {
        self.known().members.clone()
    }

    /// How long the log is, as far as it was read; changes whenever more was.
    pub fn grown(&self) -> watch::Receiver<u64> {
        self.grown.subscribe()
    }

    /// Forgets what has had its time, `now` in unix seconds.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn tidy(&self, now: i64) -> Result<(), ShelfFault> {
        const DAY: i64 = 24 * 60 * 60;
        // Twice as long as a request is taken.
        self.shelf.nonce_forget(self.id, now.saturating_sub(2 * crate::http::WINDOW))?;
        self.shelf.desk_forget(self.id, now)?;
        self.shelf.attempt_forget(self.id, now)?;
        self.shelf.waiting_forget(self.id, now.saturating_sub(30 * DAY))?;
        self.shelf.draft_forget(self.id, now.saturating_sub(30 * DAY))?;
        Ok(())
    }

    // A thread that panicked holding these left them as they were before its step or after it.
    fn known(&self) -> RwLockReadGuard<'_, Known> {
        self.known.read().unwrap_or_else(PoisonError::into_inner)
    }

    fn known_mut(&self) -> RwLockWriteGuard<'_, Known> {
        self.known.write().unwrap_or_else(PoisonError::into_inner)
    }
}

impl std::fmt::Debug for School {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "School({})", self.id.0)
    }
}
