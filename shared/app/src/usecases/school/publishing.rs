//! Lists and data sheets that an instructor publishes to the members.

use std::collections::BTreeMap;

use witnessmark_core::history::Place as Causal;
use witnessmark_core::record::{Body, CataloguePublished, DeviceId, Digest, Record, Right};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::place::{own, place, placed};
use crate::catalogue::is_of_screens;
use crate::house::House;
use crate::validate::validate_files;
use crate::views::{PublishFault, PublishFile, PublishPreview, SchoolView};
use crate::{App, Catalogue, Fault, identity};

/// Folders of the catalogue in which a school may publish.
const FOLDERS: [&str; 5] = ["engines/", "fragments/", "assembly/", "drawings/", "texts/"];
/// Files beside them that it may.
const FILES: [&str; 2] = ["limits.toml", "measures.toml"];
/// Most bytes of one publication.
const LARGEST: usize = 200 * 1024;

impl App {
    /// Checks files that might be published, and says what would change.
    ///
    /// # Errors
    /// [`Fault`]: no school.
    pub fn publish_preview(
        &mut self,
        title: String,
        files: Vec<PublishFile>,
    ) -> Result<PublishPreview, Fault> {
        self.store.read(|tx| {
            let place = placed(tx)?;
            let title = title.trim();
            let version = next_version(tx, &place.school, title)?;
            let published = published_files(tx)?;
            let faults = faults_of(&files, published.clone())?;
            let changes = files
                .iter()
                .map(|file| {
                    let known =
                        published.contains_key(&file.path) || crate::EMBEDDED.get_file(&file.path).is_some();
                    let id = if known { "publish-replaces" } else { "publish-adds" };
                    self.house.say(&Said::new(id).text("file", &file.path))
                })
                .collect();
            Ok(PublishPreview { faults, changes, version })
        })
    }

    /// Publishes files to all members.
    ///
    /// # Errors
    /// [`Fault`]: no title, files with faults, no right to it, a wrong PIN.
    pub fn publish(
        &mut self,
        title: String,
        files: Vec<PublishFile>,
        note: String,
        pin: String,
    ) -> Result<SchoolView, Fault> {
        let preview = self.publish_preview(title.clone(), files.clone())?;
        let body = |tx: &Tx<'_>| -> Result<CataloguePublished, Fault> {
            let (place, own) = (placed(tx)?, own(tx)?);
            let body = CataloguePublished {
                school: place.school,
                title: title.trim().to_owned(),
                version: preview.version,
                files: files.iter().map(|file| (file.path.clone(), file.text.clone())).collect(),
                note: note.trim().to_owned(),
            };
            self.house.check_publication(tx, &own.device, &body)?;
            Ok(body)
        };
        self.store.read(body)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, None, &Body::CataloguePublished(body(tx)?))?;
            Ok::<_, Fault>(())
        })?;
        self.reload_catalogue()?;
        self.school()
    }

    /// Reads the catalogue anew with what is published to this device. What can't be used here is left
    /// out, and the screens say so.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn reload_catalogue(&mut self) -> Result<(), Fault> {
        let files = self.store.read(published_files)?;
        if files == self.house.published {
            return Ok(());
        }
        match Catalogue::with(&files) {
            Ok(catalogue) => {
                self.house.catalogue = catalogue;
                self.house.unusable = None;
            }
            Err(fault) => self.house.unusable = Some(self.house.say(&fault.said)),
        }
        self.house.published = files;
        Ok(())
    }
}

/// Everything published in a school by somebody entitled, oldest first, and whether it is the one in use.
pub(super) fn publications(
    tx: &Tx<'_>,
    school: &Digest,
) -> Result<Vec<(Record, CataloguePublished, bool)>, Fault> {
    let trust = tx.trust()?;
    let Some(school) = trust.school(school) else { return Ok(Vec::new()) };
    let mut found = Vec::new();
    for record in tx.records_of_none("catalogue-published")? {
        let Ok(Body::CataloguePublished(body)) = record.payload.typed() else { continue };
        let may = school.role(&record).is_some_and(|role| role.gives(Right::Publish, false));
        if body.school == school.id && may && trust.counts(&record) {
            found.push((record, body, false));
        }
    }
    found.sort_by_cached_key(|(record, ..)| Causal::of(record));
    let latest: BTreeMap<String, Digest> =
        found.iter().map(|(record, body, _)| (body.title.clone(), record.digest)).collect();
    for (record, body, used) in &mut found {
        *used = latest.get(&body.title) == Some(&record.digest);
    }
    Ok(found)
}

