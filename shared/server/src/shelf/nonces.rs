//! Nonces of signed requests: none is answered twice, whichever process it reaches.

use super::engine::Work;
use super::value::text;
use super::{School, Shelf};
use crate::ShelfFault;

impl Shelf {
    /// Takes a nonce; says whether it is new.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn nonce_take(
        &self,
        school: School,
        keyid: &str,
        nonce: &str,
        created: i64,
    ) -> Result<bool, ShelfFault> {
        self.with(Work::Step, |tx| {
            let taken = tx.run(
                "INSERT INTO nonce (school, keyid, nonce, created) VALUES (?1, ?2, ?3, ?4)
                 ON CONFLICT (school, keyid, nonce) DO NOTHING",
                &[school.into(), text(keyid)?, text(nonce)?, created.into()],
            )?;
            Ok(taken == 1)
        })
    }

    /// Forgets nonces of requests made before a moment, which are refused for their age.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn nonce_forget(&self, school: School, before: i64) -> Result<u64, ShelfFault> {
        self.with(Work::Step, |tx| {
            tx.run("DELETE FROM nonce WHERE school = ?1 AND created < ?2", &[school.into(), before.into()])
        })
    }
}
