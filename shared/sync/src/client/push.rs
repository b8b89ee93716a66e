//! Sending what waits, and asking to be let in.

use witnessmark_core::record::{Digest, Record, write_bundle};

use super::Local;
use super::round::{Answer, Ask, Next, Round, RoundFault, Stage, good, outside};
use crate::wire::Pushed;

/// Most records and bytes sent at once.
const MOST_RECORDS: u32 = 400;
const MOST_BYTES: usize = 512 * 1024;

impl Round {
    pub(super) fn push<L: Local>(&mut self, local: &mut L) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let unsent = local.unsent(self.sent_upto, MOST_RECORDS).map_err(RoundFault::Local)?;
        let mut bytes = 0;
        let fits = |(n, (_, record)): &(usize, (u64, Record))| {
            bytes += record.envelope.payload.len();
            *n == 0 || bytes <= MOST_BYTES
        };
        let page: Vec<(u64, Record)> =
            unsent.into_iter().enumerate().take_while(fits).map(|(_, r)| r).collect();
        let Some((upto, _)) = page.last() else {
            self.all_sent = true;
            // What was sent must now be in the log.
            return self.go(if self.acknowledged.is_empty() { Stage::Photos } else { Stage::Begin });
        };
        self.sent_upto = *upto;
        let digests = page.iter().map(|(_, record)| record.digest).collect();
        let body = write_bundle(page.iter().map(|(_, record)| record));
        self.ask(Stage::Pushed(digests), post("/v1/records", body, true))
    }

    pub(super) fn take_pushed<L: Local>(
        &mut self,
        local: &mut L,
        digests: Vec<Digest>,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        if outside(answer) {
            return self.introduce(local);
        }
        let pushed: Pushed =
            serde_json::from_slice(good(answer)?).map_err(|_| RoundFault::Answer("no acknowledgement"))?;
        let taken = pushed.taken.iter().map(|taken| taken.digest).filter(|digest| digests.contains(digest));
        self.acknowledged.extend(taken);
        local.stuck(&pushed.refused).map_err(RoundFault::Local)?;
        let count = |n: usize| u64::try_from(n).unwrap_or(u64::MAX);
        self.outcome.sent = self.outcome.sent.saturating_add(count(pushed.taken.len()));
        self.outcome.refused = self.outcome.refused.saturating_add(count(pushed.refused.len()));
        self.go(Stage::Push)
    }

    /// Shows who we are; once only, so that a closed door ends the round.
    pub(super) fn introduce<L: Local>(
        &mut self,
        local: &mut L,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        if self.outcome.waits {
            return self.go(Stage::Over);
        }
        self.outcome.waits = true;
        let records = local.introduction().map_err(RoundFault::Local)?;
        self.ask(Stage::Introduced, post("/v1/waiting", write_bundle(&records), false))
    }

    /// 200: let in by now, go on; 202: wait.
    pub(super) fn take_introduced<F>(&mut self, answer: &Answer) -> Result<Option<Next>, RoundFault<F>> {
        good(answer)?;
        if answer.status == 200 {
            return self.go(Stage::Begin);
        }
        self.go(Stage::Over)
    }
}

fn post(path: &str, body: String, signed: bool) -> Ask {
    Ask {
        method: "POST",
        media: Some("application/jsonl".into()),
        body: body.into_bytes(),
        signed,
        ..Ask::get(path)
    }
}
