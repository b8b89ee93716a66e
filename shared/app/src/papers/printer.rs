//! Puts a record sheet's words on pages.

use krilla::tagging::{ListNumbering, Tag, TagKind};
use witnessmark_core::list::Meaning;
use witnessmark_core::record::Record;
use witnessmark_core::said::Said;

use super::entry::{Block, Entry, Item, Section, meaning_words};
use super::flow::{Flow, Format, height};
use super::lettering::{Lettering, Line, Style};
use super::marks::{self, Ink};
use super::pdf::{self, About};
use crate::Fault;
use crate::house::House;
use crate::usecases::RECORD;

/// Millimetre, points.
const MM: f32 = 72.0 / 25.4;
const NAME: Style = Style::bold(23.0);
const LONG_NAME: Style = Style::bold(16.0);
const TITLE: Style = Style::plain(14.0);
const OUTCOME: Style = Style::bold(11.5);
const HEADING: Style = Style::bold(12.0);
const STATION: Style = Style::bold(8.5);
const TEXT: Style = Style::plain(9.0);
const STRONG: Style = Style::bold(9.0);
const SMALL: Style = Style::soft(7.5);
const CODE: f32 = 31.0 * MM;

/// Puts an entry on pages.
pub(super) struct Printer<'a> {
    house: &'a House,
    record: &'a Record,
    entry: &'a Entry,
    flow: Flow<'a>,
}

impl<'a> Printer<'a> {
    pub(super) fn new(
        house: &'a House,
        record: &'a Record,
        entry: &'a Entry,
        format: Format,
        letters: &'a Lettering,
    ) -> Self {
        Self { house, record, entry, flow: Flow::new(letters, format) }
    }

    fn word(&self, id: &str) -> String {
        self.house.word(id)
    }

    pub(super) fn print(mut self) -> Result<Vec<u8>, Fault> {
        let entry = self.entry;
        self.head()?;
        self.facts(&entry.facts);
        entry.sections.iter().for_each(|section| self.section(section));
        self.statement();
        if self.flow.letters.lacking() {
            let words = self.word("paper-lacking");
            self.paragraph(&words, SMALL);
        }
        let said = Said::new("paper-foot")
            .text("machine", &entry.machine)
            .text("title", &entry.title)
            .text("digest", self.record.digest.short())
            .text("at", self.house.when(self.house.now()));
        let left = self.flow.letters.wrap(&self.house.say(&said), SMALL, self.flow.width() - 40.0);
        let about = About {
            title: format!("{}: {}", entry.machine, entry.title),
            language: self.house.language.clone(),
            at: self.house.now(),
        };
        let letters = self.flow.letters;
        pdf::write(&self.flow, &about, |page, of| {
            let number: Line = letters.line(&format!("{page} / {of}"), Style { bold: true, ..SMALL });
            Some((left.first()?.clone(), number))
        })
    }

