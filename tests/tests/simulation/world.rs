//! The school as a seed has it: who is there, and what happens next.

use std::collections::BTreeSet;

use chrono::TimeDelta;
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    Body, DeviceId, Digest, Machine, MemberAdmitted, MemberEnded, Record, Role, RootHanded, SchoolFounded,
    SigningSeed, Trust, write_bundle,
};
use witnessmark_store::StoreFault;

use crate::chance::Chance;
use crate::common::{self, correction, described, finding, inspection, look, rectified, revoked, vouched};
use crate::phone::{Phone, Time, person};
use crate::reference::{Reference, Serves};
use crate::schooling::{begun, component, deferred, due_item, enrolled, flown, listed, released, second};
use crate::shipped::Shipped;

/// 2026-05-02, six in the morning.
const MORNING: i64 = 1_777_701_600_000;
const MINUTE: i64 = 60_000;
/// One in so many seeds has the shipped server, which is slower; the others the reference.
const SHIPPED: u64 = 4;
const POINTS: [&str; 2] = ["base", "spring"];

pub struct World {
    pub chance: Chance,
    pub time: Time,
    pub phones: Vec<Phone>,
    pub server: Box<dyn Serves>,
    pub school: Digest,
    pub machines: Vec<Uuid>,
    /// What the server has told a phone that it took.
    pub acknowledged: BTreeSet<Digest>,
    pub trace: Vec<String>,
}

impl World {
    pub fn new(seed: u64) -> Self {
        let mut chance = Chance::of(seed);
        let time = Time::default();
        time.set(MORNING);
        // Mostly few, so that there are many seeds; now and then a whole house.
        let people = 3 + [0, 0, 0, 1, 1, 5][chance.below(6) as usize];
        let mut phones: Vec<Phone> = (0..people).map(|n| Phone::new(n, n, &time)).collect();
        let seconds = [0, 0, 1, 2][chance.below(4) as usize];
        phones.extend((0..seconds).map(|n| Phone::new(people + n, chance.below(people.into()) as u8, &time)));
        let founded = SchoolFounded { name: "Invented school".into(), invented: false };
        let school = phones[0].writes(None, &Body::SchoolFounded(founded)).digest;
        let founding = phones[0].records();
        let server: Box<dyn Serves> = if seed.is_multiple_of(SHIPPED) {
            Box::new(Shipped::new(&founding))
        } else {
            Box::new(Reference::new(school, SigningSeed::from_bytes(&[250; 32]), &founding))
        };
        let (machines, acknowledged) = (Vec::new(), BTreeSet::new());
        let mut world =
            Self { chance, time, phones, server, school, machines, acknowledged, trace: Vec::new() };
        let verifier = world.server.verifier();
        for n in 0..world.phones.len() {
            world.brings(n, &founding);
            world.phones[n].joins(school, &verifier);
            // Clocks differ by minutes; now and then by hours.
            let off = [0, 1, 4, 4, 180][world.chance.below(5) as usize] * MINUTE;
            let off = if world.chance.one_in(2) { off } else { -off };
            world.phones[n].set_skew(off);
            if n > 0 && !world.chance.one_in(3) {
                world.admits(0, n);
            }
        }
        for n in 1..=1 + world.chance.below(2) as usize {
            let machine = Uuid::from_u128(0x0192_0000_0000_7000_8000_0000_0000_0000 + n as u128);
            world.machines.push(machine);
            let described = Machine { invented: false, ..described() };
            world.phones[n].writes(Some(machine), &Body::Machine(described));
            world.phones[n].writes(Some(machine), &enrolled(Some(school)));
        }
        world
    }

    pub fn says(&mut self, what: impl Into<String>) {
        self.trace.push(what.into());
    }

    pub fn seconds(&self) -> i64 {
        self.time.ms() / 1000
    }

    pub fn any_phone(&mut self) -> usize {
        self.chance.below(self.phones.len() as u64) as usize
    }

    pub fn name(&self, n: usize) -> String {
        self.phones[n].name.clone()
    }

    /// The phone of a device.
    pub fn phone_of(&self, device: &DeviceId) -> Option<usize> {
        self.phones.iter().position(|phone| phone.id() == *device)
    }

    /// Records come to a phone as a file.
    pub fn brings(&mut self, to: usize, records: &[Record]) {
        let brought = self.phones[to].app().import(write_bundle(records)).unwrap();
        assert_eq!(brought.refused, Vec::<String>::new(), "an honest file to {}", self.name(to));
    }

    /// Face to face: one phone learns the other's key.
    fn meets(&mut self, one: usize, other: usize) {
        let own = self.phones[other].id();
        let mut known = self.phones[other].of_people().into_iter();
        let member = known.find(|r| r.payload.kind == "member" && r.payload.device == own).unwrap();
        self.phones[one].hand().write(|tx| tx.append(&member).map(drop)).unwrap();
    }

    pub fn admits(&mut self, root: usize, whom: usize) {
        self.meets(root, whom);
        let role = *self.chance.pick(&[Role::Viewer, Role::Pilot, Role::Mechanic, Role::Instructor]);
        self.admits_as(root, whom, role);
    }

    pub fn admits_as(&mut self, root: usize, whom: usize, role: Role) {
        let (device, of) = (self.phones[whom].id(), self.phones[whom].person);
        let body = MemberAdmitted {
            school: self.school,
            device,
            person: person(of),
            name: self.name(whom),
            role,
            from: self.phones[root].now().date_naive() - TimeDelta::days(1),
            until: None,
        };
        self.says(format!("{} admits {} as {role:?}", self.name(root), self.name(whom)));
        self.phones[root].writes(None, &Body::MemberAdmitted(body));
    }

