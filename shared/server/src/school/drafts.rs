//! What the board prepares and a device signs.

use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;
use witnessmark_sync::wire;

use super::School;
use crate::ShelfFault;
use crate::shelf::Draft;

/// A draft's body as the shelf keeps it.
#[derive(Serialize, Deserialize)]
struct Kept {
    machine: Option<Uuid>,
    body: Value,
}

impl School {
    /// Keeps what somebody prepared, to be fetched by the device that will sign it.
    ///
    /// # Errors
    /// [`ShelfFault`]; [`crate::Refusal::Taken`] for an id that is in use.
    pub fn prepare(&self, draft: wire::Draft, now: i64) -> Result<(), ShelfFault> {
        let wire::Draft { id, machine, kind, body } = draft;
        let body = serde_json::to_string(&Kept { machine, body })
            .map_err(|why| ShelfFault::Other(why.to_string()))?;
        self.shelf.draft_put(self.id, &Draft { id, kind, body, made: now })
    }

    /// What was prepared under this id.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn draft(&self, id: &str) -> Result<Option<wire::Draft>, ShelfFault> {
        let Some(Draft { id, kind, body, .. }) = self.shelf.draft(self.id, id)? else { return Ok(None) };
        let kept = serde_json::from_str(&body);
        let Kept { machine, body } = kept.map_err(|why| ShelfFault::Damaged(format!("draft {id}: {why}")))?;
        Ok(Some(wire::Draft { id, machine, kind, body }))
    }
}
