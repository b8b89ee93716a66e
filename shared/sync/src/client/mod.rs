//! A device's side of one round with its server: check what the server says of its log, take what is
//! new, send what waits, check again, then pictures. Sans-IO: [`Round::next`] says what to ask, the
//! caller asks it and gives the answer back. A round may be dropped at any moment and begun anew: all
//! that it did is kept by then, and nothing is done twice.
//!
//! ```
//! # use witnessmark_sync::client::{Answer, Ask, Local, Next, Round, RoundFault};
//! fn whole<L: Local>(local: &mut L, net: impl Fn(&Ask) -> Answer) -> Result<(), RoundFault<L::Fault>> {
//!     let mut round = Round::default();
//!     let mut answer = None;
//!     loop {
//!         match round.next(local, answer.take())? {
//!             Next::Ask(ask) => answer = Some(net(&ask)),
//!             Next::Done(_) => return Ok(()),
//!         }
//!     }
//! }
//! ```

mod local;
mod photos;
mod pull;
mod push;
mod round;

pub use local::{Following, Leaf, Local, Page, PhotoOut};
pub use round::{Answer, Ask, Lie, Next, Outcome, Round, RoundFault};
