//! The invented machines of the demonstration, with a history signed by invented people.

mod flight;
mod log;
mod school;

use std::collections::BTreeMap;

use chrono::{DateTime, Days, FixedOffset, TimeDelta};
use serde::Deserialize;
use uuid::Uuid;
use witnessmark_core::attention::LEAST_LOOK;
use witnessmark_core::history::History;
use witnessmark_core::list::{Ask, Given, List, ListPoint, Meaning, ResolvedBand, Sourced, compose, judge};
use witnessmark_core::record::{
    Body, Finding, Inspection, LimitConfirmed, Machine, Member, Rectified, Reserve, SigningSeed, TorqueDone,
};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Tx;

use self::flight::Carrying;
use self::log::chance;
use crate::house::House;
use crate::views::MachineCard;
use crate::{App, Fault};

/// The scenario file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Scenario {
    person: Vec<String>,
    machine: Vec<Part>,
}

/// One machine and its story.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Part {
    name: String,
    engine: String,
    note: String,
    hours: f64,
    flights: u32,
    /// Days since the reserve was repacked; no reserve where it is left out.
    repacked_days_ago: Option<u64>,
    /// What it weighs, and what its wing may carry.
    carrying: Option<Carrying>,
    #[serde(default)]
    limit: Vec<Limit>,
    #[serde(default)]
    look: Vec<LookBack>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Limit {
    band: String,
    document: String,
    page: String,
}

/// One inspection of the past. Points not named were found serviceable.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LookBack {
    days_ago: u64,
    by: usize,
    occasion: String,
    #[serde(default)]
    found: BTreeMap<String, String>,
    /// Points put right afterwards, and how.
    #[serde(default)]
    righted: BTreeMap<String, String>,
}

impl App {
    /// Adds the invented machines of the demonstration.
    ///
    /// # Errors
    /// [`Fault`]: they are here already.
    pub fn demo(&mut self) -> Result<Vec<MachineCard>, Fault> {
        let scenario: Scenario = toml::from_str(&self.house.catalogue.scenario).map_err(|fault| {
            Fault::new("catalogue").text("where", "demo/scenario.toml").text("why", fault.message())
        })?;
        self.store.write(|tx| {
            for machine in tx.machines()? {
                if self.house.known(tx, machine)?.machine.is_some_and(|(machine, _)| machine.invented) {
                    return Err(Fault::new("demo-here"));
                }
            }
            let mut teller = Teller::new(&self.house, tx, &scenario)?;
            for part in &scenario.machine {
                teller.tell(part)?;
            }
            self.house.cards(tx)
        })
    }
}

/// Writes the story's records with the invented people's keys.
struct Teller<'a> {
    house: &'a House,
    tx: &'a Tx<'a>,
    people: Vec<SigningSeed>,
    now: DateTime<FixedOffset>,
}

impl<'a> Teller<'a> {
    fn new(house: &'a House, tx: &'a Tx<'a>, scenario: &Scenario) -> Result<Self, Fault> {
        let longest = scenario.machine.iter().flat_map(|m| &m.look).map(|look| look.days_ago).max();
        let mut teller = Self::bare(house, tx);
        let first = teller.ago(longest.unwrap_or(0) + 2);
        for name in &scenario.person {
            let seed = teller.draw()?;
            let member =
                Member { person: house.uuid()?, name: name.clone(), key: seed.jwk(), invented: true };
            teller.write(&seed, None, first, &Body::Member(member))?;
            teller.people.push(seed);
        }
        Ok(teller)
    }

    fn bare(house: &'a House, tx: &'a Tx<'a>) -> Self {
        Self { house, tx, people: Vec::new(), now: house.now() }
    }

    /// An invented person's key, made for this one story and then forgotten: nobody can go on signing for them.
    fn draw(&self) -> Result<SigningSeed, Fault> {
        let mut secret = [0; 32];
        self.house.platform.random(&mut secret)?;
        Ok(SigningSeed::from_bytes(&secret))
    }

    fn ago(&self, days: u64) -> DateTime<FixedOffset> {
        self.now.checked_sub_days(Days::new(days)).unwrap_or(self.now)
    }

    fn person(&self, index: usize) -> Result<&SigningSeed, Fault> {
        self.people.get(index).ok_or_else(|| Fault::internal("the scenario names a person it doesn't have"))
    }

