//! Plots as files: read back by an XML reader and a PNG decoder that know nothing of how they were made.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use base64ct::{Base64, Encoding};
use common::pen::{CLIMBING, Pen, day, seen};
use common::{Clock, platform};
use image::RgbImage;
use resvg::usvg::roxmltree::{Document, Node};
use uuid::Uuid;
use witnessmark_app::views::{FileBytes, LifeFinding, LifePart, LifePoint, LifeStep, LifeView};
use witnessmark_app::{App, PlotKind};
use witnessmark_core::list::Meaning;

const INK: [u8; 3] = [0x0f, 0x1d, 0x26];
const PAPER: [u8; 3] = [0xfb, 0xfa, 0xf4];

fn logged(name: &str, readings: &[(f64, f64)]) -> (App, Uuid) {
    let mut pen = Pen::new();
    let machine = pen.machine(name, 74.0);
    for (hours, celsius) in readings {
        pen.cht(machine, *hours, *celsius, None);
    }
    pen.job(machine, 26.5, "Carburettor cleaned");
    (app(&pen), machine)
}

fn app(pen: &Pen) -> App {
    App::new(pen.kept(), platform(&Clock::at("2026-05-02T06:41:07+02:00"), 1, None)).unwrap()
}

fn plot(app: &mut App, machine: Uuid, measure: &str, kind: PlotKind, dark: bool) -> FileBytes {
    app.trend_plot(machine.to_string(), measure, kind, dark).unwrap()
}

fn bytes(file: &FileBytes) -> Vec<u8> {
    Base64::decode_vec(&file.data).unwrap()
}

/// A drawing read back: its elements with their attributes, and its words.
struct Drawing {
    elements: Vec<(String, Vec<(String, String)>)>,
    words: String,
}

impl Drawing {
    fn read(file: &FileBytes) -> Self {
        assert_eq!(file.media, "image/svg+xml");
        let text = String::from_utf8(bytes(file)).unwrap();
        let read = Document::parse(&text).unwrap();
        let attributes = |node: &Node<'_, '_>| {
            node.attributes().map(|one| (one.name().to_owned(), one.value().to_owned())).collect()
        };
        let elements = read.descendants().filter(Node::is_element);
        let words = read.descendants().filter(Node::is_text).filter_map(|node| node.text());
        Self {
            elements: elements.map(|node| (node.tag_name().name().to_owned(), attributes(&node))).collect(),
            words: words.flat_map(str::split_whitespace).collect::<Vec<_>>().join(" "),
        }
    }

    /// Elements of a kind, each asked for these attributes.
    fn of(&self, kind: &str, names: [&str; 3]) -> Vec<[String; 3]> {
        let attribute = |attributes: &[(String, String)], name: &str| {
            attributes.iter().find(|(key, _)| key == name).map(|(_, value)| value.clone()).unwrap_or_default()
        };
        let of_kind = self.elements.iter().filter(|(name, _)| name == kind);
        of_kind.map(|(_, attributes)| names.map(|name| attribute(attributes, name))).collect()
    }

    /// Where circles of a radius are, in drawing units.
    fn circles(&self, radius: &str) -> Vec<(f64, f64)> {
        let found = self.of("circle", ["cx", "cy", "r"]).into_iter().filter(|[_, _, r]| r == radius);
        found.map(|[x, y, _]| (x.parse().unwrap(), y.parse().unwrap())).collect()
    }
}

/// A reading's dot, and the ring of one that lies far off, in drawing units: four in a pixel.
const DOT: &str = "14";
const RING: &str = "24";

#[test]
fn every_reading_lies_where_its_hours_and_value_say() {
    let (mut app, machine) = logged("Thistle", &CLIMBING);
    let drawing = Drawing::read(&plot(&mut app, machine, "peak-cht", PlotKind::Svg, false));
    // The key has one of each sign, after the chart.
    let dots = drawing.circles(DOT);
    let ring = drawing.circles(RING)[0];
    assert_eq!((dots.len(), drawing.circles(RING).len()), (11 + 1, 1 + 1));
    let mut drawn: Vec<(f64, f64)> = dots[..11].to_vec();
    drawn.insert(10, ring);
    // Straight axes: three places give the scale, all others must follow it.
    let ((x0, y0), (x1, y1)) = (drawn[0], drawn[11]);
    for ((hours, celsius), (x, y)) in CLIMBING.into_iter().zip(drawn) {
        let along = x0 + (hours - 5.0) / 65.0 * (x1 - x0);
        let up = y0 + (celsius - 181.0) / 18.0 * (y1 - y0);
        // An end lies half a unit off at most; carried on to 214 °C, two.
        assert!((x - along).abs() <= 1.0 && (y - up).abs() <= 2.0, "{hours} h: {x}, {y} for {along}, {up}");
    }
    assert!(x1 > x0 && y1 < y0, "later is further right, more is higher");
}

