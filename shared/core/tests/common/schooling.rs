//! Stories of a school that no author would think of: people found schools, admit and end each other,
//! hand over, vouch, lose phones, restore old ones, put machines in and out, and all the while look,
//! work and defer. Each phone knows only what it has met.

#![allow(dead_code)]

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{
    ComponentMoved, Deferred, DueKept, Interval, JobBegun, JointSeen, MachineEnrolled, MemberAdmitted,
    MemberEnded, Released, Role, RootHanded, SchoolFounded, SchoolJoined, SecondLook, Service, TimeLogged,
};

use crate::common::*;

pub const ROOT: usize = 0;
pub const OWNER: usize = 1;
/// The owner's second phone.
pub const OTHER: usize = 2;
pub const MECHANIC: usize = 3;
pub const INSTRUCTOR: usize = 4;
/// Nobody of the school.
pub const OUTSIDER: usize = 5;
/// A phone that claims to be the owner's and that the owner hasn't vouched for.
pub const CLAIMANT: usize = 6;
/// Each phone's person.
pub const PEOPLE: [u8; 7] = [0, 1, 1, 2, 3, 4, 1];

const POINTS: [&str; 2] = ["base", "spring"];

/// One thing that happens.
#[derive(Clone, Debug)]
pub enum Event {
    Meet(usize, usize),
    Night,
    /// A phone is brought back to what it was once: it forgets, and goes on from there.
    Restore(usize, Index),
    Found(usize),
    Join(usize, Index),
    Admit(usize, usize, Role, Option<i64>, Index),
    End(usize, u8, Index),
    Hand(usize, usize, Index),
    Vouch(usize, usize),
    Revoke(usize, usize),
    Enrol(usize, Option<Index>),
    Look(usize, bool, Vec<(usize, Meaning, bool)>),
    Rectify(usize, usize),
    Correct(usize, usize, Meaning),
    Defer(usize, usize),
    Describe(usize),
    Limit(usize),
    Time(usize),
    Begin(usize),
    List(usize, Meaning),
    Second(usize, Meaning),
    Release(usize),
    Component(usize),
    Due(usize),
}

/// What a phone may do that makes or moves trust.
pub fn of_trust() -> impl Strategy<Value = Event> {
    let (phone, any) = (|| 0..PEOPLE.len(), any::<Index>);
    let until = || prop_oneof![2 => Just(None), 1 => (-1i64..3).prop_map(Some)];
    prop_oneof![
        1 => phone().prop_map(Event::Found),
        2 => (phone(), any()).prop_map(|(by, school)| Event::Join(by, school)),
        4 => (phone(), phone(), select(Role::ALL.to_vec()), until(), any())
            .prop_map(|(by, whom, role, until, school)| Event::Admit(by, whom, role, until, school)),
        2 => (phone(), 0..5u8, any()).prop_map(|(by, whom, school)| Event::End(by, whom, school)),
        2 => (phone(), phone(), any()).prop_map(|(by, to, school)| Event::Hand(by, to, school)),
        2 => (phone(), phone()).prop_map(|(by, whom)| Event::Vouch(by, whom)),
        2 => (phone(), phone()).prop_map(|(by, whom)| Event::Revoke(by, whom)),
    ]
}

/// What a phone may do to a machine.
pub fn of_machines() -> impl Strategy<Value = Event> {
    let (phone, point) = (|| 0..PEOPLE.len(), || 0..POINTS.len());
    let means = || select(vec![Meaning::Serviceable, Meaning::Watch, Meaning::Unserviceable]);
    prop_oneof![
        2 => (phone(), prop::option::weighted(0.7, any::<Index>())).prop_map(|(by, to)| Event::Enrol(by, to)),
        4 => (phone(), any::<bool>(), vec((point(), means(), any::<bool>()), 0..3))
            .prop_map(|(by, full, found)| Event::Look(by, full, found)),
        2 => (phone(), point()).prop_map(|(by, point)| Event::Rectify(by, point)),
        1 => (phone(), point(), means()).prop_map(|(by, point, means)| Event::Correct(by, point, means)),
        2 => (phone(), point()).prop_map(|(by, point)| Event::Defer(by, point)),
        1 => phone().prop_map(Event::Describe),
        1 => phone().prop_map(Event::Limit),
        1 => phone().prop_map(Event::Time),
        1 => phone().prop_map(Event::Begin),
        1 => (phone(), means()).prop_map(|(by, means)| Event::List(by, means)),
        1 => (phone(), means()).prop_map(|(by, means)| Event::Second(by, means)),
        1 => phone().prop_map(Event::Release),
        1 => phone().prop_map(Event::Component),
        1 => phone().prop_map(Event::Due),
    ]
}

fn event() -> impl Strategy<Value = Event> {
    let phone = || 0..PEOPLE.len();
    prop_oneof![
        10 => (phone(), phone()).prop_map(|(one, two)| Event::Meet(one, two)),
        1 => Just(Event::Night),
        1 => (phone(), any::<Index>()).prop_map(|(by, when)| Event::Restore(by, when)),
        8 => of_trust(),
        10 => of_machines(),
    ]
}

