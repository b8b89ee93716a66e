//! What the root does: admit, change roles, end memberships and keys, hand over.

use chrono::NaiveDate;
use witnessmark_core::record::{
    Body, DeviceId, MemberAdmitted, MemberEnded, Record, Revoked, Role, RootHanded, Signature, SigningSeed,
    Trust,
};
use witnessmark_store::Tx;

use super::joining::introduction;
use super::place::{own, placed};
use crate::house::{House, id};
use crate::usecases::day;
use crate::views::{ApplicantView, CodeOut, SchoolView};
use crate::{App, Fault, identity};

impl App {
    /// Admits the device that a code introduces, and gives the text to show back.
    ///
    /// # Errors
    /// [`Fault`]: no such code, not the root, an end in the past, a wrong PIN.
    pub fn school_admit(
        &mut self,
        text: String,
        role: Option<Role>,
        until: Option<String>,
        pin: String,
    ) -> Result<CodeOut, Fault> {
        let role = role.ok_or_else(|| Fault::new("role-missing"))?;
        let records = introduction(&text)?;
        let until = self.until(until)?;
        let seed = self.as_root(&pin)?;
        self.store.write(|tx| {
            let trust = Trust::from_records(&records);
            let (device, standing) = trust.devices().next().ok_or_else(|| Fault::new("code-unreadable"))?;
            for record in &records {
                tx.append(record)?;
            }
            let (device, person, name) = (device.clone(), standing.person_id, standing.person.clone());
            let admitted = self.house.admit(tx, &seed, device, person, name, role, until)?;
            self.house.answer(tx, admitted)
        })
    }

    /// Gives a member another role or another end.
    ///
    /// # Errors
    /// [`Fault`]: no such member, not the root, a wrong PIN.
    pub fn school_role(
        &mut self,
        person: String,
        role: Option<Role>,
        until: Option<String>,
        pin: String,
    ) -> Result<SchoolView, Fault> {
        let role = role.ok_or_else(|| Fault::new("role-missing"))?;
        let person = id(&person)?;
        let until = self.until(until)?;
        let seed = self.as_root(&pin)?;
        self.store.write(|tx| {
            let place = placed(tx)?;
            let trust = tx.trust()?;
            let school = trust.school(&place.school).ok_or_else(|| Fault::new("no-school"))?;
            let terms = school.terms.iter().filter(|term| term.person == person && term.stands());
            let devices: Vec<(DeviceId, String)> =
                terms.map(|t| (t.device.clone(), t.name.clone())).collect();
            if devices.is_empty() {
                return Err(Fault::new("no-such-member"));
            }
            for (device, name) in devices {
                self.house.admit(tx, &seed, device, person, name, role, until)?;
            }
            self.house.school_view(tx)
        })
    }

    /// Ends a membership; what the person signed stands.
    ///
    /// # Errors
    /// [`Fault`]: no such member, the root itself, no reason, a wrong PIN.
    pub fn school_end(&mut self, person: String, reason: String, pin: String) -> Result<SchoolView, Fault> {
        let (person, reason) = (id(&person)?, reason_of(&reason)?);
        let seed = self.as_root(&pin)?;
        self.store.write(|tx| {
            let place = placed(tx)?;
            let trust = tx.trust()?;
            let school = trust.school(&place.school).ok_or_else(|| Fault::new("no-school"))?;
            let mut terms = school.terms.iter().filter(|term| term.person == person && term.stands());
            match terms.next() {
                None => return Err(Fault::new("no-such-member")),
                Some(term) if term.device == school.root => return Err(Fault::new("root-stays")),
                Some(_) => {}
            }
            let body = Body::MemberEnded(MemberEnded { school: place.school, person, reason });
            self.house.write_record(tx, &seed, None, &body)?;
            self.house.school_view(tx)
        })
    }

