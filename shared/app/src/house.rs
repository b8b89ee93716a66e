//! The app itself: the database, and the house that serves it.

use std::collections::BTreeMap;

use chrono::{DateTime, FixedOffset};
use uuid::{Builder, Uuid};
use witnessmark_core::record::Digest;
use witnessmark_core::said::Said;
use witnessmark_store::{Rescued, Store, Tx};

use crate::catalogue::Catalogue;
use crate::texts::FALLBACK;
use crate::views::{Start, UnitChoice};
use crate::{Fault, FaultView, Platform, identity};

/// Minutes without an answer after which a list steps back, unless the person chose otherwise.
const PATIENCE_MINUTES: u32 = 5;

/// Everything a person can do with one device's data.
pub struct App {
    pub(crate) store: Store,
    pub(crate) house: House,
}

/// What serves every use case beside the database.
pub struct House {
    pub(crate) platform: Box<dyn Platform>,
    pub(crate) catalogue: Catalogue,
    pub(crate) language: String,
    /// The units that the person reads and types in.
    pub(crate) units: UnitChoice,
    /// What a school has published to this device, as read into the catalogue.
    pub(crate) published: BTreeMap<String, String>,
    /// Why that can't be used, where it can't.
    pub(crate) unusable: Option<String>,
    warning: Option<Said>,
}

impl App {
    /// The app over an opened database.
    ///
    /// # Errors
    /// A fault of the catalogue or the database.
    pub fn new(store: Store, platform: Box<dyn Platform>) -> Result<Self, Fault> {
        let (catalogue, published) = (Catalogue::embedded()?, BTreeMap::new());
        let language = FALLBACK.to_owned();
        let units = UnitChoice::default();
        let house = House { platform, catalogue, language, units, published, unusable: None, warning: None };
        Self { store, house }.opened()
    }

    /// The app over another database, on another platform: the catalogue isn't read again for it.
    ///
    /// # Errors
    /// As [`App::new`].
    pub fn over(self, store: Store, platform: Box<dyn Platform>) -> Result<Self, Fault> {
        let house = House { platform, warning: None, ..self.house };
        Self { store, house }.opened()
    }

    /// With what the database says of language and lists.
    fn opened(mut self) -> Result<Self, Fault> {
        let catalogue = &self.house.catalogue;
        self.house.language = self
            .store
            .read(|tx| Ok::<_, Fault>(tx.setting("language")?))?
            .filter(|language| catalogue.texts.languages().any(|known| known == language))
            .unwrap_or_else(|| FALLBACK.to_owned());
        self.house.units = self.store.read(UnitChoice::kept)?;
        self.reload_catalogue()?;
        Ok(self)
    }

    /// Says at every start that a damaged database was set aside, and what was saved from it.
    pub fn warn_of_rescue(&mut self, rescued: &Rescued, set_aside: &str) {
        let id = if rescued.key { "warning-rescued" } else { "warning-rescued-without-key" };
        self.house.warning = Some(
            Said::new(id)
                .number("records", rescued.records)
                .number("lost", rescued.lost)
                .text("file", set_aside),
        );
    }

    /// A fault in the person's language.
    pub fn show(&self, fault: &Fault) -> FaultView {
        self.house.show(fault)
    }

    /// Words of the catalogue in the person's language.
    pub fn say(&self, said: &Said) -> String {
        self.house.say(said)
    }

    /// Throws away everything derived from the log and derives it anew.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn rebuild(&mut self) -> Result<(), Fault> {
        self.store.write(|tx| Ok(tx.rebuild()?))
    }

    /// What the app is when it opens.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn start(&mut self) -> Result<Start, Fault> {
        self.store.read(|tx| self.house.start(tx))
    }

    /// First start: makes this device's key and seals it with the PIN.
    ///
    /// # Errors
    /// [`Fault`]: a missing name, a weak PIN, a device that has its key already.
    pub fn begin(&mut self, name: String, pin: String) -> Result<Start, Fault> {
        identity::begin(&mut self.store, &self.house, &name, &pin)?;
        self.start()
    }

    /// Changes the PIN.
    ///
    /// # Errors
    /// [`Fault`]: a wrong old PIN, a weak new one.
    pub fn change_pin(&mut self, old: String, new: String) -> Result<Start, Fault> {
        identity::change_pin(&mut self.store, &self.house, &old, &new)?;
        self.start()
    }

    /// Changes what this device keeps to itself.
    ///
    /// # Errors
    /// [`Fault`]: a language that isn't there, a patience out of range, a unit of another kind.
    pub fn settings(
        &mut self,
        language: String,
        patience_minutes: u32,
        read_aloud: bool,
        units: Option<UnitChoice>,
    ) -> Result<Start, Fault> {
        if !self.house.catalogue.texts.languages().any(|known| known == language) {
            return Err(Fault::new("no-such-language").text("language", language));
        }
        if !(1..=120).contains(&patience_minutes) {
            return Err(Fault::new("patience-out-of-range"));
        }
        self.store.write(|tx| {
            tx.set("language", &language)?;
            tx.set("patience-minutes", &patience_minutes.to_string())?;
            tx.set("read-aloud", if read_aloud { "yes" } else { "no" })?;
            units.as_ref().map_or(Ok(()), |units| units.keep(tx))
        })?;
        self.house.language = language;
        self.house.units = units.unwrap_or(std::mem::take(&mut self.house.units));
        self.start()
    }

    /// All drawings, by name.
    ///
    /// # Errors
    /// None; the form of a call.
    pub fn drawings(&mut self) -> Result<std::collections::BTreeMap<String, String>, Fault> {
        Ok(self.house.catalogue.drawings.clone())
    }
}

