//! A phone that follows a server, kept in memory: [`Local`] as a test can look into.

use std::collections::{BTreeMap, BTreeSet};
use std::convert::Infallible;

use witnessmark_core::record::*;
use witnessmark_sync::client::{Answer as Came, Ask as Asked, Following, Leaf, Local, Next, Outcome};
use witnessmark_sync::client::{Page, PhotoOut, Round, RoundFault};
use witnessmark_sync::merkle::Frontier;
use witnessmark_sync::wire::{Refused, SchoolCard};

use crate::device::{Ask, Device};
use crate::world::World;

pub struct Phone {
    pub device: Device,
    /// In order of arrival.
    pub records: Vec<Record>,
    pub receipts: BTreeSet<Digest>,
    pub stuck: BTreeMap<Digest, Refused>,
    pub photos: BTreeMap<Digest, PhotoOut>,
    pub photos_named: BTreeSet<Digest>,
    pub photos_sent: BTreeSet<Digest>,
    pub coming: BTreeMap<Digest, Vec<u8>>,
    pub following: Following,
    pub pages: usize,
}

impl Phone {
    pub fn new(world: &World, device: Device) -> Self {
        let card: SchoolCard = world.open("/v1/school").json();
        let following = Following {
            school: card.school,
            server: card.server,
            frontier: Frontier::default(),
            checkpoint: None,
        };
        Self {
            records: device.records.clone(),
            device,
            receipts: BTreeSet::new(),
            stuck: BTreeMap::new(),
            photos: BTreeMap::new(),
            photos_named: BTreeSet::new(),
            photos_sent: BTreeSet::new(),
            coming: BTreeMap::new(),
            following,
            pages: 0,
        }
    }

    pub fn says(&mut self, words: &str) {
        let record = self.device.says(words);
        self.records.push(record);
    }

    pub fn pictures(&mut self, bytes: Vec<u8>) -> Digest {
        let digest = Digest::of(&bytes);
        self.photos_named.insert(digest);
        self.photos.insert(digest, PhotoOut { media: "image/jpeg".into(), bytes });
        digest
    }

    pub fn digests(&self) -> BTreeSet<Digest> {
        self.records.iter().map(|record| record.digest).collect()
    }

    /// A whole round; `net` may spoil what comes back.
    pub fn round(
        &mut self,
        world: &World,
        mut net: impl FnMut(&Asked, Came) -> Option<Came>,
    ) -> Result<Outcome, Option<RoundFault<Infallible>>> {
        let mut round = Round::default();
        let mut answer = None;
        loop {
            match round.next(self, answer.take()).map_err(Some)? {
                Next::Done(outcome) => return Ok(outcome),
                Next::Ask(ask) => {
                    let came = carry(world, &ask, &self.device.courier);
                    self.pages += usize::from(ask.path.starts_with("/v1/log"));
                    // Where nothing comes back the round is over, like a phone that is switched off.
                    answer = Some(net(&ask, came).ok_or(None)?);
                }
            }
        }
    }

    pub fn sync(&mut self, world: &World) -> Outcome {
        self.round(world, |_, came| Some(came)).unwrap()
    }
}

/// Asks the server.
fn carry(world: &World, asked: &Asked, courier: &SigningSeed) -> Came {
    let mut ask = Ask::new(asked.method, &asked.path, world.now()).body(asked.body.clone());
    let named =
        [("content-type", &asked.media), ("range", &asked.range), ("content-range", &asked.content_range)];
    for (name, value) in named {
        if let Some(value) = value {
            ask = ask.header(name, value.clone());
        }
    }
    let answer = world.ask(if asked.signed { ask.signed(courier) } else { ask.unsigned() });
    let text = |name: &str| answer.headers.get(name).map(|value| value.to_str().unwrap().to_owned());
    let total = text("content-range").and_then(|range| range.rsplit('/').next()?.parse().ok());
    Came {
        status: answer.status.as_u16(),
        media: text("content-type"),
        length: total.or_else(|| text("content-length")?.parse().ok()),
        body: answer.body,
        broken: false,
    }
}

impl Local for Phone {
    type Fault = Infallible;

    fn following(&self) -> Result<Following, Infallible> {
        Ok(self.following.clone())
    }

    fn keep(&mut self, page: &Page, following: &Following) -> Result<(), Infallible> {
        for leaf in &page.leaves {
            self.receipts.insert(leaf.digest());
            self.stuck.remove(&leaf.digest());
            if let Leaf::Record(record) = leaf
                && !self.has(&record.digest)?
            {
                self.records.push(record.as_ref().clone());
            }
        }
        self.following = following.clone();
        Ok(())
    }

    fn has(&self, digest: &Digest) -> Result<bool, Infallible> {
        Ok(self.records.iter().any(|record| record.digest == *digest))
    }

    fn has_receipt(&self, digest: &Digest) -> Result<bool, Infallible> {
        Ok(self.receipts.contains(digest))
    }

    fn unsent(&self, after: u64, most: u32) -> Result<Vec<(u64, Record)>, Infallible> {
        let numbered = (1..).zip(&self.records).filter(|(n, record)| {
            *n > after && !self.receipts.contains(&record.digest) && !self.stuck.contains_key(&record.digest)
        });
        Ok(numbered.take(most as usize).map(|(n, record)| (n, record.clone())).collect())
    }

    fn stuck(&mut self, refused: &[Refused]) -> Result<(), Infallible> {
        self.stuck.extend(refused.iter().filter_map(|refused| Some((refused.digest?, refused.clone()))));
        Ok(())
    }

    fn introduction(&self) -> Result<Vec<Record>, Infallible> {
        let own = self.device.records.iter();
        Ok(own
            .filter(|record| ["member", "school-joined"].contains(&record.payload.kind.as_str()))
            .cloned()
            .collect())
    }

    fn photos_unsent(&self, most: u32) -> Result<Vec<Digest>, Infallible> {
        let unsent = self.photos.keys().filter(|digest| !self.photos_sent.contains(*digest));
        Ok(unsent.take(most as usize).copied().collect())
    }

    fn photo(&self, digest: &Digest) -> Result<Option<PhotoOut>, Infallible> {
        Ok(self.photos.get(digest).cloned())
    }

    fn photo_sent(&mut self, digest: &Digest) -> Result<(), Infallible> {
        self.photos_sent.insert(*digest);
        Ok(())
    }

    fn photos_missing(&self, most: u32) -> Result<Vec<Digest>, Infallible> {
        let missing = self.photos_named.iter().filter(|digest| !self.photos.contains_key(*digest));
        Ok(missing.take(most as usize).copied().collect())
    }

    fn photo_come(&self, digest: &Digest) -> Result<u64, Infallible> {
        Ok(self.coming.get(digest).map_or(0, |bytes| bytes.len() as u64))
    }

    fn photo_take(
        &mut self,
        digest: &Digest,
        media: &str,
        bytes: &[u8],
        whole: bool,
    ) -> Result<bool, Infallible> {
        let come = self.coming.entry(*digest).or_default();
        come.extend_from_slice(bytes);
        if !whole {
            return Ok(true);
        }
        let bytes = self.coming.remove(digest).unwrap();
        let right = Digest::of(&bytes) == *digest;
        if right {
            self.photos_sent.insert(*digest);
            self.photos.insert(*digest, PhotoOut { media: media.into(), bytes });
        }
        Ok(right)
    }
}
