//! Verdicts for the screen: asked of core, worded here.

use std::collections::BTreeMap;

use uuid::Uuid;
use witnessmark_core::flight::WindLimits;
use witnessmark_core::history::History;
use witnessmark_core::list::{Limits, Machinery};
use witnessmark_core::record::DeviceId;
use witnessmark_core::said::{Arg, Said};
use witnessmark_core::verdict::{Question, Reason, State, Verdict, judge};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;
use crate::usecases::school::place;
use crate::views::{FactView, ReasonView, VerdictView};

/// What holds of a machine under no school, or under another one than this device's.
static NO_LIMITS: Limits =
    Limits { wind: WindLimits { mean: None, gust: None, gust_factor: None }, inspect: BTreeMap::new() };

/// Who holds which device.
#[derive(Default)]
pub(crate) struct People {
    names: BTreeMap<DeviceId, String>,
    persons: BTreeMap<DeviceId, Uuid>,
}

impl People {
    pub(crate) fn add(&mut self, device: DeviceId, name: String, person: Uuid) {
        self.names.insert(device.clone(), name);
        self.persons.insert(device, person);
    }

    /// Whose device it is.
    pub(crate) fn person(&self, device: &DeviceId) -> Option<Uuid> {
        self.persons.get(device).copied()
    }

    /// What the holder of a device is called; the device's short name where nobody is known.
    pub(crate) fn name(&self, device: &DeviceId) -> String {
        self.names.get(device).cloned().unwrap_or_else(|| device.short())
    }
}

impl House {
    /// Who holds which device.
    pub(crate) fn people(&self, tx: &Tx<'_>) -> Result<People, Fault> {
        let mut people = People::default();
        for (device, standing) in tx.trust()?.devices() {
            people.add(device.clone(), standing.person.clone(), standing.person_id);
        }
        Ok(people)
    }

    /// The verdict on a machine from its history.
    pub(crate) fn verdict(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        history: &History,
        people: &People,
    ) -> Result<Verdict, Fault> {
        self.asked(tx, machine, history, people, judge)
    }

    /// Asks something of a machine's history.
    pub(crate) fn asked<T>(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        history: &History,
        people: &People,
        ask: impl FnOnce(Question<'_>) -> T,
    ) -> Result<T, Fault> {
        let described = history.machine.as_ref();
        Ok(ask(Question {
            history,
            sheet: described.and_then(|(machine, _)| self.catalogue.sheets.get(&machine.engine)),
            now: self.now(),
            people: &people.names,
            persons: &people.persons,
            split: &tx.split_words(machine)?,
            refused: tx.refused(machine)?,
            limits: self.limits_of(tx, history)?,
        }))
    }

    /// What the machine's school has set, where that is this device's own.
    pub(crate) fn limits_of(&self, tx: &Tx<'_>, history: &History) -> Result<&Limits, Fault> {
        let ours = match (history.school, place(tx)?) {
            (Some(school), Some(place)) => school == place.school,
            _ => false,
        };
        Ok(if ours { &self.catalogue.limits } else { &NO_LIMITS })
    }

    /// A machine's part in its lists; none where its engine isn't known.
    pub(crate) fn machinery<'a>(&'a self, history: &History) -> Option<Machinery<'a>> {
        let (machine, _) = history.machine.as_ref()?;
        let confirmed = history.confirmed.iter();
        Some(Machinery {
            sheet: self.catalogue.sheets.get(&machine.engine)?,
            fitted: machine.fitted.keys().cloned().collect(),
            confirmed: confirmed.map(|(name, (band, _))| (name.clone(), band.clone())).collect(),
            remembered: history.remembered(),
        })
    }

    /// A verdict in words.
    pub(crate) fn verdict_view(&self, verdict: &Verdict) -> VerdictView {
        let limits = verdict.reasons.iter().filter(|reason| reason.state == State::Limited).count();
        let headline = match verdict.state {
            State::Fit => Said::new("verdict-fit"),
            State::Limited => Said::new("verdict-limited").number("limits", limits as f64),
            State::Grounded => Said::new("verdict-grounded"),
        };
        VerdictView {
            state: verdict.state,
            headline: self.say(&headline),
            reasons: verdict.reasons.iter().map(|reason| self.reason_view(reason)).collect(),
        }
    }

    pub(crate) fn reason_view(&self, reason: &Reason) -> ReasonView {
        // A band is named by its id in core; people read its name.
        let band = match reason.say.args.get("band") {
            Some(Arg::Text(band)) => Some(band.clone()),
            _ => None,
        };
        let say = match &band {
            Some(band) => reason.say.clone().text("band", self.word(&format!("band-{band}"))),
            None => reason.say.clone(),
        };
        ReasonView {
            state: reason.state,
            rule: reason.rule,
            of_flight: reason.rule.of_flight(),
            words: self.say(&say),
            clears: self.say(&reason.clears),
            record: reason.record.map(|record| record.to_string()),
            point: reason.point.clone(),
            band,
            because: reason
                .because
                .iter()
                .map(|fact| FactView {
                    words: self.say(&fact.say),
                    record: fact.record.map(|record| record.to_string()),
                })
                .collect(),
        }
    }
}
