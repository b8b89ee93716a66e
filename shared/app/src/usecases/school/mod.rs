//! A school: founding and joining it, its members, its machines, its server, its lists.

mod board;
mod desk;
mod joining;
mod local;
mod members;
mod place;
mod publishing;
mod receipts;
mod replica;
mod syncing;
mod view;

pub use desk::Send;
pub(crate) use joining::found_demo_place;
pub(crate) use local::take_in;
pub(crate) use place::place;
pub use syncing::{Request, SyncStep};
