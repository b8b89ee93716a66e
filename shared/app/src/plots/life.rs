//! The plot of how long components of one type last.

use std::collections::BTreeSet;

use super::frame::{Chart, Frame, Ticks};
use super::keys::{Key, Sign};
use super::pen::{Pen, fine};
use super::trend::plain;
use super::{PlotKind, file};
use crate::Fault;
use crate::house::House;
use crate::views::{FileBytes, LifeView};

/// Where findings are marked, under the axis of shares: the failed, and those seen whole.
const FAILED: f64 = -0.055;
const WHOLE: f64 = -0.12;
const LEAST: f64 = -0.16;

impl House {
    /// Lives as a file.
    ///
    /// # Errors
    /// Nothing to draw; what the library refuses.
    pub(crate) fn plot_life(&self, view: &LifeView, kind: PlotKind, dark: bool) -> Result<FileBytes, Fault> {
        let found = view.findings.iter().flat_map(|life| [life.after, life.by.unwrap_or(life.after)]);
        let drawn = view.survival.iter().map(|step| step.hours);
        let most = found.chain(drawn).chain(view.fitted.iter().map(|point| point.hours)).fold(0.0, f64::max);
        if view.findings.is_empty() || most <= 0.0 {
            return Err(Fault::new("plot-nothing"));
        }
        let figure = |value: f64| self.figures(&plain(value));
        let mut keys = Vec::new();
        let mut key = |there: bool, sign: Sign, id: &str| {
            if there {
                keys.push(Key::new(sign, self.word(id)));
            }
        };
        key(!view.survival.is_empty(), Sign::Steps, "plot-life-steps");
        key(!view.fitted.is_empty(), Sign::Line, "plot-life-fitted");
        key(!view.fitted.is_empty(), Sign::Dashes, "plot-life-interval");
        key(view.findings.iter().any(|life| life.by.is_some()), Sign::Failed, "plot-life-failed");
        key(true, Sign::Whole, "plot-life-whole");
        let frame = Frame {
            title: &view.part.words,
            about: view.rests_on.clone(),
            x: 0.0..most * 1.03,
            y: LEAST..1.04,
            x_name: self.word("plot-life-hours"),
            y_name: self.word("plot-life-share"),
            ticks: Ticks::Shares,
            keys,
            sentences: &view.sentences,
            notes: view.intervals.clone(),
            figure: &figure,
        };
        let pen = Pen::new(dark)?;
        let svg = frame.draw(&pen, |chart| interval(view, chart), |chart| all(view, chart))?;
        file(&format!("life-{}", view.part.id), svg, kind)
    }
}

fn interval(view: &LifeView, chart: &Chart<'_, '_>) -> Result<(), Fault> {
    if view.fitted.is_empty() {
        return Ok(());
    }
    let high = view.fitted.iter().map(|point| (point.hours, point.high));
    let low = view.fitted.iter().rev().map(|point| (point.hours, point.low));
    chart.shape(&high.chain(low).collect::<Vec<_>>(), chart.pen.palette.wash)
}

fn all(view: &LifeView, chart: &Chart<'_, '_>) -> Result<(), Fault> {
    let ink = chart.pen.palette;
    if !view.fitted.is_empty() {
        let curve = |share: fn(&crate::views::LifePoint) -> f64| {
            view.fitted.iter().map(|point| (point.hours, share(point))).collect::<Vec<_>>()
        };
        chart.dashes(&curve(|point| point.low), ink.sea, 1.25, 5.0)?;
        chart.dashes(&curve(|point| point.high), ink.sea, 1.25, 5.0)?;
        chart.line(&curve(|point| point.share), ink.sea, 2.5)?;
    }
    steps(view, chart)?;
    findings(view, chart)
}

/// Levels, and where it fell from one to the next, thin: the findings can't say where in between.
fn steps(view: &LifeView, chart: &Chart<'_, '_>) -> Result<(), Fault> {
    let ink = chart.pen.palette;
    let (mut from, mut share) = (0.0, 1.0);
    for step in &view.survival {
        chart.line(&[(from, share), (step.since, share)], ink.ink, 2.5)?;
        chart.dashes(&[(step.since, share), (step.hours, step.share)], ink.ink, 1.25, 2.0)?;
        (from, share) = (step.hours, step.share);
        if view.fitted.is_empty() {
            chart.line(&[(step.hours, step.low), (step.hours, step.high)], ink.soft, 1.25)?;
        }
    }
    let end = view.findings.iter().map(|life| life.after).fold(from, f64::max);
    if view.survival.is_empty() { Ok(()) } else { chart.line(&[(from, share), (end, share)], ink.ink, 2.5) }
}

/// A mark for each life, where it was last seen whole and found failed: those that fall on one another
/// are drawn once.
fn findings(view: &LifeView, chart: &Chart<'_, '_>) -> Result<(), Fault> {
    let mut places = BTreeSet::new();
    let column = |hours: f64| fine(chart.place(hours, 0.0).0) / fine(1.0);
    for life in &view.findings {
        match life.by {
            Some(by) => {
                if places.insert((column(life.after), Some(column(by)))) {
                    let span = [(life.after, FAILED), (by, FAILED)];
                    chart.line(&span, chart.pen.palette.paint_ink, 1.0)?;
                    chart.sign(Sign::Failed, (by, FAILED), (0.0, 0.0))?;
                }
            }
            None => {
                if places.insert((column(life.after), None)) {
                    chart.sign(Sign::Whole, (life.after, WHOLE), (0.0, 0.0))?;
                }
            }
        }
    }
    Ok(())
}
