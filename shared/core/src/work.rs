//! Work on one machine, folded: jobs from their beginning to their release and what they make
//! due later, deferrals, components, recurring items, and the log of use.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::due::Moment;
use crate::list::Meaning;
use crate::record::{
    ComponentMoved, Deferred, DeviceId, Digest, DueKept, FollowUpPlanned, Inspection, JobBegun, Record,
    Released, SecondLook, Service, TimeLogged,
};

/// Uses remembered for the rate of flying.
const LOGS_KEPT: usize = 120;

/// Second looks remembered whose job isn't told yet, or has been released.
const EARLY_KEPT: usize = 16;

/// A job from its beginning to its release.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Job {
    /// The record that began it.
    pub record: Digest,
    /// Who began it.
    pub device: DeviceId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// What was to be done.
    pub body: JobBegun,
    /// Inspections after the work, oldest first.
    pub inspections: Vec<JobInspection>,
    /// Second looks, oldest first.
    pub looks: Vec<JobLook>,
    /// Its release.
    pub released: Option<JobRelease>,
}

/// An inspection after the work, in short.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct JobInspection {
    /// The record.
    pub record: Digest,
    /// Who signed.
    pub device: DeviceId,
    /// Its number among that device's records.
    #[serde(default)]
    pub seq: u64,
    /// Mandatory points nobody looked at.
    pub missed: Vec<String>,
    /// Every point on the list, looked at or left.
    pub listed: Vec<String>,
    /// The worst that was found.
    pub worst: Meaning,
}

/// A second look.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct JobLook {
    /// The record.
    pub record: Digest,
    /// Who looked.
    pub device: DeviceId,
    /// How far they knew what others had signed.
    #[serde(default)]
    pub knew: BTreeMap<DeviceId, u64>,
    /// Joints found as they should be.
    pub good: Vec<String>,
    /// Joints found wanting.
    pub wanting: Vec<String>,
}

/// A release.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct JobRelease {
    /// The record.
    pub record: Digest,
    /// Who released.
    pub device: DeviceId,
    /// Where time in service and calendar stood.
    pub moment: Moment,
    /// What it names.
    pub body: Released,
}

/// A follow-up not yet fulfilled.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FollowUp {
    /// The release from which it counts.
    pub record: Digest,
    /// What falls due.
    pub planned: FollowUpPlanned,
    /// From when it counts.
    pub from: Moment,
}

/// A component on this machine, or taken off it last.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Component {
    /// The latest record about it here.
    pub record: Digest,
    /// What that says.
    pub body: ComponentMoved,
}

/// A recurring item with the moment before its last doing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct DueItem {
    /// The latest record.
    pub record: Digest,
    /// What that says.
    pub body: DueKept,
    /// The moment from which the doing before counted.
    pub before: Option<Moment>,
}

/// All work on one machine.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Work {
    /// Jobs open, and those last released.
    pub jobs: Vec<Job>,
    /// Second looks at jobs not told yet: the other person's phone knows of the job only what it
    /// was shown, and its clock may lie behind.
    #[serde(default)]
    pub early: Vec<(Digest, JobLook)>,
    /// What jobs made due later.
    pub follow_ups: Vec<FollowUp>,
    /// Deferrals by point: the record, its author, what it says.
    pub deferrals: BTreeMap<String, (Digest, DeviceId, Deferred)>,
    /// Components by id.
    pub components: BTreeMap<Uuid, Component>,
    /// Recurring items by id.
    pub due: BTreeMap<Uuid, DueItem>,
    /// Days of use and hours added.
    pub logs: Vec<(NaiveDate, f64)>,
    /// By torque point, the eighths of a turn of every nut at each tightening of its present
    /// series, oldest first; see [`Work::passes`].
    pub moved: BTreeMap<String, Vec<Vec<u8>>>,
}

impl Work {
    /// A job by its record.
    pub fn job(&self, record: &Digest) -> Option<&Job> {
        self.jobs.iter().find(|job| job.record == *record)
    }

    /// How the nuts of a torque point moved at the tightenings before this job's, as far as they
    /// belong to one series: a job that fulfils something that fell due (a re-torque) goes on
    /// with it, any other begins anew, since the joint was apart.
    pub fn passes(&self, job: &Job, point: &str) -> Vec<Vec<u8>> {
        let goes_on =
            self.follow_ups.iter().any(|due| due.planned.by.iter().any(|by| job.body.jobs.contains(by)));
        if goes_on { self.moved.get(point).cloned().unwrap_or_default() } else { Vec::new() }
    }

