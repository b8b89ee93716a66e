//! What jobs disturb, against a small assembly worked by hand.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{Desk, Ran};
use serde_json::{Value, json};

/// A cap on a plug in a head on a cylinder, and a tray that no job of the head touches.
const GRAPH: &str = r#"
serves = ["any"]

[[part]]
id = "cap"
component = "engine"

[[part]]
id = "plug"
component = "engine"
after = ["cap"]

[[part]]
id = "head"
component = "engine"
after = ["plug"]

[[part]]
id = "cylinder"
component = "engine"

[[part]]
id = "tray"
component = "engine"

[[joint]]
id = "cap-push"
parts = ["cap", "plug"]
fastener = "push"

[[joint]]
id = "plug-thread"
parts = ["plug", "head"]
fastener = "thread"
after = ["cap"]
tools = ["spanner"]

[[joint]]
id = "head-nuts"
parts = ["head", "cylinder"]
fastener = "nut"
after = ["plug"]
critical = true
renew = ["gasket"]
tools = ["wrench", "spanner"]

[[joint]]
id = "tray-clip"
parts = ["tray", "cylinder"]
fastener = "clip"

[[follow-up]]
id = "nuts-again"
joint = "head-nuts"
by = ["nuts-retorqued"]
after = { tanks = 1 }

[[job]]
id = "head-off"
off = ["head"]
follow-ups = ["nuts-again"]

[[job]]
id = "nuts-retorqued"
loosened = ["head-nuts"]

[[job]]
id = "tray-off"
off = ["tray"]
"#;

fn refit(input: Value) -> Ran {
    Desk::new().run_with(&["compute", "refit"], &input.to_string())
}

fn ids(items: &Value) -> Vec<String> {
    let id = |item: &Value| item["part"].as_str().or(item["joint"].as_str()).unwrap().to_owned();
    items.as_array().unwrap().iter().map(id).collect()
}

#[test]
fn a_head_off_disturbs_what_stands_in_its_way() {
    let desk = Desk::new();
    let ran = refit(json!({ "graph": desk.write("graph.toml", GRAPH), "jobs": ["head-off"] }));
    assert_eq!(ran.code, 0, "{ran:?}");
    let plan = ran.json();
    // By hand: the cap is pulled, the plug unscrewed, then the nuts, then the head is free.
    let off = ["cap-push", "cap", "plug-thread", "plug", "head-nuts", "head"];
    assert_eq!(ids(&plan["take_off"]), off);
    let mut back = off.to_vec();
    back.reverse();
    assert_eq!(ids(&plan["refit"]), back);
    assert_eq!(plan["disturbed"]["parts"], json!(["head", "plug", "cap"]));
    assert_eq!(plan["disturbed"]["joints"], json!(["head-nuts", "plug-thread", "cap-push"]));
    assert_eq!((&plan["renew"], &plan["independent"]), (&json!(["gasket"]), &json!(["head-nuts"])));
    assert_eq!(plan["count_tools"], json!(["wrench", "spanner"]), "each once");
    let later = &plan["follow_ups"][0];
    assert_eq!((&later["id"], &later["after"]["tanks"]), (&json!("nuts-again"), &json!(1)));
}

#[test]
fn a_job_that_fulfils_a_follow_up_makes_none_and_two_jobs_are_one_plan() {
    let desk = Desk::new();
    let graph = desk.write("graph.toml", GRAPH);
    let plan = |jobs: &[&str]| refit(json!({ "graph": graph, "jobs": jobs })).json();
    let again = plan(&["nuts-retorqued"]);
    assert_eq!((&again["follow_ups"], &again["renew"]), (&json!([]), &json!(["gasket"])));
    assert_eq!(ids(&again["take_off"]), ["cap-push", "cap", "plug-thread", "plug", "head-nuts"]);
    let both = plan(&["tray-off", "head-off", "tray-off"]);
    assert_eq!(both, plan(&["head-off", "tray-off"]), "neither order nor repetition matters");
    assert_eq!(ids(&both["take_off"]).len(), 8);
}

#[test]
fn what_cannot_be_planned_is_told() {
    let desk = Desk::new();
    let message = |input: Value| {
        let ran = refit(input);
        assert_eq!(ran.kind(), "input", "{ran:?}");
        ran.fault()["message"].as_str().unwrap().to_owned()
    };
    let graph = desk.write("graph.toml", GRAPH);
    assert!(message(json!({ "graph": graph, "jobs": ["head-on"] })).contains("head-off"));
    assert!(message(json!({ "graph": graph, "jobs": [] })).contains("head-off"));
    assert!(message(json!({ "jobs": ["head-off"] })).contains("engine"));
    assert!(message(json!({ "engine": "none-9", "jobs": ["head-off"] })).contains("bramble-125"));
    // The cap waits for the head, which waits for the plug, which waits for the cap.
    let ring = GRAPH.replacen("component = \"engine\"", "component = \"engine\"\nafter = [\"head\"]", 1);
    let told = message(json!({ "graph": desk.write("ring.toml", &ring), "jobs": ["head-off"] }));
    assert!(told.contains("ring.toml:") && told.contains("cap") && told.contains("head"), "{told}");
    let dangling = GRAPH.replace("after = [\"plug\"]\ncritical", "after = [\"plog\"]\ncritical");
    let told = message(json!({ "graph": desk.write("dangling.toml", &dangling), "jobs": ["head-off"] }));
    assert!(told.contains("dangling.toml:42") && told.contains("plog"), "{told}");
}
