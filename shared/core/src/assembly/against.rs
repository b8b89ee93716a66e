//! What can be wrong in a graph beside the rest of the catalogue.

use std::collections::BTreeSet;

use super::authored::{GraphFile, Joint, Name};
use super::check::{At, at};
use super::graph::Graph;
use crate::list::{CatalogueFault, Occasion, Point, Sheet, line_at};
use crate::units::{Dimension, Unit};

/// The rest of the catalogue.
#[derive(Clone, Debug)]
pub struct Around<'a> {
    /// Data sheets.
    pub sheets: Vec<&'a Sheet>,
    /// Points.
    pub points: Vec<&'a Point>,
    /// Occasions.
    pub occasions: Vec<&'a Occasion>,
}

/// Checks a graph against data sheets and points. Empty means that nothing is wrong.
pub fn against(graph: &Graph, file: &str, text: &str, around: &Around<'_>) -> Vec<CatalogueFault> {
    let authored = &graph.file;
    let served: Vec<&Sheet> = around.sheets.iter().filter(|sheet| graph.serves(sheet)).copied().collect();
    let mut faults = around.names(authored, &served);
    for sheet in served {
        let fitted = graph.fitted_to(sheet);
        faults.extend(fitted.file.joint.iter().flat_map(|joint| around.joint(joint, sheet)));
    }
    faults.sort_by(|a, b| (a.at, &a.what).cmp(&(b.at, &b.what)));
    faults.dedup();
    let told = faults.into_iter().map(|fault| CatalogueFault {
        file: file.to_owned(),
        line: line_at(text, fault.at),
        what: fault.what,
        hint: fault.hint.to_owned(),
    });
    told.collect()
}

impl<'a> Around<'a> {
    /// Names of the catalogue that are not there.
    fn names(&self, file: &GraphFile, served: &[&Sheet]) -> Vec<At> {
        let mut faults = Vec::new();
        let sheets: BTreeSet<&str> = self.sheets.iter().map(|sheet| sheet.id.as_str()).collect();
        for engine in file.serves.iter().filter(|engine| !sheets.contains(engine.as_str())) {
            let what = format!("there is no data sheet `{}`", engine.as_str());
            faults.push(at(engine, what, "engines/ has the data sheets"));
        }
        let components: BTreeSet<&str> = self.points.iter().map(|point| point.component.as_str()).collect();
        for part in &file.part {
            let of = format!("part `{}`", part.id.as_str());
            if !components.contains(part.component.as_str()) {
                let what = format!("{of}: there is no component `{}`", part.component.as_str());
                faults.push(at(&part.component, what, "use a component that points belong to"));
            }
            let none =
                |feature: &&Name| served.iter().all(|sheet| !sheet.features.contains(feature.as_str()));
            for feature in part.feature.iter().filter(none) {
                let what = format!("{of}: no engine served has the feature `{}`", feature.as_str());
                faults.push(at(feature, what, "look how it is spelt, or leave the part out"));
            }
        }
        let parts = file.part.iter().flat_map(|part| &part.points);
        let joints = file.joint.iter().flat_map(|joint| &joint.points);
        let jobs = file.job.iter().flat_map(|job| &job.points);
        let asked = parts.chain(joints).chain(jobs).chain(&file.points);
        faults.extend(asked.filter_map(|name| self.point(name)));
        let later = file.follow_up.iter().filter_map(|later| later.point.as_ref());
        faults.extend(later.filter(|name| self.find(name).is_none()).map(no_point));
        faults
    }

    fn find(&self, name: &Name) -> Option<&'a Point> {
        self.points.iter().find(|point| *name == *point.id).copied()
    }

    /// A point must be on a list that follows a job, or nobody would be asked it.
    fn point(&self, name: &Name) -> Option<At> {
        let Some(point) = self.find(name) else { return Some(no_point(name)) };
        let after_jobs = |occasion: &&Occasion| occasion.job && point.occasions.contains(&occasion.id);
        let what = format!("point `{}` is on no list that follows a job", name.as_str());
        let asked = self.occasions.iter().copied().any(|occasion| after_jobs(&occasion));
        (!asked).then(|| at(name, what, "add \"after-service\" to its occasions"))
    }

    /// What a joint asks of one engine.
    fn joint(&self, joint: &Joint, sheet: &Sheet) -> Vec<At> {
        let of = format!("joint `{}`", joint.id.as_str());
        let mut faults = Vec::new();
        if let Some(name) = &joint.band {
            let lacks = format!("{of}: the data sheet `{}` has no band `{}`", sheet.id, name.as_str());
            match sheet.band(name.as_str()) {
                None => faults.push(at(name, lacks, "add the band, without a number if none is known")),
                Some(band) if band.unit().dimension() != Dimension::Torque => {
                    let what = format!("{of}: the band `{}` of `{}` is no torque", name.as_str(), sheet.id);
                    faults.push(at(name, what, "name the band of its torque"));
                }
                Some(_) => {}
            }
        }
        if let Some(name) = &joint.count {
            let lacks = format!("{of}: the data sheet `{}` has no value `{}`", sheet.id, name.as_str());
            match sheet.values.get(name.as_str()).map(|value| value.get_ref()) {
                None => faults.push(at(name, lacks, "add the value, without a number if none is known")),
                Some(value) if value.unit != Unit::One => {
                    let what = format!("{of}: the value `{}` of `{}` is no count", name.as_str(), sheet.id);
                    faults.push(at(name, what, "name the value that counts its fasteners"));
                }
                Some(_) => {}
            }
        }
        let points: Vec<&Point> = joint.points.iter().filter_map(|name| self.find(name)).collect();
        if !points.is_empty() && !points.iter().any(|point| point.when.suits(sheet)) {
            let what = format!("{of}: none of its points is asked of the engine `{}`", sheet.id);
            faults.push(at(&joint.id, what, "name a point whose conditions that engine meets"));
        }
        faults
    }
}

fn no_point(name: &Name) -> At {
    at(name, format!("there is no point `{}`", name.as_str()), "fragments/ has the points")
}
