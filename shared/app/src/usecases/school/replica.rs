//! A server's own copy, from which its board is drawn: the log's records taken in order, and what
//! a board prepares for devices to sign. Nobody signs here.

use uuid::Uuid;
use witnessmark_core::record::{Body, CataloguePublished, Deferred, DeviceId, Digest, Record};
use witnessmark_store::Tx;

use super::local::take_in;
use super::place::{Place, keep_place, placed};
use super::publishing::next_version;
use crate::house::id;
use crate::texts::FALLBACK;
use crate::usecases::day;
use crate::views::PublishFile;
use crate::{App, Fault};

/// How many of the log's records have been taken.
const TAKEN: &str = "replica-taken";

impl App {
    /// Makes this the copy of a school's log.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn replica_of(&mut self, school: Digest, address: Option<String>) -> Result<(), Fault> {
        self.store.write(|tx| {
            let place = Place { school, address, following: None, last: None, distrust: None };
            keep_place(tx, Some(&place))
        })
    }

    /// Speaks the first of these languages that there are words in, until it is told otherwise; the
    /// fallback where there is none. Each who looks at a board has a language of their own.
    pub fn speak(&mut self, wished: &[String]) {
        let known = |wish: &&String| self.house.catalogue.texts.languages().any(|one| one == wish.as_str());
        self.house.language = wished.iter().find(known).map_or(FALLBACK, String::as_str).to_owned();
    }

    /// The language spoken.
    pub fn language(&self) -> &str {
        &self.house.language
    }

    /// How many of the log's records have been taken.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn replica_size(&mut self) -> Result<u64, Fault> {
        self.store.read(replica_size)
    }

    /// Takes the records from number `from` of the log on; those taken before are passed over.
    ///
    /// # Errors
    /// [`Fault`]; also where records in between are missing.
    pub fn replica_take(&mut self, from: u64, records: &[Record]) -> Result<(), Fault> {
        self.store.write(|tx| {
            let taken = replica_size(tx)?;
            let skip =
                taken.checked_sub(from).ok_or_else(|| Fault::internal("records are missing in between"))?;
            let new = records.get(usize::try_from(skip).unwrap_or(usize::MAX)..).unwrap_or_default();
            take_in(tx, new.iter())?;
            let upto = from.saturating_add(u64::try_from(records.len()).unwrap_or(u64::MAX)).max(taken);
            tx.set(TAKEN, &upto.to_string())?;
            Ok::<_, Fault>(())
        })?;
        self.reload_catalogue()
    }

    /// A deferral as this device's holder would sign it: the record's kind and body.
    ///
    /// # Errors
    /// [`Fault`]: as for one signed on the device.
    #[allow(clippy::too_many_arguments)]
    pub fn prepare_deferral(
        &mut self,
        device: &DeviceId,
        machine: &str,
        point: &str,
        until_hours: Option<f64>,
        until_flights: Option<u32>,
        until_date: Option<String>,
        condition: &str,
        reason: &str,
    ) -> Result<(Uuid, String, serde_json::Value), Fault> {
        let machine = id(machine)?;
        let until_date = until_date.filter(|date| !date.is_empty()).map(|date| day(&date)).transpose()?;
        self.store.read(|tx| {
            let deferred = Deferred {
                point: point.to_owned(),
                opened_by: self.house.leading_defect(tx, machine, point)?,
                until_hours,
                until_flights,
                until_date,
                condition: condition.trim().to_owned(),
                reason: reason.trim().to_owned(),
            };
            self.house.check_deferral(tx, machine, device, &deferred)?;
            let (kind, body) = Body::Deferred(deferred).write()?;
            Ok((machine, kind, body))
        })
    }

    /// A publication as this device's holder would sign it: the record's kind and body.
    ///
    /// # Errors
    /// [`Fault`]: as for one signed on the device.
    pub fn prepare_publication(
        &mut self,
        device: &DeviceId,
        title: &str,
        files: &[PublishFile],
        note: &str,
    ) -> Result<(String, serde_json::Value), Fault> {
        self.store.read(|tx| {
            let school = placed(tx)?.school;
            let title = title.trim().to_owned();
            let published = CataloguePublished {
                school,
                version: next_version(tx, &school, &title)?,
                title,
                files: files.iter().map(|file| (file.path.clone(), file.text.clone())).collect(),
                note: note.trim().to_owned(),
            };
            self.house.check_publication(tx, device, &published)?;
            Ok(Body::CataloguePublished(published).write()?)
        })
    }
}

pub(super) fn replica_size(tx: &Tx<'_>) -> Result<u64, Fault> {
    Ok(tx.setting(TAKEN)?.and_then(|taken| taken.parse().ok()).unwrap_or(0))
}
