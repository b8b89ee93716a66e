//! What every screen may need: the person, names, choices, files, codes.

use super::{UnitChoice, UnitLists};
use serde::{Deserialize, Serialize};
use ts_rs::TS;
use witnessmark_core::list::EngineKind;
use witnessmark_core::units::Unit;

views! {
/// What the app is when it opens.
struct Start {
    /// Who signs here; none before the first start is done.
    pub person: Option<Person>,
    /// The language in use.
    pub language: String,
    /// The languages there are.
    pub languages: Vec<String>,
    /// Minutes without an answer after which a list steps back.
    pub patience_minutes: u32,
    /// Whether points are read aloud where the platform speaks.
    pub read_aloud: bool,
    /// The units that the person reads and types in.
    pub units: UnitChoice,
    /// The units that they may choose from.
    pub unit_lists: UnitLists,
    /// The cautions that hold always.
    pub cautions: Vec<String>,
    /// Something that went wrong with the stored data, and what was done.
    pub warning: Option<String>,
}
/// The person who signs on this device.
struct Person {
    /// Their name.
    pub name: String,
    /// The key's thumbprint: what another person compares.
    pub device: String,
    /// Whether the platform's keychain helps to seal the key.
    pub keychain: bool,
}
/// An id with its words.
struct Named {
    /// The id.
    pub id: String,
    /// Its words.
    pub words: String,
}
/// What a machine can be made of.
struct Choices {
    /// The engine types there are.
    pub engines: Vec<EngineType>,
}
/// A part.
struct PartView {
    /// Its id: the key in `Machine.fitted`.
    pub id: String,
    /// Its name.
    pub words: String,
    /// Whether there are machines without it.
    pub optional: bool,
}
/// An engine type.
struct EngineType {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What drives the propeller.
    pub kind: EngineKind,
    /// The kind in words.
    pub words: String,
    /// Whether it exists only in the demonstration.
    pub invented: bool,
    /// The parts of a machine with this engine; each may have a serial number.
    pub parts: Vec<PartView>,
}
/// A unit.
struct UnitView {
    /// Its code.
    pub code: Unit,
    /// As a person reads it.
    pub sign: String,
}
/// A file to give to somebody.
struct FileOut {
    /// Its name.
    pub name: String,
    /// Its text.
    pub text: String,
}
/// A file to give to somebody, of any kind.
struct FileBytes {
    /// Its name.
    pub name: String,
    /// Its media type.
    pub media: String,
    /// Its bytes, base64.
    pub data: String,
}
/// A picture.
struct Photo {
    /// Its media type.
    pub media: String,
    /// Its bytes, base64.
    pub data: String,
}
/// A code to be shown to another phone.
struct CodeOut {
    /// The text in it.
    pub text: String,
    /// The code as SVG, where it fits one.
    pub svg: Option<String>,
}
}
