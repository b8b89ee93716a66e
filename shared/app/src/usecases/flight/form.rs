//! What is asked before a flight, with what is known already.

use uuid::Uuid;
use witnessmark_core::flight::{Burn, Loads, WindLimits, burning};
use witnessmark_core::history::History;
use witnessmark_core::list::{EngineKind, ResolvedBand};
use witnessmark_core::record::{FlightPlanned, FuelPlanned, LoadPlanned, Machine};
use witnessmark_core::said::Said;
use witnessmark_core::told::{Told, TooLittle};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{MIX_RATIO, burn_said, mix_parts};
use witnessmark_store::Tx;

use super::own::{self, Own};
use crate::Fault;
use crate::house::House;
use crate::own_units::view;
use crate::views::{FlightForm, UnitLists};

/// Flights whose burn is reckoned with: the latest, as an engine changes with jets and propellers.
const BURNS: usize = 20;

impl House {
    pub(super) fn flight_form(&self, tx: &Tx<'_>, machine: Uuid) -> Result<FlightForm, Fault> {
        let history = self.known(tx, machine)?;
        let (described, _) =
            history.machine.clone().ok_or_else(|| Fault::new("no-such").text("what", machine))?;
        let kind = self.catalogue.sheets.get(&described.engine).map(|sheet| sheet.kind);
        let burns_fuel = kind != Some(EngineKind::Electric);
        let burns = burns(&history);
        let own = own::kept(tx)?;
        let today = self.planned_today(&history);
        let plan = match today {
            Some(plan) => plan.clone(),
            None => self.still_holds(&history, &described, &own, burns_fuel.then_some(&burns)),
        };
        let band = self.machinery(&history).and_then(|machinery| machinery.band(MIX_RATIO));
        let school = self.limits_of(tx, &history)?.wind;
        Ok(FlightForm {
            machine: machine.to_string(),
            machine_name: described.name,
            plan,
            today: today.is_some(),
            own: own.stated,
            wing: described.wing_load,
            weight: described.weight,
            mixes: kind == Some(EngineKind::TwoStroke),
            burns_fuel,
            ratio: band.as_ref().and_then(|band| mix_parts(band, f64::min)),
            ratio_words: band.as_ref().and_then(|band| self.ratio_words(band)),
            burns_words: self.burns_words(&burns),
            burns,
            school_wind: Some(school).filter(|wind| *wind != WindLimits::default()),
            units: self.flight_units(),
        })
    }

    /// Figures of an earlier day that may still hold. What was in the tank then, the air and the wind don't.
    fn still_holds(
        &self,
        history: &History,
        described: &Machine,
        own: &Own,
        burns: Option<&Vec<Burn>>,
    ) -> FlightPlanned {
        let nothing = Quantity::new(0.0, Unit::Kilogram);
        let last = history.flight.as_ref().and_then(|(plan, _)| plan.load.as_ref());
        let load = || {
            let fuel = if burns.is_some() { own.stated.fuel? } else { nothing };
            let loads = Loads {
                pilot: own.stated.pilot?,
                machine: described.weight.or(last.map(|last| last.loads.machine))?,
                fuel,
                ballast: own.stated.ballast.unwrap_or(nothing),
            };
            Some(LoadPlanned { loads, wing: described.wing_load.clone()? })
        };
        let fuel = || {
            Some(FuelPlanned {
                on_board: own.stated.fuel?,
                burns: burns?.clone(),
                reserve: own.stated.reserve?,
                flight_time: own.flight_time?,
            })
        };
        FlightPlanned { at: self.now(), load: load(), mix: None, fuel: fuel(), air: None, wind: None }
    }

    /// `50:1`, and where that stands.
    fn ratio_words(&self, band: &ResolvedBand) -> Option<String> {
        let (rich, lean) = (mix_parts(band, f64::min)?, mix_parts(band, f64::max)?);
        let ratio = if rich == lean { format!("{rich}") } else { format!("{rich}–{lean}") };
        let said = Said::new("ratio-words").figures("ratio", ratio);
        Some(self.say(&said.text("source", self.source_words(band))))
    }

    fn burns_words(&self, burns: &[Burn]) -> String {
        let few = |has: usize, needs: usize| {
            Said::new("burns-few").number("has", has as f64).number("needs", needs as f64)
        };
        self.say(&match burning(burns) {
            Ok(Told::Told(burning)) => burn_said(&burning),
            Ok(Told::TooLittle(TooLittle::Few { has, needs })) => few(has, needs),
            Ok(Told::TooLittle(_)) | Err(_) => few(burns.len(), burns.len() + 1),
        })
    }

    /// The person's own units first. Oil is measured in a cup, so that litres come in thousandths too.
    fn flight_units(&self) -> UnitLists {
        let mut lists = self.unit_lists();
        lists.volume.push(view(Unit::Millilitre));
        let (own, of) = (&self.units, &mut lists);
        for (own, list) in [
            (own.mass, &mut of.mass),
            (own.volume, &mut of.volume),
            (own.speed, &mut of.speed),
            (own.temperature, &mut of.temperature),
            (own.pressure, &mut of.pressure),
            (own.height, &mut of.height),
        ] {
            list.sort_by_key(|view| view.code != own);
        }
        lists
    }
}

/// What the latest flights burned, but for what can't be.
fn burns(history: &History) -> Vec<Burn> {
    let all = history.burns.iter().map(|burnt| Burn::Flight(burnt.burned));
    let possible: Vec<Burn> = all.filter(|burn| burning(&[*burn]).is_ok()).collect();
    possible.get(possible.len().saturating_sub(BURNS)..).unwrap_or_default().to_vec()
}