/// A world with a school in it, and then whatever happens, on phones whose clocks are hours off.
pub fn story(most: usize) -> impl Strategy<Value = World> {
    (vec(-180i64..180, PEOPLE.len()), vec(event(), 0..most)).prop_map(|(skews, events)| {
        let mut world = school(&skews);
        events.into_iter().for_each(|event| world.happens(event));
        world
    })
}

/// A school with four members, one machine of theirs, and somebody outside; all know all.
pub fn school(skews: &[i64]) -> World {
    let mut world = World::of_people(&PEOPLE);
    for (device, minutes) in world.devices.iter_mut().zip(skews) {
        device.skew = TimeDelta::minutes(*minutes);
    }
    let everybody = |world: &mut World| {
        (0..2).for_each(|_| (0..OUTSIDER).for_each(|phone| world.meet(ROOT, phone)));
    };
    everybody(&mut world);
    let school = world.founds(ROOT);
    world.joins(ROOT, school);
    for (device, role) in [(OWNER, Role::Pilot), (MECHANIC, Role::Mechanic), (INSTRUCTOR, Role::Instructor)] {
        world.admits(ROOT, school, device, role, None);
    }
    everybody(&mut world);
    for device in [OWNER, MECHANIC, INSTRUCTOR] {
        world.joins(device, school);
    }
    world.happens(Event::Vouch(OWNER, OTHER));
    world.write(OWNER, Some(machine()), Body::Machine(described()));
    world.write(OWNER, Some(machine()), look(vec![]));
    world.write(OWNER, Some(machine()), enrolled(Some(school)));
    everybody(&mut world);
    [OUTSIDER, CLAIMANT].into_iter().for_each(|phone| world.meet(ROOT, phone));
    world
}

pub fn enrolled(school: Option<Digest>) -> Body {
    Body::MachineEnrolled(MachineEnrolled { school })
}

fn service() -> Service {
    Service { hours: 10.0, flights: 20, tanks: 0 }
}

pub fn deferred(point: &str, opened_by: Digest) -> Body {
    Body::Deferred(Deferred {
        point: point.into(),
        opened_by,
        until_hours: None,
        until_flights: None,
        until_date: Some(at(DAY).date_naive() + TimeDelta::days(30)),
        condition: "on the ground".into(),
        reason: "parts come".into(),
    })
}

pub fn flown(hours: f64) -> Body {
    let added = Service { hours, flights: 1, tanks: 0 };
    Body::TimeLogged(TimeLogged { added, reading: None, fuel: None, note: String::new() })
}

pub fn begun() -> Body {
    Body::JobBegun(JobBegun {
        jobs: vec!["head".into()],
        title: "Head nuts torqued".into(),
        disturbed: BTreeMap::new(),
        points: vec!["nuts".into()],
        independent: vec!["head-nuts".into()],
        follow_ups: Vec::new(),
        service: service(),
        note: String::new(),
    })
}

pub fn listed(job: Digest, means: Meaning) -> Body {
    let Body::Inspection(body) = inspection("after-service", vec![finding("nuts", means)], vec![]) else {
        unreachable!("an inspection");
    };
    Body::Inspection(Inspection { job: Some(job), ..body })
}

pub fn second(job: Digest, means: Meaning) -> Body {
    let joint = JointSeen { joint: "head-nuts".into(), means, note: String::new() };
    Body::SecondLook(SecondLook { job, joints: vec![joint] })
}

pub fn released(job: Digest) -> Body {
    let inspection = Digest::of(b"the list");
    Body::Released(Released { job, inspection, second_looks: Vec::new(), service: service() })
}

pub fn component(fitted: bool) -> Body {
    Body::ComponentMoved(ComponentMoved {
        component: Uuid::from_u128(7),
        part: "engine".into(),
        name: "Invented engine".into(),
        serial: "1".into(),
        fitted,
        own: service(),
        service: service(),
    })
}

pub fn due_item() -> Body {
    Body::DueKept(DueKept {
        item: Uuid::from_u128(8),
        title: "Plug".into(),
        every: Interval { hours: Some(25.0), ..Interval::default() },
        tolerance_percent: 0.0,
        from_due: false,
        done: service(),
        done_on: at(DAY).date_naive(),
        ended: false,
    })
}

impl World {
    pub fn founds(&mut self, by: usize) -> Digest {
        let body = SchoolFounded { name: format!("Invented school {by}"), invented: true };
        self.write(by, None, Body::SchoolFounded(body))
    }

    pub fn joins(&mut self, by: usize, school: Digest) -> Digest {
        let courier = SigningSeed::from_bytes(&[100 + u8::try_from(by).unwrap(); 32]).jwk();
        self.write(by, None, Body::SchoolJoined(SchoolJoined { school, courier }))
    }

