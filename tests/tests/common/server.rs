//! The program as a process of its own, spoken to as the screens speak to it.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdout, Command, Stdio};

use serde_json::{Value, json};

/// The built program.
pub fn program() -> PathBuf {
    let built = || Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/debug/witnessmark");
    let program = std::env::var_os("WITNESSMARK_BIN").map_or_else(built, PathBuf::from);
    assert!(program.exists(), "{} is not built: cargo build -p witnessmark-cli", program.display());
    program
}

/// A running program that serves its screens on this machine.
pub struct Server {
    pub process: Child,
    told: BufReader<ChildStdout>,
    stream: BufReader<TcpStream>,
    host: String,
    cookie: String,
}

/// Why a call brought no reply.
#[derive(Debug)]
pub enum Unanswered {
    /// The program told a fault.
    Fault { kind: String, message: String, hint: String },
    /// The program is gone.
    Gone,
}

impl Server {
    /// Starts the program over a data folder.
    pub fn start(data: &Path) -> Self {
        let mut command = Command::new(program());
        command.arg("--data").arg(data).args(["serve-ui", "--json"]);
        Self::run(command)
    }

    /// Starts a command that prints the program's address, and does as a browser would.
    pub fn run(mut command: Command) -> Self {
        let command = command.env("WITNESSMARK_KEYCHAIN", "off").stdin(Stdio::piped()).stdout(Stdio::piped());
        let mut process = command.spawn().unwrap();
        let mut told = BufReader::new(process.stdout.take().unwrap());
        let mut line = String::new();
        told.read_line(&mut line).unwrap();
        let said: Value = serde_json::from_str(&line).unwrap_or_else(|_| panic!("no address: {line:?}"));
        let address = said["address"].as_str().unwrap().strip_prefix("http://").unwrap().to_owned();
        let (host, path) = address.split_once('/').unwrap();
        let stream = BufReader::new(TcpStream::connect(host).unwrap());
        let mut server = Self { process, told, stream, host: host.into(), cookie: String::new() };
        let (status, headers, _) = server.ask(&format!("GET /{path} HTTP/1.1\r\n"), "").unwrap();
        assert!((300..400).contains(&status), "the one-time address led nowhere: {status}");
        let set = headers.iter().find_map(|header| header.strip_prefix("set-cookie: ")).unwrap();
        server.cookie = set.split(';').next().unwrap().to_owned();
        server
    }

    /// One call of the screens.
    pub fn call(&mut self, name: &str, args: Value) -> Result<Value, Unanswered> {
        let body = json!({ "call": name, "args": args }).to_string();
        let head = format!(
            "POST /call HTTP/1.1\r\ncontent-type: application/json\r\ncontent-length: {}\r\n",
            body.len()
        );
        let (status, _, body) = self.ask(&head, &body).map_err(|_| Unanswered::Gone)?;
        let body: Value = serde_json::from_str(&body).unwrap_or_else(|_| panic!("{status}: {body}"));
        if status == 200 {
            return Ok(body);
        }
        let text = |name: &str| body[name].as_str().unwrap_or_default().to_owned();
        Err(Unanswered::Fault { kind: text("kind"), message: text("message"), hint: text("hint") })
    }

    /// HTTP/1.1 as far as the program speaks it: one request, one answer of known length.
    fn ask(&mut self, head: &str, body: &str) -> std::io::Result<(u16, Vec<String>, String)> {
        let request = format!("{head}host: {}\r\ncookie: {}\r\n\r\n{body}", self.host, self.cookie);
        self.stream.get_mut().write_all(request.as_bytes())?;
        let mut headers = Vec::new();
        loop {
            let mut line = String::new();
            if self.stream.read_line(&mut line)? == 0 {
                return Err(std::io::ErrorKind::UnexpectedEof.into());
            }
            match line.trim_end() {
                "" => break,
                line => headers.push(line.to_owned()),
            }
        }
        let status = headers[0].split(' ').nth(1).unwrap().parse().unwrap();
        let length = headers
            .iter()
            .find_map(|header| header.to_lowercase().strip_prefix("content-length: ")?.parse().ok());
        let mut body = vec![0; length.unwrap_or(0)];
        self.stream.read_exact(&mut body)?;
        Ok((status, headers, String::from_utf8(body).unwrap()))
    }

    /// Says a line to the command that runs the program, and hears one back.
    pub fn say(&mut self, line: &str) -> String {
        writeln!(self.process.stdin.as_mut().unwrap(), "{line}").unwrap();
        let mut answer = String::new();
        self.told.read_line(&mut answer).unwrap();
        answer.trim().to_owned()
    }

    /// Ends it as a person would who closes the terminal, and waits.
    pub fn end(mut self) {
        self.process.kill().unwrap();
        self.process.wait().unwrap();
    }
}

impl Drop for Server {
    /// No test leaves a program behind.
    fn drop(&mut self) {
        // Gone already is as good.
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}
