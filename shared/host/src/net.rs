//! The network, as the app asks for it. For the screens: nothing is pushed to them; the call
//! `school` (its `sync`) tells at any time how it stands, and costs no network.

pub mod address;
mod asked;
mod door;
mod line;
mod rounds;

use std::error::Error;
use std::io::Read;
use std::sync::{Mutex, OnceLock};
use std::time::{Duration, Instant};

use reqwest::blocking::{Client, ClientBuilder, Response};
use reqwest::header::{ACCEPT_ENCODING, CONTENT_LENGTH, CONTENT_RANGE, CONTENT_TYPE, HeaderName};
use reqwest::{Certificate, Method, redirect};
use witnessmark_app::Request;
use witnessmark_core::said::Said;
use witnessmark_sync::client::Answer;
use witnessmark_sync::wire::{Draft, SchoolCard};

pub use asked::{confirm, draft, follow, look, net_call, sign, waiting};
pub use door::Door;
pub use line::{Asking, Line};
pub use rounds::sync;

/// How long a connection may take to come about.
const CONNECT: Duration = Duration::from_secs(5);
/// How long nothing may come: until the answer begins, and then between its parts.
const SILENCE: Duration = Duration::from_secs(30);
/// How long an answer may take in all; what came by then is kept, and the next round goes on there.
const WHOLE: Duration = Duration::from_secs(300);
/// Most bytes of an answer, unpacked. The largest there is by the protocol is a page of the log, about a
/// megabyte; a single record may be longer.
const LARGEST: u64 = 32 * 1024 * 1024;
/// Bytes read at once.
const PIECE: usize = 64 * 1024;
/// Names a file of certificates (PEM) to be trusted beside the platform's.
const OWN_ROOTS: &str = "WITNESSMARK_CA";

/// Why nothing came back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unsent {
    /// It would go unencrypted to another machine.
    Plain,
    /// Nothing came within 30 seconds.
    Silent,
    /// More came than is taken.
    TooLarge,
    /// No connection, in the system's words.
    Unreachable(String),
}

impl Unsent {
    /// In words.
    pub fn said(&self) -> Said {
        match self {
            Self::Plain => Said::new("net-plain"),
            Self::Silent => Said::new("net-silent").number("seconds", SILENCE.as_secs() as f64),
            Self::TooLarge => Said::new("net-too-large").number("most", (LARGEST / 1024 / 1024) as f64),
            Self::Unreachable(why) => Said::new("net-unreachable").text("why", why),
        }
    }
}

/// The way to school servers: one a process.
#[derive(Default)]
pub struct Net {
    /// For `https`. Made when it is first needed: reading the platform's roots takes time.
    secure: OnceLock<Result<Client, String>>,
    /// For `http`, which stays on this machine.
    plain: OnceLock<Result<Client, String>>,
    /// Held while a round goes on.
    round: Mutex<()>,
    /// What was shown last, by address: what is agreed to is what was shown, whatever the server says by then.
    looked: Mutex<Option<(String, SchoolCard)>>,
    /// The same for what the board prepared, by the text of its code.
    opened: Mutex<Option<(String, Draft)>>,
}

impl Net {
    /// Makes the request and gives what came back, be it a refusal or only a part.
    ///
    /// # Errors
    /// [`Unsent`] where nothing came back.
    pub fn send(&self, request: &Request) -> Result<Answer, Unsent> {
        if !address::may_be_asked(&request.url) {
            return Err(Unsent::Plain);
        }
        let unreachable = |why: &dyn ToString| Unsent::Unreachable(why.to_string());
        let client = if request.url.starts_with("https:") {
            self.secure.get_or_init(|| client(true))
        } else {
            self.plain.get_or_init(|| client(false))
        };
        let client = client.as_ref().map_err(|why| unreachable(why))?;
        let method = Method::from_bytes(request.method.as_bytes()).map_err(|why| unreachable(&why))?;
        let head = method == Method::HEAD;
        let mut asked = client.request(method, &request.url);
        for (name, value) in &request.headers {
            asked = asked.header(name, value);
        }
        if head || request.headers.iter().any(|(name, _)| name == "range") {
            // Lengths and parts are those of the thing itself, not of it packed.
            asked = asked.header(ACCEPT_ENCODING, "identity");
        }
        if !request.body.is_empty() {
            asked = asked.body(request.body.clone());
        }
        let begun = Instant::now();
        let came = asked.send().map_err(|why| unsent(&why))?;
        answer(came, head, begun)
    }
}

fn answer(mut came: Response, head: bool, begun: Instant) -> Result<Answer, Unsent> {
    let header = |name: HeaderName| Some(came.headers().get(name)?.to_str().ok()?.to_owned());
    let length = if head {
        header(CONTENT_LENGTH).and_then(|length| length.parse().ok())
    } else {
        header(CONTENT_RANGE).and_then(|range| range.rsplit_once('/')?.1.parse().ok())
    };
    let mut answer = Answer {
        status: came.status().as_u16(),
        media: header(CONTENT_TYPE),
        length,
        body: Vec::new(),
        broken: false,
    };
    let mut piece = vec![0; PIECE];
    loop {
        match came.read(&mut piece) {
            Ok(0) => return Ok(answer),
            Ok(read) => answer.body.extend_from_slice(piece.get(..read).unwrap_or_default()),
            Err(_) => {
                answer.broken = true;
                return Ok(answer);
            }
        }
        if u64::try_from(answer.body.len()).unwrap_or(u64::MAX) > LARGEST {
            return Err(Unsent::TooLarge);
        }
        if begun.elapsed() > WHOLE {
            answer.broken = true;
            return Ok(answer);
        }
    }
}

fn client(secure: bool) -> Result<Client, String> {
    // Another part of this program may have chosen already; it is the same choice everywhere.
    let _ = rustls::crypto::ring::default_provider().install_default();
    let builder = Client::builder()
        .user_agent(concat!("witnessmark/", env!("CARGO_PKG_VERSION")))
        .connect_timeout(CONNECT)
        .timeout(SILENCE)
        .redirect(redirect::Policy::none())
        .referer(false);
    let builder = if secure {
        with_own_roots(builder)?
    } else {
        // No proxy has to do with what stays on this machine.
        builder.no_proxy().tls_certs_only([])
    };
    builder.build().map_err(|why| cause(&why))
}

fn with_own_roots(builder: ClientBuilder) -> Result<ClientBuilder, String> {
    let Some(file) = std::env::var_os(OWN_ROOTS) else { return Ok(builder) };
    let named = |why: String| format!("{OWN_ROOTS}: {}: {why}", file.display());
    let pem = std::fs::read(&file).map_err(|why| named(why.to_string()))?;
    let roots = Certificate::from_pem_bundle(&pem).map_err(|why| named(cause(&why)))?;
    if roots.is_empty() {
        return Err(named("no certificate".into()));
    }
    Ok(builder.tls_certs_merge(roots))
}

fn unsent(why: &reqwest::Error) -> Unsent {
    if why.is_timeout() { Unsent::Silent } else { Unsent::Unreachable(cause(why)) }
}

/// The innermost cause: those around it say only that a request failed.
fn cause(fault: &dyn Error) -> String {
    let mut innermost = fault;
    while let Some(source) = innermost.source() {
        innermost = source;
    }
    innermost.to_string()
}
