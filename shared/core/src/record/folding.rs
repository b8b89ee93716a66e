//! How trust is folded from records: in causal order, and so that a key's end holds from the start.
//!
//! Who may end a key is itself told by records that keys sign, and those may have been ended. So the
//! fold is repeated: each time under the ends that the time before found, until they stay the same.
//! Where keys end each other in a ring, the earlier word goes first.

use std::collections::BTreeMap;

use super::{Body, Clock, DeviceId, Record, Revoked, School, Signature, Standing, Trust};

/// Kinds of records that trust is made of; they are about no machine.
pub const TRUST_KINDS: [&str; 8] = [
    "member",
    "device-vouched",
    "key-revoked",
    "school-founded",
    "school-joined",
    "member-admitted",
    "member-ended",
    "root-handed",
];

/// Rings of keys that end each other may never settle.
const REPEATS: usize = 16;

/// The last number that counts, by ended device.
type Ends = BTreeMap<DeviceId, u64>;

pub(super) fn fold<'a>(records: impl IntoIterator<Item = &'a Record>, verify: bool) -> Trust {
    // Most records are long and none of these: told by their kind, they aren't read at all.
    let made_of =
        |record: &&Record| Trust::is_made_of(&record.payload.kind) && record.payload.machine.is_none();
    let records = records.into_iter().filter(made_of).collect();
    let mut said: Vec<(&Record, Body)> = in_order(records)
        .into_iter()
        .filter_map(|record| Some((record, record.payload.typed().ok()?)))
        .collect();
    let mut known = Trust::default();
    said.iter().for_each(|(record, body)| known.admit(record, body, verify));
    said.retain(|(record, _)| {
        let standing = known.devices.get(&record.payload.device);
        standing.is_some_and(|standing| !verify || record.check(&standing.key) == Signature::Good)
    });
    let mut ends = Ends::new();
    for _ in 0..REPEATS {
        let (trust, found) = known.under(&ends, &said);
        if found == ends {
            return trust;
        }
        ends = found;
    }
    // In doubt, what either of two times ends is ended.
    for (device, last) in known.under(&ends, &said).1 {
        let end = ends.entry(device).or_insert(last);
        *end = last.min(*end);
    }
    known.under(&ends, &said).0
}

/// Records in the order in which every reader folds them, each once: causal, ties by device and number.
/// A device's own records keep their order, whatever its clock says.
fn in_order(mut records: Vec<&Record>) -> Vec<&Record> {
    let of_device = |record: &Record| (record.payload.device.clone(), record.payload.seq);
    records.sort_by_cached_key(|record| (of_device(record), record.digest));
    records.dedup_by_key(|record| record.digest);
    let mut latest: BTreeMap<&DeviceId, Clock> = BTreeMap::new();
    let mut timed: Vec<(Clock, &Record)> = Vec::with_capacity(records.len());
    for record in records {
        let clock = latest.entry(&record.payload.device).or_default();
        *clock = record.payload.clock.max(*clock);
        timed.push((*clock, record));
    }
    timed.sort_by_cached_key(|(clock, record)| (*clock, of_device(record), record.digest));
    timed.into_iter().map(|(_, record)| record).collect()
}

impl Trust {
    /// Takes a device's first record, if it is one and rightly signed by the key it states.
    fn admit(&mut self, record: &Record, body: &Body, verify: bool) {
        let Body::Member(member) = body else { return };
        let Ok(key) = member.key.verifying_key() else { return };
        let own = member.key.thumbprint() == record.payload.device;
        if own && (!verify || record.check(&key) == Signature::Good) {
            self.devices.entry(record.payload.device.clone()).or_insert(Standing {
                key,
                person: member.name.clone(),
                person_id: member.person,
                invented: member.invented,
                last_good: None,
                joined: None,
            });
        }
    }

    /// What is told where these keys have ended, and which have by that.
    fn under(&self, ends: &Ends, said: &[(&Record, Body)]) -> (Self, Ends) {
        let mut trust = self.clone();
        for (device, standing) in &mut trust.devices {
            standing.last_good = ends.get(device).copied();
        }
        let said = || said.iter().filter(|(record, _)| within(ends, record));
        said().for_each(|(record, body)| trust.take(record, body));
        let mut found = Ends::new();
        for (record, body) in said() {
            if let Body::Revoked(revoked) = body
                && within(&found, record)
                && let Some(last) = trust.end(record, revoked)
            {
                let end = found.entry(revoked.device.clone()).or_insert(last);
                *end = last.min(*end);
            }
        }
        (trust, found)
    }

    /// The last number of a key that counts by this revocation, if its author may revoke it: what the
    /// author had seen stands, and so does the word that gave the author a say.
    fn end(&self, record: &Record, revoked: &Revoked) -> Option<u64> {
        let (author, device) = (&record.payload.device, &revoked.device);
        if author == device {
            return Some(record.payload.seq);
        }
        let vouched = self.vouched.get(&(device.clone(), author.clone()));
        let schools = self.schools.values().filter(|school| school.by_root(record) && school.knows(device));
        let joined = schools.filter_map(|school| self.joined.get(&(device.clone(), school.id)));
        let say = vouched.into_iter().chain(joined).min()?;
        Some(record.payload.seen.get(device).copied().unwrap_or(0).max(*say))
    }

    /// Takes what a record says of people and schools.
    fn take(&mut self, record: &Record, body: &Body) {
        let (author, seq) = (&record.payload.device, record.payload.seq);
        let by_root = |school: &&mut School| school.by_root(record);
        match body {
            Body::Vouched(body) => {
                self.vouched.entry((author.clone(), body.device.clone())).or_insert(seq);
                if self.same_person(author, &body.device) {
                    self.schools.values_mut().for_each(|school| school.follow(record, &body.device));
                }
            }
            Body::SchoolFounded(body) => {
                let Some(holder) = self.devices.get(author) else { return };
                let (person, name) = (holder.person_id, holder.person.clone());
                let school = School::new(record, body.name.clone(), body.invented, person, name);
                self.schools.insert(record.digest, school);
            }
            Body::SchoolJoined(body) => {
                self.joined.entry((author.clone(), body.school)).or_insert(seq);
                let joined = Some((body.school, body.courier.clone()));
                if let Some(standing) = self.devices.get_mut(author) {
                    standing.joined = joined;
                }
            }
            Body::MemberAdmitted(body) => {
                // Who the device says it belongs to is what the root must have written.
                let person = self.devices.get(&body.device).map(|standing| standing.person_id);
                if person.is_none_or(|person| person == body.person)
                    && let Some(school) = self.schools.get_mut(&body.school).filter(by_root)
                {
                    school.admit(record, body.clone());
                }
            }
            Body::MemberEnded(body) => {
                if let Some(school) = self.schools.get_mut(&body.school).filter(by_root) {
                    school.end(record, body.person);
                }
            }
            Body::RootHanded(body) => {
                if let Some(school) = self.schools.get_mut(&body.school).filter(by_root) {
                    school.hand(record, body.to.clone());
                }
            }
            _ => {}
        }
    }
}

/// Whether a record lies before the end of its key, where that ends.
fn within(ends: &Ends, record: &Record) -> bool {
    ends.get(&record.payload.device).is_none_or(|last| record.payload.seq <= *last)
}
