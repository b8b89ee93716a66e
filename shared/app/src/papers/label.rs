//! The label that is stuck on a machine: its name, and a code that opens it in the app.

use krilla::tagging::Tag;
use uuid::Uuid;
use witnessmark_store::Tx;

use super::flow::{Flow, Format, height};
use super::lettering::{Lettering, Style};
use super::marks;
use super::pdf::{self, About};
use crate::house::{House, id};
use crate::usecases::LABEL;
use crate::views::FileBytes;
use crate::{App, Fault};

const MM: f32 = 72.0 / 25.4;
const FORMAT: Format = Format { width: 60.0 * MM, height: 40.0 * MM, margin: 3.0 * MM, foot: 3.0 * MM };
/// The code with its quiet zone.
const CODE: f32 = 34.0 * MM;
/// Sizes tried for the name, largest first.
const NAMES: [f32; 5] = [14.0, 12.0, 10.5, 9.0, 7.5];
const HINT: Style = Style::plain(7.0);

impl App {
    /// The label of a machine as PDF, 60 by 40 mm.
    ///
    /// # Errors
    /// [`Fault`]: no such machine.
    pub fn label(&mut self, machine: String) -> Result<FileBytes, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.machine_label(tx, machine))
    }
}

impl House {
    fn machine_label(&self, tx: &Tx<'_>, machine: Uuid) -> Result<FileBytes, Fault> {
        let history = self.known(tx, machine)?;
        let name = history.machine.map_or_else(|| self.word("machine-unnamed"), |(machine, _)| machine.name);
        let letters = Lettering::read()?;
        let mut flow = Flow::new(&letters, FORMAT);
        flow.mark_outline(&name);
        let text = format!("{LABEL}{}", machine.to_string().to_uppercase());
        let edge = (FORMAT.height - CODE) / 2.0;
        if let Some(code) = marks::code(&text, edge - 2.0, edge, CODE)? {
            flow.open(Tag::Figure(Some(self.word("paper-label-code"))));
            flow.shapes(vec![code], self.word("paper-label-code"));
            flow.close();
        }
        let x = edge + CODE - 2.0;
        let width = FORMAT.width - x - FORMAT.margin;
        let hints = letters.wrap(&self.word("paper-label-hint"), HINT, width);
        let room = FORMAT.height - 2.0 * FORMAT.margin - height(&hints) - 6.0;
        let fits = NAMES.iter().map(|size| letters.wrap(&name, Style::bold(*size), width));
        // The largest that fits in height and cuts no word; else the smallest.
        let widest =
            |size: f32| name.split_whitespace().all(|w| letters.line(w, Style::bold(size)).width <= width);
        let names = fits
            .clone()
            .find(|lines| height(lines) <= room && lines.first().is_some_and(|line| widest(line.style.size)));
        let names = names.or_else(|| fits.last()).unwrap_or_default();
        flow.open(Tag::P);
        flow.lines_at(names, x, FORMAT.margin);
        flow.close();
        flow.open(Tag::P);
        let top = FORMAT.height - FORMAT.margin - height(&hints);
        flow.lines_at(hints, x, top);
        flow.close();
        let about = About { title: name.clone(), language: self.language.clone(), at: self.now() };
        let bytes = pdf::write(&flow, &about, |_, _| None)?;
        Ok(super::file(&name, "-label.pdf", "application/pdf", &bytes))
    }
}
