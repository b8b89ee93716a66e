//! The colours of ink and paper, as the screens have them (`ui/src/style/tokens.css`).

use plotters::style::RGBColor;

/// What a plot is drawn with.
pub(super) struct Palette {
    pub paper: RGBColor,
    /// Behind readings: where they may be.
    pub wash: RGBColor,
    pub ink: RGBColor,
    pub soft: RGBColor,
    pub line: RGBColor,
    /// The paint mark's colour: what holds back.
    pub paint: RGBColor,
    pub paint_ink: RGBColor,
    pub sea: RGBColor,
}

const LIGHT: Palette = Palette {
    paper: RGBColor(0xfb, 0xfa, 0xf4),
    wash: RGBColor(0xe9, 0xec, 0xe2),
    ink: RGBColor(0x0f, 0x1d, 0x26),
    soft: RGBColor(0x3f, 0x4e, 0x57),
    line: RGBColor(0xcf, 0xd3, 0xcc),
    paint: RGBColor(0xe8, 0x59, 0x0c),
    paint_ink: RGBColor(0x8a, 0x32, 0x05),
    sea: RGBColor(0x0b, 0x55, 0x63),
};

const DARK: Palette = Palette {
    paper: RGBColor(0x0e, 0x17, 0x1d),
    wash: RGBColor(0x1d, 0x2b, 0x34),
    ink: RGBColor(0xf4, 0xf2, 0xe8),
    soft: RGBColor(0xbc, 0xc7, 0xcc),
    line: RGBColor(0x33, 0x43, 0x4d),
    paint: RGBColor(0xff, 0x7a, 0x2f),
    paint_ink: RGBColor(0xff, 0xb0, 0x80),
    sea: RGBColor(0x86, 0xd6, 0xe0),
};

impl Palette {
    pub(super) fn of(dark: bool) -> &'static Self {
        if dark { &DARK } else { &LIGHT }
    }
}
