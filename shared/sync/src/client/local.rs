//! What a round needs of the device's own storage.

use serde::{Deserialize, Serialize};
use witnessmark_core::record::{Digest, Envelope, Record};

use crate::merkle::Frontier;
use crate::wire::Refused;

/// What a device knows of its server's log, verified leaf by leaf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Following {
    /// The school.
    pub school: Digest,
    /// The server's key, as a signed-note verifier key: the one it had when this device joined.
    pub server: String,
    /// The tree over the leaves taken.
    pub frontier: Frontier,
    /// The latest checkpoint that this device has found right, as a signed note.
    pub checkpoint: Option<String>,
}

/// One leaf of a page.
#[derive(Clone, Debug, PartialEq)]
pub enum Leaf {
    /// A record, its form checked; its signature is for the caller to check.
    Record(Box<Record>),
    /// A record that this device has.
    Have(Digest),
    /// An envelope that isn't a record: to be kept aside with the reason.
    Odd {
        /// SHA-256 of its payload: the leaf.
        digest: Digest,
        /// As it came.
        envelope: Envelope,
        /// Why it is none.
        why: String,
    },
}

impl Leaf {
    /// The leaf's bytes in the tree.
    pub fn digest(&self) -> Digest {
        match self {
            Self::Record(record) => record.digest,
            Self::Have(digest) | Self::Odd { digest, .. } => *digest,
        }
    }
}

/// Leaves that follow each other, proven to lie so in the server's log.
#[derive(Clone, Debug, PartialEq)]
pub struct Page {
    /// The number of the first.
    pub first: u64,
    /// The leaves.
    pub leaves: Vec<Leaf>,
}

/// A picture to be sent.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhotoOut {
    /// Its media type.
    pub media: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

/// The device's storage, as a round needs it. Each method is one transaction, or part of the caller's.
pub trait Local {
    /// What can go wrong there.
    type Fault;

    /// What is known of the server.
    ///
    /// # Errors
    /// The storage's.
    fn following(&self) -> Result<Following, Self::Fault>;

    /// Keeps a page's records and receipts, and what is then known of the server, all or nothing.
    /// Records with a bad signature, and those that are none, are kept aside with the reason.
    ///
    /// # Errors
    /// The storage's.
    fn keep(&mut self, page: &Page, following: &Following) -> Result<(), Self::Fault>;

    /// Whether a record is here.
    ///
    /// # Errors
    /// The storage's.
    fn has(&self, digest: &Digest) -> Result<bool, Self::Fault>;

    /// Whether the server's log has a record, as far as it is followed.
    ///
    /// # Errors
    /// The storage's.
    fn has_receipt(&self, digest: &Digest) -> Result<bool, Self::Fault>;

    /// Records without a receipt that arrived here after number `after`, in order of arrival, each with
    /// its number.
    ///
    /// # Errors
    /// The storage's.
    fn unsent(&self, after: u64, most: u32) -> Result<Vec<(u64, Record)>, Self::Fault>;

    /// Keeps why the server wouldn't take records.
    ///
    /// # Errors
    /// The storage's.
    fn stuck(&mut self, refused: &[Refused]) -> Result<(), Self::Fault>;

    /// This device's member record and its word that it joins the school: what it shows to be let in.
    ///
    /// # Errors
    /// The storage's.
    fn introduction(&self) -> Result<Vec<Record>, Self::Fault>;

    /// Pictures to be sent whose records the server has.
    ///
    /// # Errors
    /// The storage's.
    fn photos_unsent(&self, most: u32) -> Result<Vec<Digest>, Self::Fault>;

    /// A picture's bytes.
    ///
    /// # Errors
    /// The storage's.
    fn photo(&self, digest: &Digest) -> Result<Option<PhotoOut>, Self::Fault>;

    /// The server has a picture whole.
    ///
    /// # Errors
    /// The storage's.
    fn photo_sent(&mut self, digest: &Digest) -> Result<(), Self::Fault>;

    /// Pictures that records name and that aren't here.
    ///
    /// # Errors
    /// The storage's.
    fn photos_missing(&self, most: u32) -> Result<Vec<Digest>, Self::Fault>;

    /// How many bytes of a picture have come.
    ///
    /// # Errors
    /// The storage's.
    fn photo_come(&self, digest: &Digest) -> Result<u64, Self::Fault>;

    /// Keeps the bytes of a picture that follow those that have come; `whole` with the last. Says whether
    /// the whole is the picture named; if it isn't, what came is thrown away.
    ///
    /// # Errors
    /// The storage's.
    fn photo_take(
        &mut self,
        digest: &Digest,
        media: &str,
        bytes: &[u8],
        whole: bool,
    ) -> Result<bool, Self::Fault>;
}
