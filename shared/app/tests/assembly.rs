//! The shipped assembly graphs, the list after a service, and what an author of a graph is told.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::collections::BTreeSet;

use common::*;
use witnessmark_app::views::{AskView, PointView};
use witnessmark_app::{App, Catalogue, validate_files};
use witnessmark_core::assembly::{Subject, plan};

const AFTER: &str = "after-service";

fn app() -> App {
    begun(&Clock::at("2026-05-02T06:41:07+02:00"))
}

/// The list after every job at once on a machine with this engine, every point of it.
fn points(app: &mut App, engine: &str) -> Vec<PointView> {
    let mut machine = bramble();
    machine.engine = engine.to_owned();
    let machine = register(app, machine);
    let jobs = app.job_choices(machine.clone()).unwrap().into_iter().map(|job| job.id).collect();
    app.job_begin(machine.clone(), jobs, String::new(), PIN.into()).unwrap();
    app.points(&machine, AFTER).unwrap().into_iter().flat_map(|station| station.points).collect()
}

/// A point that only follows jobs and that no graph names would never be asked.
#[test]
fn every_point_after_a_service_is_asked_of_some_engine() {
    let catalogue = Catalogue::embedded().unwrap();
    let mut app = app();
    let mut asked = BTreeSet::new();
    for engine in catalogue.sheets.keys() {
        asked.extend(points(&mut app, engine).into_iter().map(|point| point.id));
    }
    for point in catalogue.points.iter().filter(|point| point.occasions.contains(AFTER)) {
        assert!(asked.contains(&point.id), "{}", point.id);
    }
}

#[test]
fn every_engine_is_served_and_every_job_leaves_no_joint_unlooked_at() {
    let catalogue = Catalogue::embedded().unwrap();
    let mut app = app();
    for engine in catalogue.sheets.keys() {
        let graph = &catalogue.graphs[engine];
        assert!(graph.file.job.len() >= 6, "{engine}");
        let asked: BTreeSet<String> = points(&mut app, engine).into_iter().map(|point| point.id).collect();
        for job in &graph.file.job {
            let plan = plan(graph, &[job.id.as_str()]).unwrap();
            assert_eq!(plan.without_point, Vec::<String>::new(), "{engine} {}", job.id.as_str());
            for joint in &plan.disturbed.joints {
                let looked = &graph.joint(joint).unwrap().points;
                assert!(looked.iter().any(|point| asked.contains(point.as_str())), "{engine} {joint}");
            }
            // Every job ends with tools counted, a run, and the list's own last item.
            for last in ["after-tools-counted", "sound-shake", "walk-complete"] {
                assert!(plan.points.iter().any(|point| point == last));
            }
            // Nothing can fire before the tools are counted.
            let place = |id: &str| plan.points.iter().position(|point| point == id);
            let live = place("plug-cap-on").or(place("battery-joined"));
            assert!(place("after-tools-counted") < live, "{engine} {}", job.id.as_str());
            for later in &plan.follow_ups {
                assert!(!later.by.is_empty(), "{engine} {}", later.id);
                if let Subject::Joint(joint) = &later.what {
                    assert!(plan.disturbed.joints.contains(joint));
                }
            }
        }
    }
}

/// Nothing is touched on a machine that can fire, whatever the job: the plug cap (the flight
/// battery's connector) comes off first and goes on last. Source: the usual caution of the trade.
#[test]
fn every_job_begins_by_making_safe() {
    let catalogue = Catalogue::embedded().unwrap();
    for (engine, graph) in &catalogue.graphs {
        let safe = if engine == "linnet-e" { "battery-lead" } else { "plug-cap" };
        for job in &graph.file.job {
            let plan = plan(graph, &[job.id.as_str()]).unwrap();
            assert_eq!(plan.take_off[1].id(), safe, "{engine} {}", job.id.as_str());
            assert_eq!(plan.refit[plan.refit.len() - 2].id(), safe);
        }
    }
}

#[test]
fn the_list_after_a_service_is_worded_whole() {
    let mut app = app();
    for engine in ["bramble-125", "teasel-185", "linnet-e"] {
        for point in points(&mut app, engine) {
            let all = serde_json::to_string(&point).unwrap();
            assert!(!all.contains("{$") && !all.contains("\"point-") && !all.contains("caution-"), "{all}");
            assert!(point.title.split_whitespace().count() <= 6, "{}", point.title);
            let AskView::Words { answers } = &point.ask else { continue };
            for answer in answers {
                assert!(answer.words.split_whitespace().count() <= 5, "{}", answer.words);
                // Answers say what is seen. Source: Degani & Wiener, Human Factors 35(2), 1993.
                let words: Vec<String> = answer.words.to_lowercase().split(' ').map(str::to_owned).collect();
                for empty in ["ok", "checked", "set", "pass", "fail", "yes", "no", "done", "good"] {
                    assert!(!words.iter().any(|word| word == empty), "{}", answer.words);
                }
            }
        }
    }
}

