//! How a log's text is laid out: what stands before its headings, where these are, how fields and
//! decimals are marked.

use csv::{ReaderBuilder, StringRecord};
use witnessmark_core::runlog::{day_in, number, unit_named};

use super::profile::is_clock;
use crate::Fault;

/// The largest file that is read, bytes: a day's log, ten samples a second, is about that.
const LARGEST: usize = 16 * 1024 * 1024;
/// The most rows that are read.
const MOST_ROWS: usize = 2_000_000;
/// Rows from whose beginning the layout is found.
const LOOKED_AT: usize = 2000;
/// Letters by which it is told whether a file is text.
const FIRST: usize = 4096;

/// What may stand between fields. Of two that lay a file out as well, the first.
const SEPARATORS: [char; 3] = [';', '\t', ','];

/// A log's text and how it is laid out.
pub(super) struct Laid<'a> {
    pub text: &'a str,
    pub separator: char,
    /// Before decimals; none where the file has no decimals.
    pub decimal: Option<char>,
    /// The headings, those of empty columns too.
    pub headings: Vec<String>,
    /// What stands under the headings before the first row: units, where the file has such a row.
    pub units: Vec<String>,
    /// The day that is written before the headings.
    pub day: Option<chrono::NaiveDate>,
    /// Records before the first row.
    before: usize,
    /// The heading row as it stands, which loggers write again when they begin anew.
    heading_row: StringRecord,
}

/// The text without a byte order mark.
///
/// # Errors
/// Nothing in it, too much, or no text.
pub(super) fn plain(text: &str) -> Result<&str, Fault> {
    let text = text.trim_start_matches('\u{feff}');
    if text.len() > LARGEST {
        return Err(Fault::new("log-too-large").number("most", (LARGEST / 1024 / 1024) as f64));
    }
    if text.trim().is_empty() {
        return Err(Fault::new("log-empty"));
    }
    let odd = |c: &char| *c == '\u{fffd}' || (c.is_control() && !"\t\r\n\u{c}\u{1a}".contains(*c));
    let first = text.chars().take(FIRST);
    if text.contains('\0') || first.clone().filter(odd).count() * 50 > first.count() {
        return Err(Fault::new("log-no-text"));
    }
    Ok(text)
}

/// Lays a text out by the separator under which most rows of its beginning read as rows.
///
/// # Errors
/// No rows, no headings, one column only, one heading twice.
pub(super) fn lay_out(text: &str) -> Result<Laid<'_>, Fault> {
    let tried = SEPARATORS.map(|separator| (separator, Table::find(text, separator)));
    let best = tried.into_iter().reduce(|best, other| if other.1.rows > best.1.rows { other } else { best });
    let (separator, table) = best.ok_or_else(|| Fault::new("log-no-rows"))?;
    table.laid(text, separator)
}

/// Lays a text out by this separator.
///
/// # Errors
/// See [`lay_out`].
pub(super) fn lay_out_by(text: &str, separator: char) -> Result<Laid<'_>, Fault> {
    Table::find(text, separator).laid(text, separator)
}

/// Records of a text. Blank lines are none.
fn records(text: &str, separator: char) -> csv::Reader<&[u8]> {
    ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(u8::try_from(separator).unwrap_or(b','))
        .from_reader(text.as_bytes())
}

/// A table as found under one separator.
struct Table {
    /// Rows of the beginning that read as rows.
    rows: usize,
    /// The first of them.
    first: usize,
    /// The beginning.
    beginning: Vec<StringRecord>,
}

impl Table {
    fn find(text: &str, separator: char) -> Self {
        let beginning: Vec<StringRecord> =
            records(text, separator).into_records().filter_map(Result::ok).take(LOOKED_AT).collect();
        let is_row: Vec<bool> = beginning.iter().map(reads_as_row).collect();
        let length = |at: usize| beginning.get(at).map(|record| filled(record).count());
        // A lone line before the headings may read as a row; rows come one after the other.
        let begins = |at: &usize| {
            let next = is_row.get(at + 1).copied().unwrap_or(true);
            is_row.get(*at).copied().unwrap_or_default() && next && length(*at) >= Some(2)
        };
        let first = (0..beginning.len()).find(begins);
        let rows = first.map_or(0, |first| is_row.iter().skip(first).filter(|row| **row).count());
        Self { rows, first: first.unwrap_or_default(), beginning }
    }

