//! A face's line to its school: nothing waits for the network, and what was shown is what is agreed to.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};
use std::time::Duration;

use chrono::{DateTime, FixedOffset, Local};
use common::{Server, body};
use serde_json::{Value, json};
use witnessmark_app::{App, Fault, FaultView, Keychain, Platform};
use witnessmark_core::record::{Envelope, SigningSeed};
use witnessmark_host::{Asking, Line, Net, net};
use witnessmark_store::Store;
use witnessmark_sync::note::Verifier;
use witnessmark_sync::wire::SchoolCard;

const PIN: &str = "271828";
/// How long a test waits for what must come: only a test that fails waits so long.
const AT_MOST: Duration = Duration::from_secs(60);

struct Bare;

impl Platform for Bare {
    fn now(&self) -> DateTime<FixedOffset> {
        Local::now().fixed_offset()
    }

    fn random(&self, bytes: &mut [u8]) -> Result<(), Fault> {
        getrandom::fill(bytes).map_err(Fault::internal)
    }

    fn keychain(&self) -> Option<&dyn Keychain> {
        None
    }
}

fn device(name: &str) -> App {
    let mut app = App::new(Store::open(":memory:").unwrap(), Box::new(Bare)).unwrap();
    app.begin(name.into(), PIN.into()).unwrap();
    app
}

/// A school founded on a device, and what a server would say of it.
fn founded(name: &str) -> (App, SchoolCard) {
    let mut root = device("Invented root");
    let school = root.school_found(name.into(), PIN.into()).unwrap().school.unwrap();
    let records: Vec<Envelope> =
        root.school_file().unwrap().text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let server = Verifier::new("witnessmark.org/server", &SigningSeed::from_bytes(&[7; 32]).jwk()).unwrap();
    let school = school.id.parse().unwrap();
    (root, SchoolCard { school, name: name.into(), records, server: server.to_string() })
}

fn card_said(card: &SchoolCard) -> Vec<u8> {
    body("200 OK", &serde_json::to_vec(card).unwrap())
}

fn ask(line: &Line<Mutex<Result<App, Fault>>>, call: &str, args: Value) -> Result<Value, FaultView> {
    let asking: Asking = serde_json::from_value(json!({ "call": call, "args": args })).unwrap();
    line.answer(asking)
}

/// A server that answers a round only once the test says so, and tells when it was asked.
fn held() -> (Server, Receiver<()>, Sender<()>, App) {
    let (root, card) = founded("Invented school");
    let (asked, was_asked) = channel();
    let (go, goes) = channel();
    let (asked, goes) = (Mutex::new(asked), Mutex::new(goes));
    let server = Server::answering(move |came| {
        if came.line.starts_with("GET /v1/school ") {
            return card_said(&card);
        }
        asked.lock().unwrap().send(()).unwrap();
        goes.lock().unwrap().recv_timeout(AT_MOST).unwrap();
        body("503 Service Unavailable", b"")
    });
    (server, was_asked, go, root)
}

#[test]
fn the_app_answers_while_a_round_waits_for_the_server() {
    let (server, was_asked, go, root) = held();
    let line = Line::new(Mutex::new(Ok(root)));
    let follow = {
        let (line, address) = (line.clone(), server.address.clone());
        std::thread::spawn(move || ask(&line, "school-follow", json!({ "address": address, "pin": PIN })))
    };
    was_asked.recv_timeout(AT_MOST).unwrap();
    // The round is out. Calls are answered, and another round isn't begun beside it.
    assert_eq!(ask(&line, "start", json!({})).unwrap()["person"]["name"], "Invented root");
    assert_eq!(ask(&line, "sync", json!({})).unwrap()["state"], "never");
    go.send(()).unwrap();
    let school = follow.join().unwrap().unwrap();
    assert_eq!(school["school"]["address"], server.address);
    assert_eq!(school["sync"]["state"], "failed", "followed all the same");
    assert_eq!(ask(&line, "school", json!({})).unwrap()["sync"]["state"], "failed");
}

#[test]
fn a_device_with_a_server_goes_round_by_itself_and_again_after_a_signature() {
    let (server, was_asked, go, mut root) = held();
    let address = server.address.clone();
    let door = Mutex::new(&mut root);
    go.send(()).unwrap();
    net::follow(&door, &Net::default(), &address, PIN).unwrap();
    was_asked.recv_timeout(AT_MOST).unwrap();

    let line = Line::new(Mutex::new(Ok(root)));
    was_asked.recv_timeout(AT_MOST).unwrap();
    go.send(()).unwrap();
    // Saved twice: what follows at once goes along.
    for name in ["One", "Two"] {
        let machine = json!({ "name": name, "engine": "bramble-125", "hours": 0.0, "flights": 0, "note": "",
            "fitted": {}, "reserve": null, "invented": false });
        ask(&line, "machine-save", json!({ "id": "", "description": machine, "pin": PIN })).unwrap();
    }
    was_asked.recv_timeout(AT_MOST).unwrap();
    go.send(()).unwrap();
}

#[test]
fn the_school_that_was_shown_is_the_one_that_is_joined() {
    let ((_, shown), (_, other)) = (founded("Invented school"), founded("Another invented school"));
    let turn = Arc::new(Mutex::new(0));
    let (first, second) = (shown.clone(), other);
    let server = Server::answering(move |came| {
        if !came.line.starts_with("GET /v1/school ") {
            return body("503 Service Unavailable", b"");
        }
        *turn.lock().unwrap() += 1;
        card_said(if *turn.lock().unwrap() == 1 { &first } else { &second })
    });
    let mut pilot = device("Invented pilot");
    let (door, net) = (Mutex::new(&mut pilot), Net::default());
    assert_eq!(net::look(&door, &net, &server.address).unwrap().school.id, shown.school.to_string());
    let joined = net::follow(&door, &net, &server.address, PIN).unwrap();
    assert_eq!(joined.school.unwrap().id, shown.school.to_string());
}

#[test]
fn what_is_no_schools_server_is_told_and_nothing_is_joined() {
    let mut pilot = device("Invented pilot");
    let (door, net) = (Mutex::new(&mut pilot), Net::default());
    let kind = |said: &'static str| net::look(&door, &net, &Server::saying(said).address).unwrap_err().kind;
    assert_eq!(kind("HTTP/1.1 200 OK\r\nContent-Length: 5\r\n\r\nhello"), "server-answer");
    assert_eq!(kind("HTTP/1.1 404 Not Found\r\nContent-Length: 0\r\n\r\n"), "server-answer");
    assert_eq!(kind("HTTP/1.1 502 Bad Gateway\r\nContent-Length: 0\r\n\r\n"), "server-busy");
    assert_eq!(kind("no HTTP at all"), "server-unreachable");
    assert_eq!(net::look(&door, &net, "http://192.0.2.1").unwrap_err().kind, "server-plain");
    assert_eq!(net::look(&door, &net, "school example").unwrap_err().kind, "server-address");
    assert_eq!(net::sync(&door, &net).unwrap_err().kind, "no-school");
}

#[test]
fn a_call_that_is_none_is_refused() {
    for call in [json!({ "call": "fly" }), json!([]), json!("start"), json!({ "args": {} })] {
        assert!(serde_json::from_value::<Asking>(call).is_err());
    }
}
