//! The instructor server: what it keeps ([`shelf`]), what it knows of its school ([`school`]), what it
//! answers ([`http`]), its board ([`board`]), and the process around it ([`run`](mod@run)).

pub mod board;
pub mod clock;
pub mod fault;
pub mod http;
pub mod run;
pub mod school;
pub mod shelf;

pub use clock::Clock;
pub use fault::{Refusal, ShelfFault};
pub use http::{Limits, Server, router};
pub use run::{Config, ServerFault, run};
