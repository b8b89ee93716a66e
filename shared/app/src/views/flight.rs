//! Load, fuel, air and wind before a flight.

use super::{ReasonView, UnitView, VerdictView};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::flight::{Burn, Reserve, WindLimits};
use witnessmark_core::record::{FlightPlanned, WingLoad};
use witnessmark_core::units::{Quantity, Unit};
use witnessmark_core::verdict::State;

views! {
/// What is asked before a flight, with what is known already.
struct FlightForm {
    /// The machine.
    pub machine: String,
    /// What people call it.
    pub machine_name: String,
    /// The plan as it stands: today's, or the last one's figures that may still hold (never air or wind).
    pub plan: FlightPlanned,
    /// Whether that is today's.
    pub today: bool,
    /// What the person stated last, for those parts that the plan doesn't have yet.
    pub own: FlightOwn,
    /// What the wing may carry, by the machine's description.
    pub wing: Option<WingLoad>,
    /// What the machine weighs, by its description.
    pub weight: Option<Quantity>,
    /// Whether its engine burns a mix of petrol and oil.
    pub mixes: bool,
    /// Whether its engine burns fuel at all.
    pub burns_fuel: bool,
    /// Parts of petrol to one of oil by the data sheet, in words with its source; none where it has none.
    pub ratio_words: Option<String>,
    /// The number in that.
    pub ratio: Option<f64>,
    /// What the latest flights burned.
    pub burns: Vec<Burn>,
    /// That in a sentence, or that there is too little to say.
    pub burns_words: String,
    /// The school's wind limits, where one has set any.
    pub school_wind: Option<WindLimits>,
    /// Units of each kind, the person's own first; of fuel also the small one of a measuring cup.
    pub units: UnitLists,
}
/// What a person stated when they prepared a flight last, on whatever machine.
#[derive(Default)]
struct FlightOwn {
    /// Their weight as dressed for flying.
    pub pilot: Option<Quantity>,
    /// Ballast.
    pub ballast: Option<Quantity>,
    /// Fuel at take-off.
    pub fuel: Option<Quantity>,
    /// What must be left at landing.
    pub reserve: Option<Reserve>,
    /// Parts of petrol to one of oil.
    pub ratio: Option<f64>,
    /// Wind limits that they set.
    pub wind: Option<WindLimits>,
    /// How high the field lies.
    pub elevation: Option<Quantity>,
}
/// The units of each kind that may be chosen.
struct UnitLists {
    /// Of weight.
    pub mass: Vec<UnitView>,
    /// Of fuel.
    pub volume: Vec<UnitView>,
    /// Of wind.
    pub speed: Vec<UnitView>,
    /// Of temperature.
    pub temperature: Vec<UnitView>,
    /// Of air pressure.
    pub pressure: Vec<UnitView>,
    /// Of heights.
    pub height: Vec<UnitView>,
    /// Of torque.
    pub torque: Vec<UnitView>,
}
/// What comes of a plan.
struct FlightView {
    /// What comes of each part that was asked.
    pub parts: Vec<FlightPartView>,
    /// What to pour into the tank, by itself, to be shown large; none unless a mix can be made of it.
    pub pour: Option<FlightPourView>,
    /// What is wrong in a part, where something is.
    pub faults: Vec<FlightFaultView>,
    /// What is gravest in it; none where all is well.
    pub gravest: Option<FlightGravest>,
    /// The verdict with this plan.
    pub verdict: VerdictView,
}
/// What is gravest in a plan: what can't be reckoned goes before what is past a limit.
struct FlightGravest {
    /// What it makes of the machine.
    pub state: State,
    /// In words.
    pub words: String,
}
/// Oil to pour into the tank.
struct FlightPourView {
    /// How much.
    pub oil: Quantity,
    /// That, as a person reads it.
    pub words: String,
}
/// What comes of one part of a plan.
struct FlightPartView {
    /// `load`, `mix`, `fuel`, `air` or `wind`.
    pub part: String,
    /// As it enters the verdict.
    pub reason: ReasonView,
}
/// What is wrong in one part of a plan.
struct FlightFaultView {
    /// `load`, `mix`, `fuel`, `air` or `wind`.
    pub part: String,
    /// What is wrong and what to do.
    pub words: String,
}
/// The units that a person reads and types in; the machine's own are shown beside them where they differ.
struct UnitChoice {
    /// Of weight.
    pub mass: Unit,
    /// Of fuel.
    pub volume: Unit,
    /// Of wind.
    pub speed: Unit,
    /// Of temperature.
    pub temperature: Unit,
    /// Of air pressure.
    pub pressure: Unit,
    /// Of heights.
    pub height: Unit,
    /// Of torque; none: as each machine's data sheet has it.
    pub torque: Option<Unit>,
}
}
