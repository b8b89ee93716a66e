//! What every plot has: a title, two axes with what they count, a key to its signs, and the sentences
//! below.

use std::ops::Range;

use plotters::coord::types::RangedCoordf64;
use plotters::element::DashedPathElement;
use plotters::prelude::*;

use super::keys::{self, Key};
use super::pen::{Area, End, Pen, drawn, fill, fine, sheet, stroke};
use crate::Fault;
use crate::papers::lettering::{Line, Style};

const WIDTH: f64 = 960.0;
const MARGIN: f64 = 32.0;
const CHART: f64 = 400.0;
/// Room for figures at the upright axis; for words.
const FIGURES: f64 = 66.0;
const WORDS: f64 = 150.0;
/// Room for figures under the chart.
const FOOT: f64 = 26.0;
const TITLE: Style = Style::bold(25.0);
const MAIN: Style = Style::bold(17.0);
const TEXT: Style = Style::plain(15.0);
const SMALL: Style = Style::soft(13.0);
const LABEL: f64 = 13.0;

/// How the upright axis is lettered.
pub(super) enum Ticks<'a> {
    /// Figures.
    Figures,
    /// Shares as percent, from nothing to all.
    Shares,
    /// A word at 0, 1, 2.
    Words(&'a [String]),
}

/// A plot but for what is drawn in it.
pub(super) struct Frame<'a> {
    pub title: &'a str,
    /// What it is about, under the title.
    pub about: String,
    pub x: Range<f64>,
    pub y: Range<f64>,
    pub x_name: String,
    pub y_name: String,
    pub ticks: Ticks<'a>,
    pub keys: Vec<Key>,
    /// The first is the main one.
    pub sentences: &'a [String],
    /// What is read last: sources, what was done.
    pub notes: Vec<String>,
    /// A figure as the language writes it.
    pub figure: &'a dyn Fn(f64) -> String,
}

/// Where a chart's values lie on the sheet.
pub(super) struct Chart<'a, 'b> {
    pub pen: &'b Pen,
    sheet: &'b Area<'a>,
    context: ChartContext<'b, SVGBackend<'a>, Cartesian2d<RangedCoordf64, RangedCoordf64>>,
}

impl Frame<'_> {
    /// The drawing: `under` lies under the grid, `over` above it.
    ///
    /// # Errors
    /// What the library refuses.
    pub(super) fn draw(
        &self,
        pen: &Pen,
        under: impl Fn(&Chart<'_, '_>) -> Result<(), Fault>,
        over: impl Fn(&Chart<'_, '_>) -> Result<(), Fault>,
    ) -> Result<String, Fault> {
        let room = WIDTH - 2.0 * MARGIN;
        let titles = pen.lines(self.title, TITLE, room);
        let about = pen.lines(&self.about, TEXT, room);
        let said: Vec<Vec<Line>> = self
            .sentences
            .iter()
            .enumerate()
            .map(|(at, words)| pen.lines(words, if at == 0 { MAIN } else { TEXT }, room))
            .chain(self.notes.iter().map(|words| pen.lines(words, SMALL, room)))
            .collect();
        let chart_top = MARGIN + high(&titles) + high(&about) + 42.0;
        let keys_top = chart_top + CHART + 38.0;
        let said_top = keys_top + keys::height(pen, &self.keys, room) + 16.0;
        let bottom = said_top + said.iter().map(|lines| high(lines) + 5.0).sum::<f64>() + MARGIN - 8.0;
        let svg = sheet((WIDTH, bottom.ceil()), |area| {
            drawn(area.fill(&pen.palette.paper))?;
            let y = put(pen, area, &titles, MARGIN)?;
            put(pen, area, &about, y + 3.0)?;
            self.axes(pen, area, chart_top, &under)?.with(over)?;
            keys::draw(pen, area, &self.keys, (MARGIN, keys_top), room)?;
            let mut y = said_top;
            for lines in &said {
                y = put(pen, area, lines, y)? + 5.0;
            }
            Ok(())
        })?;
        Ok(self.told(svg))
    }

    fn axes<'a, 'b>(
        &self,
        pen: &'b Pen,
        area: &'b Area<'a>,
        top: f64,
        under: impl Fn(&Chart<'_, '_>) -> Result<(), Fault>,
    ) -> Result<Chart<'a, 'b>, Fault> {
        let left = if matches!(self.ticks, Ticks::Words(_)) { WORDS } else { FIGURES };
        let part =
            area.clone().shrink((fine(MARGIN), fine(top)), (fine(WIDTH - 2.0 * MARGIN), fine(CHART + FOOT)));
        let mut builder = ChartBuilder::on(&part);
        builder.x_label_area_size(fine(FOOT)).y_label_area_size(fine(left));
        let built = drawn(builder.build_cartesian_2d(self.x.clone(), self.y.clone()))?;
        let mut chart = Chart { pen, sheet: area, context: built };
        under(&chart)?;
        let label = pen.label(LABEL);
        let figure = |value: &f64| (self.figure)(*value);
        let upright = |value: &f64| match self.ticks {
            Ticks::Figures => (self.figure)(*value),
            Ticks::Shares if (0.0..=1.0).contains(value) => format!("{} %", (self.figure)(*value * 100.0)),
            Ticks::Shares | Ticks::Words(_) => String::new(),
        };
        let mut mesh = chart.context.configure_mesh();
        mesh.disable_x_mesh()
            .bold_line_style(stroke(pen.palette.line, 1.0))
            .light_line_style(TRANSPARENT)
            .axis_style(stroke(pen.palette.soft, 1.25))
            .set_all_tick_mark_size(fine(4.0))
            .x_labels(10)
            .y_labels(if matches!(self.ticks, Ticks::Words(_)) { 0 } else { 7 })
            .label_style(label)
            .x_label_formatter(&figure)
            .y_label_formatter(&upright);
        drawn(mesh.draw())?;
        if let Ticks::Words(words) = self.ticks {
            for (at, word) in words.iter().enumerate() {
                let (_, y) = chart.place(self.x.start, at as f64);
                let lines = pen.lines(word, SMALL, WORDS - 12.0);
                let first = y - high(&lines) / 2.0;
                for (n, line) in lines.iter().enumerate() {
                    let y = first + f64::from(SMALL.leading()) * (n as f64 + 0.5);
                    let at = (MARGIN + WORDS - 10.0, y);
                    pen.text(area, &line.text, SMALL, pen.palette.soft, at, End::Right)?;
                }
            }
        }
        let y_name = (MARGIN, top - 15.0);
        pen.text(area, &self.y_name, SMALL, pen.palette.soft, y_name, End::Left)?;
        let x_name = (WIDTH - MARGIN, top + CHART + FOOT + 6.0);
        pen.text(area, &self.x_name, SMALL, pen.palette.soft, x_name, End::Right)?;
        Ok(chart)
    }

    /// With what those hear who don't see it.
    fn told(&self, svg: String) -> String {
        let words = |text: &str| quick_xml::escape::escape(text.replace(char::is_control, " ")).into_owned();
        let title = words(&format!("{}. {}", self.title, self.about));
        let sentences = words(&self.sentences.join(" "));
        let spoken = format!("><title>{title}</title><desc>{sentences}</desc>");
        svg.replacen("<svg ", "<svg role=\"img\" ", 1).replacen('>', &spoken, 1)
    }
}

