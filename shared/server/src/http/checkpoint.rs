//! The server's signed word on how long its log is.

use axum::extract::{Request, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE, ETAG, IF_NONE_MATCH};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::endpoint::{Content, Endpoint, Form, Who};
use super::{HttpFault, Server};

const TEXT: &str = "text/plain; charset=utf-8";

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/v1/checkpoint", checkpoint)
            .about("How long the log is, and its root: a signed note (C2SP tlog-checkpoint).")
            .who(Who::Open)
            .header("If-None-Match", false, Form::Any, "The ETag of a checkpoint at hand.")
            .gives(200, "The checkpoint. Its ETag is the log's length.", Content::Text("text/plain"))
            .gives(304, "Nothing was added since.", Content::Nothing),
    ]
}

async fn checkpoint(State(server): State<Server>, request: Request) -> Result<Response, HttpFault> {
    server.open(request.headers(), request.extensions(), 1)?;
    let (size, note) = server.work(|server| server.school().checkpoint()).await?;
    let tag = format!("\"{size}\"");
    let headers = [(ETAG, tag.clone()), (CACHE_CONTROL, "no-cache".into())];
    if matches(request.headers(), &tag) {
        return Ok((StatusCode::NOT_MODIFIED, headers).into_response());
    }
    Ok((headers, [(CONTENT_TYPE, TEXT)], note).into_response())
}

/// RFC 9110 § 13.1.2, by the weak comparison (§ 8.8.3.2): a compressed body has a weak tag.
fn matches(headers: &HeaderMap, tag: &str) -> bool {
    let tags = headers.get_all(IF_NONE_MATCH).iter().filter_map(|tags| tags.to_str().ok());
    let mut tags = tags.flat_map(|tags| tags.split(',')).map(str::trim);
    tags.any(|one| one == "*" || one.strip_prefix("W/").unwrap_or(one) == tag)
}
