//! `tool add`: registers a torque tool, signed.

use witnessmark_app::Fault;
use witnessmark_core::record::ToolKept;
use witnessmark_core::said::Said;
use witnessmark_core::torque::{Recheck, Tool};
use witnessmark_core::units::{Quantity, Unit};

use super::described::Described;
use super::in_words;
use crate::pin::Signing;
use crate::reply::Reply;
use crate::session::Session;

/// Days between calibrations where nobody says: the twelve months of core's standard, in days.
const EVERY_DAYS: u32 = 365;
/// No deviation was said; one below nothing can't be.
const UNSAID: f64 = -1.0;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "tool-name", value_name = "NAME")]
    name: String,
    #[command(flatten)]
    described: Described,
    #[command(flatten)]
    signing: Signing,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let pin = args.signing.source(session)?;
    let unsaid = Quantity::new(0.0, Unit::NewtonMetre);
    let mut kept = ToolKept {
        tool: Default::default(),
        name: args.name,
        // A range that isn't said is none, which the app refuses.
        low: unsaid,
        high: unsaid,
        deviation_percent: UNSAID,
        calibrated_on: None,
        every_days: EVERY_DAYS,
        every_cycles: Recheck::default().cycles,
        cycles: 0,
        dropped: false,
    };
    args.described.put_into(&mut kept)?;
    if kept.deviation_percent == UNSAID {
        kept.deviation_percent = standard_deviation(&kept)?;
    }
    let app = session.open()?;
    let pin = args.signing.pin(&pin, app)?;
    let tools = app.tool_save(Some(kept), pin)?;
    let text = format!("{}\n\n{}", app.say(&Said::new("cli-tool-added")), in_words(app, &tools));
    Reply::done(text, &tools)
}

/// What the standard allows a tool of this range, percent.
fn standard_deviation(kept: &ToolKept) -> Result<f64, Fault> {
    let share = Tool::marked(kept.low, kept.high).deviation().map_err(|_| Fault::new("tool-range"))?;
    Ok(share * 100.0)
}
