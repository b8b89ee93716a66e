//! `fleet life`: how long components of a type last, and how often to look, in words, figures, or as a
//! plot.

use std::path::PathBuf;

use witnessmark_app::views::{LifePoint, LifeStep, LifeView};
use witnessmark_app::{App, Fault, PlotKind};
use witnessmark_core::said::Said;

use crate::naming;
use crate::reply::Reply;
use crate::session::Session;
use crate::writing;

/// Of the fitted curve every so many points are told: a plot shows them all.
const TOLD_EVERY: usize = 5;

#[derive(clap::Args)]
pub struct Args {
    #[arg(id = "component_type", value_name = "COMPONENT")]
    component: String,
    #[arg(long, value_name = "P")]
    chance: Option<f64>,
    #[arg(long, value_name = "H")]
    in_force: Option<f64>,
    #[arg(long, value_name = "FILE.svg|FILE.png")]
    plot: Option<PathBuf>,
    #[arg(long, requires = "plot")]
    dark: bool,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    // Its name or the beginning of it; what fits none is told by the app, with all there are.
    let known = app.life_parts()?.into_iter().map(|part| (part.id, part.words)).collect();
    let component = match naming::one(&args.component, known) {
        Ok(component) => component,
        Err(ambiguous) if ambiguous.kind == "ambiguous-name" => return Err(ambiguous),
        Err(_) => args.component,
    };
    let view = app.life(component, args.chance, args.in_force)?;
    if let Some(to) = &args.plot {
        let kind: PlotKind = to.to_string_lossy().parse()?;
        let plot = app.life_plot(&view, kind, args.dark)?;
        return writing::paper(app, to, &plot);
    }
    Reply::done(in_words(app, &view), &view)
}

/// What it rests on and says, then the curves in figures.
fn in_words(app: &App, view: &LifeView) -> String {
    let mut text = format!("{}\n{}\n\n{}\n", view.part.words, view.rests_on, view.sentences.join("\n"));
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n  {}\n", app.say(&Said::new(id)), lines.join("\n  ")));
        }
    };
    let share = |said: Said, share: f64, low: f64, high: f64| {
        let percent = |share: f64| (share * 1000.0).round() / 10.0;
        let said = said.number("share", percent(share)).number("low", percent(low));
        app.say(&said.number("high", percent(high)))
    };
    let step = |step: &LifeStep| {
        let said = Said::new("cli-fleet-step").number("hours", tenth(step.hours));
        share(said, step.share, step.low, step.high)
    };
    part("cli-fleet-steps", view.survival.iter().map(step).collect());
    let at = |point: &LifePoint| {
        let said = Said::new("cli-fleet-at").number("hours", tenth(point.hours));
        share(said, point.share, point.low, point.high)
    };
    part("cli-fleet-fitted", view.fitted.iter().step_by(TOLD_EVERY).map(at).collect());
    part("cli-fleet-intervals", view.intervals.clone());
    text
}

/// Hours as they are told.
fn tenth(hours: f64) -> f64 {
    (hours * 10.0).round() / 10.0
}
