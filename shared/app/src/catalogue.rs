//! The catalogue as shipped inside the program: lists, data sheets, words, drawings.

use std::collections::BTreeMap;

use include_dir::{Dir, include_dir};
use witnessmark_core::assembly::{Around, Graph, against, read_graph};
use witnessmark_core::list::{
    CatalogueFault, Followed, From, Limits, Machinery, Occasion, Parts, Point, Sheet, Station, compose,
    read_fragment, read_limits, read_measures, read_occasions, read_sheet, read_stations,
};

use crate::Fault;
use crate::texts::Texts;
use crate::validate::check_drawing;

/// The files of `shared/catalogue`.
pub static EMBEDDED: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/../catalogue");

/// The catalogue, read and checked.
pub struct Catalogue {
    /// In walking order.
    pub stations: Vec<Station>,
    /// Reasons to inspect.
    pub occasions: Vec<Occasion>,
    /// In the order of the fragments' names, then of the points in them.
    pub points: Vec<Point>,
    /// Engine types by id.
    pub sheets: BTreeMap<String, Sheet>,
    /// How each engine is built, by the id of its data sheet.
    pub graphs: BTreeMap<String, Graph>,
    /// Drawings by name.
    pub drawings: BTreeMap<String, String>,
    /// Measures that are followed, in the order in which they are shown.
    pub measures: Vec<Followed>,
    /// The school's limits; none where no school has published any.
    pub limits: Limits,
    /// Words.
    pub texts: Texts,
    /// The demonstration's scenario.
    pub scenario: String,
    /// The scenario of the demonstration's school.
    pub school: String,
}

/// Components of points that are no parts of a machine.
pub(crate) const NO_PARTS: &[&str] = &["day", "pilot"];

/// A file's name without folder and ending.
pub fn stem(path: &str) -> &str {
    let name = path.rsplit('/').next().unwrap_or(path);
    name.rsplit_once('.').map_or(name, |(stem, _)| stem)
}

impl Catalogue {
    /// Reads the embedded catalogue.
    ///
    /// # Errors
    /// The first fault, with file and line.
    pub fn embedded() -> Result<Self, Fault> {
        Self::with(&BTreeMap::new())
    }

    /// The embedded catalogue with these files added, or put in place of those of the same path.
    ///
    /// # Errors
    /// The first fault, with file and line.
    pub fn with(more: &BTreeMap<String, String>) -> Result<Self, Fault> {
        let mut files = BTreeMap::new();
        collect(&EMBEDDED, &mut files);
        files.extend(more.iter().map(|(path, content)| (path.clone(), content.as_str())));
        Self::read(&files)
    }

