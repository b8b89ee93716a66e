//! A defect that may wait, said by somebody entitled, within limits.

use chrono::NaiveDate;
use uuid::Uuid;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Deferred, DeviceId, Digest, Right};
use witnessmark_store::Tx;

use crate::house::{House, id};
use crate::views::MachinePage;
use crate::{App, Fault, identity};

impl App {
    /// Signs that a defect may wait, within limits and under a condition.
    ///
    /// # Errors
    /// [`Fault`]: no defect there, no limit or condition given, limits already passed, a person who
    /// isn't entitled, a wrong PIN.
    #[allow(clippy::too_many_arguments)]
    pub fn defer(
        &mut self,
        machine: String,
        point: String,
        until_hours: Option<f64>,
        until_flights: Option<u32>,
        until_date: Option<String>,
        condition: String,
        reason: String,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let until_date = until_date.filter(|date| !date.is_empty()).map(|date| day(&date)).transpose()?;
        let (condition, reason) = (condition.trim().to_owned(), reason.trim().to_owned());
        let body = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let own = identity::signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))?;
            let deferred = Deferred {
                point: point.clone(),
                opened_by: self.house.leading_defect(tx, machine, &point)?,
                until_hours,
                until_flights,
                until_date,
                condition: condition.clone(),
                reason: reason.clone(),
            };
            self.house.check_deferral(tx, machine, &own.device, &deferred)?;
            Ok(Body::Deferred(deferred))
        };
        self.store.read(body)?;
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            self.house.write_record(tx, &seed, Some(machine), &body(tx)?)?;
            self.house.page(tx, machine)
        })
    }
}

/// Reads a day as forms write it.
pub(crate) fn day(text: &str) -> Result<NaiveDate, Fault> {
    text.trim().parse().map_err(|_| Fault::new("day").text("day", text))
}

impl House {
    /// The record of a machine's leading defect at a point.
    pub(crate) fn leading_defect(&self, tx: &Tx<'_>, machine: Uuid, point: &str) -> Result<Digest, Fault> {
        let history = self.known(tx, machine)?;
        let open = history.open_at(point).filter(|open| open.means() == Meaning::Unserviceable);
        let leading = open.and_then(|open| open.leading());
        Ok(leading.ok_or_else(|| Fault::new("nothing-open").text("point", point))?.record)
    }

    /// Whether this device may sign this deferral now.
    pub(crate) fn check_deferral(
        &self,
        tx: &Tx<'_>,
        machine: Uuid,
        device: &DeviceId,
        body: &Deferred,
    ) -> Result<(), Fault> {
        if body.condition.trim().is_empty() || body.reason.trim().is_empty() {
            return Err(Fault::new("deferral-words-missing"));
        }
        if body.until_hours.is_none() && body.until_flights.is_none() && body.until_date.is_none() {
            return Err(Fault::new("deferral-limit-missing"));
        }
        self.entitled(tx, machine, device, Right::Defer)?;
        if self.leading_defect(tx, machine, &body.point)? != body.opened_by {
            return Err(Fault::new("nothing-open").text("point", &body.point));
        }
        let history = self.known(tx, machine)?;
        let passed = body.until_hours.is_some_and(|hours| !hours.is_finite() || hours <= history.hours)
            || body.until_flights.is_some_and(|flights| flights <= history.flights)
            || body.until_date.is_some_and(|date| date < self.now().date_naive());
        if passed {
            return Err(Fault::new("deferral-passed")
                .figures("hours", format!("{:.1}", history.hours))
                .number("flights", history.flights));
        }
        Ok(())
    }
}
