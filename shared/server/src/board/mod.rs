//! The school board: a web page for a big screen. It reads and prepares; it never signs.
//!
//! What it shows is a [`replica`] of the log: an app without a signatory, so that the board says what a
//! phone says. A page is signed in by a device ([`sign_in`]) or, to look only, by a [`passphrase`].

mod cookie;
mod drafts;
mod events;
mod fault;
mod fleet;
mod follow;
mod guest;
mod look;
mod pages;
pub mod passphrase;
mod prepare;
mod replica;
mod session;
mod sign_in;
mod tongue;
mod typed;

use std::fmt;
use std::path::PathBuf;
use std::sync::Arc;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::http::HeaderMap;
use axum::http::header::{HOST, ORIGIN};
use axum::middleware::{from_fn, map_response};
use axum::routing::{get, post};
use tokio::sync::{Semaphore, watch};
use witnessmark_app::{DeskSend, Platform};

use crate::http::HttpFault;
use crate::{Server, ShelfFault};
use replica::{Asked, Replica};
use tongue::Tongue;

/// Largest body, bytes: files to be published, and room.
const LARGEST: usize = 1024 * 1024;
/// Streams open at once.
const STREAMS: usize = 200;

/// The built page's files, by path (`board.html`, `assets/…`).
pub type Pages = fn(&str) -> Option<&'static [u8]>;
/// Makes the platform that a replica's app runs on.
pub type Platforms = Arc<dyn Fn() -> Box<dyn Platform> + Send + Sync>;

/// What a board is given.
#[derive(Clone)]
pub struct Config {
    /// The server's data folder: the board's own copy lies there.
    pub folder: PathBuf,
    /// The address under which devices know the server (`https://school.example`); none: the one under
    /// which a page was asked for.
    pub address: Option<String>,
    /// Whether this process itself speaks TLS.
    pub tls: bool,
    /// The page's files.
    pub pages: Pages,
    /// Clock and randomness for the copy.
    pub platforms: Platforms,
}

impl fmt::Debug for Config {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Config({})", self.folder.display())
    }
}

/// The board of a school, shared by all requests, and the language in which this one is answered.
#[derive(Clone, Debug)]
pub struct Board(Arc<Inner>, Tongue);

struct Inner {
    server: Server,
    config: Config,
    replica: Replica,
    /// How much of the log the board shows.
    shown: watch::Sender<u64>,
    streams: Arc<Semaphore>,
    /// One passphrase is tried at a time: each takes memory.
    trying: Semaphore,
}

impl fmt::Debug for Inner {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Board({:?})", self.server)
    }
}

impl Board {
    /// The board of a server's school. It shows nothing until somebody lets it [`Board::catch_up`].
    pub fn new(server: Server, config: Config) -> Self {
        let replica = Replica::new(&config);
        let (shown, streams) = (watch::Sender::new(0), Arc::new(Semaphore::new(STREAMS)));
        let inner = Inner { server, config, replica, shown, streams, trying: Semaphore::new(1) };
        Self(Arc::new(inner), Tongue::default())
    }

    /// Its routes, to be merged with the server's ([`crate::router`]).
    pub fn router(&self) -> Router {
        Router::new()
            .route("/", get(pages::board))
            .route("/mark.svg", get(pages::mark))
            .route("/assets/{name}", get(pages::asset))
            .route("/desk/session", get(session::session))
            .route("/desk/sign-in", post(sign_in::begin))
            .route("/desk/sign-in/{id}", get(sign_in::poll))
            .route("/desk/passphrase", post(sign_in::by_passphrase))
            .route("/desk/sign-out", post(sign_in::out))
            .route("/desk/board", get(look::board))
            .route("/desk/machine/{id}", get(look::machine))
            .route("/desk/record/{digest}", get(look::record))
            .route("/desk/photo/{digest}", get(look::photo))
            .route("/desk/second-look/{machine}", get(look::second_look))
            .route("/desk/lives", get(fleet::lives))
            .route("/desk/life/{component}", get(fleet::life))
            .route("/desk/worth", get(fleet::worth))
            .route("/desk/looking", get(fleet::looking))
            .route("/desk/events", get(events::events))
            .route("/desk/drafts", get(drafts::drafts))
            .route("/desk/drafts/drop", post(drafts::drop_draft))
            .route("/desk/prepare/deferral", post(prepare::deferral))
            .route("/desk/prepare/publication", post(prepare::publication))
            .layer(DefaultBodyLimit::max(LARGEST))
            .layer(map_response(pages::with_headers))
            .layer(from_fn(tongue::heard))
            .with_state(self.clone())
    }

    fn server(&self) -> &Server {
        &self.0.server
    }

    /// The copy, answering in the language of the request.
    fn replica(&self) -> Asked<'_> {
        self.0.replica.asked_in(&self.1)
    }

    /// Does what blocks, where blocking harms nobody.
    async fn work<T: Send + 'static, F: Into<HttpFault> + Send + 'static>(
        &self,
        job: impl FnOnce(&Self) -> Result<T, F> + Send + 'static,
    ) -> Result<T, HttpFault> {
        let board = Self(self.0.clone(), Tongue::of_request());
        self.server().work(move |_| job(&board)).await
    }

    /// The address of this server: as devices know it, or else as the page asked for it.
    fn address(&self, headers: &HeaderMap) -> String {
        if let Some(address) = &self.0.config.address {
            return address.trim_end_matches('/').to_owned();
        }
        let scheme = if self.0.config.tls { "https" } else { "http" };
        let host = headers.get(HOST).and_then(|host| host.to_str().ok()).unwrap_or_default();
        format!("{scheme}://{host}")
    }

    /// Whether the page came over TLS.
    fn secure(&self, headers: &HeaderMap) -> bool {
        self.address(headers).starts_with("https://")
    }

    /// Refuses what doesn't come from a page of this server.
    fn own_page(&self, headers: &HeaderMap) -> Result<(), HttpFault> {
        let mut origins = headers.get_all(ORIGIN).iter();
        let own = match (origins.next(), origins.next()) {
            (Some(origin), None) => origin.as_bytes() == self.address(headers).as_bytes(),
            _ => false,
        };
        // A browser that tells more must not contradict it.
        let site = headers.get("sec-fetch-site").is_none_or(|site| site == "same-origin");
        if own && site {
            return Ok(());
        }
        let hint = "Open the board at the server's own address and try again there.";
        Err(HttpFault::forbidden("other-page", "this was not asked by the board's own page", hint))
    }

    /// A code of this board for a device to open.
    fn code(
        &self,
        headers: &HeaderMap,
        challenge: Option<String>,
        draft: Option<String>,
    ) -> Result<witnessmark_app::views::CodeOut, HttpFault> {
        let school = self.server().school().id();
        let send = DeskSend { school, address: self.address(headers), challenge, draft };
        send.code().map_err(|why| ShelfFault::Other(why.to_string()).into())
    }
}

/// Thirty-two fresh bytes, hexadecimal.
fn secret() -> Result<String, ShelfFault> {
    let mut fresh = [0; 32];
    getrandom::fill(&mut fresh).map_err(|why| ShelfFault::Other(why.to_string()))?;
    Ok(witnessmark_core::record::Digest(fresh).to_string())
}
