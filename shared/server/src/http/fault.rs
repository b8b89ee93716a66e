//! What is told when a request can't be answered: a status, and a [`WireFault`].

use axum::Json;
use axum::extract::rejection::{BytesRejection, PathRejection, QueryRejection};
use axum::http::header::RETRY_AFTER;
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};
use witnessmark_sync::wire::WireFault;

use crate::{Refusal, ShelfFault};

/// How soon a server that is busy may be asked again, seconds.
const SOON: u64 = 5;

/// Why a request isn't answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HttpFault {
    status: StatusCode,
    fault: WireFault,
    retry_after: Option<u64>,
}

impl HttpFault {
    /// Of this status, kind and words.
    pub fn new(status: StatusCode, kind: &str, message: impl Into<String>, hint: &str) -> Self {
        let fault = WireFault { kind: kind.into(), message: message.into(), hint: hint.into() };
        Self { status, fault, retry_after: None }
    }

    /// 400.
    pub fn malformed(message: impl Into<String>, hint: &str) -> Self {
        Self::new(StatusCode::BAD_REQUEST, "malformed", message, hint)
    }

    /// 404.
    pub fn not_found(message: impl Into<String>, hint: &str) -> Self {
        Self::new(StatusCode::NOT_FOUND, "not-found", message, hint)
    }

    /// 405.
    pub(super) fn method(message: String) -> Self {
        Self::new(
            StatusCode::METHOD_NOT_ALLOWED,
            "method",
            message,
            "See /v1/openapi.json for what there is.",
        )
    }

    /// 401.
    pub(super) fn unsigned(kind: &str, message: impl Into<String>, hint: &str) -> Self {
        Self::new(StatusCode::UNAUTHORIZED, kind, message, hint)
    }

    /// 403.
    pub fn forbidden(kind: &str, message: impl Into<String>, hint: &str) -> Self {
        Self::new(StatusCode::FORBIDDEN, kind, message, hint)
    }

    /// 413.
    pub(super) fn too_large(message: impl Into<String>, hint: &str) -> Self {
        Self::new(StatusCode::PAYLOAD_TOO_LARGE, "too-large", message, hint)
    }

    /// 415.
    pub(super) fn media(message: &str, hint: &str) -> Self {
        Self::new(StatusCode::UNSUPPORTED_MEDIA_TYPE, "media", message, hint)
    }

    /// 429.
    pub fn too_often(seconds: u64) -> Self {
        let hint = "Wait as long as Retry-After says; nothing is lost.";
        let fault = Self::new(StatusCode::TOO_MANY_REQUESTS, "too-often", "too many requests", hint);
        Self { retry_after: Some(seconds), ..fault }
    }

    /// 503.
    pub(super) fn busy() -> Self {
        let hint = "Try again in a moment; nothing is lost.";
        let fault = Self::new(StatusCode::SERVICE_UNAVAILABLE, "busy", "the server is busy", hint);
        Self { retry_after: Some(SOON), ..fault }
    }

    /// 500: the reason is for whoever looks after the server, and goes to the log.
    pub(super) fn internal(why: impl std::fmt::Display) -> Self {
        tracing::error!(%why, "a request failed");
        let hint = "Try again later; nothing is lost. Tell whoever looks after the server.";
        Self::new(StatusCode::INTERNAL_SERVER_ERROR, "internal", "the server has a fault of its own", hint)
    }
}

impl From<ShelfFault> for HttpFault {
    fn from(fault: ShelfFault) -> Self {
        match fault {
            ShelfFault::Busy => Self::busy(),
            ShelfFault::Unreachable(why) => {
                tracing::error!(%why, "the database can't be reached");
                Self::busy()
            }
            ShelfFault::Full => {
                tracing::error!("the database's disk is full");
                let hint = "Tell whoever looks after the server; what you have stays with you.";
                Self::new(StatusCode::INSUFFICIENT_STORAGE, "full", "the server has no room left", hint)
            }
            ShelfFault::Refused(refusal) => refusal.into(),
            other => Self::internal(other),
        }
    }
}

impl From<Refusal> for HttpFault {
    fn from(refusal: Refusal) -> Self {
        let (status, hint) = match refusal {
            Refusal::Gap { .. } | Refusal::Differs | Refusal::OtherTotal { .. } => {
                (StatusCode::CONFLICT, "Ask how much of it is here (HEAD), and go on from there.")
            }
            Refusal::WrongDigest => (StatusCode::UNPROCESSABLE_ENTITY, "Send it anew from its first byte."),
            Refusal::TooManyWaiting => {
                (StatusCode::SERVICE_UNAVAILABLE, "Ask the school to admit those who wait.")
            }
            _ => (StatusCode::BAD_REQUEST, "See /v1/openapi.json for what can be sent."),
        };
        let retry_after = (status == StatusCode::SERVICE_UNAVAILABLE).then_some(60 * SOON);
        let fault = Self::new(status, "refused", refusal.to_string(), hint);
        Self { retry_after, ..fault }
    }
}

impl From<QueryRejection> for HttpFault {
    fn from(why: QueryRejection) -> Self {
        Self::malformed(why.body_text(), "See /v1/openapi.json for what can be asked.")
    }
}

impl From<PathRejection> for HttpFault {
    fn from(why: PathRejection) -> Self {
        Self::malformed(why.body_text(), "See /v1/openapi.json for what can be asked.")
    }
}

impl From<BytesRejection> for HttpFault {
    fn from(why: BytesRejection) -> Self {
        if why.status() == StatusCode::PAYLOAD_TOO_LARGE {
            return Self::too_large("the body is larger than is taken here", "Send less at once.");
        }
        Self::malformed("the body broke off", "Send it again; nothing of it was kept.")
    }
}

impl IntoResponse for HttpFault {
    fn into_response(self) -> Response {
        let mut response = (self.status, Json(self.fault)).into_response();
        if let Some(seconds) = self.retry_after {
            response.headers_mut().insert(RETRY_AFTER, HeaderValue::from(seconds));
        }
        if self.status == StatusCode::UNAUTHORIZED {
            // RFC 9110 § 11.6.1 asks for a challenge; RFC 9421 registers no scheme of its own.
            let scheme = HeaderValue::from_static("Signature");
            response.headers_mut().insert(axum::http::header::WWW_AUTHENTICATE, scheme);
        }
        response
    }
}
