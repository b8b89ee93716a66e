//! Why a server can't start or go on.

use std::net::SocketAddr;
use std::path::PathBuf;

use witnessmark_core::record::Digest;

use crate::ShelfFault;

/// Why a server can't start or go on.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ServerFault {
    /// Its database.
    #[error(transparent)]
    Shelf(#[from] ShelfFault),
    /// No school is served here yet, and none was given.
    #[error("this server has no school yet; give it the school's founding file")]
    NoSchool,
    /// The database has several schools.
    #[error("the database has more than one school; give each server a database of its own")]
    SeveralSchools,
    /// The file founds no school.
    #[error("the founding file can't be used: {0}")]
    NotASchool(String),
    /// Another school is served here.
    #[error("this server serves school {here}, not {given}; give the other one a database of its own")]
    OtherSchool {
        /// Served here.
        here: Digest,
        /// Given.
        given: Digest,
    },
    /// Records would go over the network in the open.
    #[error(
        "{0} can be reached from other machines and there is no certificate; give one, listen on \
         127.0.0.1 behind a proxy that has one, or say that plain HTTP is meant"
    )]
    Plain(SocketAddr),
    /// A file can't be read.
    #[error("{} can't be read: {why}", .file.display())]
    File {
        /// Which.
        file: PathBuf,
        /// Why.
        why: String,
    },
    /// Certificate or key can't be used.
    #[error("the certificate or its key can't be used: {0}")]
    Certificate(String),
    /// The address can't be listened on.
    #[error("{address} can't be listened on: {why}")]
    Address {
        /// Which.
        address: SocketAddr,
        /// Why.
        why: String,
    },
    /// The system gives no randomness.
    #[error("the system gives no randomness: {0}")]
    Randomness(String),
    /// Anything else of the system's.
    #[error("the server stopped: {0}")]
    System(String),
}
