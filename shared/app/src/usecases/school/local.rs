//! This device's storage as a round with the server needs it.

use std::collections::BTreeMap;

use witnessmark_core::record::{Body, DeviceId, Digest, Record, Role, Signature, Trust};
use witnessmark_store::{Photo, Stuck, Tx};
use witnessmark_sync::client::{Following, Leaf, Local, Page, PhotoOut};
use witnessmark_sync::wire::{Refusal, Refused};

use super::joining::member_of;
use super::place::{Place, keep_place, own, placed};
use crate::Fault;
use crate::house::House;

/// Kinds of pictures that are taken.
const MEDIA: [&str; 3] = ["image/jpeg", "image/png", "image/webp"];
/// About as many bytes of records as are sent at once: more needn't be read.
const PUSH_BYTES: usize = 512 * 1024;
/// Largest picture taken, bytes.
const LARGEST_PHOTO: usize = 20 * 1024 * 1024;

/// One transaction's storage.
pub(super) struct LocalTx<'a, 't> {
    pub(super) tx: &'a Tx<'t>,
    pub(super) house: &'a House,
}

/// Whether the demonstration's records belong to this school: only to one that is invented itself.
pub(super) fn invented(tx: &Tx<'_>, place: Option<&Place>) -> Result<bool, Fault> {
    let trust = tx.trust()?;
    Ok(place.and_then(|place| trust.school(&place.school)).is_some_and(|school| school.invented))
}

impl LocalTx<'_, '_> {
    fn refuse(&self, record: &Record, why: &str) -> Result<(), Fault> {
        Ok(self.tx.refuse(record.payload.machine, &record.line(), why)?)
    }

    /// What was stuck for a reason that has gone is sent again: this device is more than a viewer now, or
    /// the log tells of other keys.
    fn unstick(&self, other_keys: bool) -> Result<(), Fault> {
        let (device, place) = (own(self.tx)?.device, placed(self.tx)?);
        let role = self.tx.trust()?.role_on(&place.school, &device, self.house.now().date_naive());
        if role > Some(Role::Viewer) {
            self.tx.stuck_retry_kind(Refusal::Viewer.name())?;
        }
        if other_keys {
            self.tx.stuck_retry_kind(Refusal::UnknownKey.name())?;
        }
        Ok(())
    }
}

/// Takes records that came from elsewhere: those whose signature is good into the log, also past the end
/// of a key (they count for nothing, but others may have seen them); says why each other is none of ours.
pub(crate) fn take_in<'r>(
    tx: &Tx<'_>,
    records: impl Iterator<Item = &'r Record>,
) -> Result<(u32, BTreeMap<Digest, &'static str>), Fault> {
    let mut new = 0;
    let mut odd = BTreeMap::new();
    // What is here, signature and all, was checked when it came.
    let mut fresh = Vec::new();
    for record in records {
        if !tx.holds(record)? {
            fresh.push(record);
        }
    }
    // Member records first: they tell whose keys the others are signed with. They speak for themselves.
    let (members, others): (Vec<&Record>, Vec<&Record>) =
        fresh.into_iter().partition(|record| record.payload.kind == "member");
    for record in members {
        if Trust::from_records([record]).check(record) == Signature::Good {
            new += u32::from(tx.append(record)?);
        } else {
            odd.insert(record.digest, "bad-signature");
        }
    }
    let trust = tx.trust()?;
    let mut good = Vec::new();
    for record in others {
        if record.payload.typed().is_err() {
            odd.insert(record.digest, "malformed");
            continue;
        }
        match trust.check(record) {
            Signature::Good | Signature::Revoked => good.push(record),
            Signature::UnknownKey => drop(odd.insert(record.digest, "unknown-key")),
            Signature::Bad | Signature::NotChecked => drop(odd.insert(record.digest, "bad-signature")),
        }
    }
    // What trust is made of before what is judged by it, so that histories are folded once.
    let (made_of, rest): (Vec<_>, Vec<_>) =
        good.into_iter().partition(|record| Trust::is_made_of(&record.payload.kind));
    for record in made_of.into_iter().chain(rest) {
        new += u32::from(tx.append(record)?);
    }
    Ok((new, odd))
}

impl Local for LocalTx<'_, '_> {
    type Fault = Fault;

    fn following(&self) -> Result<Following, Fault> {
        placed(self.tx)?.following.ok_or_else(|| Fault::new("no-server"))
    }

