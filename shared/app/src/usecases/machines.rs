//! Machines: the list of them, one in full, registering and describing, confirming limits.

use chrono::DateTime;
use uuid::Uuid;
use witnessmark_core::history::History;
use witnessmark_core::list::{ResolvedBand, Sourced};
use witnessmark_core::record::{Body, LimitConfirmed, Machine};
use witnessmark_core::said::Said;
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::{Mark, Tx};

use crate::house::{House, id};
use crate::verdicts::People;
use crate::views::{
    Choices, EngineType, LimitView, MachineCard, MachinePage, Named, OpenView, PartView, TimelineEntry,
    WalkBrief,
};
use crate::{App, Fault, identity};

/// Marks shown of a timeline.
const TIMELINE: u32 = 200;
/// Longest time between repacks that anybody would type on purpose, days.
const LONGEST_REPACK: u32 = 3660;

impl App {
    /// All machines, those that need a person first.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn machines(&mut self) -> Result<Vec<MachineCard>, Fault> {
        self.store.read(|tx| self.house.cards(tx))
    }

    /// What a machine can be made of.
    ///
    /// # Errors
    /// None; the form of a call.
    pub fn choices(&mut self) -> Result<Choices, Fault> {
        let house = &self.house;
        Ok(Choices {
            engines: house
                .catalogue
                .sheets
                .values()
                .map(|sheet| EngineType {
                    id: sheet.id.clone(),
                    name: sheet.name.clone(),
                    kind: sheet.kind,
                    words: house.word(&format!("engine-{}", kebab(sheet.kind))),
                    invented: sheet.invented,
                    parts: house
                        .catalogue
                        .part_names(sheet)
                        .into_iter()
                        .map(|(name, optional)| PartView {
                            id: name.to_owned(),
                            words: house.word(&format!("part-{name}")),
                            optional,
                        })
                        .collect(),
                })
                .collect(),
        })
    }

    /// Registers a machine (`id` empty) or describes it anew.
    ///
    /// # Errors
    /// [`Fault`]: what the description lacks, a wrong PIN.
    pub fn machine_save(
        &mut self,
        machine: String,
        description: Option<Machine>,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let description = description.ok_or_else(|| Fault::new("description-missing"))?;
        let description = self.house.checked(description)?;
        let known = if machine.is_empty() { None } else { Some(id(&machine)?) };
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let machine = match known {
                Some(machine) => {
                    self.house.known(tx, machine)?;
                    machine
                }
                None => self.house.new_machine(tx, &seed)?,
            };
            self.house.write_record(tx, &seed, Some(machine), &Body::Machine(description))?;
            if known.is_none() {
                self.house.enrol_new(tx, &seed, machine)?;
            }
            self.house.page(tx, machine)
        })
    }

    /// Everything about one machine.
    ///
    /// # Errors
    /// [`Fault`].
    pub fn machine(&mut self, machine: String) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        self.store.read(|tx| self.house.page(tx, machine))
    }

    /// Signs a limit as the maker's manual has it.
    ///
    /// # Errors
    /// [`Fault`]: an end missing, ends the wrong way round, no document named, a wrong PIN.
    #[allow(clippy::too_many_arguments)]
    pub fn confirm_limit(
        &mut self,
        machine: String,
        band: String,
        low: Option<Quantity>,
        high: Option<Quantity>,
        document: String,
        page: String,
        pin: String,
    ) -> Result<MachinePage, Fault> {
        let machine = id(&machine)?;
        let of_sheet = self.store.read(|tx| {
            let history = self.house.known(tx, machine)?;
            let machinery = self.house.machinery(&history);
            Ok::<_, Fault>(machinery.and_then(|m| m.sheet.band(&band)))
        })?;
        let of_sheet = of_sheet.ok_or_else(|| Fault::new("no-such").text("what", &band))?;
        let low = end("low", &of_sheet.low, low)?;
        let high = end("high", &of_sheet.high, high)?;
        if let (Some(low), Some(high)) = (low, high)
            && low.si().ok() > high.si().ok()
        {
            return Err(Fault::new("limit-crossed"));
        }
        let (document, page) = (document.trim().to_owned(), page.trim().to_owned());
        if document.is_empty() || page.is_empty() {
            return Err(Fault::new("source-missing"));
        }
        let seed = identity::unlock(&mut self.store, &self.house, &pin)?;
        self.store.write(|tx| {
            let body = Body::LimitConfirmed(LimitConfirmed { band, low, high, document, page });
            self.house.write_record(tx, &seed, Some(machine), &body)?;
            self.house.page(tx, machine)
        })
    }
}

/// Checks one end of a limit against what the data sheet has there.
fn end(name: &str, sheet: &Option<Sourced>, given: Option<Quantity>) -> Result<Option<Quantity>, Fault> {
    match (sheet, given) {
        (None, _) => Ok(None),
        (Some(_), None) => Err(Fault::new("limit-end-missing").text("end", name)),
        (Some(sheet), Some(given)) => {
            given.to(sheet.unit).map_err(|fault| Fault::new("unit").text("why", fault))?;
            if given.value < 0.0 && given.unit.dimension() != Unit::Celsius.dimension() {
                return Err(Fault::new("limit-negative").text("end", name));
            }
            Ok(Some(given))
        }
    }
}

