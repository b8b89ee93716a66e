//! What can be said of a machine, beside its name and engine.

use witnessmark_app::Fault;
use witnessmark_core::record::{Machine, Reserve};

use super::carrying::Carrying;
use crate::reading;

/// Days between repacks where nobody says: the shorter of the two intervals in common use
/// (from memory, no source), so that it errs towards an early repack.
const REPACK_DAYS: u32 = 180;

#[derive(clap::Args)]
pub struct Described {
    #[arg(long, value_name = "H")]
    hours: Option<f64>,
    #[arg(long, value_name = "N")]
    flights: Option<u32>,
    #[arg(long, value_name = "DATE", conflicts_with = "without_reserve")]
    reserve_repacked: Option<String>,
    #[arg(long, value_name = "DAYS", conflicts_with = "without_reserve")]
    repack_every: Option<u32>,
    #[arg(long)]
    without_reserve: bool,
    #[arg(long, value_name = "PART=SERIAL")]
    serial: Vec<String>,
    #[command(flatten)]
    carrying: Carrying,
    #[arg(long, value_name = "TEXT")]
    note: Option<String>,
}

impl Described {
    /// Puts into the description what was said; what wasn't stays.
    pub fn put_into(self, machine: &mut Machine) -> Result<(), Fault> {
        machine.hours = self.hours.unwrap_or(machine.hours);
        machine.flights = self.flights.unwrap_or(machine.flights);
        machine.note = self.note.unwrap_or(std::mem::take(&mut machine.note));
        if self.without_reserve {
            machine.reserve = None;
            machine.fitted.remove("reserve");
        } else if self.reserve_repacked.is_some() || self.repack_every.is_some() {
            machine.fitted.entry("reserve".into()).or_default();
            let before = machine.reserve.take().unwrap_or_else(unknown_reserve);
            let day = self.reserve_repacked.as_deref().map(reading::day).transpose()?;
            machine.reserve = Some(Reserve {
                repacked_on: day.or(before.repacked_on),
                every_days: self.repack_every.unwrap_or(before.every_days),
            });
        }
        for serial in &self.serial {
            let (part, number) =
                serial.split_once('=').ok_or_else(|| Fault::new("serial").text("text", serial))?;
            machine.fitted.insert(part.trim().to_owned(), number.trim().to_owned());
        }
        self.carrying.put_into(machine)
    }
}

/// A reserve of which nothing is known yet: fitted, for a machine is not without one by silence.
pub fn unknown_reserve() -> Reserve {
    Reserve { repacked_on: None, every_days: REPACK_DAYS }
}
