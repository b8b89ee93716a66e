//! What a server process has read of the log: the tree over it, and who its members are.

use std::borrow::Cow;
use std::sync::Arc;

use serde::Deserialize;
use witnessmark_core::record::{Digest, Record, Trust};
use witnessmark_sync::merkle::Tree;

use super::Members;
use crate::ShelfFault;
use crate::shelf::Line;

/// The log as far as it was read.
#[derive(Debug)]
pub(super) struct Known {
    pub(super) tree: Tree,
    pub(super) members: Arc<Members>,
    /// The latest checkpoint signed, and its size.
    pub(super) checkpoint: Option<(u64, String)>,
}

/// A record's kind, and nothing else of it read: most records are long.
#[derive(Deserialize)]
struct Kind<'a> {
    #[serde(borrow)]
    kind: Cow<'a, str>,
}

impl Known {
    pub(super) fn nothing(school: Digest) -> Self {
        let members = Arc::new(Members::of(school, Vec::new()));
        Self { tree: Tree::default(), members, checkpoint: None }
    }

    pub(super) fn size(&self) -> u64 {
        self.tree.size()
    }

    /// Takes records that this process has appended.
    pub(super) fn take<'a>(&mut self, records: impl IntoIterator<Item = &'a Record>) {
        let mut more = Vec::new();
        for record in records {
            self.tree.push(&record.digest.0);
            if Trust::is_made_of(&record.payload.kind) {
                more.push(record.clone());
            }
        }
        self.know(more);
    }

    /// Takes lines of the log that follow those taken.
    pub(super) fn read(&mut self, lines: Vec<Line>) -> Result<(), ShelfFault> {
        let mut more = Vec::new();
        for line in lines {
            if line.index != self.size() {
                return Err(ShelfFault::Damaged(format!("record {} is missing", self.size())));
            }
            self.tree.push(&line.digest.0);
            let kind = serde_json::from_str::<Kind<'_>>(&line.envelope.payload);
            if kind.is_ok_and(|kind| Trust::is_made_of(&kind.kind)) {
                more.push(line.record()?);
            }
        }
        self.know(more);
        Ok(())
    }

    fn know(&mut self, more: Vec<Record>) {
        if !more.is_empty() {
            self.members = Arc::new(self.members.with(more));
        }
    }
}
