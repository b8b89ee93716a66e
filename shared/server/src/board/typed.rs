//! What a page sends: JSON, and only from this server's own page.

use axum::body::Bytes;
use axum::extract::{FromRequest, Request};
use axum::http::StatusCode;
use axum::http::header::CONTENT_TYPE;
use serde::de::DeserializeOwned;

use super::Board;
use crate::http::HttpFault;

/// A body.
pub(super) struct Typed<T>(pub(super) T);

impl<T: DeserializeOwned> FromRequest<Board> for Typed<T> {
    type Rejection = HttpFault;

    async fn from_request(request: Request, board: &Board) -> Result<Self, HttpFault> {
        board.own_page(request.headers())?;
        // A form of another page could send other types without asking first.
        let media = request.headers().get(CONTENT_TYPE).and_then(|media| media.to_str().ok());
        let media = media.unwrap_or_default().split(';').next().unwrap_or_default().trim();
        if !media.eq_ignore_ascii_case("application/json") {
            let hint = "Send it as application/json.";
            let status = StatusCode::UNSUPPORTED_MEDIA_TYPE;
            return Err(HttpFault::new(status, "media", "the body is not JSON", hint));
        }
        let bytes = Bytes::from_request(request, board).await?;
        let read = serde_json::from_slice(&bytes);
        read.map(Self).map_err(|why| {
            HttpFault::malformed(format!("what was sent can't be read: {why}"), "Load the page anew.")
        })
    }
}
