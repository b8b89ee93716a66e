//! From looks at a type of component, and from components fitted and taken off, to findings: still whole
//! after so many of its own hours, found wrong by so many.
//!
//! - Age is the machine's hours since the component was fitted and the hours it had then. A component that
//!   nobody registered is as old as its machine.
//! - A life ends by the first look that finds something unserviceable. It began to fail after the last
//!   look that found the same points in order: that, and no more, is known. Watch is whole.
//! - Once a later look finds in order what was wrong, a new life begins at no hours: put right counts as
//!   new, whether it was repaired or changed. A component whose own hours are registered anew is that one.
//! - Taken off, sold or simply not found wrong yet: whole as far as it was seen.
//! - A machine has one of a type at a time: fitting another takes off what was there.
//! - What was found wrong before it ran at all says nothing of wear, and is counted beside.
//!
//! A limit that stays: a machine that comes to the fleet old is taken as whole from new. Those like it
//! that failed before anybody here looked are missing (left truncation), so that early failures look
//! rarer than they are. [`Lives::came_old`] says how many lives this may be about.

mod hours;
mod one;

use std::collections::{BTreeMap, BTreeSet};

use uuid::Uuid;

use self::hours::believed;
use self::one::{Component, End};
use super::fault::LifeFault;
use super::finding::Findings;
use crate::list::Meaning;
use crate::record::Digest;

/// What one look found at one point of a component.
#[derive(Clone, Debug, PartialEq)]
pub struct PartSeen {
    /// The inspection.
    pub record: Digest,
    /// The machine.
    pub machine: Uuid,
    /// When, Unix milliseconds.
    pub at_ms: i64,
    /// The machine's engine hours then.
    pub hours: f64,
    /// The point.
    pub point: String,
    /// What was found.
    pub means: Meaning,
}

/// A component fitted to a machine or taken off it.
#[derive(Clone, Debug, PartialEq)]
pub struct PartMoved {
    /// The record.
    pub record: Digest,
    /// The machine.
    pub machine: Uuid,
    /// When, Unix milliseconds.
    pub at_ms: i64,
    /// The component.
    pub component: Uuid,
    /// Fitted, else taken off.
    pub fitted: bool,
    /// The component's own hours then.
    pub own: f64,
    /// The machine's.
    pub hours: f64,
}

/// One life.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lived {
    /// Still whole at so many of its own hours.
    pub after: f64,
    /// Found wrong at so many; none: not yet.
    pub by: Option<f64>,
}

/// The lives of one type of component.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Lives {
    /// All that tell something, those found wrong by age first.
    pub all: Vec<Lived>,
    /// Machines whose looks speak of it.
    pub machines: usize,
    /// Found wrong before they ran at all; in no life.
    pub never_ran: usize,
    /// Lives that began with being put right.
    pub renewed: usize,
    /// Lives of which the first look here was at more than [`OLD`] hours, and that were taken for whole
    /// until then.
    pub came_old: usize,
    /// Looks at what replaced a component and was never registered: nobody knows its age.
    pub of_no_age: usize,
}

/// From how many hours at its first look a life is told to have come old. Our choice.
pub const OLD: f64 = 10.0;
/// A component registered with the machine's own hours is the one that was on it from the first.
const SAME_HOURS: f64 = 0.05;

impl Lives {
    /// For the statistics.
    ///
    /// # Errors
    /// [`LifeFault`].
    pub fn findings(&self) -> Result<Findings, LifeFault> {
        let pairs: Vec<(f64, Option<f64>)> = self.all.iter().map(|one| (one.after, one.by)).collect();
        Findings::new(&pairs)
    }

    /// How many were found wrong.
    pub fn failed(&self) -> usize {
        self.all.iter().filter(|one| one.by.is_some()).count()
    }

    fn take(&mut self, end: Option<End>) {
        match end {
            Some(End::Failed(after, by)) => self.all.push(Lived { after, by: Some(by) }),
            Some(End::Whole(after)) => self.all.push(Lived { after, by: None }),
            Some(End::NeverRan) => self.never_ran += 1,
            None => {}
        }
    }
}

/// The lives that looks and moves tell of. The same record may be there more than once, from several
/// replicas, and in any order.
pub fn lives(seen: &[PartSeen], moved: &[PartMoved]) -> Lives {
    let mut fleet = Fleet::default();
    let events = in_order(seen, moved);
    let looked_at = events.iter().filter(|event| matches!(event.what, What::Look(_)));
    fleet.lives.machines = looked_at.map(|event| event.machine).collect::<BTreeSet<_>>().len();
    for event in &events {
        match event.what {
            What::Off(moved) => fleet.off(moved, event.hours),
            What::On(moved) => fleet.on(moved, event.hours),
            What::Look(ref seen) => fleet.look(event, seen),
        }
    }
    fleet.ended()
}

/// Something that happened to a machine.
struct Event<'a> {
    at_ms: i64,
    machine: Uuid,
    record: Digest,
    /// The machine's, as believed.
    hours: f64,
    what: What<'a>,
}