    /// Like [`House::write_record`], at a moment of the past.
    fn write(
        &self,
        seed: &SigningSeed,
        machine: Option<Uuid>,
        at: DateTime<FixedOffset>,
        body: &Body,
    ) -> Result<witnessmark_core::record::Record, Fault> {
        let mut salt = [0; 10];
        self.house.platform.random(&mut salt)?;
        let mut author = self.tx.author(&seed.device(), machine)?;
        if machine.is_some() {
            // The story's clock is its own: what this device wrote since must not push it into the present.
            author.clock = self
                .tx
                .history(machine.unwrap_or_default())?
                .and_then(|h| h.upto)
                .map(|p| p.clock())
                .unwrap_or_default();
        } else {
            author.clock = Default::default();
        }
        let record = author.write(body, machine, at, &salt, seed)?;
        self.tx.append(&record)?;
        Ok(record)
    }

    fn tell(&mut self, part: &Part) -> Result<(), Fault> {
        let machine = self.house.uuid()?;
        let first = part.look.iter().map(|look| look.days_ago).max().unwrap_or(0) + 1;
        let owner = self.person(0)?;
        let mut described = self.describe(part);
        described.hours = (part.hours - first as f64 * 0.4).max(0.0);
        self.write(owner, Some(machine), self.ago(first), &Body::Machine(described))?;
        for limit in &part.limit {
            self.confirm(owner, machine, self.ago(first), limit)?;
        }
        for look in &part.look {
            let seed = self.person(look.by)?;
            let at = self.ago(look.days_ago);
            let hours = (part.hours - look.days_ago as f64 * 0.4).max(0.0);
            let body = self.inspect(machine, look, at, hours)?;
            let record = self.write(seed, Some(machine), at, &Body::Inspection(body))?;
            for (point, how) in &look.righted {
                let body = Rectified { point: point.clone(), opened_by: record.digest, how: how.clone() };
                let later = at + TimeDelta::hours(3);
                self.write(seed, Some(machine), later, &Body::Rectified(body))?;
            }
        }
        self.write(
            owner,
            Some(machine),
            self.now - TimeDelta::minutes(5),
            &Body::Machine(self.describe(part)),
        )?;
        Ok(())
    }

    fn describe(&self, part: &Part) -> Machine {
        let sheet = self.house.catalogue.sheets.get(&part.engine);
        let parts = sheet.map(|sheet| self.house.catalogue.part_names(sheet)).unwrap_or_default();
        let fitted = parts.iter().filter(|(_, optional)| !optional || part.repacked_days_ago.is_some());
        Machine {
            wing_load: part.carrying.as_ref().map(Carrying::wing),
            weight: part.carrying.as_ref().map(Carrying::weight),
            name: part.name.clone(),
            engine: part.engine.clone(),
            fitted: fitted.map(|(name, _)| ((*name).to_owned(), String::new())).collect(),
            reserve: part
                .repacked_days_ago
                .map(|days| Reserve { repacked_on: Some(self.ago(days).date_naive()), every_days: 365 }),
            hours: part.hours,
            flights: part.flights,
            note: part.note.clone(),
            invented: true,
        }
    }

    fn confirm(
        &self,
        owner: &SigningSeed,
        machine: Uuid,
        at: DateTime<FixedOffset>,
        limit: &Limit,
    ) -> Result<(), Fault> {
        let history = self.history(machine)?;
        let band = self.house.machinery(&history).and_then(|m| m.band(&limit.band));
        let band = band.ok_or_else(|| Fault::new("no-such").text("what", &limit.band))?;
        let body = LimitConfirmed {
            band: limit.band.clone(),
            low: band.low.as_ref().and_then(Sourced::quantity),
            high: band.high.as_ref().and_then(Sourced::quantity),
            document: limit.document.clone(),
            page: limit.page.clone(),
        };
        self.write(owner, Some(machine), at, &Body::LimitConfirmed(body))?;
        Ok(())
    }

    fn history(&self, machine: Uuid) -> Result<History, Fault> {
        self.house.known(self.tx, machine)
    }

    fn inspect(
        &self,
        machine: Uuid,
        look: &LookBack,
        at: DateTime<FixedOffset>,
        hours: f64,
    ) -> Result<Inspection, Fault> {
        let history = self.history(machine)?;
        let machinery = self.house.machinery(&history);
        let machinery = machinery.ok_or_else(|| Fault::internal("the scenario names no known engine"))?;
        let list =
            compose(self.house.catalogue.parts(), &machinery, &look.occasion).map_err(Fault::internal)?;
        Ok(Inspection { hours, ..self.carry_out(&list, look, at, &history)? })
    }

