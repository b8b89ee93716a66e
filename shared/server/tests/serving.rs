//! The process: over real sockets, plain and by TLS.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

#[path = "http/device.rs"]
#[allow(dead_code)]
mod device;

use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::Path;
use std::sync::{Arc, mpsc};
use std::thread;
use std::time::{SystemTime, UNIX_EPOCH};

use axum::Router;
use axum::routing::get;
use rustls::pki_types::{CertificateDer, ServerName};
use rustls::{ClientConfig, ClientConnection, RootCertStore, StreamOwned};
use tempfile::TempDir;
use tokio::sync::oneshot;
use witnessmark_core::record::*;
use witnessmark_server::Server;
use witnessmark_server::run::{Config, LogForm, ServerFault, TlsFiles, run_until};
use witnessmark_sync::message::{Unsigned, sign};

use device::Device;

/// A server on a port of its own, until dropped.
struct Running {
    address: SocketAddr,
    stop: Option<oneshot::Sender<()>>,
    thread: Option<thread::JoinHandle<Result<(), ServerFault>>>,
}

impl Running {
    fn start(config: Config) -> Self {
        Self::with(config, |_| Router::new())
    }

    fn with(config: Config, board: impl FnOnce(&Server) -> Router + Send + 'static) -> Self {
        let (stop, stopped) = oneshot::channel::<()>();
        let (ready, address) = mpsc::channel();
        let thread = thread::spawn(move || {
            let stopped = async move { drop(stopped.await) };
            run_until(&config, board, |address| ready.send(address).unwrap(), stopped)
        });
        let address = address.recv().unwrap();
        Self { address, stop: Some(stop), thread: Some(thread) }
    }

    fn stop(mut self) -> Result<(), ServerFault> {
        drop(self.stop.take());
        self.thread.take().unwrap().join().unwrap()
    }
}

fn config(folder: &Path) -> (Config, Device) {
    let mut root = Device::new(1);
    root.write(Body::SchoolFounded(SchoolFounded { name: "Invented school".into(), invented: true }));
    let file = folder.join("school.jsonl");
    std::fs::write(&file, write_bundle(&root.records)).unwrap();
    let database = folder.join("server.db").to_str().unwrap().to_owned();
    let mut config = Config::on("127.0.0.1:0".parse().unwrap(), database);
    config.school = Some(file);
    config.log = LogForm::Silent;
    (config, root)
}

fn now() -> i64 {
    SystemTime::now().duration_since(UNIX_EPOCH).unwrap().as_secs() as i64
}

/// A signed request as its bytes, to be answered once.
fn request(seed: &SigningSeed, method: &str, path: &str, host: &str, body: &[u8]) -> Vec<u8> {
    let (plain, query) = path.split_once('?').map_or((path, None), |(path, query)| (path, Some(query)));
    let unsigned = Unsigned { method, authority: host, path: plain, query, body };
    let nonce = Digest::of(format!("{method} {path} {:?}", SystemTime::now()).as_bytes()).to_string();
    let signed = sign(&unsigned, now(), &nonce, seed).unwrap();
    let headers: String = signed.each().map(|(name, value)| format!("{name}: {value}\r\n")).collect();
    let length = body.len();
    let head = format!(
        "{method} {path} HTTP/1.1\r\nhost: {host}\r\ncontent-length: {length}\r\nconnection: close\r\n{headers}\r\n"
    );
    [head.as_bytes(), body].concat()
}

fn answer(stream: &mut (impl Read + Write), request: &[u8]) -> (u16, String) {
    stream.write_all(request).unwrap();
    stream.flush().unwrap();
    let mut text = Vec::new();
    // A peer that closes without TLS's goodbye is no concern here: the length is in the answer.
    let _ = stream.read_to_end(&mut text);
    let text = String::from_utf8(text).unwrap();
    let (head, body) = text.split_once("\r\n\r\n").unwrap_or_else(|| panic!("{text}"));
    let status = head.split(' ').nth(1).unwrap().parse().unwrap();
    (status, format!("{}\r\n\r\n{body}", head.to_lowercase()))
}

