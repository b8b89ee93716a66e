//! Checkpoints (C2SP tlog-checkpoint): how long a school's log is and what its root is, signed by the
//! server. Two checkpoints of one log that no proof can join are a server's lie, in its own hand.

use base64ct::{Base64, Encoding};
use witnessmark_core::record::{Digest, SigningSeed};

use crate::merkle::Hash;
use crate::note::{self, NoteFault, Verifier};

/// What a log was at some time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Checkpoint {
    /// Which log: also the name of the key that signs for it.
    pub origin: String,
    /// How many leaves it had.
    pub size: u64,
    /// Their root.
    pub root: Hash,
}

/// Why a checkpoint can't be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CheckpointFault {
    /// The note around it.
    #[error(transparent)]
    Note(#[from] NoteFault),
    /// The signed text isn't a checkpoint's.
    #[error("this is not a checkpoint: {0}")]
    Malformed(&'static str),
    /// It speaks of another log.
    #[error("this checkpoint is of {found}, not of {wanted}")]
    Origin {
        /// The log whose key was asked for.
        wanted: String,
        /// The log it names.
        found: String,
    },
}

impl Checkpoint {
    /// The origin of a school's log. (§ Note text asks for a URL without its scheme; nobody needs to
    /// answer there.)
    pub fn origin(school: &Digest) -> String {
        format!("witnessmark.org/school/{school}")
    }

    /// The checkpoint as a signed note.
    ///
    /// # Errors
    /// [`NoteFault`], if the origin can't be the name of a key.
    pub fn sign(&self, seed: &SigningSeed) -> Result<String, NoteFault> {
        let root = Base64::encode_string(self.root.as_bytes());
        note::sign(&format!("{}\n{}\n{root}\n", self.origin, self.size), &self.origin, seed)
    }

    /// The checkpoint in this note, when the log's key has signed it.
    ///
    /// # Errors
    /// [`CheckpointFault`].
    pub fn open(note: &str, log: &Verifier) -> Result<Self, CheckpointFault> {
        let read = Self::parse(log.open(note)?)?;
        if read.origin != log.name() {
            return Err(CheckpointFault::Origin { wanted: log.name().to_owned(), found: read.origin });
        }
        Ok(read)
    }

    /// Reads a checkpoint's text (§ Note text). Lines after the third are extensions, which we pass over.
    fn parse(text: &str) -> Result<Self, CheckpointFault> {
        let fault = CheckpointFault::Malformed;
        let mut lines = text.strip_suffix('\n').unwrap_or(text).split('\n');
        if lines.clone().any(str::is_empty) {
            return Err(fault("it has an empty line"));
        }
        let (Some(origin), Some(size), Some(root)) = (lines.next(), lines.next(), lines.next()) else {
            return Err(fault("it has fewer than three lines"));
        };
        let number = size.parse::<u64>().ok().filter(|number| number.to_string() == size);
        let size = number.ok_or(fault("its size is not a plain number"))?;
        let root = Base64::decode_vec(root).ok().and_then(|root| root.try_into().ok());
        let root = Hash::from_bytes(root.ok_or(fault("its root is not 32 bytes in base64"))?);
        Ok(Self { origin: origin.to_owned(), size, root })
    }
}
