//! What a person can do: use cases, each one function with one transaction.
//!
//! [`App`] is the one door for every face (the phone and desktop shell, the loopback
//! server, the command line). The operating system comes in as a [`Platform`].

mod calls;
mod catalogue;
mod demo;
mod fault;
mod house;
mod identity;
mod own_units;
mod papers;
mod pictures;
mod platform;
mod plots;
mod rights;
mod texts;
mod unkept;
mod usecases;
mod validate;
mod verdicts;
pub mod views;

pub use calls::{Asked, Call, NetCall, typescript};
pub use catalogue::{Catalogue, EMBEDDED};
pub use fault::{Fault, FaultView};
pub use house::{App, show};
pub use platform::{Keychain, Platform};
pub use plots::PlotKind;
pub use texts::FALLBACK;
pub use usecases::school::{Request, Send as DeskSend, SyncStep};
pub use validate::{FileKind, schemas, validate_embedded, validate_files};
