//! Laws of plans, on random graphs. The laws follow from what taking apart is; their statement
//! is ours (from memory of graph theory: ancestors, topological order).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use proptest::collection::vec;
use proptest::prelude::*;
use witnessmark_core::assembly::{Graph, Plan, plan, read_graph};

/// A thing of a random graph. Its place in the list is an order in which all can be taken apart.
#[derive(Clone, Debug)]
struct Thing {
    part: bool,
    /// Parts that must be off before.
    after: BTreeSet<usize>,
    /// Parts that the joint joins.
    joins: BTreeSet<usize>,
    critical: bool,
    point: bool,
}

#[derive(Clone, Debug)]
struct Built {
    things: Vec<Thing>,
    /// What each job names.
    jobs: Vec<BTreeSet<usize>>,
    /// The order in which the author happens to write.
    written: Vec<usize>,
}

prop_compose! {
    fn built()(size in 3usize..24)(
        kinds in vec(any::<(bool, bool, bool)>(), size),
        picks in vec(any::<(u64, u64)>(), size),
        jobs in vec(vec(0..size, 1..4), 1..5),
        written in Just((0..size).collect::<Vec<_>>()).prop_shuffle(),
    ) -> Built {
        let size = kinds.len();
        // The last two are parts, so that every joint finds two to join.
        let is_part = |i: usize| kinds[i].0 || i + 2 >= size;
        let some = |bits: u64, from: std::ops::Range<usize>| -> BTreeSet<usize> {
            from.filter(|i| is_part(*i)).filter(|i| bits >> (i % 64) & bits >> ((i + 7) % 64) & 1 == 1).collect()
        };
        let things = (0..size).map(|i| {
            let part = is_part(i);
            let (before, behind) = picks[i];
            let mut joins = if part { BTreeSet::new() } else { some(behind, i + 1..size) };
            if !part && joins.len() < 2 {
                joins.extend([size - 2, size - 1]);
            }
            Thing { part, after: some(before, 0..i), joins, critical: kinds[i].1, point: kinds[i].2 }
        });
        Built { things: things.collect(), jobs: jobs.into_iter().map(BTreeSet::from_iter).collect(), written }
    }
}

fn name(thing: usize) -> String {
    format!("t{thing}")
}

fn names(things: &BTreeSet<usize>) -> Vec<String> {
    things.iter().map(|i| name(*i)).collect()
}

impl Built {
    fn text(&self) -> String {
        let mut text = "serves = [\"one\"]\n".to_owned();
        for part in [true, false] {
            for i in self.written.iter().filter(|i| self.things[**i].part == part) {
                let thing = &self.things[*i];
                let (id, after) = (name(*i), names(&thing.after));
                if part {
                    write!(text, "[[part]]\nid = \"{id}\"\ncomponent = \"engine\"\nafter = {after:?}\n")
                        .unwrap();
                } else {
                    let (joins, critical) = (names(&thing.joins), thing.critical);
                    let points: &[&str] = if thing.point { &["p"] } else { &[] };
                    write!(
                        text,
                        "[[joint]]\nid = \"{id}\"\nparts = {joins:?}\nfastener = \"nut\"\nafter = {after:?}\ncritical = {critical}\npoints = {points:?}\n"
                    )
                    .unwrap();
                }
            }
        }
        for (job, named) in self.jobs.iter().enumerate() {
            let (off, loosened): (BTreeSet<_>, BTreeSet<_>) =
                named.iter().partition(|i| self.things[**i].part);
            let (off, loosened) = (names(&off), names(&loosened));
            write!(text, "[[job]]\nid = \"j{job}\"\noff = {off:?}\nloosened = {loosened:?}\n").unwrap();
        }
        text
    }

    fn graph(&self) -> Graph {
        read_graph("g.toml", &self.text()).unwrap()
    }

    /// What each thing needs gone before it, straight from its definition.
    fn needs(&self) -> BTreeMap<String, BTreeSet<String>> {
        let mut needs: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for (i, thing) in self.things.iter().enumerate() {
            needs.entry(name(i)).or_default().extend(names(&thing.after));
            for part in &thing.joins {
                needs.entry(name(*part)).or_default().insert(name(i));
            }
        }
        needs
    }

    fn plan(&self, jobs: &[usize]) -> Plan {
        let jobs: Vec<String> = jobs.iter().map(|job| format!("j{job}")).collect();
        plan(&self.graph(), &jobs.iter().map(String::as_str).collect::<Vec<_>>()).unwrap()
    }

    fn all(&self) -> Plan {
        self.plan(&(0..self.jobs.len()).collect::<Vec<_>>())
    }
}

fn off(plan: &Plan) -> Vec<String> {
    plan.take_off.iter().map(|item| item.id().to_owned()).collect()
}

fn set(plan: &Plan) -> BTreeSet<String> {
    off(plan).into_iter().collect()
}

