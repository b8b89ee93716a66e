//! Founding a school, and becoming a member: face to face by codes, or over the server.

use uuid::Uuid;
use witnessmark_core::record::{
    Body, Digest, Envelope, MachineEnrolled, PackFault, Record, SchoolFounded, Signature, SigningSeed, Trust,
    Vouched, read_letter, write_letter,
};
use witnessmark_store::Tx;
use witnessmark_sync::client::Following;
use witnessmark_sync::merkle::Frontier;
use witnessmark_sync::wire::SchoolCard;

use super::place::{Place, keep_place, own, place, placed};
use super::view::{brief, code_of};
use crate::house::{House, id};
use crate::usecases::code;
use crate::views::{ApplicantView, CodeOut, FileOut, MachinePage, SchoolCardView, SchoolView, Start};
use crate::{App, Fault, identity};

/// How a device's introduction begins.
const JOIN: &str = "WM1JOIN:";
/// How the answer to it begins.
pub(super) const ADMIT: &str = "WM1ADMIT:";

/// What an answer to an introduction says beside its records.
#[derive(serde::Serialize, serde::Deserialize)]
pub(super) struct Answer {
    /// The school; none where one person only vouches for another device of theirs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) school: Option<Digest>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) address: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) server: Option<String>,
}

impl App {
    /// Founds a school: this device is its root.
    ///
    /// # Errors
    /// [`Fault`]: no name, a school already, a wrong PIN.
    pub fn school_found(&mut self, name: String, pin: String) -> Result<SchoolView, Fault> {
        let name = name.trim().to_owned();
        if name.is_empty() || name.chars().count() > 80 {
            return Err(Fault::new("school-name"));
        }
        self.store.read(free)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            free(tx)?;
            let body = Body::SchoolFounded(SchoolFounded { name, invented: false });
            let school = self.house.write_record(tx, &seed, None, &body)?.digest;
            self.house.take_place(tx, &seed, school)?;
            let place = Place { school, address: None, following: None, last: None, distrust: None };
            keep_place(tx, Some(&place))?;
            self.house.enrol_own(tx, &seed, school)?;
            self.house.school_view(tx)
        })
    }

    /// What this device shows to be admitted: who holds it, signed.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn school_code(&mut self) -> Result<CodeOut, Fault> {
        self.store.read(|tx| {
            let own = own(tx)?;
            let member = member_of(tx, &own.device)?;
            Ok(code(write_letter(JOIN, &code_of(&own.device), &[member])?))
        })
    }

    /// Who asks, by the code that their device shows.
    ///
    /// # Errors
    /// [`Fault`]: no such code.
    pub fn school_applicant(&mut self, text: String) -> Result<ApplicantView, Fault> {
        self.store.read(|tx| {
            let (member, _) = applicant(&text)?;
            self.house.applicant_view(tx, text, &member)
        })
    }

    /// Joins a school by the code with which its root answered, or another device of this person.
    ///
    /// # Errors
    /// [`Fault`]: no such code, one for somebody else, another school already, a wrong PIN.
    pub fn school_join(&mut self, text: String, pin: String) -> Result<SchoolView, Fault> {
        let (answer, records): (Answer, Vec<Record>) = read_letter(ADMIT, &text).map_err(letter_fault)?;
        let check = |tx: &Tx<'_>| -> Result<(), Fault> {
            let device = own(tx)?.device;
            let trust = Trust::from_records(records.iter().chain([&member_of(tx, &device)?]));
            if records.iter().any(|record| trust.check(record) != Signature::Good) {
                return Err(Fault::new("letter-signature"));
            }
            let admitted =
                answer.school.map(|school| trust.school(&school).is_some_and(|school| school.knows(&device)));
            let vouched =
                trust.devices().any(|(other, _)| *other != device && trust.same_person(other, &device));
            if admitted == Some(false) || (admitted.is_none() && !vouched) {
                return Err(Fault::new("letter-of-other"));
            }
            match answer.school {
                Some(school) => free_or(tx, school),
                None => Ok(()),
            }
        };
        self.store.read(check)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            check(tx)?;
            for record in &records {
                tx.append(record)?;
            }
            self.house.vouch_back(tx, &seed)?;
            if let Some(school) = answer.school {
                self.house.settle_in(tx, &seed, school, answer.address.clone(), answer.server.clone())?;
            }
            self.house.school_view(tx)
        })
    }

    /// What a server says of its school, before joining it.
    ///
    /// # Errors
    /// [`Fault`]: not a school's server.
    pub fn school_card(&mut self, card: &SchoolCard, address: &str) -> Result<SchoolCardView, Fault> {
        let (trust, _) = card_records(card)?;
        let school = trust.school(&card.school).ok_or_else(|| Fault::new("server-answer"))?;
        self.store.read(|tx| {
            let known = tx.trust()?;
            let today = self.house.now().date_naive();
            let admitted = known.role_on(&card.school, &own(tx)?.device, today).is_some();
            let root = trust.standing(&school.root).map(|root| root.person.clone()).unwrap_or_default();
            Ok(SchoolCardView { school: brief(school, Some(address.to_owned())), root, admitted })
        })
    }

    /// Follows a school's server: joins its school, or brings this device's own school its server.
    ///
    /// # Errors
    /// [`Fault`]: not a school's server, another school already, a wrong PIN.
    pub fn school_follow(
        &mut self,
        card: &SchoolCard,
        address: &str,
        pin: &str,
    ) -> Result<SchoolView, Fault> {
        let (_, records) = card_records(card)?;
        self.store.read(|tx| free_or(tx, card.school))?;
        let seed = identity::unlock(&mut self.store, &self.house, pin)?;
        self.store.write(|tx| {
            free_or(tx, card.school)?;
            for record in &records {
                tx.append(record)?;
            }
            let (address, server) = (Some(address.to_owned()), Some(card.server.clone()));
            self.house.settle_in(tx, &seed, card.school, address, server)?;
            self.house.school_view(tx)
        })
    }

    /// Leaves the school: this person's machines go with them, what was signed stays.
    ///
    /// # Errors
    /// [`Fault`]: no school, its root, a wrong PIN.
    pub fn school_leave(&mut self, pin: String) -> Result<SchoolView, Fault> {
        let leaving = |tx: &Tx<'_>| -> Result<Place, Fault> {
            let (place, own) = (placed(tx)?, own(tx)?);
            let trust = tx.trust()?;
            let root = trust.school(&place.school).is_some_and(|school| school.root == own.device);
            if root { Err(Fault::new("root-stays")) } else { Ok(place) }
        };
        self.store.read(leaving)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let place = leaving(tx)?;
            let trust = tx.trust()?;
            for machine in tx.machines()? {
                let history = self.house.known(tx, machine)?;
                if history.school == Some(place.school) && history.owns(&seed.device(), &trust) {
                    let out = Body::MachineEnrolled(MachineEnrolled { school: None });
                    self.house.write_record(tx, &seed, Some(machine), &out)?;
                }
            }
            keep_place(tx, None)?;
            tx.server_forget()?;
            self.house.school_view(tx)
        })
    }

    /// First start of another device of a person who has one: by the code that the first one shows.
    ///
    /// # Errors
    /// [`Fault`]: no such code, a weak PIN, a device that has its key already.
    pub fn begin_as(&mut self, text: String, pin: String) -> Result<Start, Fault> {
        let (member, standing) = applicant(&text)?;
        let (name, first) = (&standing.person, &member.payload.device);
        identity::begin_as(&mut self.store, &self.house, name, standing.person_id, first, &pin)?;
        self.start()
    }

    /// Signs that another device is this person's too, and gives the text to show it.
    ///
    /// # Errors
    /// [`Fault`]: no such code, somebody else's device, a wrong PIN.
    pub fn school_vouch(&mut self, text: String, pin: String) -> Result<CodeOut, Fault> {
        let (member, standing) = applicant(&text)?;
        let same = |tx: &Tx<'_>| -> Result<(), Fault> {
            let own = own(tx)?;
            let other = own.device != member.payload.device && own.person == standing.person_id;
            if other { Ok(()) } else { Err(Fault::new("not-your-device")) }
        };
        self.store.read(same)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            same(tx)?;
            tx.append(&member)?;
            let device = member.payload.device.clone();
            let vouched = self.house.write_record(tx, &seed, None, &Body::Vouched(Vouched { device }))?;
            self.house.answer(tx, vouched)
        })
    }

    /// Puts a machine under the school's roles, or takes it out.
    ///
    /// # Errors
    /// [`Fault`]: no school, somebody else's machine, a wrong PIN.
    pub fn machine_enrol(
        &mut self,
        machine: String,
        enrolled: bool,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let body = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let (place, own, trust) = (placed(tx)?, own(tx)?, tx.trust()?);
            let root = trust.school(&place.school).is_some_and(|school| school.root == own.device);
            let history = self.house.known(tx, machine)?;
            if !history.owns(&own.device, &trust) && (enrolled || !root) {
                return Err(Fault::new("not-your-machine"));
            }
            Ok(Body::MachineEnrolled(MachineEnrolled { school: enrolled.then_some(place.school) }))
        };
        self.store.read(body)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body(tx)?)?;
            self.house.page(tx, machine)
        })
    }

    /// The records that a server needs to serve this school, as a file.
    ///
    /// # Errors
    /// [`Fault`]: no school.
    pub fn school_file(&mut self) -> Result<FileOut, Fault> {
        self.store.read(|tx| {
            let place = placed(tx)?;
            let records = school_records(tx, &place.school)?;
            let name =
                tx.trust()?.school(&place.school).map(|school| school.name.clone()).unwrap_or_default();
            Ok(FileOut {
                name: format!("{}.school.jsonl", crate::usecases::plain_name(&name)),
                text: witnessmark_core::record::write_bundle(&records),
            })
        })
    }
}

