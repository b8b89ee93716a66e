//! The demonstration's school: invented members and machines with a season of history, founded by
//! whoever makes it on this device, so that they can look round as its instructor.

use std::collections::BTreeMap;

use chrono::{Days, NaiveDate, TimeDelta};
use serde::Deserialize;
use uuid::Uuid;
use witnessmark_core::flight::Burn;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Body, CataloguePublished, Deferred, Digest, JointSeen, MachineEnrolled, Member, MemberAdmitted,
    Rectified, Released, Role, SchoolFounded, SchoolJoined, SecondLook, Service, SigningSeed, TimeLogged,
};

use super::flight::Carrying;
use super::log::Running;
use super::{Limit, LookBack, Part, Teller};
use crate::usecases::school::found_demo_place;
use crate::views::SchoolView;
use crate::{App, Fault, identity};

/// The scenario file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Scenario {
    name: String,
    days: u64,
    limits: Manual,
    /// The file of limits that it publishes.
    published: String,
    person: Vec<Person>,
    machine: Vec<Machine>,
}

/// Where all limits are written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Manual {
    document: String,
    page: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Person {
    name: String,
    role: Role,
}

/// One machine and its season: flown every so many days, and what happened besides.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Machine {
    name: String,
    engine: String,
    owner: usize,
    every: u64,
    hours: f64,
    repacked_days_ago: Option<u64>,
    /// What it weighs, and what its wing may carry.
    carrying: Option<Carrying>,
    /// How its engine runs, where it keeps a log.
    log: Option<Running>,
    #[serde(default)]
    event: Vec<Event>,
}

/// What happened on one day.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Event {
    days_ago: u64,
    by: usize,
    /// Found before flight; empty with a job or a deferral.
    #[serde(default)]
    found: BTreeMap<String, String>,
    #[serde(default)]
    righted: BTreeMap<String, String>,
    defer: Option<Wait>,
    /// Jobs begun that day, and their list signed.
    #[serde(default)]
    jobs: Vec<String>,
    /// Who gave the second look, if anybody did.
    second: Option<usize>,
    #[serde(default)]
    release: bool,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Wait {
    point: String,
    days: u64,
    condition: String,
    reason: String,
}

impl App {
    /// Founds the demonstration's school on this device and tells its season.
    ///
    /// # Errors
    /// [`Fault`]: a school already, a wrong PIN.
    pub fn demo_school(&mut self, pin: String) -> Result<SchoolView, Fault> {
        let scenario: Scenario = toml::from_str(&self.house.catalogue.school).map_err(|fault| {
            Fault::new("catalogue").text("where", "demo/school.toml").text("why", fault.message())
        })?;
        let root = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let mut season =
                Season { teller: Teller::bare(&self.house, tx), scenario: &scenario, flights: 0, begun: 0.0 };
            let school = season.people(root)?;
            found_demo_place(&self.house, tx, season.teller.person(0)?, school)?;
            season.publish(school)?;
            for machine in &scenario.machine {
                season.machine(school, machine)?;
            }
            Ok::<_, Fault>(())
        })?;
        self.reload_catalogue()?;
        self.school()
    }
}

/// Tells the season, day by day.
struct Season<'a> {
    teller: Teller<'a>,
    scenario: &'a Scenario,
    flights: u32,
    /// Engine hours of the machine when its story began.
    begun: f64,
}

