//! A school as the screens see it.

use sha2::{Digest as _, Sha256};
use witnessmark_core::record::{Body, DeviceId, School};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::place::{Place, place};
use super::publishing::publications;
use crate::house::House;
use crate::rights::role_id;
use crate::views::{
    EnrolledView, MemberDevice, MemberView, PublishedView, SchoolBrief, SchoolView, StuckView, SyncView,
};
use crate::{App, Fault, identity};

/// Letters that can be read out and can't be mistaken for each other (Crockford's base 32).
const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// Twelve characters of a hash (60 bits), in fours.
fn spoken(bytes: &[u8]) -> String {
    let hash: [u8; 32] = Sha256::digest(bytes).into();
    let mut text = String::new();
    let mut bits = hash.iter().flat_map(|byte| (0..8).rev().map(move |bit| usize::from(byte >> bit & 1)));
    for n in 0..12 {
        if n > 0 && n % 4 == 0 {
            text.push('-');
        }
        let letter = bits.by_ref().take(5).fold(0, |value, bit| value * 2 + bit);
        text.push(char::from(LETTERS.get(letter).copied().unwrap_or(b'0')));
    }
    text
}

/// What a device's holder reads out.
pub(super) fn code_of(device: &DeviceId) -> String {
    spoken(device.0.as_bytes())
}

pub(super) fn brief(school: &School, address: Option<String>) -> SchoolBrief {
    SchoolBrief {
        id: school.id.to_string(),
        name: school.name.clone(),
        code: spoken(&school.id.0),
        address,
        invented: school.invented,
    }
}

impl App {
    /// This device's place in a school.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn school(&mut self) -> Result<SchoolView, Fault> {
        self.store.read(|tx| self.house.school_view(tx))
    }
}

impl House {
    pub(super) fn school_view(&self, tx: &Tx<'_>) -> Result<SchoolView, Fault> {
        let own = super::place::own(tx)?;
        let place = place(tx)?;
        let trust = tx.trust()?;
        let school = place.as_ref().and_then(|place| trust.school(&place.school));
        let today = self.now().date_naive();
        let role = place.as_ref().and_then(|place| trust.role_on(&place.school, &own.device, today));
        let mut machines = Vec::new();
        for machine in tx.machines()? {
            let history = self.known(tx, machine)?;
            let Some((described, _)) = &history.machine else { continue };
            machines.push(EnrolledView {
                id: machine.to_string(),
                name: described.name.clone(),
                enrolled: place.as_ref().is_some_and(|place| history.school == Some(place.school)),
                own: history.owns(&own.device, &trust),
            });
        }
        let published = match &place {
            Some(place) => self.published_views(tx, place)?,
            None => Vec::new(),
        };
        Ok(SchoolView {
            school: school.map(|school| brief(school, place.as_ref().and_then(|p| p.address.clone()))),
            role,
            role_words: self.word(role.map_or("role-none", role_id)),
            root: school.is_some_and(|school| school.root == own.device),
            code: code_of(&own.device),
            members: school.map(|school| self.members(school, &trust, &own)).unwrap_or_default(),
            machines,
            published,
            sync: self.sync_view(tx)?,
        })
    }

    fn members(
        &self,
        school: &School,
        trust: &witnessmark_core::record::Trust,
        own: &identity::Signatory,
    ) -> Vec<MemberView> {
        let today = self.now().date_naive();
        let mut views: Vec<MemberView> = Vec::new();
        // The latest term of a person tells what they are; each of their devices is told once.
        for term in school.terms.iter().rev() {
            let person = term.person.to_string();
            let ended = trust.standing(&term.device).is_some_and(|standing| standing.last_good.is_some());
            let device = MemberDevice {
                device: term.device.0.clone(),
                code: code_of(&term.device),
                ended,
                root: school.root == term.device,
            };
            if let Some(view) = views.iter_mut().find(|view| view.person == person) {
                if view.devices.iter().all(|known| known.device != device.device) {
                    view.devices.push(device);
                }
                continue;
            }
            let said =
                Said::new(if term.stands() { "term-stands" } else { "term-ended" }).date("from", term.from);
            let said = match term.until {
                Some(until) => said.date("until", until).text("open", "no"),
                None => said.date("until", term.from).text("open", "yes"),
            };
            views.push(MemberView {
                person,
                name: term.name.clone(),
                role: term.role,
                role_words: self.word(role_id(term.role)),
                term: self.say(&said),
                standing: school.role_on(&term.device, today).is_some(),
                you: term.person == own.person,
                devices: vec![device],
            });
        }
        views.sort_by(|a, b| {
            (!a.standing, std::cmp::Reverse(a.role), &a.name).cmp(&(
                !b.standing,
                std::cmp::Reverse(b.role),
                &b.name,
            ))
        });
        views
    }

    fn published_views(&self, tx: &Tx<'_>, place: &Place) -> Result<Vec<PublishedView>, Fault> {
        let people = self.people(tx)?;
        let publications = publications(tx, &place.school)?;
        Ok(publications
            .into_iter()
            .rev()
            .map(|(record, body, used)| PublishedView {
                record: record.digest.to_string(),
                by: self.say(
                    &Said::new("published-by")
                        .text("person", people.name(&record.payload.device))
                        .date("day", record.payload.at.date_naive()),
                ),
                title: body.title,
                version: body.version,
                note: body.note,
                files: body.files.into_keys().collect(),
                used,
            })
            .collect())
    }

    /// How it stands with the server.
    pub(super) fn sync_view(&self, tx: &Tx<'_>) -> Result<SyncView, Fault> {
        let place = place(tx)?;
        let invented = super::local::invented(tx, place.as_ref())?;
        let waiting = tx.waiting(invented)?;
        let receipts = tx.receipts()?;
        let server = place.as_ref().filter(|place| place.address.is_some());
        let (state, said) = match server {
            None => ("none", Said::new("sync-none")),
            Some(Place { distrust: Some(distrust), .. }) => ("distrusted", Said::new(distrust.lie.clone())),
            Some(Place { last: None, .. }) => ("never", Said::new("sync-never")),
            Some(Place { last: Some(last), .. }) => {
                let at = chrono::DateTime::parse_from_rfc3339(&last.at)
                    .map(|at| self.when(at))
                    .unwrap_or_default();
                match last.end.as_str() {
                    "done" => ("done", Said::new("sync-done").text("at", at)),
                    "waits" => ("waits", Said::new("sync-waits").text("at", at)),
                    _ => ("failed", Said::new("sync-failed").text("at", at).text("words", &last.words)),
                }
            }
        };
        let mut stuck = Vec::new();
        if place.is_some() {
            for one in tx.stuck()? {
                let kind = tx.record(&one.digest)?.map(|record| self.kind_words(&record.payload.kind));
                stuck.push(StuckView {
                    record: one.digest.to_string(),
                    kind: kind.unwrap_or_default(),
                    words: one.why,
                });
            }
        }
        let hint = self.catalogue.texts.word(&self.language, &said.id, Some("hint"), &said.args);
        Ok(SyncView {
            state: state.to_owned(),
            words: self.say(&said),
            hint: if self.catalogue.texts.has(&said.id, Some("hint")) { hint } else { String::new() },
            records: if server.is_some() { waiting.records } else { 0 },
            photos: if server.is_some() { waiting.photos } else { 0 },
            stuck,
            receipts: receipts as f64,
        })
    }

    /// What a body would say, and about which machine: for a draft that is to be signed.
    pub(super) fn draft_words(&self, body: &Body) -> String {
        self.body_words(body)
    }
}
