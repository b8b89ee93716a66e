//! Who looks: an extractor that takes signed-in pages only. What they may is asked of the log at each
//! request, never of the cookie.

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use axum::http::{HeaderMap, StatusCode};
use witnessmark_core::record::{DeviceId, Right, Role};

use super::{Board, cookie, passphrase};
use crate::ShelfFault;
use crate::http::HttpFault;

/// Somebody who is signed in.
#[derive(Clone, Debug)]
pub(super) struct Guest {
    /// The cookie's token.
    pub(super) token: String,
    /// By which device, and what its holder is today; none: by passphrase.
    pub(super) member: Option<(DeviceId, Role)>,
    /// How long, unix seconds.
    pub(super) until: i64,
}

impl Guest {
    /// Whether this one may prepare what the holder of the same device then signs.
    pub(super) fn may_prepare(&self) -> bool {
        self.member
            .as_ref()
            .is_some_and(|(_, role)| role.gives(Right::Defer, false) && role.gives(Right::Publish, false))
    }

    /// The device, where it may prepare.
    pub(super) fn instructor(&self) -> Result<&DeviceId, HttpFault> {
        match &self.member {
            Some((device, _)) if self.may_prepare() => Ok(device),
            Some(_) => {
                let hint = "Ask an instructor, or go on looking.";
                Err(HttpFault::forbidden("not-instructor", "only an instructor prepares anything here", hint))
            }
            None => {
                let hint = "Sign in with your own device: what you prepare here, you sign there.";
                Err(HttpFault::forbidden("no-device", "a passphrase lets you look, and no more", hint))
            }
        }
    }
}

impl Board {
    /// Who shows this cookie; none where nobody is signed in by it any more. Blocks.
    pub(super) fn guest(&self, token: &str) -> Result<Option<Guest>, ShelfFault> {
        let (school, now) = (self.server().school(), self.server().now());
        let Some(session) = school.shelf().session(school.on_shelf(), token, now)? else { return Ok(None) };
        let member = match &session.device {
            None => passphrase::opens(school, session.made)?.then_some(None),
            Some(device) => school.members().role(device, now).map(|role| Some((device.clone(), role))),
        };
        let Some(member) = member else {
            school.shelf().session_drop(school.on_shelf(), token)?;
            return Ok(None);
        };
        Ok(Some(Guest { token: token.to_owned(), member, until: session.until }))
    }

    /// The same, from a request.
    pub(super) async fn shown_by(&self, headers: &HeaderMap) -> Result<Option<Guest>, HttpFault> {
        match cookie::get(headers, cookie::SESSION, self.secure(headers)) {
            Some(token) => self.work(move |board| board.guest(&token)).await,
            None => Ok(None),
        }
    }
}

impl FromRequestParts<Board> for Guest {
    type Rejection = HttpFault;

    async fn from_request_parts(parts: &mut Parts, board: &Board) -> Result<Self, HttpFault> {
        let guest = board.shown_by(&parts.headers).await?;
        guest.ok_or_else(|| {
            // Whoever guesses is slowed down like anybody who signs nothing.
            let fault = HttpFault::new(
                StatusCode::UNAUTHORIZED,
                "signed-out",
                "nobody is signed in on this page",
                "Sign in with your device.",
            );
            board.server().open(&parts.headers, &parts.extensions, 1).err().unwrap_or(fault)
        })
    }
}
