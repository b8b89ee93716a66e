//! Signing in: by a device that opens the page's code, or by passphrase; and out.

use axum::Json;
use axum::extract::{FromRequest, Path, Request, State};
use axum::http::header::{RETRY_AFTER, SET_COOKIE};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{AppendHeaders, IntoResponse, Response};
use serde::{Deserialize, Serialize};
use witnessmark_app::views::CodeOut;
use witnessmark_core::record::DeviceId;

use super::guest::Guest;
use super::passphrase::{self, Tried};
use super::typed::Typed;
use super::{Board, cookie, secret};
use crate::http::HttpFault;
use crate::shelf::Session;

/// How long a page's code can be confirmed, seconds.
const CODE: i64 = 5 * 60;
/// How long a session lasts, seconds.
const SESSION: i64 = 12 * 60 * 60;
/// What asking for a code, and trying a passphrase, count among requests that nobody signed.
const CODE_COST: u32 = 10;
const TRY_COST: u32 = 50;

/// Nothing, as JSON: a request that only its being sent matters of.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Nothing {}

/// A page's code.
#[derive(Serialize)]
struct Begun {
    id: String,
    code: CodeOut,
    /// Seconds that it can be confirmed.
    seconds: i64,
}

/// How far a sign-in is.
#[derive(Serialize)]
struct Polled {
    signed_in: bool,
}

/// A passphrase.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Words {
    passphrase: String,
}

pub(super) async fn begin(State(board): State<Board>, request: Request) -> Result<Response, HttpFault> {
    board.server().open(request.headers(), request.extensions(), CODE_COST)?;
    let headers = request.headers().clone();
    let Typed(Nothing {}) = Typed::from_request(request, &board).await?;
    let (id, token) = (secret()?, secret()?);
    let code = board.code(&headers, Some(id.clone()), None)?;
    let page = cookie::set(cookie::PAGE, &token, CODE, board.secure(&headers));
    let begun = Begun { id: id.clone(), code, seconds: CODE };
    board
        .work(move |board| {
            let (school, until) = (board.server().school(), board.server().now().saturating_add(CODE));
            school.shelf().challenge_put(school.on_shelf(), &id, &token, until)
        })
        .await?;
    Ok(([(SET_COOKIE, page)], Json(begun)).into_response())
}

/// Only the page that asked for the code has the cookie that takes the session.
pub(super) async fn poll(
    State(board): State<Board>,
    Path(id): Path<String>,
    request: Request,
) -> Result<Response, HttpFault> {
    board.server().open(request.headers(), request.extensions(), 1)?;
    let secure = board.secure(request.headers());
    let Some(token) = cookie::get(request.headers(), cookie::PAGE, secure) else { return Err(gone()) };
    let device = board
        .work(move |board| {
            let (school, now) = (board.server().school(), board.server().now());
            let claimed = school.shelf().challenge_claim(school.on_shelf(), &id, &token, now)?;
            let there = claimed.is_some() || school.shelf().challenge(school.on_shelf(), &id, now)?.is_some();
            if !there {
                return Err(gone());
            }
            if claimed.as_ref().is_some_and(|device| school.members().role(device, now).is_none()) {
                let hint = "Ask the school to admit this device.";
                return Err(HttpFault::forbidden("not-a-member", "this device is no member today", hint));
            }
            Ok(claimed)
        })
        .await?;
    match device {
        None => Ok(Json(Polled { signed_in: false }).into_response()),
        Some(device) => board.let_in(Some(device), secure).await,
    }
}

fn gone() -> HttpFault {
    HttpFault::new(
        StatusCode::GONE,
        "code-gone",
        "this code was not confirmed in time",
        "Ask for a new code.",
    )
}

pub(super) async fn by_passphrase(
    State(board): State<Board>,
    request: Request,
) -> Result<Response, HttpFault> {
    board.server().open(request.headers(), request.extensions(), TRY_COST)?;
    let secure = board.secure(request.headers());
    let Typed(Words { passphrase }) = Typed::from_request(request, &board).await?;
    // The semaphore is never closed.
    let _one = board.0.trying.acquire().await.ok();
    let attempt = move |board: &Board| {
        let (school, now) = (board.server().school(), board.server().now());
        passphrase::attempt(school, &passphrase, now)
    };
    match board.work(attempt).await? {
        Tried::Right => board.let_in(None, secure).await,
        Tried::Wrong => {
            let hint = "Try again, or sign in with your device.";
            Err(HttpFault::forbidden("passphrase-wrong", "this is not the passphrase", hint))
        }
        Tried::Off => {
            let hint = "Sign in with your device.";
            Err(HttpFault::forbidden("passphrase-off", "this board has no passphrase", hint))
        }
        Tried::TooOften(seconds) => {
            let hint = "Wait, or sign in with your device: that goes on.";
            let message = format!("too many wrong passphrases; wait {} minutes", seconds.div_ceil(60));
            let fault = HttpFault::new(StatusCode::TOO_MANY_REQUESTS, "passphrase-too-often", message, hint);
            Ok((AppendHeaders([(RETRY_AFTER, seconds.to_string())]), fault).into_response())
        }
    }
}

pub(super) async fn out(
    State(board): State<Board>,
    headers: HeaderMap,
    guest: Guest,
    Typed(Nothing {}): Typed<Nothing>,
) -> Result<Response, HttpFault> {
    board
        .work(move |board| {
            let school = board.server().school();
            school.shelf().session_drop(school.on_shelf(), &guest.token)
        })
        .await?;
    let gone = cookie::set(cookie::SESSION, "", 0, board.secure(&headers));
    Ok((StatusCode::NO_CONTENT, [(SET_COOKIE, gone)]).into_response())
}

impl Board {
    /// Begins a session. Its token is a new one: what was known before it opens nothing.
    async fn let_in(&self, device: Option<DeviceId>, secure: bool) -> Result<Response, HttpFault> {
        let token = secret()?;
        let session = cookie::set(cookie::SESSION, &token, SESSION, secure);
        let page = cookie::set(cookie::PAGE, "", 0, secure);
        self.work(move |board| {
            let (school, made) = (board.server().school(), board.server().now());
            let session = Session { device, made, until: made.saturating_add(SESSION) };
            school.shelf().session_put(school.on_shelf(), &token, &session)
        })
        .await?;
        let cookies = AppendHeaders([(SET_COOKIE, session), (SET_COOKIE, page)]);
        Ok((cookies, Json(Polled { signed_in: true })).into_response())
    }
}
