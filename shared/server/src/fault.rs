//! What can go wrong with what the server keeps.

use std::path::PathBuf;

/// Why the shelf couldn't do it. Nothing of it remains; the same may be asked again.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ShelfFault {
    /// Somebody else holds it for too long, or every connection is in use.
    #[error("the database is busy; try again in a moment")]
    Busy,
    /// The database server or the disk doesn't answer.
    #[error("the database can't be reached: {0}")]
    Unreachable(String),
    /// No room on the disk.
    #[error("there is no room left on the database's disk")]
    Full,
    /// What is there isn't what was written, or isn't a server's database.
    #[error("the database is damaged: {0}")]
    Damaged(String),
    /// Written by a newer version of this program.
    #[error("the database has format {found}, this program knows up to {known}; use a newer version")]
    Newer {
        /// The database's format.
        found: u32,
        /// The latest known here.
        known: u32,
    },
    /// What was asked can't be done, and won't be when asked again.
    #[error("{0}")]
    Refused(#[from] Refusal),
    /// Anything else: a fault of this program or of the database's settings.
    #[error("the database refused: {0}")]
    Other(String),
}

/// Why what was asked can't be done.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Refusal {
    /// A part of a photo begins past what is here.
    #[error("the part leaves a gap: {have} bytes are here; go on from there")]
    Gap {
        /// How many bytes are here.
        have: u64,
    },
    /// A part of a photo says something else than what is here.
    #[error("the part differs from the bytes that are here already")]
    Differs,
    /// A part of a photo reaches past its end.
    #[error("the part reaches past the photo's end")]
    PastEnd,
    /// Another length was told for this photo before.
    #[error("this photo was begun with a length of {total} bytes")]
    OtherTotal {
        /// The length told first.
        total: u64,
    },
    /// The whole photo isn't what its name says; it was thrown away.
    #[error("the photo's bytes do not fit its SHA-256; it was not kept: send it anew")]
    WrongDigest,
    /// As many devices wait as may.
    #[error("too many devices are waiting to be admitted; try again later")]
    TooManyWaiting,
    /// This id is taken already.
    #[error("this id is in use already")]
    Taken,
    /// A text with a NUL character, which no database keeps.
    #[error("a text has a NUL character in it")]
    NotText,
    /// The database's address can't be read.
    #[error("the database's address can't be used: {0}")]
    Address(String),
    /// A backup is only restored into an empty database.
    #[error("the database is not empty; restore into a new one")]
    NotEmpty,
    /// A backup never overwrites a file.
    #[error("{} is there already; name another file", .0.display())]
    Exists(PathBuf),
    /// The file is no backup of this program.
    #[error("{} is not a backup: {why}", .path.display())]
    NotABackup {
        /// The file.
        path: PathBuf,
        /// Why not.
        why: String,
    },
}
