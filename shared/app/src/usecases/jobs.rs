//! Work on a machine: what a job disturbs, its list, its release.

use uuid::Uuid;
use witnessmark_core::assembly::{Graph, Item, Plan, plan};
use witnessmark_core::history::History;
use witnessmark_core::list::{Ask, List, ListPoint, compose};
use witnessmark_core::record::{Body, FollowUpPlanned, JobBegun, Released};
use witnessmark_core::said::Said;
use witnessmark_core::verdict::lack_said;
use witnessmark_core::work::{Job, lacks};
use witnessmark_store::Tx;

use super::walking::{DraftBody, count};
use crate::house::{House, id};
use crate::verdicts::People;
use crate::views::{JobChoice, JobPlan, JobView, MachinePage, Named, PlanItem};
use crate::{App, Fault, identity};

/// The list that is walked after a job.
const AFTER_SERVICE: &str = "after-service";

impl App {
    /// Jobs that can be done on a machine.
    ///
    /// # Errors
    /// [`Fault`]: an engine whose assembly the catalogue doesn't know.
    pub fn job_choices(&mut self, machine: String) -> Result<Vec<JobChoice>, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| {
            let history = self.house.known(tx, machine)?;
            let graph = self.house.graph(&history)?;
            let jobs = graph.file.job.iter().map(|job| {
                let id = format!("job-{}", job.id.as_str());
                JobChoice {
                    id: job.id.as_str().to_owned(),
                    words: self.house.word(&id),
                    what: self.house.attribute(&id, "what"),
                }
            });
            Ok(jobs.collect())
        })
    }

    /// What doing these jobs means, before anything is signed.
    ///
    /// # Errors
    /// [`Fault`]: no such job.
    pub fn job_plan(&mut self, machine: String, jobs: Vec<String>) -> Result<JobPlan, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| {
            let history = self.house.known(tx, machine)?;
            let plan = self.house.planned(&history, &jobs)?;
            self.house.plan_view(&history, &plan)
        })
    }

    /// Signs that work was begun: the machine stays on the ground until it is released.
    ///
    /// # Errors
    /// [`Fault`]: no such job, other work not released yet, a wrong PIN.
    pub fn job_begin(
        &mut self,
        machine: String,
        jobs: Vec<String>,
        note: String,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let body = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let history = self.house.known(tx, machine)?;
            if let Some(open) = open_job(&history) {
                return Err(Fault::new("job-open-already").text("title", &open.body.title));
            }
            let plan = self.house.planned(&history, &jobs)?;
            Ok(Body::JobBegun(self.house.begun(&history, &plan, note.trim())?))
        };
        self.store.read(body)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body(tx)?)?;
            self.house.page(tx, machine)
        })
    }

    /// Signs that the inspections of the open job are complete. Not a legal certificate.
    ///
    /// # Errors
    /// [`Fault`]: no job open, something it still lacks, a wrong PIN.
    pub fn job_release(&mut self, machine: String, pin: String) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let body = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let history = self.house.known(tx, machine)?;
            let people = self.house.people(tx)?;
            let job = open_job(&history).ok_or_else(|| Fault::new("no-job-open"))?;
            let lacking = lacks(job, |device| people.person(device));
            if let Some(lack) = lacking.first() {
                return Err(Fault::new("job-lacks").text("lack", self.house.say(&lack_said(job, lack))));
            }
            let inspection = job.inspections.last().ok_or_else(|| Fault::new("no-job-open"))?;
            Ok(Body::Released(Released {
                job: job.record,
                inspection: inspection.record,
                second_looks: job.looks.iter().map(|look| look.record).collect(),
                service: history.service(),
            }))
        };
        self.store.read(body)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body(tx)?)?;
            self.house.page(tx, machine)
        })
    }
}

/// The job that isn't released.
pub(crate) fn open_job(history: &History) -> Option<&Job> {
    history.work.jobs.iter().find(|job| job.released.is_none())
}

impl House {
    fn graph(&self, history: &History) -> Result<&Graph, Fault> {
        let engine = history.machine.as_ref().map(|(machine, _)| machine.engine.clone()).unwrap_or_default();
        let graph = self.catalogue.graphs.get(&engine);
        graph.ok_or_else(|| Fault::new("no-assembly").text("engine", engine))
    }

    fn planned(&self, history: &History, jobs: &[String]) -> Result<Plan, Fault> {
        if jobs.is_empty() {
            return Err(Fault::new("job-missing"));
        }
        let names: Vec<&str> = jobs.iter().map(String::as_str).collect();
        plan(self.graph(history)?, &names).map_err(|fault| Fault::new("no-such-job").text("why", fault))
    }

    /// A job as it would be begun, and its list: for the demonstration's story.
    pub(crate) fn job_told(&self, history: &History, jobs: &[String]) -> Result<(JobBegun, List), Fault> {
        let plan = self.planned(history, jobs)?;
        let list = self.after_job(history, &plan.jobs, &plan.points)?;
        Ok((self.begun(history, &plan, "")?, list))
    }

    fn joint_words(&self, joint: &str) -> String {
        self.word(&format!("joint-{joint}"))
    }

