//! What a board asks this device to sign: a sign-in, or a record somebody prepared there. The board
//! itself never signs.

use serde::{Deserialize, Serialize};
use witnessmark_core::record::{Body, Digest, read_letter, write_letter};
use witnessmark_store::Tx;
use witnessmark_sync::client::Ask;
use witnessmark_sync::wire::Draft;

use super::joining::letter_fault;
use super::place::{own, placed};
use super::syncing::{Request, question};
use crate::house::House;
use crate::usecases::code;
use crate::views::{CodeOut, DeskView, SchoolView};
use crate::{App, Fault, identity};

/// How a board's code begins.
const DESK: &str = "WM1DESK:";

/// What a board's code says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Send {
    /// The school.
    pub school: Digest,
    /// The server's address.
    pub address: String,
    /// A sign-in's challenge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub challenge: Option<String>,
    /// A draft's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub draft: Option<String>,
}

impl Send {
    /// As a code to be shown.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn code(&self) -> Result<CodeOut, Fault> {
        Ok(code(write_letter(DESK, self, &[])?))
    }

    fn read(text: &str) -> Result<Self, Fault> {
        Ok(read_letter(DESK, text).map_err(letter_fault)?.0)
    }
}

impl App {
    /// What a board's code is about.
    ///
    /// # Errors
    /// [`Fault`]: no such code, another school's.
    pub fn desk_open(&mut self, text: String) -> Result<DeskView, Fault> {
        let sent = Send::read(&text)?;
        self.store.read(|tx| {
            ours(tx, &sent)?;
            let kind = if sent.challenge.is_some() { "sign-in" } else { "draft" };
            Ok(DeskView {
                kind: kind.to_owned(),
                school: self.house.school_name(tx, &sent.school)?,
                address: sent.address,
                words: self.house.word(if kind == "sign-in" { "desk-sign-in" } else { "desk-draft" }),
                machine: None,
                body: String::new(),
                preview: None,
            })
        })
    }

    /// The request that confirms a sign-in at the board, signed with this device's own key.
    ///
    /// # Errors
    /// [`Fault`]: no such code, another school's, a wrong PIN.
    pub fn desk_confirm(&mut self, text: &str, pin: &str) -> Result<Request, Fault> {
        let sent = Send::read(text)?;
        let challenge = sent.challenge.clone().ok_or_else(|| Fault::new("code-unreadable"))?;
        self.store.read(|tx| ours(tx, &sent))?;
        let seed = identity::unlock(&mut self.store, &self.house, pin)?;
        let ask = Ask { method: "POST", ..question(&format!("/v1/desk/{challenge}")) };
        self.house.signed_request(&sent.address, ask, &seed)
    }

    /// The request that fetches a draft.
    ///
    /// # Errors
    /// [`Fault`]: no such code, another school's.
    pub fn draft_ask(&mut self, text: &str) -> Result<Request, Fault> {
        let sent = Send::read(text)?;
        let draft = sent.draft.clone().ok_or_else(|| Fault::new("code-unreadable"))?;
        self.store.read(|tx| ours(tx, &sent))?;
        self.server_ask(&format!("/v1/draft/{draft}"))
    }

    /// A draft as it would be signed.
    ///
    /// # Errors
    /// [`Fault`]: nothing that may be signed so.
    pub fn draft_view(&mut self, draft: &Draft) -> Result<DeskView, Fault> {
        self.store.read(|tx| {
            let body = self.house.draft_body(tx, draft)?;
            let place = placed(tx)?;
            let machine = draft.machine.map(|machine| machine.to_string());
            let preview =
                draft.machine.map(|machine| self.house.preview_of(tx, machine, &body)).transpose()?;
            Ok(DeskView {
                kind: "draft".into(),
                school: self.house.school_name(tx, &place.school)?,
                address: place.address.unwrap_or_default(),
                words: self.house.draft_words(&body),
                machine,
                body: serde_json::to_string_pretty(&draft.body)?,
                preview,
            })
        })
    }

    /// Signs a draft.
    ///
    /// # Errors
    /// [`Fault`]: nothing that may be signed so, no right to it, a wrong PIN.
    pub fn draft_sign(&mut self, draft: &Draft, pin: &str) -> Result<SchoolView, Fault> {
        self.store.read(|tx| self.house.draft_body(tx, draft).map(drop))?;
        let seed = identity::unlock(&mut self.store, &self.house, pin)?;
        self.store.write(|tx| {
            let body = self.house.draft_body(tx, draft)?;
            self.house.write_record(tx, &seed, draft.machine, &body)?;
            self.house.school_view(tx)
        })?;
        self.reload_catalogue()?;
        self.school()
    }
}

/// Only this device's own school may ask anything of it.
fn ours(tx: &Tx<'_>, sent: &Send) -> Result<(), Fault> {
    let place = placed(tx)?;
    let same = place.school == sent.school && place.address.as_ref() == Some(&sent.address);
    if same { Ok(()) } else { Err(Fault::new("desk-of-other")) }
}

impl House {
    fn school_name(&self, tx: &Tx<'_>, school: &Digest) -> Result<String, Fault> {
        Ok(tx.trust()?.school(school).map(|school| school.name.clone()).unwrap_or_default())
    }

    /// A draft's body, checked as if this device had made it.
    fn draft_body(&self, tx: &Tx<'_>, draft: &Draft) -> Result<Body, Fault> {
        let body = Body::read(&draft.kind, &draft.body).map_err(|_| Fault::new("draft-odd"))?;
        let device = own(tx)?.device;
        match (&body, draft.machine) {
            (Body::Deferred(deferred), Some(machine)) => {
                self.check_deferral(tx, machine, &device, deferred)?;
            }
            (Body::CataloguePublished(published), None) => {
                self.check_publication(tx, &device, published)?;
            }
            _ => return Err(Fault::new("draft-odd")),
        }
        Ok(body)
    }
}