    /// Ends a key: of a lost phone of a member of this school, or of this person's own other device.
    ///
    /// # Errors
    /// [`Fault`]: a device on which this one has no say, no reason, a wrong PIN.
    pub fn key_end(&mut self, device: String, reason: String, pin: String) -> Result<SchoolView, Fault> {
        let (device, reason) = (DeviceId(device), reason_of(&reason)?);
        let may = |tx: &Tx<'_>| -> Result<(), Fault> {
            let (own, trust) = (own(tx)?, tx.trust()?);
            let root = super::place::place(tx)?.is_some_and(|place| {
                let school = trust.school(&place.school);
                school.is_some_and(|school| school.root == own.device && school.knows(&device))
            });
            let mine = own.device != device && trust.vouches(&device, &own.device);
            if root || mine { Ok(()) } else { Err(Fault::new("not-your-device")) }
        };
        self.store.read(may)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            may(tx)?;
            let body = Revoked { device: device.clone(), reason };
            self.house.write_record(tx, &seed, None, &Body::Revoked(body))?;
            self.house.school_view(tx)
        })
    }

    /// Hands the root over to a member's device.
    ///
    /// # Errors
    /// [`Fault`]: no such member's device, not the root, a wrong PIN.
    pub fn school_hand(&mut self, device: String, pin: String) -> Result<SchoolView, Fault> {
        let to = DeviceId(device);
        let seed = self.as_root(&pin)?;
        self.store.write(|tx| {
            let place = placed(tx)?;
            let today = self.house.now().date_naive();
            if tx.trust()?.role_on(&place.school, &to, today).is_none() || seed.device() == to {
                return Err(Fault::new("no-such-member"));
            }
            let body = Body::RootHanded(RootHanded { school: place.school, to });
            self.house.write_record(tx, &seed, None, &body)?;
            self.house.school_view(tx)
        })
    }

    /// Those who wait at the server to be admitted.
    ///
    /// # Errors
    /// [`Fault`]: what came is not from a school's server.
    pub fn school_applicants(
        &mut self,
        waiting: &[witnessmark_sync::wire::WaitingDevice],
    ) -> Result<Vec<ApplicantView>, Fault> {
        self.store.read(|tx| self.house.applicants(tx, waiting))
    }

    /// Opens the root's key, on the root's device only.
    fn as_root(&mut self, pin: &str) -> Result<SigningSeed, Fault> {
        self.store.read(|tx| {
            let (place, own) = (placed(tx)?, own(tx)?);
            let root = tx.trust()?.school(&place.school).is_some_and(|school| school.root == own.device);
            if root { Ok(()) } else { Err(Fault::new("not-root")) }
        })?;
        identity::unlock(&mut self.store, &self.house, pin)
    }

    fn until(&self, until: Option<String>) -> Result<Option<NaiveDate>, Fault> {
        let until = until.filter(|until| !until.trim().is_empty()).map(|until| day(&until)).transpose()?;
        if until.is_some_and(|until| until < self.house.now().date_naive()) {
            return Err(Fault::new("until-passed"));
        }
        Ok(until)
    }
}

fn reason_of(reason: &str) -> Result<String, Fault> {
    let reason = reason.trim();
    if reason.is_empty() || reason.chars().count() > 500 {
        return Err(Fault::new("end-reason"));
    }
    Ok(reason.to_owned())
}

impl House {
    #[allow(clippy::too_many_arguments)]
    fn admit(
        &self,
        tx: &Tx<'_>,
        seed: &SigningSeed,
        device: DeviceId,
        person: uuid::Uuid,
        name: String,
        role: Role,
        until: Option<NaiveDate>,
    ) -> Result<Record, Fault> {
        let (school, from) = (placed(tx)?.school, self.now().date_naive());
        let body = MemberAdmitted { school, device, person, name, role, from, until };
        let record = self.write_record(tx, seed, None, &Body::MemberAdmitted(body))?;
        // What was just signed must be good to everybody who reads it.
        match tx.trust()?.check(&record) {
            Signature::Good => Ok(record),
            _ => Err(Fault::internal("an admission that nobody would believe")),
        }
    }
}
