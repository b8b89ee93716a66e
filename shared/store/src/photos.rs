//! Pictures, named by the SHA-256 of their bytes.

use rusqlite::{OptionalExtension, params};
use witnessmark_core::record::Digest;

use crate::{StoreFault, Tx};

/// A picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Its media type.
    pub media: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

impl Tx<'_> {
    /// Keeps a picture and says its name.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photo_keep(&self, photo: &Photo) -> Result<Digest, StoreFault> {
        let digest = Digest::of(&photo.bytes);
        self.inner.execute(
            "INSERT INTO photo (digest, media, bytes) VALUES (?1, ?2, ?3) ON CONFLICT (digest) DO NOTHING",
            params![digest.0, photo.media, photo.bytes],
        )?;
        Ok(digest)
    }

    /// A picture by name.
    ///
    /// # Errors
    /// [`StoreFault`].
    pub fn photo(&self, digest: &Digest) -> Result<Option<Photo>, StoreFault> {
        Ok(self
            .inner
            .prepare_cached("SELECT media, bytes FROM photo WHERE digest = ?1")?
            .query_row([digest.0], |row| Ok(Photo { media: row.get(0)?, bytes: row.get(1)? }))
            .optional()?)
    }
}
