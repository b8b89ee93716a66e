//! What points are called in a report, and whether a list demands them.

use std::collections::BTreeMap;

use witnessmark_core::list::{Machinery, compose};
use witnessmark_core::record::{Body, Digest};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;

/// A point as the lists of today have it.
#[derive(Clone)]
pub(super) struct Called {
    pub title: String,
    /// Whether a list demands it, or a life hangs on it.
    pub must: bool,
}

impl House {
    /// All points of all lists, by id.
    pub(super) fn points_called(&self) -> Result<BTreeMap<String, Called>, Fault> {
        let mut called: BTreeMap<String, Called> = BTreeMap::new();
        for sheet in self.catalogue.sheets.values() {
            let parts = self.catalogue.part_names(sheet).into_iter();
            let machine = Machinery {
                sheet,
                fitted: parts.map(|(name, _)| name.to_owned()).collect(),
                confirmed: BTreeMap::new(),
                remembered: BTreeMap::new(),
            };
            for occasion in &self.catalogue.occasions {
                let list =
                    compose(self.catalogue.parts(), &machine, &occasion.id).map_err(Fault::internal)?;
                for point in list.points() {
                    let must = point.must || point.critical;
                    let new = || Called { title: self.point_words(point, None), must };
                    called.entry(point.id.clone()).or_insert_with(new).must |= must;
                }
            }
        }
        Ok(called)
    }

    /// One point: of today's lists, a joint's tightening, or as it was called when it was looked at last.
    pub(super) fn point_called(
        &self,
        tx: &Tx<'_>,
        called: &BTreeMap<String, Called>,
        point: &str,
        latest: &Digest,
    ) -> Result<Called, Fault> {
        if let Some(called) = called.get(point) {
            return Ok(called.clone());
        }
        let joint = point
            .strip_prefix("torque-")
            .filter(|joint| self.catalogue.texts.has(&format!("joint-{joint}"), None));
        if let Some(joint) = joint {
            return Ok(Called { title: self.torque_point_words(joint, None), must: true });
        }
        let body = tx.record(latest)?.map(|record| record.payload.typed());
        let title = match body {
            Some(Ok(Body::Inspection(body))) => {
                body.findings.into_iter().find(|finding| finding.point == point).map(|finding| finding.title)
            }
            _ => None,
        };
        // What isn't in the lists any more might have been demanded.
        Ok(Called { title: title.unwrap_or_else(|| point.to_owned()), must: true })
    }
}
