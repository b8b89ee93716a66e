//! PostgreSQL's words for what went wrong (appendix A of its documentation), in ours.

use std::error::Error as _;

use deadpool_postgres::{HookError, PoolError};
use tokio_postgres::error::SqlState;

use crate::ShelfFault;

impl From<tokio_postgres::Error> for ShelfFault {
    fn from(fault: tokio_postgres::Error) -> Self {
        let Some(told) = fault.as_db_error() else {
            let why = fault.source().map_or_else(|| fault.to_string(), |why| format!("{fault}: {why}"));
            // Its own refusal on the way out isn't the connection's fault.
            return if why.contains("serializing") { Self::Other(why) } else { Self::Unreachable(why) };
        };
        let code = told.code();
        let text = told.message().to_owned();
        if *code == SqlState::DISK_FULL {
            return Self::Full;
        }
        if [
            SqlState::LOCK_NOT_AVAILABLE,
            SqlState::T_R_DEADLOCK_DETECTED,
            SqlState::T_R_SERIALIZATION_FAILURE,
            SqlState::TOO_MANY_CONNECTIONS,
            SqlState::OUT_OF_MEMORY,
            SqlState::QUERY_CANCELED,
        ]
        .contains(code)
        {
            return Self::Busy;
        }
        match code.code().get(..2) {
            Some("XX") if matches!(code.code(), "XX001" | "XX002") => Self::Damaged(text),
            // No connection, wrong name or password, no such database, shut down, only to be read, broken disk.
            Some("08" | "28" | "3D" | "57" | "25" | "58") => Self::Unreachable(text),
            _ => Self::Other(format!("{text} ({})", code.code())),
        }
    }
}

impl From<PoolError> for ShelfFault {
    fn from(fault: PoolError) -> Self {
        match fault {
            PoolError::Timeout(deadpool_postgres::TimeoutType::Wait) => Self::Busy,
            PoolError::Timeout(_) => Self::Unreachable("it does not answer in time".into()),
            PoolError::Backend(fault) | PoolError::PostCreateHook(HookError::Backend(fault)) => fault.into(),
            other => Self::Other(other.to_string()),
        }
    }
}
