//! What is proven of the log.

use witnessmark_core::record::Digest;
use witnessmark_sync::checkpoint::Checkpoint;
use witnessmark_sync::wire::Proof;

use super::School;
use crate::ShelfFault;

impl School {
    /// The log's length, and the signed checkpoint of it.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn checkpoint(&self) -> Result<(u64, String), ShelfFault> {
        self.follow()?;
        // One guard at a time: a second one would wait for a writer who waits for the first.
        let signed = {
            let known = self.known();
            known.checkpoint.clone().filter(|(size, _)| *size == known.size())
        };
        if let Some(signed) = signed {
            return Ok(signed);
        }
        let mut known = self.known_mut();
        let size = known.size();
        let root = known.tree.root(size).ok_or_else(|| ShelfFault::Other("the tree has no root".into()))?;
        let checkpoint = Checkpoint { origin: Checkpoint::origin(&self.id.0), size, root };
        let note = checkpoint.sign(&self.seed).map_err(|why| ShelfFault::Other(why.to_string()))?;
        known.checkpoint = Some((size, note.clone()));
        Ok((size, note))
    }

    /// That the log of `to` records goes on from that of `from`; none if it never had so many.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn consistency(&self, from: u64, to: u64) -> Result<Option<Proof>, ShelfFault> {
        if to > self.known().size() {
            self.follow()?;
        }
        Ok(self.known().tree.consistency(from, to).map(|path| Proof { index: None, path }))
    }

    /// That a record lies in the log of `size` records; none if it doesn't, or the log never had so many.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn inclusion(&self, digest: Digest, size: u64) -> Result<Option<Proof>, ShelfFault> {
        let Some(index) = self.shelf.index_of(self.id, digest)? else { return Ok(None) };
        if size > self.known().size() {
            self.follow()?;
        }
        let path = self.known().tree.inclusion(index, size);
        Ok(path.map(|path| Proof { index: Some(index), path }))
    }
}
