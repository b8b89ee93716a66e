//! What is told when a request can't be served: a page to a person, a fault to a program.

use axum::Json;
use axum::http::header::ACCEPT;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{Html, IntoResponse, Response};
use witnessmark_app::FaultView;

/// The fault, as the one who asks can read it.
pub fn refuse(status: StatusCode, headers: &HeaderMap, fault: &FaultView) -> Response {
    let accepts = headers.get(ACCEPT).and_then(|accept| accept.to_str().ok()).unwrap_or_default();
    if accepts.contains("text/html") {
        (status, Html(page(fault))).into_response()
    } else {
        (status, Json(fault)).into_response()
    }
}

fn page(fault: &FaultView) -> String {
    let (message, hint) = (escaped(&fault.message), escaped(&fault.hint));
    format!(
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\">\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\
         <meta name=\"color-scheme\" content=\"light dark\"><title>{message}</title>\
         <body style=\"font: 1.125rem/1.5 sans-serif; max-width: 34em; margin: 4rem auto; padding: 0 1rem\">\
         <h1 style=\"font-size: 1.5rem\">{message}</h1><p>{hint}</p></body></html>"
    )
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
