//! Load, fuel, air and wind before a flight.

mod form;
mod own;
mod telling;

use uuid::Uuid;
use witnessmark_core::flight::oil_to_add;
use witnessmark_core::flight::{Mix, Oil};
use witnessmark_core::history::History;
use witnessmark_core::record::{Body, FlightPlanned};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Part, Verdict, fault_said, flight_faults, judge};
use witnessmark_store::{Pending, Tx};

use crate::house::{House, id};
use crate::views::{FlightFaultView, FlightForm, FlightPartView, FlightPourView, FlightView};
use crate::{App, Fault, identity};

/// The kind of the record.
const KIND: &str = "flight-planned";

impl App {
    /// What is asked before a flight, with what is known already.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn flight_form(&mut self, machine: String) -> Result<FlightForm, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.flight_form(tx, machine))
    }

    /// What comes of a plan, while it is being typed.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn flight_judge(
        &mut self,
        machine: String,
        plan: Option<FlightPlanned>,
    ) -> Result<FlightView, Fault> {
        let machine = id(&machine)?;
        let plan = self.house.worked_out_now(plan.ok_or_else(|| Fault::new("flight-empty"))?);
        self.store.read(|tx| self.house.flight_view(tx, machine, &plan))
    }

    /// Keeps a plan: it enters the verdict at once, and is signed with the next signature on this device.
    ///
    /// # Errors
    /// [`Fault`]: figures that can't be, nothing entered, no right over the machine.
    pub fn flight_keep(&mut self, machine: String, plan: Option<FlightPlanned>) -> Result<FlightView, Fault> {
        let machine = id(&machine)?;
        let plan = self.house.worked_out_now(plan.ok_or_else(|| Fault::new("flight-empty"))?);
        self.store.write(|tx| {
            let view = self.house.flight_view(tx, machine, &plan)?;
            if let Some(fault) = view.faults.first() {
                return Err(Fault::new("flight-impossible").text("why", &fault.words));
            }
            // Today's plan is taken back by keeping one in which nothing is asked.
            if is_empty(&plan) && self.house.planned_today(&self.house.known(tx, machine)?).is_none() {
                return Err(Fault::new("flight-empty"));
            }
            let body = Body::FlightPlanned(Box::new(plan.clone()));
            if let Some(own) = identity::signatory(tx)? {
                self.house.may_sign(tx, machine, &own.device, &body)?;
            }
            tx.pending_drop(machine, KIND)?;
            tx.pending_add(&Pending { machine, at: plan.at, body })?;
            own::keep(tx, &plan)?;
            Ok(view)
        })
    }
}

fn is_empty(plan: &FlightPlanned) -> bool {
    plan.load.is_none()
        && plan.mix.is_none()
        && plan.fuel.is_none()
        && plan.air.is_none()
        && plan.wind.is_none()
}

impl House {
    /// The plan as it stands at this moment. What was measured before stays measured then.
    fn worked_out_now(&self, mut plan: FlightPlanned) -> FlightPlanned {
        let now = self.now();
        plan.at = now;
        if let Some(air) = &mut plan.air {
            air.measured = air.measured.filter(|at| *at < now);
        }
        if let Some(wind) = &mut plan.wind {
            wind.measured = wind.measured.filter(|at| *at < now);
        }
        plan
    }

    /// The plan that holds today.
    fn planned_today<'a>(&self, history: &'a History) -> Option<&'a FlightPlanned> {
        let now = self.now();
        let (plan, _) = history.flight.as_ref()?;
        (plan.at.with_timezone(now.offset()).date_naive() == now.date_naive()).then_some(plan)
    }

    fn flight_view(&self, tx: &Tx<'_>, machine: Uuid, plan: &FlightPlanned) -> Result<FlightView, Fault> {
        let mut history = self.known(tx, machine)?;
        history.flight = Some((plan.clone(), None));
        let people = self.people(tx)?;
        let (verdict, faults) =
            self.asked(tx, machine, &history, &people, |q| (judge(q), flight_faults(q, plan)))?;
        Ok(FlightView {
            parts: self.flight_parts(&verdict),
            pour: plan.mix.as_ref().and_then(|plan| self.pour(&plan.mix)),
            faults: faults
                .iter()
                .map(|(part, fault)| FlightFaultView {
                    part: part.id().to_owned(),
                    words: self.say(&fault_said(fault)),
                })
                .collect(),
            verdict: self.verdict_view(&verdict),
        })
    }

    fn flight_parts(&self, verdict: &Verdict) -> Vec<FlightPartView> {
        let reason = |part: Part| {
            let reason = verdict.reasons.iter().find(|reason| Part::of(reason.rule) == Some(part))?;
            Some(FlightPartView { part: part.id().to_owned(), reason: self.reason_view(reason) })
        };
        Part::ALL.into_iter().filter_map(reason).collect()
    }

    /// Oil to pour, as it is read off a measuring cup: millilitres for whoever fills up in litres.
    fn pour(&self, mix: &Mix) -> Option<FlightPourView> {
        let Oil::Add(oil) = oil_to_add(mix).ok()? else { return None };
        let cup = if self.units.volume == Unit::Litre { Unit::Millilitre } else { self.units.volume };
        let oil = oil.to(cup).ok().filter(|oil| oil.value > 0.0)?;
        let step = if cup == Unit::Millilitre { 1.0 } else { 0.001 };
        // A thousandth by division: it is no binary number.
        let value = if step < 1.0 { (oil.value * 1000.0).round() / 1000.0 } else { oil.value.round() };
        let oil = Quantity::new(value, cup);
        Some(FlightPourView { oil, words: self.figures(&oil.to_string()) })
    }
}
