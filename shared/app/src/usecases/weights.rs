//! What a machine's description says of weights, checked and told: what the wing may carry and what the
//! machine weighs.

use witnessmark_core::flight::Range;
use witnessmark_core::record::Machine;
use witnessmark_core::said::Said;
use witnessmark_core::units::{Quantity, Unit};

use crate::Fault;
use crate::house::House;

/// Between these, kg, lies what anybody means: from an empty machine to a tandem trike. Our choice.
const PLAUSIBLE: (f64, f64) = (20.0, 600.0);

impl House {
    /// Trims and checks weights.
    pub(super) fn checked_weights(&self, machine: &mut Machine) -> Result<(), Fault> {
        if let Some(weight) = machine.weight {
            self.plausible(weight, "what-machine-weight")?;
        }
        let Some(wing) = &mut machine.wing_load else { return Ok(()) };
        wing.document = wing.document.trim().to_owned();
        wing.page = wing.page.trim().to_owned();
        self.range(wing.with_motor, "what-wing-low", "what-wing-high")?;
        if let Some(free) = wing.without_motor {
            self.range(free, "what-wing-free-low", "what-wing-free-high")?;
        }
        Ok(())
    }

    /// What a description says, in sentences.
    pub(super) fn description_words(&self, machine: &Machine) -> String {
        let whole = Said::new("says-machine")
            .text("name", &machine.name)
            .text("engine", &machine.engine)
            .figures("hours", format!("{:.1}", machine.hours))
            .number("flights", machine.flights);
        let weight = machine.weight.map(|weight| Said::new("says-weight").quantity("weight", weight));
        let ranges = machine.wing_load.as_ref().map(|wing| {
            let said = |id: &str, range: Range| {
                Said::new(id).quantity("low", range.low).quantity("high", range.high)
            };
            let document = if wing.document.is_empty() { "none" } else { &wing.document };
            let with = said("says-wing-range", wing.with_motor).text("document", document);
            let free = wing.without_motor.map(|free| said("says-wing-range-free", free));
            std::iter::once(with.text("page", &wing.page)).chain(free)
        });
        let said = std::iter::once(whole).chain(weight).chain(ranges.into_iter().flatten());
        said.map(|said| self.say(&said)).collect::<Vec<_>>().join(" ")
    }

    fn range(&self, range: Range, low: &str, high: &str) -> Result<(), Fault> {
        if self.plausible(range.low, low)? > self.plausible(range.high, high)? {
            return Err(Fault::new("wing-range-crossed"));
        }
        Ok(())
    }

    /// In kg.
    fn plausible(&self, weight: Quantity, what: &str) -> Result<f64, Fault> {
        let kg = weight.to(Unit::Kilogram).map_err(|fault| Fault::new("unit").text("why", fault))?.value;
        let (low, high) = PLAUSIBLE;
        // A bound typed in pounds may come back a hair outside.
        if kg < low - 1e-6 || kg > high + 1e-6 {
            let end = |kg: f64| {
                let end = Quantity::new(kg, Unit::Kilogram);
                let end = end.to(weight.unit).unwrap_or(end);
                Quantity::new(end.value.round(), end.unit)
            };
            return Err(Fault::new("weight-odd")
                .text("what", self.word(what))
                .figures("value", weight)
                .figures("low", end(low))
                .figures("high", end(high)));
        }
        Ok(kg)
    }
}