/// The version that the next publication of a title will be.
pub(super) fn next_version(tx: &Tx<'_>, school: &Digest, title: &str) -> Result<u32, Fault> {
    let latest = publications(tx, school)?.into_iter().filter(|(_, body, _)| body.title == title);
    Ok(latest.map(|(_, body, _)| body.version).max().unwrap_or(0).saturating_add(1))
}

/// The files in use by this device's school, by path.
pub(crate) fn published_files(tx: &Tx<'_>) -> Result<BTreeMap<String, String>, Fault> {
    let Some(place) = place(tx)? else { return Ok(BTreeMap::new()) };
    let used = publications(tx, &place.school)?.into_iter().filter(|(_, _, used)| *used);
    let files = used.flat_map(|(_, body, _)| body.files);
    // Whoever signed it may have had another program, which asks for less.
    Ok(files.filter(|(path, _)| may_publish(path)).collect())
}

fn in_folder(path: &str) -> bool {
    FILES.contains(&path) || FOLDERS.iter().any(|folder| path.starts_with(folder)) && !path.contains("..")
}

/// Whether a school may publish a file of this path.
fn may_publish(path: &str) -> bool {
    in_folder(path) && !(path.starts_with("texts/") && is_of_screens(path))
}

/// What is wrong with files to be published: each by itself, and all together with what there is and
/// what was published before.
fn faults_of(files: &[PublishFile], published: BTreeMap<String, String>) -> Result<Vec<PublishFault>, Fault> {
    let fault = |file: &PublishFile, words: &str, hint: &str| PublishFault {
        file: file.path.clone(),
        line: 1,
        words: words.to_owned(),
        hint: hint.to_owned(),
    };
    let mut faults = Vec::new();
    for file in files {
        if !in_folder(&file.path) {
            faults.push(fault(
                file,
                "lies in no folder of lists",
                "name it like engines/x.toml or fragments/x.toml",
            ));
        }
        if in_folder(&file.path) && !may_publish(&file.path) {
            faults.push(fault(file, "holds the screens' own words", "give the words of lists another file"));
        }
    }
    let plain: Vec<(String, String)> =
        files.iter().map(|file| (file.path.clone(), file.text.clone())).collect();
    faults.extend(validate_files(&plain)?.into_iter().map(|found| PublishFault {
        file: found.file,
        line: u32::try_from(found.line).unwrap_or(u32::MAX),
        words: found.what,
        hint: found.hint,
    }));
    if faults.is_empty()
        && let Err(whole) = Catalogue::with(&published.into_iter().chain(plain).collect())
    {
        let words = crate::show(&whole).message;
        faults.extend(files.first().map(|file| fault(file, &words, "look at the files together")));
    }
    Ok(faults)
}

impl House {
    /// Whether this publication may be signed by this device.
    pub(super) fn check_publication(
        &self,
        tx: &Tx<'_>,
        device: &DeviceId,
        body: &CataloguePublished,
    ) -> Result<(), Fault> {
        let place = placed(tx)?;
        let role = tx.trust()?.role_on(&place.school, device, self.now().date_naive());
        if body.school != place.school || !role.is_some_and(|role| role.gives(Right::Publish, false)) {
            return Err(Fault::new("publish-role"));
        }
        if body.title.is_empty() || body.title.chars().count() > 80 || body.files.is_empty() {
            return Err(Fault::new("publish-title"));
        }
        if body.files.values().map(String::len).sum::<usize>() > LARGEST {
            return Err(Fault::new("publish-large").number("most", (LARGEST / 1024) as f64));
        }
        let files: Vec<PublishFile> = body
            .files
            .iter()
            .map(|(path, text)| PublishFile { path: path.clone(), text: text.clone() })
            .collect();
        match faults_of(&files, published_files(tx)?)?.into_iter().next() {
            None => Ok(()),
            Some(fault) => Err(Fault::new("publish-faults")
                .text("where", format!("{}:{}", fault.file, fault.line))
                .text("why", fault.words)),
        }
    }
}