/// RFC 9112 § 9.6: a connection that is cut while the other end still sends takes the answer with it.
#[test]
fn who_is_refused_while_sending_reads_why() {
    let folder = TempDir::new().unwrap();
    let (config, _) = config(folder.path());
    let running = Running::start(config);
    let mut stream = TcpStream::connect(running.address).unwrap();
    let body = vec![b'x'; 3 << 20];
    let head = format!(
        "POST /v1/records HTTP/1.1\r\nHost: {}\r\nContent-Length: {}\r\n\r\n",
        running.address,
        body.len()
    );
    stream.write_all(head.as_bytes()).unwrap();
    stream.write_all(&body).unwrap();
    let mut answer = String::new();
    stream.read_to_string(&mut answer).unwrap();
    assert!(answer.starts_with("HTTP/1.1 401 ") && answer.contains("\"unsigned\""), "{answer}");
    running.stop().unwrap();
}

#[test]
fn plain_requests_over_a_socket() {
    let folder = TempDir::new().unwrap();
    let (config, root) = config(folder.path());
    let server = Running::start(config.clone());
    let host = server.address.to_string();
    let ask = |method: &str, path: &str, body: &[u8]| {
        let mut stream = TcpStream::connect(server.address).unwrap();
        answer(&mut stream, &request(&root.seed, method, path, &host, body))
    };
    assert_eq!(ask("GET", "/health", b"").0, 200);
    let (status, text) = ask("GET", "/v1/log?from=0", b"");
    assert_eq!(status, 200);
    assert!(text.contains(&format!(r#"{{"have":"{}"}}"#, root.records[0].digest)), "{text}");
    let (status, text) = ask("POST", "/v1/records", write_bundle(&root.records).as_bytes());
    assert!(status == 200 && text.contains(r#""index":1"#), "{text}");
    // A photo's length is told without its bytes.
    let bytes = b"not really a picture";
    let path = format!("/v1/photo/{}", Digest::of(bytes));
    let put = request(&root.seed, "PUT", &path, &host, bytes);
    let put = String::from_utf8(put).unwrap().replacen("\r\n", "\r\ncontent-type: image/png\r\n", 1);
    assert_eq!(answer(&mut TcpStream::connect(server.address).unwrap(), put.as_bytes()).0, 201);
    let (status, text) = ask("HEAD", &path, b"");
    assert!(status == 200 && text.contains("content-length: 20\r\n") && text.ends_with("\r\n\r\n"), "{text}");
    // What is only for this machine is told here, and it knows the routes by their own names.
    let (status, text) = ask("GET", "/metrics", b"");
    assert!(status == 200 && text.contains(r#"route="/v1/photo/{digest}""#), "{text}");
    assert_eq!(server.stop(), Ok(()));
    // Started again, without the file: all is there.
    let server = Running::start(Config { school: None, ..config });
    let host = server.address.to_string();
    let mut stream = TcpStream::connect(server.address).unwrap();
    let (status, text) = answer(&mut stream, &request(&root.seed, "GET", "/v1/log?from=0", &host, b""));
    assert!(status == 200 && text.contains(&root.records[1].digest.to_string()), "{text}");
    assert_eq!(server.stop(), Ok(()));
}

#[test]
fn requests_by_tls() {
    let folder = TempDir::new().unwrap();
    let (mut config, root) = config(folder.path());
    let made = rcgen::generate_simple_self_signed(vec!["school.test".into()]).unwrap();
    let files = TlsFiles { cert: folder.path().join("cert.pem"), key: folder.path().join("key.pem") };
    std::fs::write(&files.cert, made.cert.pem()).unwrap();
    std::fs::write(&files.key, made.signing_key.serialize_pem()).unwrap();
    config.tls = Some(files);
    // With a certificate it may be reached from elsewhere.
    config.listen = "0.0.0.0:0".parse().unwrap();
    let server = Running::start(config);
    let mut roots = RootCertStore::empty();
    roots.add(CertificateDer::from(made.cert.der().to_vec())).unwrap();
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let client = ClientConfig::builder_with_provider(provider)
        .with_safe_default_protocol_versions()
        .unwrap()
        .with_root_certificates(roots)
        .with_no_client_auth();
    let name = ServerName::try_from("school.test").unwrap();
    let connection = ClientConnection::new(Arc::new(client), name).unwrap();
    let socket = TcpStream::connect(("127.0.0.1", server.address.port())).unwrap();
    let mut stream = StreamOwned::new(connection, socket);
    let host = format!("school.test:{}", server.address.port());
    let (status, text) = answer(&mut stream, &request(&root.seed, "GET", "/v1/log?from=0", &host, b""));
    assert!(status == 200 && text.contains(r#"{"have":""#), "{text}");
    // In the open, nothing is answered there.
    let mut open = TcpStream::connect(("127.0.0.1", server.address.port())).unwrap();
    open.write_all(&request(&root.seed, "GET", "/v1/log?from=0", &host, b"")).unwrap();
    let mut text = Vec::new();
    let _ = open.read_to_end(&mut text);
    assert!(!text.starts_with(b"HTTP"), "{}", String::from_utf8_lossy(&text));
    assert_eq!(server.stop(), Ok(()));
}

#[test]
fn what_is_at_work_when_the_server_is_told_to_stop_comes_to_its_end() {
    let folder = TempDir::new().unwrap();
    let (config, root) = config(folder.path());
    let (begun, at_work) = mpsc::channel();
    let server = Running::with(config, move |server| {
        let server = server.clone();
        // It ends because the server is told to stop, and not before.
        let until_stopped = async move || {
            begun.send(()).unwrap();
            server.stopped().await;
            "done"
        };
        Router::new().route("/slow", get(until_stopped))
    });
    let address = server.address;
    let slow = request(&root.seed, "GET", "/slow", &address.to_string(), b"");
    let asking = thread::spawn(move || answer(&mut TcpStream::connect(address).unwrap(), &slow));
    at_work.recv().unwrap();
    assert_eq!(server.stop(), Ok(()));
    let (status, text) = asking.join().unwrap();
    assert!(status == 200 && text.ends_with("done"), "{text}");
    assert!(TcpStream::connect(address).is_err(), "nobody listens any more");
}

#[test]
fn what_cannot_be_served_is_told_at_the_start() {
    let folder = TempDir::new().unwrap();
    let (config, _) = config(folder.path());
    let fails = |config: Config| {
        let stopped = async {};
        run_until(&config, |_| Router::new(), |_| {}, stopped).unwrap_err()
    };
    let open: SocketAddr = "0.0.0.0:0".parse().unwrap();
    assert_eq!(fails(Config { listen: open, ..config.clone() }), ServerFault::Plain(open));
    let taken = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let address = taken.local_addr().unwrap();
    let fault = fails(Config { listen: address, ..config.clone() });
    assert!(matches!(fault, ServerFault::Address { address: told, .. } if told == address), "{fault}");
    let missing = folder.path().join("missing");
    let fault = fails(Config { school: Some(missing.clone()), ..config.clone() });
    assert!(matches!(fault, ServerFault::File { file, .. } if file == missing));
    let empty = folder.path().join("empty.db").to_str().unwrap().to_owned();
    assert_eq!(fails(Config { school: None, database: empty, ..config.clone() }), ServerFault::NoSchool);
    let files = TlsFiles { cert: config.school.clone().unwrap(), key: missing };
    let fault = fails(Config { tls: Some(files), ..config.clone() });
    assert!(matches!(fault, ServerFault::File { .. } | ServerFault::Certificate(_)), "{fault}");
    // Said in so many words, plain HTTP is served.
    let plain = Config { listen: open, plain: true, ..config };
    assert_eq!(run_until(&plain, |_| Router::new(), |_| {}, async {}), Ok(()));
}
