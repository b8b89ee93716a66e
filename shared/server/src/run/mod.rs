//! The server as a process: told what to do by a [`Config`], until it is told to stop.

mod fault;

pub use fault::ServerFault;
