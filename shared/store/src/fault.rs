//! What can go wrong with the database.

use rusqlite::ErrorCode;

/// Why the store couldn't do it. Nothing of a failed transaction remains.
#[derive(Debug, thiserror::Error)]
pub enum StoreFault {
    /// No room on the disk.
    #[error("there is no room left on the disk")]
    Full,
    /// The disk doesn't read or write.
    #[error("the disk does not read or write: {0}")]
    Disk(String),
    /// The file isn't a sound database.
    #[error("the database is damaged: {0}")]
    Damaged(String),
    /// Another process holds it.
    #[error("the database is in use by another program")]
    Busy,
    /// Written by a newer version of this program.
    #[error("the database has format {found}, this program knows up to {known}")]
    Newer {
        /// The file's format.
        found: u32,
        /// The latest known here.
        known: u32,
    },
    /// Anything else: a fault of this program.
    #[error("the database refused: {0}")]
    Other(String),
}

impl From<rusqlite::Error> for StoreFault {
    fn from(fault: rusqlite::Error) -> Self {
        let text = fault.to_string();
        match fault.sqlite_error_code() {
            Some(ErrorCode::DiskFull) => Self::Full,
            Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => Self::Damaged(text),
            Some(
                ErrorCode::SystemIoFailure
                | ErrorCode::CannotOpen
                | ErrorCode::ReadOnly
                | ErrorCode::PermissionDenied,
            ) => Self::Disk(text),
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy,
            _ => Self::Other(text),
        }
    }
}

impl From<serde_json::Error> for StoreFault {
    /// Our own JSON that doesn't read back was damaged on the disk.
    fn from(fault: serde_json::Error) -> Self {
        Self::Damaged(fault.to_string())
    }
}
