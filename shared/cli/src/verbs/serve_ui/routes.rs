//! What can be asked of the server: the UI's files, and the app's calls.

use std::sync::{Arc, Mutex};

use axum::body::{Body, to_bytes};
use axum::extract::{Request, State};
use axum::http::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, REFERRER_POLICY, SET_COOKIE, X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode};
use axum::middleware::{Next, from_fn_with_state, map_response};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{any, post};
use axum::{Json, Router};
use witnessmark_app::{App, Fault};
use witnessmark_host::{Asking, Line};

use super::files;
use super::gate::Gate;
use super::refusal::refuse;

/// Largest call, bytes: a picture as a camera makes it, in base64.
const LARGEST: usize = 64 * 1024 * 1024;

/// Pages run only what this server gives them, and nobody frames them.
const POLICY: &str = "default-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; \
                      object-src 'none'; frame-ancestors 'none'; base-uri 'none'";

#[derive(Clone)]
struct Server {
    gate: Arc<Gate>,
    line: Arc<Line<Mutex<Result<App, Fault>>>>,
}

/// The server's routes, guarded.
pub fn all(gate: Gate, app: App) -> Router {
    let server = Server { gate: Arc::new(gate), line: Line::new(Mutex::new(Ok(app))) };
    Router::new()
        .route("/call", post(call))
        .fallback(any(file))
        .layer(from_fn_with_state(server.clone(), guard))
        .layer(map_response(with_headers))
        .with_state(server)
}

async fn with_headers(mut response: Response) -> Response {
    let headers = response.headers_mut();
    for (name, value) in [
        (CONTENT_SECURITY_POLICY, POLICY),
        (X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (REFERRER_POLICY, "no-referrer"),
        (CACHE_CONTROL, "no-store"),
    ] {
        headers.insert(name, HeaderValue::from_static(value));
    }
    response
}

/// Lets in what comes from the one browser; everything else goes no further.
async fn guard(State(server): State<Server>, request: Request, next: Next) -> Response {
    let headers = request.headers();
    let own = server.gate.is_own_host(headers)
        && (request.method() != Method::POST || server.gate.is_own_origin(headers));
    if !own {
        return server.refuse(StatusCode::FORBIDDEN, headers, "not-this-server").await;
    }
    if let Some(token) = token(&request) {
        return if server.gate.takes(token) {
            ([(SET_COOKIE, server.gate.cookie())], Redirect::to("/")).into_response()
        } else {
            server.refuse(StatusCode::FORBIDDEN, headers, "token-used").await
        };
    }
    if !server.gate.knows(headers) {
        return server.refuse(StatusCode::FORBIDDEN, headers, "not-let-in").await;
    }
    next.run(request).await
}

/// The token in `/?token=…`.
fn token(request: &Request) -> Option<&str> {
    let uri = request.uri();
    if request.method() != Method::GET || uri.path() != "/" {
        return None;
    }
    uri.query()?.split('&').find_map(|pair| pair.strip_prefix("token="))
}

async fn file(State(server): State<Server>, request: Request) -> Response {
    let headers = request.headers();
    if !matches!(*request.method(), Method::GET | Method::HEAD) {
        return server.refuse(StatusCode::METHOD_NOT_ALLOWED, headers, "no-such-page").await;
    }
    match files::get(request.uri().path()) {
        Some(file) => file,
        None if !files::are_there() => server.refuse(StatusCode::NOT_FOUND, headers, "ui-not-built").await,
        None => server.refuse(StatusCode::NOT_FOUND, headers, "no-such-page").await,
    }
}

async fn call(State(server): State<Server>, headers: HeaderMap, body: Body) -> Response {
    let Ok(body) = to_bytes(body, LARGEST).await else {
        return server.refuse(StatusCode::PAYLOAD_TOO_LARGE, &headers, "call-too-large").await;
    };
    let worked = tokio::task::spawn_blocking(move || server.call(&body)).await;
    worked.unwrap_or_else(|_| StatusCode::INTERNAL_SERVER_ERROR.into_response())
}

impl Server {
    fn call(&self, body: &[u8]) -> Response {
        let asking: Asking = match serde_json::from_slice(body) {
            Ok(asking) => asking,
            Err(why) => {
                let fault = self.line.show(&Fault::new("call-unknown").text("why", why));
                return (StatusCode::UNPROCESSABLE_ENTITY, Json(fault)).into_response();
            }
        };
        match self.line.answer(asking) {
            Ok(reply) => Json(reply).into_response(),
            Err(fault) => (StatusCode::BAD_REQUEST, Json(fault)).into_response(),
        }
    }

    async fn refuse(&self, status: StatusCode, headers: &HeaderMap, kind: &'static str) -> Response {
        let line = self.line.clone();
        let headers = headers.clone();
        let refused =
            tokio::task::spawn_blocking(move || refuse(status, &headers, &line.show(&Fault::new(kind))));
        refused.await.unwrap_or_else(|_| status.into_response())
    }
}
