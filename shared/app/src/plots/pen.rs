//! What everything on a plot is drawn with: a sheet of paper, letters, and strokes. All sizes are in
//! pixels; the drawing itself is finer, since the library counts in whole units.

use plotters::coord::Shift;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};

use super::palette::Palette;
use crate::Fault;
use crate::papers::lettering::{Lettering, Line, Style};

/// Drawing units in a pixel.
const FINE: f64 = 4.0;
/// The font, and what stands in for it where it isn't there.
const FAMILY: &str = "Inter, sans-serif";
/// What the library makes a font's size of.
const LIBRARY_EM: f64 = 1.24;

/// A part of the sheet.
pub(super) type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;

/// Pixels as drawing units.
pub(super) fn fine(pixels: f64) -> i32 {
    (pixels * FINE).round() as i32
}

/// Which end of a text its place is.
#[derive(Clone, Copy)]
pub(super) enum End {
    Left,
    Right,
}

/// Letters and ink.
pub(super) struct Pen {
    pub letters: Lettering,
    pub palette: &'static Palette,
}

impl Pen {
    pub(super) fn new(dark: bool) -> Result<Self, Fault> {
        Ok(Self { letters: Lettering::read()?, palette: Palette::of(dark) })
    }

    /// How wide a text is in one line, pixels.
    pub(super) fn width(&self, words: &str, style: Style) -> f64 {
        f64::from(self.letters.line(words, style).width)
    }

    /// Broken into lines. Narrower than asked for: another font that stands in may be wider.
    pub(super) fn lines(&self, words: &str, style: Style, width: f64) -> Vec<Line> {
        self.letters.wrap(words, style, (width * 0.93) as f32)
    }

    /// A font for what the library itself letters.
    pub(super) fn label(&self, size: f64) -> TextStyle<'static> {
        (FAMILY, size * FINE * LIBRARY_EM).into_font().color(&self.palette.soft)
    }

    /// A text about the height of its middle, in one line.
    pub(super) fn text(
        &self,
        area: &Area<'_>,
        words: &str,
        style: Style,
        colour: RGBColor,
        at: (f64, f64),
        end: End,
    ) -> Result<(), Fault> {
        let h = match end {
            End::Left => HPos::Left,
            End::Right => HPos::Right,
        };
        let size = f64::from(style.size) * FINE * LIBRARY_EM;
        let font = (FAMILY, size).into_font();
        let font = if style.bold { font.style(FontStyle::Bold) } else { font };
        let lettered = font.color(&colour).pos(Pos::new(h, VPos::Center));
        // Without what XML or the font has no sign for.
        let printable = self.letters.line(words, style).text;
        drawn(area.draw(&Text::new(printable, (fine(at.0), fine(at.1)), lettered)))
    }
}

/// A stroke.
pub(super) fn stroke(colour: RGBColor, width: f64) -> ShapeStyle {
    ShapeStyle { color: colour.to_rgba(), filled: false, stroke_width: fine(width).unsigned_abs() }
}

/// A fill.
pub(super) fn fill(colour: RGBColor) -> ShapeStyle {
    colour.filled()
}

/// Draws on a sheet of so many pixels.
pub(super) fn sheet(
    (width, height): (f64, f64),
    draw: impl FnOnce(&Area<'_>) -> Result<(), Fault>,
) -> Result<String, Fault> {
    let (units_x, units_y) = (fine(width), fine(height));
    let mut svg = String::new();
    {
        let backend = SVGBackend::with_string(&mut svg, (units_x.unsigned_abs(), units_y.unsigned_abs()));
        let area = backend.into_drawing_area();
        draw(&area)?;
        drawn(area.present())?;
    }
    // The fine units stay inside: outside, it is as large as was asked for.
    let inside = format!("width=\"{units_x}\" height=\"{units_y}\"");
    Ok(svg.replacen(&inside, &format!("width=\"{width}\" height=\"{height}\""), 1))
}

/// A fault of the drawing library: nobody typed what it doesn't like.
pub(super) fn drawn<T, E: std::error::Error + Send + Sync>(
    done: Result<T, DrawingAreaErrorKind<E>>,
) -> Result<T, Fault> {
    done.map_err(Fault::internal)
}
