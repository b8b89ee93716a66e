//! The loopback server: open to one browser of this machine, and to nobody else.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};

use common::Desk;
use serde_json::{Value, json};

/// A running server; ended when the test ends.
struct Server {
    child: Child,
    port: u16,
    token: String,
    _desk: Desk,
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

struct Response {
    status: u16,
    head: String,
    body: String,
}

impl Response {
    fn header(&self, name: &str) -> Option<&str> {
        let lines = self.head.lines().filter_map(|line| line.split_once(": "));
        lines.into_iter().find(|(header, _)| header.eq_ignore_ascii_case(name)).map(|(_, value)| value)
    }

    fn json(&self) -> Value {
        serde_json::from_str(&self.body).unwrap_or_else(|why| panic!("{why}: {}", self.body))
    }
}

impl Server {
    fn start() -> Self {
        let desk = Desk::with_demo();
        let mut child = desk.command(&["serve-ui"]).stdout(Stdio::piped()).spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let address = line.trim().strip_prefix("http://127.0.0.1:").unwrap();
        let (port, token) = address.split_once("/?token=").unwrap();
        Self { child, port: port.parse().unwrap(), token: token.to_owned(), _desk: desk }
    }

    /// One request, its header lines given whole.
    fn ask(&self, line: &str, headers: &[String], body: &str) -> Response {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        let mut request = format!("{line} HTTP/1.1\r\nConnection: close\r\n");
        if !headers.iter().any(|header| header.starts_with("Host:")) {
            request += &format!("Host: 127.0.0.1:{}\r\n", self.port);
        }
        headers.iter().for_each(|header| request += &format!("{header}\r\n"));
        request += &format!("Content-Length: {}\r\n\r\n{body}", body.len());
        stream.write_all(request.as_bytes()).unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        let answer = String::from_utf8_lossy(&answer).into_owned();
        let (head, body) = answer.split_once("\r\n\r\n").unwrap();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        Response { status, head: head.to_owned(), body: body.to_owned() }
    }

    /// Opens the printed address; gives the cookie's header line.
    fn open(&self) -> String {
        let opened = self.ask(&format!("GET /?token={}", self.token), &[], "");
        assert_eq!((opened.status, opened.header("location")), (303, Some("/")));
        let cookie = opened.header("set-cookie").unwrap();
        assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), "{cookie}");
        format!("Cookie: {}", cookie.split(';').next().unwrap())
    }

    fn call(&self, headers: &[String], call: &Value) -> Response {
        self.ask("POST /call", headers, &call.to_string())
    }
}

#[test]
fn the_address_works_once() {
    let server = Server::start();
    assert_eq!(server.ask("GET /?token=0000", &[], "").status, 403);
    server.open();
    let again = server.ask(&format!("GET /?token={}", server.token), &["Accept: text/html".into()], "");
    assert_eq!(again.status, 403);
    assert!(again.header("content-type").unwrap().starts_with("text/html"));
    assert!(again.body.contains("Start the program again"), "{}", again.body);
    assert!(again.header("set-cookie").is_none());
}

#[test]
fn nothing_is_served_without_the_cookie() {
    let server = Server::start();
    for path in ["GET /", "GET /index.html", "GET /no-such", "POST /call", "DELETE /call"] {
        let refused = server.ask(path, &[], "{}");
        assert_eq!((refused.status, refused.json()["kind"].clone()), (403, json!("not-let-in")), "{path}");
    }
    let own = server.open();
    let guessed = format!("{}=0000", own.split_once('=').unwrap().0);
    assert_eq!(server.ask("GET /", &[guessed], "").status, 403);
    let page = server.ask("GET /", &[own], "");
    // Without the built screens the page says how to build them; either way it is ours.
    assert!(page.status == 200 || page.json()["kind"] == "ui-not-built", "{}", page.status);
}