/// The name of a plain enum's value, as it stands in JSON.
pub(crate) fn kebab(value: impl serde::Serialize) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(text)) => text,
        _ => String::new(),
    }
}

impl House {
    /// A machine's history, with the time logged and not yet signed; or the fault that there is none.
    pub(crate) fn known(&self, tx: &Tx<'_>, machine: Uuid) -> Result<History, Fault> {
        let mut history = tx.history(machine)?.ok_or_else(|| Fault::new("no-such").text("what", machine))?;
        for pending in tx.pending()?.into_iter().filter(|pending| pending.machine == machine) {
            history.expect_signed(pending.at.date_naive(), &pending.body);
        }
        Ok(history)
    }

    fn checked(&self, mut machine: Machine) -> Result<Machine, Fault> {
        machine.name = machine.name.trim().to_owned();
        if machine.name.is_empty() || machine.name.chars().count() > 60 {
            return Err(Fault::new("machine-name"));
        }
        let sheet = self.catalogue.sheets.get(&machine.engine);
        let sheet = sheet.ok_or_else(|| Fault::new("engine-unknown").text("engine", &machine.engine))?;
        if !machine.hours.is_finite() || machine.hours < 0.0 {
            return Err(Fault::new("number-negative").text("what", self.word("term-hours")));
        }
        self.checked_weights(&mut machine)?;
        let parts = self.catalogue.part_names(sheet);
        if let Some(unknown) = machine.fitted.keys().find(|part| parts.iter().all(|(p, _)| p != part)) {
            return Err(Fault::new("part-unknown").text("part", unknown));
        }
        // What every machine has is fitted, named or not: a form can't leave the wing out.
        for (part, _) in parts.iter().filter(|(_, optional)| !optional) {
            machine.fitted.entry((*part).to_owned()).or_default();
        }
        if !machine.fitted.contains_key("reserve") {
            machine.reserve = None;
        }
        if let Some(reserve) = &machine.reserve {
            if reserve.every_days == 0 || reserve.every_days > LONGEST_REPACK {
                return Err(Fault::new("repack-interval").number("most", LONGEST_REPACK));
            }
            // A day ahead is a packer in another time zone; more is a slip of the pen.
            let tomorrow = self.now().date_naive().succ_opt();
            if reserve.repacked_on > tomorrow {
                return Err(Fault::new("repack-in-future"));
            }
        }
        Ok(machine)
    }

    pub(crate) fn cards(&self, tx: &Tx<'_>) -> Result<Vec<MachineCard>, Fault> {
        let people = self.people(tx)?;
        let mut cards = Vec::new();
        for machine in tx.machines()? {
            if Self::only_looked_at(&self.known(tx, machine)?) {
                continue;
            }
            cards.push(self.card(tx, machine, &people)?);
        }
        let walking = |card: &MachineCard| card.walk.is_none();
        cards.sort_by(|a, b| {
            let key = |card: &MachineCard| (walking(card), std::cmp::Reverse(card.verdict.state));
            key(a).cmp(&key(b)).then_with(|| a.name.cmp(&b.name)).then_with(|| a.id.cmp(&b.id))
        });
        Ok(cards)
    }

    pub(crate) fn card(&self, tx: &Tx<'_>, machine: Uuid, people: &People) -> Result<MachineCard, Fault> {
        let history = self.known(tx, machine)?;
        let verdict = self.verdict(tx, machine, &history, people)?;
        let described = history.machine.as_ref().map(|(machine, _)| machine);
        let engine = described.map_or("", |m| &m.engine);
        Ok(MachineCard {
            id: machine.to_string(),
            name: described.map_or_else(|| self.word("machine-unnamed"), |m| m.name.clone()),
            engine: self.catalogue.sheets.get(engine).map_or(engine, |sheet| &sheet.name).to_owned(),
            hours: history.hours,
            flights: history.flights,
            invented: described.is_some_and(|m| m.invented),
            verdict: self.verdict_view(&verdict),
            walk: self.walk_brief(tx, machine)?,
        })
    }

    fn walk_brief(&self, tx: &Tx<'_>, machine: Uuid) -> Result<Option<WalkBrief>, Fault> {
        let Some(draft) = tx.drafts_open(machine)?.into_iter().next_back() else { return Ok(None) };
        let progress = self.progress_of(tx, &draft)?;
        Ok(Some(WalkBrief {
            id: draft.id.to_string(),
            words: self.word(&format!("occasion-{}", draft.occasion)),
            occasion: draft.occasion,
            done: progress.done,
            of: progress.of,
        }))
    }