    /// Reads a catalogue from its files: path relative to the catalogue, and content.
    ///
    /// # Errors
    /// The first fault, with file and line.
    pub fn read(files: &BTreeMap<String, &str>) -> Result<Self, Fault> {
        let file = |path: &str| {
            files
                .get(path)
                .copied()
                .ok_or_else(|| Fault::new("catalogue").text("where", path).text("why", "the file is missing"))
        };
        let under = |folder: &'static str| {
            files.iter().filter(move |(path, _)| path.starts_with(folder)).map(|(p, c)| (p.as_str(), *c))
        };
        let mut points = Vec::new();
        for (path, content) in under("fragments/") {
            let fragment = read_fragment(path, content).map_err(first)?;
            points.extend(fragment.point.into_iter().map(|point| point.into_inner()));
        }
        let mut sheets = BTreeMap::new();
        for (path, content) in under("engines/") {
            let sheet = read_sheet(path, content).map_err(first)?;
            sheets.insert(sheet.id.clone(), sheet);
        }
        // The screens' own words are read by the screens.
        let spoken = under("texts/").filter(|(path, _)| !is_of_screens(path));
        let texts = spoken.filter_map(|(path, content)| {
            let language = path.strip_prefix("texts/")?.split('/').next()?;
            Some((language, path, content))
        });
        // They go into the page as they stand, whoever published them.
        if let Some(fault) = under("drawings/").find_map(|(path, content)| check_drawing(path, content)) {
            return Err(fault.into());
        }
        let drawings = under("drawings/").map(|(path, content)| (stem(path).to_owned(), content.to_owned()));
        let occasions = read_occasions("occasions.toml", file("occasions.toml")?)?;
        let around = Around {
            sheets: sheets.values().collect(),
            points: points.iter().collect(),
            occasions: occasions.iter().collect(),
        };
        let graphs = graphs(under("assembly/"), &around)?;
        let catalogue = Self {
            stations: read_stations("stations.toml", file("stations.toml")?)?,
            occasions,
            points,
            sheets,
            graphs,
            drawings: drawings.collect(),
            measures: read_measures("measures.toml", file("measures.toml")?)?,
            limits: read_limits("limits.toml", file("limits.toml")?)?,
            texts: Texts::read(texts)?,
            scenario: file("demo/scenario.toml")?.to_owned(),
            school: file("demo/school.toml")?.to_owned(),
        };
        catalogue.compose_everything()?;
        catalogue.check_measures()?;
        Ok(catalogue)
    }

    /// What lists are composed of.
    pub fn parts(&self) -> Parts<'_> {
        Parts { stations: &self.stations, points: &self.points }
    }

    /// Every part of a machine with this engine, in the order of the lists, and whether there are
    /// machines without it.
    pub fn part_names(&self, sheet: &Sheet) -> Vec<(&str, bool)> {
        let walked = |point: &&Point| {
            let mut lists = self.occasions.iter().filter(|occasion| !occasion.job);
            point.when.suits(sheet) && lists.any(|list| point.occasions.contains(&list.id))
        };
        let mut names: Vec<(&str, bool)> = Vec::new();
        for point in self.points.iter().filter(walked) {
            let name = point.component.as_str();
            if !NO_PARTS.contains(&name) && names.iter().all(|(known, _)| *known != name) {
                let optional = self.points.iter().any(|p| p.when.fitted.contains(name));
                names.push((name, optional));
            }
        }
        names
    }

    /// Each measure leans on a point, a joint or a log, on a band that some engine has, and on words.
    fn check_measures(&self) -> Result<(), Fault> {
        let fault = |measure: &Followed, why: &str| {
            let why = format!("measure `{}`: {why}", measure.id);
            Err(Fault::new("catalogue").text("where", "measures.toml").text("why", why))
        };
        let point = |id: &str| self.points.iter().find(|point| point.id == id);
        for measure in &self.measures {
            let known = match &measure.from {
                From::Point(id) => point(id).is_some_and(|point| point.measure.is_some()),
                From::Grade(id) => point(id).is_some_and(|point| point.measure.is_none()),
                From::Movement(joint) => self.graphs.values().any(|graph| graph.joint(joint).is_some()),
                From::Log(_) | From::Burn => true,
            };
            if !known {
                return fault(measure, "what it is read from isn't there, or is of another kind");
            }
            let band = measure.band.as_ref();
            if band.is_some_and(|band| !self.sheets.values().any(|sheet| sheet.bands.contains_key(band))) {
                return fault(measure, "no data sheet has its band");
            }
            if !self.texts.has(&format!("measure-{}", measure.id), None) {
                return fault(measure, "has no words");
            }
        }
        Ok(())
    }

    /// Composes each list for each engine with every part fitted, so that a band which a
    /// sheet lacks is found now and not at the launch field.
    fn compose_everything(&self) -> Result<(), Fault> {
        for sheet in self.sheets.values() {
            let machine = Machinery {
                sheet,
                fitted: self.part_names(sheet).into_iter().map(|(name, _)| name.to_owned()).collect(),
                confirmed: BTreeMap::new(),
                remembered: BTreeMap::new(),
            };
            for occasion in &self.occasions {
                compose(self.parts(), &machine, &occasion.id).map_err(|fault| {
                    Fault::new("catalogue")
                        .text("where", format!("engines/{}.toml", sheet.id))
                        .text("why", fault)
                })?;
            }
        }
        Ok(())
    }
}

/// The first of several faults: one is enough to stop a start.
/// Whether a file holds words that only the screens read, the app's or the board's.
pub(crate) fn is_of_screens(path: &str) -> bool {
    path.ends_with("/ui.ftl") || path.ends_with("/board.ftl")
}

fn first(faults: Vec<CatalogueFault>) -> Fault {
    faults.into_iter().next().map_or_else(|| Fault::internal("a fault without a fault"), Fault::from)
}

/// How each engine is built.
fn graphs<'a>(
    files: impl Iterator<Item = (&'a str, &'a str)>,
    around: &Around<'_>,
) -> Result<BTreeMap<String, Graph>, Fault> {
    let mut graphs = BTreeMap::new();
    for (path, content) in files {
        let graph = read_graph(path, content).map_err(first)?;
        let faults = against(&graph, path, content, around);
        if !faults.is_empty() {
            return Err(first(faults));
        }
        for sheet in around.sheets.iter().filter(|sheet| graph.serves(sheet)) {
            if graphs.insert(sheet.id.clone(), graph.fitted_to(sheet)).is_some() {
                let why = format!("another graph serves `{}` already", sheet.id);
                return Err(Fault::new("catalogue").text("where", path).text("why", why));
            }
        }
    }
    Ok(graphs)
}

fn collect<'a>(dir: &'a Dir<'a>, files: &mut BTreeMap<String, &'a str>) {
    for file in dir.files() {
        if let Some(content) = file.contents_utf8() {
            files.insert(file.path().to_string_lossy().replace('\\', "/"), content);
        }
    }
    for dir in dir.dirs() {
        collect(dir, files);
    }
}
