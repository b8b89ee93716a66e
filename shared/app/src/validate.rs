//! Checking catalogue files for their authors: every fault with file and line.

mod drawing;
mod graph;

use std::collections::{BTreeMap, BTreeSet};

use schemars::schema_for;
use witnessmark_core::assembly::{GraphFile, read_graph};
use witnessmark_core::list::{
    CatalogueFault, Followeds, Fragment, Limits, Occasion, Point, Sheet, Station, line_at, read_fragment,
    read_limits, read_measures, read_occasions, read_sheet, read_stations,
};

use crate::Fault;
use crate::catalogue::{Catalogue, stem};
use crate::texts::{FALLBACK, Texts};
pub(crate) use drawing::check_drawing;

/// What a catalogue file is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileKind {
    /// Points.
    Fragment,
    /// One engine type.
    Sheet,
    /// How engines are built.
    Graph,
    /// Stations.
    Stations,
    /// Occasions.
    Occasions,
    /// Measures that are followed.
    Measures,
    /// A school's limits.
    Limits,
    /// Words.
    Words,
    /// A drawing.
    Drawing,
}

impl FileKind {
    /// Tells by the ending, then by what stands at the top level.
    pub fn of(file: &str, text: &str) -> Option<Self> {
        match file.rsplit('.').next()? {
            "ftl" => Some(Self::Words),
            "svg" => Some(Self::Drawing),
            _ => {
                let starts = |with: &str| text.lines().any(|line| line.trim_start().starts_with(with));
                if starts("[[point]]") {
                    Some(Self::Fragment)
                } else if starts("[[station]]") {
                    Some(Self::Stations)
                } else if starts("[[occasion]]") {
                    Some(Self::Occasions)
                } else if starts("[[measure]]") {
                    Some(Self::Measures)
                } else if starts("[wind") || starts("[inspect") || stem(file) == "limits" {
                    Some(Self::Limits)
                } else if starts("[[part]]") || starts("[[joint]]") {
                    Some(Self::Graph)
                } else if starts("kind") || starts("[bands") || starts("[values") {
                    Some(Self::Sheet)
                } else {
                    None
                }
            }
        }
    }
}

/// Checks files (name, content), each by itself and against the embedded catalogue together with
/// the others given. Empty means that nothing is wrong.
///
/// # Errors
/// Where the embedded catalogue itself can't be read.
pub fn validate_files(files: &[(String, String)]) -> Result<Vec<CatalogueFault>, Fault> {
    let own = Catalogue::embedded()?;
    let mut faults = Vec::new();
    let mut words = Vec::new();
    let mut drawings: BTreeMap<&str, &str> = BTreeMap::new();
    for (file, text) in files {
        match FileKind::of(file, text) {
            Some(FileKind::Words) => match Texts::read([(FALLBACK, file.as_str(), text.as_str())]) {
                Ok(texts) => words.push(texts),
                Err(fault) => faults.push(fault),
            },
            Some(FileKind::Drawing) => {
                faults.extend(check_drawing(file, text));
                drawings.insert(stem(file), text);
            }
            _ => {}
        }
    }
    let around = Around { own: &own, words: &words, drawings: &drawings };
    let (mut points, mut sheets, mut graphs) = (Vec::new(), Vec::new(), Vec::new());
    for (file, text) in files {
        match FileKind::of(file, text) {
            Some(FileKind::Fragment) => match read_fragment(file, text) {
                Ok(fragment) => {
                    faults.extend(around.check(file, text, &fragment));
                    points.extend(fragment.point.into_iter().map(|point| point.into_inner()));
                }
                Err(found) => faults.extend(found),
            },
            Some(FileKind::Sheet) => match read_sheet(file, text) {
                Ok(sheet) => sheets.push(sheet),
                Err(found) => faults.extend(found),
            },
            Some(FileKind::Graph) => match read_graph(file, text) {
                Ok(graph) => graphs.push((file, text, graph)),
                Err(found) => faults.extend(found),
            },
            Some(FileKind::Stations) => faults.extend(read_stations(file, text).err()),
            Some(FileKind::Occasions) => faults.extend(read_occasions(file, text).err()),
            Some(FileKind::Measures) => faults.extend(read_measures(file, text).err()),
            Some(FileKind::Limits) => faults.extend(read_limits(file, text).err()),
            Some(FileKind::Words | FileKind::Drawing) => {}
            None => faults.push(whole(
                file,
                "is no file of the catalogue".into(),
                "a fragment has [[point]] tables, a graph [[part]] and [[joint]], a data sheet an id, a kind and [bands.…], a school's limits [wind] and [inspect.…]; words end in .ftl, drawings in .svg",
            )),
        }
    }
    // A graph leans on points and data sheets, so it comes when all given are read.
    for (file, text, graph) in graphs {
        faults.extend(around.check_graph(file, text, &graph, &points, &sheets));
    }
    faults.sort();
    Ok(faults)
}

fn whole(file: &str, what: String, hint: &str) -> CatalogueFault {
    CatalogueFault { file: file.to_owned(), line: 1, what, hint: hint.to_owned() }
}

