//! Who may come in: the one browser that opened the printed address, from this machine.

use std::sync::Mutex;

use axum::http::HeaderMap;
use axum::http::header::{COOKIE, HOST, ORIGIN};
use subtle::ConstantTimeEq;
use witnessmark_app::Fault;

/// Bytes of randomness in the token and in the cookie.
const BYTES: usize = 32;

/// The gate.
pub struct Gate {
    port: u16,
    token: Mutex<Option<String>>,
    session: String,
}

impl Gate {
    /// A gate for this port, and the token that opens it once.
    pub fn new(port: u16) -> Result<(Self, String), Fault> {
        let token = secret()?;
        let gate = Self { port, token: Mutex::new(Some(token.clone())), session: secret()? };
        Ok((gate, token))
    }

    /// Takes the token: true the first time it is the right one, and never again.
    pub fn takes(&self, given: &str) -> bool {
        let mut token = self.token.lock().unwrap_or_else(|poisoned| poisoned.into_inner());
        let right = token.as_ref().is_some_and(|token| same(token, given));
        if right {
            *token = None;
        }
        right
    }

    /// The cookie to be set by the browser that gave the token. Named after the port: the
    /// browser keeps cookies by host, and two servers shall not lock each other out.
    pub fn cookie(&self) -> String {
        format!("{}={}; Path=/; HttpOnly; SameSite=Strict", self.cookie_name(), self.session)
    }

    fn cookie_name(&self) -> String {
        format!("witnessmark-{}", self.port)
    }

    /// Whether the browser shows the cookie.
    pub fn knows(&self, headers: &HeaderMap) -> bool {
        let name = self.cookie_name();
        let cookies = headers.get_all(COOKIE).iter().filter_map(|cookies| cookies.to_str().ok());
        cookies
            .flat_map(|cookies| cookies.split(';'))
            .filter_map(|cookie| cookie.trim().split_once('='))
            .any(|(named, value)| named == name && same(value, &self.session))
    }

    /// Whether the request is meant for this server by its own name: a page elsewhere whose name was
    /// bent to this machine's address has another.
    pub fn is_own_host(&self, headers: &HeaderMap) -> bool {
        let mut hosts = headers.get_all(HOST).iter();
        match (hosts.next().and_then(|host| host.to_str().ok()), hosts.next()) {
            (Some(host), None) => self.names().iter().any(|own| own == host),
            _ => false,
        }
    }

    /// Whether the request comes from a page of this server, where the browser says from where.
    pub fn is_own_origin(&self, headers: &HeaderMap) -> bool {
        let names = self.names();
        headers.get_all(ORIGIN).iter().all(|origin| {
            let host = origin.to_str().ok().and_then(|origin| origin.strip_prefix("http://"));
            host.is_some_and(|host| names.iter().any(|own| own == host))
        })
    }

    fn names(&self) -> [String; 2] {
        [format!("127.0.0.1:{}", self.port), format!("localhost:{}", self.port)]
    }
}

/// In a time that tells nothing of where they differ.
fn same(a: &str, b: &str) -> bool {
    a.as_bytes().ct_eq(b.as_bytes()).into()
}

fn secret() -> Result<String, Fault> {
    let mut bytes = [0u8; BYTES];
    getrandom::fill(&mut bytes).map_err(|why| Fault::new("no-randomness").text("why", why))?;
    Ok(bytes.iter().map(|byte| format!("{byte:02x}")).collect())
}
