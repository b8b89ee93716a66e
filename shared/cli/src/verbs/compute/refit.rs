//! `refit`: what jobs disturb, in which order it comes off and goes back on.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_app::Catalogue;
use witnessmark_core::assembly::{Graph, plan, read_graph, read_graph_json};
use witnessmark_core::list::CatalogueFault;

use super::{Computation, Wrong, read};

pub const IT: Computation =
    Computation { name: "refit", example: r#"{"engine": "bramble-125", "jobs": ["head-retorqued"]}"#, run };

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    graph: Option<Given>,
    engine: Option<String>,
    jobs: Vec<String>,
}

/// A graph's file, or the graph itself with the members of that file.
#[derive(Deserialize)]
#[serde(untagged)]
enum Given {
    File(String),
    Whole(serde_json::Map<String, Value>),
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { graph, engine, jobs } = read(input)?;
    let given = graph.map(given).transpose()?;
    let graph = match (given, engine) {
        (None, None) => {
            return Err(Wrong("graph or engine: name a graph's file, or an engine of the catalogue".into()));
        }
        (Some(graph), None) => graph,
        (given, Some(engine)) => fitted(given, &engine)?,
    };
    Ok(json!(plan(&graph, &jobs.iter().map(String::as_str).collect::<Vec<_>>())?))
}

fn given(given: Given) -> Result<Graph, Wrong> {
    match given {
        Given::File(file) => {
            let text =
                std::fs::read_to_string(&file).map_err(|why| Wrong(format!("graph: {file}: {why}")))?;
            read_graph(&file, &text).map_err(|faults| told(&faults, CatalogueFault::to_string))
        }
        // It came without lines, so its faults are told without.
        Given::Whole(graph) => {
            read_graph_json(&Value::Object(graph)).map_err(|faults| told(&faults, |fault| fault.what.clone()))
        }
    }
}

fn told(faults: &[CatalogueFault], tell: impl Fn(&CatalogueFault) -> String) -> Wrong {
    Wrong(format!("graph: {}", faults.iter().map(tell).collect::<Vec<_>>().join("; ")))
}

/// A graph as it is for one engine of the catalogue: the one given, or the catalogue's own.
fn fitted(given: Option<Graph>, engine: &str) -> Result<Graph, Wrong> {
    let catalogue = Catalogue::embedded()?;
    let known = || catalogue.sheets.keys().cloned().collect::<Vec<_>>().join(", ");
    let sheet = catalogue.sheets.get(engine);
    let sheet =
        sheet.ok_or_else(|| Wrong(format!("engine: there is no `{engine}`; there are {}", known())))?;
    match given {
        Some(graph) => Ok(graph.fitted_to(sheet)),
        None => {
            catalogue.graphs.get(engine).cloned().ok_or_else(|| {
                Wrong(format!("engine: no graph of the catalogue serves `{engine}`: give one"))
            })
        }
    }
}
