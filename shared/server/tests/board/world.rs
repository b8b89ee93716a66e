//! A school with its server and its board, devices that follow it, and a browser's page.

use std::net::SocketAddr;
use std::sync::Arc;

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::ConnectInfo;
use axum::http::{HeaderMap, Request, StatusCode};
use serde_json::{Value, json};
use tower::ServiceExt;
use witnessmark_app::views::DeskView;
use witnessmark_app::{App, Request as Asked, SyncStep};
use witnessmark_core::record::Role;
use witnessmark_server::board::{Board, Config};
use witnessmark_server::school::{School, adopt};
use witnessmark_server::{Limits, Server, router};
use witnessmark_store::Store;
use witnessmark_sync::client::{Answer as Came, Round};
use witnessmark_sync::wire::Draft;

use crate::common::Place;
use crate::device::{Clock, PIN, platform};

pub const HOST: &str = "school.test:8443";
pub const ADDRESS: &str = "https://school.test:8443";

pub struct World {
    pub place: Place,
    pub clock: Clock,
    pub server: Server,
    pub board: Board,
    pub router: Router,
    pub runtime: tokio::runtime::Runtime,
    /// The root, an instructor.
    pub root: App,
    pub salt: u64,
}

pub fn pages(path: &str) -> Option<&'static [u8]> {
    (path == "board.html").then_some(b"<!doctype html><title>board</title>")
}

pub fn device(clock: &Clock, salt: u64, name: &str) -> App {
    let mut app = App::new(Store::open(":memory:").unwrap(), platform(clock, salt << 32, None)).unwrap();
    app.begin(name.into(), PIN.into()).unwrap();
    app
}

pub fn server_of(school: School, clock: &Clock) -> Server {
    let tell = clock.clone();
    let clock = witnessmark_server::Clock::of(move || tell.now().timestamp_millis() as u64);
    Server::new(school, clock, &Limits::default())
}

pub fn config(place: &Place, clock: &Clock) -> Config {
    let clock = clock.clone();
    Config {
        folder: place.folder.path().into(),
        address: None,
        tls: true,
        pages,
        platforms: Arc::new(move || platform(&clock, 77 << 32, None)),
    }
}

impl World {
    pub fn new() -> Self {
        let clock = Clock::at("2026-05-02T06:41:07+02:00");
        let mut root = device(&clock, 1, "Invented root");
        root.school_found("Invented school".into(), PIN.into()).unwrap();
        let place = Place::sqlite();
        let school = adopt(place.open(), &root.school_file().unwrap().text).unwrap();
        let server = server_of(school, &clock);
        let board = Board::new(server.clone(), config(&place, &clock));
        board.catch_up().unwrap();
        let router = router(&server, board.router());
        let runtime =
            tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
        let mut world = Self { place, clock, server, board, router, runtime, root, salt: 1 };
        let mut root = std::mem::replace(&mut world.root, device(&world.clock, 99, "nobody"));
        world.follow(&mut root);
        world.sync(&mut root);
        world.root = root;
        world
    }

    /// What comes back for a request.
    pub fn send(&self, mut request: Request<Body>) -> Answer {
        request.extensions_mut().insert(ConnectInfo("192.0.2.7:40000".parse::<SocketAddr>().unwrap()));
        let router = self.router.clone();
        self.runtime.block_on(async {
            let answer = router.oneshot(request).await.unwrap();
            let (parts, body) = answer.into_parts();
            let body = to_bytes(body, usize::MAX).await.unwrap().to_vec();
            Answer { status: parts.status, headers: parts.headers, body }
        })
    }

    /// Carries a device's request.
    pub fn carry(&self, asked: &Asked) -> Came {
        let path = asked.url.strip_prefix(ADDRESS).unwrap();
        let mut request = Request::builder().method(asked.method).uri(path).header("host", HOST);
        for (name, value) in &asked.headers {
            request = request.header(name, value);
        }
        let answer = self.send(request.body(asked.body.clone().into()).unwrap());
        let text = |name: &str| answer.headers.get(name).map(|value| value.to_str().unwrap().to_owned());
        let total = text("content-range").and_then(|range| range.rsplit('/').next()?.parse().ok());
        Came {
            status: answer.status.as_u16(),
            media: text("content-type"),
            length: total.or_else(|| text("content-length")?.parse().ok()),
            body: answer.body,
            broken: false,
        }
    }

    pub fn follow(&self, app: &mut App) {
        let card = self.send(Request::get("/v1/school").header("host", HOST).body(Body::empty()).unwrap());
        app.school_follow(&serde_json::from_slice(&card.body).unwrap(), ADDRESS, PIN).unwrap();
    }

