//! All-up weight against what the wing may carry.

use super::read::{tenths, tenths_down, tenths_up};
use super::{Come, Question, State};
use crate::flight::{FlightFault, PETROL_KG_PER_LITRE, all_up};
use crate::record::LoadPlanned;
use crate::said::Said;
use crate::units::{Quantity, Unit};

pub(super) fn load(q: Question<'_>, plan: &LoadPlanned) -> Result<Come, FlightFault> {
    // The machine's description holds, where it says anything: a range put right there is right here.
    let described = q.history.machine.as_ref().and_then(|(machine, _)| machine.wing_load.as_ref());
    let wing = described.unwrap_or(&plan.wing);
    let (low, high) = (wing.with_motor.low, wing.with_motor.high);
    let up = all_up(&plan.loads, &wing.with_motor)?;
    let free = wing.without_motor.map(|range| all_up(&plan.loads, &range)).transpose()?;
    let (above, below) = (up.margin.above_low, up.margin.below_high);
    let total = tenths(up.total);

    let mut come = Come::default();
    if below.value < 0.0 {
        let say = Said::new("reason-load-over").quantity("total", total);
        let over = tenths_up(Quantity::new(-below.value, below.unit));
        come.find(
            State::Grounded,
            say.quantity("over", over).quantity("most", tenths(high)),
            "clears-load-over",
        );
    }
    if above.value < 0.0 {
        let say = Said::new("reason-load-under").quantity("dry", tenths(up.dry));
        let under = tenths_up(Quantity::new(-above.value, above.unit));
        come.find(
            State::Grounded,
            say.quantity("under", under).quantity("least", tenths(low)),
            "clears-load-under",
        );
    }
    if up.in_range {
        let say = Said::new("reason-load").quantity("total", total);
        come.well(say.quantity("below", tenths_down(below)).quantity("most", tenths(high)));
        come.fact(
            Said::new("fact-load-dry")
                .quantity("dry", tenths(up.dry))
                .quantity("above", tenths_down(above))
                .quantity("least", tenths(low)),
        );
    }
    if wing.document.trim().is_empty() || wing.page.trim().is_empty() {
        let say = Said::new("reason-load-unconfirmed");
        let say = say.quantity("low", tenths(low)).quantity("high", tenths(high));
        come.find(State::Limited, say, "clears-load-unconfirmed");
    } else {
        let source = Said::new("fact-load-source");
        come.fact(source.text("document", &wing.document).text("page", &wing.page));
    }
    // With a motor the wing may carry more than without: what hangs on it when the motor stops is the same.
    if let Some(free) = free.filter(|free| free.margin.below_high.value < 0.0)
        && let Some(range) = wing.without_motor
    {
        let over = tenths_up(Quantity::new(-free.margin.below_high.value, free.margin.below_high.unit));
        let say = Said::new("fact-load-free").quantity("over", over);
        come.fact(say.quantity("most", tenths(range.high)));
    }
    if plan.loads.fuel.unit.dimension() == Unit::Litre.dimension() {
        let kg = plan.loads.fuel.to(Unit::Litre)?.value * PETROL_KG_PER_LITRE;
        come.fact(
            Said::new("fact-load-fuel")
                .quantity("fuel", plan.loads.fuel)
                .quantity("mass", tenths(Quantity::new(kg, Unit::Kilogram)))
                .number("density", PETROL_KG_PER_LITRE),
        );
    }
    if described.is_some_and(|described| *described != plan.wing) {
        come.fact(Said::new("fact-load-described-anew"));
    }
    Ok(come)
}