    /// One thing happens.
    pub fn goes_on(&mut self) {
        let minutes = if self.chance.one_in(12) { self.chance.below(600) } else { 0 };
        let ms = self.chance.below(50_000) as i64 + minutes as i64 * MINUTE;
        self.time.set(self.time.ms() + ms);
        let n = self.any_phone();
        match self.chance.below(100) {
            0..=39 => self.talks(n),
            40..=69 => self.signs(n),
            70..=76 => {
                let to = self.any_phone();
                self.says(format!("{} brings all to {}", self.name(n), self.name(to)));
                let records = self.phones[n].records();
                self.brings(to, &records);
            }
            77..=80 => self.phones[n].offline ^= true,
            81..=83 => {
                self.says(format!("{} crashes", self.name(n)));
                self.phones[n].crashes();
            }
            84..=85 => {
                self.says("the server restarts");
                self.server.restart();
            }
            86..=88 => self.phones[n].backs_up(),
            89 => {
                self.says(format!("{} is restored", self.name(n)));
                self.phones[n].is_restored();
            }
            90..=96 => self.manages(),
            _ => {
                let same: Vec<usize> = (0..self.phones.len())
                    .filter(|m| self.phones[*m].person == self.phones[n].person)
                    .collect();
                let other = *self.chance.pick(&same);
                self.meets(n, other);
                self.says(format!("{} vouches for {}", self.name(n), self.name(other)));
                let body = vouched(self.phones[other].id());
                self.phones[n].writes(None, &body);
            }
        }
    }

    /// What all records that anybody has say of people.
    pub fn made_of(&mut self) -> Vec<Record> {
        let all: Vec<Record> = self.phones.iter_mut().flat_map(Phone::of_people).collect();
        all.into_iter().filter(|record| Trust::is_made_of(&record.payload.kind)).collect()
    }

    /// A phone that is the root by all that it knows.
    fn any_root(&mut self) -> usize {
        let school = self.school;
        let roots: Vec<usize> = (0..self.phones.len())
            .filter(|n| {
                let own = self.phones[*n].id();
                let trust = self.phones[*n].hand().read(|tx| tx.trust()).unwrap();
                trust.school(&school).is_some_and(|school| school.root == own)
            })
            .collect();
        roots.get(self.chance.below(roots.len() as u64) as usize).copied().unwrap_or(0)
    }

    /// Whether a phone takes another for a member's whose key holds.
    fn knows_as_member(&mut self, root: usize, n: usize) -> bool {
        let (school, device) = (self.school, self.phones[n].id());
        let day = self.phones[root].now().date_naive();
        let trust = self.phones[root].hand().read(|tx| tx.trust()).unwrap();
        n != root && trust.role_on(&school, &device, day).is_some()
    }

    /// The root does what roots do; or somebody ends a key.
    fn manages(&mut self) {
        let (root, n) = (self.any_root(), self.any_phone());
        let (device, of) = (self.phones[n].id(), self.phones[n].person);
        match self.chance.below(8) {
            0..=3 => self.admits(root, n),
            4 => {
                let (school, person) = (self.school, person(of));
                let body = MemberEnded { school, person, reason: "left".into() };
                self.says(format!("{} ends {}'s person", self.name(root), self.name(n)));
                self.phones[root].writes(None, &Body::MemberEnded(body));
            }
            // The app hands over to members only whose key holds, as far as it knows.
            5 if self.knows_as_member(root, n) => {
                let body = RootHanded { school: self.school, to: device };
                self.says(format!("{} hands over to {}", self.name(root), self.name(n)));
                self.phones[root].writes(None, &Body::RootHanded(body));
            }
            6 if n != root => {
                self.says(format!("{} revokes {}", self.name(root), self.name(n)));
                self.phones[root].writes(None, &revoked(device));
            }
            _ => {
                let by = self.any_phone();
                if self.phones[by].person == of && by != n && n != root {
                    self.says(format!("{} revokes its own {}", self.name(by), self.name(n)));
                    self.phones[by].writes(None, &revoked(device));
                }
            }
        }
    }

    /// Somebody signs something about a machine.
    fn signs(&mut self, n: usize) {
        let machine = *self.chance.pick(&self.machines);
        let point = *self.chance.pick(&POINTS);
        let means = *self.chance.pick(&[Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable]);
        let (history, job) = self.phones[n]
            .hand()
            .read(|tx| {
                let jobs = tx.records_of_kind(machine, "job-begun")?;
                Ok::<_, StoreFault>((tx.history(machine)?, jobs.last().map(|job| job.digest)))
            })
            .unwrap();
        let wrong = history.as_ref().and_then(|history| Some(history.open_at(point)?.leading()?.record));
        let body = match self.chance.below(16) {
            0..=3 => look(vec![finding(point, means)]),
            4 => inspection("second-flight", vec![common::passing(point, means)], vec![]),
            5 => correction(self.school, point, means),
            6 | 7 => match wrong {
                Some(opened) => rectified(point, opened),
                None => look(vec![]),
            },
            8 => match wrong {
                Some(opened) => deferred(point, opened),
                None => flown(0.7),
            },
            9 => flown(0.5),
            10 => Body::Machine(Machine { invented: false, note: "again".into(), ..described() }),
            11 => match job {
                Some(job) if self.chance.one_in(2) => listed(job, means),
                Some(job) if self.chance.one_in(2) => second(job, means),
                Some(job) => released(job),
                None => begun(),
            },
            12 => component(self.chance.one_in(2)),
            13 => due_item(),
            14 => enrolled(self.chance.one_in(2).then_some(self.school)),
            _ => Body::Unknown { kind: "said".into(), body: serde_json::json!({}) },
        };
        let kind = self.phones[n].writes(Some(machine), &body).payload.kind;
        self.says(format!("{} signs {kind}", self.name(n)));
    }
}
