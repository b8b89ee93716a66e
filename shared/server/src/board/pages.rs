//! The page's files, and the headers on everything of the board's.

use axum::extract::{Path, State};
use axum::http::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, CONTENT_TYPE, REFERRER_POLICY, X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};

use super::Board;
use crate::http::HttpFault;

/// Pages run only what this server gives them, send nothing elsewhere, and nobody frames them.
const POLICY: &str = "default-src 'self'; img-src 'self' data:; object-src 'none'; frame-ancestors 'none'; \
                      base-uri 'none'; form-action 'none'";

/// Puts the headers that all of the board has; what may be kept says so itself.
pub(super) async fn with_headers(mut response: Response) -> Response {
    let headers = response.headers_mut();
    for (name, value) in [
        (CONTENT_SECURITY_POLICY, POLICY),
        (X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (REFERRER_POLICY, "no-referrer"),
    ] {
        headers.insert(name, HeaderValue::from_static(value));
    }
    headers.entry(CACHE_CONTROL).or_insert(HeaderValue::from_static("no-store"));
    response
}

pub(super) async fn board(State(board): State<Board>) -> Response {
    match board.file("board.html") {
        Some(file) => file,
        None => {
            let hint = "Build the pages first (make ui), then this program.";
            let status = StatusCode::NOT_FOUND;
            HttpFault::new(
                status,
                "pages-not-built",
                "this program was built without the board's pages",
                hint,
            )
            .into_response()
        }
    }
}

pub(super) async fn mark(State(board): State<Board>) -> Result<Response, HttpFault> {
    board.file("mark.svg").ok_or_else(none)
}

/// Files whose names change with what is in them.
pub(super) async fn asset(
    State(board): State<Board>,
    Path(name): Path<String>,
) -> Result<Response, HttpFault> {
    let file = board.file(&format!("assets/{name}")).ok_or_else(none)?;
    Ok(([(CACHE_CONTROL, "public, max-age=31536000, immutable")], file).into_response())
}

fn none() -> HttpFault {
    HttpFault::not_found("this file is not here", "Load the page anew.")
}

impl Board {
    fn file(&self, path: &str) -> Option<Response> {
        let bytes = (self.0.config.pages)(path)?;
        Some(([(CONTENT_TYPE, media(path))], bytes).into_response())
    }
}

fn media(path: &str) -> &'static str {
    match path.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml",
        "woff2" => "font/woff2",
        _ => "application/octet-stream",
    }
}