impl Chart<'_, '_> {
    fn with(self, over: impl Fn(&Self) -> Result<(), Fault>) -> Result<(), Fault> {
        over(&self)
    }

    /// Where a value lies, pixels of the sheet.
    pub(super) fn place(&self, x: f64, y: f64) -> (f64, f64) {
        let (left, top) = self.context.backend_coord(&(x, y));
        let unit = f64::from(fine(1.0));
        (f64::from(left) / unit, f64::from(top) / unit)
    }

    fn fine(&self, (x, y): (f64, f64)) -> (i32, i32) {
        self.context.backend_coord(&(x, y))
    }

    /// A line through values.
    pub(super) fn line(&self, through: &[(f64, f64)], colour: RGBColor, width: f64) -> Result<(), Fault> {
        let path: Vec<_> = through.iter().map(|at| self.fine(*at)).collect();
        drawn(self.sheet.draw(&PathElement::new(path, stroke(colour, width))))
    }

    /// The same in dashes so long, with gaps as long.
    pub(super) fn dashes(
        &self,
        through: &[(f64, f64)],
        colour: RGBColor,
        width: f64,
        dash: f64,
    ) -> Result<(), Fault> {
        let path: Vec<_> = through.iter().map(|at| self.fine(*at)).collect();
        let style = stroke(colour, width);
        drawn(self.sheet.draw(&DashedPathElement::new(path, fine(dash), fine(dash), style)))
    }

    /// A patch between two corners.
    pub(super) fn patch(&self, from: (f64, f64), to: (f64, f64), colour: RGBColor) -> Result<(), Fault> {
        drawn(self.sheet.draw(&Rectangle::new([self.fine(from), self.fine(to)], fill(colour))))
    }

    /// A patch with corners at values.
    pub(super) fn shape(&self, corners: &[(f64, f64)], colour: RGBColor) -> Result<(), Fault> {
        let corners: Vec<_> = corners.iter().map(|at| self.fine(*at)).collect();
        drawn(self.sheet.draw(&Polygon::new(corners, fill(colour))))
    }

    /// A sign of the key at a value, moved by so many pixels.
    pub(super) fn sign(
        &self,
        sign: keys::Sign,
        (x, y): (f64, f64),
        (dx, dy): (f64, f64),
    ) -> Result<(), Fault> {
        let (left, top) = self.place(x, y);
        sign.draw(self.pen, self.sheet, (left + dx, top + dy))
    }

    /// Words at a value, moved by so many pixels.
    pub(super) fn words(
        &self,
        words: &str,
        colour: RGBColor,
        (x, y): (f64, f64),
        (dx, dy): (f64, f64),
        end: End,
    ) -> Result<(), Fault> {
        let (left, top) = self.place(x, y);
        self.pen.text(self.sheet, words, SMALL, colour, (left + dx, top + dy), end)
    }
}

fn high(lines: &[Line]) -> f64 {
    lines.iter().map(|line| f64::from(line.style.leading())).sum()
}

/// Puts lines from a height down, and says where they end.
fn put(pen: &Pen, area: &Area<'_>, lines: &[Line], top: f64) -> Result<f64, Fault> {
    let mut y = top;
    for line in lines {
        let leading = f64::from(line.style.leading());
        let colour = if line.style.soft { pen.palette.soft } else { pen.palette.ink };
        pen.text(area, &line.text, line.style, colour, (MARGIN, y + leading / 2.0), End::Left)?;
        y += leading;
    }
    Ok(y)
}
