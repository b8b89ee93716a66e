//! The plot of a measure over time in service.

use std::ops::Range;

use witnessmark_core::record::Machine;
use witnessmark_core::said::Said;
use witnessmark_core::units::Quantity;

use super::frame::{Chart, Frame, Ticks};
use super::keys::{Key, Sign};
use super::pen::{End, Pen};
use super::{PlotKind, file};
use crate::Fault;
use crate::house::House;
use crate::views::{FileBytes, TrendMark, TrendView};

/// How far past the last reading it goes to show where a limit is reached, in spans of the readings.
const AHEAD: f64 = 0.6;
/// Marks that are named; the latest.
const NAMED: usize = 9;

impl House {
    /// A trend as a file.
    ///
    /// # Errors
    /// Nothing to draw; what the library refuses.
    pub(crate) fn plot_trend(
        &self,
        machine: &Machine,
        view: &TrendView,
        kind: PlotKind,
        dark: bool,
    ) -> Result<FileBytes, Fault> {
        let hours = view.points.first().zip(view.points.last());
        let (first, last) = hours.ok_or_else(|| Fault::new("plot-nothing"))?;
        let x = spread(first.hours, ahead(view, first.hours, last.hours), 0.03);
        let drawn = Trend { house: self, view, graded: !view.grades.is_empty(), x: x.clone() };
        let marks: Vec<&TrendMark> = view.marks.iter().filter(|mark| x.contains(&mark.hours)).collect();
        let figure = |value: f64| self.figures(&plain(value));
        let about = Said::new("plot-about")
            .text("machine", &machine.name)
            .number("n", view.points.len() as f64)
            .number("from", tenth(first.hours))
            .number("to", tenth(last.hours));
        let frame = Frame {
            title: &view.title,
            about: self.say(&about),
            y: drawn.values(),
            x,
            x_name: self.word("plot-hours"),
            y_name: view.unit.sign.clone(),
            ticks: if drawn.graded { Ticks::Words(&view.grades) } else { Ticks::Figures },
            keys: drawn.keys(!marks.is_empty()),
            sentences: &view.sentences,
            notes: drawn.notes(&marks, machine.invented),
            figure: &figure,
        };
        let pen = Pen::new(dark)?;
        let svg = frame.draw(&pen, |chart| drawn.band(chart), |chart| drawn.all(chart, &marks))?;
        file(&format!("{}-{}", machine.name, view.id), svg, kind)
    }
}

struct Trend<'a> {
    house: &'a House,
    view: &'a TrendView,
    graded: bool,
    x: Range<f64>,
}