    pub(crate) fn page(&self, tx: &Tx<'_>, machine: Uuid) -> Result<MachinePage, Fault> {
        let history = self.known(tx, machine)?;
        let people = self.people(tx)?;
        let (description, _) =
            history.machine.clone().ok_or_else(|| Fault::new("no-such").text("what", machine))?;
        let timeline = tx.timeline(machine, TIMELINE)?;
        Ok(MachinePage {
            card: self.card(tx, machine, &people)?,
            description,
            occasions: self
                .catalogue
                .occasions
                .iter()
                // What follows a job is opened from the job.
                .filter(|o| !o.job)
                .map(|o| Named { id: o.id.clone(), words: self.word(&format!("occasion-{}", o.id)) })
                .collect(),
            open: self.open_views(&history, &people),
            timeline: timeline.into_iter().map(|mark| self.timeline_entry(mark, &people)).collect(),
            limits: self.limits(&history),
            due: self.due_views(&history),
            components: self.component_views(&history),
            job: self.job_view(&history, &people),
            tanks: history.tanks,
            waiting: u32::try_from(tx.pending()?.iter().filter(|p| p.machine == machine).count())
                .unwrap_or(u32::MAX),
        })
    }

    /// What is open on a machine.
    pub(crate) fn open_views(&self, history: &History, people: &People) -> Vec<OpenView> {
        let views = history.open.iter().filter_map(|open| {
            let leading = open.leading()?;
            let by = people.name(&leading.device);
            Some(OpenView {
                point: open.point.clone(),
                title: leading.title.clone(),
                means: open.means(),
                words: leading.words.clone(),
                since: self.say(
                    &Said::new("open-since")
                        .date("day", leading.at.date_naive())
                        .figures("hours", format!("{:.1}", leading.hours))
                        .text("person", by),
                ),
                record: leading.record.to_string(),
            })
        });
        views.collect()
    }

    pub(super) fn timeline_entry(&self, mark: Mark, people: &People) -> TimelineEntry {
        let told = mark.told;
        let look = told.look.as_ref();
        let list = look.map(|(occasion, _)| self.word(&format!("occasion-{occasion}"))).unwrap_or_default();
        let worst = look.and_then(|(_, worst)| *worst);
        let words = if mark.kind == "limit-confirmed" {
            self.word(&format!("band-{}", told.words))
        } else {
            told.words
        };
        let kind = format!("told-{}", mark.kind);
        let known = self.catalogue.texts.has(&kind, None);
        let said = Said::new(if known { kind } else { "told-unknown".to_owned() })
            .text("words", words)
            .text("list", list)
            .text("worst", worst.map(kebab).unwrap_or_default());
        TimelineEntry {
            record: mark.digest.to_string(),
            when: DateTime::parse_from_rfc3339(&told.at).map(|at| self.when(at)).unwrap_or_default(),
            at: told.at,
            kind: mark.kind,
            words: self.say(&said),
            hours: told.hours,
            worst,
            by: people.name(&told.device),
        }
    }

    fn limits(&self, history: &History) -> Vec<LimitView> {
        let Some(machinery) = self.machinery(history) else { return Vec::new() };
        let bands = machinery.sheet.bands.keys().filter_map(|name| machinery.band(name));
        let mut limits: Vec<LimitView> = bands.map(|band| self.limit_view(&band)).collect();
        limits.sort_by_key(|limit| (limit.confirmed, !limit.critical));
        limits
    }

    fn limit_view(&self, band: &ResolvedBand) -> LimitView {
        let quantity = |end: &Option<Sourced>| end.as_ref().and_then(Sourced::quantity);
        LimitView {
            words: self.word(&format!("band-{}", band.name)),
            value: self.band_words(band),
            low: quantity(&band.low),
            high: quantity(&band.high),
            has_low: band.low.is_some(),
            has_high: band.high.is_some(),
            units: self.units_beside(band.unit()),
            critical: band.critical,
            confirmed: band.confirmed(),
            source: self.source_words(band),
            band: band.name.clone(),
        }
    }

    /// Why a value is unconfirmed: a data sheet says it in English; what sheets say often has words.
    fn why_words(&self, why: &str) -> String {
        let letters = |c: char| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { ' ' };
        let slug: String = why.chars().map(letters).collect();
        let id = format!("why-{}", slug.split_whitespace().collect::<Vec<_>>().join("-"));
        if self.catalogue.texts.has(&id, None) { self.word(&id) } else { why.to_owned() }
    }

    /// Where a band is written, or that it is unconfirmed and why.
    pub(crate) fn source_words(&self, band: &ResolvedBand) -> String {
        let source = band.ends().find_map(|end| end.source.as_ref());
        match (band.confirmed(), source) {
            (true, Some(source)) => self.say(
                &Said::new("source-document").text("document", &source.document).text("page", &source.page),
            ),
            _ if !band.has_number() => self.word("source-missing"),
            _ => {
                let why = band.ends().find_map(|end| end.unconfirmed.clone()).unwrap_or_default();
                self.say(&Said::new("source-unconfirmed").text("why", self.why_words(&why)))
            }
        }
    }
}
