//! From the jobs done: what comes off in which order, what was disturbed, and what that asks for.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::authored::{FollowUp, Job, Joint, Name};
use super::graph::{Graph, Item};
use crate::record::Interval;

/// What doing these jobs means for the engine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Plan {
    /// The jobs, in the graph's order, each once.
    pub jobs: Vec<String>,
    /// Joints undone and parts taken off, first to last.
    pub take_off: Vec<Item>,
    /// The same backwards: parts put on and joints done up.
    pub refit: Vec<Item>,
    /// All that was taken off, undone or loosened. This and all that follows is in refit order.
    pub disturbed: Disturbed,
    /// Consumables to renew.
    pub renew: Vec<String>,
    /// Tools to count back.
    pub count_tools: Vec<String>,
    /// Joints that another person must look at.
    pub independent: Vec<String>,
    /// What falls due later.
    pub follow_ups: Vec<Later>,
    /// Points to look at: of what was disturbed, then of the jobs, then those of every job.
    pub points: Vec<String>,
    /// Joints with a torque.
    pub torque: Vec<Tightening>,
    /// Disturbed joints that no point looks at.
    pub without_point: Vec<String>,
}

/// What was disturbed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Disturbed {
    /// Parts that were off.
    pub parts: Vec<String>,
    /// Joints that were undone or loosened.
    pub joints: Vec<String>,
}

/// What must be looked at again later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Subject {
    /// A joint.
    Joint(String),
    /// A point.
    Point(String),
}

/// A follow-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Later {
    /// Its id.
    pub id: String,
    /// What it is about.
    pub what: Subject,
    /// The jobs that fulfil it.
    pub by: Vec<String>,
    /// After how much; whichever comes first.
    pub after: Interval,
}

/// A joint to tighten to a torque.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Tightening {
    /// The joint.
    pub joint: String,
    /// The band of the data sheet.
    pub band: String,
    /// The value of the data sheet that tells how many fasteners.
    pub count: Option<String>,
}

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PlanFault {
    /// No job was named.
    #[error("no job is named; the jobs are {}", known.join(", "))]
    NoJob {
        /// Those there are.
        known: Vec<String>,
    },
    /// A job that this engine doesn't have.
    #[error("there is no job `{job}`; the jobs are {}", known.join(", "))]
    UnknownJob {
        /// As named.
        job: String,
        /// Those there are.
        known: Vec<String>,
    },
}

/// Plans the jobs. Their order and repetition don't matter.
///
/// # Errors
/// [`PlanFault`].
pub fn plan(graph: &Graph, jobs: &[&str]) -> Result<Plan, PlanFault> {
    let file = &graph.file;
    let known = || file.job.iter().map(|job| job.id.as_str().to_owned()).collect();
    if jobs.is_empty() {
        return Err(PlanFault::NoJob { known: known() });
    }
    if let Some(job) = jobs.iter().find(|wanted| file.job.iter().all(|job| job.id != ***wanted)) {
        return Err(PlanFault::UnknownJob { job: (*job).to_owned(), known: known() });
    }
    let done: Vec<&Job> = file.job.iter().filter(|job| jobs.contains(&job.id.as_str())).collect();
    let named = done.iter().flat_map(|job| job.off.iter().chain(&job.loosened)).map(Name::as_str);
    let take_off = graph.closure(named);
    let refit: Vec<Item> = take_off.iter().rev().cloned().collect();
    let joints: Vec<&Joint> = refit
        .iter()
        .filter_map(|item| match item {
            Item::Joint(id) => graph.joint(id),
            Item::Part(_) => None,
        })
        .collect();
    let own = refit.iter().flat_map(|item| match item {
        Item::Part(id) => graph.part(id).map_or(&[][..], |part| &part.points),
        Item::Joint(id) => graph.joint(id).map_or(&[][..], |joint| &joint.points),
    });
    let points = own.chain(done.iter().flat_map(|job| &job.points)).chain(&file.points);
    let ids = |joints: &[&Joint]| joints.iter().map(|joint| joint.id.as_str().to_owned()).collect();
    let only = |want: fn(&Joint) -> bool| joints.iter().copied().filter(|j| want(j)).collect::<Vec<_>>();
    Ok(Plan {
        jobs: once(done.iter().map(|job| &job.id)),
        disturbed: Disturbed {
            parts: refit.iter().filter(|item| matches!(item, Item::Part(_))).map(id).collect(),
            joints: ids(&joints),
        },
        renew: once(joints.iter().flat_map(|joint| &joint.renew)),
        count_tools: once(joints.iter().flat_map(|joint| &joint.tools)),
        independent: ids(&only(|joint| joint.critical)),
        follow_ups: follow_ups(graph, &done, &joints),
        points: once(points),
        torque: joints.iter().filter_map(|joint| tightening(joint)).collect(),
        without_point: ids(&only(|joint| joint.points.is_empty())),
        take_off,
        refit,
    })
}

fn id(item: &Item) -> String {
    item.id().to_owned()
}

/// Names in their first places.
fn once<'a>(names: impl IntoIterator<Item = &'a Name>) -> Vec<String> {
    let mut seen = BTreeSet::new();
    names.into_iter().map(Name::as_str).filter(|name| seen.insert(*name)).map(str::to_owned).collect()
}

fn tightening(joint: &Joint) -> Option<Tightening> {
    Some(Tightening {
        joint: joint.id.as_str().to_owned(),
        band: joint.band.as_ref()?.as_str().to_owned(),
        count: joint.count.as_ref().map(|count| count.as_str().to_owned()),
    })
}

/// What the jobs make due. Where a job leaves a joint alone on one engine, so does its follow-up.
fn follow_ups(graph: &Graph, done: &[&Job], disturbed: &[&Joint]) -> Vec<Later> {
    let due = |later: &&FollowUp| {
        let left_alone = |name: &Name| disturbed.iter().all(|joint| joint.id != *name);
        let named = done.iter().any(|job| job.follow_ups.contains(&later.id));
        named && !later.joint.as_ref().is_some_and(left_alone)
    };
    let subject = |later: &FollowUp| {
        let joint = later.joint.as_ref().map(|joint| Subject::Joint(joint.as_str().to_owned()));
        joint.or_else(|| Some(Subject::Point(later.point.as_ref()?.as_str().to_owned())))
    };
    graph
        .file
        .follow_up
        .iter()
        .filter(due)
        .filter_map(|later| {
            Some(Later {
                id: later.id.as_str().to_owned(),
                what: subject(later)?,
                by: once(&later.by),
                after: later.after,
            })
        })
        .collect()
}
