//! The second pair of eyes: by another phone without a network, or by another person here.

use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Body, DeviceId, JointSeen, PackFault, Record, SecondLook, SecondLookAsk, SecondLookReply, Signature,
    Trust,
};
use witnessmark_store::Tx;

use super::jobs::open_job;
use crate::house::{House, id};
use crate::views::{CodeOut, MachinePage, Named, SecondLookView, SecondPerson};
use crate::{App, Fault, identity, pictures};

impl App {
    /// What to show to another phone so that its person looks at this job's critical joints.
    ///
    /// # Errors
    /// [`Fault`]: no job open, nothing in it that needs another person.
    pub fn second_look_ask(&mut self, machine: String) -> Result<CodeOut, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| {
            let ask = self.house.ask(tx, machine)?;
            Ok(code(ask.text()))
        })
    }

    /// Opens what another phone asks.
    ///
    /// # Errors
    /// [`Fault`]: a text that is no such request.
    pub fn second_look_open(&mut self, text: String) -> Result<SecondLookView, Fault> {
        let ask = SecondLookAsk::read(&text).map_err(pack_fault)?;
        self.store.read(|tx| {
            let own = identity::signatory(tx)?.is_some_and(|own| own.device == ask.by);
            Ok(SecondLookView {
                machine: ask.name,
                title: ask.title,
                joints: ask.joints.into_iter().map(|(id, words)| Named { id, words }).collect(),
                own,
            })
        })
    }

    /// Signs what was seen at the joints, and gives the text to show back.
    ///
    /// # Errors
    /// [`Fault`]: the same person, a joint not told, a wrong PIN.
    pub fn second_look_sign(
        &mut self,
        text: String,
        joints: Vec<JointSeen>,
        pin: String,
    ) -> Result<CodeOut, Fault> {
        let ask = SecondLookAsk::read(&text).map_err(pack_fault)?;
        self.store.read(|tx| {
            let own = identity::signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))?;
            let people = self.house.people(tx)?;
            if own.device == ask.by || people.person(&ask.by) == Some(own.person) {
                return Err(Fault::new("second-same-person"));
            }
            all_told(ask.joints.keys(), &joints)
        })?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let body = Body::SecondLook(SecondLook { job: ask.job, joints });
            self.house.write_second(tx, &seed, &ask, &body)?;
            let own = seed.device();
            let member = |record: &Record| matches!(record.payload.typed(), Ok(Body::Member(_)));
            let looked = |record: &Record| matches!(record.payload.typed(), Ok(Body::SecondLook(look)) if look.job == ask.job);
            let mine = |record: &Record| record.payload.device == own;
            let members = tx.records_of(None)?.into_iter().filter(|r| mine(r) && member(r)).take(1);
            let looks = tx.records_of(Some(ask.machine))?.into_iter().filter(|r| mine(r) && looked(r));
            let reply = SecondLookReply { records: members.chain(looks).collect() };
            Ok(code(reply.text(&ask)))
        })
    }

    /// Takes what the other phone shows back.
    ///
    /// # Errors
    /// [`Fault`]: a text that answers another request, a signature that doesn't fit, the same person.
    pub fn second_look_take(&mut self, machine: String, text: String) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        self.store.write(|tx| {
            let ask = self.house.ask(tx, machine)?;
            let reply = SecondLookReply::read(&text, &ask).map_err(pack_fault)?;
            let trust = Trust::from_records(&reply.records);
            if reply.records.iter().any(|record| trust.check(record) != Signature::Good) {
                return Err(Fault::new("second-signature"));
            }
            let own = identity::signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))?;
            let same = |record: &Record| {
                let person = trust.standing(&record.payload.device).map(|standing| standing.person_id);
                record.payload.device == own.device || person == Some(own.person)
            };
            if reply.records.iter().any(same) {
                return Err(Fault::new("second-same-person"));
            }
            for record in &reply.records {
                tx.append(record)?;
            }
            self.house.page(tx, machine)
        })
    }

    /// Another person who signs on this device, with a key and PIN of their own.
    ///
    /// # Errors
    /// [`Fault`]: no name, a weak PIN.
    pub fn second_person_add(&mut self, name: String, pin: String) -> Result<Vec<SecondPerson>, Fault> {
        identity::add_second(&mut self.store, &self.house, &name, &pin)?;
        self.second_people()
    }

    /// The other people who sign on this device.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn second_people(&mut self) -> Result<Vec<SecondPerson>, Fault> {
        self.store.read(|tx| {
            let seconds = identity::seconds(tx)?;
            Ok(seconds.into_iter().map(|own| SecondPerson { device: own.device.0, name: own.name }).collect())
        })
    }

    /// Another person of this device signs what they saw at the open job's joints.
    ///
    /// # Errors
    /// [`Fault`]: no job open, a joint not told, a wrong PIN.
    pub fn second_look_here(
        &mut self,
        machine: String,
        device: String,
        joints: Vec<JointSeen>,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let ask = self.store.read(|tx| self.house.ask(tx, machine))?;
        all_told(ask.joints.keys(), &joints)?;
        let seed = identity::unlock_second(&mut self.store, &self.house, &DeviceId(device), &pin)?;
        self.store.write(|tx| {
            let body = Body::SecondLook(SecondLook { job: ask.job, joints });
            self.house.write_second(tx, &seed, &ask, &body)?;
            self.house.page(tx, machine)
        })
    }

    /// The text in a picture of a code (JPEG, PNG or WebP, base64): for phones whose camera the
    /// screen can't use.
    ///
    /// # Errors
    /// [`Fault`]: not a picture, or no code in it.
    pub fn read_code(&mut self, data: String) -> Result<String, Fault> {
        pictures::read_code(&data)
    }

    /// The machine that a label's code names, where it is on this device.
    ///
    /// # Errors
    /// [`Fault`]: none of ours, or not here.
    pub fn open_label(&mut self, text: String) -> Result<MachinePage, Fault> {
        let named = text.trim().strip_prefix(LABEL).ok_or_else(|| Fault::new("code-unreadable"))?;
        self.machine(named.to_lowercase())
    }
}

