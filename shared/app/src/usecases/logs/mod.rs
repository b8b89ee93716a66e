//! Engine logs taken in: a file's columns shown, read by a mapping that the person confirms, reduced to a
//! few figures, and these signed. The file itself stays with its owner.

mod guess;
mod heading;
mod layout;
mod profile;
mod read;
mod words;

use chrono::NaiveDate;
use uuid::Uuid;
use witnessmark_core::flight::AIR_CELSIUS;
use witnessmark_core::history::History;
use witnessmark_core::record::{Body, Digest, ReadingTaken, ReadingsTaken};
use witnessmark_core::runlog::{Channel, Mapping, TimeForm};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Tx;

use self::guess::{channel_id, form_id, guess};
use self::layout::{lay_out, plain};
use self::profile::profiles;
use self::read::{Read, read, remember, remembered};
use self::words::{note_said, unread_said};
use super::{day, kebab};
use crate::house::{House, id};
use crate::views::{LogColumn, LogPreview, LogTimeForm, LogView, MachinePage, Named};
use crate::{App, Fault, identity};

/// Longest name of a file, letters.
const LONGEST: usize = 200;
/// Hours that a person rounds away.
const ROUNDED_AWAY: f64 = 0.05;

const CHANNELS: [Channel; 4] = [Channel::Cht, Channel::Egt, Channel::Speed, Channel::Outside];
const FORMS: [TimeForm; 5] =
    [TimeForm::Seconds, TimeForm::Milliseconds, TimeForm::Minutes, TimeForm::Clock, TimeForm::Moment];

impl App {
    /// Opens an engine's log: its columns, and how they might be read: as the last file with the same
    /// headings was, else as guessed.
    ///
    /// A file is known by the SHA-256 of its text in UTF-8, without a byte order mark: whichever way it was
    /// opened, it is the same file. Of a file in plain UTF-8 that is the digest of its bytes.
    ///
    /// # Errors
    /// [`Fault`]: no such machine; a file that is empty, too large, no text or no table with headings.
    pub fn log_open(&mut self, machine: String, name: String, text: String) -> Result<LogView, Fault> {
        let machine = id(&machine)?;
        let text = plain(&text)?;
        let laid = lay_out(text)?;
        let profiles = profiles(&laid)?;
        let (file, house) = (Digest::of(text.as_bytes()), &self.house);
        self.store.read(|tx| {
            let history = house.known(tx, machine)?;
            let kept = remembered(tx, &laid)?;
            let known = kept.is_some();
            let guessed = guess(&laid, &profiles, house.units.temperature);
            let columns = laid.headings.iter().zip(&profiles).filter(|(heading, _)| !heading.is_empty());
            Ok(LogView {
                file: file.to_string(),
                name: named(&name)?.unwrap_or_else(|| house.word("log-unnamed")),
                mapping: kept.unwrap_or(guessed.mapping),
                remembered: known,
                guesses: match known {
                    true => Vec::new(),
                    false => guessed.guesses.iter().map(|said| house.say(said)).collect(),
                },
                columns: columns
                    .map(|(heading, profile)| LogColumn {
                        heading: heading.clone(),
                        sample: profile.sample.clone(),
                    })
                    .collect(),
                channels: CHANNELS
                    .map(|channel| Named { id: kebab(channel), words: house.word(channel_id(channel)) })
                    .to_vec(),
                time_forms: FORMS
                    .map(|form| LogTimeForm { id: form, words: house.word(form_id(form)) })
                    .to_vec(),
                temperatures: house.units_from(house.units.temperature),
                speeds: house.units_from(Unit::PerMinute),
                taken: tx.log_taken(machine, &file)?.map(|record| record.to_string()),
                hours: history.hours,
            })
        })
    }

    /// What a log would tell, read by this mapping.
    ///
    /// # Errors
    /// [`Fault`]: as for opening it; a mapping that doesn't fit.
    pub fn log_preview(
        &mut self,
        machine: String,
        text: String,
        mapping: Option<Mapping>,
    ) -> Result<LogPreview, Fault> {
        let machine = id(&machine)?;
        let mapping = mapping.ok_or_else(|| Fault::new("log-mapping-missing"))?;
        let read = read(plain(&text)?, &mapping, *self.house.now().offset())?;
        self.store.read(|tx| self.house.known(tx, machine).map(drop))?;
        Ok(self.house.log_preview(&read))
    }