enum What<'a> {
    Off(&'a PartMoved),
    On(&'a PartMoved),
    Look(Vec<(&'a str, Meaning)>),
}

impl What<'_> {
    /// At one and the same moment what is off comes off first, and is looked at last.
    fn order(&self) -> u8 {
        match self {
            What::Off(_) => 0,
            What::On(_) => 1,
            What::Look(_) => 2,
        }
    }
}

/// The worst that one look found at each point.
type Points<'a> = BTreeMap<&'a str, Meaning>;

/// Everything in the order in which it happened, each record once, with hours that never go back.
fn in_order<'a>(seen: &'a [PartSeen], moved: &'a [PartMoved]) -> Vec<Event<'a>> {
    let mut looks: BTreeMap<(Uuid, Digest), (&PartSeen, Points<'_>)> = BTreeMap::new();
    for one in seen.iter().filter(|one| one.means != Meaning::NotFitted && one.hours.is_finite()) {
        let (_, points) = looks.entry((one.machine, one.record)).or_insert_with(|| (one, Points::new()));
        let worst = points.entry(&one.point).or_insert(one.means);
        *worst = one.means.max(*worst);
    }
    let looks = looks.into_values().map(|(one, points)| Event {
        at_ms: one.at_ms,
        machine: one.machine,
        record: one.record,
        hours: one.hours,
        what: What::Look(points.into_iter().collect()),
    });
    let mut told = BTreeSet::new();
    let moved = moved.iter().filter(|one| one.hours.is_finite() && told.insert((one.machine, one.record)));
    let moves = moved.map(|one| Event {
        at_ms: one.at_ms,
        machine: one.machine,
        record: one.record,
        hours: one.hours,
        what: if one.fitted { What::On(one) } else { What::Off(one) },
    });
    let mut events: Vec<Event<'_>> = looks.chain(moves).collect();
    events.sort_by_key(|event| (event.machine, event.at_ms, event.what.order(), event.record));
    for one_machine in events.chunk_by_mut(|a, b| a.machine == b.machine) {
        let stated: Vec<f64> = one_machine.iter().map(|event| event.hours).collect();
        for (event, hours) in one_machine.iter_mut().zip(believed(&stated)) {
            event.hours = hours;
        }
    }
    events.sort_by_key(|event| (event.at_ms, event.what.order(), event.machine, event.record));
    events
}

/// Which component it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Which {
    /// The one that is as old as this machine.
    Machines(Uuid),
    /// A registered one.
    Registered(Uuid),
}

/// All components of the type, and where they are.
#[derive(Default)]
struct Fleet<'a> {
    lives: Lives,
    components: BTreeMap<Which, Component<'a>>,
    /// What is on each machine; none: something of which nobody knows the age. A machine that isn't in
    /// here has the one that is as old as itself.
    on: BTreeMap<Uuid, Option<Which>>,
    looked_at: BTreeSet<Which>,
}

impl<'a> Fleet<'a> {
    fn on_machine(&self, machine: Uuid) -> Option<Which> {
        self.on.get(&machine).copied().unwrap_or(Some(Which::Machines(machine)))
    }

    /// What is on a machine comes off it.
    fn clear(&mut self, machine: Uuid, hours: f64) {
        let which = self.on_machine(machine);
        if let Some(component) = which.and_then(|which| self.components.get_mut(&which)) {
            component.off(hours);
        }
        self.on.insert(machine, None);
    }

    /// A component with the machine's own hours is the one that was on it from the first: only its name
    /// is new.
    fn name(&mut self, moved: &PartMoved, own: f64) {
        let (first, named) = (Which::Machines(moved.machine), Which::Registered(moved.component));
        let same = own > 0.0 && (own - moved.hours).abs() <= SAME_HOURS;
        if !same || self.on_machine(moved.machine) != Some(first) || self.components.contains_key(&named) {
            return;
        }
        if let Some(component) = self.components.remove(&first) {
            self.components.insert(named, component);
            self.looked_at.insert(named);
            self.on.insert(moved.machine, Some(named));
        }
    }

    fn off(&mut self, moved: &PartMoved, hours: f64) {
        self.name(moved, moved.own);
        let here = self.on_machine(moved.machine);
        let first = Some(Which::Machines(moved.machine));
        // Another one that was fitted since stays where it is.
        if here == Some(Which::Registered(moved.component)) || here == first {
            self.clear(moved.machine, hours);
        }
    }

    fn on(&mut self, moved: &PartMoved, hours: f64) {
        let which = Which::Registered(moved.component);
        let own = if moved.own.is_finite() { moved.own.max(0.0) } else { 0.0 };
        self.name(moved, own);
        self.clear(moved.machine, hours);
        // It can't be on two machines.
        self.on.values_mut().filter(|on| **on == Some(which)).for_each(|on| *on = None);
        match self.components.get_mut(&which) {
            Some(known) => known.on(hours, own),
            None => {
                self.components.insert(which, Component::new(hours, own));
            }
        }
        self.on.insert(moved.machine, Some(which));
    }

    fn look(&mut self, event: &Event<'a>, seen: &[(&'a str, Meaning)]) {
        let Some(which) = self.on_machine(event.machine) else {
            self.lives.of_no_age += 1;
            return;
        };
        let component = self.components.entry(which).or_insert_with(|| Component::new(0.0, 0.0));
        let end = component.look(event.at_ms, event.hours, seen);
        if self.looked_at.insert(which) && component.age > OLD {
            self.lives.came_old += 1;
        }
        if end.is_some() {
            self.lives.renewed += 1;
        }
        self.lives.take(end);
    }

    fn ended(mut self) -> Lives {
        for component in self.components.values() {
            self.lives.take(component.end());
        }
        let age = |one: &Lived| (one.by.is_none(), one.by.unwrap_or(one.after), one.after);
        self.lives.all.sort_by(|a, b| {
            let (a, b) = (age(a), age(b));
            a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.total_cmp(&b.2))
        });
        self.lives
    }
}
