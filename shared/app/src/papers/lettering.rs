//! Letters: the fonts shipped with the app, shaped, measured and broken into lines.

use std::cell::Cell;

use krilla::text::{Font, GlyphId, KrillaGlyph};
use rustybuzz::ttf_parser::Tag;
use rustybuzz::{Face, Feature, UnicodeBuffer};
use unicode_linebreak::{BreakOpportunity, linebreaks};

use crate::{EMBEDDED, Fault};

/// Stands for a character that the font doesn't have.
const LACKING: char = '\u{25A1}';
/// Baseline to baseline, of the size.
const LEADING: f32 = 1.32;

/// How letters look.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Style {
    /// Heavy, for what is read first.
    pub bold: bool,
    /// Points.
    pub size: f32,
    /// Lighter ink, for what is read last.
    pub soft: bool,
}

impl Style {
    pub(crate) const fn plain(size: f32) -> Self {
        Self { bold: false, size, soft: false }
    }

    pub(crate) const fn bold(size: f32) -> Self {
        Self { bold: true, size, soft: false }
    }

    pub(crate) const fn soft(size: f32) -> Self {
        Self { bold: false, size, soft: true }
    }

    /// Baseline to baseline, points.
    pub(crate) fn leading(self) -> f32 {
        self.size * LEADING
    }
}

/// One line of text, shaped.
#[derive(Clone, Debug)]
pub(crate) struct Line {
    pub text: String,
    pub glyphs: Vec<KrillaGlyph>,
    pub style: Style,
    /// Points, without the space at its end.
    pub width: f32,
}

impl Line {
    /// Points, with the space at its end.
    fn advance(&self) -> f32 {
        self.glyphs.iter().map(|glyph| glyph.x_advance).sum::<f32>() * self.style.size
    }
}

/// Lines being filled to a width.
struct Column<'a> {
    letters: &'a Lettering,
    style: Style,
    width: f32,
    lines: Vec<Line>,
    current: String,
    /// Width of what is on the current line, with the space at its end.
    used: f32,
}

impl Column<'_> {
    /// Puts a piece that doesn't break by itself: on this line, on the next, or cut where it is
    /// wider than any line.
    fn put(&mut self, piece: &str) {
        let shaped = self.letters.shape(piece.to_owned(), self.style);
        if self.used + shaped.width > self.width && !self.current.is_empty() {
            self.next();
        }
        if shaped.width <= self.width {
            self.take(piece, shaped.advance());
            return;
        }
        for letter in piece.chars().map(String::from) {
            let advance = self.letters.shape(letter.clone(), self.style).advance();
            if self.used + advance > self.width && !self.current.is_empty() {
                self.next();
            }
            self.take(&letter, advance);
        }
    }

    fn take(&mut self, piece: &str, advance: f32) {
        self.current.push_str(piece);
        self.used += advance;
    }

    fn next(&mut self) {
        self.lines.push(self.letters.shape(std::mem::take(&mut self.current), self.style));
        self.used = 0.0;
    }
}

/// The two weights.
pub(crate) struct Lettering {
    regular: Weight,
    bold: Weight,
    lacking: Cell<bool>,
}

struct Weight {
    font: Font,
    face: Face<'static>,
}

impl Weight {
    fn read(file: &str) -> Result<Self, Fault> {
        let missing = || Fault::new("catalogue").text("where", file).text("why", "no font can be read there");
        let bytes = EMBEDDED.get_file(file).ok_or_else(missing)?.contents();
        let font = Font::new(bytes.into(), 0).ok_or_else(missing)?;
        Ok(Self { font, face: Face::from_slice(bytes, 0).ok_or_else(missing)? })
    }
}

impl Lettering {
    /// The fonts of the catalogue.
    ///
    /// # Errors
    /// A font that can't be read.
    pub(crate) fn read() -> Result<Self, Fault> {
        Ok(Self {
            regular: Weight::read("fonts/Inter-Regular.otf")?,
            bold: Weight::read("fonts/Inter-Bold.otf")?,
            lacking: Cell::new(false),
        })
    }

    /// Whether some character had to be shown as an empty box.
    pub(super) fn lacking(&self) -> bool {
        self.lacking.get()
    }

    pub(super) fn font(&self, style: Style) -> Font {
        self.weight(style).font.clone()
    }

    fn weight(&self, style: Style) -> &Weight {
        if style.bold { &self.bold } else { &self.regular }
    }

    /// A text in one line, however wide.
    pub(crate) fn line(&self, text: &str, style: Style) -> Line {
        self.shape(self.printable(text, style), style)
    }

    /// A text broken into lines no wider than `width`; its own line ends stay.
    pub(crate) fn wrap(&self, text: &str, style: Style, width: f32) -> Vec<Line> {
        let paragraphs = text.lines().map(|line| self.printable(line, style));
        paragraphs.flat_map(|paragraph| self.broken(&paragraph, style, width)).collect()
    }

    fn broken(&self, text: &str, style: Style, width: f32) -> Vec<Line> {
        let mut column =
            Column { letters: self, style, width, lines: Vec::new(), current: String::new(), used: 0.0 };
        let mut from = 0;
        for (at, _) in linebreaks(text).filter(|(_, kind)| *kind != BreakOpportunity::Mandatory) {
            column.put(text.get(from..at).unwrap_or_default());
            from = at;
        }
        column.put(text.get(from..).unwrap_or_default());
        column.lines.push(self.shape(column.current.trim_end().to_owned(), style));
        column.lines
    }

    /// What the font can print: spaces for what only controls, an empty box for what it lacks.
    fn printable(&self, text: &str, style: Style) -> String {
        let face = &self.weight(style).face;
        text.chars()
            .filter(|letter| !joins(*letter))
            .map(|letter| match letter {
                letter if letter.is_control() || letter.is_whitespace() => ' ',
                letter if face.glyph_index(letter).is_some() => letter,
                _ => {
                    self.lacking.set(true);
                    LACKING
                }
            })
            .collect()
    }

    fn shape(&self, text: String, style: Style) -> Line {
        let weight = self.weight(style);
        let units = weight.font.units_per_em();
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(&text);
        buffer.set_direction(rustybuzz::Direction::LeftToRight);
        buffer.guess_segment_properties();
        // What was typed is what is printed: no “->” made into an arrow, no x into a cross.
        let plain = Feature::new(Tag::from_bytes(b"calt"), 0, ..);
        let shaped = rustybuzz::shape(&weight.face, &[plain], buffer);
        let infos = shaped.glyph_infos();
        let end_of = |cluster: u32| {
            let later = infos.iter().map(|info| info.cluster).filter(|other| *other > cluster).min();
            later.map_or(text.len(), |later| later as usize)
        };
        let glyphs: Vec<KrillaGlyph> = infos
            .iter()
            .zip(shaped.glyph_positions())
            .map(|(info, at)| {
                KrillaGlyph::new(
                    GlyphId::new(info.glyph_id),
                    at.x_advance as f32 / units,
                    at.x_offset as f32 / units,
                    at.y_offset as f32 / units,
                    at.y_advance as f32 / units,
                    info.cluster as usize..end_of(info.cluster),
                    None,
                )
            })
            .collect();
        let seen = text.trim_end().len();
        let width =
            glyphs.iter().filter(|glyph| glyph.text_range.start < seen).map(|g| g.x_advance).sum::<f32>();
        Line { width: width * style.size, text, glyphs, style }
    }
}

/// Characters that only tell how others join: nothing to print.
fn joins(letter: char) -> bool {
    matches!(letter, '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{2064}' | '\u{FE00}'..='\u{FE0F}' | '\u{FEFF}')
}
