//! Following the log, and telling the pages.

use std::thread;
use std::time::{Duration, Instant};

use futures_util::FutureExt;
use witnessmark_core::record::Record;

use super::{Board, Config};
use crate::{Server, ShelfFault};

/// How often the log is looked at for what other processes appended.
const SOON: Duration = Duration::from_millis(500);
/// How often for what this one did.
const AT_ONCE: Duration = Duration::from_millis(50);
/// How long to wait after a failure.
const LATER: Duration = Duration::from_secs(5);

impl Board {
    /// A board that follows the log, on a thread of its own, until the server stops. Whatever goes wrong
    /// with it, devices are answered.
    pub fn start(server: Server, config: Config) -> Self {
        let board = Self::new(server, config);
        let follower = board.clone();
        let begun = thread::Builder::new().name("board".into()).spawn(move || follower.follow());
        if let Err(why) = begun {
            tracing::error!(%why, "the board can't follow the log");
        }
        board
    }

    fn follow(&self) {
        let mut grown = self.server().school().grown();
        let stopped = || self.server().stopped().now_or_never().is_some();
        while !stopped() {
            let _ = grown.borrow_and_update();
            let wait = match self.catch_up() {
                Ok(_) => SOON,
                Err(why) => {
                    tracing::error!(%why, "the board can't follow the log");
                    LATER
                }
            };
            let until = Instant::now() + wait;
            // The school lives as long as this.
            while Instant::now() < until && !stopped() && !grown.has_changed().unwrap_or(false) {
                thread::sleep(AT_ONCE);
            }
        }
    }

    /// Takes what is new in the log; says how much the board shows then. Blocks.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn catch_up(&self) -> Result<u64, ShelfFault> {
        // Whoever was ended is out even before the next request.
        self.server().school().follow()?;
        let size = self.0.replica.follow(self.server(), |records| self.settle(records))?;
        self.0.shown.send_if_modified(|shown| std::mem::replace(shown, size) != size);
        Ok(size)
    }

    /// Drops the drafts that these records sign.
    fn settle(&self, records: &[Record]) -> Result<(), ShelfFault> {
        let school = self.server().school();
        for kept in school.shelf().drafts(school.on_shelf())? {
            let Some(draft) = school.draft(&kept.id)? else { continue };
            let is_it = |record: &Record| {
                let payload = &record.payload;
                payload.kind == draft.kind && payload.machine == draft.machine && payload.body == draft.body
            };
            if records.iter().any(is_it) {
                school.shelf().draft_drop(school.on_shelf(), &kept.id)?;
            }
        }
        Ok(())
    }
}