    /// Signs what a log told, and remembers how its columns were read. Without `hours` these are the
    /// machine's now; without `on` it is the file's day, or today; without `outside` it is what the file
    /// says.
    ///
    /// # Errors
    /// [`Fault`]: as for previewing it; nothing told; taken before; hours, day or air out of range; a wrong
    /// PIN.
    #[allow(clippy::too_many_arguments)]
    pub fn log_take(
        &mut self,
        machine: String,
        name: String,
        text: String,
        mapping: Option<Mapping>,
        hours: Option<f64>,
        on: Option<String>,
        outside: Option<Quantity>,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let mapping = mapping.ok_or_else(|| Fault::new("log-mapping-missing"))?;
        let text = plain(&text)?;
        let read = read(text, &mapping, *self.house.now().offset())?;
        let house = &self.house;
        let taking = Taking {
            file: Digest::of(text.as_bytes()),
            name: named(&name)?.unwrap_or_else(|| house.word("log-unnamed")),
            on: house.log_day(on, &read)?,
            outside: air(outside.or(read.told.outside))?,
            mapping,
            read,
        };
        // Whatever can be known to be wrong is said before the PIN is tried.
        self.store.read(|tx| house.taken(tx, machine, &taking, hours))?;
        let seed = identity::unlock(&mut self.store, house, &pin)?;
        self.store.write(|tx| {
            let body = house.taken(tx, machine, &taking, hours)?;
            house.write_record(tx, &seed, Some(machine), &body)?;
            remember(tx, text, &taking.mapping)?;
            house.page(tx, machine)
        })
    }
}

/// All that is known of a log before the machine is asked.
struct Taking {
    file: Digest,
    name: String,
    on: NaiveDate,
    outside: Option<Quantity>,
    mapping: Mapping,
    read: Read,
}

impl House {
    /// The record's body, if the machine has this log not yet and hours that fit.
    fn taken(&self, tx: &Tx<'_>, machine: Uuid, taking: &Taking, hours: Option<f64>) -> Result<Body, Fault> {
        let history = self.known(tx, machine)?;
        if let Some(record) = tx.log_taken(machine, &taking.file)? {
            let at = tx.record(&record)?.map(|record| self.when(record.payload.at)).unwrap_or_default();
            return Err(Fault::new("log-taken").text("when", at));
        }
        let (log, told) = (&taking.read.log, &taking.read.told);
        if told.figures.is_empty() {
            // What is wrong with rows explains what is odd about all of them.
            let why =
                log.first_unread.as_ref().map(unread_said).or_else(|| told.notes.first().map(note_said));
            let why = why.map_or_else(|| self.word("log-nothing-measured"), |said| self.say(&said));
            return Err(Fault::new("log-nothing-told").text("why", why));
        }
        let reading = |figure: &witnessmark_core::runlog::Figure| ReadingTaken {
            measure: figure.measure.to_owned(),
            value: figure.value,
            left_out: figure.left_out,
        };
        Ok(Body::ReadingsTaken(ReadingsTaken {
            file: taking.file,
            name: taking.name.clone(),
            rows: log.rows,
            unread: log.unread,
            mapping: taking.mapping.clone(),
            hours: hours_then(hours, &history)?,
            on: taking.on,
            outside: taking.outside,
            readings: told.figures.iter().map(reading).collect(),
        }))
    }

    /// The day of a log: as said, as the file says, or today.
    fn log_day(&self, said: Option<String>, read: &Read) -> Result<NaiveDate, Fault> {
        let today = self.now().date_naive();
        let on = match said.filter(|on| !on.trim().is_empty()) {
            Some(on) => day(&on)?,
            None => read.on.unwrap_or(today),
        };
        if on > today {
            let words = self.catalogue.texts.day(&self.language, on);
            return Err(Fault::new("log-day-ahead").text("day", words));
        }
        Ok(on)
    }
}

/// Engine hours of a log: no more than the machine has run.
fn hours_then(hours: Option<f64>, history: &History) -> Result<f64, Fault> {
    let hours = hours.unwrap_or(history.hours);
    if !(0.0..=history.hours + ROUNDED_AWAY).contains(&hours) {
        return Err(Fault::new("log-hours").figures("hours", format!("{:.1}", history.hours)));
    }
    Ok(hours.min(history.hours))
}

/// A temperature that air may have.
fn air(outside: Option<Quantity>) -> Result<Option<Quantity>, Fault> {
    let Some(outside) = outside else { return Ok(None) };
    let celsius = outside.to(Unit::Celsius).map_err(|fault| Fault::new("unit").text("why", fault))?;
    if !AIR_CELSIUS.contains(&celsius.value) {
        return Err(Fault::new("log-outside"));
    }
    Ok(Some(outside))
}

/// The name of a file, without the folders before it; none where it has none.
fn named(name: &str) -> Result<Option<String>, Fault> {
    let name = name.trim().rsplit(['/', '\\']).next().unwrap_or_default().trim();
    if name.chars().count() > LONGEST {
        return Err(Fault::new("log-name").number("most", LONGEST as f64));
    }
    Ok((!name.is_empty()).then(|| name.to_owned()))
}
