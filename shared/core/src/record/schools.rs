//! Schools folded from records: who was what, when. Only the root's word counts, and version
//! vectors say from which record on: a term covers a device's records after those that the root had
//! seen when it began the term, up to those it had seen when it ended it.

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use uuid::Uuid;

use super::{DeviceId, Digest, MemberAdmitted, Record, Role};

/// How far causal time may be ahead of the author's clock and still prove that the clock was set back.
const PROVES: TimeDelta = TimeDelta::days(400);

/// One device's time in one role.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Term {
    /// The record that began it.
    pub record: Digest,
    /// The device.
    pub device: DeviceId,
    /// Its holder.
    pub person: Uuid,
    /// What the holder is called.
    pub name: String,
    /// As what.
    pub role: Role,
    /// The first day.
    pub from: NaiveDate,
    /// The last day; none for an open end.
    pub until: Option<NaiveDate>,
    after: u64,
    upto: Option<u64>,
}

impl Term {
    /// Whether neither an end nor another role has followed.
    pub fn stands(&self) -> bool {
        self.upto.is_none()
    }

    fn on(&self, day: NaiveDate) -> bool {
        day >= self.from && self.until.is_none_or(|until| day <= until)
    }
}

/// One school as the records tell it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct School {
    /// The digest of its founding record.
    pub id: Digest,
    /// What people call it.
    pub name: String,
    /// Whether it is the invented school of the demonstration.
    pub invented: bool,
    /// All terms, oldest first.
    pub terms: Vec<Term>,
    /// The device that admits and ends members now.
    pub root: DeviceId,
    /// The first of its numbers that count as the root's.
    root_from: u64,
    /// Former roots, each with the first and last of its numbers that count.
    former: Vec<(DeviceId, u64, u64)>,
}

impl School {
    pub(super) fn new(record: &Record, name: String, invented: bool, person: Uuid, holder: String) -> Self {
        let device = record.payload.device.clone();
        let root = Term {
            record: record.digest,
            device: device.clone(),
            person,
            name: holder,
            role: Role::Instructor,
            from: record.payload.at.date_naive(),
            until: None,
            after: 0,
            upto: None,
        };
        let root_from = record.payload.seq;
        Self {
            id: record.digest,
            name,
            invented,
            terms: vec![root],
            root: device,
            root_from,
            former: Vec::new(),
        }
    }

    /// Whether a record was written by the root of its time.
    pub fn by_root(&self, record: &Record) -> bool {
        let payload = &record.payload;
        let former = self.former.iter().any(|(device, first, last)| {
            *device == payload.device && (*first..=*last).contains(&payload.seq)
        });
        former || (self.root == payload.device && payload.seq >= self.root_from)
    }

    /// What the author of a record was in this school when writing it. Wall clocks lie: the day is
    /// the later of what the author's clock says and what causal time proves. Causal time can be far
    /// ahead too, since one phone set to another year drags all others along; so far it proves nothing.
    pub fn role(&self, record: &Record) -> Option<Role> {
        let payload = &record.payload;
        let said = payload.at.date_naive();
        let proved = i64::try_from(payload.clock.ms).ok().and_then(DateTime::<Utc>::from_timestamp_millis);
        let proved = proved.map(|proved| proved.date_naive()).filter(|day| *day - said <= PROVES);
        let latest = proved.map_or(said, |proved| said.max(proved));
        self.terms
            .iter()
            .find(|term| {
                term.device == payload.device
                    && payload.seq > term.after
                    && term.upto.is_none_or(|upto| payload.seq <= upto)
            })
            .filter(|term| said >= term.from && term.until.is_none_or(|until| latest <= until))
            .map(|term| term.role)
    }

    /// What a device is in this school on a day, all known.
    pub fn role_on(&self, device: &DeviceId, day: NaiveDate) -> Option<Role> {
        self.standing_term(device).filter(|term| term.on(day)).map(|term| term.role)
    }

    /// The term of a device that stands.
    pub fn standing_term(&self, device: &DeviceId) -> Option<&Term> {
        self.terms.iter().find(|term| term.device == *device && term.stands())
    }

    /// Whether a device ever had a place here.
    pub fn knows(&self, device: &DeviceId) -> bool {
        self.terms.iter().any(|term| term.device == *device)
    }

    /// Devices whose records this school judges otherwise than `other`, an earlier or later state of it.
    pub(super) fn differs(&self, other: Option<&Self>) -> Vec<DeviceId> {
        let terms = self.terms.iter().filter(|term| other.is_none_or(|other| !other.terms.contains(term)));
        let terms = terms.map(|term| term.device.clone());
        let roots = |school: &Self| (school.root.clone(), school.root_from, school.former.clone());
        let former = self.former.iter().map(|(device, ..)| device.clone()).chain([self.root.clone()]);
        let moved = other.is_none_or(|other| roots(other) != roots(self));
        terms.chain(former.filter(|_| moved)).collect()
    }

    pub(super) fn admit(&mut self, record: &Record, body: MemberAdmitted) {
        self.end_terms(record, |term| term.device == body.device);
        self.terms.push(Term {
            record: record.digest,
            after: seen(record, &body.device),
            device: body.device,
            person: body.person,
            name: body.name,
            role: body.role,
            from: body.from,
            until: body.until,
            upto: None,
        });
    }

    /// A member's other device has what the member has.
    pub(super) fn follow(&mut self, record: &Record, device: &DeviceId) {
        let Some(term) = self.standing_term(&record.payload.device).cloned() else { return };
        if self.standing_term(device).is_none() {
            let after = seen(record, device);
            let record = record.digest;
            self.terms.push(Term { record, device: device.clone(), after, upto: None, ..term });
        }
    }

    pub(super) fn end(&mut self, record: &Record, person: Uuid) {
        // A school is never without its root: that one hands over first.
        let root = self.root.clone();
        self.end_terms(record, |term| term.person == person && term.device != root);
    }

    pub(super) fn hand(&mut self, record: &Record, to: DeviceId) {
        if self.standing_term(&to).is_none() {
            return;
        }
        let from = seen(record, &to).saturating_add(1);
        let before = std::mem::replace(&mut self.root, to);
        self.former.push((before, self.root_from, record.payload.seq));
        self.root_from = from;
    }

    fn end_terms(&mut self, by: &Record, which: impl Fn(&Term) -> bool) {
        for term in self.terms.iter_mut().filter(|term| term.stands() && which(term)) {
            term.upto = Some(seen(by, &term.device));
        }
    }
}

/// How much of a device the author of a record had seen.
fn seen(record: &Record, device: &DeviceId) -> u64 {
    let payload = &record.payload;
    if payload.device == *device { payload.seq } else { payload.seen.get(device).copied().unwrap_or(0) }
}