impl Trend<'_> {
    /// What the upright axis must hold.
    fn values(&self) -> Range<f64> {
        if self.graded {
            return -0.4..2.4;
        }
        let view = self.view;
        let mut values: Vec<f64> = view.points.iter().map(|point| point.value).collect();
        if let Some(line) = &view.line {
            values.extend([line.from, line.to, line.low_from, line.low_to, line.high_from, line.high_to]);
        }
        if let Some(band) = &view.band {
            match band.limit {
                Some(limit) => values.push(limit),
                None => values.extend(band.low.into_iter().chain(band.high)),
            }
        }
        let least = values.iter().copied().fold(f64::INFINITY, f64::min);
        let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        spread(least, most, 0.08)
    }

    fn word(&self, id: &str) -> String {
        self.house.word(id)
    }

    /// A value with its unit.
    fn amount(&self, value: f64) -> String {
        self.house.figures(&Quantity::new(value, self.view.unit.code).to_string())
    }

    fn keys(&self, marked: bool) -> Vec<Key> {
        let view = self.view;
        let mut keys = Vec::new();
        if !self.graded {
            keys.push(Key::new(Sign::Dot, self.word("plot-reading")));
        }
        if view.points.iter().any(|point| point.far_off) {
            keys.push(Key::new(Sign::Off, self.word("plot-far-off")));
        }
        if view.line.is_some() {
            keys.push(Key::new(Sign::Line, self.word("plot-line")));
            keys.push(Key::new(Sign::Dashes, self.word("plot-interval")));
        }
        if view.change.is_some() && !self.graded {
            keys.push(Key::new(Sign::Level, self.word("plot-level")));
        }
        if let Some(band) = &view.band {
            keys.push(Key::new(Sign::Patch, self.word("plot-band")));
            if band.limit.is_some() {
                keys.push(Key::new(Sign::Limit, self.word("plot-limit")));
            }
        }
        if self.earliest().is_some() {
            keys.push(Key::new(Sign::Diamond, self.word("plot-earliest")));
        }
        if marked {
            keys.push(Key::new(Sign::Work, self.word("plot-work")));
        }
        keys
    }

    /// What was done, numbered as in the chart, and where the band is written.
    fn notes(&self, marks: &[&TrendMark], invented: bool) -> Vec<String> {
        let earlier = marks.len().saturating_sub(NAMED);
        let named = marks.iter().skip(earlier).enumerate().map(|(n, mark)| {
            let said = Said::new("plot-done")
                .number("n", (n + 1) as f64)
                .text("words", &mark.words)
                .number("hours", tenth(mark.hours));
            self.house.say(&said)
        });
        let mut notes = vec![named.collect::<Vec<_>>().join(" · ")];
        if earlier > 0 {
            notes.push(self.house.say(&Said::new("plot-done-earlier").number("n", earlier as f64)));
        }
        if let Some(band) = &self.view.band {
            let said = Said::new("plot-band-source").text("band", &band.words).text("source", &band.source);
            notes.push(self.house.say(&said));
        }
        if invented {
            notes.push(self.word("paper-invented-words"));
        }
        notes.retain(|note| !note.is_empty());
        notes
    }

    /// Where the limit is reached at the earliest, if that is on the sheet.
    fn earliest(&self) -> Option<(f64, f64)> {
        let reach = self.view.reaches.as_ref().filter(|reach| self.x.contains(&reach.low))?;
        Some((reach.low, self.view.band.as_ref()?.limit?))
    }

    fn band(&self, chart: &Chart<'_, '_>) -> Result<(), Fault> {
        let Some(band) = &self.view.band else { return Ok(()) };
        let y = self.values();
        let within = |end: Option<f64>, open: f64| end.unwrap_or(open).clamp(y.start, y.end);
        let (low, high) = (within(band.low, y.start), within(band.high, y.end));
        chart.patch((self.x.start, high), (self.x.end, low), chart.pen.palette.wash)
    }

    fn all(&self, chart: &Chart<'_, '_>, marks: &[&TrendMark]) -> Result<(), Fault> {
        self.marks(chart, marks)?;
        self.limit(chart)?;
        self.line(chart)?;
        for point in &self.view.points {
            let sign = match point {
                _ if self.graded => graded(point.value),
                point if point.far_off => Sign::Off,
                _ => Sign::Dot,
            };
            chart.sign(sign, (point.hours, point.value), (0.0, 0.0))?;
        }
        self.earliest().map_or(Ok(()), |at| chart.sign(Sign::Diamond, at, (0.0, 0.0)))
    }

    fn marks(&self, chart: &Chart<'_, '_>, marks: &[&TrendMark]) -> Result<(), Fault> {
        let (ink, y) = (chart.pen.palette, self.values());
        let earlier = marks.len().saturating_sub(NAMED);
        for (n, mark) in marks.iter().enumerate() {
            chart.dashes(&[(mark.hours, y.start), (mark.hours, y.end)], ink.paint_ink, 1.0, 3.0)?;
            chart.sign(Sign::Work, (mark.hours, y.start), (0.0, -5.0))?;
            if n >= earlier {
                let number = (n - earlier + 1).to_string();
                chart.words(&number, ink.paint_ink, (mark.hours, y.end), (5.0, 8.0), End::Left)?;
            }
        }
        Ok(())
    }

    fn limit(&self, chart: &Chart<'_, '_>) -> Result<(), Fault> {
        let Some(limit) = self.view.band.as_ref().and_then(|band| band.limit) else { return Ok(()) };
        let ink = chart.pen.palette;
        chart.line(&[(self.x.start, limit), (self.x.end, limit)], ink.paint, 3.5)?;
        let words = self.house.say(&Said::new("plot-limit-at").text("value", self.amount(limit)));
        chart.words(&words, ink.paint_ink, (self.x.start, limit), (8.0, -11.0), End::Left)
    }

    fn line(&self, chart: &Chart<'_, '_>) -> Result<(), Fault> {
        let (view, ink) = (self.view, chart.pen.palette);
        if let (Some(change), false) = (&view.change, self.graded) {
            let before = [(self.x.start, change.before), (change.hours, change.before)];
            let last = view.points.last().map_or(self.x.end, |last| last.hours);
            chart.dashes(&before, ink.ink, 2.5, 5.0)?;
            chart.dashes(&[(change.hours, change.after), (last, change.after)], ink.ink, 2.5, 5.0)?;
        }
        let Some(line) = &view.line else { return Ok(()) };
        let (from, to) = (line.from_hours, line.to_hours);
        for (a, b) in [(line.low_from, line.low_to), (line.high_from, line.high_to)] {
            chart.dashes(&[(from, a), (to, b)], ink.sea, 1.25, 5.0)?;
        }
        chart.line(&[(from, line.from), (to, line.to)], ink.sea, 2.5)?;
        // On to the limit goes the steeper of the two ends.
        let Some((at, limit)) = self.earliest() else { return Ok(()) };
        let nearer = |end: f64| (limit - end).abs();
        let end = if nearer(line.high_to) < nearer(line.low_to) { line.high_to } else { line.low_to };
        chart.dashes(&[(to, end), (at, limit)], ink.paint_ink, 1.5, 3.0)
    }
}

fn graded(value: f64) -> Sign {
    match value {
        value if value < 0.5 => Sign::Full,
        value if value < 1.5 => Sign::Half,
        _ => Sign::Barred,
    }
}

/// Where the sheet ends: at the last reading, or where the limit is reached, if that isn't far.
fn ahead(view: &TrendView, first: f64, last: f64) -> f64 {
    let most = last + (last - first) * AHEAD;
    let reach = view.reaches.as_ref().map(|reach| reach.low).filter(|low| *low <= most);
    reach.unwrap_or(last).max(last)
}

/// Some room on both sides; something to see where all is one.
fn spread(from: f64, to: f64, share: f64) -> Range<f64> {
    let room = if to > from { (to - from) * share } else { (from.abs() * 0.02).max(1.0) };
    from - room..to + room
}

fn tenth(hours: f64) -> f64 {
    (hours * 10.0).round() / 10.0 + 0.0
}

/// A tick's figure, without decimals that say nothing.
pub(super) fn plain(value: f64) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
