//! What is noted of each request: a number of its own, its route, status and time. Never a body, a
//! name, or a path with its arguments.

use std::sync::atomic::AtomicU64;
use std::time::Instant;

use axum::body::HttpBody;
use axum::extract::{MatchedPath, Request, State};
use axum::http::header::CONNECTION;
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, Version};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use prometheus_client::encoding::prometheus_text;
use prometheus_client::metrics::counter::Counter;
use prometheus_client::metrics::family::Family;
use prometheus_client::metrics::gauge::Gauge;
use prometheus_client::metrics::histogram::Histogram;
use prometheus_client::registry::Registry;
use witnessmark_sync::wire::Pushed;

use super::{HttpFault, Server};

const ID: HeaderName = HeaderName::from_static("x-request-id");

type Labels = Vec<(&'static str, String)>;

/// What is counted since the server's start.
pub struct Metrics {
    registry: Registry,
    requests: Family<Labels, Counter>,
    seconds: Histogram,
    taken: Counter,
    refused: Family<Labels, Counter>,
    log: Gauge<u64, AtomicU64>,
    /// Streams of the board that are open.
    pub open_streams: Gauge,
}

impl Default for Metrics {
    fn default() -> Self {
        let mut registry = Registry::with_prefix("witnessmark");
        let metrics = Self {
            requests: Family::default(),
            seconds: Histogram::new([
                0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 10.0,
            ]),
            taken: Counter::default(),
            refused: Family::default(),
            log: Gauge::default(),
            open_streams: Gauge::default(),
            registry: Registry::default(),
        };
        registry.register("requests", "Requests answered", metrics.requests.clone());
        registry.register("request_seconds", "How long an answer took", metrics.seconds.clone());
        registry.register("records_taken", "Records acknowledged", metrics.taken.clone());
        registry.register("records_refused", "Records refused", metrics.refused.clone());
        registry.register("log_records", "How long the log is", metrics.log.clone());
        registry.register("open_streams", "Streams of the board that are open", metrics.open_streams.clone());
        Self { registry, ..metrics }
    }
}

impl Metrics {
    pub(super) fn pushed(&self, pushed: &Pushed) {
        self.taken.inc_by(pushed.taken.len() as u64);
        for refused in &pushed.refused {
            self.refused.get_or_create(&vec![("kind", refused.kind.name().into())]).inc();
        }
    }

    pub(super) fn text(&self, log: u64) -> Result<String, std::fmt::Error> {
        self.log.set(log);
        let mut text = String::new();
        prometheus_text::encode(&mut text, &self.registry)?;
        Ok(text)
    }
}

/// Notes a request, and answers 503 while too many are at work.
pub(super) async fn observe(State(server): State<Server>, request: Request, next: Next) -> Response {
    let begun = Instant::now();
    let method = named(request.method());
    // The route's own text; whatever else was asked for is one route.
    let route = request.extensions().get::<MatchedPath>().map_or("none", MatchedPath::as_str).to_owned();
    let id = id();
    let has_body = request.version() < Version::HTTP_2 && !request.body().is_end_stream();
    let mut response = match server.places().try_acquire_owned() {
        Ok(_place) => next.run(request).await,
        Err(_) => HttpFault::busy().into_response(),
    };
    let status = response.status().as_u16();
    let taken = begun.elapsed();
    let metrics = server.metrics();
    let labels =
        vec![("method", method.to_owned()), ("route", route.clone()), ("status", status.to_string())];
    metrics.requests.get_or_create(&labels).inc();
    metrics.seconds.observe(taken.as_secs_f64());
    tracing::info!(id, method, route, status, ms = taken.as_secs_f64() * 1000.0, "answered");
    if has_body && may_be_early(response.status()) {
        // The connection ends where a body was left unread: its next request shouldn't be the one to
        // find that out (RFC 9112 § 9.6).
        response.headers_mut().insert(CONNECTION, HeaderValue::from_static("close"));
    }
    if let Ok(id) = HeaderValue::from_str(&id) {
        response.headers_mut().insert(ID, id);
    }
    response
}

/// Whether such an answer may come before the body was read.
fn may_be_early(status: StatusCode) -> bool {
    matches!(status.as_u16(), 401 | 404 | 405 | 413 | 415 | 429 | 503)
}

/// The method, where it is one of ours: nobody makes labels.
fn named(method: &Method) -> &'static str {
    let ours = ["GET", "HEAD", "POST", "PUT", "DELETE"];
    ours.into_iter().find(|ours| *ours == method.as_str()).unwrap_or("other")
}

/// A number by which a request is found in the log; where there is no randomness, none.
fn id() -> String {
    getrandom::u64().map(|number| format!("{number:016x}")).unwrap_or_default()
}
