//! Pictures, by parts, both ways: after the records that name them.

use witnessmark_core::record::Digest;

use super::Local;
use super::round::{Answer, Ask, Next, Round, RoundFault, Stage, good};

/// Bytes of a picture sent or asked for at once.
const PART: u64 = 256 * 1024;
/// Pictures looked for at once.
const BATCH: u32 = 64;

impl Round {
    pub(super) fn photos<L: Local>(&mut self, local: &mut L) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let next = |found: Vec<Digest>, skipped: &std::collections::BTreeSet<Digest>| {
            found.into_iter().find(|digest| !skipped.contains(digest))
        };
        let most = BATCH.saturating_add(u32::try_from(self.skipped.len()).unwrap_or(u32::MAX));
        if let Some(digest) = next(local.photos_unsent(most).map_err(RoundFault::Local)?, &self.skipped) {
            let ask = Ask { method: "HEAD", ..Ask::get(format!("/v1/photo/{digest}")) };
            return self.ask(Stage::PhotoHead(digest), ask);
        }
        if let Some(digest) = next(local.photos_missing(most).map_err(RoundFault::Local)?, &self.skipped) {
            return self.get_photo(local, digest);
        }
        // Let in, whatever was said at the door.
        self.outcome.waits = false;
        self.go(Stage::Over)
    }

    pub(super) fn take_photo_head<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        match answer.status {
            // Whole: a part of one is told by 206.
            200 => self.photo_is_there(local, digest),
            206 => self.put_photo(local, digest, answer.length.unwrap_or(0)),
            404 => self.put_photo(local, digest, 0),
            _ => {
                good(answer)?;
                Err(RoundFault::Answer("no word of a picture"))
            }
        }
    }

    fn put_photo<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
        from: u64,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let Some(photo) = local.photo(&digest).map_err(RoundFault::Local)? else { return self.skip(digest) };
        let total = u64::try_from(photo.bytes.len()).unwrap_or(u64::MAX);
        // A server that has more than there is has another picture: begin anew.
        let from = if from < total { from } else { 0 };
        let upto = from.saturating_add(PART).min(total);
        let range = |n: u64| usize::try_from(n).unwrap_or(usize::MAX);
        let part = photo.bytes.get(range(from)..range(upto)).unwrap_or_default().to_vec();
        let ask = Ask {
            method: "PUT",
            media: Some(photo.media),
            content_range: Some(format!("bytes {from}-{}/{total}", upto.saturating_sub(1))),
            body: part,
            ..Ask::get(format!("/v1/photo/{digest}"))
        };
        self.ask(Stage::PhotoPut(digest, upto), ask)
    }

    pub(super) fn take_photo_put<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
        upto: u64,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        match answer.status {
            201 => {
                self.outcome.photos_sent = self.outcome.photos_sent.saturating_add(1);
                self.photo_is_there(local, digest)
            }
            202 => self.put_photo(local, digest, upto),
            // Too large, or not as named: other pictures may still go.
            400..=428 | 430..=499 => self.skip(digest),
            _ => {
                good(answer)?;
                Err(RoundFault::Answer("no word of a picture"))
            }
        }
    }

    fn photo_is_there<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        local.photo_sent(&digest).map_err(RoundFault::Local)?;
        self.go(Stage::Photos)
    }

    fn get_photo<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        let from = local.photo_come(&digest).map_err(RoundFault::Local)?;
        let upto = from.saturating_add(PART).saturating_sub(1);
        let ask =
            Ask { range: Some(format!("bytes={from}-{upto}")), ..Ask::get(format!("/v1/photo/{digest}")) };
        self.ask(Stage::PhotoGet(digest), ask)
    }

    pub(super) fn take_photo<L: Local>(
        &mut self,
        local: &mut L,
        digest: Digest,
        answer: &Answer,
    ) -> Result<Option<Next>, RoundFault<L::Fault>> {
        // Its author hasn't sent it yet, or the server has lost it: another round may find it.
        if (400..=499).contains(&answer.status) && answer.status != 429 {
            return self.skip(digest);
        }
        good(&Answer { broken: false, ..answer.clone() })?;
        let Some(total) = answer.length.filter(|_| answer.status == 206) else {
            return Err(RoundFault::Answer("a picture comes by parts"));
        };
        if answer.body.is_empty() {
            return Err(RoundFault::Busy { status: answer.status });
        }
        let from = local.photo_come(&digest).map_err(RoundFault::Local)?;
        let come = from.saturating_add(u64::try_from(answer.body.len()).unwrap_or(u64::MAX));
        let media = answer.media.as_deref().unwrap_or("application/octet-stream");
        let whole = come >= total;
        let right = local.photo_take(&digest, media, &answer.body, whole).map_err(RoundFault::Local)?;
        if !whole {
            return self.get_photo(local, digest);
        }
        if !right {
            return self.skip(digest);
        }
        self.outcome.photos_came = self.outcome.photos_came.saturating_add(1);
        self.go(Stage::Photos)
    }

    fn skip<F>(&mut self, digest: Digest) -> Result<Option<Next>, RoundFault<F>> {
        self.skipped.insert(digest);
        self.go(Stage::Photos)
    }
}