proptest! {
    #[test]
    fn refit_is_taking_apart_backwards(built in built()) {
        let plan = built.all();
        let mut back = plan.refit.clone();
        back.reverse();
        prop_assert_eq!(&back, &plan.take_off);
        prop_assert_eq!(set(&plan).len(), plan.take_off.len(), "nothing comes off twice");
    }

    #[test]
    fn the_order_respects_access(built in built()) {
        let order = off(&built.all());
        let needs = built.needs();
        for (place, thing) in order.iter().enumerate() {
            for needed in &needs[thing] {
                let before = order.iter().position(|other| other == needed);
                prop_assert!(before.is_some_and(|before| before < place), "{} before {}", needed, thing);
            }
        }
    }

    /// Smallest set that holds what the jobs name and is closed under needs: each thing in it is
    /// named, or is needed by another in it; so taking any out would leave a need unmet.
    #[test]
    fn the_closure_is_minimal(built in built()) {
        let plan = built.all();
        let disturbed = set(&plan);
        let needs = built.needs();
        let named: BTreeSet<String> = built.jobs.iter().flatten().map(|i| name(*i)).collect();
        prop_assert!(named.is_subset(&disturbed));
        for thing in disturbed.difference(&named) {
            let wanted = disturbed.iter().any(|other| needs[other].contains(thing));
            prop_assert!(wanted, "{} is disturbed for nothing", thing);
        }
    }

    /// A job that names all that was disturbed disturbs nothing more.
    #[test]
    fn the_closure_is_idempotent(built in built()) {
        let once = built.all();
        let index = |id: &String| id[1..].parse::<usize>().unwrap();
        let jobs = vec![set(&once).iter().map(index).collect()];
        let again = Built { jobs, ..built }.all();
        prop_assert_eq!(off(&again), off(&once));
    }

    /// More jobs disturb no less, and what both disturb comes off in the same order.
    #[test]
    fn plans_are_monotone_and_stable(built in built()) {
        let all = built.all();
        for job in 0..built.jobs.len() {
            let one = built.plan(&[job]);
            let both: Vec<String> = off(&all).into_iter().filter(|id| set(&one).contains(id)).collect();
            prop_assert_eq!(both, off(&one));
            prop_assert!(one.independent.iter().all(|joint| all.independent.contains(joint)));
        }
        let union: BTreeSet<String> =
            (0..built.jobs.len()).flat_map(|job| off(&built.plan(&[job]))).collect();
        prop_assert_eq!(union, set(&all), "together they disturb what each disturbs");
    }

    #[test]
    fn the_jobs_order_and_repetition_do_not_matter(built in built()) {
        let backwards: Vec<usize> = (0..built.jobs.len()).rev().chain(0..built.jobs.len()).collect();
        prop_assert_eq!(built.plan(&backwards), built.all());
    }

    /// Every disturbed joint has a point, or is reported; every critical one wants a second look.
    #[test]
    fn no_disturbed_joint_is_passed_over(built in built()) {
        let plan = built.all();
        let graph = built.graph();
        for joint in &plan.disturbed.joints {
            let authored = graph.joint(joint).unwrap();
            let pointed = authored.points.iter().any(|point| plan.points.contains(&point.as_str().to_owned()));
            prop_assert!(pointed != plan.without_point.contains(joint));
            prop_assert_eq!(authored.critical, plan.independent.contains(joint));
        }
        prop_assert_eq!(plan.disturbed.joints.len() + plan.disturbed.parts.len(), plan.refit.len());
    }

    /// A part whose joints or access were left out of the closure would still hang on.
    #[test]
    fn a_part_that_is_off_has_no_joint_left(built in built()) {
        let plan = built.all();
        for (i, thing) in built.things.iter().enumerate().filter(|(_, thing)| !thing.part) {
            let frees = thing.joins.iter().any(|part| plan.disturbed.parts.contains(&name(*part)));
            prop_assert!(!frees || plan.disturbed.joints.contains(&name(i)));
        }
    }

    /// Whatever an author types is a graph or faults on lines of the file.
    #[test]
    fn any_text_is_answered(built in built(), at in any::<prop::sample::Index>(), cut in 0usize..9, put in "\\PC{0,4}") {
        let text = built.text();
        let from = at.index(text.len());
        let till = (from + cut).min(text.len());
        // The text is ASCII, so every offset is a character's.
        let edited = format!("{}{put}{}", &text[..from], &text[till..]);
        if let Err(faults) = read_graph("g.toml", &edited) {
            let lines = edited.lines().count() + 1;
            prop_assert!(!faults.is_empty());
            prop_assert!(faults.iter().all(|fault| (1..=lines).contains(&fault.line)), "{:?}", faults);
        }
    }

    /// Turning one need round makes a round, and the fault names things that really wait.
    #[test]
    fn a_round_is_found_and_is_one(mut built in built()) {
        let needs = built.needs();
        // The first part that some other part needs, however far, is made to wait for that one.
        let reach = |from: usize| {
            let (mut seen, mut queue) = (BTreeSet::new(), vec![name(from)]);
            while let Some(next) = queue.pop() {
                if seen.insert(next.clone()) {
                    queue.extend(needs[&next].iter().cloned());
                }
            }
            seen
        };
        let size = built.things.len();
        let pair = (0..size).rev().filter(|late| built.things[*late].part).find_map(|late| {
            let early = (0..late).find(|early| built.things[*early].part && reach(late).contains(&name(*early)))?;
            Some((late, early))
        });
        prop_assume!(pair.is_some());
        let (late, early) = pair.unwrap();
        built.things[early].after.insert(late);
        let faults = read_graph("g.toml", &built.text()).unwrap_err();
        prop_assert_eq!(faults.len(), 1);
        let what = &faults[0].what;
        let round: Vec<&str> = what.split('`').filter(|word| word.starts_with('t') && !word.contains(' ')).collect();
        let round = if what.contains("no way") { &round[1..] } else { &round[..] };
        let needs = built.needs();
        prop_assert_eq!(round.first(), round.last());
        prop_assert!(round.len() > 1);
        for two in round.windows(2) {
            prop_assert!(needs[two[0]].contains(two[1]), "{}", what);
        }
    }
}
