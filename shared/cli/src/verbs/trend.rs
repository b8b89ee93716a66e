//! `trend`: what a machine's measures do over its time in service, in words, figures, or as a plot.

use std::path::PathBuf;

use witnessmark_app::views::{TrendMark, TrendPoint, TrendView};
use witnessmark_app::{App, Fault, PlotKind};
use witnessmark_core::said::Said;

use super::verdict::record;
use crate::naming;
use crate::reply::Reply;
use crate::session::Session;
use crate::writing;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    measure: Option<String>,
    #[arg(long, value_name = "FILE.svg|FILE.png", requires = "measure")]
    plot: Option<PathBuf>,
    #[arg(long, requires = "plot")]
    dark: bool,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let trends = app.trends(machine.clone())?;
    let Some(measure) = &args.measure else { return Reply::done(table(app, &trends), &trends) };
    let known = trends.iter().map(|trend| (trend.id.clone(), trend.title.clone())).collect();
    let measure = naming::one(measure, known)?;
    if let Some(to) = &args.plot {
        let kind: PlotKind = to.to_string_lossy().parse()?;
        let plot = app.trend_plot(machine, &measure, kind, args.dark)?;
        return writing::paper(app, to, &plot);
    }
    let trend = trends.iter().find(|trend| trend.id == measure);
    let trend = trend.ok_or_else(|| Fault::new("no-such").text("what", &measure))?;
    Reply::done(whole(app, trend), trend)
}

/// All measures with the main thing that each tells.
fn table(app: &App, trends: &[TrendView]) -> String {
    if trends.is_empty() {
        return app.say(&Said::new("cli-trend-nothing"));
    }
    let row = |trend: &TrendView| {
        let said = Said::new("cli-trend-row")
            .text("title", &trend.title)
            .text("id", &trend.id)
            .number("n", trend.points.len() as f64)
            .text("drifts", if trend.drifts { "yes" } else { "no" });
        let main = trend.sentences.first().map(String::as_str).unwrap_or_default();
        format!("{}\n  {main}", app.say(&said))
    };
    trends.iter().map(row).collect::<Vec<_>>().join("\n")
}

/// One measure: what it says, its readings, what was done.
fn whole(app: &App, trend: &TrendView) -> String {
    let mut text = format!("{}\n{}\n\n{}\n", trend.title, trend.what, trend.sentences.join("\n"));
    let mut part = |id: &str, lines: Vec<String>| {
        if !lines.is_empty() {
            text.push_str(&format!("\n{}\n  {}\n", app.say(&Said::new(id)), lines.join("\n  ")));
        }
    };
    let band = trend.band.as_ref().map(|band| format!("{}. {}", band.words, band.source));
    part("cli-trend-band", band.into_iter().collect());
    let reading = |point: &TrendPoint| {
        let said = Said::new("cli-trend-reading")
            .number("hours", tenth(point.hours))
            .text("words", &point.words)
            .text("far", if point.far_off { "yes" } else { "no" });
        let by = Some(point.record.as_str()).filter(|record| !record.is_empty());
        format!("{}{}", app.say(&said), record(app, by))
    };
    part("cli-trend-readings", trend.points.iter().map(reading).collect());
    let mark = |mark: &TrendMark| {
        let said = Said::new("cli-trend-mark").number("hours", tenth(mark.hours)).text("words", &mark.words);
        format!("{}{}", app.say(&said), record(app, Some(&mark.record)))
    };
    part("cli-trend-marks", trend.marks.iter().map(mark).collect());
    text
}

/// Hours as they are told.
fn tenth(hours: f64) -> f64 {
    (hours * 10.0).round() / 10.0
}
