//! What the server is told at its start.

use std::net::SocketAddr;
use std::path::PathBuf;

use crate::Limits;

/// What the server is told at its start.
#[derive(Clone, Debug)]
pub struct Config {
    /// Where to listen.
    pub listen: SocketAddr,
    /// The database: `postgres://…`, else an SQLite file, made if it isn't there.
    pub database: String,
    /// The founding file of the school (its root's member record and its founding record), for the first
    /// start.
    pub school: Option<PathBuf>,
    /// Certificate and key.
    pub tls: Option<TlsFiles>,
    /// Plain HTTP is meant, though other machines can reach it.
    pub plain: bool,
    /// The names that the server answers to, as they stand in `Host` (with the port where it isn't the
    /// usual one); any, if there are none. With a name, a request signed for another server is refused
    /// even where its `Host` header was kept.
    pub names: Vec<String>,
    /// Whether a proxy stands before it. The proxy must pass `Host` on as it came, and add whom it asks
    /// for to `X-Forwarded-For`.
    pub proxied: bool,
    /// How the log is written.
    pub log: LogForm,
    /// How often somebody may ask.
    pub limits: Limits,
}

/// Files of TLS, PEM.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TlsFiles {
    /// The certificate, and those between it and a root.
    pub cert: PathBuf,
    /// Its private key.
    pub key: PathBuf,
}

/// How the log is written, to standard error.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LogForm {
    /// Lines to be read.
    #[default]
    Plain,
    /// JSON, a line each.
    Json,
    /// Not at all.
    Silent,
}

impl Config {
    /// A server of this machine's own: plain HTTP, for a proxy or for trying it out.
    pub fn on(listen: SocketAddr, database: impl Into<String>) -> Self {
        Self {
            listen,
            database: database.into(),
            school: None,
            tls: None,
            plain: false,
            names: Vec::new(),
            proxied: false,
            log: LogForm::default(),
            limits: Limits::default(),
        }
    }
}
