//! All looks of the fleet, counted, and whom and what the numbers stand for.

use std::collections::{BTreeMap, BTreeSet};

use uuid::Uuid;
use witnessmark_core::attention::{PointSeen, Tally};
use witnessmark_core::record::{DeviceId, Digest, Trust};
use witnessmark_store::Tx;

use super::super::fleet::Fleet;
use crate::Fault;
use crate::house::House;

/// The counts, and what their numbers are.
pub(super) struct Tallied {
    pub tally: Tally,
    pub fleet: Fleet,
    /// People, each by the devices that are theirs.
    pub people: Vec<Vec<DeviceId>>,
    /// Points by their id, and the latest inspection that looked at each.
    pub points: Vec<(String, Digest)>,
    /// The schools whose machines each person looked at.
    pub schools: Vec<BTreeSet<Digest>>,
}

impl House {
    /// Counts every look at the fleet's machines.
    pub(super) fn tallied(&self, tx: &Tx<'_>) -> Result<Tallied, Fault> {
        let fleet = self.fleet(tx)?;
        let trust = tx.trust()?;
        let mut people: Vec<Vec<DeviceId>> = Vec::new();
        let mut person_of: BTreeMap<DeviceId, usize> = BTreeMap::new();
        let mut machines: BTreeMap<Uuid, usize> = BTreeMap::new();
        let mut points: Vec<(String, Digest)> = Vec::new();
        let mut schools: Vec<BTreeSet<Digest>> = Vec::new();
        let mut tally = Tally::default();
        tx.point_looks(|look| {
            if !fleet.has(&look.machine) {
                return;
            }
            let known = person_of.get(&look.device).copied();
            let person = known.unwrap_or_else(|| {
                let person = place_of(&trust, &mut people, &look.device);
                person_of.insert(look.device.clone(), person);
                person
            });
            schools.resize(people.len(), BTreeSet::new());
            if let (Some(school), Some(schools)) = (fleet.school(&look.machine), schools.get_mut(person)) {
                schools.insert(school);
            }
            // They come point by point.
            match points.last_mut() {
                Some((point, latest)) if *point == look.point => *latest = look.record,
                _ => points.push((look.point, look.record)),
            }
            let machine = machines.len();
            tally.take(PointSeen {
                record: look.record,
                person,
                machine: *machines.entry(look.machine).or_insert(machine),
                point: points.len() - 1,
                means: look.means,
                seconds: look.seconds,
                hurried: look.hurried,
            });
        })?;
        Ok(Tallied { tally, fleet, people, points, schools })
    }
}

/// The person who holds a device: of devices that each vouch for the other. Whoever only claims to be
/// somebody is a person of their own here.
fn place_of(trust: &Trust, people: &mut Vec<Vec<DeviceId>>, device: &DeviceId) -> usize {
    let same = |one: &DeviceId| trust.same_person(one, device) && trust.same_person(device, one);
    let theirs = |devices: &Vec<DeviceId>| devices.iter().any(same);
    if let Some(place) = people.iter().position(theirs) {
        if let Some(devices) = people.get_mut(place) {
            devices.push(device.clone());
        }
        return place;
    }
    people.push(vec![device.clone()]);
    people.len() - 1
}
