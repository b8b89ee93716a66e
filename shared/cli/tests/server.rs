//! A school over its server: two data folders and `witnessmark server` on this machine's own address.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};

use common::{Desk, Ran};
use rcgen::{BasicConstraints, CertificateParams, IsCa, Issuer, KeyPair};
use serde_json::{Value, json};
use witnessmark_app::DeskSend;

fn signed(desk: &Desk, args: &[&str]) -> Ran {
    let pin = desk.pin_file();
    desk.run(&[args, &["--pin-file", &pin, "--json"]].concat())
}

fn done(desk: &Desk, args: &[&str]) -> Value {
    let ran = signed(desk, args);
    assert_eq!(ran.code, 0, "{ran:?}");
    ran.json()
}

/// The server's process; ended when the test ends.
struct Server {
    child: Child,
    address: String,
    desk: Desk,
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Server {
    fn start(founding: &str) -> Self {
        Self::with(founding, &[])
    }

    fn with(founding: &str, more: &[&str]) -> Self {
        let desk = Desk::new();
        let args = [&["server", "--listen", "127.0.0.1:0", "--school", founding, "--json"], more].concat();
        let mut child = desk.command(&args).stdout(Stdio::piped()).stderr(Stdio::null()).spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let told: Value = serde_json::from_str(&line).unwrap();
        Self { child, address: told["address"].as_str().unwrap().to_owned(), desk }
    }

    /// What a page of the board asks: status, cookies set, and the answer.
    fn page(&self, method: &str, path: &str, cookies: &str, body: &Value) -> (u16, String, Value) {
        let host = self.address.strip_prefix("http://").unwrap();
        let mut stream = TcpStream::connect(host).unwrap();
        let body = if body.is_null() { String::new() } else { body.to_string() };
        let request = format!(
            "{method} {path} HTTP/1.1\r\nHost: {host}\r\nOrigin: {}\r\nCookie: {cookies}\r\nConnection: close\r\n\
             Content-Type: application/json\r\nContent-Length: {}\r\n\r\n{body}",
            self.address,
            body.len()
        );
        stream.write_all(request.as_bytes()).unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        let (head, body) = answer.split_once("\r\n\r\n").unwrap();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        let lines = head.lines().filter_map(|line| line.split_once(": "));
        let set = lines.filter(|(name, _)| name.eq_ignore_ascii_case("set-cookie"));
        let cookies: Vec<&str> = set.map(|(_, cookie)| cookie.split(';').next().unwrap()).collect();
        (status, cookies.join("; "), serde_json::from_str(body).unwrap_or(Value::Null))
    }
}

/// A root with its school on a server, and a pilot with a machine who waits there.
fn school() -> (Server, Desk, Desk, String) {
    let (root, pilot) = (Desk::new(), Desk::new());
    let founded = done(&root, &["school", "create", "Invented school", "--signatory", "Invented root"]);
    let code = founded["school"]["code"].as_str().unwrap();
    let file = root.path("founding.jsonl");
    assert_eq!(root.run(&["school", "file", "-o", &file]).code, 0);
    let server = Server::start(&file);
    let followed = done(&root, &["school", "join", &server.address]);
    assert_eq!(
        (&followed["sync"]["state"], &followed["role"]),
        (&"done".into(), &"instructor".into()),
        "{followed}"
    );

    let add = ["machine", "add", "--name", "Own", "--engine", "bramble-125", "--without-reserve"];
    done(&pilot, &[&add[..], &["--signatory", "Invented pilot"]].concat());
    // Nobody says yes, or the code is another's: nothing is joined.
    assert_eq!(signed(&pilot, &["school", "join", &server.address]).kind(), "not-agreed");
    let wrong = ["school", "join", &server.address, "--school-code", "0000-0000-0000"];
    assert_eq!(signed(&pilot, &wrong).kind(), "school-other");
    assert_eq!(pilot.json(&["school", "show"])["school"], Value::Null);
    let waits = done(&pilot, &["school", "join", &server.address, "--school-code", code]);
    assert_eq!(waits["sync"]["state"], "waits", "{waits}");
    let pilots = waits["code"].as_str().unwrap().to_owned();
    (server, root, pilot, pilots)
}

fn admitted() -> (Server, Desk, Desk, String) {
    let (server, root, pilot, code) = school();
    done(&root, &["school", "admit", "--waiting", &code, "--role", "pilot"]);
    assert_eq!(pilot.json(&["sync"])["state"], "done");
    (server, root, pilot, code)
}

#[test]
fn one_who_waits_is_admitted_and_records_go_both_ways() {
    let (server, root, pilot, code) = school();
    assert_eq!(pilot.run(&["sync"]).code, 1, "not admitted yet");
    let waiting = root.json(&["school", "waiting"]);
    assert_eq!((&waiting[0]["name"], &waiting[0]["code"]), (&"Invented pilot".into(), &code.as_str().into()));
    assert_eq!(pilot.run(&["school", "waiting", "--json"]).kind(), "server-refused");
    // By a name alone the code is to be compared first.
    let by_name = ["school", "admit", "--waiting", "invented pilot", "--role", "pilot"];
    assert_eq!(signed(&root, &by_name).kind(), "not-agreed");
    let pin = root.pin_file();
    let agreed = root.run_with(&[&by_name[..], &["--pin-file", &pin]].concat(), "y\n");
    assert_eq!(agreed.code, 0, "{agreed:?}");
    assert_eq!(root.json(&["school", "waiting"]), json!([]));

    let synced = pilot.json(&["sync"]);
    assert_eq!((&synced["state"], &synced["records"]), (&"done".into(), &0.into()));
    assert_eq!(pilot.json(&["school", "show"])["role"], "pilot");
    let answers = pilot.answers("Own", |answers| drop(answers.insert("cylinder-base".into(), "wet".into())));
    assert_eq!(signed(&pilot, &["walk", "Own", "--answers", &answers]).code, 1);
    pilot.json(&["sync"]);
    root.json(&["sync"]);
    let board = root.json(&["school", "board"]);
    assert_eq!(board["rows"][0]["owner"], "Invented pilot");
    let defer =
        ["defect", "defer", "Own", "cylinder-base", "--until-date", "2999-01-01", "--condition", "near home"];
    done(&root, &[&defer[..], &["--reason", "parts come"]].concat());
    root.json(&["sync"]);
    pilot.json(&["sync"]);
    assert_eq!(pilot.run(&["verdict", "Own"]).code, 0);

    // Both hold the same receipts, and can tell.
    let mine = pilot.json(&["receipts"]);
    let theirs = root.json(&["receipts"]);
    assert_eq!((&mine["good"], &mine["root"]), (&Value::Bool(true), &theirs["root"]));
    let shown = root.run(&["receipts", "code"]).out;
    assert_eq!(pilot.json(&["receipts", "compare", shown.trim()])["good"], true);
    assert_eq!(pilot.json(&["refused"]), json!([]));
    drop(server);
    // Without the server nothing is lost, and all that doesn't need it goes on.
    assert_eq!(pilot.run(&["sync", "--json"]).kind(), "server-unreachable");
    assert_eq!(pilot.json(&["school", "show"])["sync"]["state"], "failed");
    assert_eq!(pilot.json(&["receipts"])["good"], true);
}

#[test]
fn a_lost_phone_is_shut_out() {
    let (_server, root, pilot, code) = admitted();
    done(&root, &["school", "revoke", &code, "--why", "lost in a field"]);
    root.json(&["sync"]);
    // The phone goes on signing for itself; the server has nothing to do with it any more.
    let answers = pilot.answers("Own", |_| {});
    signed(&pilot, &["walk", "Own", "--answers", &answers]);
    assert_ne!(pilot.run(&["sync", "--json"]).code, 0);
    let before = root.json(&["receipts"])["records"].clone();
    root.json(&["sync"]);
    assert_eq!(root.json(&["receipts"])["records"], before);
}

#[test]
fn the_board_is_signed_in_by_a_device_and_what_it_prepares_is_signed_there() {
    let (server, root, pilot, _) = admitted();
    let answers = pilot.answers("Own", |answers| drop(answers.insert("cylinder-base".into(), "wet".into())));
    signed(&pilot, &["walk", "Own", "--answers", &answers]);
    pilot.json(&["sync"]);
    root.json(&["sync"]);

    // A code that no page shows, and one of another address.
    let school = root.json(&["school", "show"])["school"]["id"].as_str().unwrap().parse().unwrap();
    let send = |address: &str, challenge: &str| {
        let (address, challenge) = (address.to_owned(), Some(challenge.to_owned()));
        DeskSend { school, address, challenge, draft: None }.code().unwrap().text
    };
    let wrong = signed(&root, &["school", "sign-in", &send(&server.address, "0123456789abcdef")]);
    assert_eq!(wrong.kind(), "server-refused");
    let elsewhere =
        signed(&root, &["school", "sign-in", &send("https://school.example", "0123456789abcdef")]);
    assert_eq!(elsewhere.kind(), "desk-of-other");

    let (status, page, begun) = server.page("POST", "/desk/sign-in", "", &json!({}));
    assert_eq!(status, 200, "{begun}");
    let poll = format!("/desk/sign-in/{}", begun["id"].as_str().unwrap());
    assert_eq!(server.page("GET", &poll, &page, &Value::Null).2["signed_in"], false);
    done(&root, &["school", "sign-in", begun["code"]["text"].as_str().unwrap()]);
    let (_, session, polled) = server.page("GET", &poll, &page, &Value::Null);
    assert_eq!(polled["signed_in"], true);

    // What is prepared there is nothing until the device signs it.
    let machine = root.json(&["machine", "list"])[0]["id"].clone();
    let deferral = json!({ "machine": machine, "point": "cylinder-base", "until_date": "2999-01-01",
        "condition": "near home", "reason": "parts come" });
    let (status, _, prepared) = server.page("POST", "/desk/prepare/deferral", &session, &deferral);
    assert_eq!(status, 200, "{prepared}");
    let code = prepared["code"]["text"].as_str().unwrap();
    let read = signed(&root, &["school", "sign", code]);
    assert_eq!((read.code, &read.json()["machine"]), (1, &machine), "read, not signed");
    let pin = root.pin_file();
    let refused = root.run_with(&["school", "sign", code, "--pin-file", &pin], "n\n");
    assert_eq!(refused.code, 2, "{refused:?}");
    assert_eq!(root.run(&["verdict", "Own"]).code, 1);
    let shown = root.run(&["school", "sign", code, "--agreed", "--pin-file", &pin]);
    assert_eq!(shown.code, 0, "{shown:?}");
    assert!(shown.out.contains("Own") && shown.out.contains("near home"), "{shown:?}");
    assert_eq!(root.run(&["verdict", "Own"]).code, 0);
    pilot.json(&["sync"]);
    assert_eq!(pilot.run(&["verdict", "Own"]).code, 0);
}

#[test]
fn a_backup_of_a_running_server_is_restored_once() {
    let (server, root, ..) = admitted();
    let file = server.desk.path("backup.db");
    let kept = server.desk.json(&["backup", &file])["schools"].clone();
    let records = root.json(&["receipts"])["records"].as_f64();
    root.json(&["sync"]);
    assert!(kept[0]["records"].as_f64() >= records, "{kept}");
    assert_eq!(server.desk.run(&["backup", &file, "--json"]).kind(), "backup-exists");
    let other = Desk::new();
    assert_eq!(other.json(&["restore", &file])["schools"], kept);
    assert_eq!(other.run(&["restore", &file, "--json"]).kind(), "restore-not-empty");
    let none = other.write("none", "nothing");
    assert_eq!(Desk::new().run(&["restore", &none, "--json"]).code, 2);
    // It serves as it is: it needs no founding file.
    let set = other.write("words", "an invented passphrase\n");
    assert_eq!(other.json(&["board-passphrase", &set])["set"], true);
    let short = other.write("short", "short\n");
    assert_eq!(other.run(&["board-passphrase", &short, "--json"]).kind(), "passphrase-short");
    assert_eq!(other.json(&["board-passphrase", "--off"])["set"], false);
}

/// A certificate for this machine's own address, and the one that signed it.
fn certificates(desk: &Desk) -> (String, String, String) {
    let mut own = CertificateParams::new(Vec::new()).unwrap();
    own.is_ca = IsCa::Ca(BasicConstraints::Unconstrained);
    let root = KeyPair::generate().unwrap();
    let signer = own.self_signed(&root).unwrap();
    let key = KeyPair::generate().unwrap();
    let issuer = Issuer::new(own, root);
    let cert = CertificateParams::new(vec!["127.0.0.1".into()]).unwrap().signed_by(&key, &issuer).unwrap();
    let file = |name: &str, text: String| desk.write(name, &text);
    (file("cert.pem", cert.pem()), file("key.pem", key.serialize_pem()), file("ca.pem", signer.pem()))
}

#[test]
fn a_server_with_a_certificate_of_its_own_is_asked_only_where_that_is_trusted() {
    let root = Desk::new();
    done(&root, &["school", "create", "Invented school", "--signatory", "Invented root"]);
    let file = root.path("founding.jsonl");
    assert_eq!(root.run(&["school", "file", "-o", &file]).code, 0);
    let (cert, key, ca) = certificates(&root);
    let server = Server::with(&file, &["--tls-cert", &cert, "--tls-key", &key]);
    assert!(server.address.starts_with("https://127.0.0.1:"), "{}", server.address);
    let join = ["school", "join", &server.address];
    assert_eq!(signed(&root, &join).kind(), "server-unreachable");
    let pin = root.pin_file();
    let trusting = |ca: &str| {
        let mut command = root.command(&[&join[..], &["--pin-file", &pin, "--json"]].concat());
        command.env("WITNESSMARK_CA", ca).output().unwrap()
    };
    let joined = trusting(&ca);
    let view: Value = serde_json::from_slice(&joined.stdout).unwrap_or_else(|_| panic!("{joined:?}"));
    assert_eq!(view["sync"]["state"], "done");
    let missing = trusting(&root.path("missing.pem"));
    assert!(String::from_utf8(missing.stderr).unwrap().contains("WITNESSMARK_CA"));
}

#[test]
fn a_server_that_cannot_start_says_why() {
    let run = |args: &[&str]| Desk::new().run(&[&["server", "--json"], args].concat()).err;
    let kind = |args: &[&str]| {
        let last = run(args).lines().last().unwrap().to_owned();
        let fault: Value = serde_json::from_str(&last).unwrap();
        assert!(!fault["hint"].as_str().unwrap().is_empty());
        fault["kind"].as_str().unwrap().to_owned()
    };
    assert_eq!(kind(&["--listen", "127.0.0.1:0"]), "server-no-school");
    assert_eq!(kind(&["--listen", "0.0.0.0:0"]), "server-in-the-open");
    let desk = Desk::new();
    let nothing = desk.write("nothing.jsonl", "nothing\n");
    assert_eq!(kind(&["--listen", "127.0.0.1:0", "--school", &nothing]), "server-not-a-school");
    assert_eq!(kind(&["--listen", "127.0.0.1:0", "--school", &desk.path("missing")]), "file");
    assert_eq!(kind(&["--listen", "127.0.0.1:0", "--address", "two words"]), "server-address");
    let key = desk.write("key.pem", "no key\n");
    let tls = ["--listen", "127.0.0.1:0", "--tls-cert", &key, "--tls-key", &key];
    assert_eq!(kind(&tls), "file", "no certificate is in it");
}

#[cfg(unix)]
#[test]
fn it_ends_cleanly_when_told_to() {
    let (mut server, ..) = school();
    let told = Command::new("kill").args(["-TERM", &server.child.id().to_string()]).status().unwrap();
    assert!(told.success());
    assert_eq!(server.child.wait().unwrap().code(), Some(0));
}