    fn keep(&mut self, page: &Page, following: &Following) -> Result<(), Fault> {
        let records = page.leaves.iter().filter_map(|leaf| match leaf {
            Leaf::Record(record) => Some(record.as_ref()),
            Leaf::Have(_) | Leaf::Odd { .. } => None,
        });
        let (_, odd) = take_in(self.tx, records.clone())?;
        for record in records.clone() {
            if let Some(why) = odd.get(&record.digest) {
                self.refuse(record, why)?;
            }
        }
        for leaf in &page.leaves {
            if let Leaf::Odd { envelope, why, .. } = leaf {
                self.tx.refuse(None, &serde_json::to_string(envelope)?, why)?;
            }
        }
        self.unstick(records.clone().any(|record| Trust::is_made_of(&record.payload.kind)))?;
        let digests: Vec<Digest> = page.leaves.iter().map(Leaf::digest).collect();
        self.tx.receipts_keep(page.first, &digests)?;
        let place = Place { following: Some(following.clone()), ..placed(self.tx)? };
        keep_place(self.tx, Some(&place))
    }

    fn has(&self, digest: &Digest) -> Result<bool, Fault> {
        Ok(self.tx.record(digest)?.is_some())
    }

    fn has_receipt(&self, digest: &Digest) -> Result<bool, Fault> {
        Ok(self.tx.receipt(digest)?.is_some())
    }

    fn unsent(&self, after: u64, most: u32) -> Result<Vec<(u64, Record)>, Fault> {
        let invented = invented(self.tx, Some(&placed(self.tx)?))?;
        Ok(self.tx.unsent(invented, after, most, PUSH_BYTES)?)
    }

    fn stuck(&mut self, refused: &[Refused]) -> Result<(), Fault> {
        let at = self.house.now().to_rfc3339();
        for one in refused {
            let Some(digest) = one.digest else { continue };
            let why = format!("{} {}", one.message, one.hint);
            self.tx.stuck_keep(&Stuck { digest, kind: one.kind.name().to_owned(), why, at: at.clone() })?;
        }
        Ok(())
    }

    fn introduction(&self) -> Result<Vec<Record>, Fault> {
        let (place, own) = (placed(self.tx)?, own(self.tx)?);
        let mut records = vec![member_of(self.tx, &own.device)?];
        records.extend(joined(self.tx, &own.device, &place.school)?);
        Ok(records)
    }

    fn photos_unsent(&self, most: u32) -> Result<Vec<Digest>, Fault> {
        Ok(self.tx.photos_unsent(most)?)
    }

    fn photo(&self, digest: &Digest) -> Result<Option<PhotoOut>, Fault> {
        let photo = self.tx.photo(digest)?;
        Ok(photo.map(|photo| PhotoOut { media: photo.media, bytes: photo.bytes }))
    }

    fn photo_sent(&mut self, digest: &Digest) -> Result<(), Fault> {
        Ok(self.tx.photo_sent(digest)?)
    }

    fn photos_missing(&self, most: u32) -> Result<Vec<Digest>, Fault> {
        Ok(self.tx.photos_missing(most)?)
    }

    fn photo_come(&self, digest: &Digest) -> Result<u64, Fault> {
        Ok(u64::try_from(self.tx.photo_part(digest)?.len()).unwrap_or(u64::MAX))
    }

    fn photo_take(&mut self, digest: &Digest, media: &str, bytes: &[u8], whole: bool) -> Result<bool, Fault> {
        let come = [self.tx.photo_part(digest)?.as_slice(), bytes].concat();
        let fits = come.len() <= LARGEST_PHOTO && MEDIA.contains(&media);
        if !whole {
            self.tx.photo_part_keep(digest, if fits { &come } else { &[] })?;
            return Ok(true);
        }
        self.tx.photo_part_keep(digest, &[])?;
        let right = fits && Digest::of(&come) == *digest;
        if right {
            self.tx.photo_keep(&Photo { media: media.to_owned(), bytes: come })?;
            self.tx.photo_sent(digest)?;
        }
        Ok(right)
    }
}

/// A device's latest word that it joins a school.
fn joined(tx: &Tx<'_>, device: &DeviceId, school: &Digest) -> Result<Option<Record>, Fault> {
    let mut words = tx.records_of_none("school-joined")?;
    words.retain(|record| {
        record.payload.device == *device
            && matches!(record.payload.typed(), Ok(Body::SchoolJoined(body)) if body.school == *school)
    });
    Ok(words.pop())
}