impl Season<'_> {
    /// The school and its members, each with a key made for this story and then forgotten; the root's stays.
    fn people(&mut self, root: SigningSeed) -> Result<Digest, Fault> {
        let first = self.teller.ago(self.scenario.days + 2);
        let day = first.date_naive();
        let founded = SchoolFounded { name: self.scenario.name.clone(), invented: true };
        let school = self.teller.write(&root, None, first, &Body::SchoolFounded(founded))?.digest;
        self.teller.people.push(root);
        for person in self.scenario.person.iter().skip(1) {
            let seed = self.teller.draw()?;
            let id = self.teller.house.uuid()?;
            let member = Member { person: id, name: person.name.clone(), key: seed.jwk(), invented: true };
            self.teller.write(&seed, None, first, &Body::Member(member))?;
            self.admit(school, &seed, id, person, day)?;
            self.teller.people.push(seed);
        }
        Ok(school)
    }

    fn admit(
        &self,
        school: Digest,
        seed: &SigningSeed,
        id: Uuid,
        person: &Person,
        from: NaiveDate,
    ) -> Result<(), Fault> {
        let then = self.teller.ago(self.scenario.days + 1);
        let admitted = MemberAdmitted {
            school,
            device: seed.device(),
            person: id,
            name: person.name.clone(),
            role: person.role,
            from,
            until: None,
        };
        self.teller.write(self.teller.person(0)?, None, then, &Body::MemberAdmitted(admitted))?;
        let joined = SchoolJoined { school, courier: self.teller.draw()?.jwk() };
        self.teller.write(seed, None, then, &Body::SchoolJoined(joined))?;
        Ok(())
    }

    /// The school's limits, published by its root when the season begins.
    fn publish(&self, school: Digest) -> Result<(), Fault> {
        let body = CataloguePublished {
            school,
            title: "Limits of the school (invented)".into(),
            version: 1,
            files: BTreeMap::from([("limits.toml".to_owned(), self.scenario.published.clone())]),
            note: String::new(),
        };
        let at = self.teller.ago(self.scenario.days);
        self.teller.write(self.teller.person(0)?, None, at, &Body::CataloguePublished(body))?;
        Ok(())
    }

    fn machine(&mut self, school: Digest, machine: &Machine) -> Result<(), Fault> {
        let id = self.teller.house.uuid()?;
        let days: Vec<u64> =
            (0..self.scenario.days).filter(|day| day.is_multiple_of(machine.every.max(1))).collect();
        let flown = |day: &u64| if day.is_multiple_of(3) { 1.1 } else { 0.6 };
        let season: f64 = days.iter().map(flown).sum();
        let owner = self.teller.person(machine.owner)?;
        let begin = self.teller.ago(self.scenario.days);
        let part = Part {
            name: machine.name.clone(),
            engine: machine.engine.clone(),
            note: "Invented machine of the demonstration.".into(),
            hours: (machine.hours - season).max(0.0),
            flights: 0,
            repacked_days_ago: machine.repacked_days_ago,
            carrying: machine.carrying.clone(),
            limit: Vec::new(),
            look: Vec::new(),
        };
        self.teller.write(owner, Some(id), begin, &Body::Machine(self.teller.describe(&part)))?;
        let enrolled = Body::MachineEnrolled(MachineEnrolled { school: Some(school) });
        self.teller.write(owner, Some(id), begin, &enrolled)?;
        self.limits(id, machine)?;
        self.flights = 0;
        self.begun = part.hours;
        for day in (0..self.scenario.days).rev() {
            let events: Vec<&Event> = machine.event.iter().filter(|event| event.days_ago == day).collect();
            for event in &events {
                self.event(id, event)?;
            }
            let looked = events.iter().any(|event| !event.found.is_empty());
            if !days.contains(&day) || looked || self.holds(id)? {
                continue;
            }
            let turn = usize::try_from(day).unwrap_or(0) / 2 % 4;
            let pilot = if machine.owner == 0 { 2 + turn } else { machine.owner };
            self.fly(id, pilot, day, flown(&day), machine)?;
        }
        Ok(())
    }

    /// Whether something keeps the machine on the ground.
    fn holds(&self, machine: Uuid) -> Result<bool, Fault> {
        let history = self.teller.history(machine)?;
        let open = history.open.iter().any(|open| open.means() == Meaning::Unserviceable);
        Ok(open || history.work.jobs.iter().any(|job| job.released.is_none()))
    }

    fn limits(&self, id: Uuid, machine: &Machine) -> Result<(), Fault> {
        let sheet = self.teller.house.catalogue.sheets.get(&machine.engine);
        let bands = sheet.map(|sheet| sheet.bands.iter()).into_iter().flatten();
        let critical: Vec<String> =
            bands.filter(|(_, band)| band.get_ref().critical).map(|(name, _)| name.clone()).collect();
        let at = self.teller.ago(self.scenario.days);
        for band in critical {
            let Manual { document, page } = &self.scenario.limits;
            let limit = Limit { band, document: document.clone(), page: page.clone() };
            self.teller.confirm(self.teller.person(machine.owner)?, id, at, &limit)?;
        }
        Ok(())
    }

    /// A look with nothing wrong, a flight or two, and the time logged.
    fn fly(&mut self, id: Uuid, pilot: usize, day: u64, hours: f64, machine: &Machine) -> Result<(), Fault> {
        let open: BTreeMap<String, String> = BTreeMap::new();
        self.look(id, pilot, day, open)?;
        let seed = self.teller.person(pilot)?;
        let at = self.teller.ago(day) + TimeDelta::minutes(5);
        if day == 0 {
            // Today's flights haven't been flown yet: they are prepared.
            if let Some(carrying) = &machine.carrying {
                let burns = self.teller.history(id)?.burns;
                let burns = burns.iter().rev().take(20).map(|burnt| Burn::Flight(burnt.burned)).collect();
                let at = self.teller.now - TimeDelta::minutes(4);
                let plan = Body::FlightPlanned(Box::new(carrying.plan(at, burns)));
                self.teller.write(seed, Some(id), at, &plan)?;
            }
            return Ok(());
        }
        let flights = if hours > 1.0 { 2 } else { 1 };
        let tanks = u32::from(self.flights.is_multiple_of(2));
        self.flights = self.flights.saturating_add(flights);
        let added = Service { hours, flights, tanks };
        let log = machine.log;
        let fuel = log.map(|log| log.burned(hours, day));
        let body = Body::TimeLogged(TimeLogged { added, reading: None, fuel, note: String::new() });
        self.teller.write(seed, Some(id), at, &body)?;
        if let Some(log) = log {
            let now = self.teller.history(id)?.hours;
            let run = now - self.begun;
            let told = Body::ReadingsTaken(log.told(at, day, now, run));
            self.teller.write(seed, Some(id), at + TimeDelta::minutes(1), &told)?;
        }
        Ok(())
    }

    fn look(&self, id: Uuid, by: usize, day: u64, found: BTreeMap<String, String>) -> Result<Digest, Fault> {
        let look =
            LookBack { days_ago: day, by, occasion: "before-flight".into(), found, righted: BTreeMap::new() };
        let at = self.teller.ago(day) - TimeDelta::minutes(5);
        let hours = self.teller.history(id)?.hours;
        let body = self.teller.inspect(id, &look, at, hours)?;
        Ok(self.teller.write(self.teller.person(by)?, Some(id), at, &Body::Inspection(body))?.digest)
    }

    fn event(&self, id: Uuid, event: &Event) -> Result<(), Fault> {
        let at = self.teller.ago(event.days_ago);
        let seed = self.teller.person(event.by)?;
        if !event.found.is_empty() {
            let opened_by = self.look(id, event.by, event.days_ago, event.found.clone())?;
            for (point, how) in &event.righted {
                let body = Rectified { point: point.clone(), opened_by, how: how.clone() };
                self.teller.write(seed, Some(id), at + TimeDelta::hours(3), &Body::Rectified(body))?;
            }
        }
        if let Some(wait) = &event.defer {
            let opened_by = self.teller.house.leading_defect(self.teller.tx, id, &wait.point)?;
            let until = at.date_naive().checked_add_days(Days::new(wait.days));
            let body = Deferred {
                point: wait.point.clone(),
                opened_by,
                until_hours: None,
                until_flights: None,
                until_date: until,
                condition: wait.condition.clone(),
                reason: wait.reason.clone(),
            };
            self.teller.write(seed, Some(id), at, &Body::Deferred(body))?;
        }
        if !event.jobs.is_empty() {
            self.work(id, event)?;
        }
        Ok(())
    }

    fn work(&self, id: Uuid, event: &Event) -> Result<(), Fault> {
        let at = self.teller.ago(event.days_ago) + TimeDelta::hours(1);
        let seed = self.teller.person(event.by)?;
        let history = self.teller.history(id)?;
        let (body, list) = self.teller.house.job_told(&history, &event.jobs)?;
        let independent = body.independent.clone();
        let job = self.teller.write(seed, Some(id), at, &Body::JobBegun(body))?.digest;
        let look = LookBack {
            days_ago: event.days_ago,
            by: event.by,
            occasion: "after-service".into(),
            found: BTreeMap::new(),
            righted: BTreeMap::new(),
        };
        let later = at + TimeDelta::hours(1);
        let mut inspection = self.teller.carry_out(&list, &look, later, &history)?;
        inspection.job = Some(job);
        let inspection = self.teller.write(seed, Some(id), later, &Body::Inspection(inspection))?.digest;
        let mut second_looks = Vec::new();
        if let Some(second) = event.second {
            let seen = |joint: String| JointSeen { joint, means: Meaning::Serviceable, note: String::new() };
            let body = SecondLook { job, joints: independent.into_iter().map(seen).collect() };
            let second = self.teller.person(second)?;
            let look = later + TimeDelta::hours(1);
            second_looks.push(self.teller.write(second, Some(id), look, &Body::SecondLook(body))?.digest);
        }
        if event.release {
            let service = self.teller.history(id)?.service();
            let body = Released { job, inspection, second_looks, service };
            self.teller.write(seed, Some(id), later + TimeDelta::hours(2), &Body::Released(body))?;
        }
        Ok(())
    }
}