    pub(crate) fn begin(&mut self, record: &Record, body: JobBegun) {
        let (own, early) =
            std::mem::take(&mut self.early).into_iter().partition(|(job, _)| *job == record.digest);
        self.early = early;
        let own: Vec<(Digest, JobLook)> = own;
        self.jobs.push(Job {
            record: record.digest,
            device: record.payload.device.clone(),
            at: record.payload.at,
            body,
            inspections: Vec::new(),
            looks: own.into_iter().map(|(_, look)| look).collect(),
            released: None,
        });
    }

    pub(crate) fn inspected(&mut self, record: &Record, body: &Inspection) {
        if let Some(job) = body.job.as_ref().and_then(|record| self.job(record)).cloned() {
            let tightened = body.findings.iter().filter_map(|f| Some((&f.point, f.torque.as_ref()?)));
            for (point, torque) in tightened {
                let mut passes = self.passes(&job, point);
                passes.push(torque.eighths.clone());
                self.moved.insert(point.clone(), passes);
            }
        }
        let Some(job) = self.open_job(body.job.as_ref()) else { return };
        job.inspections.push(JobInspection {
            record: record.digest,
            device: record.payload.device.clone(),
            seq: record.payload.seq,
            missed: body.left.iter().filter(|left| left.must).map(|left| left.title.clone()).collect(),
            listed: body
                .findings
                .iter()
                .map(|finding| finding.point.clone())
                .chain(body.left.iter().map(|left| left.point.clone()))
                .collect(),
            worst: body.findings.iter().map(|f| f.means).max().unwrap_or(Meaning::Serviceable),
        });
    }

    /// Takes a second look; of one who may give none, only what was found wanting.
    pub(crate) fn looked(&mut self, record: &Record, mut body: SecondLook, may: bool) {
        if !may {
            body.joints.retain(|seen| seen.means > Meaning::Serviceable);
        }
        let (good, wanting): (Vec<_>, Vec<_>) =
            body.joints.into_iter().partition(|seen| seen.means <= Meaning::Serviceable);
        let names = |joints: Vec<crate::record::JointSeen>| joints.into_iter().map(|j| j.joint).collect();
        let look = JobLook {
            record: record.digest,
            device: record.payload.device.clone(),
            knew: record.payload.seen.clone(),
            good: names(good),
            wanting: names(wanting),
        };
        if self.jobs.iter().all(|job| job.record != body.job) {
            self.early.push((body.job, look));
            self.early.drain(..self.early.len().saturating_sub(EARLY_KEPT));
        } else if let Some(job) = self.open_job(Some(&body.job)) {
            job.looks.push(look);
        }
    }

    /// A release that says more than the records do is none: the job stays open. So does one whose
    /// author hadn't seen a later list with something wrong in it.
    pub(crate) fn release(&mut self, record: &Record, body: Released, now: Service) {
        let day = record.payload.at.date_naive();
        // Where its author and the records count differently, what falls due counts from the less,
        // and the first flight is one after the more.
        let moment = Moment { service: body.service.most(now), day };
        let from = Moment { service: body.service.least(now), day };
        let Some(job) = self.open_job(Some(&body.job)) else { return };
        if !lacks(job, |device| Some(device.clone())).is_empty() {
            return;
        }
        job.released =
            Some(JobRelease { record: record.digest, device: record.payload.device.clone(), moment, body });
        let (done, planned) = (job.body.jobs.clone(), job.body.follow_ups.clone());
        // What this job fulfils is done; then what it makes due itself begins to count. Before the
        // engine has run, nothing can be done that is due after it has: only begun anew.
        let ran = |due: &FollowUp| {
            let (from, now) = (due.from.service, moment.service);
            let on_days = due.planned.after.by_days_alone();
            on_days || now.hours > from.hours || now.flights > from.flights || now.tanks > from.tanks
        };
        let anew = |due: &FollowUp| planned.iter().any(|planned| planned.id == due.planned.id);
        self.follow_ups.retain(|due| {
            let done = due.planned.by.iter().any(|by| done.contains(by));
            !(done && (ran(due) || anew(due)))
        });
        self.follow_ups.extend(planned.into_iter().map(|planned| FollowUp {
            record: record.digest,
            planned,
            from,
        }));
        // Of those released, only the last matters (its first flight is watched).
        let last = record.digest;
        self.jobs.retain(|job| job.released.as_ref().is_none_or(|released| released.record == last));
    }

    pub(crate) fn defer(&mut self, record: &Record, body: Deferred) {
        self.deferrals.insert(body.point.clone(), (record.digest, record.payload.device.clone(), body));
    }

    pub(crate) fn move_component(&mut self, record: &Record, body: ComponentMoved) {
        self.components.insert(body.component, Component { record: record.digest, body });
    }