#[test]
fn what_it_says_is_text_in_a_font_that_any_system_has() {
    let (mut app, machine) = logged("Thistle & <Sons> \u{7}", &CLIMBING);
    let trends = app.trends(machine.to_string()).unwrap();
    let file = plot(&mut app, machine, "peak-cht", PlotKind::Svg, false);
    assert_eq!(file.name, "thistle-sons-peak-cht.svg");
    let drawing = Drawing::read(&file);
    for words in trends[0].sentences.iter().map(String::as_str).chain([
        "Highest head temperature",
        "Thistle & <Sons>",
        "°C",
        "engine hours",
        "limit 210 °C",
        "1: Work begun: Carburettor cleaned, 26.5 h",
        "Unconfirmed (common practice, no source)",
    ]) {
        // A long sentence is broken into lines; the description has it whole.
        assert!(drawing.words.contains(words), "{words}: {}", drawing.words);
    }
    let fonts = drawing.of("text", ["font-family", "x", "y"]);
    assert!(fonts.len() > 20 && fonts.iter().all(|[font, _, _]| font.ends_with("sans-serif")), "{fonts:?}");
    // The limit's line and the line of the trend differ in more than colour.
    let lines = drawing.of("polyline", ["stroke", "stroke-width", "points"]);
    let widths = |colour: &str| -> std::collections::BTreeSet<String> {
        lines.iter().filter(|[stroke, _, _]| stroke == colour).map(|[_, width, _]| width.clone()).collect()
    };
    assert!(widths("#E8590C").contains("14") && widths("#0B5563").contains("10"), "{lines:?}");
}

/// PNG (ISO/IEC 15948) as the decoder sees it: twice as many pixels each way, and ink where the drawing
/// has its readings.
#[test]
fn the_picture_has_ink_where_the_readings_are() {
    let (mut app, machine) = logged("Thistle", &CLIMBING);
    let drawing = Drawing::read(&plot(&mut app, machine, "peak-cht", PlotKind::Svg, false));
    let [width, height, _] = drawing.of("svg", ["width", "height", "role"])[0].clone();
    let read = |file: &FileBytes| -> RgbImage {
        assert_eq!(file.media, "image/png");
        image::load_from_memory(&bytes(file)).unwrap().into_rgb8()
    };
    let picture = read(&plot(&mut app, machine, "peak-cht", PlotKind::Png, false));
    let twice = |text: &str| text.parse::<u32>().unwrap() * 2;
    assert_eq!(picture.dimensions(), (twice(&width), twice(&height)));
    assert_eq!(picture.get_pixel(2, 2).0, PAPER);
    for (x, y) in drawing.circles(DOT) {
        assert_eq!(picture.get_pixel((x / 2.0) as u32, (y / 2.0) as u32).0, INK, "at {x}, {y}");
    }
    // Letters, too: by the fonts of the catalogue, whatever fonts the system has.
    let title = (60..110).flat_map(|y| (64..400).map(move |x| (x, y)));
    assert!(title.filter(|(x, y)| picture.get_pixel(*x, *y).0 == INK).count() > 500);

    let dark = read(&plot(&mut app, machine, "peak-cht", PlotKind::Png, true));
    assert_eq!(dark.dimensions(), picture.dimensions());
    assert_eq!(dark.get_pixel(2, 2).0, [0x0e, 0x17, 0x1d]);
    let (x, y) = drawing.circles(DOT)[0];
    assert_eq!(dark.get_pixel((x / 2.0) as u32, (y / 2.0) as u32).0, [0xf4, 0xf2, 0xe8]);
}

#[test]
fn ten_years_of_readings_are_all_there() {
    let readings: Vec<(f64, f64)> = (0..3650).map(|n| (f64::from(n) * 0.4, f64::from(180 + n % 7))).collect();
    let (mut app, machine) = logged("Thistle", &readings);
    let drawing = Drawing::read(&plot(&mut app, machine, "peak-cht", PlotKind::Svg, false));
    assert_eq!(drawing.circles(DOT).len(), 3650 + 1);
}

#[test]
fn one_reading_is_drawn_and_no_line_with_it() {
    let (mut app, machine) = logged("Thistle", &CLIMBING[..1]);
    let drawing = Drawing::read(&plot(&mut app, machine, "peak-cht", PlotKind::Svg, false));
    assert_eq!(drawing.circles(DOT).len(), 2);
    assert!(drawing.words.contains("Too little to say"));
    let lines = drawing.of("polyline", ["stroke", "points", "fill"]);
    assert!(lines.iter().all(|[stroke, _, _]| stroke != "#0B5563"), "{lines:?}");
}

#[test]
fn grades_have_their_words_at_the_axis_and_a_shape_each() {
    let mut pen = Pen::new();
    let machine = pen.machine("Thistle", 40.0);
    for (hours, means) in [(3.0, Meaning::Serviceable), (8.0, Meaning::Watch), (12.0, Meaning::Unserviceable)]
    {
        pen.look(machine, hours, day("2026-04-03"), seen("cylinder-base", means));
    }
    let drawing = Drawing::read(&plot(&mut app(&pen), machine, "cylinder-base", PlotKind::Svg, false));
    for words in ["Dry", "Old stain, dry to", "Wet"] {
        assert!(drawing.words.contains(words), "{}", drawing.words);
    }
    // A full ring; a ring over paper with half of it filled; a ring over paper with a bar.
    let rings = drawing.of("circle", ["fill", "stroke", "r"]);
    let fills: Vec<&str> = rings.iter().map(|[fill, _, _]| fill.as_str()).collect();
    assert_eq!(fills, ["#0B5563", "#FBFAF4", "none", "#FBFAF4", "none"], "{rings:?}");
    assert_eq!(drawing.of("polygon", ["points", "fill", "opacity"]).len(), 2);
}

