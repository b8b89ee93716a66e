//! Photos, with their media type.

use witnessmark_core::record::Digest;

use super::School;
use crate::shelf::PhotoState;
use crate::{Refusal, ShelfFault};

impl School {
    /// How much of a photo is here.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn photo_state(&self, digest: Digest) -> Result<Option<PhotoState>, ShelfFault> {
        self.shelf.photo_state(self.id, digest)
    }

    /// Takes a part of a photo. One that begins anew, and differs from what came before, takes its
    /// place: what isn't whole has been checked by nobody.
    ///
    /// # Errors
    /// As [`Shelf::photo_put`](crate::shelf::Shelf::photo_put).
    pub fn photo_put(
        &self,
        digest: Digest,
        media: &str,
        offset: u64,
        total: u64,
        bytes: &[u8],
    ) -> Result<PhotoState, ShelfFault> {
        let put = || self.shelf.photo_put(self.id, digest, offset, total, bytes);
        let state = match put() {
            Err(ShelfFault::Refused(Refusal::Differs | Refusal::OtherTotal { .. }))
                if offset == 0 && self.shelf.photo_drop(self.id, digest)? =>
            {
                put()
            }
            done => done,
        }?;
        if state.whole {
            self.shelf.set_once(self.id, &media_of(digest), media)?;
        }
        Ok(state)
    }

    /// Media type and some bytes of a whole photo, from `from` on.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn photo_read(
        &self,
        digest: Digest,
        from: u64,
        most: usize,
    ) -> Result<Option<(String, Vec<u8>)>, ShelfFault> {
        let Some(bytes) = self.shelf.photo_read(self.id, digest, from, most)? else { return Ok(None) };
        let media = self.shelf.setting(self.id, &media_of(digest))?;
        Ok(Some((media.unwrap_or_else(|| "application/octet-stream".into()), bytes)))
    }
}

fn media_of(digest: Digest) -> String {
    format!("media/{digest}")
}
