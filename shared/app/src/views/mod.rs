//! What the screens are told. Every text is already in the person's language; no screen
//! decides anything of the trade.

/// Gives every view the same derives, so that a view is only its members.
macro_rules! views {
    ($($(#[$meta:meta])* $kind:ident $name:ident $body:tt)*) => {
        $(#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)] $(#[$meta])* pub $kind $name $body)*
    };
}

mod basics;
mod flight;
mod machine;
mod memory;
mod record;
mod school;
mod walk;
mod work;

pub use basics::*;
pub use flight::*;
pub use machine::*;
pub use memory::*;
pub use record::*;
pub use school::*;
pub use walk::*;
pub use work::*;
