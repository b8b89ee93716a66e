//! A PostgreSQL of the tests' own: one a test program, from Debian's package, in a temporary
//! folder, and gone with the program whatever ends it. Root can't run it, so root borrows the
//! package's user.
//!
//! It speaks on a socket in its folder, and on a port of this machine with a certificate of its own.

#![allow(dead_code, clippy::unwrap_used, clippy::expect_used)]

use std::io::{BufRead, BufReader};
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{LazyLock, Mutex};

/// Stops the server once its input ends: that is, once nobody holds the other end any more.
const KEEPER: &str = r#"
set -eu
umask 077
newest=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -V | tail -n 1)
PATH="$newest:$PATH"
home=$(mktemp -d -t witnessmark-postgres-XXXXXX)
cd "$home"
trap 'pg_ctl -D "$home/data" -m immediate stop >/dev/null 2>&1 || true; cd /; rm -rf "$home"' EXIT
initdb -D data -U tests --auth=trust --encoding=UTF8 --locale=C --no-sync >log 2>&1 || { cat log >&2; exit 1; }
openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 2 -subj /CN=localhost \
  -addext basicConstraints=critical,CA:FALSE -addext subjectAltName=DNS:localhost,IP:127.0.0.1 -keyout data/server.key -out data/server.crt >log 2>&1
cat >>data/postgresql.conf <<CONF
unix_socket_directories = '$home'
listen_addresses = '127.0.0.1'
port = $1
ssl = on
fsync = off
synchronous_commit = on
max_connections = 100
CONF
pg_ctl -D data -l log -w start >/dev/null || { cat log >&2; exit 1; }
echo "$home"
read -r _ || true
"#;

/// The running server.
pub struct Cluster {
    /// Its folder, with its socket.
    pub home: PathBuf,
    /// Its port on 127.0.0.1.
    pub port: u16,
    _keeper: Child,
}

static CLUSTER: LazyLock<Cluster> = LazyLock::new(Cluster::start);
static DATABASES: AtomicU32 = AtomicU32::new(0);
/// Databases are made one at a time: their template may have one visitor.
static MAKING: Mutex<()> = Mutex::new(());

impl Cluster {
    /// The one of this test program, started by who first asks.
    pub fn get() -> &'static Self {
        &CLUSTER
    }

    fn start() -> Self {
        let port = TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().port();
        let root = Command::new("id").arg("-u").output().unwrap().stdout.starts_with(b"0\n");
        let mut command = Command::new(if root { "runuser" } else { "sh" });
        if root {
            command.args(["-u", "postgres", "--", "sh"]);
        }
        let mut keeper = command
            .args(["-c", KEEPER, "keeper", &port.to_string()])
            .current_dir("/")
            .env_remove("TMPDIR")
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .expect("sh, or runuser for root");
        let mut home = String::new();
        BufReader::new(keeper.stdout.take().unwrap()).read_line(&mut home).unwrap();
        assert!(home.ends_with('\n'), "PostgreSQL didn't start; is Debian's package postgresql installed?");
        Self { home: home.trim_end().into(), port, _keeper: keeper }
    }

    /// An empty database; its name.
    pub fn database(&self) -> String {
        let _one = MAKING.lock().unwrap();
        let name = format!("t{}", DATABASES.fetch_add(1, Ordering::Relaxed));
        self.sql("postgres", &format!("CREATE DATABASE {name}"));
        name
    }

    /// Where a database is, by the socket.
    pub fn address(&self, database: &str) -> String {
        let socket = self.home.to_str().unwrap().replace('/', "%2F");
        format!("postgres://tests@{socket}:{}/{database}", self.port)
    }

    /// Where a database is, by the port.
    pub fn address_by_port(&self, database: &str, parameters: &str) -> String {
        format!("postgres://tests@localhost:{}/{database}?{parameters}", self.port)
    }

    /// The certificate that the port shows.
    pub fn certificate(&self) -> PathBuf {
        self.home.join("data/server.crt")
    }

    /// Runs statements; what they print, a row a line, columns divided by `|`.
    pub fn sql(&self, database: &str, statements: &str) -> String {
        let out = Command::new("psql")
            .args(["-X", "-q", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-U", "tests", "-d", database])
            .arg("-h")
            .arg::<&Path>(self.home.as_ref())
            .args(["-p", &self.port.to_string(), "-c", statements])
            .output()
            .expect("psql, from Debian's package postgresql-client");
        assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
        String::from_utf8(out.stdout).unwrap().trim_end().to_owned()
    }
}
