//! What must come off before what: an engine's parts and joints, and from the jobs done the
//! order of taking apart, its exact reverse, and everything that was disturbed on the way.
//!
//! A part comes off once the parts named in its `after` are off and every joint it is in is
//! undone; a joint is undone once the parts named in its `after` are off. All of these are
//! needs of one directed graph without cycles, so what a job disturbs is what it names
//! together with everything that these need, however far.

mod against;
mod authored;
mod check;
mod graph;
mod plan;

pub use against::{Around, against};
pub use authored::{Fastener, FollowUp, GraphFile, Job, Joint, Name, Part};
pub use graph::{Graph, Item, read_graph, read_graph_json};
pub use plan::{Disturbed, Later, Plan, PlanFault, Subject, Tightening, plan};
