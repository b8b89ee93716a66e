//! A defect that may wait, said by somebody entitled, within limits.

use chrono::NaiveDate;
use witnessmark_core::list::Meaning;
use witnessmark_core::record::{Body, Deferred, Right};
use witnessmark_store::Tx;

use crate::house::id;
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
        if condition.is_empty() || reason.is_empty() {
            return Err(Fault::new("deferral-words-missing"));
        }
        if until_hours.is_none() && until_flights.is_none() && until_date.is_none() {
            return Err(Fault::new("deferral-limit-missing"));
        }
        let body = |tx: &Tx<'_>| -> Result<Body, Fault> {
            let history = self.house.known(tx, machine)?;
            let own = identity::signatory(tx)?.ok_or_else(|| Fault::new("not-begun"))?;
            self.house.entitled(tx, machine, &own.device, Right::Defer)?;
            let open = history.open_at(&point).filter(|open| open.means() == Meaning::Unserviceable);
            let leading = open.and_then(|open| open.leading());
            let leading = leading.ok_or_else(|| Fault::new("nothing-open").text("point", &point))?;
            let passed = until_hours.is_some_and(|hours| !hours.is_finite() || hours <= history.hours)
                || until_flights.is_some_and(|flights| flights <= history.flights)
                || until_date.is_some_and(|date| date < self.house.now().date_naive());
            if passed {
                return Err(Fault::new("deferral-passed")
                    .text("hours", format!("{:.1}", history.hours))
                    .number("flights", history.flights));
            }
            Ok(Body::Deferred(Deferred {
                point: point.clone(),
                opened_by: leading.record,
                until_hours,
                until_flights,
                until_date,
                condition: condition.clone(),
                reason: reason.clone(),
            }))
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