impl House {
    fn start(&self, tx: &Tx<'_>) -> Result<Start, Fault> {
        let person = identity::signatory(tx)?.map(|own| crate::views::Person {
            name: own.name,
            device: own.device.0,
            keychain: own.keychain,
        });
        let cautions = (1..)
            .map(|n| format!("always-{n}"))
            .take_while(|id| self.catalogue.texts.has(id, None))
            .map(|id| self.say(&Said::new(id)))
            .collect();
        Ok(Start {
            person,
            language: self.language.clone(),
            languages: self.catalogue.texts.languages().map(str::to_owned).collect(),
            patience_minutes: self.patience(tx)?,
            read_aloud: tx.setting("read-aloud")?.as_deref() == Some("yes"),
            units: self.units.clone(),
            unit_lists: self.unit_lists(),
            cautions,
            warning: self.warning.as_ref().map(|said| self.say(said)).or_else(|| {
                let why = self.unusable.as_ref()?;
                Some(self.say(&Said::new("warning-published").text("why", why)))
            }),
        })
    }

    pub(crate) fn patience(&self, tx: &Tx<'_>) -> Result<u32, Fault> {
        Ok(tx.setting("patience-minutes")?.and_then(|m| m.parse().ok()).unwrap_or(PATIENCE_MINUTES))
    }

    pub(crate) fn now(&self) -> DateTime<FixedOffset> {
        self.platform.now()
    }

    /// A fresh UUID version 7.
    pub(crate) fn uuid(&self) -> Result<Uuid, Fault> {
        let mut salt = [0; 10];
        self.platform.random(&mut salt)?;
        let now = u64::try_from(self.now().timestamp_millis()).unwrap_or(0);
        Ok(Builder::from_unix_timestamp_millis(now, &salt).into_uuid())
    }

    pub(crate) fn show(&self, fault: &Fault) -> FaultView {
        FaultView {
            kind: fault.kind.to_owned(),
            message: self.say(&fault.said),
            hint: self.catalogue.texts.word(&self.language, &fault.said.id, Some("hint"), &fault.said.args),
        }
    }

    pub(crate) fn say(&self, said: &Said) -> String {
        self.catalogue.texts.say(&self.language, &self.in_own_units(said))
    }

    /// A message without arguments.
    pub(crate) fn word(&self, id: &str) -> String {
        self.say(&Said::new(id))
    }

    /// A moment as the language writes it: day and time.
    pub(crate) fn when(&self, at: DateTime<FixedOffset>) -> String {
        let day = self.catalogue.texts.day(&self.language, at.date_naive());
        format!("{day}, {}", at.format("%H:%M"))
    }
}

/// A fault in English, for when the app itself couldn't be opened.
pub fn show(fault: &Fault) -> FaultView {
    let words = |attribute| match Catalogue::embedded() {
        Ok(catalogue) => catalogue.texts.word(FALLBACK, &fault.said.id, attribute, &fault.said.args),
        // The catalogue itself is at fault: its own words can't be had.
        Err(_) => fault.to_string(),
    };
    FaultView { kind: fault.kind.to_owned(), message: words(None), hint: words(Some("hint")) }
}

/// Reads an id that a screen or a person gave.
pub(crate) fn id(text: &str) -> Result<Uuid, Fault> {
    text.parse().map_err(|_| Fault::new("no-such").text("what", text))
}

/// Reads a digest that a screen or a person gave.
pub(crate) fn digest(text: &str) -> Result<Digest, Fault> {
    text.parse().map_err(|_| Fault::new("no-such").text("what", text))
}