#[test]
fn words_of_graphs_and_their_limits_are_there() {
    let catalogue = Catalogue::embedded().unwrap();
    for graph in catalogue.graphs.values() {
        for joint in &graph.file.joint {
            let fastener = serde_json::to_value(joint.fastener).unwrap();
            let id = format!("fastener-{}", fastener.as_str().unwrap());
            assert!(catalogue.texts.has(&id, None), "{id}");
        }
    }
    for sheet in catalogue.sheets.values() {
        for band in sheet.bands.keys() {
            assert!(catalogue.texts.has(&format!("band-{band}"), None), "{band}");
        }
    }
}

#[test]
fn a_list_that_needs_a_job_is_not_walked_without() {
    let mut app = app();
    let machine = register(&mut app, bramble());
    let page = app.machine(machine.clone()).unwrap();
    assert!(page.occasions.iter().all(|occasion| occasion.id != AFTER));
    assert!(page.occasions.iter().any(|occasion| occasion.id == "before-flight"));
    let fault = app.walk(machine.clone(), AFTER.into()).unwrap_err();
    assert_eq!(fault.kind, "occasion-needs-job");
    let shown = app.show(&fault);
    assert!(shown.message.contains("After service") && shown.hint.contains("Begin the job"), "{shown:?}");
    assert!(app.machine(machine).unwrap().card.walk.is_none(), "nothing was begun");
}

/// Parts that only a list after a service names are no parts that a person registers.
#[test]
fn the_parts_of_a_machine_are_those_of_the_walk() {
    let catalogue = Catalogue::embedded().unwrap();
    let sheet = &catalogue.sheets["bramble-125"];
    let names: Vec<&str> = catalogue.part_names(sheet).into_iter().map(|(name, _)| name).collect();
    let walked = |name: &&str| {
        let mut of = catalogue.points.iter().filter(|point| point.component == **name);
        of.any(|point| point.occasions.iter().any(|occasion| occasion != AFTER))
    };
    assert!(names.iter().all(walked) && names.len() >= 12, "{names:?}");
}

#[test]
fn an_author_of_a_graph_is_told_file_and_line() {
    let graph = r#"serves = ["bramble-125", "wren-200"]
[[part]]
id = "piston"
component = "engine"
after = ["head"]
[[part]]
id = "cylinder"
component = "engine"
points = ["plug-lead"]
[[joint]]
id = "pin"
parts = ["piston", "cylinder"]
fastener = "clip"
band = "pin-torque"
tools = ["pin-drift"]
[[job]]
id = "piston-off"
off = ["piston"]
"#;
    let check = |files: &[(&str, &str)]| {
        let files: Vec<_> =
            files.iter().map(|(name, text)| ((*name).to_owned(), (*text).to_owned())).collect();
        validate_files(&files).unwrap().iter().map(ToString::to_string).collect::<Vec<_>>()
    };
    assert_eq!(
        check(&[("g.toml", graph)]),
        ["g.toml:5: part `piston` names the part `head`, which isn't there"]
    );
    let graph = graph.replace("after = [\"head\"]\n", "");
    let told = check(&[("g.toml", &graph)]);
    let wanted = [
        "g.toml:1: there is no data sheet `wren-200`",
        "g.toml:3: `piston` has no words `graph-part-piston`",
        "g.toml:8: point `plug-lead` is on no list that follows a job",
        "g.toml:10: `pin` has no words `joint-pin`",
        "g.toml:13: joint `pin`: the data sheet `bramble-125` has no band `pin-torque`",
        "g.toml:14: `pin-drift` has no words `tool-pin-drift`",
        "g.toml:16: `piston-off` has no words `job-piston-off.what`",
        "g.toml:16: `piston-off` has no words `job-piston-off`",
    ];
    assert_eq!(told, wanted);
    // Words and data sheets given beside it are taken into account.
    let words = "graph-part-piston = Piston\njoint-pin = Pin\ntool-pin-drift = Drift\njob-piston-off = Off\n    .what = Off.\n";
    let sheet = "id = \"wren-200\"\nname = \"Wren\"\nkind = \"two-stroke\"\n[bands.pin-torque]\nlow = { value = 1, unit = \"N.m\", unconfirmed = \"x\" }\n";
    let told = check(&[("g.toml", &graph), ("w.ftl", words), ("s.toml", sheet)]);
    assert_eq!(told, [wanted[2], wanted[4]]);
}
