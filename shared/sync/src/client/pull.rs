//! Taking what is new, page by page, each proven to lie in the log before it is kept.

use witnessmark_core::record::{Digest, Record};

use super::round::{Answer, Ask, Lie, Next, Round, RoundFault, Stage, Target, good, lies, outside, proven};
use super::{Following, Leaf, Local, Page};
use crate::merkle::Frontier;
use crate::wire::LogLine;

impl Round {
    pub(super) fn page<F>(
        &mut self,
        target: &Target,
        from: u64,
        whole: bool,
    ) -> Result<Option<Next>, RoundFault<F>> {
        let own = if whole { "&own=whole" } else { "" };
        self.ask(Stage::Page(target.clone(), whole), Ask::get(format!("/v1/log?from={from}{own}")))
    }

    pub(super) fn take_page<L: Local>(
        &mut self,
        local: &mut L,
        target: Target,
        whole: bool,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        if outside(answer) {
            return self.introduce(local);
        }
        // A page that broke off is good up to its last whole line.
        let body = good(&Answer { broken: false, ..answer.clone() })?.to_vec();
        let following = local.following().map_err(RoundFault::Local)?;
        let first = following.frontier.size();
        let most = target.checkpoint.size.saturating_sub(first);
        let leaves =
            leaves(&body, most).ok_or(RoundFault::Answer("a page of the log has a record a line"))?;
        if leaves.is_empty() {
            return Err(RoundFault::Busy { status: answer.status });
        }
        // A device that lost what it once signed asks for its own records too.
        for leaf in &leaves {
            if let Leaf::Have(digest) = leaf
                && !local.has(digest).map_err(RoundFault::Local)?
            {
                if whole {
                    return Err(lies(Lie::OtherRecords { first }, &target.note, &following));
                }
                return self.page(&target, first, true);
            }
        }
        let mut frontier = following.frontier.clone();
        leaves.iter().for_each(|leaf| frontier.push(&leaf.digest().0));
        let page = Page { first, leaves };
        if frontier.size() < target.checkpoint.size {
            let path =
                format!("/v1/proof/consistency?from={}&to={}", frontier.size(), target.checkpoint.size);
            return self.ask(Stage::PageProof(target, page, frontier), Ask::get(path));
        }
        if frontier.root() != target.checkpoint.root {
            return Err(lies(Lie::OtherRecords { first }, &target.note, &following));
        }
        self.keep(local, following, target, page, frontier)
    }

    pub(super) fn take_page_proof<L: Local>(
        &mut self,
        local: &mut L,
        target: Target,
        page: Page,
        frontier: Frontier,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let following = local.following().map_err(RoundFault::Local)?;
        if !proven(answer, &frontier, &target)? {
            return Err(lies(Lie::OtherRecords { first: page.first }, &target.note, &following));
        }
        self.keep(local, following, target, page, frontier)
    }

    fn keep<L: Local>(
        &mut self,
        local: &mut L,
        following: Following,
        target: Target,
        page: Page,
        frontier: Frontier,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let whole = frontier.size() == target.checkpoint.size;
        let checkpoint = if whole { Some(target.note.clone()) } else { following.checkpoint.clone() };
        let following = Following { frontier, checkpoint, ..following };
        self.kept(local, &page, &following)?;
        let came = page.leaves.iter().filter(|leaf| !matches!(leaf, Leaf::Have(_))).count();
        self.outcome.came = self.outcome.came.saturating_add(u64::try_from(came).unwrap_or(u64::MAX));
        if whole {
            return self.followed(local, following, target);
        }
        self.page(&target, following.frontier.size(), false)
    }
}

/// The whole lines of a page, no more than the log has; none where a line is nothing of a log.
fn leaves(body: &[u8], most: u64) -> Option<Vec<Leaf>> {
    let whole = body.iter().rposition(|byte| *byte == b'\n').map_or(0, |end| end + 1);
    let text = std::str::from_utf8(body.get(..whole)?).ok()?;
    let most = usize::try_from(most).unwrap_or(usize::MAX);
    text.lines().take(most).map(leaf).collect()
}

fn leaf(line: &str) -> Option<Leaf> {
    Some(match serde_json::from_str(line).ok()? {
        LogLine::Have { have } => Leaf::Have(have),
        LogLine::Whole(envelope) => match Record::parse(envelope.clone()) {
            Ok(record) => Leaf::Record(Box::new(record)),
            Err(why) => {
                let digest = Digest::of(envelope.payload.as_bytes());
                Leaf::Odd { digest, envelope, why: why.to_string() }
            }
        },
    })
}