    fn laid(self, text: &str, separator: char) -> Result<Laid<'_>, Fault> {
        if self.rows == 0 {
            let single = SEPARATORS.iter().all(|one| !text.contains(*one));
            return Err(Fault::new(if single { "log-one-column" } else { "log-no-rows" }));
        }
        let record_before = |back: usize| self.beginning.get(self.first.checked_sub(back)?);
        let named = |record: &&StringRecord| filled(record).count() >= 2;
        let units =
            record_before(1).filter(|row| reads_as_units(row) && record_before(2).is_some_and(|h| named(&h)));
        let headings = record_before(if units.is_some() { 2 } else { 1 }).filter(named);
        let heading_row = headings.ok_or_else(|| Fault::new("log-no-headings"))?.clone();
        let headings = names(&heading_row);
        let mut once: Vec<&String> = headings.iter().filter(|heading| !heading.is_empty()).collect();
        once.sort();
        if let Some(twice) =
            once.windows(2).find_map(|pair| pair.first().filter(|one| pair.last() == Some(one)))
        {
            return Err(Fault::new("log-heading-twice").text("heading", twice));
        }
        let preamble = self.beginning.iter().take(self.first).flatten().flat_map(str::split_whitespace);
        Ok(Laid {
            separator,
            decimal: decimal(self.beginning.iter().skip(self.first)),
            units: units
                .map(|row| row.iter().map(|cell| cell.trim().to_owned()).collect())
                .unwrap_or_default(),
            day: preamble.filter_map(day_in).next(),
            before: self.first,
            headings,
            heading_row,
            text,
        })
    }
}

impl Laid<'_> {
    /// Hands each row to `take`, with its line: not comments, nor the headings written once more.
    ///
    /// # Errors
    /// More rows than are read.
    pub fn rows(&self, mut take: impl FnMut(u64, &[&str])) -> Result<(), Fault> {
        let (mut reader, mut record) = (records(self.text, self.separator), StringRecord::new());
        let mut lines = Lines { text: self.text.as_bytes(), at: 0, line: 1 };
        let mut number = 0;
        // Text is UTF-8, and rows may be of any length: nothing is left that could fail.
        while reader.read_record(&mut record).map_err(Fault::internal)? {
            number += 1;
            let line = lines.of(record.position().map_or(0, csv::Position::byte));
            if number <= self.before || is_comment(&record) || record == self.heading_row {
                continue;
            }
            if number - self.before > MOST_ROWS {
                return Err(Fault::new("log-too-many-rows").number("millions", MOST_ROWS as f64 / 1e6));
            }
            take(line, &record.iter().collect::<Vec<_>>());
        }
        Ok(())
    }
}

/// Counts lines up to where a record begins.
struct Lines<'a> {
    text: &'a [u8],
    at: usize,
    line: u64,
}

impl Lines<'_> {
    /// The line on which the record begins of which the reader says that it begins at this byte: blank
    /// lines before it are counted to the record there.
    fn of(&mut self, byte: u64) -> u64 {
        let to = usize::try_from(byte).unwrap_or(usize::MAX);
        while self.text.get(self.at).is_some_and(|c| self.at < to || matches!(c, b'\r' | b'\n')) {
            let ends = match self.text.get(self.at) {
                Some(b'\n') => true,
                Some(b'\r') => self.text.get(self.at + 1) != Some(&b'\n'),
                _ => false,
            };
            self.line += u64::from(ends);
            self.at += 1;
        }
        self.line
    }
}

fn filled(record: &StringRecord) -> impl Iterator<Item = &str> {
    record.iter().map(str::trim).filter(|cell| !cell.is_empty())
}

fn is_comment(record: &StringRecord) -> bool {
    record.get(0).is_some_and(|first| first.trim_start().starts_with(['#', '%']))
}

/// At least two numbers or times, and no fewer of these than of anything else.
fn reads_as_row(record: &StringRecord) -> bool {
    let measured = |cell: &&str| {
        number(cell, '.').or_else(|| number(cell, ',')).is_some() || is_clock(cell) || day_in(cell).is_some()
    };
    let (all, measured) = (filled(record).count(), filled(record).filter(measured).count());
    !is_comment(record) && measured >= 2 && measured * 2 >= all
}

/// Nothing but units, at least one of which is known.
fn reads_as_units(record: &StringRecord) -> bool {
    let known = |cell: &str| unit_named(cell).is_some() || super::heading::time_unit(cell).is_some();
    let unit = |cell: &str| known(cell) || cell.starts_with(['[', '(']) || cell.chars().count() <= 5;
    filled(record).any(known) && filled(record).all(unit)
}

/// The headings of a row: without the mark of a comment, and without empty ones at the end.
fn names(row: &StringRecord) -> Vec<String> {
    let mut names: Vec<String> = row.iter().map(|cell| cell.trim().to_owned()).collect();
    if let Some(first) = names.first_mut() {
        *first = first.trim_start_matches(['#', '%', '/', ' ']).to_owned();
    }
    while names.last().is_some_and(String::is_empty) {
        names.pop();
    }
    names
}

/// The mark before decimals that more cells have.
fn decimal<'a>(rows: impl Iterator<Item = &'a StringRecord>) -> Option<char> {
    let mut marks = [('.', 0), (',', 0)];
    for cell in rows.flatten() {
        for (mark, cells) in &mut marks {
            *cells += u32::from(cell.contains(*mark) && number(cell, *mark).is_some());
        }
    }
    let [(_, points), (_, commas)] = marks;
    match (points, commas) {
        (0, 0) => None,
        _ => Some(if commas > points { ',' } else { '.' }),
    }
}
