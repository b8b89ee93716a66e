//! A school and its server for the benches: this same program, started anew as the server alone, so that
//! its memory and threads are its own.

#![allow(dead_code, clippy::unwrap_used, clippy::indexing_slicing)]

use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, SocketAddr};
use std::num::NonZeroU32;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{SystemTime, UNIX_EPOCH};

use chrono::NaiveDate;
use reqwest::header::ACCEPT_ENCODING;
use uuid::Uuid;
use witnessmark_core::record::{
    Body, DeviceId, Digest, MemberAdmitted, Record, Role, SchoolFounded, SchoolJoined, SigningSeed,
    write_bundle,
};
use witnessmark_server::run::LogForm;
use witnessmark_server::school::{School, adopt};
use witnessmark_server::shelf::Shelf;
use witnessmark_server::{Config, Limits, run};
use witnessmark_sync::message::{Unsigned, sign};

use crate::common::{Pen, first_day};

const TOLD: &str = "WITNESSMARK_BENCH_SERVES";

/// Serves, if this process was started for that; says whether it was.
pub fn served() -> bool {
    let Some(database) = std::env::var_os(TOLD) else { return false };
    let address = SocketAddr::from((Ipv4Addr::LOCALHOST, 0));
    let mut config = Config::on(address, database.to_str().unwrap());
    config.log = LogForm::Silent;
    // All devices have this machine's one address here, and ask without pause.
    let most = NonZeroU32::MAX;
    config.limits =
        Limits { key_rate: most, key_burst: most, open_rate: most, open_burst: most, ..Limits::default() };
    let tell = |address| println!("{address}");
    run(&config, |_| axum::Router::new(), tell).unwrap();
    true
}

/// The server's process; it ends with this.
pub struct Serving {
    child: Child,
    /// Host and port.
    pub authority: String,
}

impl Serving {
    /// Over a database that a school was founded in.
    pub fn over(database: &str) -> Self {
        let mut child = Command::new(std::env::current_exe().unwrap())
            .env(TOLD, database)
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut authority = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut authority).unwrap();
        Self { child, authority: authority.trim().into() }
    }

    /// What it holds of the machine's memory, MB.
    pub fn memory(&self) -> f64 {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.child.id())).unwrap_or_default();
        let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:"));
        let kb = line.and_then(|line| line.split_whitespace().next()?.parse::<f64>().ok());
        kb.unwrap_or(f64::NAN) / 1024.0
    }

    pub fn url(&self, path: &str) -> String {
        format!("http://{}{path}", self.authority)
    }

    /// The headers of a signed request.
    pub fn headers(&self, method: &str, path: &str, body: &[u8], by: &SigningSeed) -> Vec<(String, String)> {
        static NONCE: AtomicU64 = AtomicU64::new(0);
        let (path, query) = path.split_once('?').map_or((path, None), |(path, query)| (path, Some(query)));
        let now = SystemTime::now().duration_since(UNIX_EPOCH).unwrap();
        let nonce = format!("{}-{}", now.as_nanos(), NONCE.fetch_add(1, Ordering::Relaxed));
        let unsigned = Unsigned { method, authority: &self.authority, path, query, body };
        let headers = sign(&unsigned, now.as_secs() as i64, &nonce, by).unwrap();
        headers.each().map(|(name, value)| (name.to_owned(), value.to_owned())).collect()
    }
}

impl Drop for Serving {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A school's root.
pub struct Root {
    pub pen: Pen,
    pub school: Digest,
    founding: String,
}

impl Root {
    pub fn new() -> Self {
        let mut pen = Pen::new([1; 32]);
        let member = pen.member(Uuid::from_u128(1), first_day());
        let body = SchoolFounded { name: "Invented school".into(), invented: true };
        let founded = pen.write(&Body::SchoolFounded(body), None, first_day());
        let founding = write_bundle([&member, &founded]);
        Self { pen, school: founded.digest, founding }
    }

    /// The school, in a new database.
    pub fn founds(&self, database: &str) -> School {
        adopt(Shelf::open(database).unwrap(), &self.founding).unwrap()
    }

    /// Admits a device that has signed two records by now.
    pub fn admits(&mut self, device: DeviceId, person: Uuid, name: &str) -> Record {
        self.pen.author.seen = [(device.clone(), 2)].into();
        let from = NaiveDate::from_ymd_opt(2016, 1, 1).unwrap();
        let body = MemberAdmitted {
            school: self.school,
            device,
            person,
            name: name.into(),
            role: Role::Pilot,
            from,
            until: None,
        };
        self.pen.write(&Body::MemberAdmitted(body), None, first_day())
    }

    /// A member, and the records that make it one.
    pub fn member(&mut self, n: u64) -> (SigningSeed, [Record; 3]) {
        let seed = |kind: u8| {
            let mut seed = [kind; 32];
            seed[..8].copy_from_slice(&n.to_be_bytes());
            seed
        };
        let (mut pen, courier) = (Pen::new(seed(2)), SigningSeed::from_bytes(&seed(3)));
        let person = Uuid::from_u128(1000 + u128::from(n));
        let member = pen.member(person, first_day());
        let joined = SchoolJoined { school: self.school, courier: courier.jwk() };
        let joined = pen.write(&Body::SchoolJoined(joined), None, first_day());
        let admitted = self.admits(pen.seed.device(), person, "P");
        (courier, [member, joined, admitted])
    }
}

/// Appends to the log what needs no checking, since it was just written.
pub fn fill(school: &School, records: &[Record]) {
    for some in records.chunks(1000) {
        school.shelf().append(school.on_shelf(), &some.iter().collect::<Vec<_>>()).unwrap();
    }
}

/// A place for an SQLite file.
pub fn sqlite(folder: &Path, name: &str) -> String {
    let path: PathBuf = folder.join(name);
    path.to_str().unwrap().to_owned()
}

/// A client that takes answers as they come.
pub fn client() -> reqwest::blocking::Client {
    let _ = rustls::crypto::ring::default_provider().install_default();
    let builder = reqwest::blocking::Client::builder().no_proxy().no_gzip().no_zstd().tls_certs_only([]);
    builder.timeout(std::time::Duration::from_secs(120)).build().unwrap()
}

/// A signed request's answer, which must be good.
pub fn ask(
    serving: &Serving,
    client: &reqwest::blocking::Client,
    method: &str,
    path: &str,
    body: Vec<u8>,
    by: &SigningSeed,
) -> Vec<u8> {
    let named = reqwest::Method::from_bytes(method.as_bytes()).unwrap();
    let mut asked = client.request(named, serving.url(path));
    for (name, value) in serving.headers(method, path, &body, by) {
        asked = asked.header(name, value);
    }
    let came = asked.body(body).send().unwrap();
    let status = came.status();
    let bytes = came.bytes().unwrap().to_vec();
    assert!(status.is_success(), "{status} {}", String::from_utf8_lossy(&bytes));
    bytes
}

/// A page of the log, packed so, as it goes over the wire.
pub fn page(
    serving: &Serving,
    client: &reqwest::blocking::Client,
    by: &SigningSeed,
    from: usize,
    coding: &str,
) -> Vec<u8> {
    let path = format!("/v1/log?from={from}");
    let mut asked = client.get(serving.url(&path)).header(ACCEPT_ENCODING, coding);
    for (name, value) in serving.headers("GET", &path, b"", by) {
        asked = asked.header(name, value);
    }
    let came = asked.send().unwrap().error_for_status().unwrap();
    came.bytes().unwrap().to_vec()
}