/// The demonstration's school, founded by this device in the past.
pub(crate) fn found_demo_place(
    house: &House,
    tx: &Tx<'_>,
    seed: &SigningSeed,
    school: Digest,
) -> Result<(), Fault> {
    free(tx)?;
    house.take_place(tx, seed, school)?;
    keep_place(tx, Some(&Place { school, address: None, following: None, last: None, distrust: None }))
}

impl House {
    /// This device's place in a school that it joins now, or its server's address where it has joined before.
    fn settle_in(
        &self,
        tx: &Tx<'_>,
        seed: &SigningSeed,
        school: Digest,
        address: Option<String>,
        server: Option<String>,
    ) -> Result<(), Fault> {
        let before = place(tx)?;
        if before.is_none() {
            self.take_place(tx, seed, school)?;
            self.enrol_own(tx, seed, school)?;
        }
        let before_server = before.as_ref().and_then(|b| b.following.as_ref()).map(|f| f.server.clone());
        let following = if server.is_some() && server == before_server {
            before.and_then(|before| before.following)
        } else {
            // Another server's log is another log.
            tx.server_forget()?;
            server.map(|server| Following { school, server, frontier: Frontier::default(), checkpoint: None })
        };
        keep_place(tx, Some(&Place { school, address, following, last: None, distrust: None }))
    }