#[test]
fn every_answer_carries_the_guards_of_the_page() {
    let server = Server::start();
    let own = server.open();
    for answer in [server.ask("GET /", &[own], ""), server.ask("GET /", &[], "")] {
        let policy = answer.header("content-security-policy").unwrap();
        for part in ["default-src 'self'", "frame-ancestors 'none'", "object-src 'none'", "base-uri 'none'"] {
            assert!(policy.contains(part), "{policy}");
        }
        assert!(!policy.contains("unsafe-eval"));
        assert_eq!(answer.header("x-content-type-options"), Some("nosniff"));
        assert_eq!(answer.header("referrer-policy"), Some("no-referrer"));
        assert_eq!(answer.header("cache-control"), Some("no-store"));
    }
}

#[test]
fn calls_are_answered_and_faults_told() {
    let server = Server::start();
    let own = [server.open()];
    let machines = server.call(&own, &json!({ "call": "machines", "args": {} }));
    assert_eq!(machines.status, 200);
    assert!(machines.json().as_array().unwrap().iter().any(|card| card["name"] == "School Linnet"));

    let nobodys = json!({ "call": "machine", "args": { "id": "00000000-0000-7000-8000-000000000000" } });
    let fault = server.call(&own, &nobodys);
    assert_eq!((fault.status, fault.json()["kind"].clone()), (400, json!("no-such")));
    for unreadable in [json!({ "call": "fly" }), json!([]), json!("start")] {
        let fault = server.call(&own, &unreadable);
        assert_eq!((fault.status, fault.json()["kind"].clone()), (422, json!("call-unknown")));
    }
    assert_eq!(server.ask("POST /call", &own, "\u{0}").status, 422);
}

#[test]
fn another_name_for_this_machine_is_refused() {
    let server = Server::start();
    let own = server.open();
    let call = json!({ "call": "machines", "args": {} });
    let with = |header: &str| {
        server.call(&[own.clone(), header.replace("PORT", &server.port.to_string())], &call).status
    };
    // A page elsewhere whose name was bent to this machine's address.
    assert_eq!(with("Host: elsewhere.example"), 403);
    assert_eq!(with("Host: elsewhere.example:PORT"), 403);
    assert_eq!(with("Host: 127.0.0.1"), 403);
    assert_eq!(with("Host: localhost:PORT"), 200);
    // A page elsewhere that posts here.
    assert_eq!(with("Origin: http://elsewhere.example"), 403);
    assert_eq!(with("Origin: null"), 403);
    assert_eq!(with("Origin: https://127.0.0.1:PORT"), 403);
    assert_eq!(with("Origin: http://127.0.0.1:PORT"), 200);
}

#[test]
fn what_is_too_large_is_refused_and_the_server_lives_on() {
    let server = Server::start();
    let own = [server.open()];
    let mut stream = TcpStream::connect(("127.0.0.1", server.port)).unwrap();
    let head = format!(
        "POST /call HTTP/1.1\r\nHost: 127.0.0.1:{}\r\n{}\r\nContent-Length: {}\r\n\r\n",
        server.port,
        own[0],
        65 * 1024 * 1024
    );
    stream.write_all(head.as_bytes()).unwrap();
    let chunk = vec![b' '; 1024 * 1024];
    // The server may close before all was sent: that is its right.
    for _ in 0..65 {
        if stream.write_all(&chunk).is_err() {
            break;
        }
    }
    let mut answer = [0u8; 64];
    if let Ok(read) = stream.read(&mut answer) {
        let answer = String::from_utf8_lossy(&answer[..read]).into_owned();
        assert!(answer.is_empty() || answer.contains(" 413 "), "{answer}");
    }
    assert_eq!(server.call(&own, &json!({ "call": "start", "args": {} })).status, 200);
}

#[test]
fn a_port_in_use_is_told() {
    let server = Server::start();
    let ran = Desk::new().run(&["serve-ui", "--port", &server.port.to_string(), "--json"]);
    assert_eq!(ran.kind(), "address");
}

#[cfg(unix)]
#[test]
fn it_ends_cleanly_when_told_to() {
    let mut server = Server::start();
    server.open();
    let told = Command::new("kill").args(["-TERM", &server.child.id().to_string()]).status().unwrap();
    assert!(told.success());
    assert_eq!(server.child.wait().unwrap().code(), Some(0));
}
