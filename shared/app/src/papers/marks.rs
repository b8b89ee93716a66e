//! Shapes drawn on paper: the rings that say what a finding means, codes, and rules.

use krilla::geom::{Path, PathBuilder, Rect};
use qrcode::{Color, EcLevel, QrCode};
use witnessmark_core::list::Meaning;

use crate::Fault;

/// Four of these make a circle (error below 0.03 %).
const ARC: f32 = 0.552_284_8;
/// Light modules around a code: ISO/IEC 18004 asks for four.
const QUIET: f32 = 4.0;

/// A shape and how it is drawn.
pub(super) struct Shape {
    pub path: Path,
    /// Width of the stroke; filled where there is none.
    pub stroke: Option<f32>,
    pub ink: Ink,
}

/// Inks: black but for what is read last, and the paint that marks what holds a machine back.
/// In black and white print the paint is a mid grey bar beside words that say the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Ink {
    Black,
    Soft,
    Hair,
    Paint,
}

/// The ring of a meaning, `size` wide, its middle at (`x`, `y`): filled = serviceable,
/// half = watch, barred = unserviceable, dashed to nothing = not fitted. The same as on the screens.
pub(super) fn ring(means: Option<Meaning>, x: f32, y: f32, size: f32) -> Vec<Shape> {
    let thick = size * 0.13;
    let radius = (size - thick) / 2.0;
    let stroke = |path| Shape { path, stroke: Some(thick), ink: Ink::Black };
    let fill = |path| Shape { path, stroke: None, ink: Ink::Black };
    let outline = circle(x, y, radius).map(stroke);
    let inside = match means {
        None => None,
        Some(Meaning::Serviceable) => circle(x, y, radius).map(fill),
        Some(Meaning::Watch) => half(x, y, radius).map(fill),
        Some(Meaning::Unserviceable) => {
            bar(x - radius, y - thick * 0.75, radius * 2.0, thick * 1.5).map(fill)
        }
        Some(Meaning::NotFitted) => {
            bar(x - radius * 0.35, y - thick * 0.4, radius * 0.7, thick * 0.8).map(fill)
        }
    };
    outline.into_iter().chain(inside).collect()
}

/// A line across the page, or beside a text.
pub(super) fn rule(x: f32, y: f32, width: f32, height: f32, ink: Ink) -> Option<Shape> {
    Some(Shape { path: bar(x, y, width, height)?, stroke: None, ink })
}

fn bar(x: f32, y: f32, width: f32, height: f32) -> Option<Path> {
    let mut path = PathBuilder::new();
    path.push_rect(Rect::from_xywh(x, y, width, height)?);
    path.finish()
}

fn circle(x: f32, y: f32, r: f32) -> Option<Path> {
    let k = r * ARC;
    let mut path = PathBuilder::new();
    path.move_to(x, y - r);
    path.cubic_to(x + k, y - r, x + r, y - k, x + r, y);
    path.cubic_to(x + r, y + k, x + k, y + r, x, y + r);
    path.cubic_to(x - k, y + r, x - r, y + k, x - r, y);
    path.cubic_to(x - r, y - k, x - k, y - r, x, y - r);
    path.close();
    path.finish()
}

/// The left half.
fn half(x: f32, y: f32, r: f32) -> Option<Path> {
    let k = r * ARC;
    let mut path = PathBuilder::new();
    path.move_to(x, y - r);
    path.line_to(x, y + r);
    path.cubic_to(x - k, y + r, x - r, y + k, x - r, y);
    path.cubic_to(x - r, y - k, x - k, y - r, x, y - r);
    path.close();
    path.finish()
}

/// A text as a QR code (ISO/IEC 18004, level M) `size` wide with its quiet zone.
///
/// # Errors
/// A text that fits no code.
pub(super) fn code(text: &str, x: f32, y: f32, size: f32) -> Result<Option<Shape>, Fault> {
    let code = QrCode::with_error_correction_level(text, EcLevel::M).map_err(Fault::internal)?;
    let width = code.width();
    let module = size / (width as f32 + 2.0 * QUIET);
    let mut path = PathBuilder::new();
    for (row, colours) in code.to_colors().chunks(width).enumerate() {
        let y = y + (row as f32 + QUIET) * module;
        let mut from = 0;
        for run in colours.chunk_by(|a, b| a == b) {
            let x = x + (from as f32 + QUIET) * module;
            from += run.len();
            // A hair higher than its row, so that no light shows between two rows.
            let dark = run.first() == Some(&Color::Dark);
            if let (true, Some(rect)) =
                (dark, Rect::from_xywh(x, y, run.len() as f32 * module, module * 1.02))
            {
                path.push_rect(rect);
            }
        }
    }
    Ok(path.finish().map(|path| Shape { path, stroke: None, ink: Ink::Black }))
}
