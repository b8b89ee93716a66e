//! Photos, by parts both ways, named by the SHA-256 of the whole.

mod range;

use axum::body::Body;
use axum::extract::rejection::PathRejection;
use axum::extract::{Path, State};
use axum::http::header::{
    ACCEPT_RANGES, CACHE_CONTROL, CONTENT_LENGTH, CONTENT_RANGE, CONTENT_TYPE, RANGE, X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use witnessmark_core::record::{Digest, Role};

use super::endpoint::{Content, Endpoint, Form};
use super::records::as_it_is;
use super::{HttpFault, Requester, Server};
use crate::shelf::PhotoState;
use range::Part;

/// Largest photo, bytes.
const LARGEST: u64 = 20 * 1024 * 1024;
/// Most of it told at once.
const MOST: u64 = 1024 * 1024;
/// What a photo may be. Nothing that a browser would run.
const MEDIA: &[&str] = &["image/jpeg", "image/png", "image/webp"];
const PATH: &str = "/v1/photo/{digest}";
const PHOTO: &str = "The photo: the SHA-256 of its bytes.";

pub(super) fn endpoints() -> Vec<Endpoint> {
    let named = |endpoint: Endpoint| endpoint.in_path("digest", Form::Digest, PHOTO);
    vec![
        named(Endpoint::head(PATH, state))
            .about("How much of a photo is here.")
            .gives(200, "All of it; Content-Length is its length.", Content::Nothing)
            .gives(206, "Its beginning; Content-Length says how much.", Content::Nothing),
        named(Endpoint::get(PATH, get))
            .about("A part of a photo; the server may send less than was asked for.")
            .header("Range", false, Form::Any, "The part, as bytes=FIRST-LAST.")
            .gives(206, "The part that Content-Range names.", Content::Bytes(MEDIA)),
        named(Endpoint::put(PATH, put))
            .about("Takes a part of a photo, in order; a part that is here already may come again.")
            .header(
                "Content-Range",
                false,
                Form::Text("^bytes [0-9]+-[0-9]+/[0-9]+$"),
                "The part, as bytes FIRST-LAST/TOTAL; without it, the body is the whole.",
            )
            .takes(Content::Bytes(MEDIA))
            .gives(201, "It is whole, and its bytes fit its name.", Content::Nothing)
            .gives(202, "More is to come.", Content::Nothing),
    ]
}

async fn state(
    State(server): State<Server>,
    digest: Result<Path<String>, PathRejection>,
    _: Requester,
) -> Result<Response, HttpFault> {
    let digest = named(digest)?;
    let state = server.work(move |server| server.school().photo_state(digest)).await?;
    // Not how such an answer usually looks (RFC 9110 § 15.3.7): its length is what is here, so that a
    // device knows from where to go on.
    let (status, length) = match state.ok_or_else(none)? {
        PhotoState { whole: true, total, .. } => (StatusCode::OK, total),
        PhotoState { have, .. } => (StatusCode::PARTIAL_CONTENT, have),
    };
    Ok((status, [(CONTENT_LENGTH, length.to_string())], Body::empty()).into_response())
}

async fn get(
    State(server): State<Server>,
    digest: Result<Path<String>, PathRejection>,
    headers: HeaderMap,
    _: Requester,
) -> Result<Response, HttpFault> {
    let digest = named(digest)?;
    let asked = headers.get(RANGE).and_then(|range| range.to_str().ok()).map(str::to_owned);
    let found = move |server: &Server| {
        let school = server.school();
        let total = match school.photo_state(digest)? {
            Some(PhotoState { whole: true, total, .. }) => total,
            _ => return Err(none()),
        };
        let range = range::wanted(asked.as_deref(), total).ok_or_else(|| unsatisfiable(total))?;
        let upto = range.end.min(range.start.saturating_add(MOST));
        let most = usize::try_from(upto.saturating_sub(range.start)).unwrap_or(usize::MAX);
        let (media, bytes) = school.photo_read(digest, range.start, most)?.ok_or_else(none)?;
        let part = Part { first: range.start, length: bytes.len() as u64, total };
        Ok((media, part, bytes))
    };
    let (media, part, bytes) = server.work(found).await?;
    // Whatever it is, no browser is to take it for something else; and it never changes.
    let headers = [
        (
            CONTENT_TYPE,
            MEDIA.iter().find(|known| **known == media).unwrap_or(&"application/octet-stream").to_string(),
        ),
        (CONTENT_RANGE, part.to_string()),
        (ACCEPT_RANGES, "bytes".into()),
        (X_CONTENT_TYPE_OPTIONS, "nosniff".into()),
        (CACHE_CONTROL, "private, max-age=31536000, immutable".into()),
    ];
    Ok((StatusCode::PARTIAL_CONTENT, headers, bytes).into_response())
}

async fn put(
    State(server): State<Server>,
    digest: Result<Path<String>, PathRejection>,
    headers: HeaderMap,
    requester: Requester,
) -> Result<StatusCode, HttpFault> {
    let digest = named(digest)?;
    as_it_is(&headers)?;
    if requester.sender.role < Role::Pilot {
        let hint = "Ask the school for another role, if you are to do more than look on.";
        return Err(HttpFault::forbidden("viewer", "a viewer's photos are not taken", hint));
    }
    let media = text(&headers, CONTENT_TYPE);
    let Some(media) = MEDIA.iter().find(|known| Some(**known) == media.as_deref()) else {
        return Err(HttpFault::media(
            "a photo is image/jpeg, image/png or image/webp",
            "Send it as one of these.",
        ));
    };
    let length = requester.body.len() as u64;
    let part = match text(&headers, CONTENT_RANGE) {
        None => Part { first: 0, length, total: length },
        Some(range) => range
            .parse::<Part>()
            .ok()
            .filter(|part| part.length == length)
            .ok_or_else(|| HttpFault::malformed("Content-Range doesn't fit the body", RANGE_HINT))?,
    };
    if part.total == 0 {
        return Err(HttpFault::malformed("the photo is empty", RANGE_HINT));
    }
    if part.total > LARGEST {
        return Err(HttpFault::too_large(
            format!("the photo has more than {LARGEST} bytes"),
            "Send a smaller copy.",
        ));
    }
    let state = server
        .work(move |server| server.school().photo_put(digest, media, part.first, part.total, &requester.body))
        .await?;
    Ok(if state.whole { StatusCode::CREATED } else { StatusCode::ACCEPTED })
}

const RANGE_HINT: &str = "Write it as bytes FIRST-LAST/TOTAL.";

fn text(headers: &HeaderMap, name: axum::http::HeaderName) -> Option<String> {
    headers.get(name).map(|value| String::from_utf8_lossy(value.as_bytes()).into_owned())
}

fn named(digest: Result<Path<String>, PathRejection>) -> Result<Digest, HttpFault> {
    let Path(digest) = digest?;
    digest
        .parse()
        .map_err(|why: String| HttpFault::malformed(why, "Name the photo by the SHA-256 of its bytes."))
}

fn none() -> HttpFault {
    HttpFault::not_found("this photo is not here", "Its author's device will send it when it can.")
}

fn unsatisfiable(total: u64) -> HttpFault {
    let message = format!("the photo has {total} bytes");
    HttpFault::new(
        StatusCode::RANGE_NOT_SATISFIABLE,
        "range",
        message,
        "Ask for bytes=FIRST-LAST below that.",
    )
}
