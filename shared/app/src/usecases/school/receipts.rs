//! Receipts: what the server signed for, checked here without it; and two devices comparing.

use witnessmark_core::record::{read_letter, write_letter};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;
use witnessmark_sync::checkpoint::Checkpoint;
use witnessmark_sync::client::Following;
use witnessmark_sync::merkle::Frontier;
use witnessmark_sync::note::Verifier;

use super::joining::letter_fault;
use super::place::{Distrust, Place, keep_place, placed};
use crate::usecases::code;
use crate::views::{CodeOut, ReceiptsView, SchoolView};
use crate::{App, Fault};

/// How a checkpoint shown to another phone begins.
const SEEN: &str = "WM1SEEN:";
/// Receipts read at once.
const BATCH: u32 = 10_000;

impl App {
    /// Checks every receipt: the tree over them must be the one that the server signed for.
    ///
    /// # Errors
    /// [`Fault`]: no server.
    pub fn receipts(&mut self) -> Result<ReceiptsView, Fault> {
        self.store.read(|tx| {
            let place = placed(tx)?;
            let following = place.following.ok_or_else(|| Fault::new("no-server"))?;
            let size = tx.receipts()?;
            let root = tree_of(tx, size)?.root();
            let signed = match &following.checkpoint {
                Some(note) => open(note, &following.server).map(Some)?,
                None => None,
            };
            let told = match &signed {
                Some(checkpoint) if checkpoint.size <= size => {
                    tree_of(tx, checkpoint.size)?.root() == checkpoint.root
                }
                Some(_) => false,
                None => size == 0,
            };
            let good = told && following.frontier.size() == size && following.frontier.root() == root;
            let said =
                Said::new(if good { "receipts-good" } else { "receipts-bad" }).number("records", size as f64);
            Ok(ReceiptsView {
                good,
                words: self.house.say(&said),
                records: size as f64,
                root: root.to_string(),
                checkpoint: following.checkpoint,
            })
        })
    }

    /// What this device shows another one, so that the two can tell whether the server tells both the same.
    ///
    /// # Errors
    /// [`Fault`]: no server followed yet.
    pub fn checkpoint_code(&mut self) -> Result<CodeOut, Fault> {
        self.store.read(|tx| {
            let following = placed(tx)?.following.ok_or_else(|| Fault::new("no-server"))?;
            let note = following.checkpoint.ok_or_else(|| Fault::new("nothing-followed"))?;
            Ok(code(write_letter(SEEN, &note, &[])?))
        })
    }

    /// Compares what another device shows with what the server has told this one.
    ///
    /// # Errors
    /// [`Fault`]: no such code, another school's server; `server-lies` where it tells the two devices
    /// different things.
    pub fn checkpoint_compare(&mut self, text: String) -> Result<ReceiptsView, Fault> {
        let (note, _): (String, _) = read_letter(SEEN, &text).map_err(letter_fault)?;
        let house = &self.house;
        self.store.write(|tx| {
            let place = placed(tx)?;
            let following = place.following.clone().ok_or_else(|| Fault::new("no-server"))?;
            let theirs = open(&note, &following.server)?;
            let size = tx.receipts()?;
            if theirs.size > size {
                return Ok(Err(Fault::new("compare-later")));
            }
            let root = tree_of(tx, theirs.size)?.root();
            if root != theirs.root {
                let distrust = Distrust {
                    at: house.now().to_rfc3339(),
                    lie: "lie-two-faced".into(),
                    says: note.clone(),
                    said: following.checkpoint.clone(),
                };
                keep_place(tx, Some(&Place { distrust: Some(distrust), ..place }))?;
                return Ok(Err(Fault::new("server-lies").text("words", house.word("lie-two-faced"))));
            }
            let said = Said::new("compare-good").number("records", theirs.size as f64);
            Ok::<_, Fault>(Ok(ReceiptsView {
                good: true,
                words: house.say(&said),
                records: theirs.size as f64,
                root: root.to_string(),
                checkpoint: Some(note.clone()),
            }))
        })?
    }
}

impl App {
    /// Forgets all that the server said, also that it lies: the next round follows it from the beginning.
    ///
    /// # Errors
    /// [`Fault`]: no server.
    pub fn server_anew(&mut self) -> Result<SchoolView, Fault> {
        self.store.write(|tx| {
            let place = placed(tx)?;
            let following = place.following.ok_or_else(|| Fault::new("no-server"))?;
            let following = Following { frontier: Frontier::default(), checkpoint: None, ..following };
            tx.server_forget()?;
            keep_place(tx, Some(&Place { following: Some(following), last: None, distrust: None, ..place }))?;
            self.house.school_view(tx)
        })
    }
}

fn open(note: &str, server: &str) -> Result<Checkpoint, Fault> {
    let verifier: Verifier = server.parse().map_err(Fault::internal)?;
    Checkpoint::open(note, &verifier).map_err(|_| Fault::new("checkpoint-other"))
}

/// The tree over the first receipts.
fn tree_of(tx: &Tx<'_>, size: u64) -> Result<Frontier, Fault> {
    let mut tree = Frontier::default();
    while tree.size() < size {
        let left = u32::try_from(size - tree.size()).unwrap_or(BATCH).min(BATCH);
        let digests = tx.receipt_digests(tree.size(), left)?;
        if digests.is_empty() {
            return Err(Fault::internal("a receipt is missing"));
        }
        digests.iter().for_each(|digest| tree.push(&digest.0));
    }
    Ok(tree)
}
