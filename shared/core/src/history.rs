//! What the records of one machine say, folded: its description, what was found, what is open.
//!
//! Order comes from the records' causal clocks, ties from device and number, so every device
//! folds the same records to the same history. What one author hadn't seen, they can't have
//! cleared: a rectification or a clean look closes only the sightings its author knew of.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::flight::Burned;
use crate::list::{Meaning, Rememberance, ResolvedBand, Source, Sourced};
use crate::record::{
    Body, Clock, Correction, Deferred, DeviceId, Digest, FlightPlanned, Inspection, Left, LimitConfirmed,
    Machine, Record, Right, Service, TimeLogged, Trust, registers,
};

use crate::units::{Quantity, Unit};
use crate::work::Work;

/// The list that must be signed on the day of flying.
pub const BEFORE_FLIGHT: &str = "before-flight";

/// One sighting of something wrong at a point.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sighting {
    /// The record that says so.
    pub record: Digest,
    /// Who says so.
    pub device: DeviceId,
    seq: u64,
    /// Watch or unserviceable.
    pub means: Meaning,
    /// Whether a later look alone clears it.
    pub passing: bool,
    /// What was to be looked at.
    pub title: String,
    /// In the words of then.
    pub words: String,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Engine hours then.
    pub hours: f64,
}

/// Something open at a point: a defect if any sighting of it was unserviceable, else a watch item.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Open {
    /// The point.
    pub point: String,
    /// All sightings not cleared, oldest first; never empty.
    pub sightings: Vec<Sighting>,
}

impl Open {
    /// The worst that was seen.
    pub fn means(&self) -> Meaning {
        self.sightings.iter().map(|s| s.means).max().unwrap_or(Meaning::Unserviceable)
    }

    /// Whether a later clean look clears all of it: the day, the pilot, a buckle.
    pub fn passing(&self) -> bool {
        self.sightings.iter().all(|s| s.passing)
    }

    /// The latest sighting of the worst kind: what a person is told.
    pub fn leading(&self) -> Option<&Sighting> {
        let worst = self.means();
        self.sightings.iter().rev().find(|s| s.means == worst)
    }
}

/// An inspection in short: what the verdict needs of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Look {
    /// The record.
    pub record: Digest,
    /// When it was signed.
    pub at: DateTime<FixedOffset>,
    /// Which list.
    pub occasion: String,
    /// Flights at the time.
    pub flights: u32,
    /// Points nobody looked at.
    pub left: Vec<Left>,
}

/// One machine's history. Small however many records it is folded from, so that it can be
/// kept beside the log and taken further one record at a time.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct History {
    /// Its latest description, and the record it came in.
    pub machine: Option<(Machine, Digest)>,
    /// The latest full look before flight and those signed after it, oldest first.
    pub looks: Vec<Look>,
    /// What is open, by point.
    pub open: Vec<Open>,
    /// Limits confirmed by the owner, by band, each with the record.
    pub confirmed: BTreeMap<String, (ResolvedBand, Digest)>,
    /// Records of kinds that this version doesn't know, or whose body it can't read.
    pub unknown: Vec<(String, Digest)>,
    /// The latest wall clock among the records.
    pub latest: Option<DateTime<FixedOffset>>,
    /// Engine hours as last stated.
    pub hours: f64,
    /// Flights as last stated.
    pub flights: u32,
    /// Tanks of fuel used up, as logged.
    pub tanks: u32,
    /// The device that registered the machine: its person decides on it where no school does.
    pub registered_by: Option<DeviceId>,
    /// The school whose roles decide on it.
    #[serde(default)]
    pub school: Option<Digest>,
    /// Work on it.
    pub work: Work,
    /// Time logged since a reading was last stated, so that one who states it anew without having seen
    /// it doesn't take it back.
    #[serde(default)]
    pub logged: Vec<Logged>,
    /// The flight prepared last, and the record it came in; none while nobody has signed it.
    #[serde(default)]
    pub flight: Option<(FlightPlanned, Option<Digest>)>,
    /// What the latest flights burned, oldest first, where that was measured.
    #[serde(default)]
    pub burns: Vec<Burnt>,
    /// Engine hours at the last look at each component.
    #[serde(default)]
    pub looked: BTreeMap<String, f64>,
    /// The last record folded: only a later one may be taken without folding anew.
    pub upto: Option<Place>,
}

