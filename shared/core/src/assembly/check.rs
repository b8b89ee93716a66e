//! What can be wrong in a graph by itself.

use std::collections::{BTreeMap, BTreeSet};

use petgraph::algo::kosaraju_scc;
use petgraph::graph::NodeIndex;

use super::authored::{FollowUp, GraphFile, Job, Joint, Name, Part};
use super::graph::{Item, Needs};
use crate::record::Interval;
use crate::words::{ID_HINT, is_id};

/// A fault at a byte offset.
#[derive(Debug, PartialEq)]
pub(super) struct At {
    pub at: usize,
    pub what: String,
    pub hint: &'static str,
}

pub(super) fn at(name: &Name, what: String, hint: &'static str) -> At {
    At { at: name.at(), what, hint }
}

/// Every fault of a file.
pub(super) fn faults_of(file: &GraphFile) -> Vec<At> {
    let mut faults = names(file);
    let known = Known::of(file);
    if file.serves.is_empty() {
        let what = "serves no engine".to_owned();
        faults.push(At { at: 0, what, hint: "name the data sheets of the engines that are built so" });
    }
    faults.extend(file.part.iter().flat_map(|part| known.part(part)));
    faults.extend(file.joint.iter().flat_map(|joint| known.joint(joint)));
    faults.extend(file.follow_up.iter().flat_map(|later| known.follow_up(later, file)));
    faults.extend(file.job.iter().flat_map(|job| known.job(job)));
    faults.extend(cycles(file));
    faults
}

/// Ids that are none, or that are there twice.
fn names(file: &GraphFile) -> Vec<At> {
    let mut faults = Vec::new();
    let parts = file.part.iter().map(|part| &part.id);
    let items: Vec<&Name> = parts.chain(file.joint.iter().map(|joint| &joint.id)).collect();
    let jobs: Vec<&Name> = file.job.iter().map(|job| &job.id).collect();
    let later: Vec<&Name> = file.follow_up.iter().map(|later| &later.id).collect();
    let engines: Vec<&Name> = file.serves.iter().collect();
    for ids in [items, jobs, later, engines] {
        let mut seen = BTreeSet::new();
        for id in ids {
            if !is_id(id.as_str()) {
                faults.push(at(id, format!("`{}` is not an id", id.as_str()), ID_HINT));
            }
            if !seen.insert(id.as_str()) {
                faults.push(at(id, format!("`{}` is there twice", id.as_str()), "rename one"));
            }
        }
    }
    let used = file.joint.iter().flat_map(|joint| joint.renew.iter().chain(&joint.tools));
    let wrong = used.filter(|name| !is_id(name.as_str()));
    faults.extend(wrong.map(|name| at(name, format!("`{}` is not an id", name.as_str()), ID_HINT)));
    faults
}

/// The names there are.
struct Known<'a> {
    parts: BTreeSet<&'a str>,
    joints: BTreeSet<&'a str>,
    jobs: BTreeSet<&'a str>,
    later: BTreeSet<&'a str>,
}

impl<'a> Known<'a> {
    fn of(file: &'a GraphFile) -> Self {
        Self {
            parts: file.part.iter().map(|part| part.id.as_str()).collect(),
            joints: file.joint.iter().map(|joint| joint.id.as_str()).collect(),
            jobs: file.job.iter().map(|job| job.id.as_str()).collect(),
            later: file.follow_up.iter().map(|later| later.id.as_str()).collect(),
        }
    }

    fn part(&self, part: &Part) -> Vec<At> {
        dangling(&part.after, &self.parts, &format!("part `{}`", part.id.as_str()), "part")
    }

    fn joint(&self, joint: &Joint) -> Vec<At> {
        let of = format!("joint `{}`", joint.id.as_str());
        let mut faults = dangling(&joint.parts, &self.parts, &of, "part");
        faults.extend(dangling(&joint.after, &self.parts, &of, "part"));
        let joined: BTreeSet<_> = joint.parts.iter().map(Name::as_str).collect();
        if joined.len() < 2 {
            let what = format!("{of} joins fewer than two parts");
            faults.push(at(&joint.id, what, "name the parts that meet there"));
        }
        faults
    }

    fn job(&self, job: &Job) -> Vec<At> {
        let of = format!("job `{}`", job.id.as_str());
        let mut faults = dangling(&job.off, &self.parts, &of, "part");
        faults.extend(dangling(&job.loosened, &self.joints, &of, "joint"));
        faults.extend(dangling(&job.follow_ups, &self.later, &of, "follow-up"));
        if job.off.is_empty() && job.loosened.is_empty() {
            let hint = "name the parts that it takes off, or the joints that it loosens";
            faults.push(at(&job.id, format!("{of} disturbs nothing"), hint));
        }
        faults
    }

