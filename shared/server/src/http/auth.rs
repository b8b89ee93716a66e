//! Whose request it is: an extractor that takes signed requests of members only, their body with them.
//!
//! The order matters. A body is read only for a key that is known; a nonce is spent, and a key's
//! bucket drawn from, only by a good signature; what a key may is told only to its holder.

use axum::body::Bytes;
use axum::extract::{FromRequest, Request};
use axum::http::header::HOST;
use axum::http::request::Parts;
use witnessmark_core::record::{DeviceId, Role};
use witnessmark_sync::message::{self, Claim, Headers, MessageFault, Unsigned};

use super::unread::let_go;
use super::{HttpFault, Server};
use crate::ShelfFault;
use crate::school::{Carrier, Sender};

/// How far a request's `created` may be from the server's clock, either way, seconds.
pub const WINDOW: i64 = 300;

/// A member who has signed this request.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Requester {
    /// Who.
    pub sender: Sender,
    /// Whether the device's own key signed, and no courier.
    pub own_key: bool,
    /// The request's body, as signed.
    pub body: Bytes,
}

impl Requester {
    /// The member's device.
    pub fn device(&self) -> &DeviceId {
        &self.sender.device
    }
}

impl FromRequest<Server> for Requester {
    type Rejection = HttpFault;

    async fn from_request(request: Request, server: &Server) -> Result<Self, HttpFault> {
        let (parts, body) = request.into_parts();
        match begin(&parts, server).await {
            Ok((claim, carrier)) => {
                let request = Request::from_parts(parts.clone(), body);
                let body = Bytes::from_request(request, server).await?;
                finish(parts, body, claim, carrier, server).await
            }
            // Whoever guesses is slowed down like anybody who signs nothing.
            Err(fault) => {
                let_go(body).await;
                Err(server.open(&parts.headers, &parts.extensions, 1).err().unwrap_or(fault))
            }
        }
    }
}

/// What can be said before the body is read.
async fn begin(parts: &Parts, server: &Server) -> Result<(Claim, Carrier), HttpFault> {
    let headers = parts.headers.iter().map(|(name, value)| (name.as_str(), value.as_bytes()));
    let claim = Headers::pick(headers).and_then(|headers| message::read(&headers)).map_err(refused)?;
    if !server.answers_to(authority(parts)) {
        let hint = "Check the server's address in the app.";
        return Err(HttpFault::unsigned("other-server", "this server has another name", hint));
    }
    if claim.created.abs_diff(server.now()) > WINDOW.unsigned_abs() {
        let hint = "Set the clock of the device (or of the server): they differ by more than five minutes.";
        return Err(HttpFault::unsigned("clock", "the request was not signed just now", hint));
    }
    let keyid = claim.keyid.clone();
    let known = server.school().members().carrier(&keyid);
    let carrier = match known {
        Some(carrier) => Some(carrier),
        None => {
            let follow = move |server: &Server| {
                server.school().follow()?;
                Ok::<_, ShelfFault>(server.school().members().carrier(&keyid))
            };
            server.work(follow).await?
        }
    };
    carrier.map(|carrier| (claim, carrier)).ok_or_else(unknown_key)
}

/// What can be said after.
async fn finish(
    parts: Parts,
    body: Bytes,
    claim: Claim,
    carrier: Carrier,
    server: &Server,
) -> Result<Requester, HttpFault> {
    let unsigned = Unsigned {
        method: parts.method.as_str(),
        authority: authority(&parts),
        path: parts.uri.path(),
        query: parts.uri.query(),
        body: &body,
    };
    if let Err(fault) = claim.verify(&unsigned, &carrier.key) {
        return Err(server
            .open(&parts.headers, &parts.extensions, 1)
            .err()
            .unwrap_or_else(|| refused(fault)));
    }
    server.buckets().key(&claim.keyid)?;
    let role = server
        .work(move |server| {
            let school = server.school();
            if !school.shelf().nonce_take(school.on_shelf(), &claim.keyid.0, &claim.nonce, claim.created)? {
                let hint = "Sign each request anew, with a nonce of its own.";
                return Err(HttpFault::unsigned("replayed", "this request came before", hint));
            }
            school.follow()?;
            let members = school.members();
            // The key may have been taken away, or named by another, since it was looked up.
            let carrier = members.carrier(&claim.keyid).ok_or_else(unknown_key)?;
            let role = members.role(&carrier.device, server.now()).ok_or_else(outside)?;
            Ok((carrier, role))
        })
        .await?;
    let (carrier, role): (Carrier, Role) = role;
    Ok(Requester { sender: Sender { device: carrier.device, role }, own_key: carrier.own, body })
}

/// The name that the request was made to. Behind a proxy, the proxy must pass `Host` on as it came.
fn authority(parts: &Parts) -> &str {
    let host = parts.headers.get(HOST).and_then(|host| host.to_str().ok());
    host.or_else(|| parts.uri.authority().map(|authority| authority.as_str())).unwrap_or_default()
}

fn refused(fault: MessageFault) -> HttpFault {
    let (kind, hint) = match fault {
        MessageFault::Missing(_) => {
            ("unsigned", "Sign the request with the device's courier key (RFC 9421).")
        }
        MessageFault::Body => ("altered", "Send it again."),
        MessageFault::Forged | MessageFault::OtherKey => (
            "forged",
            "Sign what is sent: method, authority, path, query and body, as they reach the server.",
        ),
        _ => ("signature", "Sign it as /v1/openapi.json says."),
    };
    HttpFault::unsigned(kind, fault.to_string(), hint)
}

fn unknown_key() -> HttpFault {
    let hint = "Ask to be admitted: POST /v1/waiting.";
    HttpFault::unsigned("unknown-key", "no member has this key", hint)
}

fn outside() -> HttpFault {
    let hint = "Ask the school to admit this device.";
    HttpFault::forbidden("not-a-member", "this device is not a member of the school today", hint)
}
