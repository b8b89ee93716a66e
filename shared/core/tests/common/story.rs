//! Stories that no author would think of: phones look, put right, correct and meet at random.

use proptest::collection::vec;
use proptest::prelude::*;

use witnessmark_core::list::Meaning;

use super::*;

pub const PHONES: u8 = 3;
const POINTS: &[&str] = &["base", "spring", "strap"];

/// One thing that happens.
#[derive(Clone, Debug)]
pub enum Event {
    Meet(usize, usize),
    /// A phone signs a list: for each point, what was found there, and whether it is passing.
    Look(usize, bool, Vec<(usize, Meaning, bool)>),
    /// A phone puts right what is open at a point, as it knows it.
    Rectify(usize, usize),
    /// A phone names a record at random as what it puts right.
    RectifyAny(usize, usize, prop::sample::Index),
    Correct(usize, usize, Meaning),
    Describe(usize),
    Limit(usize),
    Unknown(usize),
    /// Something about another machine, which must not matter.
    Elsewhere(usize),
}

fn meaning() -> impl Strategy<Value = Meaning> {
    prop::sample::select(vec![
        Meaning::NotFitted,
        Meaning::Serviceable,
        Meaning::Watch,
        Meaning::Unserviceable,
    ])
}

fn event() -> impl Strategy<Value = Event> {
    let phone = || 0..usize::from(PHONES);
    let point = || 0..POINTS.len();
    prop_oneof![
        4 => (phone(), phone()).prop_map(|(one, two)| Event::Meet(one, two)),
        6 => (phone(), any::<bool>(), vec((point(), meaning(), any::<bool>()), 0..4))
            .prop_map(|(by, full, found)| Event::Look(by, full, found)),
        3 => (phone(), point()).prop_map(|(by, point)| Event::Rectify(by, point)),
        1 => (phone(), point(), any::<prop::sample::Index>())
            .prop_map(|(by, point, record)| Event::RectifyAny(by, point, record)),
        2 => (phone(), point(), meaning()).prop_map(|(by, point, means)| Event::Correct(by, point, means)),
        1 => phone().prop_map(Event::Describe),
        1 => phone().prop_map(Event::Limit),
        1 => phone().prop_map(Event::Unknown),
        1 => phone().prop_map(Event::Elsewhere),
    ]
}

/// A world in which things happened, on phones whose clocks are up to two hours off.
pub fn story() -> impl Strategy<Value = World> {
    let skews = vec(-120i64..120, usize::from(PHONES));
    (skews, vec(event(), 0..20)).prop_map(|(skews, events)| {
        let mut world = World::new(PHONES);
        for (device, minutes) in world.devices.iter_mut().zip(skews) {
            device.skew = TimeDelta::minutes(minutes);
        }
        for event in events {
            world.happen(event);
        }
        world
    })
}

impl World {
    fn happen(&mut self, event: Event) {
        let about = Some(machine());
        match event {
            Event::Meet(one, two) => self.meet(one, two),
            Event::Look(by, full, found) => {
                let found = found
                    .into_iter()
                    .map(|(point, means, passing)| Finding { passing, ..finding(POINTS[point], means) });
                let occasion = if full { BEFORE_FLIGHT } else { "second-flight" };
                self.write(by, about, inspection(occasion, found.collect(), vec![]));
            }
            Event::Rectify(by, point) => {
                let history = self.history_of(by);
                if let Some(leading) = history.open_at(POINTS[point]).and_then(|open| open.leading()) {
                    self.write(by, about, rectified(POINTS[point], leading.record));
                }
            }
            Event::RectifyAny(by, point, record) => {
                let record = record.get(&self.records).digest;
                self.write(by, about, rectified(POINTS[point], record));
            }
            Event::Correct(by, point, means) => {
                let of = self.records[0].digest;
                self.write(by, about, correction(of, POINTS[point], means));
            }
            Event::Describe(by) => drop(self.write(by, about, Body::Machine(described()))),
            Event::Limit(by) => drop(self.write(by, about, limit(Some(14.0), Some(15.0)))),
            Event::Unknown(by) => drop(self.write(by, about, unknown())),
            Event::Elsewhere(by) => {
                self.write(by, Some(other_machine()), look(vec![finding("base", Meaning::Unserviceable)]));
            }
        }
    }
}
