//! Plots as files: ink on paper, for a report, a letter to a maker, a wall. One drawing as SVG; a PNG is
//! the same drawing in pixels, by fonts of our own: no font of the system, and no file, is asked for.

mod frame;
mod keys;
mod life;
mod palette;
mod pen;
mod pixels;
mod trend;

use std::str::FromStr;

use base64ct::{Base64, Encoding};

use crate::house::id;
use crate::usecases::plain_name;
use crate::views::{FileBytes, LifeView};
use crate::{App, Fault};

/// What kind of file a plot becomes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlotKind {
    /// Lines and words that scale.
    Svg,
    /// Pixels.
    Png,
}

impl FromStr for PlotKind {
    type Err = Fault;

    /// By the ending of a file's name.
    fn from_str(name: &str) -> Result<Self, Fault> {
        match name.rsplit_once('.').map(|(_, ending)| ending.to_ascii_lowercase()).as_deref() {
            Some("svg") => Ok(Self::Svg),
            Some("png") => Ok(Self::Png),
            _ => Err(Fault::new("plot-ending").text("file", name)),
        }
    }
}

impl App {
    /// A measure of a machine over its time in service, as a file.
    ///
    /// # Errors
    /// [`Fault`]: no such machine or measure, nothing to draw.
    pub fn trend_plot(
        &mut self,
        machine: String,
        measure: &str,
        kind: PlotKind,
        dark: bool,
    ) -> Result<FileBytes, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| {
            let views = self.house.trends(tx, machine)?;
            let view = views.iter().find(|view| view.id == measure);
            let view = view.ok_or_else(|| Fault::new("no-such").text("what", measure))?;
            let described = self.house.known(tx, machine)?.machine;
            let (described, _) = described.ok_or_else(|| Fault::new("no-such").text("what", machine))?;
            self.house.plot_trend(&described, view, kind, dark)
        })
    }

    /// How long components of a type last, as a file.
    ///
    /// # Errors
    /// [`Fault`]: nothing to draw.
    pub fn life_plot(&self, view: &LifeView, kind: PlotKind, dark: bool) -> Result<FileBytes, Fault> {
        self.house.plot_life(view, kind, dark)
    }
}

/// The drawing as a file of its kind, named after what it shows.
fn file(name: &str, svg: String, kind: PlotKind) -> Result<FileBytes, Fault> {
    let name = plain_name(name);
    let (name, media, bytes) = match kind {
        PlotKind::Svg => (format!("{name}.svg"), "image/svg+xml", svg.into_bytes()),
        PlotKind::Png => (format!("{name}.png"), "image/png", pixels::png(&svg)?),
    };
    Ok(FileBytes { name, media: media.to_owned(), data: Base64::encode_string(&bytes) })
}
