//! For whoever looks after the server: health, and what was counted.

use axum::extract::{Request, State};
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Response};

use super::endpoint::{Content, Endpoint, Who};
use super::server::peer;
use super::{HttpFault, Server};

pub(super) fn endpoints() -> Vec<Endpoint> {
    vec![
        Endpoint::get("/health", health)
            .about("Whether the server can answer: its database does, and its tree is loaded.")
            .who(Who::Open)
            .gives(200, "It can.", Content::Text("text/plain")),
        Endpoint::get("/metrics", metrics)
            .about("What was counted, as Prometheus text. Only for programs on the same machine.")
            .who(Who::Here)
            .gives(200, "What was counted.", Content::Text("text/plain")),
    ]
}

async fn health(State(server): State<Server>, request: Request) -> Result<&'static str, HttpFault> {
    server.open(request.headers(), request.extensions(), 1)?;
    server.work(|server| server.school().follow()).await?;
    Ok("ok\n")
}

async fn metrics(State(server): State<Server>, request: Request) -> Result<Response, HttpFault> {
    let here = peer(request.extensions()).is_some_and(|peer| peer.ip().to_canonical().is_loopback());
    // Behind a proxy everybody comes from this machine; a proxy says that it is one.
    let passed_on = ["x-forwarded-for", "forwarded", "via"];
    if !here || passed_on.iter().any(|name| request.headers().contains_key(*name)) {
        let hint = "Ask from the server's own machine.";
        return Err(HttpFault::forbidden("not-here", "this is told on the server's own machine only", hint));
    }
    let size = server.work(|server| server.school().follow()).await?;
    let text = server.metrics().text(size).map_err(HttpFault::internal)?;
    Ok(([(CONTENT_TYPE, "text/plain; version=0.0.4; charset=utf-8")], text).into_response())
}