    /// The device by whose code this one was begun, once it has vouched for this one, is vouched for by it
    /// too: either may end the other's key when lost. No other is: anybody can claim to be this person.
    fn vouch_back(&self, tx: &Tx<'_>, seed: &SigningSeed) -> Result<(), Fault> {
        let (trust, own) = (tx.trust()?, seed.device());
        let Some(device) = identity::begun_as(tx)? else { return Ok(()) };
        if trust.same_person(&device, &own) && !trust.vouches(&own, &device) {
            self.write_record(tx, seed, None, &Body::Vouched(Vouched { device }))?;
        }
        Ok(())
    }

    /// Puts all machines of this person under the school.
    fn enrol_own(&self, tx: &Tx<'_>, seed: &SigningSeed, school: Digest) -> Result<(), Fault> {
        let trust = tx.trust()?;
        for machine in tx.machines()? {
            let history = self.known(tx, machine)?;
            let invented = history.machine.as_ref().is_some_and(|(machine, _)| machine.invented);
            if history.school.is_none() && !invented && history.owns(&seed.device(), &trust) {
                self.enrol(tx, seed, machine, school)?;
            }
        }
        Ok(())
    }

    fn enrol(&self, tx: &Tx<'_>, seed: &SigningSeed, machine: Uuid, school: Digest) -> Result<(), Fault> {
        let body = Body::MachineEnrolled(MachineEnrolled { school: Some(school) });
        self.write_record(tx, seed, Some(machine), &body)?;
        Ok(())
    }

