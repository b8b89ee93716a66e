//! A text that flows down pages: what stands where is settled first, and drawn when the number
//! of pages is known.

use krilla::tagging::TagKind;

use super::lettering::{Lettering, Line, Style};
use super::marks::Shape;

/// What is drawn in one go.
pub(super) enum Drawn {
    /// A line of text, its baseline's left end at this place.
    Line(Line, f32, f32),
    /// Shapes, and what they say in words; nothing where they only adorn.
    Shapes(Vec<Shape>, Option<String>),
}

/// One thing on a page, and the element it belongs to; none for what isn't content.
pub(super) struct Placed {
    pub drawn: Drawn,
    pub element: Option<usize>,
}

/// An element of the document's structure, for readers who don't see the page.
pub(super) struct Element {
    pub kind: TagKind,
    pub parent: Option<usize>,
}

/// Margins and size, points.
#[derive(Clone, Copy)]
pub(super) struct Format {
    pub width: f32,
    pub height: f32,
    pub margin: f32,
    /// Kept free below for the footer.
    pub foot: f32,
}

/// Pages being filled.
pub(super) struct Flow<'a> {
    pub letters: &'a Lettering,
    pub format: Format,
    pub pages: Vec<Vec<Placed>>,
    pub elements: Vec<Element>,
    /// Headings: words, page, height on it.
    pub outline: Vec<(String, usize, f32)>,
    open: Vec<usize>,
    /// Where the next thing goes, from the top.
    pub y: f32,
}

impl<'a> Flow<'a> {
    pub(super) fn new(letters: &'a Lettering, format: Format) -> Self {
        Self {
            letters,
            format,
            pages: vec![Vec::new()],
            elements: Vec::new(),
            outline: Vec::new(),
            open: Vec::new(),
            y: format.margin,
        }
    }

    /// Width between the margins.
    pub(super) fn width(&self) -> f32 {
        self.format.width - 2.0 * self.format.margin
    }

    fn bottom(&self) -> f32 {
        self.format.height - self.format.foot
    }

    /// Goes on to a new page where less than this is left.
    pub(super) fn room(&mut self, height: f32) {
        if self.y + height > self.bottom() && self.y > self.format.margin {
            self.pages.push(Vec::new());
            self.y = self.format.margin;
        }
    }

    pub(super) fn space(&mut self, height: f32) {
        self.y += height;
    }

    /// What is put until [`Flow::close`] belongs to this element.
    pub(super) fn open(&mut self, kind: impl Into<TagKind>) {
        self.elements.push(Element { kind: kind.into(), parent: self.open.last().copied() });
        self.open.push(self.elements.len() - 1);
    }

    pub(super) fn close(&mut self) {
        self.open.pop();
    }

    /// A heading in the outline, where the next thing goes.
    pub(super) fn mark_outline(&mut self, words: &str) {
        self.outline.push((words.to_owned(), self.pages.len() - 1, self.y));
    }

    /// Shapes that say something in words, within the element that is open.
    pub(super) fn shapes(&mut self, shapes: Vec<Shape>, words: String) {
        self.put(Drawn::Shapes(shapes, Some(words)), self.open.last().copied());
    }

    /// Shapes that only adorn.
    pub(super) fn adorn(&mut self, shape: Option<Shape>) {
        self.put(Drawn::Shapes(shape.into_iter().collect(), None), None);
    }

    fn put(&mut self, drawn: Drawn, element: Option<usize>) {
        if let Some(page) = self.pages.last_mut() {
            page.push(Placed { drawn, element });
        }
    }

    /// Lines at a place, without moving on; says how high they are.
    pub(super) fn lines_at(&mut self, lines: Vec<Line>, x: f32, top: f32) -> f32 {
        let element = self.open.last().copied();
        let mut y = top;
        for line in lines {
            let style = line.style;
            self.put(Drawn::Line(line, x, y + style.size), element);
            y += style.leading();
        }
        y - top
    }

    /// A text within a width, line by line down the page and over to the next.
    pub(super) fn text(&mut self, text: &str, style: Style, x: f32, width: f32) {
        for line in self.letters.wrap(text, style, width) {
            self.room(style.leading());
            self.y += self.lines_at(vec![line], x, self.y);
        }
    }
}

/// How high lines are together.
pub(super) fn height(lines: &[Line]) -> f32 {
    lines.iter().map(|line| line.style.leading()).sum()
}
