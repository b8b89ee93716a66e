//! SQLite's words for what went wrong, in ours.

use crate::ShelfFault;

impl From<rusqlite::Error> for ShelfFault {
    fn from(fault: rusqlite::Error) -> Self {
        use rusqlite::ErrorCode::{
            CannotOpen, DatabaseBusy, DatabaseCorrupt, DatabaseLocked, DiskFull, NotADatabase,
            PermissionDenied, ReadOnly, SystemIoFailure,
        };
        let text = fault.to_string();
        match fault.sqlite_error_code() {
            Some(DiskFull) => Self::Full,
            Some(DatabaseCorrupt | NotADatabase) => Self::Damaged(text),
            Some(SystemIoFailure | CannotOpen | ReadOnly | PermissionDenied) => Self::Unreachable(text),
            Some(DatabaseBusy | DatabaseLocked) => Self::Busy,
            _ => Self::Other(text),
        }
    }
}