    /// A whole round, after which the board has caught up.
    pub fn sync(&self, app: &mut App) {
        let mut round = Round::default();
        let mut answer = None;
        while let SyncStep::Ask(asked) = app.sync_step(&mut round, answer.take()).unwrap() {
            answer = Some(self.carry(&asked));
        }
        app.reload_catalogue().unwrap();
        self.board.catch_up().unwrap();
    }

    pub fn sync_root(&mut self) {
        let mut root = std::mem::replace(&mut self.root, device(&self.clock, 99, "nobody"));
        self.sync(&mut root);
        self.root = root;
    }

    /// A member's device, admitted by code and in step with the server.
    pub fn member(&mut self, name: &str, role: Role) -> App {
        self.salt += 1;
        let mut app = device(&self.clock, self.salt, name);
        let shown = app.school_code().unwrap();
        let answer = self.root.school_admit(shown.text, Some(role), None, PIN.into()).unwrap();
        app.school_join(answer.text, PIN.into()).unwrap();
        self.sync_root();
        self.sync(&mut app);
        self.sync_root();
        app
    }

    /// Signs in a page by a device.
    pub fn sign_in(&self, app: &mut App) -> Page<'_> {
        let mut page = Page::of(self);
        let begun = page.post("/desk/sign-in", &json!({})).json();
        let text = begun["code"]["text"].as_str().unwrap().to_owned();
        let seen: DeskView = app.desk_open(text.clone()).unwrap();
        assert_eq!(seen.kind, "sign-in");
        let came = self.carry(&app.desk_confirm(&text, PIN).unwrap());
        assert_eq!(came.status, 204, "{}", String::from_utf8_lossy(&came.body));
        let polled = page.get(&format!("/desk/sign-in/{}", begun["id"].as_str().unwrap())).json();
        assert_eq!(polled, json!({ "signed_in": true }));
        page
    }

    /// A draft as a device fetches it, by its code.
    pub fn draft(&self, app: &mut App, code: &str) -> Option<Draft> {
        let came = self.carry(&app.draft_ask(code).unwrap());
        (came.status == 200).then(|| serde_json::from_slice(&came.body).unwrap())
    }
}

/// A browser's page: it keeps cookies, and sends what a browser sends.
pub struct Page<'w> {
    pub world: &'w World,
    pub cookies: Vec<(String, String)>,
    /// What is set on every request of this page beside the usual.
    pub headers: Vec<(&'static str, String)>,
}

impl<'w> Page<'w> {
    pub fn of(world: &'w World) -> Self {
        Self { world, cookies: Vec::new(), headers: vec![("origin", ADDRESS.into())] }
    }

    pub fn request(&self, method: &str, path: &str) -> axum::http::request::Builder {
        let cookies: Vec<String> =
            self.cookies.iter().map(|(name, value)| format!("{name}={value}")).collect();
        let mut request = Request::builder().method(method).uri(path).header("host", HOST);
        if !cookies.is_empty() {
            request = request.header("cookie", cookies.join("; "));
        }
        for (name, value) in &self.headers {
            request = request.header(*name, value);
        }
        request
    }

    pub fn get(&mut self, path: &str) -> Answer {
        self.take(self.world.send(self.request("GET", path).body(Body::empty()).unwrap()))
    }

    pub fn post(&mut self, path: &str, body: &Value) -> Answer {
        let request = self.request("POST", path).header("content-type", "application/json");
        self.take(self.world.send(request.body(body.to_string().into()).unwrap()))
    }

    /// Keeps cookies as a browser does.
    fn take(&mut self, answer: Answer) -> Answer {
        for set in answer.headers.get_all("set-cookie") {
            let set = set.to_str().unwrap();
            let (name, value) = set.split(';').next().unwrap().split_once('=').unwrap();
            self.cookies.retain(|(known, _)| known != name);
            if !set.contains("Max-Age=0") {
                self.cookies.push((name.into(), value.into()));
            }
        }
        answer
    }

    /// The board's rows.
    pub fn rows(&mut self) -> Vec<Value> {
        self.get("/desk/board").json()["rows"].as_array().unwrap().clone()
    }
}

#[derive(Debug)]
pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: Vec<u8>,
}

impl Answer {
    pub fn json(&self) -> Value {
        let text = String::from_utf8_lossy(&self.body);
        assert!(self.status.is_success(), "{} {text}", self.status);
        serde_json::from_slice(&self.body).unwrap_or_else(|why| panic!("{why}: {text}"))
    }

    /// Status and kind of a fault.
    pub fn fault(&self) -> (u16, String) {
        let fault: Value = serde_json::from_slice(&self.body).unwrap_or_else(|why| panic!("{why}: {self:?}"));
        let text = |name: &str| fault[name].as_str().unwrap().to_owned();
        assert!(!text("message").is_empty() && !text("hint").is_empty(), "{fault}");
        (self.status.as_u16(), text("kind"))
    }
}
