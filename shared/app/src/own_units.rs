//! The units that a person reads and types in. What was typed is kept as it was typed.

use witnessmark_core::units::{Quantity, Unit};
use witnessmark_store::Tx;

use crate::Fault;
use crate::house::House;
use crate::views::{UnitChoice, UnitView};

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

    /// The person's unit of the same kind; the unit itself where they chose none, and for lengths, which
    /// are tenths of a millimetre here and heights there.
    pub(crate) fn instead_of(&self, unit: Unit) -> Unit {
        let same = |own: &Unit| own.dimension() == unit.dimension() && *own != self.height;
        self.each().find(same).unwrap_or(unit)
    }

    /// A quantity in the person's unit.
    pub(crate) fn of(&self, quantity: Quantity) -> Quantity {
        quantity.to(self.instead_of(quantity.unit)).unwrap_or(quantity)
    }
}

impl House {
    /// All units of a kind, this one first.
    pub(crate) fn units_from(&self, first: Unit) -> Vec<UnitView> {
        let others = Unit::ALL.iter().copied().filter(|u| *u != first && u.dimension() == first.dimension());
        let view = |unit: Unit| UnitView { code: unit, sign: unit.sign().to_owned() };
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