    /// Name, title, outcome; the record's code beside them.
    fn head(&mut self) -> Result<(), Fault> {
        let (margin, top) = (self.flow.format.margin, self.flow.y);
        let width = self.flow.width() - CODE - 6.0 * MM;
        self.flow.mark_outline(&self.entry.title.clone());
        self.flow.open(Tag::P);
        self.flow.text(&self.entry.kind, SMALL, margin, width);
        self.flow.close();
        self.flow.open(heading(1, &self.entry.machine));
        let long = self.flow.letters.wrap(&self.entry.machine, NAME, width).len() > 2;
        let style = if long { LONG_NAME } else { NAME };
        self.flow.text(&self.entry.machine, style, margin, width);
        self.flow.close();
        self.flow.open(Tag::P);
        self.flow.text(&self.entry.title, TITLE, margin, width);
        self.flow.close();
        self.flow.space(9.0);
        let (means, words) = &self.entry.outcome;
        let indent = 28.0;
        let lines = self.flow.letters.wrap(words, OUTCOME, width - indent);
        let (at, high) = (self.flow.y, height(&lines));
        self.flow.open(Tag::P);
        let ring = marks::ring(*means, margin + 9.0, at + (high / 2.0).max(8.0), 18.0);
        self.flow.shapes(ring, meaning_words(self.house, *means));
        self.flow.lines_at(lines, margin + indent, at + (16.0 - high).max(0.0) / 2.0);
        self.flow.close();
        let text_end = at + high.max(18.0);
        // The code, with the record's short form under it.
        let digest = self.record.digest.to_string();
        let x = self.flow.format.width - margin - CODE;
        let text = format!("{RECORD}{}", digest.to_uppercase());
        if let Some(code) = marks::code(&text, x, top - 3.0, CODE)? {
            self.flow.open(Tag::Figure(Some(self.word("paper-code"))));
            self.flow.shapes(vec![code], self.word("paper-code"));
            self.flow.close();
        }
        self.flow.open(Tag::P);
        let caption =
            self.house.say(&Said::new("paper-code-under").text("digest", self.record.digest.short()));
        let lines = self.flow.letters.wrap(&caption, SMALL, CODE - 8.0);
        let under = self.flow.lines_at(lines, x + 9.0, top - 3.0 + CODE - 4.0);
        self.flow.close();
        self.flow.y = text_end.max(top - 3.0 + CODE - 4.0 + under) + 10.0;
        Ok(())
    }

    /// Label and value, label left.
    fn facts(&mut self, facts: &[(String, String)]) {
        let (margin, label) = (self.flow.format.margin, 36.0 * MM);
        for (name, value) in facts {
            let names = self.flow.letters.wrap(name, Style { size: 8.0, ..SMALL }, label - 8.0);
            let values = self.flow.letters.wrap(value, TEXT, self.flow.width() - label);
            let high = height(&names).max(height(&values));
            self.flow.room(high + 3.0);
            let y = self.flow.y;
            self.flow.adorn(marks::rule(margin, y - 1.5, self.flow.width(), 0.4, Ink::Hair));
            self.flow.open(Tag::P);
            self.flow.lines_at(names, margin, y + 1.0);
            self.flow.lines_at(values, margin + label, y);
            self.flow.close();
            self.flow.space(high + 4.0);
        }
    }

    fn heading(&mut self, words: &str) {
        self.flow.space(11.0);
        self.flow.room(64.0);
        self.flow.mark_outline(words);
        self.flow.open(heading(2, words));
        let (margin, width) = (self.flow.format.margin, self.flow.width());
        self.flow.text(words, HEADING, margin, width);
        self.flow.close();
        let rule = marks::rule(margin, self.flow.y + 1.0, width, 1.2, Ink::Black);
        self.flow.adorn(rule);
        self.flow.space(6.0);
    }

    fn paragraph(&mut self, words: &str, style: Style) {
        self.flow.open(Tag::P);
        let (margin, width) = (self.flow.format.margin, self.flow.width());
        self.flow.text(words, style, margin, width);
        self.flow.close();
        self.flow.space(3.0);
    }

    fn section(&mut self, section: &Section) {
        self.heading(&section.title);
        let mut listed = false;
        for block in &section.blocks {
            let item = matches!(block, Block::Item(_));
            if item && !listed {
                self.flow.open(Tag::L(ListNumbering::None));
            } else if listed && !item {
                self.flow.close();
            }
            listed = item;
            match block {
                Block::Text(words) => self.paragraph(words, TEXT),
                Block::Station(words) => self.station(words),
                Block::Item(item) => self.item(item),
            }
        }
        if listed {
            self.flow.close();
        }
    }

    fn station(&mut self, words: &str) {
        self.flow.space(4.0);
        self.flow.room(40.0);
        self.flow.open(heading(3, words));
        let (margin, width) = (self.flow.format.margin, self.flow.width());
        self.flow.text(words, STATION, margin, width);
        self.flow.close();
        self.flow.space(2.0);
    }

