//! Pages written as PDF: fonts embedded, structure tagged, to last (PDF/A-2a) and to be read
//! by everyone (PDF/UA-1), as far as the library can check it.

use chrono::{DateTime, Datelike, FixedOffset, Timelike};
use krilla::color::rgb;
use krilla::configure::{Accessibility, Archival, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::Point;
use krilla::metadata::{DateTime as PdfTime, Metadata};
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, Paint, Stroke};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier, Node, SpanTag, TagGroup, TagTree};
use krilla::{Document, SerializeSettings};

use super::flow::{Drawn, Element, Flow, Placed};
use super::lettering::{Lettering, Line};
use super::marks::{Ink, Shape};
use crate::Fault;

/// What a document says of itself.
pub(super) struct About {
    pub title: String,
    pub language: String,
    /// When it was printed.
    pub at: DateTime<FixedOffset>,
}

/// The document's bytes. `foot` gives a page's last lines from its number and how many there are:
/// one at the left margin, one at the right.
///
/// # Errors
/// What the library refuses.
pub(super) fn write(
    flow: &Flow<'_>,
    about: &About,
    foot: impl Fn(usize, usize) -> Option<(Line, Line)>,
) -> Result<Vec<u8>, Fault> {
    let configuration = ConfigurationBuilder::new()
        .with_archival_validator(Archival::A2_A)
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|fault| Fault::internal(format!("{fault:?}")))?;
    let settings = SerializeSettings { configuration, enable_tagging: true, ..SerializeSettings::default() };
    let mut document = Document::new_with(settings);
    let format = flow.format;
    let mut leaves: Vec<Vec<Identifier>> = flow.elements.iter().map(|_| Vec::new()).collect();
    for (number, placed) in flow.pages.iter().enumerate() {
        let size = PageSettings::from_wh(format.width, format.height);
        let mut page =
            document.start_page_with(size.ok_or_else(|| Fault::internal("a page without a size"))?);
        let mut surface = page.surface();
        for one in placed {
            let leaf = put(&mut surface, flow.letters, one);
            if let Some(leaves) = one.element.and_then(|element| leaves.get_mut(element)) {
                leaves.push(leaf);
            }
        }
        if let Some((left, right)) = foot(number + 1, flow.pages.len()) {
            let y = format.height - format.foot / 2.0;
            let x = format.width - format.margin - right.width;
            surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(ArtifactType::Footer)));
            letters(&mut surface, flow.letters, &left, format.margin, y);
            letters(&mut surface, flow.letters, &right, x, y);
            surface.end_tagged();
        }
        surface.finish();
        page.finish();
    }
    let mut outline = Outline::new();
    for (words, page, y) in &flow.outline {
        let there = XyzDestination::new(*page, Point::from_xy(format.margin, *y));
        outline.push_child(OutlineNode::new(words.clone(), there));
    }
    document.set_outline(outline);
    document.set_metadata(metadata(about));
    let tops = (0..flow.elements.len()).filter(|n| flow.elements.get(*n).is_some_and(|e| e.parent.is_none()));
    let tree: Vec<Node> = tops.filter_map(|n| group(n, &flow.elements, &mut leaves)).collect();
    document.set_tag_tree(TagTree::from(tree).with_lang(Some(about.language.clone())));
    document.finish().map_err(|fault| Fault::internal(format!("{fault:?}")))
}

/// An element with all that is in it; none where nothing is.
fn group(n: usize, elements: &[Element], leaves: &mut [Vec<Identifier>]) -> Option<Node> {
    let element = elements.get(n)?;
    let mut children: Vec<Node> =
        leaves.get_mut(n).map(std::mem::take)?.into_iter().map(Node::from).collect();
    let inner = elements.iter().enumerate().filter(|(_, inner)| inner.parent == Some(n)).map(|(at, _)| at);
    for at in inner.collect::<Vec<_>>() {
        children.extend(group(at, elements, leaves));
    }
    (!children.is_empty()).then(|| TagGroup::with_children(element.kind.clone(), children).into())
}

fn metadata(about: &About) -> Metadata {
    let at = about.at;
    let small = |number: u32| u8::try_from(number).unwrap_or(0);
    let offset = at.offset().local_minus_utc();
    let made = PdfTime::new(u16::try_from(at.year()).unwrap_or(0))
        .month(small(at.month()))
        .day(small(at.day()))
        .hour(small(at.hour()))
        .minute(small(at.minute()))
        .second(small(at.second()))
        .utc_offset_hour(i8::try_from(offset / 3600).unwrap_or(0))
        .utc_offset_minute(u8::try_from(offset.abs() / 60 % 60).unwrap_or(0));
    Metadata::new()
        .title(about.title.clone())
        .language(about.language.clone())
        .creator("Witness Mark".to_owned())
        .creation_date(made)
}

fn put(surface: &mut Surface<'_>, lettering: &Lettering, placed: &Placed) -> Identifier {
    let artifact = ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout));
    let span = |words| ContentTag::Span(SpanTag::empty().with_alt_text(words));
    let tag = match (&placed.drawn, placed.element) {
        (_, None) => artifact,
        (Drawn::Line(..), Some(_)) => span(None),
        (Drawn::Shapes(_, words), Some(_)) => span(words.as_deref()),
    };
    let leaf = surface.start_tagged(tag);
    match &placed.drawn {
        Drawn::Line(line, x, y) => letters(surface, lettering, line, *x, *y),
        Drawn::Shapes(shapes, _) => shapes.iter().for_each(|one| shape(surface, one)),
    }
    surface.end_tagged();
    leaf
}

fn letters(surface: &mut Surface<'_>, lettering: &Lettering, line: &Line, x: f32, y: f32) {
    let ink = if line.style.soft { Ink::Soft } else { Ink::Black };
    surface.set_stroke(None);
    surface.set_fill(Some(Fill { paint: paint(ink), ..Fill::default() }));
    let font = lettering.font(line.style);
    surface.draw_glyphs(Point::from_xy(x, y), &line.glyphs, font, &line.text, line.style.size, false);
}

fn shape(surface: &mut Surface<'_>, shape: &Shape) {
    let paint = paint(shape.ink);
    match shape.stroke {
        Some(width) => {
            surface.set_fill(None);
            surface.set_stroke(Some(Stroke { paint, width, ..Stroke::default() }));
        }
        None => {
            surface.set_stroke(None);
            surface.set_fill(Some(Fill { paint, ..Fill::default() }));
        }
    }
    surface.draw_path(&shape.path);
}

fn paint(ink: Ink) -> Paint {
    match ink {
        Ink::Black => rgb::Color::new(0, 0, 0),
        // 7 : 1 on white and more (WCAG 2.2, 1.4.6), so that a bad copy still shows it.
        Ink::Soft => rgb::Color::new(72, 84, 92),
        Ink::Hair => rgb::Color::new(190, 196, 192),
        Ink::Paint => rgb::Color::new(232, 89, 12),
    }
    .into()
}