fn life(findings: &[(f64, Option<f64>)]) -> LifeView {
    let share = |hours: f64| (-(hours / 80.0).powi(2)).exp();
    let point = |hours: f64| LifePoint {
        hours,
        share: share(hours),
        low: share(hours * 1.2),
        high: share(hours * 0.8),
    };
    let step = |since, hours, share| LifeStep { since, hours, share, low: share - 0.1, high: share + 0.1 };
    LifeView {
        part: LifePart {
            id: "exhaust".into(),
            words: "Exhaust".into(),
            machines: 9,
            lives: 9,
            failed: 2,
            invented: true,
        },
        rests_on: "This rests on little.".into(),
        survival: vec![step(20.0, 31.0, 0.8), step(60.0, 70.0, 0.5)],
        fitted: (0..=50).map(|n| point(f64::from(n) * 2.0)).collect(),
        findings: findings.iter().map(|(after, by)| LifeFinding { after: *after, by: *by }).collect(),
        sentences: vec!["Half of them last 67 hours.".into()],
        every: None,
        shortens: false,
        in_force: None,
        chance: 0.02,
        intervals: vec!["How the intervals were made.".into()],
    }
}

#[test]
fn lives_show_steps_curve_and_every_finding() {
    let app = app(&Pen::new());
    let found = [(20.0, Some(31.0)), (60.0, Some(70.0)), (100.0, None), (55.0, None), (10.0, None)];
    let file = app.life_plot(&life(&found), PlotKind::Svg, false).unwrap();
    assert_eq!(file.name, "life-exhaust.svg");
    let drawing = Drawing::read(&file);
    let of_colour = |kind: &str, name: &str, colour: &str| {
        drawing
            .of(kind, [name, "points", "stroke-width"])
            .into_iter()
            .filter(|[is, _, _]| is == colour)
            .count()
    };
    // Downward triangles: two found failed, and the key's.
    assert_eq!(of_colour("polygon", "fill", "#8A3205"), 3);
    // Ticks of those seen whole, in the ink of the axes but thinner, and the key's.
    let whole = drawing.of("polyline", ["stroke", "stroke-width", "points"]);
    let whole = whole.iter().filter(|[stroke, width, points]| {
        stroke == "#3F4E57" && width == "5" && points.split_whitespace().count() == 2
    });
    assert!(whole.count() >= 4);
    // The curve's patch between its ends: 51 points there and back.
    let patches = drawing.of("polygon", ["points", "fill", "opacity"]);
    assert!(patches.iter().any(|[points, _, _]| points.split_whitespace().count() == 102), "{patches:?}");
    for words in ["100 %", "0 %", "hours in service", "This rests on little.", "How the intervals were made."]
    {
        assert!(drawing.words.contains(words), "{words}: {}", drawing.words);
    }
    assert!(!drawing.words.contains("-20 %") && !drawing.words.contains("120 %"));
    let picture = app.life_plot(&life(&found), PlotKind::Png, true).unwrap();
    assert!(image::load_from_memory(&bytes(&picture)).unwrap().width() == 1920);
}

#[test]
fn a_hundred_thousand_findings_make_no_larger_a_file_than_the_sheet_shows() {
    let app = app(&Pen::new());
    let many: Vec<(f64, Option<f64>)> = (0..100_000)
        .map(|n| (f64::from(n % 997) / 10.0, (n % 3 == 0).then(|| f64::from(n % 997) / 10.0 + 5.0)))
        .collect();
    let file = app.life_plot(&life(&many), PlotKind::Svg, false).unwrap();
    assert!(bytes(&file).len() < 2_000_000, "{}", bytes(&file).len());
}

#[test]
fn what_cannot_be_drawn_is_said() {
    let (mut app, machine) = logged("Thistle", &CLIMBING);
    let fault = app.trend_plot(machine.to_string(), "no-such-measure", PlotKind::Svg, false).unwrap_err();
    assert_eq!(fault.kind, "no-such");
    assert_eq!(app.life_plot(&life(&[]), PlotKind::Svg, false).unwrap_err().kind, "plot-nothing");
    assert_eq!("trend.SVG".parse(), Ok(PlotKind::Svg));
    assert_eq!("a.b.png".parse(), Ok(PlotKind::Png));
    for name in ["trend.pdf", "png", "-", ""] {
        let fault = app.show(&name.parse::<PlotKind>().unwrap_err());
        assert!(fault.kind == "plot-ending" && fault.hint.contains(".svg"), "{fault:?}");
    }
}
