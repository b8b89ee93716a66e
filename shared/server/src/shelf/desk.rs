//! Signing in to the board. Secrets of pages and cookies are kept as their SHA-256 only: who reads
//! the database can't sign in with it.

use witnessmark_core::record::{DeviceId, Digest};

use super::engine::Work;
use super::value::{Row, Value, text};
use super::{School, Shelf};
use crate::{Refusal, ShelfFault};

/// A page that asks to be signed in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Challenge {
    /// Who confirmed it, once somebody has.
    pub device: Option<DeviceId>,
    /// How long it can be confirmed, unix seconds.
    pub until: i64,
}

/// A page that is signed in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Session {
    /// By which device; none: by passphrase.
    pub device: Option<DeviceId>,
    /// Since when, unix seconds.
    pub made: i64,
    /// How long, unix seconds.
    pub until: i64,
}

fn kept(token: &str) -> Value<'static> {
    Digest::of(token.as_bytes()).into()
}

fn session(row: &mut Row) -> Result<Session, ShelfFault> {
    Ok(Session { device: row.device()?, made: row.int()?, until: row.int()? })
}

impl Shelf {
    /// Keeps a challenge of the page that holds `token`.
    ///
    /// # Errors
    /// [`Refusal::Taken`] for an id that is in use.
    pub fn challenge_put(&self, school: School, id: &str, token: &str, until: i64) -> Result<(), ShelfFault> {
        let put = self.with(Work::Step, |tx| {
            tx.run(
                "INSERT INTO challenge (school, id, token, until) VALUES (?1, ?2, ?3, ?4)
                 ON CONFLICT (school, id) DO NOTHING",
                &[school.into(), text(id)?, kept(token), until.into()],
            )
        })?;
        if put == 1 { Ok(()) } else { Err(Refusal::Taken.into()) }
    }

    /// A challenge that can still be confirmed or claimed.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn challenge(&self, school: School, id: &str, now: i64) -> Result<Option<Challenge>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.one(
                "SELECT device, until FROM challenge WHERE school = ?1 AND id = ?2 AND until > ?3",
                &[school.into(), text(id)?, now.into()],
                |row| Ok(Challenge { device: row.device()?, until: row.int()? }),
            )
        })
    }

    /// A device confirms a challenge: once, and in time. Says whether it counts.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn challenge_confirm(
        &self,
        school: School,
        id: &str,
        device: &DeviceId,
        now: i64,
    ) -> Result<bool, ShelfFault> {
        self.with(Work::Step, |tx| {
            let confirmed = tx.run(
                "UPDATE challenge SET device = ?3
                 WHERE school = ?1 AND id = ?2 AND device IS NULL AND until > ?4",
                &[school.into(), text(id)?, text(&device.0)?, now.into()],
            )?;
            Ok(confirmed == 1)
        })
    }

    /// The page that holds `token` takes its confirmed challenge away, and is told by whom it was
    /// confirmed; a second time there is nothing to take.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn challenge_claim(
        &self,
        school: School,
        id: &str,
        token: &str,
        now: i64,
    ) -> Result<Option<DeviceId>, ShelfFault> {
        let claimed = self.with(Work::Step, |tx| {
            tx.one(
                "DELETE FROM challenge WHERE school = ?1 AND id = ?2 AND token = ?3
                 AND device IS NOT NULL AND until > ?4 RETURNING device",
                &[school.into(), text(id)?, kept(token), now.into()],
                Row::device,
            )
        })?;
        Ok(claimed.flatten())
    }

    /// Keeps a session under its cookie's token.
    ///
    /// # Errors
    /// [`Refusal::Taken`] for a token that is in use.
    pub fn session_put(&self, school: School, token: &str, session: &Session) -> Result<(), ShelfFault> {
        let put = self.with(Work::Step, |tx| {
            let device = session.device.as_ref().map_or(Ok(Value::Null), |device| text(&device.0))?;
            tx.run(
                "INSERT INTO session (school, token, device, made, until) VALUES (?1, ?2, ?3, ?4, ?5)
                 ON CONFLICT (school, token) DO NOTHING",
                &[school.into(), kept(token), device, session.made.into(), session.until.into()],
            )
        })?;
        if put == 1 { Ok(()) } else { Err(Refusal::Taken.into()) }
    }

    /// The session of a cookie, while it lasts.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn session(&self, school: School, token: &str, now: i64) -> Result<Option<Session>, ShelfFault> {
        self.with(Work::Read, |tx| {
            tx.one(
                "SELECT device, made, until FROM session WHERE school = ?1 AND token = ?2 AND until > ?3",
                &[school.into(), kept(token), now.into()],
                session,
            )
        })
    }

    /// Ends a session; says whether there was one.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn session_drop(&self, school: School, token: &str) -> Result<bool, ShelfFault> {
        self.with(Work::Step, |tx| {
            let key = [school.into(), kept(token)];
            Ok(tx.run("DELETE FROM session WHERE school = ?1 AND token = ?2", &key)? == 1)
        })
    }

    /// Ends all sessions of a device, since its key was revoked; says how many.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn sessions_end(&self, school: School, device: &DeviceId) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run(
                "DELETE FROM session WHERE school = ?1 AND device = ?2",
                &[school.into(), text(&device.0)?],
            )
        })
    }

    /// Forgets challenges and sessions whose time has passed.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn desk_forget(&self, school: School, now: i64) -> Result<u64, ShelfFault> {
        let key = [school.into(), now.into()];
        self.with(Work::Write, |tx| {
            let challenges = tx.run("DELETE FROM challenge WHERE school = ?1 AND until <= ?2", &key)?;
            let sessions = tx.run("DELETE FROM session WHERE school = ?1 AND until <= ?2", &key)?;
            Ok(challenges.saturating_add(sessions))
        })
    }
}
