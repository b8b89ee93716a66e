//! Property classes of steel bolts, screws and studs.
//!
//! Source: ISO 898-1:2013 table 3, as tabulated by fastener houses. Minimum values, at
//! 10 to 35 °C: a stud beside a hot cylinder has less.

use serde::{Deserialize, Serialize};

use super::fault::TorqueFault;
use super::thread::{Series, Thread};
use crate::units::{Quantity, Unit};

/// A property class: tensile strength / 100 . yield ratio.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Written", into = "&'static str")]
#[allow(missing_docs)]
pub enum Class {
    C8_8,
    C10_9,
    C12_9,
}

/// `"8.8"`, or the number 8.8 of somebody in a hurry.
#[derive(Deserialize)]
#[serde(untagged)]
enum Written {
    Text(String),
    Number(f64),
}

impl TryFrom<Written> for Class {
    type Error = TorqueFault;

    fn try_from(written: Written) -> Result<Self, TorqueFault> {
        match written {
            Written::Text(text) => text.parse(),
            Written::Number(number) => number.to_string().parse(),
        }
    }
}

impl std::str::FromStr for Class {
    type Err = TorqueFault;

    fn from_str(text: &str) -> Result<Self, TorqueFault> {
        let plain = text.trim().replace(',', ".");
        [Class::C8_8, Class::C10_9, Class::C12_9]
            .into_iter()
            .find(|class| class.name() == plain)
            .ok_or_else(|| TorqueFault::NoClass(text.to_owned()))
    }
}

impl From<Class> for &'static str {
    fn from(class: Class) -> Self {
        class.name()
    }
}

/// Stresses of a class on a thread, MPa.
#[derive(Clone, Copy)]
struct Stresses {
    proof: f64,
    yielding: f64,
    tensile: f64,
}

impl Class {
    /// As it is stamped on the head.
    pub fn name(self) -> &'static str {
        match self {
            Class::C8_8 => "8.8",
            Class::C10_9 => "10.9",
            Class::C12_9 => "12.9",
        }
    }

    fn stresses(self, thread: Thread) -> Result<Stresses, TorqueFault> {
        if thread.series() == Series::Unified {
            return Err(TorqueFault::ClassOfInch { class: self.name(), thread: thread.name() });
        }
        let (proof, yielding, tensile) = match self {
            Class::C8_8 if thread.d_mm() <= 16.0 => (580.0, 640.0, 800.0),
            Class::C8_8 => (600.0, 660.0, 830.0),
            Class::C10_9 => (830.0, 940.0, 1040.0),
            Class::C12_9 => (970.0, 1100.0, 1220.0),
        };
        Ok(Stresses { proof, yielding, tensile })
    }

    /// Stress under proof load, Sp.
    ///
    /// # Errors
    /// [`TorqueFault::ClassOfInch`].
    pub fn proof_stress(self, thread: Thread) -> Result<Quantity, TorqueFault> {
        Ok(Quantity::new(self.stresses(thread)?.proof, Unit::Megapascal))
    }

    /// Stress at 0.2 % lasting stretch, Rp0.2.
    ///
    /// # Errors
    /// [`TorqueFault::ClassOfInch`].
    pub fn yield_stress(self, thread: Thread) -> Result<Quantity, TorqueFault> {
        Ok(Quantity::new(self.stresses(thread)?.yielding, Unit::Megapascal))
    }

    /// Tensile strength, Rm.
    ///
    /// # Errors
    /// [`TorqueFault::ClassOfInch`].
    pub fn tensile_strength(self, thread: Thread) -> Result<Quantity, TorqueFault> {
        Ok(Quantity::new(self.stresses(thread)?.tensile, Unit::Megapascal))
    }

    /// The pull that must leave no lasting stretch: Sp·As.
    ///
    /// # Errors
    /// [`TorqueFault::ClassOfInch`].
    pub fn proof_load(self, thread: Thread) -> Result<Quantity, TorqueFault> {
        Ok(load(self.stresses(thread)?.proof, thread))
    }

    /// The least pull that breaks it: Rm·As.
    ///
    /// # Errors
    /// [`TorqueFault::ClassOfInch`].
    pub fn breaking_load(self, thread: Thread) -> Result<Quantity, TorqueFault> {
        Ok(load(self.stresses(thread)?.tensile, thread))
    }
}

/// MPa · mm² = N.
fn load(stress: f64, thread: Thread) -> Quantity {
    Quantity::new(stress * thread.stress_area_mm2(), Unit::Newton)
}
