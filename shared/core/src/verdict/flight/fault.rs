//! Why a part can't be reckoned, as a sentence.

use crate::flight::FlightFault;
use crate::said::Said;
use crate::units::{Quantity, UnitFault};

/// A fault in a flight's figures, as a sentence that says what to do.
pub fn fault_said(fault: &FlightFault) -> Said {
    match fault {
        FlightFault::Unit(UnitFault::OtherDimension { from, to }) => {
            Said::new("flight-fault-unit").text("from", from).text("to", to)
        }
        FlightFault::Unit(UnitFault::TooCold) => Said::new("flight-fault-too-cold"),
        FlightFault::Unit(UnitFault::NotFinite(_) | UnitFault::Unknown(_)) => {
            Said::new("flight-fault-number")
        }
        FlightFault::Impossible { what, must } => {
            named("flight-fault-impossible", what.id()).text("must", must.id())
        }
        FlightFault::Backwards(what) => named("flight-fault-backwards", what.id()),
        FlightFault::Outside { what, value, low, high } => {
            // In the unit that was typed, or a slip in the unit couldn't be seen.
            let typed = |end: &Quantity| super::read::tenths(end.to(value.unit).unwrap_or(*end));
            named("flight-fault-outside", what.id())
                .figures("value", value)
                .figures("low", typed(low))
                .figures("high", typed(high))
        }
        FlightFault::AboveSaturation => Said::new("flight-fault-above-saturation"),
        FlightFault::NoRatio(ratio) => Said::new("flight-fault-no-ratio").figures("ratio", ratio),
        FlightFault::CalmGust => Said::new("flight-fault-calm-gust"),
        FlightFault::NoLimit => Said::new("flight-fault-no-limit"),
    }
}

fn named(id: &str, input: &str) -> Said {
    Said::new(id).naming("what", format!("input-{input}"))
}