    fn begun(&self, history: &History, plan: &Plan, note: &str) -> Result<JobBegun, Fault> {
        let title: Vec<String> = plan.jobs.iter().map(|job| self.word(&format!("job-{job}"))).collect();
        // What the list really holds for this machine: its release asks for all of that.
        let list = self.after_job(history, &plan.jobs, &plan.points)?;
        Ok(JobBegun {
            jobs: plan.jobs.clone(),
            title: title.join(", "),
            disturbed: plan
                .disturbed
                .joints
                .iter()
                .map(|joint| (joint.clone(), self.joint_words(joint)))
                .collect(),
            points: list.points().map(|point| point.id.clone()).collect(),
            independent: plan.independent.clone(),
            follow_ups: plan
                .follow_ups
                .iter()
                .map(|later| FollowUpPlanned {
                    id: later.id.clone(),
                    title: self.word(&format!("follow-up-{}", later.id)),
                    by: later.by.clone(),
                    after: later.after,
                })
                .collect(),
            service: history.service(),
            note: note.to_owned(),
        })
    }

    fn plan_view(&self, history: &History, plan: &Plan) -> Result<JobPlan, Fault> {
        let item = |item: &Item| match item {
            Item::Part(id) => {
                PlanItem { id: id.clone(), words: self.word(&format!("graph-part-{id}")), joint: false }
            }
            Item::Joint(id) => PlanItem { id: id.clone(), words: self.joint_words(id), joint: true },
        };
        let words = |prefix: &str, ids: &[String]| -> Vec<String> {
            ids.iter().map(|id| self.word(&format!("{prefix}-{id}"))).collect()
        };
        let later: Vec<String> = plan.follow_ups.iter().map(|later| later.id.clone()).collect();
        let list = self.after_job(history, &plan.jobs, &plan.points)?;
        Ok(JobPlan {
            take_off: plan.take_off.iter().map(item).collect(),
            refit: plan.refit.iter().map(item).collect(),
            renew: words("consumable", &plan.renew),
            count_tools: words("tool", &plan.count_tools),
            independent: words("joint", &plan.independent),
            follow_ups: words("follow-up", &later),
            points: count(list.points()),
        })
    }

    /// The open job of a machine, for its screen.
    pub(crate) fn job_view(&self, history: &History, people: &People) -> Option<JobView> {
        let job = open_job(history)?;
        let lacking = lacks(job, |device| people.person(device));
        let plan = self.planned(history, &job.body.jobs).ok();
        let named = |joint: &String| Named {
            id: joint.clone(),
            words: job.body.disturbed.get(joint).unwrap_or(joint).clone(),
        };
        Some(JobView {
            record: job.record.to_string(),
            title: job.body.title.clone(),
            since: self.say(
                &Said::new("open-since")
                    .date("day", job.at.date_naive())
                    .figures("hours", format!("{:.1}", job.body.service.hours))
                    .text("person", people.name(&job.device)),
            ),
            plan: plan.and_then(|plan| self.plan_view(history, &plan).ok()),
            lacks: lacking.iter().map(|lack| self.say(&lack_said(job, lack))).collect(),
            inspected: !job.inspections.is_empty(),
            independent: job.body.independent.iter().map(named).collect(),
            ready: lacking.is_empty(),
        })
    }

    /// The list of the open job.
    pub(crate) fn composed_after_job(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        occasion: &str,
    ) -> Result<DraftBody, Fault> {
        let history = self.known(tx, machine)?;
        let job = open_job(&history).ok_or_else(|| {
            Fault::new("occasion-needs-job").text("words", self.word(&format!("occasion-{occasion}")))
        })?;
        let list = self.after_job(&history, &job.body.jobs, &job.body.points)?;
        Ok(DraftBody { list, hours: history.hours, flights: history.flights, job: Some(job.record) })
    }

    /// Only the points that the plan names, in the order of refitting within each station; joints
    /// with a torque are tightened right before their first point.
    fn after_job(&self, history: &History, jobs: &[String], points: &[String]) -> Result<List, Fault> {
        let machinery =
            self.machinery(history).ok_or_else(|| Fault::new("engine-unknown").text("engine", ""))?;
        let mut list = compose(self.catalogue.parts(), &machinery, AFTER_SERVICE).map_err(Fault::internal)?;
        let plan = self.planned(history, jobs)?;
        let graph = self.graph(history)?;
        let place = |id: &str| points.iter().position(|point| point == id);
        for station in &mut list.stations {
            station.points.retain(|point| place(&point.id).is_some() || point.remembered.is_some());
            station.points.sort_by_key(|point| place(&point.id).unwrap_or(usize::MAX));
        }
        for tightening in plan.torque.iter().rev() {
            let Some(band) = machinery.band(&tightening.band) else { continue };
            let nuts = tightening.count.as_ref().and_then(|count| machinery.sheet.values.get(count));
            let nuts =
                nuts.and_then(|value| value.get_ref().value).map_or(1, |value| value.round().max(1.0) as u32);
            let own = graph.joint(&tightening.joint).map(|joint| &joint.points);
            let first =
                |point: &ListPoint| own.is_some_and(|own| own.iter().any(|id| id.as_str() == point.id));
            let Some((station, at)) = list.stations.iter_mut().find_map(|station| {
                let at = station.points.iter().position(first)?;
                Some((station, at))
            }) else {
                continue;
            };
            let torque = ListPoint {
                id: format!("torque-{}", tightening.joint),
                station: station.id.clone(),
                component: "engine".into(),
                must: true,
                critical: false,
                passing: false,
                drawing: "cylinder".into(),
                focus: "nuts".into(),
                caution: Some("cold-wrench".into()),
                ask: Ask::Torque { joint: tightening.joint.clone(), band, nuts },
                fills: Default::default(),
                remembered: None,
            };
            station.points.insert(at, torque);
        }
        list.stations.retain(|station| !station.points.is_empty());
        Ok(list)
    }
}