    /// A machine registered by a school's member is under the school from the beginning.
    pub(crate) fn enrol_new(&self, tx: &Tx<'_>, seed: &SigningSeed, machine: Uuid) -> Result<(), Fault> {
        match place(tx)? {
            Some(place) => self.enrol(tx, seed, machine, place.school),
            None => Ok(()),
        }
    }

    /// The text that answers an introduction: whom to trust, and the record that lets the device in.
    pub(super) fn answer(&self, tx: &Tx<'_>, record: Record) -> Result<CodeOut, Fault> {
        let place = place(tx)?;
        let device = own(tx)?.device;
        let mut records = match &place {
            Some(place) => school_records(tx, &place.school)?,
            None => vec![member_of(tx, &device)?],
        };
        // Where a member vouches for another device, its own admission shows what that device may be.
        if let (Some(place), "device-vouched") = (&place, record.payload.kind.as_str()) {
            let trust = tx.trust()?;
            let term = trust.school(&place.school).and_then(|school| school.standing_term(&device).cloned());
            let own = [
                Some(member_of(tx, &device)?),
                term.map(|term| tx.record(&term.record)).transpose()?.flatten(),
            ];
            records.extend(own.into_iter().flatten());
        }
        records.push(record);
        records.dedup_by_key(|record| record.digest);
        let answer = Answer {
            school: place.as_ref().map(|place| place.school),
            address: place.as_ref().and_then(|place| place.address.clone()),
            server: place.and_then(|place| place.following).map(|following| following.server),
        };
        Ok(code(write_letter(ADMIT, &answer, &records)?))
    }

    fn applicant_view(&self, tx: &Tx<'_>, text: String, member: &Record) -> Result<ApplicantView, Fault> {
        let device = &member.payload.device;
        let Ok(Body::Member(body)) = member.payload.typed() else {
            return Err(Fault::new("code-unreadable"));
        };
        let today = self.now().date_naive();
        let trust = tx.trust()?;
        let member = place(tx)?.is_some_and(|place| trust.role_on(&place.school, device, today).is_some());
        Ok(ApplicantView { text, name: body.name, code: code_of(device), member })
    }

    /// Those who wait at the server, as if each had shown its code.
    pub(super) fn applicants(
        &self,
        tx: &Tx<'_>,
        waiting: &[witnessmark_sync::wire::WaitingDevice],
    ) -> Result<Vec<ApplicantView>, Fault> {
        let mut views = Vec::new();
        for device in waiting {
            let Ok(records) = parse(&device.records) else { continue };
            let text = write_letter(JOIN, &code_of(&device.device), &records)?;
            // One who waits with something odd must not hide the others.
            let Ok((member, _)) = applicant(&text) else { continue };
            views.push(self.applicant_view(tx, text, &member)?);
        }
        Ok(views)
    }
}

