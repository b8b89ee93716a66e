//! What every request has at hand.

use std::net::{IpAddr, SocketAddr};
use std::sync::{Arc, OnceLock};

use axum::extract::ConnectInfo;
use axum::http::{Extensions, HeaderMap};
use tokio::sync::{Semaphore, watch};

use super::limits::Buckets;
use super::observe::Metrics;
use super::{HttpFault, Limits};
use crate::school::School;
use crate::{Clock, ShelfFault};

/// A school's server, to be shared by all requests.
#[derive(Clone, Debug)]
pub struct Server(Arc<Inner>);

struct Inner {
    school: School,
    clock: Clock,
    buckets: Buckets,
    metrics: Metrics,
    places: Arc<Semaphore>,
    stopping: watch::Sender<bool>,
    known_as: OnceLock<(Vec<String>, bool)>,
}

impl std::fmt::Debug for Inner {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.school.fmt(f)
    }
}

impl Server {
    /// A server of this school.
    pub fn new(school: School, clock: Clock, limits: &Limits) -> Self {
        Self(Arc::new(Inner {
            school,
            buckets: Buckets::new(limits, clock.clone()),
            clock,
            metrics: Metrics::default(),
            places: Arc::new(Semaphore::new(limits.at_once.max(1))),
            stopping: watch::Sender::new(false),
            known_as: OnceLock::new(),
        }))
    }

    /// One that answers to these names only (`Host`, with the port where it isn't the usual one), if
    /// there are any; and, if `proxied`, believes the proxy's last word on whom it asks for.
    #[must_use]
    pub fn known_as(self, names: Vec<String>, proxied: bool) -> Self {
        // Told once: what was told first holds.
        let _ = self.0.known_as.set((names, proxied));
        self
    }

    /// The school.
    pub fn school(&self) -> &School {
        &self.0.school
    }

    /// Now, in unix seconds.
    pub fn now(&self) -> i64 {
        self.0.clock.seconds()
    }

    /// What is counted.
    pub fn metrics(&self) -> &Metrics {
        &self.0.metrics
    }

    /// Does what blocks, where blocking harms nobody.
    ///
    /// # Errors
    /// What `job` says; a fault of the server's own where it didn't come to an end.
    pub async fn work<T: Send + 'static, F: Into<HttpFault> + Send + 'static>(
        &self,
        job: impl FnOnce(&Server) -> Result<T, F> + Send + 'static,
    ) -> Result<T, HttpFault> {
        let server = self.clone();
        let done = tokio::task::spawn_blocking(move || job(&server)).await;
        done.map_err(HttpFault::internal)?.map_err(Into::into)
    }

    /// Ends when the server is told to stop: what would go on for ever should end then too.
    pub async fn stopped(&self) {
        // The sender lives as long as this.
        let _ = self.0.stopping.subscribe().wait_for(|stop| *stop).await;
    }

    /// Tells everything that would go on for ever to end.
    pub fn stop(&self) {
        self.0.stopping.send_replace(true);
    }

    /// Forgets what has had its time.
    ///
    /// # Errors
    /// [`ShelfFault`].
    pub fn tidy(&self) -> Result<(), ShelfFault> {
        self.0.buckets.forget();
        self.0.school.tidy(self.now())
    }

    pub(super) fn buckets(&self) -> &Buckets {
        &self.0.buckets
    }

    pub(super) fn places(&self) -> Arc<Semaphore> {
        self.0.places.clone()
    }

    /// Whether a request to this name is one to this server.
    pub(super) fn answers_to(&self, authority: &str) -> bool {
        let Some((names, _)) = self.0.known_as.get() else { return true };
        names.is_empty() || names.iter().any(|name| name.eq_ignore_ascii_case(authority))
    }

    /// Counts a request that nobody has signed, as so many.
    ///
    /// # Errors
    /// 429.
    pub fn open(&self, headers: &HeaderMap, extensions: &Extensions, cost: u32) -> Result<(), HttpFault> {
        self.0.buckets.peer(self.peer(headers, extensions), cost)
    }

    /// Who asks; none where nobody knows.
    fn peer(&self, headers: &HeaderMap, extensions: &Extensions) -> Option<IpAddr> {
        if matches!(self.0.known_as.get(), Some((_, true))) {
            // What stands last was written by the proxy itself; what stands before it, by anybody.
            let told = headers.get_all("x-forwarded-for").iter().next_back()?.to_str().ok()?;
            return told.rsplit(',').next()?.trim().parse().ok();
        }
        Some(peer(extensions)?.ip())
    }
}

/// The other end of the connection.
pub(super) fn peer(extensions: &Extensions) -> Option<SocketAddr> {
    extensions.get::<ConnectInfo<SocketAddr>>().map(|peer| peer.0)
}
