//! Components move between machines and keep their time.

use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::record::{Body, ComponentMoved, Service};
use witnessmark_core::said::Said;
use witnessmark_store::Tx;

use crate::house::{House, id};
use crate::views::{ComponentView, MachinePage};
use crate::{App, Fault, identity};

impl App {
    /// Fits a component that is new here, with the time in service it brings.
    ///
    /// # Errors
    /// [`Fault`]: no such part, no name, a time below nothing, a wrong PIN.
    pub fn component_fit(
        &mut self,
        machine: String,
        part: String,
        name: String,
        serial: String,
        own: Option<Service>,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let own = own.unwrap_or_default();
        let name = name.trim().to_owned();
        if name.is_empty() {
            return Err(Fault::new("component-name"));
        }
        if !own.hours.is_finite() || own.hours < 0.0 {
            return Err(Fault::new("number-negative").text("what", self.house.word("term-hours")));
        }
        let history = self.store.read(|tx| self.house.known(tx, machine))?;
        let parts = self.house.machinery(&history).map(|m| self.house.catalogue.part_names(m.sheet));
        if !parts.is_some_and(|parts| parts.iter().any(|(known, _)| *known == part)) {
            return Err(Fault::new("part-unknown").text("part", part));
        }
        let component = self.house.uuid()?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let service = self.house.known(tx, machine)?.service();
            let serial = serial.trim().to_owned();
            let body = ComponentMoved { component, part, name, serial, fitted: true, own, service };
            self.house.write_record(tx, &seed, Some(machine), &Body::ComponentMoved(body))?;
            self.house.page(tx, machine)
        })
    }

    /// Takes a component off a machine and, where another machine is named, fits it there: two
    /// records, one transaction, its own time kept.
    ///
    /// # Errors
    /// [`Fault`]: it isn't on this machine, no such other machine, a wrong PIN.
    pub fn component_move(
        &mut self,
        machine: String,
        component: String,
        to: Option<String>,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let (machine, component) = (id(&machine)?, id(&component)?);
        let to = to.filter(|to| !to.is_empty()).map(|to| id(&to)).transpose()?;
        self.store.read(|tx| {
            self.house.fitted(tx, machine, component)?;
            to.map(|to| self.house.known(tx, to)).transpose().map(|_| ())
        })?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let off = self.house.fitted(tx, machine, component)?;
            let on = off.clone();
            self.house.write_record(tx, &seed, Some(machine), &Body::ComponentMoved(off))?;
            if let Some(to) = to {
                let service = self.house.known(tx, to)?.service();
                let on = ComponentMoved { fitted: true, service, ..on };
                self.house.write_record(tx, &seed, Some(to), &Body::ComponentMoved(on))?;
            }
            self.house.page(tx, machine)
        })
    }
}

impl House {
    /// The record that takes a component off the machine it is on, with its own time then.
    fn fitted(&self, tx: &Tx<'_>, machine: Uuid, component: Uuid) -> Result<ComponentMoved, Fault> {
        let history = self.known(tx, machine)?;
        let found = history.work.components.get(&component).filter(|known| known.body.fitted);
        let found = found.ok_or_else(|| Fault::new("component-not-here"))?;
        let service = history.service();
        Ok(ComponentMoved { fitted: false, own: found.own(&service), service, ..found.body.clone() })
    }

    /// A machine's components.
    pub(crate) fn component_views(&self, history: &History) -> Vec<ComponentView> {
        let service = history.service();
        let view = |(id, component): (&Uuid, &witnessmark_core::work::Component)| {
            let own = component.own(&service);
            ComponentView {
                id: id.to_string(),
                part: component.body.part.clone(),
                part_words: self.word(&format!("part-{}", component.body.part)),
                name: component.body.name.clone(),
                serial: component.body.serial.clone(),
                fitted: component.body.fitted,
                own,
                words: self.say(
                    &Said::new("component-time")
                        .figures("hours", format!("{:.1}", own.hours))
                        .number("flights", own.flights),
                ),
                record: component.record.to_string(),
            }
        };
        history.work.components.iter().map(view).collect()
    }
}
