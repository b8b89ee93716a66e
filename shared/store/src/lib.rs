//! SQLite: the record log, what is derived from it, inspections begun, pictures, settings.
//!
//! Everything happens in a transaction that the caller opens ([`Store::write`],
//! [`Store::read`]); nothing here knows the time, draws randomness or touches a file
//! other than through SQLite.

mod derived;
mod drafts;
mod fault;
mod looked;
mod open;
mod pending;
mod photos;
mod records;
mod rescue;
mod server;
mod settings;
mod sound;
mod trusted;

pub use derived::{Mark, Told};
pub use drafts::{Draft, DraftState};
pub use fault::StoreFault;
pub use looked::{Figure, PartLook, PointLook};
pub use open::{Store, Tx};
pub use pending::Pending;
pub use photos::Photo;
pub use records::RefusedLine;
pub use rescue::Rescued;
pub use server::{Stuck, Waiting};
