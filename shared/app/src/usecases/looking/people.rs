//! How each person looks, beside the others on the same points: where to help, and never who is better.

use std::cmp::Reverse;

use witnessmark_core::attention::{Looker, Than};
use witnessmark_core::record::DeviceId;
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use super::tallied::Tallied;
use crate::Fault;
use crate::house::House;
use crate::views::{LookingPerson, LookingReport};

impl House {
    /// What a device's holder may see of how people look.
    pub(super) fn looking(&self, tx: &Tx<'_>, own: Option<&DeviceId>) -> Result<LookingReport, Fault> {
        let tallied = self.tallied(tx)?;
        let (called, people) = (self.points_called()?, self.people(tx)?);
        let mut views = Vec::new();
        for looker in tallied.tally.people() {
            let Some(devices) = tallied.people.get(looker.person) else { continue };
            let you = own.is_some_and(|own| devices.contains(own));
            if !you && !self.may_see(tx, &tallied, looker.person, own)? {
                continue;
            }
            let mut points = Vec::new();
            for hurried in &looker.points {
                if let Some((point, latest)) = tallied.points.get(hurried.point) {
                    let title = self.point_called(tx, &called, point, latest)?.title;
                    let said = Said::new("looking-hurried-point").text("point", title);
                    points.push(self.say(&said.number("times", hurried.times)));
                }
            }
            let name = devices.first().map(|device| people.name(device)).unwrap_or_default();
            views.push(self.looking_person(looker, name, you, points));
        }
        // Oneself first, the others by name: an order that says nothing.
        views.sort_by(|a, b| (Reverse(a.you), &a.name).cmp(&(Reverse(b.you), &b.name)));
        let mut caution = self.word("looking-caution");
        if tallied.fleet.invented {
            caution = format!("{caution} {}", self.word("looking-invented"));
        }
        Ok(LookingReport { people: views, caution })
    }

    /// Whether the holder of `own` may see how somebody else looks: who looks at a school's machines, its
    /// instructors only.
    fn may_see(
        &self,
        tx: &Tx<'_>,
        tallied: &Tallied,
        person: usize,
        own: Option<&DeviceId>,
    ) -> Result<bool, Fault> {
        for school in tallied.schools.get(person).into_iter().flatten() {
            let teaches = own.map(|own| self.teaches(tx, school, own)).transpose()?;
            if teaches != Some(true) {
                return Ok(false);
            }
        }
        Ok(true)
    }

    fn looking_person(&self, looker: Looker, name: String, you: bool, points: Vec<String>) -> LookingPerson {
        let percent = |share: f64| (share * 1000.0).round() / 10.0;
        let found = |share: f64| (share * 10_000.0).round() / 100.0;
        let seconds = |seconds: f64| (seconds * 10.0).round() / 10.0;
        LookingPerson {
            sentences: self.looking_sentences(&looker, !points.is_empty()),
            name,
            you,
            inspections: u32::try_from(looker.inspections).unwrap_or(u32::MAX),
            looks: looker.looks,
            seconds: seconds(looker.seconds.unwrap_or_default()),
            fleet_seconds: looker.others_seconds.map(seconds),
            hurried_percent: percent(looker.hurried),
            fleet_hurried_percent: looker.others_hurried.map(percent),
            found_percent: found(looker.found),
            fleet_found_percent: looker.others_found.map(found),
            points,
        }
    }

    fn looking_sentences(&self, looker: &Looker, points: bool) -> Vec<String> {
        let percent = |share: f64| (share * 10_000.0).round() / 100.0;
        let beside = |id: &str, own: f64, others: Option<f64>| {
            let said = Said::new(id).number("looks", looker.looks);
            said.number("own", percent(own)).number("others", percent(others.unwrap_or_default()))
        };
        let mut told = Vec::new();
        if looker.hurries == Than::More {
            told.push(beside("looking-hurries", looker.hurried, looker.others_hurried));
            if points {
                told.push(Said::new("looking-hurries-where"));
            }
        }
        if looker.quick {
            let whole = |seconds: Option<f64>| (seconds.unwrap_or_default() * 2.0).round() / 2.0;
            let said = Said::new("looking-quick").number("looks", looker.looks);
            told.push(
                said.number("own", whole(looker.seconds)).number("others", whole(looker.others_seconds)),
            );
        }
        match looker.finds {
            Than::Less => told.push(beside("looking-finds-less", looker.found, looker.others_found)),
            Than::More => told.push(beside("looking-finds-more", looker.found, looker.others_found)),
            Than::Like => {}
        }
        told.iter().map(|said| self.say(said)).collect()
    }
}
