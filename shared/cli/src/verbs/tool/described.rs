//! What can be said of a tool, beside its name.

use witnessmark_app::Fault;
use witnessmark_core::record::ToolKept;
use witnessmark_core::units::Unit;

use crate::reading;

#[derive(clap::Args)]
pub struct Described {
    #[arg(id = "mark-low", long = "low", value_name = "VALUE")]
    low: Option<String>,
    #[arg(id = "mark-high", long = "high", value_name = "VALUE")]
    high: Option<String>,
    #[arg(long, value_name = "PERCENT")]
    deviation: Option<f64>,
    #[arg(long, value_name = "DATE")]
    calibrated: Option<String>,
    #[arg(id = "calibrate-days", long = "every-days", value_name = "DAYS")]
    every_days: Option<u32>,
    #[arg(id = "calibrate-clicks", long = "every-clicks", value_name = "N")]
    every_clicks: Option<u32>,
    #[arg(long, value_name = "N")]
    clicks: Option<u32>,
    #[arg(long)]
    dropped: bool,
}

impl Described {
    /// Puts into the description what was said; what wasn't stays.
    pub fn put_into(&self, kept: &mut ToolKept) -> Result<(), Fault> {
        let torque = |text: &String| {
            let value = reading::quantity(text, None)?;
            match value.to(Unit::NewtonMetre) {
                Ok(_) => Ok(value),
                Err(why) => Err(Fault::new("unit").text("why", why)),
            }
        };
        kept.low = self.low.as_ref().map(torque).transpose()?.unwrap_or(kept.low);
        kept.high = self.high.as_ref().map(torque).transpose()?.unwrap_or(kept.high);
        kept.deviation_percent = self.deviation.unwrap_or(kept.deviation_percent);
        kept.every_days = self.every_days.unwrap_or(kept.every_days);
        kept.every_cycles = self.every_clicks.unwrap_or(kept.every_cycles);
        if let Some(day) = &self.calibrated {
            kept.calibrated_on = Some(reading::day(day)?);
            // A fresh calibration counts its clicks anew, and has looked at a tool that was dropped.
            kept.cycles = 0;
            kept.dropped = false;
        }
        kept.cycles = self.clicks.unwrap_or(kept.cycles);
        kept.dropped |= self.dropped;
        Ok(())
    }
}