    /// A list carried out, a point every eight seconds.
    fn carry_out(
        &self,
        list: &List,
        look: &LookBack,
        at: DateTime<FixedOffset>,
        history: &History,
    ) -> Result<Inspection, Fault> {
        let started = at - TimeDelta::seconds(i64::try_from(list.points().count() * 8).unwrap_or(0));
        let findings = list
            .points()
            .enumerate()
            .map(|(n, point)| {
                let then = started + TimeDelta::seconds(i64::try_from(n * 8).unwrap_or(0));
                self.find(point, look, then)
            })
            .collect::<Result<Vec<_>, Fault>>()?;
        let hurried = findings.iter().filter(|finding| finding.seconds < LEAST_LOOK);
        let hurried = hurried.map(|finding| finding.point.clone()).collect();
        Ok(Inspection {
            occasion: look.occasion.clone(),
            list: digest(list)?,
            language: self.house.language.clone(),
            started,
            finished: at,
            hours: history.hours,
            flights: history.flights,
            findings,
            left: Vec::new(),
            stepped_back: Vec::new(),
            hurried,
            job: None,
        })
    }

    fn find(&self, point: &ListPoint, look: &LookBack, at: DateTime<FixedOffset>) -> Result<Finding, Fault> {
        let given = match (&point.ask, look.found.get(&point.id)) {
            (Ask::Words { .. }, Some(answer)) => Given::Words { answer: answer.clone() },
            (Ask::Words { answers }, None) => {
                let good = answers.iter().find(|answer| answer.means == Meaning::Serviceable);
                Given::Words { answer: good.map(|answer| answer.id.clone()).unwrap_or_default() }
            }
            (Ask::Torque { band, nuts, .. }, _) => Given::Torque { torque: tightened(band, *nuts) },
            (Ask::Value { band, .. }, _) => {
                let end = |end: &Option<Sourced>| end.as_ref().and_then(|end| end.value);
                // About the middle of the band, never twice the same.
                let (middle, wide) = match (end(&band.low), end(&band.high)) {
                    (Some(low), Some(high)) => ((low + high) / 2.0, (high - low) / 2.0),
                    (Some(low), None) => (low * 1.1, low * 0.1),
                    (None, Some(high)) => (high / 2.0, high / 2.0),
                    // No figure is known: some that could be.
                    (None, None) if band.unit() == Unit::PerMinute => (6400.0, 200.0),
                    (None, None) => (5.0, 0.5),
                };
                let drawn = chance(at.timestamp().unsigned_abs().wrapping_add(point.id.len() as u64));
                let step = if middle > 100.0 { 10.0 } else { 0.1 };
                let value = ((middle + 0.6 * wide * drawn) / step).round() * step;
                let value = (value * 1000.0).round() / 1000.0;
                Given::Value { value: Quantity::new(value, band.unit()) }
            }
        };
        let judged = judge(&point.ask, &given).map_err(Fault::internal)?;
        // A value without a limit is nothing the story wants to tell of.
        let means = if look.found.contains_key(&point.id) {
            judged.means
        } else {
            judged.means.min(Meaning::Serviceable)
        };
        Ok(Finding {
            point: point.id.clone(),
            station: point.station.clone(),
            component: point.component.clone(),
            title: self.house.point_words(point, None),
            means,
            passing: point.passing,
            answer: match &given {
                Given::Words { answer } => Some(answer.clone()),
                _ => None,
            },
            words: self.house.given_words(point, &given),
            measured: judged.measured,
            band: match &point.ask {
                Ask::Value { band, .. } | Ask::Torque { band, .. } => Some(band.clone()),
                Ask::Words { .. } => None,
            },
            note: String::new(),
            photos: Vec::new(),
            at,
            seconds: pace(look.by, at),
            before: Vec::new(),
            torque: match given {
                Given::Torque { torque } => Some(torque),
                _ => None,
            },
        })
    }
}

/// Whoever stands here in a story is always in a hurry.
const HASTY: usize = 5;

/// How long somebody looked at a point, seconds.
fn pace(by: usize, at: DateTime<FixedOffset>) -> f64 {
    let usual = if by == HASTY { 2.4 } else { 5.5 };
    (usual * (1.0 + 0.35 * chance(at.timestamp().unsigned_abs())) * 10.0).round() / 10.0
}

/// A joint tightened to the middle of its band with the story's wrench.
fn tightened(band: &ResolvedBand, nuts: u32) -> TorqueDone {
    let ends: Vec<f64> = band.ends().filter_map(|end| end.value).collect();
    let middle = ends.iter().sum::<f64>() / (ends.len().max(1) as f64);
    let setting = |share: f64| Quantity::new(middle * share, band.unit());
    TorqueDone {
        tool: Uuid::nil(),
        tool_name: "Click wrench (invented)".into(),
        setting: setting(1.0),
        least: setting(0.96),
        most: setting(1.04),
        eighths: (0..nuts).map(|_| 1).collect(),
        reading: None,
        watch: Vec::new(),
        override_reason: None,
    }
}

fn digest(list: &List) -> Result<witnessmark_core::record::Digest, Fault> {
    Ok(list.digest()?)
}
