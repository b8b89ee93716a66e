//! The shipped server: its real router over a real database, asked in process.

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use axum::Router;
use axum::body::{Body, to_bytes};
use tempfile::TempDir;
use tokio::runtime::Runtime;
use tower::ServiceExt;
use witnessmark_app::Request;
use witnessmark_core::record::{Digest, Record, write_bundle};
use witnessmark_server::school::{School, adopt};
use witnessmark_server::shelf::Shelf;
use witnessmark_server::{Clock, Limits, Server, router};
use witnessmark_sync::client::Answer;

use crate::reference::Serves;

pub struct Shipped {
    /// Holds the database; goes with this.
    folder: TempDir,
    runtime: Runtime,
    server: Server,
    router: Router,
    seconds: Arc<AtomicI64>,
}

impl Shipped {
    pub fn new(founding: &[Record]) -> Self {
        // In memory where there is such a folder: this isn't about disks, which `crash` is.
        let memory = Path::new("/dev/shm");
        let folder = if memory.is_dir() { TempDir::new_in(memory) } else { TempDir::new() }.unwrap();
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        let seconds = Arc::default();
        let school = adopt(shelf(&folder), &write_bundle(founding)).unwrap();
        let (server, router) = serve(school, &seconds);
        Self { folder, runtime, server, router, seconds }
    }
}

fn shelf(folder: &TempDir) -> Shelf {
    Shelf::open(folder.path().join("server.db").to_str().unwrap()).unwrap()
}

fn serve(school: School, seconds: &Arc<AtomicI64>) -> (Server, Router) {
    let told = Arc::clone(seconds);
    let clock = Clock::of(move || told.load(Ordering::Relaxed) as u64 * 1000);
    // How often one may ask is tested elsewhere.
    let most = u32::MAX.try_into().unwrap();
    let limits =
        Limits { key_burst: most, open_burst: most, key_rate: most, open_rate: most, ..Limits::default() };
    let server = Server::new(school, clock, &limits);
    let router = router(&server, Router::new());
    (server, router)
}

impl Serves for Shipped {
    fn answer(&mut self, request: &Request, now: i64) -> Answer {
        self.seconds.store(now, Ordering::Relaxed);
        let (authority, path) = request.url.split_once("://").unwrap().1.split_once('/').unwrap();
        let mut asked = axum::http::Request::builder().method(request.method).uri(format!("/{path}"));
        asked = asked.header("host", authority);
        for (name, value) in &request.headers {
            asked = asked.header(name, value);
        }
        let asked = asked.body(Body::from(request.body.clone())).unwrap();
        let router = self.router.clone();
        self.runtime.block_on(async {
            let (parts, body) = router.oneshot(asked).await.unwrap().into_parts();
            let body = to_bytes(body, usize::MAX).await.unwrap().to_vec();
            Answer { status: parts.status.as_u16(), body, ..Answer::default() }
        })
    }

    fn restart(&mut self) {
        (self.server, self.router) = serve(School::open(shelf(&self.folder)).unwrap(), &self.seconds);
    }

    fn log(&mut self) -> Vec<Digest> {
        let school = self.server.school();
        school.shelf().digests(school.on_shelf(), 0, usize::MAX).unwrap()
    }

    fn verifier(&self) -> String {
        self.server.school().verifier().to_string()
    }
}