/// Time in service that one record added.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Logged {
    device: DeviceId,
    seq: u64,
    added: Service,
}

/// Entries of [`History::logged`] that are kept.
const LOGGED_KEPT: usize = 200;

/// Fuel burned in one flight.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Burnt {
    /// When.
    pub day: NaiveDate,
    /// Engine hours after it.
    pub hours: f64,
    /// How much in how long.
    pub burned: Burned,
    /// The record that says so; none while nobody has signed it.
    #[serde(default)]
    pub record: Option<Digest>,
}

/// Entries of [`History::burns`] that are kept.
const BURNS_KEPT: usize = 100;

/// A record by which the machine is under a school.
type Enrolled<'a> = (&'a Record, Digest);

/// A record's place in the order in which all devices fold.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Place(Clock, DeviceId, u64, Digest);

impl Place {
    /// Where this record stands.
    pub fn of(record: &Record) -> Self {
        let payload = &record.payload;
        Self(payload.clock, payload.device.clone(), payload.seq, record.digest)
    }

    /// Its causal time.
    pub fn clock(&self) -> Clock {
        self.0
    }
}

impl History {
    /// Folds the records about one machine. Their signatures have been checked before; `trust` tells
    /// which still count, and what their authors may do.
    pub fn of<'a>(machine: Uuid, records: impl IntoIterator<Item = &'a Record>, trust: &Trust) -> Self {
        let mut records: Vec<&Record> =
            records.into_iter().filter(|r| r.payload.machine == Some(machine)).collect();
        records.sort_by_cached_key(|record| Place::of(record));
        records.dedup_by_key(|record| record.digest);
        let (history, enrolled) = Self::folded(&records, trust, &[]);
        if enrolled.is_empty() { history } else { Self::folded(&records, trust, &enrolled).0 }
    }

    /// Folds records in their order; gives those too by which the machine is under a school.
    fn folded<'a>(
        records: &[&'a Record],
        trust: &Trust,
        ahead: &[Enrolled<'a>],
    ) -> (Self, Vec<Enrolled<'a>>) {
        let (mut history, mut enrolled) = (Self::default(), Vec::new());
        for record in records {
            history.take_before(record, trust, ahead);
            if record.payload.kind == "machine-enrolled"
                && let Some(school) = history.school
            {
                enrolled.push((*record, school));
            }
        }
        (history, enrolled)
    }

    /// What the next list must ask again, by point.
    pub fn remembered(&self) -> BTreeMap<String, Rememberance> {
        self.open
            .iter()
            .filter_map(|open| {
                let leading = open.leading()?;
                Some((
                    open.point.clone(),
                    Rememberance {
                        means: leading.means,
                        words: leading.words.clone(),
                        record: leading.record,
                        hours: leading.hours,
                    },
                ))
            })
            .collect()
    }

    /// What is open at a point.
    pub fn open_at(&self, point: &str) -> Option<&Open> {
        self.open.iter().find(|open| open.point == point)
    }

    /// Takes one more record. It must stand after all those folded before (see [`History::upto`]); one by
    /// which the machine comes under a school judges those before it too, so fold anew with it.
    ///
    /// Whoever has no right to a thing can make the verdict only more careful: what they found wrong
    /// is taken, what they found right is not.
    pub fn take(&mut self, record: &Record, trust: &Trust) {
        self.take_before(record, trust, &[]);
    }

    /// The same where it is known how the machine comes under schools later.
    fn take_before(&mut self, record: &Record, trust: &Trust, ahead: &[Enrolled<'_>]) {
        self.upto = Some(Place::of(record));
        if !trust.counts(record) {
            return;
        }
        self.latest = self.latest.max(Some(record.payload.at));
        if registers(record) {
            self.begins(&record.payload.device);
        }
        let over = self.school.or_else(|| school_ahead(record, ahead));
        let may = |right| self.may_under(over, record, trust, right);
        match record.payload.typed() {
            Ok(Body::Machine(machine)) if may(Right::Work) => {
                // The latest word holds, also where it takes a slip of the pen back.
                let unseen = self.unseen(record);
                self.hours = (machine.hours + unseen.hours).min(f64::MAX);
                self.flights = machine.flights.saturating_add(unseen.flights);
                self.machine = Some((machine, record.digest));
                self.taken_back();
                self.registered_by.get_or_insert_with(|| record.payload.device.clone());
            }
            Ok(Body::Inspection(body)) if may(Right::Look) => {
                // A list after work is that work's own end.
                let work = body.job.is_none() || may(Right::Work);
                self.take_inspection(record, body, work);
            }
            Ok(Body::Inspection(body)) => self.see_wrong(record, &body),
            Ok(Body::Correction(body)) => self.take_correction(record, body),
            Ok(Body::Rectified(body)) if may(Right::Work) => {
                let about = |s: &Sighting| s.record == body.opened_by;
                if self.open_at(&body.point).is_some_and(|open| open.sightings.iter().any(about)) {
                    self.clear(&body.point, record, Meaning::Unserviceable);
                }
            }
            Ok(Body::LimitConfirmed(body)) if may(Right::Work) => self.take_limit(record, body),
            Ok(Body::TimeLogged(body)) if may(Right::Look) => self.take_time(record, body),
            Ok(Body::FlightPlanned(body)) if may(Right::Look) => {
                self.flight = Some((*body, Some(record.digest)))
            }
            Ok(Body::JobBegun(body)) => self.work.begin(record, body),
            Ok(Body::SecondLook(body)) => {
                let second = may(Right::SecondLook);
                self.work.looked(record, body, second);
            }
            Ok(Body::Released(body)) if may(Right::Work) => {
                let now = self.service();
                self.work.release(record, body, now);
            }
            Ok(Body::Deferred(body)) if may(Right::Defer) => self.take_deferral(record, body),
            Ok(Body::ComponentMoved(body)) if may(Right::Work) => self.work.move_component(record, body),
            Ok(Body::DueKept(body)) if may(Right::Work) => self.work.keep_due(record, body),
            Ok(Body::MachineEnrolled(body)) => self.enrol(record, trust, body.school),
            Ok(Body::Unknown { kind, .. }) => self.unknown.push((kind, record.digest)),
            Ok(_) => {}
            Err(_) => self.unknown.push((record.payload.kind.clone(), record.digest)),
        }
    }

    /// Whether a record's author has a right over this machine, as far as folded: by the school's
    /// roles where it is under a school; else everybody has, but only its owner lets a defect wait.
    pub fn may(&self, record: &Record, trust: &Trust, right: Right) -> bool {
        self.may_under(self.school, record, trust, right)
    }

    fn may_under(&self, over: Option<Digest>, record: &Record, trust: &Trust, right: Right) -> bool {
        let own = self.owns(&record.payload.device, trust);
        match &over {
            _ if !in_time(record) => false,
            None => own || right != Right::Defer,
            // A school of which nothing is known here has no members.
            Some(school) => {
                let role = trust.school(school).and_then(|school| school.role(record));
                role.is_some_and(|role| role.gives(right, own))
            }
        }
    }

    /// Whether a device could have this right over the machine if it wrote a record on this day.
    pub fn may_on(&self, day: NaiveDate, device: &DeviceId, trust: &Trust, right: Right) -> bool {
        let own = self.owns(device, trust);
        match &self.school {
            None => own || right != Right::Defer,
            Some(school) => trust.role_on(school, device, day).is_some_and(|role| role.gives(right, own)),
        }
    }

    /// Whether a device is its owner's: nobody's before it is registered.
    pub fn owns(&self, device: &DeviceId, trust: &Trust) -> bool {
        self.registered_by.as_ref().is_some_and(|owner| trust.same_person(owner, device))
    }

    /// The machine begins here. What was signed of it before can't have been: only what was found wrong
    /// stays, and second looks, whose authors' clocks may lie behind.
    fn begins(&mut self, owner: &DeviceId) {
        *self = Self {
            registered_by: Some(owner.clone()),
            open: std::mem::take(&mut self.open),
            unknown: std::mem::take(&mut self.unknown),
            work: Work { early: std::mem::take(&mut self.work.early), ..Work::default() },
            upto: self.upto.take(),
            latest: self.latest,
            ..Self::default()
        };
    }

    fn enrol(&mut self, record: &Record, trust: &Trust, school: Option<Digest>) {
        if !in_time(record) {
            return;
        }
        let own = self.owns(&record.payload.device, trust);
        let root = self.school.and_then(|id| trust.school(&id)).is_some_and(|school| school.by_root(record));
        // Into a school goes only a member's machine; out of it, its owner or the root takes it.
        let taken = match school {
            None => own || root,
            Some(id) => own && trust.school(&id).is_some_and(|school| school.role(record).is_some()),
        };
        if taken {
            self.school = school;
        }
    }

    /// Time in service as last stated.
    pub fn service(&self) -> Service {
        Service { hours: self.hours, flights: self.flights, tanks: self.tanks }
    }

    /// Counts what waits for its author's own signature: time logged, a flight prepared.
    pub fn expect_signed(&mut self, day: NaiveDate, body: &Body) {
        match body {
            Body::TimeLogged(body) => self.log_time(day, body, None),
            Body::FlightPlanned(body) => self.flight = Some((body.as_ref().clone(), None)),
            _ => {}
        }
    }

    /// Counts time logged on a day.
    fn log_time(&mut self, day: NaiveDate, body: &TimeLogged, record: Option<Digest>) {
        let now = self.service() + body.added;
        self.hours = body.reading.unwrap_or(now.hours);
        self.flights = now.flights;
        self.tanks = now.tanks;
        self.work.log(day, body);
        if let Some(used) = body.fuel.filter(|_| body.added.hours > 0.0) {
            let burned = Burned { used, time: Quantity::new(body.added.hours, Unit::Hour) };
            self.burns.push(Burnt { day, hours: self.hours, burned, record });
            self.burns.drain(..self.burns.len().saturating_sub(BURNS_KEPT));
        }
    }

    fn take_time(&mut self, record: &Record, mut body: TimeLogged) {
        // No engine runs backwards; a reading put right is the description's word.
        body.added.hours = body.added.hours.max(0.0);
        if let Some(reading) = &mut body.reading {
            // Hours that the reader knew of are in the reading; flights and tanks it doesn't speak of.
            for logged in &mut self.logged {
                if knew(record, &logged.device, logged.seq) {
                    logged.added.hours = 0.0;
                }
                *reading = (*reading + logged.added.hours).min(f64::MAX);
            }
        }
        self.log_time(record.payload.at.date_naive(), &body, Some(record.digest));
        let payload = &record.payload;
        let hours = if body.reading.is_some() { 0.0 } else { body.added.hours };
        let added = Service { hours, ..body.added };
        self.logged.push(Logged { device: payload.device.clone(), seq: payload.seq, added });
        self.logged.drain(..self.logged.len().saturating_sub(LOGGED_KEPT));
    }

    /// Time logged that the author of a new reading hadn't seen; the rest is in what they state.
    fn unseen(&mut self, record: &Record) -> Service {
        self.logged.retain(|logged| !knew(record, &logged.device, logged.seq));
        self.logged.iter().fold(Service::default(), |sum, logged| sum + logged.added)
    }

    /// What somebody without the right to look found wrong all the same.
    fn see_wrong(&mut self, record: &Record, body: &Inspection) {
        for finding in body.findings.iter().filter(|finding| finding.means >= Meaning::Watch) {
            let sighting = sighting(record, finding.means, &finding.title, &finding.words, body.hours);
            self.see(&finding.point, Sighting { passing: finding.passing, ..sighting });
        }
    }

    fn take_inspection(&mut self, record: &Record, body: Inspection, work: bool) {
        if work {
            self.work.inspected(record, &body);
        }
        for finding in body.findings.iter().filter(|finding| finding.means == Meaning::Serviceable) {
            self.clear(&finding.point, record, Meaning::Watch);
        }
        self.see_wrong(record, &body);
        self.looked.extend(body.findings.iter().map(|finding| (finding.component.clone(), body.hours)));
        self.looks.push(Look {
            record: record.digest,
            at: record.payload.at,
            occasion: body.occasion,
            flights: body.flights,
            left: body.left,
        });
        let full = self.looks.iter().filter(|look| look.occasion == BEFORE_FLIGHT).map(|look| look.at).max();
        self.looks.retain(|look| full.is_none_or(|full| look.at >= full));
    }

    fn take_correction(&mut self, record: &Record, body: Correction) {
        if body.means >= Meaning::Watch {
            let hours = self.hours;
            self.see(&body.point, sighting(record, body.means, &body.title, &body.words, hours));
        }
    }

    /// Who hadn't seen all that is wrong at a point can't have let it wait; what was said before
    /// doesn't hold then either.
    fn take_deferral(&mut self, record: &Record, body: Deferred) {
        let wrong = self.open_at(&body.point).map_or(&[][..], |open| &open.sightings);
        let mut wrong = wrong.iter().filter(|s| s.means == Meaning::Unserviceable);
        if wrong.all(|sighting| knew(record, &sighting.device, sighting.seq)) {
            self.work.defer(record, body);
        } else {
            self.work.deferrals.remove(&body.point);
        }
    }

    /// After a description, which may take time in service back.
    fn taken_back(&mut self) {
        let now = self.service();
        self.work.taken_back(now);
        for look in &mut self.looks {
            look.flights = look.flights.min(now.flights);
        }
        for hours in self.looked.values_mut().chain(self.burns.iter_mut().map(|burnt| &mut burnt.hours)) {
            *hours = hours.min(now.hours);
        }
    }

    fn take_limit(&mut self, record: &Record, body: LimitConfirmed) {
        let source = Source { document: body.document, page: body.page };
        let sourced = |quantity: Option<Quantity>| {
            quantity.map(|quantity| Sourced {
                value: Some(quantity.value),
                unit: quantity.unit,
                source: Some(source.clone()),
                unconfirmed: None,
            })
        };
        // Whether a life hangs on it is the data sheet's word; see `verdict` and `Machinery`.
        let band = ResolvedBand {
            name: body.band.clone(),
            critical: false,
            low: sourced(body.low),
            high: sourced(body.high),
        };
        self.confirmed.insert(body.band, (band, record.digest));
    }

    fn see(&mut self, point: &str, sighting: Sighting) {
        match self.open.iter_mut().find(|open| open.point == point) {
            Some(open) => open.sightings.push(sighting),
            None => self.open.push(Open { point: point.to_owned(), sightings: vec![sighting] }),
        }
    }

    /// Closes the sightings at a point, up to `worst`, that the record's author knew of. While one
    /// worse stands, all stand: they are one matter.
    fn clear(&mut self, point: &str, by: &Record, worst: Meaning) {
        for open in self.open.iter_mut().filter(|open| open.point == point) {
            if open.means() <= worst || open.passing() {
                open.sightings.retain(|sighting| !knew(by, &sighting.device, sighting.seq));
            }
        }
        self.open.retain(|open| !open.sightings.is_empty());
    }
}

fn sighting(record: &Record, means: Meaning, title: &str, words: &str, hours: f64) -> Sighting {
    Sighting {
        record: record.digest,
        device: record.payload.device.clone(),
        seq: record.payload.seq,
        means,
        passing: false,
        title: title.to_owned(),
        words: words.to_owned(),
        at: record.payload.at,
        hours,
    }
}

/// The school under which the machine came next, where whoever put it there hadn't seen this record:
/// with a clock set back, anybody could else speak from the time when nobody needed a right.
fn school_ahead(record: &Record, ahead: &[Enrolled<'_>]) -> Option<Digest> {
    let place = Place::of(record);
    let (by, school) = ahead.iter().find(|(by, _)| Place::of(by) > place)?;
    (!knew(by, &record.payload.device, record.payload.seq)).then_some(*school)
}

/// Whether a record's causal time is no earlier than its author's wall clock, as the clock's rule has it:
/// else it was put where it doesn't belong.
fn in_time(record: &Record) -> bool {
    let payload = &record.payload;
    u64::try_from(payload.at.timestamp_millis()).is_ok_and(|at| at <= payload.clock.ms)
        || payload.at.timestamp_millis() < 0
}

/// Whether a record's author knew a device's record of this number.
fn knew(record: &Record, device: &DeviceId, seq: u64) -> bool {
    let payload = &record.payload;
    if payload.device == *device {
        payload.seq > seq
    } else {
        payload.seen.get(device).is_some_and(|seen| *seen >= seq)
    }
}
