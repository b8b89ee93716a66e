//! What a machine weighs, and what its wing may carry.

use witnessmark_app::{App, Fault};
use witnessmark_core::flight::Range;
use witnessmark_core::record::{Machine, WingLoad};
use witnessmark_core::said::Said;
use witnessmark_core::units::Quantity;

use crate::reading;

#[derive(clap::Args)]
pub struct Carrying {
    #[arg(long, value_name = "Q")]
    weight: Option<String>,
    #[arg(long, value_name = "Q")]
    wing_least: Option<String>,
    #[arg(long, value_name = "Q")]
    wing_most: Option<String>,
    #[arg(long, value_name = "Q")]
    wing_free_least: Option<String>,
    #[arg(long, value_name = "Q")]
    wing_free_most: Option<String>,
    #[arg(long, value_name = "TEXT")]
    wing_document: Option<String>,
    #[arg(long, value_name = "TEXT")]
    wing_page: Option<String>,
    #[arg(long, conflicts_with_all = ["wing_least", "wing_most", "wing_free_least", "wing_free_most", "wing_document", "wing_page"])]
    without_wing_range: bool,
}

impl Carrying {
    /// Puts into the description what was said; what wasn't stays.
    pub fn put_into(self, machine: &mut Machine) -> Result<(), Fault> {
        let quantity =
            |text: &Option<String>| text.as_deref().map(|text| reading::quantity(text, None)).transpose();
        machine.weight = quantity(&self.weight)?.or(machine.weight);
        if self.without_wing_range {
            machine.wing_load = None;
            return Ok(());
        }
        let before = machine.wing_load.take();
        let ends = (quantity(&self.wing_least)?, quantity(&self.wing_most)?);
        let with_motor = whole(ends, before.as_ref().map(|wing| wing.with_motor))?;
        let free = (quantity(&self.wing_free_least)?, quantity(&self.wing_free_most)?);
        let without_motor = whole(free, before.as_ref().and_then(|wing| wing.without_motor))?;
        let Some(with_motor) = with_motor else {
            let said = without_motor.is_some() || self.wing_document.is_some() || self.wing_page.is_some();
            return if said { Err(Fault::new("wing-range-half")) } else { Ok(()) };
        };
        // Other figures are another wing's, or another issue's: the old page doesn't confirm them.
        let same = before.as_ref().is_some_and(|wing| wing.with_motor == with_motor);
        let (document, page) =
            before.filter(|_| same).map(|wing| (wing.document, wing.page)).unwrap_or_default();
        machine.wing_load = Some(WingLoad {
            with_motor,
            without_motor,
            document: self.wing_document.unwrap_or(document),
            page: self.wing_page.unwrap_or(page),
        });
        Ok(())
    }
}

/// A range from what was said and what was known; none where nobody says anything.
fn whole(
    (low, high): (Option<Quantity>, Option<Quantity>),
    before: Option<Range>,
) -> Result<Option<Range>, Fault> {
    let (low, high) = (low.or(before.map(|range| range.low)), high.or(before.map(|range| range.high)));
    match (low, high) {
        (Some(low), Some(high)) => Ok(Some(Range { low, high })),
        (None, None) => Ok(None),
        _ => Err(Fault::new("wing-range-half")),
    }
}

/// What is described of it, a line each.
pub fn in_words(app: &App, machine: &Machine) -> Vec<String> {
    let range = |id: &str, range: Range| {
        app.say(&Said::new(id).quantity("low", range.low).quantity("high", range.high))
    };
    let mut lines = Vec::new();
    lines.extend(machine.weight.map(|weight| app.say(&Said::new("cli-weight").quantity("weight", weight))));
    if let Some(wing) = &machine.wing_load {
        lines.push(range("cli-wing-range", wing.with_motor));
        lines.extend(wing.without_motor.map(|free| range("cli-wing-range-free", free)));
        let unknown = wing.document.is_empty() || wing.page.is_empty();
        lines.push(app.say(&if unknown {
            Said::new("source-missing")
        } else {
            Said::new("source-document").text("document", &wing.document).text("page", &wing.page)
        }));
    }
    lines
}
