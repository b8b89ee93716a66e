//! The signs on a plot, and the key that names them. Each has a shape of its own: none is told by its
//! colour alone.

use plotters::element::DashedPathElement;
use plotters::prelude::*;

use super::pen::{Area, End, Pen, drawn, fill, fine, stroke};
use crate::Fault;
use crate::papers::lettering::Style;

const WORDS: Style = Style::plain(13.0);
/// From a sign's middle to its words, from these to the next sign, from row to row.
const BESIDE: f64 = 22.0;
const NEXT: f64 = 46.0;
const ROW: f64 = 22.0;

/// A sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sign {
    /// A reading.
    Dot,
    /// A reading far off: a ring with a cross.
    Off,
    /// Grades: a full ring, a half one, a barred one.
    Full,
    Half,
    Barred,
    /// The line through readings.
    Line,
    /// What it may be.
    Dashes,
    /// A limit.
    Limit,
    /// A band.
    Patch,
    /// A level.
    Level,
    /// Work done.
    Work,
    /// The limit reached at the earliest.
    Diamond,
    /// Steps.
    Steps,
    /// Found failed.
    Failed,
    /// Seen whole.
    Whole,
}

/// A sign and what it stands for.
pub(super) struct Key {
    pub sign: Sign,
    pub words: String,
}

impl Key {
    pub(super) fn new(sign: Sign, words: String) -> Self {
        Self { sign, words }
    }
}

impl Sign {
    /// Draws it about a place on the sheet.
    pub(super) fn draw(self, pen: &Pen, area: &Area<'_>, (x, y): (f64, f64)) -> Result<(), Fault> {
        let ink = pen.palette;
        let at = |dx: f64, dy: f64| (fine(x + dx), fine(y + dy));
        let line = |points: &[(f64, f64)], style: ShapeStyle| {
            let path: Vec<_> = points.iter().map(|(dx, dy)| at(*dx, *dy)).collect();
            drawn(area.draw(&PathElement::new(path, style)))
        };
        let shape = |points: &[(f64, f64)], colour: RGBColor| {
            let corners: Vec<_> = points.iter().map(|(dx, dy)| at(*dx, *dy)).collect();
            drawn(area.draw(&Polygon::new(corners, fill(colour))))
        };
        let circle = |radius: f64, style: ShapeStyle| {
            drawn(area.draw(&Circle::new(at(0.0, 0.0), fine(radius).unsigned_abs(), style)))
        };
        let dashes = |style: ShapeStyle| {
            let path = vec![at(-14.0, 0.0), at(14.0, 0.0)];
            drawn(area.draw(&DashedPathElement::new(path, fine(5.0), fine(4.0), style)))
        };
        match self {
            Sign::Dot => circle(3.5, fill(ink.ink)),
            Sign::Off => {
                circle(6.0, stroke(ink.ink, 1.75))?;
                line(&[(-3.0, -3.0), (3.0, 3.0)], stroke(ink.ink, 1.5))?;
                line(&[(-3.0, 3.0), (3.0, -3.0)], stroke(ink.ink, 1.5))
            }
            Sign::Full => circle(6.0, fill(ink.sea)),
            Sign::Half => {
                circle(6.0, fill(ink.paper))?;
                let half = (0..=24).map(|n| std::f64::consts::PI * (0.5 + f64::from(n) / 24.0));
                let half: Vec<_> = half.map(|angle| (6.0 * angle.cos(), 6.0 * angle.sin())).collect();
                shape(&half, ink.ink)?;
                circle(6.0, stroke(ink.ink, 1.5))
            }
            Sign::Barred => {
                circle(6.0, fill(ink.paper))?;
                circle(6.0, stroke(ink.paint_ink, 2.0))?;
                shape(&[(-4.0, -1.5), (4.0, -1.5), (4.0, 1.5), (-4.0, 1.5)], ink.paint_ink)
            }
            Sign::Line => line(&[(-14.0, 0.0), (14.0, 0.0)], stroke(ink.sea, 2.5)),
            Sign::Dashes => dashes(stroke(ink.sea, 1.25)),
            Sign::Limit => line(&[(-14.0, 0.0), (14.0, 0.0)], stroke(ink.paint, 3.5)),
            Sign::Patch => {
                shape(&[(-14.0, -6.0), (14.0, -6.0), (14.0, 6.0), (-14.0, 6.0)], ink.wash)?;
                line(&[(-14.0, -6.0), (14.0, -6.0)], stroke(ink.line, 1.0))?;
                line(&[(-14.0, 6.0), (14.0, 6.0)], stroke(ink.line, 1.0))
            }
            Sign::Level => dashes(stroke(ink.ink, 2.5)),
            Sign::Work => shape(&[(-5.5, 4.5), (5.5, 4.5), (0.0, -5.0)], ink.paint_ink),
            Sign::Diamond => {
                let corners = [(0.0, -7.0), (7.0, 0.0), (0.0, 7.0), (-7.0, 0.0)];
                shape(&corners, ink.paper)?;
                let [top, ..] = corners;
                line(&[&corners[..], &[top]].concat(), stroke(ink.paint_ink, 2.25))
            }
            Sign::Steps => line(&[(-14.0, -4.0), (0.0, -4.0), (0.0, 4.0), (14.0, 4.0)], stroke(ink.ink, 2.5)),
            Sign::Failed => shape(&[(-4.5, -4.5), (4.5, -4.5), (0.0, 4.5)], ink.paint_ink),
            Sign::Whole => line(&[(0.0, -5.0), (0.0, 5.0)], stroke(ink.soft, 1.25)),
        }
    }
}

/// Where each sign of a key stands, and how high the whole is.
fn laid(pen: &Pen, keys: &[Key], room: f64) -> (Vec<(f64, f64)>, f64) {
    let (mut x, mut row) = (0.0, 0.0);
    let mut places = Vec::new();
    for key in keys {
        let wide = BESIDE + pen.width(&key.words, WORDS) * 1.07;
        if x > 0.0 && x + 14.0 + wide > room {
            (x, row) = (0.0, row + ROW);
        }
        places.push((x + 14.0, row + ROW / 2.0));
        x += wide + NEXT;
    }
    (places, if keys.is_empty() { 0.0 } else { row + ROW })
}

/// How high a key is.
pub(super) fn height(pen: &Pen, keys: &[Key], room: f64) -> f64 {
    laid(pen, keys, room).1
}

/// Draws a key.
pub(super) fn draw(
    pen: &Pen,
    area: &Area<'_>,
    keys: &[Key],
    (left, top): (f64, f64),
    room: f64,
) -> Result<(), Fault> {
    for (key, (x, y)) in keys.iter().zip(laid(pen, keys, room).0) {
        key.sign.draw(pen, area, (left + x, top + y))?;
        let at = (left + x + BESIDE, top + y);
        pen.text(area, &key.words, WORDS, pen.palette.ink, at, End::Left)?;
    }
    Ok(())
}