    fn follow_up(&self, later: &FollowUp, file: &GraphFile) -> Vec<At> {
        let of = format!("follow-up `{}`", later.id.as_str());
        let joint: Vec<Name> = later.joint.iter().cloned().collect();
        let mut faults = dangling(&joint, &self.joints, &of, "joint");
        faults.extend(dangling(&later.by, &self.jobs, &of, "job"));
        let mut own = |what: &str, hint| faults.push(at(&later.id, format!("{of} {what}"), hint));
        if later.joint.is_some() == later.point.is_some() {
            own("needs a joint or a point, one of them", "name what is to be looked at again");
        }
        if !falls_due(&later.after) {
            own(
                "never falls due",
                "say after how many tanks, hours, flights or days, each more than nothing",
            );
        }
        let again = |by: &Name| {
            let fulfilling = file.job.iter().find(|job| job.id == *by);
            fulfilling.is_some_and(|job| job.follow_ups.contains(&later.id))
        };
        if later.by.is_empty() {
            own("is fulfilled by no job", "name the jobs after which it is no longer due");
        } else if later.by.iter().all(again) {
            own(
                "never ends: each job that fulfils it makes it due again",
                "name a job that fulfils it and doesn't name it among its follow-ups",
            );
        }
        faults
    }
}

fn dangling(names: &[Name], known: &BTreeSet<&str>, of: &str, kind: &str) -> Vec<At> {
    let unknown = names.iter().filter(|name| !known.contains(name.as_str()));
    unknown
        .map(|name| {
            let what = format!("{of} names the {kind} `{}`, which isn't there", name.as_str());
            at(name, what, "look how it is spelt, or add it to this file")
        })
        .collect()
}

/// Whether an interval ends, and doesn't end at once.
fn falls_due(after: &Interval) -> bool {
    let counts = [after.flights, after.tanks, after.days];
    let given = counts.iter().flatten().count() + usize::from(after.hours.is_some());
    given > 0
        && counts.iter().flatten().all(|count| *count > 0)
        && after.hours.is_none_or(|hours| hours.is_finite() && hours > 0.0)
}

/// One fault for each knot of things that wait for one another.
fn cycles(file: &GraphFile) -> Vec<At> {
    let needs = Needs::of(file);
    let parts = file.part.iter().map(|part| &part.id);
    let names: BTreeMap<&str, &Name> =
        parts.chain(file.joint.iter().map(|joint| &joint.id)).map(|id| (id.as_str(), id)).collect();
    let mut faults = Vec::new();
    for knot in kosaraju_scc(&needs.graph) {
        let Some(cycle) = cycle_in(&needs, &knot) else { continue };
        let items: Vec<&Item> = cycle.iter().filter_map(|node| needs.graph.node_weight(*node)).collect();
        // A joint in it is what its author must look at.
        let joint = items.iter().position(|item| matches!(item, Item::Joint(_)));
        let start = joint.unwrap_or_default();
        let round: Vec<&str> =
            items.iter().cycle().skip(start).take(items.len() + 1).map(|i| i.id()).collect();
        let Some(first) = round.first().and_then(|id| names.get(id)) else { continue };
        let path = round.join("` → `");
        faults.push(if joint.is_some() {
            at(
                first,
                format!("there is no way to joint `{}`: each waits for the next, `{path}`", first.as_str()),
                "take out of an `after` what needn't be off to get there",
            )
        } else {
            at(
                first,
                format!("parts wait for one another: `{path}`"),
                "take out of an `after` the part that needn't be off before",
            )
        });
    }
    faults.sort_by_key(|fault| fault.at);
    faults
}

/// A cycle among things each of which needs every other, beginning with the first in the file.
fn cycle_in(needs: &Needs, knot: &[NodeIndex]) -> Option<Vec<NodeIndex>> {
    let inside: BTreeSet<_> = knot.iter().copied().collect();
    let mut path = vec![*inside.first()?];
    let mut places = BTreeMap::new();
    loop {
        let last = *path.last()?;
        if let Some(place) = places.insert(last, path.len() - 1) {
            path.pop();
            return Some(path.split_off(place));
        }
        // A knot of one is none, unless it waits for itself.
        path.push(needs.graph.neighbors(last).filter(|next| inside.contains(next)).min()?);
    }
}