/// What a fragment or a graph is checked against.
struct Around<'a> {
    own: &'a Catalogue,
    words: &'a [Texts],
    drawings: &'a BTreeMap<&'a str, &'a str>,
}

impl Around<'_> {
    /// Tells of words that are missing.
    fn lacks(&self, id: &str, attribute: Option<&str>) -> Option<String> {
        let has = |texts: &Texts| texts.has(id, attribute);
        if has(&self.own.texts) || self.words.iter().any(has) {
            return None;
        }
        let name = attribute.map_or_else(|| id.to_owned(), |attribute| format!("{id}.{attribute}"));
        Some(format!("has no words `{name}`"))
    }

    fn check(&self, file: &str, text: &str, fragment: &Fragment) -> Vec<CatalogueFault> {
        let mut faults = Vec::new();
        let mut ids = BTreeSet::new();
        for point in &fragment.point {
            let line = line_at(text, point.span().start);
            let point = point.get_ref();
            let mut found = self.faults_of(point);
            if !ids.insert(&point.id) {
                found.push(("is there twice".into(), "rename one"));
            }
            faults.extend(found.into_iter().map(|(what, hint)| CatalogueFault {
                file: file.to_owned(),
                line,
                what: format!("point `{}`: {what}", point.id),
                hint: hint.to_owned(),
            }));
        }
        faults
    }

    fn faults_of(&self, point: &Point) -> Vec<(String, &'static str)> {
        let mut faults = Vec::new();
        if !self.own.stations.iter().any(|station| station.id == point.station) {
            faults
                .push((format!("there is no station `{}`", point.station), "stations.toml has the stations"));
        }
        for occasion in &point.occasions {
            if !self.own.occasions.iter().any(|known| known.id == *occasion) {
                faults
                    .push((format!("there is no occasion `{occasion}`"), "occasions.toml has the occasions"));
            }
        }
        let drawing = self.drawings.get(point.drawing.as_str()).copied();
        match drawing.or_else(|| self.own.drawings.get(&point.drawing).map(String::as_str)) {
            None => faults.push((format!("there is no drawing `{}`", point.drawing), "add it to drawings/")),
            Some(svg) if !has_focus(svg, &point.focus) => faults.push((
                format!("the drawing `{}` has no focus `{}`", point.drawing, point.focus),
                "name one of its data-focus groups, or draw one",
            )),
            Some(_) => {}
        }
        let mut words = |id: &str, attribute: Option<&str>| {
            faults.extend(self.lacks(id, attribute).map(|what| (what, WORDS_HINT)));
        };
        let id = format!("point-{}", point.id);
        words(&id, None);
        ["good", "bad", "why"].into_iter().for_each(|attribute| words(&id, Some(attribute)));
        point.answer.iter().for_each(|answer| words(&id, Some(&answer.id)));
        if let Some(caution) = &point.caution {
            words(&format!("caution-{caution}"), None);
        }
        faults
    }
}

const WORDS_HINT: &str = "add them to a .ftl file, and give that file too";

fn has_focus(svg: &str, focus: &str) -> bool {
    svg.contains(&format!("data-focus=\"{focus}\""))
}

/// Checks the whole embedded catalogue as an author's files would be checked.
///
/// # Errors
/// Where it can't be read.
pub fn validate_embedded() -> Result<Vec<CatalogueFault>, Fault> {
    let mut files = Vec::new();
    let mut queue = vec![&crate::EMBEDDED];
    while let Some(dir) = queue.pop() {
        queue.extend(dir.dirs());
        for file in dir.files() {
            let name = file.path().to_string_lossy().into_owned();
            let skip = ["schema/", "demo/", "fonts/"].iter().any(|folder| name.starts_with(folder));
            if let (false, Some(text)) = (skip, file.contents_utf8()) {
                files.push((name, text.to_owned()));
            }
        }
    }
    validate_files(&files)
}

/// The JSON Schemas of the catalogue's TOML files, by file name.
///
/// # Errors
/// None that a test wouldn't find.
pub fn schemas() -> Result<BTreeMap<&'static str, String>, Fault> {
    let text = |schema: schemars::Schema| -> Result<String, Fault> {
        Ok(serde_json::to_string_pretty(&schema)? + "\n")
    };
    #[derive(schemars::JsonSchema)]
    #[allow(dead_code)]
    struct Stations {
        station: Vec<Station>,
    }
    #[derive(schemars::JsonSchema)]
    #[allow(dead_code)]
    struct Occasions {
        occasion: Vec<Occasion>,
    }
    Ok(BTreeMap::from([
        ("engine.json", text(schema_for!(Sheet))?),
        ("fragment.json", text(schema_for!(Fragment))?),
        ("assembly.json", text(schema_for!(GraphFile))?),
        ("stations.json", text(schema_for!(Stations))?),
        ("occasions.json", text(schema_for!(Occasions))?),
        ("measures.json", text(schema_for!(Followeds))?),
        ("limits.json", text(schema_for!(Limits))?),
    ]))
}
