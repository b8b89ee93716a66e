//! The units that a person reads and types in. What was typed is kept as it was typed.

use witnessmark_core::list::{ResolvedBand, Sourced};
use witnessmark_core::said::{Arg, Said};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;
use crate::views::{UnitChoice, UnitLists, UnitView};

/// Digits that count in what was turned into another unit.
const DIGITS: i32 = 4;
/// Where they are kept.
const SETTING: &str = "units";

impl Default for UnitChoice {
    fn default() -> Self {
        Self {
            mass: Unit::Kilogram,
            volume: Unit::Litre,
            speed: Unit::KilometrePerHour,
            temperature: Unit::Celsius,
            pressure: Unit::Hectopascal,
            height: Unit::Metre,
            torque: None,
        }
    }
}

impl UnitChoice {
    /// As kept; metric before anybody chose.
    pub(crate) fn kept(tx: &Tx<'_>) -> Result<Self, Fault> {
        Ok(tx.setting(SETTING)?.and_then(|kept| serde_json::from_str(&kept).ok()).unwrap_or_default())
    }

    /// Keeps them, if each is of its kind.
    pub(crate) fn keep(&self, tx: &Tx<'_>) -> Result<(), Fault> {
        let kinds = Self { torque: Some(Unit::NewtonMetre), ..Self::default() };
        for (chosen, kind) in self.each().zip(kinds.each()) {
            if chosen.dimension() != kind.dimension() {
                return Err(Fault::new("unit").text("why", format!("{} / {}", chosen.code(), kind.code())));
            }
        }
        Ok(tx.set(SETTING, &serde_json::to_string(self)?)?)
    }

    /// Each chosen unit; torque last, as it may be missing.
    fn each(&self) -> impl Iterator<Item = Unit> {
        let always = [self.mass, self.volume, self.speed, self.temperature, self.pressure, self.height];
        always.into_iter().chain(self.torque)
    }

    /// The person's unit of the same kind; the unit itself where they chose none. Of lengths, metres and
    /// feet are heights, of pressures hectopascals and inches of mercury are the air's; what is measured on
    /// a machine stays as its data sheet has it.
    pub(crate) fn instead_of(&self, unit: Unit) -> Unit {
        match unit {
            Unit::Metre | Unit::Foot => return self.height,
            Unit::Hectopascal | Unit::InchOfMercury => return self.pressure,
            _ => {}
        }
        let around = [self.height, self.pressure];
        let same = |own: &Unit| own.dimension() == unit.dimension() && !around.contains(own);
        self.each().find(same).unwrap_or(unit)
    }

    /// A quantity in the person's unit.
    pub(crate) fn of(&self, quantity: Quantity) -> Quantity {
        quantity.to(self.instead_of(quantity.unit)).unwrap_or(quantity)
    }
}

impl House {
    /// A quantity as the person reads it: in their unit, with their language's decimal mark. What was
    /// turned into another unit has four digits that count.
    pub(crate) fn shown(&self, quantity: Quantity) -> String {
        self.figures(&self.own_figures(quantity))
    }

    /// The same with a point as its decimal mark.
    fn own_figures(&self, quantity: Quantity) -> String {
        let own = self.units.of(quantity);
        let told = if own.unit == quantity.unit { own } else { own.significant(DIGITS) };
        told.to_string()
    }

    /// A message whose quantities are in the person's units.
    pub(crate) fn in_own_units(&self, said: &Said) -> Said {
        let mut said = said.clone();
        for arg in said.args.values_mut() {
            if let Arg::Quantity(quantity) = arg {
                *arg = Arg::Figures(self.own_figures(*quantity));
            }
        }
        said
    }

    /// A band as the data sheet has it, and in the person's unit where that is another.
    pub(crate) fn band_words(&self, band: &ResolvedBand) -> String {
        let stated = self.figures(&band.to_string());
        let own = |end: &Option<Sourced>| {
            end.clone().map(|end| match end.quantity().map(|quantity| self.units.of(quantity)) {
                Some(own) => Sourced { value: Some(own.significant(DIGITS).value), unit: own.unit, ..end },
                None => end,
            })
        };
        match band.has_number() && self.units.instead_of(band.unit()) != band.unit() {
            true => {
                let own = ResolvedBand { low: own(&band.low), high: own(&band.high), ..band.clone() };
                format!("{stated} ({})", self.figures(&own.to_string()))
            }
            false => stated,
        }
    }

    /// Figures with the language's decimal mark.
    pub(crate) fn figures(&self, figures: &str) -> String {
        self.catalogue.texts.figures(&self.language, figures)
    }

    /// The units of each kind that instruments and makers use in the field.
    pub(crate) fn unit_lists(&self) -> UnitLists {
        use Unit::*;
        let list = |units: &[Unit]| units.iter().copied().map(view).collect();
        UnitLists {
            mass: list(&[Kilogram, Pound]),
            volume: list(&[Litre, GallonUs, GallonBritish]),
            speed: list(&[KilometrePerHour, Knot, MetrePerSecond]),
            temperature: list(&[Celsius, Fahrenheit]),
            pressure: list(&[Hectopascal, InchOfMercury]),
            height: list(&[Metre, Foot]),
            torque: list(&[
                NewtonMetre,
                PoundForceInch,
                PoundForceFoot,
                KilogramForceCentimetre,
                KilogramForceMetre,
            ]),
        }
    }

    /// All units of a kind, this one first.
    pub(crate) fn units_from(&self, first: Unit) -> Vec<UnitView> {
        let others = Unit::ALL.iter().copied().filter(|u| *u != first && u.dimension() == first.dimension());
        std::iter::once(first).chain(others).map(view).collect()
    }

    /// A data sheet's unit, then the person's, then others of the kind that may be read off an instrument.
    pub(crate) fn units_beside(&self, unit: Unit) -> Vec<UnitView> {
        let own = self.units.instead_of(unit);
        let mut units = self.units_from(unit);
        // The sheet's own stays first: bands are told in it.
        if let Some(at) = units.iter().position(|one| one.code == own && own != unit) {
            let one = units.remove(at);
            units.insert(1.min(units.len()), one);
        }
        units
    }
}

pub(crate) fn view(unit: Unit) -> UnitView {
    UnitView { code: unit, sign: unit.sign().to_owned() }
}