    pub(crate) fn keep_due(&mut self, record: &Record, body: DueKept) {
        if body.ended {
            self.due.remove(&body.item);
            return;
        }
        let before = self.due.get(&body.item).and_then(|item| {
            let done = Moment { service: item.body.done, day: item.body.done_on };
            // Only a new doing moves the moment before; a changed title doesn't.
            if item.body.done == body.done && item.body.done_on == body.done_on {
                item.before
            } else {
                Some(crate::due::counts_from(&item.body, item.before.as_ref())).or(Some(done))
            }
        });
        self.due.insert(body.item, DueItem { record: record.digest, body, before });
    }

    pub(crate) fn log(&mut self, day: NaiveDate, body: &TimeLogged) {
        if body.added.hours > 0.0 {
            self.logs.push((day, body.added.hours));
            let over = self.logs.len().saturating_sub(LOGS_KEPT);
            self.logs.drain(..over);
        }
    }

    /// Time in service was corrected to less: nothing that counts from a moment may count from one
    /// that hasn't come yet, or it would fall due too late by all that was taken back.
    pub(crate) fn taken_back(&mut self, now: Service) {
        let moments = self.follow_ups.iter_mut().map(|due| &mut due.from);
        let released = self.jobs.iter_mut().filter_map(|job| Some(&mut job.released.as_mut()?.moment));
        for moment in moments.chain(released).chain(self.due.values_mut().filter_map(|i| i.before.as_mut())) {
            moment.service = moment.service.least(now);
        }
        for item in self.due.values_mut() {
            item.body.done = item.body.done.least(now);
        }
        for component in self.components.values_mut() {
            component.body.service = component.body.service.least(now);
        }
    }

    fn open_job(&mut self, record: Option<&Digest>) -> Option<&mut Job> {
        let record = record?;
        self.jobs.iter_mut().find(|job| job.record == *record && job.released.is_none())
    }
}

impl Component {
    /// The component's own time in service when the machine's stands at `service`.
    pub fn own(&self, service: &Service) -> Service {
        let body = &self.body;
        if !body.fitted {
            return body.own;
        }
        body.own
            + Service {
                hours: (service.hours - body.service.hours).max(0.0),
                flights: service.flights.saturating_sub(body.service.flights),
                tanks: service.tanks.saturating_sub(body.service.tanks),
            }
    }
}

/// What a job still lacks before it may be released.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(tag = "lack", rename_all = "kebab-case")]
pub enum Lack {
    /// Nobody has signed its list.
    Inspection,
    /// Mandatory points of the latest list were left out.
    Points {
        /// Their titles.
        titles: Vec<String>,
    },
    /// Something unserviceable was found.
    Found,
    /// A critical joint that another person hasn't looked at since the latest list.
    SecondLook {
        /// The joint.
        joint: String,
    },
    /// A second person found a joint wanting.
    Wanting {
        /// The joint.
        joint: String,
    },
}

/// What a job lacks. `person` tells whose device it is: the second look counts only from another
/// person than the one who began the work and the one who signed its list, and only after that list; an
/// unknown person is never another, nor is anybody another than an unknown one.
pub fn lacks<P: PartialEq>(job: &Job, person: impl Fn(&DeviceId) -> Option<P>) -> Vec<Lack> {
    let Some(inspection) = job.inspections.last() else { return vec![Lack::Inspection] };
    let mut lacks = Vec::new();
    let whole = job.body.points.iter().all(|point| inspection.listed.contains(point));
    if !inspection.missed.is_empty() || !whole {
        lacks.push(Lack::Points { titles: inspection.missed.clone() });
    }
    if inspection.worst == Meaning::Unserviceable {
        lacks.push(Lack::Found);
    }
    let first = [person(&job.device), person(&inspection.device)];
    let another = |look: &&JobLook| {
        let own = job.device == look.device || inspection.device == look.device;
        let after = look.knew.get(&inspection.device).is_some_and(|seen| *seen >= inspection.seq);
        let other = |second: P| first.iter().all(|one| one.as_ref().is_some_and(|one| *one != second));
        after && !own && person(&look.device).is_some_and(other)
    };
    for joint in &job.body.independent {
        let latest = job
            .looks
            .iter()
            .filter(another)
            .rfind(|look| look.good.contains(joint) || look.wanting.contains(joint));
        match latest {
            None => lacks.push(Lack::SecondLook { joint: joint.clone() }),
            Some(look) if look.wanting.contains(joint) => {
                lacks.push(Lack::Wanting { joint: joint.clone() });
            }
            Some(_) => {}
        }
    }
    lacks
}
