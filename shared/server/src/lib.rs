//! The instructor server.
