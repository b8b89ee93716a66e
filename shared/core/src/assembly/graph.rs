//! The graph of needs, linked from a checked file.

use std::collections::{BTreeMap, BTreeSet};

use petgraph::graph::{DiGraph, NodeIndex};
use petgraph::visit::{Dfs, DfsPostOrder};
use serde::{Deserialize, Serialize};

use super::authored::{GraphFile, Joint, Name, Part};
use super::check::faults_of;
use crate::list::{CatalogueFault, Sheet, line_at, read_toml};

/// A part, or a joint between parts.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Item {
    /// Taken off, or put back on.
    Part(String),
    /// Undone, or done up again.
    Joint(String),
}

impl Item {
    /// The id; parts and joints never share one.
    pub fn id(&self) -> &str {
        match self {
            Item::Part(id) | Item::Joint(id) => id,
        }
    }
}

/// An assembly graph, read and checked.
#[derive(Clone, Debug)]
pub struct Graph {
    /// As authored.
    pub file: GraphFile,
    needs: Needs,
    /// Every part and joint in the order of taking all apart.
    order: Vec<NodeIndex>,
}

/// Parts and joints with an edge from each to whatever must come off or be undone before it.
#[derive(Clone, Debug, Default)]
pub(super) struct Needs {
    pub graph: DiGraph<Item, ()>,
    pub nodes: BTreeMap<String, NodeIndex>,
}

impl Needs {
    /// Links a file; names of nothing are left out, for the check to find.
    pub fn of(file: &GraphFile) -> Self {
        let mut needs = Self::default();
        for part in &file.part {
            needs.add(&part.id, Item::Part(part.id.as_str().to_owned()));
        }
        for joint in &file.joint {
            needs.add(&joint.id, Item::Joint(joint.id.as_str().to_owned()));
        }
        for part in &file.part {
            needs.link(part.id.as_str(), part.after.iter().map(Name::as_str));
        }
        for joint in &file.joint {
            needs.link(joint.id.as_str(), joint.after.iter().map(Name::as_str));
        }
        // Last, so that what stands in a part's way goes before its own joints.
        for joint in &file.joint {
            for part in &joint.parts {
                needs.link(part.as_str(), [joint.id.as_str()]);
            }
        }
        needs
    }

    fn add(&mut self, id: &Name, item: Item) {
        let graph = &mut self.graph;
        self.nodes.entry(id.as_str().to_owned()).or_insert_with(|| graph.add_node(item));
    }

    fn link<'a>(&mut self, from: &str, needed: impl IntoIterator<Item = &'a str>) {
        for needed in needed {
            if let (Some(from), Some(needed)) = (self.nodes.get(from), self.nodes.get(needed)) {
                self.graph.update_edge(*from, *needed, ());
            }
        }
    }
}

impl Graph {
    /// Links a file that has no fault.
    fn linked(file: GraphFile) -> Self {
        let needs = Needs::of(&file);
        // Depth first, needs before what needs them: one part after another comes off, each right
        // after its own joints. One order for the whole graph, so that two jobs never disagree.
        let mut order = Vec::with_capacity(needs.graph.node_count());
        let mut walk = DfsPostOrder::empty(&needs.graph);
        for node in needs.graph.node_indices() {
            walk.move_to(node);
            while let Some(node) = walk.next(&needs.graph) {
                order.push(node);
            }
        }
        Self { file, needs, order }
    }

    /// The graph as it is for one engine: parts it doesn't have are gone, and with them their
    /// joints, and jobs of which nothing is left.
    #[must_use]
    pub fn fitted_to(&self, sheet: &Sheet) -> Self {
        let mut file = self.file.clone();
        let has = |part: &Part| part.feature.iter().all(|feature| sheet.features.contains(feature.as_str()));
        file.part.retain(has);
        let parts: BTreeSet<String> = file.part.iter().map(|part| part.id.as_str().to_owned()).collect();
        file.joint.retain(|joint| joint.parts.iter().all(|part| parts.contains(part.as_str())));
        let joints: BTreeSet<String> = file.joint.iter().map(|joint| joint.id.as_str().to_owned()).collect();
        let there = |name: &Name| parts.contains(name.as_str()) || joints.contains(name.as_str());
        for part in &mut file.part {
            part.after.retain(there);
        }
        for joint in &mut file.joint {
            joint.after.retain(there);
        }
        for job in &mut file.job {
            job.off.retain(there);
            job.loosened.retain(there);
        }
        file.job.retain(|job| !job.off.is_empty() || !job.loosened.is_empty());
        let jobs: BTreeSet<String> = file.job.iter().map(|job| job.id.as_str().to_owned()).collect();
        file.follow_up.retain(|later| later.joint.as_ref().is_none_or(there));
        for later in &mut file.follow_up {
            later.by.retain(|job| jobs.contains(job.as_str()));
        }
        Self::linked(file)
    }

    /// Whether the engine of this data sheet is built so.
    pub fn serves(&self, sheet: &Sheet) -> bool {
        self.file.serves.iter().any(|engine| *engine == *sheet.id)
    }

    /// A part by id.
    pub fn part(&self, id: &str) -> Option<&Part> {
        // Nodes were numbered as written: all parts, then all joints.
        self.file.part.get(self.needs.nodes.get(id)?.index())
    }

    /// A joint by id.
    pub fn joint(&self, id: &str) -> Option<&Joint> {
        let number = self.needs.nodes.get(id)?.index();
        self.file.joint.get(number.checked_sub(self.file.part.len())?)
    }

    /// These parts and joints and all that they need, in the order of taking apart.
    pub(super) fn closure<'a>(&self, of: impl IntoIterator<Item = &'a str>) -> Vec<Item> {
        let mut walk = Dfs::empty(&self.needs.graph);
        let mut reached = BTreeSet::new();
        for node in of.into_iter().filter_map(|id| self.needs.nodes.get(id)) {
            walk.move_to(*node);
            while let Some(node) = walk.next(&self.needs.graph) {
                reached.insert(node);
            }
        }
        let items = self.order.iter().filter(|node| reached.contains(node));
        items.filter_map(|node| self.needs.graph.node_weight(*node).cloned()).collect()
    }
}

/// Reads a graph and checks it by itself.
///
/// # Errors
/// Every fault found, each with file and line.
pub fn read_graph(file: &str, text: &str) -> Result<Graph, Vec<CatalogueFault>> {
    let authored: GraphFile = read_toml(file, text).map_err(|fault| vec![fault])?;
    let faults: Vec<_> = faults_of(&authored)
        .into_iter()
        .map(|fault| CatalogueFault {
            file: file.to_owned(),
            line: line_at(text, fault.at),
            what: fault.what,
            hint: fault.hint.to_owned(),
        })
        .collect();
    if faults.is_empty() { Ok(Graph::linked(authored)) } else { Err(faults) }
}

/// The same, from JSON with the members of that file.
///
/// # Errors
/// Every fault found; their lines are none of the author's.
pub fn read_graph_json(graph: &serde_json::Value) -> Result<Graph, Vec<CatalogueFault>> {
    let text = toml::to_string(graph).map_err(|why| {
        let hint = "use the members that the schema names, and leave out what is null";
        vec![CatalogueFault { file: "graph".into(), line: 1, what: why.to_string(), hint: hint.into() }]
    })?;
    read_graph("graph", &text)
}
