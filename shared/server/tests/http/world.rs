//! A school's server in process, and asking it.

use std::net::SocketAddr;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

use axum::Router;
use axum::body::{Body as HttpBody, to_bytes};
use axum::extract::ConnectInfo;
use axum::http::{HeaderMap, Request, StatusCode};
use chrono::DateTime;
use serde::de::DeserializeOwned;
use tower::ServiceExt;
use witnessmark_core::record::*;
use witnessmark_server::school::{School, adopt};
use witnessmark_server::{Clock, Limits, Server, router};
use witnessmark_sync::wire::{Pushed, WireFault};

use crate::common::Place;
use crate::device::{Ask, Device};

/// A server with its school, and the root's device.
pub struct World {
    pub server: Server,
    pub router: Router,
    pub school: Digest,
    pub root: Device,
    pub runtime: tokio::runtime::Runtime,
    millis: Arc<AtomicU64>,
}

/// What came back.
#[derive(Debug)]
pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: Vec<u8>,
}

impl Answer {
    pub fn json<T: DeserializeOwned>(&self) -> T {
        let text = String::from_utf8_lossy(&self.body);
        assert!(self.status.is_success(), "{} {text}", self.status);
        serde_json::from_str(&text).unwrap_or_else(|why| panic!("{why}: {text}"))
    }

    pub fn text(&self) -> String {
        String::from_utf8(self.body.clone()).unwrap()
    }

    /// Status and kind of a fault.
    pub fn fault(&self) -> (u16, String) {
        let fault: WireFault =
            serde_json::from_slice(&self.body).unwrap_or_else(|why| panic!("{why}: {self:?}"));
        assert!(!fault.message.is_empty() && !fault.hint.is_empty(), "{fault:?}");
        (self.status.as_u16(), fault.kind)
    }

    pub fn header(&self, name: &str) -> &str {
        self.headers.get(name).unwrap_or_else(|| panic!("no {name} in {self:?}")).to_str().unwrap()
    }
}

pub fn founding() -> (Device, Digest, String) {
    let mut root = Device::new(1);
    let founded =
        root.write(Body::SchoolFounded(SchoolFounded { name: "Invented school".into(), invented: true }));
    let bundle = write_bundle(&root.records);
    (root, founded.digest, bundle)
}

impl World {
    pub fn new(place: &Place) -> Self {
        Self::with(place, &Limits::default())
    }

    pub fn with(place: &Place, limits: &Limits) -> Self {
        let (mut root, school, bundle) = founding();
        let adopted = adopt(place.open(), &bundle).unwrap();
        let mut world = Self::over(adopted, root, limits);
        root = std::mem::replace(&mut world.root, Device::new(1));
        root.joins(school);
        let pushed = world.push_as(&root.seed, &root.records);
        assert_eq!(pushed.taken.len(), 3, "{pushed:?}");
        world.root = root;
        world
    }

    fn over(school: School, root: Device, limits: &Limits) -> Self {
        let runtime =
            tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
        let noon = DateTime::parse_from_rfc3339("2026-05-02T12:00:00+02:00").unwrap().timestamp_millis();
        let millis = Arc::new(AtomicU64::new(noon as u64));
        let tell = millis.clone();
        let id = school.id();
        let server = Server::new(school, Clock::of(move || tell.load(Ordering::SeqCst)), limits);
        let router = router(&server, Router::new());
        Self { server, router, school: id, root, runtime, millis }
    }

    pub fn now(&self) -> i64 {
        self.server.now()
    }

    /// Turns the server's clock.
    pub fn turn(&self, seconds: i64) {
        let millis = self.millis.load(Ordering::SeqCst) as i64 + seconds * 1000;
        self.millis.store(millis as u64, Ordering::SeqCst);
    }

    pub fn ask_from(&self, peer: &str, mut request: Request<HttpBody>) -> Answer {
        request.extensions_mut().insert(ConnectInfo(peer.parse::<SocketAddr>().unwrap()));
        let router = self.router.clone();
        self.runtime.block_on(async {
            let answer = router.oneshot(request).await.unwrap();
            let (parts, body) = answer.into_parts();
            let body = to_bytes(body, usize::MAX).await.unwrap().to_vec();
            Answer { status: parts.status, headers: parts.headers, body }
        })
    }

    pub fn ask(&self, request: Request<HttpBody>) -> Answer {
        self.ask_from("192.0.2.7:40000", request)
    }

    pub fn get(&self, seed: &SigningSeed, path: &str) -> Answer {
        self.ask(Ask::new("GET", path, self.now()).signed(seed))
    }

    pub fn open(&self, path: &str) -> Answer {
        self.ask(Ask::new("GET", path, self.now()).unsigned())
    }

    pub fn post(&self, seed: &SigningSeed, path: &str, body: impl Into<Vec<u8>>) -> Answer {
        self.ask(Ask::new("POST", path, self.now()).body(body).signed(seed))
    }

    pub fn push_as<'a>(&self, seed: &SigningSeed, records: impl IntoIterator<Item = &'a Record>) -> Pushed {
        self.post(seed, "/v1/records", write_bundle(records)).json()
    }

    /// Pushes what must all be taken.
    pub fn push<'a>(&self, device: &Device, records: impl IntoIterator<Item = &'a Record>) -> Vec<u64> {
        let pushed = self.push_as(&device.courier, records);
        assert!(pushed.refused.is_empty(), "{pushed:?}");
        pushed.taken.iter().map(|taken| taken.index).collect()
    }

    pub fn introduce(&self, device: &Device) -> Answer {
        let introduction = device
            .records
            .iter()
            .filter(|record| ["member", "school-joined"].contains(&record.payload.kind.as_str()));
        self.ask(Ask::new("POST", "/v1/waiting", self.now()).body(write_bundle(introduction)).unsigned())
    }

    /// A device that is let in.
    pub fn member(&mut self, n: u8, role: Role) -> Device {
        let mut device = Device::new(n);
        device.joins(self.school);
        let admitted = self.root.admits(self.school, &device, role);
        self.push(&self.root, [&admitted]);
        assert_eq!(self.introduce(&device).status, StatusCode::OK);
        device
    }

    pub fn size(&self) -> u64 {
        self.server.school().follow().unwrap()
    }
}
