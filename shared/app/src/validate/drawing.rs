//! A drawing is put into the page as it stands, and may come from a school: it holds shapes that are
//! named here, and nothing else. What isn't known to be harmless isn't there.

use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};
use witnessmark_core::list::{CatalogueFault, line_at};

const ELEMENTS: [&str; 9] = ["svg", "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon"];
const ATTRIBUTES: [&str; 28] = [
    "class",
    "cx",
    "cy",
    "d",
    "data-focus",
    "data-station",
    "fill",
    "fill-rule",
    "height",
    "points",
    "r",
    "rx",
    "ry",
    "stroke-dasharray",
    "stroke-linecap",
    "stroke-linejoin",
    "transform",
    "viewBox",
    "width",
    "x",
    "x1",
    "x2",
    "y",
    "y1",
    "y2",
    "xmlns",
    "opacity",
    "stroke-width",
];
/// What the page's style sheet knows.
const CLASSES: [&str; 10] =
    ["ink", "thin", "solid", "body", "shade", "soft", "paint", "ring", "stop", "walk"];
const NAMESPACE: &str = "http://www.w3.org/2000/svg";
const HINT: &str = "keep shapes with the classes that DEVELOPERS.md lists";

/// What is wrong with a drawing; the first thing is enough.
pub(crate) fn check_drawing(file: &str, text: &str) -> Option<CatalogueFault> {
    let (at, what) = fault(text)?;
    let at = usize::try_from(at).unwrap_or(usize::MAX).min(text.len());
    Some(CatalogueFault { file: file.to_owned(), line: line_at(text, at), what, hint: HINT.to_owned() })
}

fn fault(text: &str) -> Option<(u64, String)> {
    let mut reader = Reader::from_str(text);
    let (mut depth, mut drawings) = (0_u32, 0_u32);
    loop {
        let at = reader.buffer_position();
        let event = match reader.read_event() {
            Ok(event) => event,
            Err(why) => return Some((at, format!("a drawing is well-formed XML: {why}"))),
        };
        let empty = matches!(event, Event::Empty(_));
        match event {
            Event::Start(element) | Event::Empty(element) => {
                let root = depth == 0;
                drawings = drawings.saturating_add(u32::from(root));
                if let Some(what) = element_fault(&element, root) {
                    return Some((at, what));
                }
                depth = depth.saturating_add(u32::from(!empty));
            }
            Event::End(_) => depth = depth.saturating_sub(1),
            Event::Text(words) if words.chars().all(|c| c.is_ascii_whitespace()) => {}
            Event::Eof if depth == 0 && drawings == 1 => return None,
            Event::Eof => return Some((at, "a drawing is one whole `svg`".into())),
            _ => return Some((at, "a drawing may hold nothing but shapes".into())),
        }
    }
}

fn element_fault(element: &BytesStart<'_>, root: bool) -> Option<String> {
    let name = element.name();
    let name: &str = name.as_ref();
    if !ELEMENTS.contains(&name) || root != (name == "svg") {
        return Some(format!("a drawing may not contain `{name}` there"));
    }
    for attribute in element.attributes() {
        let Ok(attribute) = attribute else {
            return Some(format!("an attribute of `{name}` can't be read"));
        };
        let (key, value): (&str, &str) = (attribute.key.as_ref(), &attribute.value);
        let good = match key {
            "xmlns" => root && value == NAMESPACE,
            "class" => value.split_ascii_whitespace().all(|class| CLASSES.contains(&class)),
            key => ATTRIBUTES.contains(&key) && plain(value),
        };
        if !good {
            return Some(format!("a drawing may not contain `{key}=\"{value}\"`"));
        }
    }
    None
}

/// Numbers, names and lists of them; no address, no mark that another reader could take for an end.
fn plain(value: &str) -> bool {
    let letter = |c: char| c.is_ascii_alphanumeric() || " \n\r\t.,+-#%()".contains(c);
    value.chars().all(letter) && !value.to_ascii_lowercase().contains("url")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawing(inside: &str) -> String {
        format!("<svg xmlns=\"{NAMESPACE}\" viewBox=\"0 0 354 240\">{inside}</svg>")
    }

    #[test]
    fn shapes_are_taken() {
        let shapes = "<g data-focus=\"tip\"><path class=\"ink thin\" d=\"M1.5-2L3 4Z\"/>\n\
                      <circle class='ring' cx=\"1\" cy=\"2\" r=\"3\"/></g>";
        assert_eq!(check_drawing("drawings/x.svg", &drawing(shapes)), None);
    }

    /// From memory: what acts in an SVG within a page, and what two parsers read differently.
    #[test]
    fn nothing_that_acts_is() {
        for trick in [
            "<script>1</script>",
            "<SCRIPT/>",
            "<s:script xmlns:s=\"http://www.w3.org/2000/svg\"/>",
            "<a href=\"https://x.example\"><path d=\"M0 0\"/></a>",
            "<use xlink:href=\"#x\"/>",
            "<animate attributeName=\"d\" onbegin=\"x()\"/>",
            "<set attributeName=\"class\" to=\"walk\"/>",
            "<path d=\"M0 0\" onpointerenter=\"x()\"/>",
            "<path d=\"M0 0\" ONLOAD=\"x()\"/>",
            "<path d=\"M0 0\" style=\"background:red\"/>",
            "<path fill=\"url(https://x.example/#y)\"/>",
            "<path fill=\"u&#114;l(#y)\"/>",
            "<path class=\"sheet cover\"/>",
            "<path id=\"x\"/>",
            "<foreignObject><p/></foreignObject>",
            "<image/>",
            "<style>*{}</style>",
            "<![CDATA[<script>]]>",
            "<!-- --><g/>",
            "<?xml-stylesheet href=\"x\"?>",
            "words",
            "&amp;",
            "<path d=M0/>",
            "<path d=\"M0 0\" d=\"M1 1\"/>",
            "<g>",
            "</svg><p>x</p><svg>",
            "<svg/>",
        ] {
            assert!(check_drawing("drawings/x.svg", &drawing(trick)).is_some(), "{trick}");
        }
        for whole in ["", "<g/>", "<!DOCTYPE svg><svg/>", "<svg/><svg/>", "<svg", "<svg xmlns=\"x\"/>"] {
            assert!(check_drawing("drawings/x.svg", whole).is_some(), "{whole}");
        }
    }
}