    /// Ring, title, what was seen; small below, what goes with it. What keeps a machine on the
    /// ground or must be watched is heavy and has the paint mark beside it.
    fn item(&mut self, item: &Item) {
        let margin = self.flow.format.margin;
        let (ring, gap) = (15.0, 10.0);
        let left = (self.flow.width() - ring) * 0.46;
        let right = self.flow.width() - ring - left - gap;
        let holds = item.means.is_none_or(|means| means >= Meaning::Watch);
        let words = if holds && item.means.is_some() {
            format!("{} ({})", item.words, meaning_words(self.house, item.means))
        } else {
            item.words.clone()
        };
        let titles = self.flow.letters.wrap(&item.title, if holds { STRONG } else { TEXT }, left);
        let answers = self.flow.letters.wrap(&words, if holds { STRONG } else { TEXT }, right);
        let notes: Vec<Vec<Line>> = item
            .notes
            .iter()
            .map(|note| self.flow.letters.wrap(note, SMALL, self.flow.width() - ring))
            .collect();
        let beside = height(&titles).max(height(&answers));
        let below: f32 = notes.iter().map(|lines| height(lines)).sum();
        self.flow.room(beside + below + 4.0);
        let y = self.flow.y;
        if holds {
            self.flow.adorn(marks::rule(margin - 7.0, y, 2.6, beside + below, Ink::Paint));
        }
        self.flow.open(Tag::LI);
        self.flow.open(Tag::Lbl);
        let shapes = marks::ring(item.means, margin + 5.0, y + TEXT.leading() / 2.0, 8.6);
        self.flow.shapes(shapes, meaning_words(self.house, item.means));
        self.flow.close();
        self.flow.open(Tag::LBody);
        self.flow.open(Tag::P);
        self.flow.lines_at(titles, margin + ring, y);
        self.flow.lines_at(answers, margin + ring + left + gap, y);
        self.flow.close();
        let mut at = y + beside;
        for lines in notes {
            self.flow.open(Tag::P);
            at += self.flow.lines_at(lines, margin + ring, at);
            self.flow.close();
        }
        self.flow.close();
        self.flow.close();
        self.flow.space(beside + below + 3.5);
    }

    /// The statement, the signatures, and lines for a hand to fill.
    fn statement(&mut self) {
        let words = self.word("paper-statement");
        self.heading(&words);
        for id in ["paper-statement-words", "paper-not-a-certificate", "paper-compare"] {
            let words = self.word(id);
            self.paragraph(&words, TEXT);
        }
        let entry = self.entry;
        for signed in &entry.signed {
            let rows = signed.facts.len() as f32;
            self.flow.room(rows * 16.0 + 26.0);
            self.station(&signed.title);
            self.facts(&signed.facts);
        }
        self.flow.space(8.0);
        self.flow.room(110.0);
        let words = self.word("paper-by-hand");
        self.station(&words);
        for id in ["paper-certificate", "paper-hand-name", "paper-hand-signature"] {
            self.flow.space(13.0);
            let (margin, label) = (self.flow.format.margin, 62.0 * MM);
            let lines = self.flow.letters.wrap(&self.word(id), Style { size: 8.0, ..SMALL }, label - 8.0);
            let (y, high) = (self.flow.y, height(&lines));
            self.flow.open(Tag::P);
            self.flow.lines_at(lines, margin, y);
            self.flow.close();
            let width = self.flow.width() - label;
            self.flow.adorn(marks::rule(margin + label, y + high - 2.0, width, 0.6, Ink::Black));
            self.flow.space(high);
        }
        self.flow.space(6.0);
    }
}

fn heading(level: u16, words: &str) -> TagKind {
    let level = std::num::NonZeroU16::new(level).unwrap_or(std::num::NonZeroU16::MIN);
    Tag::Hn(level, Some(words.to_owned())).into()
}
