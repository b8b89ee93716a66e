//! A graph beside the rest of the catalogue: data sheets, points, and the words of what it names.

use witnessmark_core::assembly::{self, Graph, Name, against};
use witnessmark_core::list::{CatalogueFault, Point, Sheet, line_at};

use super::{Around, WORDS_HINT};

impl Around<'_> {
    /// Checks a graph; points and data sheets given replace our own of the same id.
    pub(super) fn check_graph(
        &self,
        file: &str,
        text: &str,
        graph: &Graph,
        points: &[Point],
        sheets: &[Sheet],
    ) -> Vec<CatalogueFault> {
        let other_point = |own: &&Point| points.iter().all(|given| given.id != own.id);
        let other_sheet = |own: &&Sheet| sheets.iter().all(|given| given.id != own.id);
        let around = assembly::Around {
            sheets: sheets.iter().chain(self.own.sheets.values().filter(other_sheet)).collect(),
            points: points.iter().chain(self.own.points.iter().filter(other_point)).collect(),
            occasions: self.own.occasions.iter().collect(),
        };
        let mut faults = against(graph, file, text, &around);
        for (prefix, attribute, names) in spoken(graph) {
            for name in names {
                let lacks = self.lacks(&format!("{prefix}-{}", name.as_str()), attribute);
                faults.extend(lacks.map(|lacks| CatalogueFault {
                    file: file.to_owned(),
                    line: line_at(text, name.at()),
                    what: format!("`{}` {lacks}", name.as_str()),
                    hint: WORDS_HINT.to_owned(),
                }));
            }
        }
        faults
    }
}

/// All that a person reads of a graph: the message's prefix, its attribute, the names.
fn spoken(graph: &Graph) -> [(&'static str, Option<&'static str>, Vec<&Name>); 7] {
    let file = &graph.file;
    let jobs: Vec<&Name> = file.job.iter().map(|job| &job.id).collect();
    [
        ("graph-part", None, file.part.iter().map(|part| &part.id).collect()),
        ("joint", None, file.joint.iter().map(|joint| &joint.id).collect()),
        ("consumable", None, file.joint.iter().flat_map(|joint| &joint.renew).collect()),
        ("tool", None, file.joint.iter().flat_map(|joint| &joint.tools).collect()),
        ("follow-up", None, file.follow_up.iter().map(|later| &later.id).collect()),
        ("job", None, jobs.clone()),
        ("job", Some("what"), jobs),
    ]
}
