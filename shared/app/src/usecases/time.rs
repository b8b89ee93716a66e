//! Time in service: logged in two taps after landing, signed with the next signature.

use witnessmark_core::record::{Body, Service, TimeLogged};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Pending;

use crate::house::id;
use crate::views::MachinePage;
use crate::{App, Fault};

/// More hours than an engine runs in a day are a slip of the pen.
const MOST_HOURS: f64 = 24.0;
/// More flights than that too.
const MOST_FLIGHTS: u32 = 50;
/// More litres an hour than any of these engines burns.
const MOST_BURNED: f64 = 30.0;

impl App {
    /// Logs time in service: hours run, flights, tanks used up; or the hour meter's reading. It counts at
    /// once and is signed with the next signature on this device.
    ///
    /// # Errors
    /// [`Fault`]: nothing logged, more than a day holds, a reading behind the last.
    pub fn log_time(
        &mut self,
        machine: String,
        added: Option<Service>,
        reading: Option<f64>,
        note: String,
        fuel: Option<Quantity>,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        self.store.write(|tx| {
            let before = self.house.known(tx, machine)?;
            let mut added = added.unwrap_or_default();
            if let Some(reading) = reading {
                if !reading.is_finite() || reading < before.hours {
                    return Err(Fault::new("reading-behind").figures("hours", format!("{:.1}", before.hours)));
                }
                added.hours = reading - before.hours;
            }
            let sane = added.hours.is_finite() && added.hours >= 0.0;
            if !sane || added.hours > MOST_HOURS || added.flights > MOST_FLIGHTS {
                return Err(Fault::new("time-too-much")
                    .number("hours", MOST_HOURS)
                    .number("flights", MOST_FLIGHTS));
            }
            if added == Service::default() {
                return Err(Fault::new("nothing-logged"));
            }
            let body =
                TimeLogged { added, reading, fuel: burned(fuel, added)?, note: note.trim().to_owned() };
            tx.pending_add(&Pending { machine, at: self.house.now(), body: Body::TimeLogged(body) })?;
            self.house.page(tx, machine)
        })
    }

    /// Takes back the time logged last, while nobody has signed it.
    ///
    /// # Errors
    /// [`Fault`]: it was signed already, or there is none.
    pub fn log_undo(&mut self, machine: String) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        self.store.write(|tx| {
            if !tx.pending_undo(machine)? {
                return Err(Fault::new("log-signed"));
            }
            self.house.page(tx, machine)
        })
    }
}

/// Fuel burned, as far as it can be: a volume, in some time, and not more than an engine takes.
fn burned(fuel: Option<Quantity>, added: Service) -> Result<Option<Quantity>, Fault> {
    let Some(fuel) = fuel else { return Ok(None) };
    let litres = fuel.to(Unit::Litre).map_err(|fault| Fault::new("unit").text("why", fault))?.value;
    if added.hours <= 0.0 || litres <= 0.0 || litres > MOST_BURNED * added.hours {
        return Err(Fault::new("fuel-burned"));
    }
    Ok(Some(fuel))
}
