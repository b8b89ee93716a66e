//! What the server answers: the routes for devices, under `/v1`, and those for whoever looks after it.
//!
//! One table makes both the router and its OpenAPI document ([`endpoint`]). Requests of members are
//! signed ([`auth`]); what is open tells nothing but the school's card, its checkpoint and health.

mod auth;
mod checkpoint;
mod desk;
mod endpoint;
mod fault;
mod limits;
mod log;
mod observe;
mod openapi;
mod photos;
mod proofs;
mod records;
mod school;
mod server;
mod tend;
mod unread;
mod waiting;

use std::time::Duration;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::http::header::CACHE_CONTROL;
use axum::http::{HeaderValue, Method, StatusCode, Uri};
use axum::middleware::{from_fn_with_state, map_response};
use axum::response::Response;
use tower_http::compression::CompressionLayer;
use tower_http::timeout::TimeoutLayer;

use endpoint::Endpoint;

pub use auth::{Requester, WINDOW};
pub use fault::HttpFault;
pub use limits::Limits;
pub use server::Server;

/// Largest body, bytes.
const LARGEST: usize = 4 * 1024 * 1024;
/// How long one request may take, its body's coming included.
pub(crate) const PATIENCE: Duration = Duration::from_secs(60);

/// Every endpoint, in the order of the document.
fn endpoints() -> Vec<Endpoint> {
    let families = [
        school::endpoints(),
        checkpoint::endpoints(),
        waiting::endpoints(),
        log::endpoints(),
        records::endpoints(),
        proofs::endpoints(),
        photos::endpoints(),
        desk::endpoints(),
        openapi::endpoints_of_it(),
        tend::endpoints(),
    ];
    families.into_iter().flatten().collect()
}

/// All routes of a server, and those of `board` beside them.
pub fn router(server: &Server, board: Router) -> Router {
    let devices = endpoints().into_iter().fold(Router::new(), |router, endpoint| {
        let (path, serve) = endpoint.into_route();
        router.route(path, serve)
    });
    devices
        .layer(DefaultBodyLimit::max(LARGEST))
        .layer(map_response(kept_nowhere))
        .with_state(server.clone())
        .merge(board)
        .fallback(nothing_there)
        .method_not_allowed_fallback(no_such_method)
        .layer(TimeoutLayer::with_status_code(StatusCode::SERVICE_UNAVAILABLE, PATIENCE))
        .layer(CompressionLayer::new())
        .layer(from_fn_with_state(server.clone(), observe::observe))
}

/// A signed answer is one member's own; no cache on the way may keep it, unless it says so itself.
async fn kept_nowhere(mut response: Response) -> Response {
    response.headers_mut().entry(CACHE_CONTROL).or_insert(HeaderValue::from_static("no-store"));
    response
}

async fn nothing_there(uri: Uri) -> HttpFault {
    HttpFault::not_found(
        format!("there is nothing at {}", uri.path()),
        "See /v1/openapi.json for what there is.",
    )
}

async fn no_such_method(method: Method, uri: Uri) -> HttpFault {
    HttpFault::method(format!("{method} is nothing that {} answers to", uri.path()))
}