    pub fn admits(
        &mut self,
        by: usize,
        school: Digest,
        whom: usize,
        role: Role,
        days: Option<i64>,
    ) -> Digest {
        let today = (self.now + self.devices[by].skew).date_naive();
        let body = MemberAdmitted {
            school,
            device: self.id(whom),
            person: person(PEOPLE[whom]),
            name: format!("Invented pilot {}", PEOPLE[whom]),
            role,
            from: today,
            until: days.map(|days| today + TimeDelta::days(days)),
        };
        self.write(by, None, Body::MemberAdmitted(body))
    }

    pub fn ends(&mut self, by: usize, school: Digest, whom: u8) -> Digest {
        let body = MemberEnded { school, person: person(whom), reason: "left".into() };
        self.write(by, None, Body::MemberEnded(body))
    }

    pub fn hands(&mut self, by: usize, school: Digest, to: usize) -> Digest {
        let to = self.id(to);
        self.write(by, None, Body::RootHanded(RootHanded { school, to }))
    }

    /// The first school: the one that everybody knows.
    pub fn school(&self) -> Digest {
        self.schools()[0]
    }

    fn schools(&self) -> Vec<Digest> {
        let founded = self.records.iter().filter(|record| record.payload.kind == "school-founded");
        founded.map(|record| record.digest).collect()
    }

    fn job_known_to(&self, by: usize) -> Option<Digest> {
        let known = self.devices[by].knows.iter().map(|n| &self.records[*n]);
        known.filter(|record| record.payload.kind == "job-begun").map(|record| record.digest).next_back()
    }

    /// The sighting that leads at a point, as a phone knows it.
    fn leading(&self, by: usize, point: &str) -> Option<Digest> {
        Some(self.history_of(by).open_at(point)?.leading()?.record)
    }

    pub fn happens(&mut self, event: Event) {
        let about = Some(machine());
        match event {
            Event::Meet(one, two) => self.meet(one, two),
            Event::Night => self.now += TimeDelta::hours(20),
            Event::Restore(by, when) => {
                let knew: Vec<usize> = self.devices[by].knows.iter().copied().collect();
                // A phone never forgets who it is.
                let kept = 1 + when.index(knew.len());
                self.devices[by].knows = knew.into_iter().take(kept).chain([by]).collect();
            }
            Event::Found(by) => drop(self.founds(by)),
            Event::Join(by, school) => {
                let school = *school.get(&self.schools());
                self.joins(by, school);
            }
            Event::Admit(by, whom, role, until, school) => {
                let school = *school.get(&self.schools());
                self.admits(by, school, whom, role, until);
            }
            Event::End(by, whom, school) => {
                let school = *school.get(&self.schools());
                self.ends(by, school, whom);
            }
            Event::Hand(by, to, school) => {
                let school = *school.get(&self.schools());
                self.hands(by, school, to);
            }
            Event::Vouch(by, whom) => {
                let body = vouched(self.id(whom));
                self.write(by, None, body);
            }
            Event::Revoke(by, whom) => {
                let body = revoked(self.id(whom));
                self.write(by, None, body);
            }
            Event::Enrol(by, school) => {
                let school = school.map(|school| *school.get(&self.schools()));
                self.write(by, about, enrolled(school));
            }
            Event::Look(by, full, found) => {
                let found = found
                    .into_iter()
                    .map(|(n, means, passing)| Finding { passing, ..finding(POINTS[n], means) });
                let occasion = if full { BEFORE_FLIGHT } else { "second-flight" };
                self.write(by, about, inspection(occasion, found.collect(), vec![]));
            }
            Event::Rectify(by, n) => {
                if let Some(opened) = self.leading(by, POINTS[n]) {
                    self.write(by, about, rectified(POINTS[n], opened));
                }
            }
            Event::Correct(by, n, means) => {
                let of = self.records[0].digest;
                self.write(by, about, correction(of, POINTS[n], means));
            }
            Event::Defer(by, n) => {
                if let Some(opened) = self.leading(by, POINTS[n]) {
                    self.write(by, about, deferred(POINTS[n], opened));
                }
            }
            Event::Describe(by) => drop(self.write(by, about, Body::Machine(described()))),
            Event::Limit(by) => drop(self.write(by, about, limit(Some(14.0), Some(15.0)))),
            Event::Time(by) => drop(self.write(by, about, flown(0.5))),
            Event::Begin(by) => drop(self.write(by, about, begun())),
            Event::List(by, means) => self.on_job(by, |job| listed(job, means)),
            Event::Second(by, means) => self.on_job(by, |job| second(job, means)),
            Event::Release(by) => self.on_job(by, released),
            Event::Component(by) => drop(self.write(by, about, component(true))),
            Event::Due(by) => drop(self.write(by, about, due_item())),
        }
    }

    fn on_job(&mut self, by: usize, body: impl FnOnce(Digest) -> Body) {
        if let Some(job) = self.job_known_to(by) {
            self.write(by, Some(machine()), body(job));
        }
    }
}

pub fn person(n: u8) -> Uuid {
    Uuid::from_u128(u128::from(n) + 1)
}