fn parse(envelopes: &[Envelope]) -> Result<Vec<Record>, Fault> {
    envelopes.iter().map(|e| Record::parse(e.clone()).map_err(|_| Fault::new("server-answer"))).collect()
}

/// The member record of an introduction, and what is known of its device by that alone.
fn applicant(text: &str) -> Result<(Record, witnessmark_core::record::Standing), Fault> {
    let records = introduction(text)?;
    let trust = Trust::from_records(&records);
    let member = records.iter().find(|record| record.payload.kind == "member" && record.payload.seq == 1);
    let member = member.ok_or_else(|| Fault::new("code-unreadable"))?;
    let standing = trust.standing(&member.payload.device).cloned();
    Ok((member.clone(), standing.ok_or_else(|| Fault::new("letter-signature"))?))
}

/// All records of an introduction, of one device.
pub(super) fn introduction(text: &str) -> Result<Vec<Record>, Fault> {
    let (_, records): (String, Vec<Record>) = read_letter(JOIN, text).map_err(letter_fault)?;
    let trust = Trust::from_records(&records);
    let one = records
        .iter()
        .all(|record| Some(&record.payload.device) == records.first().map(|r| &r.payload.device));
    if !one || records.iter().any(|record| trust.check(record) != Signature::Good) {
        return Err(Fault::new("letter-signature"));
    }
    Ok(records)
}

pub(super) fn letter_fault(fault: PackFault) -> Fault {
    match fault {
        PackFault::Unreadable | PackFault::Other => Fault::new("code-unreadable"),
        PackFault::Record(_) => Fault::new("letter-signature"),
    }
}

/// A card's records, and whom they make known.
fn card_records(card: &SchoolCard) -> Result<(Trust, Vec<Record>), Fault> {
    let records = parse(&card.records)?;
    let trust = Trust::from_records(&records);
    let good = records.iter().all(|record| trust.check(record) == Signature::Good);
    if !good || trust.school(&card.school).is_none() {
        return Err(Fault::new("server-answer"));
    }
    Ok((trust, records))
}

/// What makes a school known: its root's member record, its founding, its hand-overs with the new
/// roots' admissions and member records, and its present root's word that it joins.
pub(super) fn school_records(tx: &Tx<'_>, school: &Digest) -> Result<Vec<Record>, Fault> {
    let founding = tx.record(school)?.ok_or_else(|| Fault::new("no-school"))?;
    let mut handed = Vec::new();
    for record in tx.records_of_none("root-handed")? {
        if let Ok(Body::RootHanded(body)) = record.payload.typed()
            && body.school == *school
        {
            handed.push((body.to, record));
        }
    }
    let mut records = vec![member_of(tx, &founding.payload.device)?, founding];
    for (to, record) in handed {
        for admitted in tx.records_of_none("member-admitted")? {
            if matches!(admitted.payload.typed(), Ok(Body::MemberAdmitted(body)) if body.device == to && body.school == *school)
            {
                records.push(admitted);
            }
        }
        records.extend([member_of(tx, &to)?, record]);
    }
    Ok(records)
}

/// A device's member record.
pub(super) fn member_of(tx: &Tx<'_>, device: &witnessmark_core::record::DeviceId) -> Result<Record, Fault> {
    let members = tx.records_of_none("member")?;
    let member = members.into_iter().find(|record| record.payload.device == *device);
    member.ok_or_else(|| Fault::new("no-such").text("what", device.short()))
}

fn free(tx: &Tx<'_>) -> Result<(), Fault> {
    own(tx)?;
    if place(tx)?.is_some() { Err(Fault::new("school-already")) } else { Ok(()) }
}

fn free_or(tx: &Tx<'_>, school: Digest) -> Result<(), Fault> {
    own(tx)?;
    match place(tx)? {
        Some(place) if place.school != school => Err(Fault::new("school-already")),
        _ => Ok(()),
    }
}