/// How the text of a machine's label begins.
pub(crate) const LABEL: &str = "WM1MACHINE:";

/// A text as a code, where it fits one.
pub(crate) fn code(text: String) -> CodeOut {
    let code = qrcode::QrCode::with_error_correction_level(&text, qrcode::EcLevel::M);
    let svg = code.ok().map(|code| {
        code.render::<qrcode::render::svg::Color<'_>>().min_dimensions(320, 320).quiet_zone(true).build()
    });
    CodeOut { text, svg }
}

fn pack_fault(fault: PackFault) -> Fault {
    Fault::new(match fault {
        PackFault::Unreadable => "code-unreadable",
        PackFault::Other => "code-other",
        PackFault::Record(_) => "second-signature",
    })
}

fn all_told<'a>(mut asked: impl Iterator<Item = &'a String>, told: &[JointSeen]) -> Result<(), Fault> {
    let missing = asked.find(|joint| told.iter().all(|seen| seen.joint != **joint));
    let odd = told.iter().any(|seen| matches!(seen.means, Meaning::NotFitted | Meaning::Watch));
    if missing.is_some() || odd { Err(Fault::new("second-joint-missing")) } else { Ok(()) }
}

impl House {
    fn ask(&self, tx: &Tx<'_>, machine: uuid::Uuid) -> Result<SecondLookAsk, Fault> {
        let history = self.known(tx, machine)?;
        let job = open_job(&history).ok_or_else(|| Fault::new("no-job-open"))?;
        if job.body.independent.is_empty() {
            return Err(Fault::new("second-not-needed"));
        }
        if job.inspections.is_empty() {
            return Err(Fault::new("second-too-early"));
        }
        let words = |joint: &String| job.body.disturbed.get(joint).unwrap_or(joint).clone();
        // The last list's author and number: what the second person is told of, and so knows.
        let signed = job.inspections.last().map_or(job.record, |inspection| inspection.record);
        let signed = tx.record(&signed)?.ok_or_else(|| Fault::new("no-such").text("what", signed.short()))?;
        Ok(SecondLookAsk {
            job: job.record,
            machine,
            name: history.machine.as_ref().map(|(machine, _)| machine.name.clone()).unwrap_or_default(),
            title: job.body.title.clone(),
            joints: job.body.independent.iter().map(|joint| (joint.clone(), words(joint))).collect(),
            by: signed.payload.device,
            seq: signed.payload.seq,
        })
    }

    /// Writes a second look: its author knows what the request told, and the causal clock follows.
    fn write_second(
        &self,
        tx: &Tx<'_>,
        seed: &witnessmark_core::record::SigningSeed,
        ask: &SecondLookAsk,
        body: &Body,
    ) -> Result<Record, Fault> {
        self.may_sign(tx, ask.machine, &seed.device(), body)?;
        let mut salt = [0; 10];
        self.platform.random(&mut salt)?;
        let mut author = tx.author(&seed.device(), Some(ask.machine))?;
        // Only what matters to this job: the reply must fit a code.
        author.seen = [(ask.by.clone(), ask.seq)].into();
        let record = author.write(body, Some(ask.machine), self.now(), &salt, seed)?;
        tx.append(&record)?;
        Ok(record)
    }

    /// Whether a record is of a machine that this device only looked at for somebody else.
    pub(crate) fn only_looked_at(history: &witnessmark_core::history::History) -> bool {
        history.machine.is_none()
            && history.unknown.is_empty()
            && history.open.is_empty()
            && history.looks.is_empty()
    }
}
