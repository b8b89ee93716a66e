//! Load, fuel, air and wind before a flight.

mod form;
mod own;
mod telling;

use uuid::Uuid;
use witnessmark_core::flight::{FlightFault, Mix, Oil, oil_to_add};
use witnessmark_core::history::History;
use witnessmark_core::record::{Body, FlightPlanned};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::{Part, State, Verdict, fault_said, flight_faults, judge};
use witnessmark_store::{Pending, Tx};

use crate::house::{House, id};
use crate::views::{FlightFaultView, FlightForm, FlightGravest, FlightPartView, FlightPourView, FlightView};
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

/// What can't be reckoned grounds, and is told before what merely lies past a limit.
fn gravest(parts: &[FlightPartView], faults: &[FlightFaultView]) -> Option<FlightGravest> {
    if let Some(fault) = faults.first() {
        return Some(FlightGravest { state: State::Grounded, words: fault.words.clone() });
    }
    let reasons = parts.iter().map(|part| &part.reason).filter(|reason| reason.state > State::Fit);
    // The first of the gravest, in the order in which they are asked.
    let gravest = reasons.min_by_key(|reason| std::cmp::Reverse(reason.state))?;
    Some(FlightGravest { state: gravest.state, words: gravest.words.clone() })
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
        let parts = self.flight_parts(&verdict);
        let told = |(part, fault): &(Part, FlightFault)| FlightFaultView {
            part: part.id().to_owned(),
            words: self.say(&fault_said(fault)),
        };
        let faults: Vec<FlightFaultView> = faults.iter().map(told).collect();
        Ok(FlightView {
            pour: plan.mix.as_ref().and_then(|plan| self.pour(&plan.mix)),
            gravest: gravest(&parts, &faults),
            parts,
            faults,
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
        let decimals = if cup == Unit::Millilitre { 1.0 } else { 1000.0 };
        let oil = Quantity::new((oil.value * decimals).round() / decimals, cup);
        Some(FlightPourView { oil, words: self.figures(&oil.to_string()) })
    }
}
